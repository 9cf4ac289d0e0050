// SPDX-License-Identifier: GPL-3.0-or-later
// Every body goes to JSON and back unchanged, and EVENTS.md names every kind and member that the code has.
#include "core/walk/bodies.h"
#include "tests/walk/bench.h"

#include <QTest>

using namespace proofwalk;
using namespace proofwalk::walk;

namespace {

const std::string id(32, 'a');
const std::string hash(64, 'b');
const PrivateRef hidden{hash};
const StepKey key{id, "alarm", "opened"};

/// One body of each kind with every member filled.
std::vector<Body> oneOfEach()
{
    AnswerBody answer;
    answer.step = key;
    answer.outcome = Outcome::value;
    answer.reading = base::Quantity{{340, -2}, base::findUnit("kOhm")};
    answer.uncertainty = base::Decimal{5, -2};
    answer.instrument = hash;
    answer.hits = 4;
    answer.tries = 5;
    answer.reason = answer.seen = hidden;
    KitBody kit{
        "meter A", {{"resistance", {{8, -1}, 2, base::Quantity{{1, 0}, base::findUnit("Ohm")}}}}, "2026-03-02", hidden};
    return {
        StartBody{
            "00", "0.1.0", hash, 1, {{"kinds/a.toml", hash}}, {{"conductors.csv", hash}}, {{"english/a.toml", hash}}},
        OpenBody{"00", "0.1.0"},
        answer,
        NoAccessBody{id, hidden},
        FindingBody{key, Grade::deficiency, hidden, "2026-12-02"},
        PhotographBody{key, hidden, hidden},
        RepairBody{{key}, {"cable"}, {key}, hidden},
        AcceptBody{{key}, hidden, hidden},
        WithdrawBody{hash, hidden},
        kit,
        ClockBody{"panel", -3000, 1000},
        StateBody{id, catalogue::SystemState::set, id},
        OnTestBody{"7301", hidden, hidden, "2026-11-25T15:30:00+00:00"},
        OffTestBody{"7301", hidden, hidden},
        AsFoundBody{hidden, hidden},
        TemporaryBody{"lead off", id, hidden},
        PutBackBody{hash},
        ShownBody{"setting", hidden},
        NoteBody{id, hidden},
        AcceptanceBody{hidden, hidden, hidden},
        VouchBody{"00", "01", "02", "03"},
        HandedOverBody{hash, "final"}};
}

} // namespace

class BodiesTest : public QObject {
    Q_OBJECT

private slots:
    void roundTrip();
    void everyMissingMemberIsNamed();
    void unknownMemberIsNamed();
    void unknownKindAndVersion();
    void readingsAreNotFloats();
    void thePageNamesEveryMember();
};

void BodiesTest::roundTrip()
{
    const base::WallClock at{1'795'600'000'250, 60};
    for (const Body& body : oneOfEach()) {
        const base::Json json = toJson(body, at);
        const auto back = bodyFrom(kindOf(body), 1, json);
        QVERIFY2(back, std::string(kindOf(body)).c_str());
        QCOMPARE(base::canonical(toJson(*back, observedAt(json))), base::canonical(json));
    }
}

void BodiesTest::everyMissingMemberIsNamed()
{
    // Members that EVENTS.md marks with "?" may be absent; leaving out any other is an error that names it.
    for (const Body& body : oneOfEach()) {
        const base::Json whole = toJson(body, {});
        int refused = 0;
        for (const auto& [name, member] : *whole.object()) {
            base::Json without = whole;
            without.object()->erase(name);
            const auto back = bodyFrom(kindOf(body), 1, without);
            if (back) continue;
            ++refused;
            QCOMPARE(back.error().code, std::string("walk.body"));
            QCOMPARE(std::get<std::string>(back.error().arguments.at(1).value), name);
        }
        const bool onlyPrivate = std::holds_alternative<AsFoundBody>(body)
                              || std::holds_alternative<AcceptanceBody>(body) || std::holds_alternative<NoteBody>(body);
        QVERIFY2(refused > 0 || onlyPrivate, std::string(kindOf(body)).c_str());
    }
}

void BodiesTest::unknownMemberIsNamed()
{
    base::Json json = toJson(PutBackBody{hash}, {});
    json["colour"] = "red";
    const auto back = bodyFrom("put-back", 1, json);
    QVERIFY(!back);
    QCOMPARE(std::get<std::string>(back.error().arguments.at(1).value), std::string("colour"));
}

void BodiesTest::unknownKindAndVersion()
{
    QCOMPARE(bodyFrom("dream", 1, base::Json()).error().code, std::string("walk.kind-unknown"));
    QCOMPARE(bodyFrom("answer", 2, base::Json()).error().code, std::string("walk.kind-unknown"));
}

void BodiesTest::readingsAreNotFloats()
{
    const base::Json json = toJson(oneOfEach().at(2), {});
    QVERIFY(base::canonical(json).find("\"reading\":{\"e\":-2,\"m\":340,\"unit\":\"kOhm\"}") != std::string::npos);
}

void BodiesTest::thePageNamesEveryMember()
{
    const std::string page = must(base::readFile(PROOFWALK_SOURCE "/core/walk/EVENTS.md"));
    for (const Body& body : oneOfEach()) {
        QVERIFY2(page.find("`" + std::string(kindOf(body)) + "`") != std::string::npos,
                 std::string(kindOf(body)).c_str());
        const base::Json json = toJson(body, {});
        for (const auto& [name, member] : *json.object()) {
            const bool named =
                page.find("`" + name + "`") != std::string::npos || page.find("`" + name + "?`") != std::string::npos;
            QVERIFY2(named, name.c_str());
        }
    }
}

QTEST_GUILESS_MAIN(BodiesTest)
#include "bodies.moc"
