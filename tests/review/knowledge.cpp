// SPDX-License-Identifier: GPL-3.0-or-later
// The data the checks lean on: room types in the spellings people use, and tables that refuse what is wrong in them.
#include "core/review/knowledge.h"

#include "core/base/file.h"
#include "tests/review/sound.h"

#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

using namespace proofwalk;
using review::RoomTypes;

class KnowledgeTest : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void rooms_data();
    void rooms();
    void badRooms_data();
    void badRooms();
    void everySheetIsOfAKnownKind();
    void badTables();
};

void KnowledgeTest::rooms_data()
{
    QTest::addColumn<QString>("room");
    QTest::addColumn<QString>("type");
    const auto row = [](const char* room, const char* type) { QTest::newRow(room) << room << type; };
    row("kitchen", "kitchen");
    row("Staff KITCHEN 2", "kitchen");
    row("Küche", "kitchen");
    row("WOHNKÜCHE", "kitchen");
    row("Van garage", "garage");
    row("garage/workshop", "garage");
    row("car port", "garage");
    row("salle de bain", "bathroom");
    row("shop", "");
    row("Kitchener Room", "");
    row("garaged", "");
    row("", "");
}

void KnowledgeTest::rooms()
{
    QFETCH(QString, room);
    QFETCH(QString, type);
    const auto types = test::knowledge().rooms.typesOf(room.toStdString());
    if (type.isEmpty()) QVERIFY(types.empty());
    else QVERIFY(std::ranges::find(types, type.toStdString()) != types.end());
}

void KnowledgeTest::badRooms_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("code");
    QTest::newRow("not TOML") << "[kitchen\n" << "review.rooms-syntax";
    QTest::newRow("no list") << "[kitchen]\nwords = \"kitchen\"\n" << "review.rooms-value";
    QTest::newRow("empty list") << "[kitchen]\nwords = []\n" << "review.rooms-value";
    QTest::newRow("a number among the words") << "[kitchen]\nwords = [\"kitchen\", 3]\n" << "review.rooms-value";
    QTest::newRow("an empty word") << "[kitchen]\nwords = [\"\"]\n" << "review.rooms-value";
    QTest::newRow("no table") << "kitchen = 3\n" << "review.rooms-value";
}

void KnowledgeTest::badRooms()
{
    QFETCH(QString, text);
    QFETCH(QString, code);
    const auto types = RoomTypes::read(text.toStdString(), "rooms.toml");
    QVERIFY(!types);
    QCOMPARE(QString::fromStdString(types.error().code), code);
}

void KnowledgeTest::everySheetIsOfAKnownKind()
{
    for (const auto& kind : test::fullCatalogue().kinds())
        QVERIFY2(test::knowledge().kinds.contains(kind.name), kind.name.c_str());
}

void KnowledgeTest::badTables()
{
    QTemporaryDir folder;
    const std::filesystem::path root = folder.path().toStdString();
    const auto code = [&] {
        const auto read = review::Knowledge::read(root);
        return read ? std::string("read") : read.error().code;
    };
    QCOMPARE(code(), "file.missing");
    for (const char* each : {"review", "catalogue", "signals"}) std::filesystem::create_directory(root / each);
    const auto write = [&](const char* name, const std::string& text) { QVERIFY(base::writeFile(root / name, text)); };
    write("review/known-kinds.csv", "kind,zone\nflood,yes\n");
    QCOMPARE(code(), "review.kinds-table");
    write("review/known-kinds.csv", "kind,needs_zone,has_tamper,unsuited_rooms\nflood,maybe,no,\n");
    QCOMPARE(code(), "review.kinds-table");
    write("review/known-kinds.csv", "kind,needs_zone,has_tamper,unsuited_rooms\nflood,yes,no,\n");
    QCOMPARE(code(), "file.missing");
    write("catalogue/rooms.toml", "[kitchen]\nwords = [\"kitchen\"]\n");
    QCOMPARE(code(), "file.missing");
    write("signals/event-codes.csv", "system,code,event,group,purposes,basis\n");
    QCOMPARE(code(), "read");
}

QTEST_GUILESS_MAIN(KnowledgeTest)
#include "knowledge.moc"
