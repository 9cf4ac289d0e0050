// SPDX-License-Identifier: GPL-3.0-or-later
// The ladder to the signature: every rung stands when its reason does, and goes when it is gone.
#include "core/walk/readiness.h"
#include "tests/walk/bench.h"

#include <QTest>

using namespace proofwalk;
using namespace proofwalk::walk;

namespace {

const base::WallClock asOf{1'800'000'900'000, 0};

bool stands(const Bench& bench, const std::string& code, const std::string& subject = {})
{
    const auto readiness = readinessOf(bench.state, asOf);
    return std::ranges::any_of(readiness.rungs, [&](const Rung& rung) {
        return rung.code == code && (subject.empty() || rung.subject == subject);
    });
}

/// A shop with everything proved, shown and accepted.
Bench finished()
{
    Bench bench;
    for (const ScopeDevice& device : bench.state.scope->devices) bench.passAll(device.device->tag);
    for (const ScopeSequence& sequence : bench.state.scope->sequences) {
        for (const StepKey& key : sequence.steps) {
            const ScopeStep& step = *bench.state.scope->step(key);
            if (step.step.kind == catalogue::StepKind::time)
                bench.read(key, step.step.quantity == "exit-delay" ? "60 s" : "30 s", "0");
            else bench.answer(key, Outcome::asPlanned);
        }
    }
    bench.tell("a", ShownBody{"setting", {}});
    bench.tell("a", AcceptanceBody{});
    return bench;
}

} // namespace

class ReadinessTest : public QObject {
    Q_OBJECT

private slots:
    void finishedIsComplete();
    void untestedDeviceBlocks();
    void onTestBlocksUntilOff();
    void temporaryBlocksUntilPutBack();
    void walkTestBlocks();
    void openFindingBlocksUntilAccepted();
    void lifeSafetyIsNeverCompleteByAcceptance();
    void noAccessIsAnException();
    void tooCloseBlocksUntilAccepted();
    void unknownEventBlocks();
    void oldCalibrationIsTold();
};

void ReadinessTest::finishedIsComplete()
{
    const Bench bench = finished();
    const auto readiness = readinessOf(bench.state, asOf);
    for (const Rung& rung : readiness.rungs) qInfo("%s %s", rung.code.c_str(), rung.subject.c_str());
    COMPARE_WORD(readiness.standing, Standing::complete);
}

void ReadinessTest::untestedDeviceBlocks()
{
    Bench bench = finished();
    bench.answer(bench.step("GR-06", "opened"), Outcome::asPlanned);
    bench.tell("a", WithdrawBody{viewStep(bench.state, bench.step("GR-06", "opened")).newest->fact.event, {}});
    bench.tell("a", WithdrawBody{viewStep(bench.state, bench.step("GR-06", "opened")).newest->fact.event, {}});
    QVERIFY(stands(bench, "ready.untested", "GR-06"));
    COMPARE_WORD(readinessOf(bench.state, asOf).standing, Standing::notReady);
}

void ReadinessTest::onTestBlocksUntilOff()
{
    Bench bench = finished();
    bench.tell("a", OnTestBody{"7415", {}, {}, ""});
    QVERIFY(stands(bench, "ready.on-test", "7415"));
    bench.tell("a", OffTestBody{"7415", {}, {}});
    QVERIFY(!stands(bench, "ready.on-test"));
}

void ReadinessTest::temporaryBlocksUntilPutBack()
{
    Bench bench = finished();
    const auto lead = bench.tell("a", TemporaryBody{"lead off", "", {}});
    QVERIFY(stands(bench, "ready.put-back", "lead off"));
    bench.tell("a", PutBackBody{lead});
    QVERIFY(!stands(bench, "ready.put-back"));
}

void ReadinessTest::walkTestBlocks()
{
    Bench bench = finished();
    const std::string area = bench.state.scope->plan->areas.front().id;
    bench.tell("a", StateBody{area, catalogue::SystemState::walkTest, ""});
    QVERIFY(stands(bench, "ready.state", "shop"));
    bench.tell("a", StateBody{area, catalogue::SystemState::unset, ""});
    QVERIFY(!stands(bench, "ready.state"));
}

void ReadinessTest::openFindingBlocksUntilAccepted()
{
    Bench bench = finished();
    const auto key = bench.step("GR-06", "opened");
    bench.answer(key, Outcome::notAsPlanned);
    QVERIFY(stands(bench, "ready.finding", "GR-06"));
    bench.tell("a", AcceptBody{{key}, {}, {}});
    QVERIFY(!stands(bench, "ready.finding"));
    COMPARE_WORD(readinessOf(bench.state, asOf).standing, Standing::completeWithExceptions);
}

void ReadinessTest::lifeSafetyIsNeverCompleteByAcceptance()
{
    Bench bench = finished();
    const auto key = bench.step("GR-04", "alarm-seen");
    bench.answer(key, Outcome::notAsPlanned);
    bench.tell("a", AcceptBody{{key}, {}, {}});
    COMPARE_WORD(readinessOf(bench.state, asOf).standing, Standing::notCompleteInformed);
}

void ReadinessTest::noAccessIsAnException()
{
    Bench bench = finished();
    bench.answer(bench.step("GR-06", "opened"), Outcome::noAccess);
    QVERIFY(stands(bench, "ready.no-access", "GR-06"));
    COMPARE_WORD(readinessOf(bench.state, asOf).standing, Standing::completeWithExceptions);
}

void ReadinessTest::tooCloseBlocksUntilAccepted()
{
    Bench bench = finished();
    const auto key = bench.step("GR-06", "loop-ohms");
    bench.read(key, "4.66 kOhm", "0.04"); // the wall stands at 4.653: 4700 less 1 %
    QVERIFY(stands(bench, "ready.too-close", "GR-06"));
    bench.tell("a", FindingBody{key, Grade::recommendation, {}, ""});
    bench.tell("a", AcceptBody{{key}, {}, {}});
    QVERIFY(!stands(bench, "ready.too-close"));
    QVERIFY(stands(bench, "ready.too-close-accepted", "GR-06"));
}

void ReadinessTest::unknownEventBlocks()
{
    Bench bench = finished();
    journal::Event event;
    event.chain = std::string(32, 'f');
    event.n = 1;
    event.kind = "dream";
    event.hash = std::string(64, '1');
    apply(bench.state, event);
    QVERIFY(stands(bench, "ready.unjudged"));
}

void ReadinessTest::oldCalibrationIsTold()
{
    Bench bench = finished();
    bench.tell("a", KitBody{"meter A", {}, "2024-01-01", {}});
    QVERIFY(stands(bench, "ready.calibration", "meter A"));
    COMPARE_WORD(readinessOf(bench.state, asOf).standing, Standing::complete);
}

QTEST_GUILESS_MAIN(ReadinessTest)
#include "readiness.moc"
