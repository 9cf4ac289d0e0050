// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of a job: everything comes back as it went in, and nothing private stands in the open.
#include "core/plan/rows.h"

#include "core/base/digest.h"
#include "tests/plan/folder.h"

#include <QTest>

#include <map>
#include <set>

using namespace proofwalk;
using base::Json;
using test::argument;
using test::PlanFolder;

class Rows : public QObject {
    Q_OBJECT
private slots:
    void demonstrationComesBack();
    void nothingPrivateInTheOpen();
    void hiddenValuesComeBackEmpty();
    void idsAreGivenOnce();
    void shapeOfARow();
    void refused_data();
    void refused();
};

namespace {

/// Values by their commitment; here only a digest, the salt is the journal's business.
struct Vault {
    std::map<std::string, std::string> values;
    plan::Commit commit()
    {
        return [this](const std::string& value) {
            auto key = base::sha256Hex(value);
            values[key] = value;
            return key;
        };
    }
    plan::Reveal reveal() const
    {
        return [this](const std::string& key) -> std::optional<std::string> {
            const auto found = values.find(key);
            if (found == values.end()) return std::nullopt;
            return found->second;
        };
    }
};

plan::Plan lanternMill()
{
    auto plan = plan::readPlan(PROOFWALK_SOURCE "/fixtures/lantern-mill").value();
    plan::giveIds(plan);
    return plan;
}

const char* secretPlanDevices = "tag,kind,zone,room,position,protects,serial,x_m,y_m,note\n"
                                "K,flood,1,hall,Posi,Prot,Seri,11.5,12.5,Note\n";

} // namespace

void Rows::demonstrationComesBack()
{
    const plan::Plan before = lanternMill();
    Vault vault;
    const Json rows = plan::toRows(before, vault.commit());
    const auto read = base::parseCanonical(base::canonical(rows), {.bytes = 1U << 24U});
    QVERIFY(read);
    const auto after = plan::fromRows(*read, vault.reveal());
    QVERIFY2(after, after ? "" : (after.error().where + " " + argument(after.error().arguments, "detail")).c_str());
    // The same rows again, byte for byte, and the members that rows do not carry.
    QCOMPARE(base::canonical(plan::toRows(*after, vault.commit())), base::canonical(rows));
    QCOMPARE(after->devices.size(), before.devices.size());
    QCOMPARE(after->devices[0].position, before.devices[0].position);
    QCOMPARE(after->zones[0].liveIn, before.zones[0].liveIn);
    QCOMPARE(after->zones[0].id, before.zones[0].id);
    QCOMPARE(after->assumptions.size(), before.assumptions.size());
}

void Rows::nothingPrivateInTheOpen()
{
    auto plan = PlanFolder({{"devices.csv", secretPlanDevices},
                            {"site.csv", "field,value\nname,Sitename\naddress,Addr\nrules,fire-uk\n"},
                            {"signals.csv", "tag,signal,serial\nK,tamper,Sersig\n"},
                            {"floors.csv", "floor,drawing\ng,Draw\n"}})
                    .read()
                    .value();
    Vault vault;
    const std::string text = base::canonical(plan::toRows(plan, vault.commit()));
    const std::set<std::string> secrets{"Posi", "Prot",     "Seri", "11.5",   "12.5",
                                        "Note", "Sitename", "Addr", "Sersig", "Draw"};
    for (const std::string& secret : secrets) QVERIFY2(!text.contains(secret), secret.c_str());
    std::set<std::string> kept;
    for (const auto& [key, value] : vault.values) kept.insert(value);
    QCOMPARE(kept, secrets);
    QVERIFY(text.contains("fire-uk"));
    QVERIFY(text.contains("hall"));
}

void Rows::hiddenValuesComeBackEmpty()
{
    auto plan = PlanFolder({{"devices.csv", secretPlanDevices}}).read().value();
    plan::giveIds(plan);
    Vault vault;
    const Json rows = plan::toRows(plan, vault.commit());
    vault.values.clear();
    const auto after = plan::fromRows(rows, vault.reveal());
    QVERIFY(after);
    QCOMPARE(after->devices[0].tag, "K");
    QCOMPARE(after->devices[0].position, "");
    QVERIFY(!after->devices[0].x_m);
}

void Rows::idsAreGivenOnce()
{
    auto plan = PlanFolder({{"devices.csv", "kind,zone,room\nflood,1,a\nflood,1,b\n"}}).read().value();
    QCOMPARE(plan.devices[0].id, "");
    plan::giveIds(plan);
    std::set<std::string> ids;
    for (const auto& device : plan.devices) ids.insert(device.id);
    ids.insert(plan.zones[0].id);
    ids.insert(plan.areas[0].id);
    QCOMPARE(ids.size(), 4U);
    for (const std::string& id : ids) QVERIFY(base::isLowerHex(id, 32));
    const std::string first = plan.devices[0].id;
    plan.devices.push_back({});
    plan::giveIds(plan);
    QCOMPARE(plan.devices[0].id, first);
    QVERIFY(base::isLowerHex(plan.devices[2].id, 32));
}

// As FORMAT.md describes it, written out by hand.
void Rows::shapeOfARow()
{
    auto plan = PlanFolder({{"devices.csv", "tag,kind,room,serial,standby_ma\nK,flood,hall,S,1.50\n"}}).read().value();
    plan.devices[0].id = std::string(32, 'a');
    const Json rows = plan::toRows(plan, [](const std::string&) { return std::string(64, 'c'); });
    QCOMPARE(rows.text("format"), "proofwalk/plan/1");
    QCOMPARE(
        base::canonical(rows.find("devices")->array()->at(0)),
        R"({"assumed":["public_access"],"id":"aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa","kind":"flood","public_access":"no",)"
        R"("room":"hall","serial":{"private":"cccccccccccccccccccccccccccccccccccccccccccccccccccccccccccccccc"},)"
        R"("standby_ma":"1.50","tag":"K"})");
    for (const char* table : {"site", "areas", "modes", "zones", "devices", "signals", "effects", "paths", "panel",
                              "floors", "timers", "power", "openings"})
        QVERIFY2(rows.find(table) && rows.find(table)->array(), table);
}

void Rows::refused_data()
{
    QTest::addColumn<QString>("from");
    QTest::addColumn<QString>("to");
    QTest::addColumn<QString>("code");
    QTest::newRow("another format") << "plan/1" << "plan/2" << "plan.rows";
    QTest::newRow("unknown table") << "\"openings\"" << "\"opening\"" << "plan.rows";
    QTest::newRow("unknown key") << "\"room\"" << "\"rooms\"" << "plan.rows";
    QTest::newRow("no id") << "\"id\":\"aa" << "\"id\":\"a" << "plan.rows";
    QTest::newRow("cell that is a number") << "\"hall\"" << "5" << "plan.rows";
    QTest::newRow("private cell in the open")
        << R"({"private":"cccccccccccccccccccccccccccccccccccccccccccccccccccccccccccccccc"})"
        << "\"S\"" << "plan.rows";
    QTest::newRow("open cell hidden")
        << "\"hall\"" << R"({"private":"cccccccccccccccccccccccccccccccccccccccccccccccccccccccccccccccc"})"
        << "plan.rows";
    QTest::newRow("commitment cut short") << "\"cccc" << "\"ccc" << "plan.rows";
    QTest::newRow("number outside its domain") << "1.50" << "-1.50" << "plan.cell-range";
    QTest::newRow("kind missing") << "\"kind\":\"flood\"," << "" << "plan.cell-empty";
    QTest::newRow("truth in another word") << "\"no\"" << "\"nein\"" << "plan.cell-word";
}

void Rows::refused()
{
    QFETCH(QString, from);
    QFETCH(QString, to);
    QFETCH(QString, code);
    auto plan = PlanFolder({{"devices.csv", "tag,kind,room,serial,standby_ma\nK,flood,hall,S,1.50\n"}}).read().value();
    plan.devices[0].id = std::string(32, 'a');
    auto text = QString::fromStdString(
        base::canonical(plan::toRows(plan, [](const std::string&) { return std::string(64, 'c'); })));
    QVERIFY(text.contains(from));
    text.replace(from, to);
    const auto rows = base::parseJson(text.toStdString());
    QVERIFY(rows);
    const auto read = plan::fromRows(*rows, [](const std::string&) { return std::nullopt; });
    QVERIFY(!read);
    QCOMPARE(QString::fromStdString(read.error().code), code);
}

QTEST_GUILESS_MAIN(Rows)
#include "rows.moc"
