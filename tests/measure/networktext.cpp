// SPDX-License-Identifier: GPL-3.0-or-later
// Networks written in a line, each against Ohm's law worked by hand.
#include "core/measure/networktext.h"

#include <QtTest>

#include <cmath>
#include <limits>

using namespace proofwalk;

namespace {

double read(std::string_view text, double tolerance_pct = 0)
{
    return measure::spanOf(measure::readNetwork(text, tolerance_pct).value(), {}).nominal_ohm;
}

Error errorOf(std::string_view text, double tolerance_pct = 0)
{
    const auto network = measure::readNetwork(text, tolerance_pct);
    return network ? Error{} : network.error();
}

} // namespace

class TestNetworkText : public QObject {
    Q_OBJECT

private slots:
    void reads()
    {
        QCOMPARE(read("eol=4700"), 4700.0);
        QCOMPARE(read("a=100 + b=200.5"), 300.5);
        QCOMPARE(read("a=100|b=100"), 50.0);
        QCOMPARE(read("a=100 | b=60 + c=40"), 50.0); // + binds closer
        QCOMPARE(read("(a=100 | b=60) + c=40"), 77.5);
        QCOMPARE(read("cable=12 + tamper:nc + (alarm:nc | zone=4700 1%) + eol=2200 1%"), 2206.0);
        QCOMPARE(read("cable1=10..12 + eol=2200"), 2211.0);
        QVERIFY(std::isinf(read("call-point:no")));
    }
    void cableGivenBeside()
    {
        const auto network = measure::readNetwork("cable + eol=4700", 0, measure::CableOhm{5, 7}).value();
        QCOMPARE(measure::spanOf(network, {}).least_ohm, 4705.0);
        QCOMPARE(measure::spanOf(network, {}).most_ohm, 4707.0);
        QCOMPARE(errorOf("cable + eol=4700").code, std::string("measure.network-text"));
    }
    void tolerance()
    {
        const auto span = measure::spanOf(measure::readNetwork("a=100 + b=100 10%", 1).value(), {});
        QCOMPARE(span.least_ohm, 189.0);
        QCOMPARE(span.most_ohm, 211.0);
    }
    void refused_data()
    {
        QTest::addColumn<QString>("text");
        QTest::addColumn<int>("at");
        QTest::newRow("nothing") << "" << 1;
        QTest::newRow("no value") << "eol=" << 5;
        QTest::newRow("no name") << "4700" << 1;
        QTest::newRow("left open") << "(a=1 + b=2" << 11;
        QTest::newRow("closed too often") << "a=1)" << 4;
        QTest::newRow("two operators") << "a=1 ++ b=2" << 6;
        QTest::newRow("neither closed nor open") << "a:xx" << 3;
        QTest::newRow("a comma") << "a=4,7" << 4;
        QTest::newRow("below zero") << "a=-5" << 3;
        QTest::newRow("no percent") << "a=5 1" << 6;
        QTest::newRow("hidden zero") << QString::fromLatin1("a=5\0b", 5) << 4;
    }
    void refused()
    {
        QFETCH(QString, text);
        QFETCH(int, at);
        const Error error = errorOf(text.toStdString());
        QCOMPARE(error.code, std::string("measure.network-text"));
        QCOMPARE(std::get<std::int64_t>(error.arguments.at(1).value), std::int64_t{at});
    }
    void refusedByTheNetwork()
    {
        QCOMPARE(errorOf("a=1 + a=2").code, std::string("measure.network-name"));
        QCOMPARE(errorOf("a=0").code, std::string("measure.out-of-range"));
        QCOMPARE(errorOf("a=1 100%").code, std::string("measure.out-of-range"));
        QCOMPARE(errorOf("a=" + std::string(400, '9')).code, std::string("measure.network-text"));
        QCOMPARE(errorOf("cable=5..4").code, std::string("measure.out-of-range"));
        for (const double bad : {-1.0, 100.0, std::nan("")})
            QCOMPARE(errorOf("a=1", bad).code, std::string("measure.out-of-range"));
        std::string many = "a0=1";
        for (int i = 1; i < 65; ++i) many += "+a" + std::to_string(i) + "=1";
        QCOMPARE(errorOf(many).code, std::string("measure.network-size"));
        QVERIFY(!errorOf(std::string(100000, '(')).code.empty());
    }
};

QTEST_GUILESS_MAIN(TestNetworkText)
#include "networktext.moc"
