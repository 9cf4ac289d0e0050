// SPDX-License-Identifier: GPL-3.0-or-later
// Stages, and the device to go to next. What may be answered with one tap follows from the rule that nothing of life
// safety, no reading, cover or restore is waved through (core/walk/EVENTS.md), and from the sheets' own order.
#include "core/walk/stages.h"
#include "core/walk/nextdevice.h"
#include "core/walk/upkeep.h"

#include "tests/walk/bench.h"

#include <QTest>

using namespace proofwalk;
using namespace proofwalk::walk;

class StagesTest : public QObject {
    Q_OBJECT

private:
    static void enter(Bench& bench, catalogue::SystemState state)
    {
        for (const plan::Area& area : bench.state.scope->plan->areas) bench.tell("a", StateBody{area.id, state, {}});
    }

    static QString names(const Stage& stage)
    {
        QStringList list;
        for (const StepKey& key : stage.steps) list << QString::fromStdString(key.name);
        return list.join(", ");
    }

private Q_SLOTS:
    /// By hand, from core/catalogue/kinds/contact-surface.toml: a caution stands before "opened" and before the cover.
    void aContactIsThreeMovements()
    {
        Bench bench;
        enter(bench, catalogue::SystemState::walkTest);
        QStringList possible;
        for (const Stage& stage : stagesOf(bench.state, bench.device("GR-06"), false))
            if (stage.possible) possible << names(stage);
        QCOMPARE(possible, QStringList({"fixing", "opened, closed", "tamper-open, tamper-shut, nothing-bridged"}));
    }

    void neverAFigureNorLifeSafetyBesideAnother()
    {
        Bench bench;
        for (const auto state : {catalogue::SystemState::unset, catalogue::SystemState::walkTest}) {
            enter(bench, state);
            for (const ScopeDevice& device : bench.state.scope->devices) {
                std::vector<StepKey> all;
                for (const Stage& stage : stagesOf(bench.state, device, true)) {
                    all.insert(all.end(), stage.steps.begin(), stage.steps.end());
                    if (stage.steps.size() == 1) continue;
                    QVERIFY(stage.steps.size() <= 3);
                    for (const StepKey& key : stage.steps) {
                        const catalogue::Step& step = bench.state.scope->step(key)->step;
                        QVERIFY2(!step.lifeSafety, key.name.c_str());
                        QVERIFY2(step.quantity.empty() && step.kind != catalogue::StepKind::trial, key.name.c_str());
                        if (key != stage.steps.front()) QVERIFY2(step.caution.empty(), key.name.c_str());
                    }
                }
                // No step is lost or doubled.
                std::vector<StepKey> wanted = device.steps;
                std::ranges::sort(wanted);
                std::ranges::sort(all);
                QVERIFY(all == wanted);
            }
        }
    }

    void whatIsAnsweredStandsApart()
    {
        Bench bench;
        enter(bench, catalogue::SystemState::walkTest);
        bench.answer(bench.step("GR-06", "opened"), Outcome::asPlanned);
        const auto stages = stagesOf(bench.state, bench.device("GR-06"), false);
        QCOMPARE(names(stages[stageInHand(stages)]), QString("fixing"));
        for (const Stage& stage : stages)
            if (names(stage).startsWith("opened")) QVERIFY(stage.answered && stage.steps.size() == 1);
    }

    void whatCannotBeDoneNowIsTakenInHandLast()
    {
        Bench bench;
        enter(bench, catalogue::SystemState::set);
        const auto stages = stagesOf(bench.state, bench.device("GR-06"), false);
        QCOMPARE(names(stages[stageInHand(stages)]).contains("response"), true);
        enter(bench, catalogue::SystemState::walkTest);
        bench.passAll("GR-06", {"response", "received"});
        const auto left = stagesOf(bench.state, bench.device("GR-06"), false);
        const Stage& now = left[stageInHand(left)];
        QVERIFY(!now.answered && !now.possible);
    }

    void allAnsweredIsNothingInHand()
    {
        Bench bench;
        enter(bench, catalogue::SystemState::walkTest);
        bench.passAll("GR-06");
        const auto stages = stagesOf(bench.state, bench.device("GR-06"), false);
        QCOMPARE(stageInHand(stages), stages.size());
    }

    void nextGoesRoundAndEnds()
    {
        Bench bench;
        enter(bench, catalogue::SystemState::walkTest);
        QCOMPARE(nextDevice(bench.state, "")->device->tag, std::string("GR-01"));
        const auto* last = nextDevice(bench.state, "GR-09");
        QVERIFY(last != nullptr);
        QCOMPARE(nextDevice(bench.state, last->device->tag)->device->tag, std::string("GR-01"));
        for (const ScopeDevice& device : bench.state.scope->devices) bench.passAll(device.device->tag);
        QVERIFY(nextDevice(bench.state, "") == nullptr);
    }

    void aRetestComesUpAgain()
    {
        Bench bench;
        enter(bench, catalogue::SystemState::walkTest);
        for (const ScopeDevice& device : bench.state.scope->devices) bench.passAll(device.device->tag);
        bench.repair(bench.step("GR-06", "opened"));
        const auto* next = nextDevice(bench.state, "GR-06");
        QVERIFY(next != nullptr);
        QCOMPARE(next->device->tag, std::string("GR-06"));
        const auto stages = stagesOf(bench.state, *next, false);
        QCOMPARE(names(stages[stageInHand(stages)]), QString("opened"));
    }

    void onTestEndsOnlyWithAnOffTestThatSawIt()
    {
        Bench bench;
        QVERIFY(accountsOnTest(bench.state).empty());
        bench.tell("a", OnTestBody{"7415", {}, {}, ""});
        QCOMPARE(accountsOnTest(bench.state).size(), std::size_t{1});
        bench.tell("b", OffTestBody{"7415", {}, {}}); // by one who did not know of it
        QCOMPARE(accountsOnTest(bench.state).size(), std::size_t{1});
        bench.tell("b", OffTestBody{"7415", {}, {}}, {"a"});
        QVERIFY(accountsOnTest(bench.state).empty());
    }

    void withdrawnPutBackIsUpAgain()
    {
        Bench bench;
        const auto lid = bench.tell("a", TemporaryBody{"lid", {}, {}});
        const auto back = bench.tell("a", PutBackBody{lid});
        QVERIFY(notPutBack(bench.state).empty());
        bench.tell("a", WithdrawBody{back, {}});
        QCOMPARE(notPutBack(bench.state).size(), std::size_t{1});
    }
};

QTEST_GUILESS_MAIN(StagesTest)
#include "stages.moc"
