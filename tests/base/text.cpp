// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: RFC 3629 (UTF-8), sections 3 and 10; Levenshtein's distance, counted by hand.
#include "core/base/text.h"

#include <QtTest>

using namespace proofwalk;

class TestText : public QObject {
    Q_OBJECT

private slots:
    void wellFormedUtf8()
    {
        // RFC 3629, section 7: "A<not identical to><alpha>.", Korean, Japanese, and beyond the basic plane.
        for (const char* good :
             {"", "plain", "\x41\xE2\x89\xA2\xCE\x91\x2E", "\xED\x95\x9C\xEA\xB5\xAD\xEC\x96\xB4",
              "\xE6\x97\xA5\xE6\x9C\xAC\xE8\xAA\x9E", "\xEF\xBB\xBF\xF0\xA3\x8E\xB4", "\xF4\x8F\xBF\xBF"})
            QVERIFY2(base::isUtf8(good), good);
        QVERIFY(base::isUtf8(std::string_view("\0", 1)));
    }
    void illFormedUtf8()
    {
        for (const char* bad :
             {"\x80", "\xC0\xAF", "\xC1\xBF", "\xE0\x80\xAF", "\xED\xA0\x80", "\xED\xBF\xBF", "\xF0\x80\x80\xAF",
              "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xFE", "\xFF", "\xC3", "\xE2\x82", "a\xC3 b", "\xC3\xA9\x80"})
            QVERIFY(!base::isUtf8(bad));
    }
    void nearest()
    {
        const std::vector<std::string> known{"sounder-inside", "smoke-four-wire", "flood", "heat-fixed"};
        QCOMPARE(base::nearestWord("smoke-4-wire", known), std::string("smoke-four-wire"));
        QCOMPARE(base::nearestWord("fload", known), std::string("flood"));
        QCOMPARE(base::nearestWord("heat-fixed", known), std::string("heat-fixed"));
        QCOMPARE(base::nearestWord("x", std::vector<std::string>{}), std::string());
        // Of equals the first: each differs in one letter.
        QCOMPARE(base::nearestWord("cat", std::vector<std::string>{"bat", "hat"}), std::string("bat"));
        // kitten -> sitting is 3 (the textbook's case), kitten -> kit is 3, kitten -> mitten is 1.
        QCOMPARE(base::nearestWord("kitten", std::vector<std::string>{"sitting", "mitten", "kit"}),
                 std::string("mitten"));
        QCOMPARE(base::nearestWord("", std::vector<std::string>{"abc", "d"}), std::string("d"));
    }
    void splitting()
    {
        using Pieces = std::vector<std::string>;
        QVERIFY(base::split("", ';') == Pieces{});
        QVERIFY(base::split("a", ';') == Pieces{"a"});
        QVERIFY(base::split("a;b", ';') == (Pieces{"a", "b"}));
        QVERIFY(base::split(";", ';') == (Pieces{"", ""}));
        QVERIFY(base::split("a;;b;", ';') == (Pieces{"a", "", "b", ""}));
        QVERIFY(base::split(";a", ';') == (Pieces{"", "a"}));
    }
    void trimming()
    {
        QCOMPARE(base::trimmed(" \t a b \r\n"), std::string_view("a b"));
        QCOMPARE(base::trimmed(" \t\r\n"), std::string_view(""));
        QCOMPARE(base::trimmed(""), std::string_view(""));
        QCOMPARE(base::trimmed("\xC2\xA0x"), std::string_view("\xC2\xA0x")); // a no-break space is not ours to drop
    }
    void joining()
    {
        QCOMPARE(base::join(std::vector<std::string>{"a", "", "b"}, ", "), std::string("a, , b"));
        QCOMPARE(base::join(std::vector<std::string>{"a"}, ", "), std::string("a"));
        QCOMPARE(base::join(std::vector<std::string>{}, ", "), std::string());
    }
};

QTEST_GUILESS_MAIN(TestText)
#include "text.moc"
