// SPDX-License-Identifier: GPL-3.0-or-later
// One event: its canonical text, its hash, and everything that is nearly one.
#include "tests/journal/jobs.h"

#include <QProcess>

using namespace proofwalk;
using namespace proofwalk::journal;

namespace {

const std::string job(32, 'a'), chain(32, 'b'), other(32, 'c'), hash(64, 'd'), prev(64, 'e');

/// Written by hand after RFC 8785: members in the order of their keys, no space, least escaping.
const std::string written = R"({"alg":"sha256","body":{"price":12,"words":["\"ä\u001b\n€",true]},"chain":")" + chain
                          + R"(","job":")" + job + R"(","kind":"note","n":7,"offset_min":-90,"prev":")" + prev
                          + R"(","seen":[[")" + other + R"(",3,")" + hash
                          + R"("]],"stamp":[1795597200250,2],"utc":"2026-11-25T09:00:00.250Z","v":1})";

Event sample()
{
    Event event;
    event.job = job;
    event.chain = chain;
    event.n = 7;
    event.prev = prev;
    event.seen = {{other, 3, hash}};
    event.stamp = {1'795'597'200'250, 2};
    event.at = {1'795'597'200'250, -90};
    event.kind = "note";
    event.body = base::Json::Object{{"words", base::Json::Array{"\"ä\x1b\n€", true}}, {"price", 12}};
    return event;
}

} // namespace

class EventText : public QObject {
    Q_OBJECT
private slots:
    void isCanonical() { QCOMPARE(canonicalText(sample()), written); }
    void roundTrip();
    void hashIsThatOfTheTool();
    void unknownKindsAndVersionsAreRead();
    void malformed_data();
    void malformed();
};

void EventText::roundTrip()
{
    auto event = readEvent(written);
    VERIFY_GOOD(event);
    QCOMPARE(canonicalText(*event), written);
    QCOMPARE(event->seen, sample().seen);
    QCOMPARE(event->stamp, sample().stamp);
    QCOMPARE(event->at, sample().at);
    QVERIFY(event->body == sample().body);
}

void EventText::hashIsThatOfTheTool()
{
    // Source: sha256sum of GNU coreutils. public test source
    QProcess tool;
    tool.start("sha256sum", {});
    tool.write(QByteArray::fromStdString(written));
    tool.closeWriteChannel();
    QVERIFY(tool.waitForFinished());
    auto event = readEvent(written);
    VERIFY_GOOD(event);
    QCOMPARE(QByteArray::fromStdString(event->hash), tool.readAllStandardOutput().left(64));
}

void EventText::unknownKindsAndVersionsAreRead()
{
    QString text = QString::fromStdString(written);
    text.replace("\"note\"", "\"not-of-this-century\"").replace("\"v\":1}", "\"v\":9007199254740991}");
    auto event = readEvent(text.toStdString());
    VERIFY_GOOD(event);
    QCOMPARE(event->kind, std::string("not-of-this-century"));
    QCOMPARE(event->v, 9'007'199'254'740'991);
}

void EventText::malformed_data()
{
    QTest::addColumn<QString>("from");
    QTest::addColumn<QString>("to");
    QTest::addColumn<QString>("code");
    const QString own = QString::fromStdString(chain), third = QString::fromStdString(other);
    const QString seen = QString::fromStdString("[\"" + other + "\",3,\"" + hash + "\"]");
    const auto row = [](const char* name, const QString& from, const QString& to, const char* code) {
        QTest::newRow(name) << from << to << QString(code);
    };
    row("cut short", "\"v\":1}", "\"v\":1", "json.syntax");
    row("something after it", "\"v\":1}", "\"v\":1} ", "json.not-canonical");
    row("a space", "\"v\":1}", "\"v\": 1}", "json.not-canonical");
    row("members in another order", "\"n\":7,\"offset_min\":-90", "\"offset_min\":-90,\"n\":7", "json.not-canonical");
    row("an escape that need not be", "ä", "\\u00e4", "json.not-canonical");
    row("a member twice", "\"v\":1}", "\"v\":1,\"v\":1}", "json.key-twice");
    row("a float", "\"price\":12", "\"price\":12.5", "json.number");
    row("a whole float", "\"price\":12", "\"price\":12.0", "json.number");
    row("minus zero", "\"price\":12", "\"price\":-0", "json.number");
    row("beyond 2^53-1", "\"price\":12", "\"price\":9007199254740992", "json.number");
    row("null", "\"price\":12", "\"price\":null", "json.null");
    row("a key that is not ASCII", "\"price\":12", "\"pr\u00e4\":12", "json.key");
    row("a byte order mark", "{\"alg\"", QChar(0xfeff) + QString("{\"alg\""), "json.bom");
    row("no object", QString::fromStdString(written), "[]", "event.value");
    row("nothing", QString::fromStdString(written), "", "json.syntax");
    row("another algorithm", "\"sha256\"", "\"sha3-256\"", "event.alg");
    row("an algorithm that is no text", "\"sha256\"", "1", "event.alg");
    row("a member too many", "\"v\":1}", "\"v\":1,\"w\":1}", "event.member");
    row("a member missing", "\"n\":7,", "", "event.missing");
    row("no algorithm", "\"alg\":\"sha256\",", "", "event.missing");
    row("n is zero", "\"n\":7", "\"n\":0", "event.value");
    row("n is a text", "\"n\":7", "\"n\":\"7\"", "event.value");
    row("first with a previous", "\"n\":7", "\"n\":1", "event.value");
    row("later without a previous", "\"prev\":\"" + QString(64, 'e') + "\"", "\"prev\":\"\"", "event.value");
    row("previous in capitals", QString(64, 'e'), QString(64, 'E'), "event.value");
    row("previous too short", QString(64, 'e'), QString(63, 'e'), "event.value");
    row("job too long", QString::fromStdString(job), QString(33, 'a'), "event.value");
    row("chain is no hex", own, QString(32, 'x'), "event.value");
    row("kind empty", "\"note\"", "\"\"", "event.value");
    row("kind in capitals", "\"note\"", "\"Note\"", "event.value");
    row("kind with a line in it", "\"note\"", "\"no\\nte\"", "event.value");
    row("offset of a day", "-90", "-1440", "event.value");
    row("time without milliseconds", "00.250Z", "00Z", "event.value");
    row("time not in UTC", "00.250Z", "00.250+01:00", "event.value");
    row("no such day", "2026-11-25", "2026-11-31", "event.value");
    row("version zero", "\"v\":1}", "\"v\":0}", "event.value");
    row("body is a list", "{\"price\":12,\"words\":[\"\\\"ä\\u001b\\n€\",true]}", "[]", "event.value");
    row("stamp of one", "[1795597200250,2]", "[1795597200250]", "event.value");
    row("stamp before all time", "[1795597200250,2]", "[-1,2]", "event.value");
    row("stamp with a negative count", "[1795597200250,2]", "[1795597200250,-2]", "event.value");
    row("seen is no list", "[" + seen + "]", "{}", "event.value");
    row("seen itself", seen, QString(seen).replace(third, own), "event.value");
    row("seen one chain twice", seen, seen + "," + seen, "event.value");
    row("seen out of order", seen, seen + "," + QString(seen).replace(third, QString(32, '0')), "event.value");
    row("seen number zero", "\",3,\"", "\",0,\"", "event.value");
    row("seen without a hash", QString::fromStdString(",\"" + hash + "\""), "", "event.value");
    row("deeper than 32", "\"price\":12", "\"price\":" + QString(40, '[') + QString(40, ']'), "json.too-deep");
}

void EventText::malformed()
{
    QFETCH(QString, from);
    QFETCH(QString, to);
    QFETCH(QString, code);
    QString text = QString::fromStdString(written);
    QCOMPARE(text.count(from), 1);
    text.replace(from, to);
    auto event = readEvent(text.toStdString());
    QVERIFY(!event.has_value());
    QCOMPARE(QString::fromStdString(event.error().code), code);
}

QTEST_GUILESS_MAIN(EventText)
#include "event.moc"
