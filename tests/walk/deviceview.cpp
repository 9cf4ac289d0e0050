// SPDX-License-Identifier: GPL-3.0-or-later
// Proofs and the device's verdict: core/walk/EVENTS.md, "Verdict of a device" and "Proofs".
#include "tests/walk/bench.h"

#include <QTest>

using namespace proofwalk;
using namespace proofwalk::walk;

class DeviceViewTest : public QObject {
    Q_OBJECT

private slots:
    void inputAloneIsNeverPass();
    void everyPromiseProvedIsPass();
    void tamperIsPartOfInput();
    void notApplicableProvesNothing();
    void worstCoreStepHolds();
    void noAccessOfTheWholeDevice();
    void noAccessGivesWayToAnAnswer();
    void responseStandsForItsLike();
    void withdrawnTripStandsForNothing();
    void fireIsNeverStoodFor();
    void differentDelayIsNotItsLike();
    void kindWithoutSheetIsToDo();
    void addingAFailNeverImproves();
};

namespace {

ProofState proof(const Bench& bench, const std::string& tag, ProofKind kind)
{
    return viewDevice(bench.state, bench.device(tag)).proof(kind).state;
}

Verdict verdict(const Bench& bench, const std::string& tag)
{
    return viewDevice(bench.state, bench.device(tag)).verdict;
}

/// The store room's movement detector made to agree with the back door in everything a response hangs on.
std::shared_ptr<const Scope> twoAlike() { return scopeOf(cornerShop()); }

} // namespace

void DeviceViewTest::inputAloneIsNeverPass()
{
    Bench bench;
    bench.passAll("GR-06", {"response", "received"});
    COMPARE_WORD(proof(bench, "GR-06", ProofKind::input), ProofState::lit);
    COMPARE_WORD(proof(bench, "GR-06", ProofKind::response), ProofState::promised);
    COMPARE_WORD(verdict(bench, "GR-06"), Verdict::toDo);
}

void DeviceViewTest::everyPromiseProvedIsPass()
{
    Bench bench;
    for (const ScopeDevice& device : bench.state.scope->devices) bench.passAll(device.device->tag);
    for (const ScopeDevice& device : bench.state.scope->devices) {
        const DeviceView view = viewDevice(bench.state, device);
        QVERIFY2(view.openProofs().empty(), device.device->tag.c_str());
        COMPARE_WORD(view.verdict, Verdict::pass);
    }
}

void DeviceViewTest::tamperIsPartOfInput()
{
    Bench bench;
    bench.passAll("GR-06", {"tamper-open", "tamper-shut"});
    COMPARE_WORD(proof(bench, "GR-06", ProofKind::input), ProofState::underWay);
}

void DeviceViewTest::notApplicableProvesNothing()
{
    Bench bench;
    bench.passAll("GR-06", {"opened", "closed"});
    bench.answer(bench.step("GR-06", "opened"), Outcome::notApplicable);
    bench.answer(bench.step("GR-06", "closed"), Outcome::notApplicable);
    QVERIFY(proof(bench, "GR-06", ProofKind::input) != ProofState::lit);
    COMPARE_WORD(verdict(bench, "GR-06"), Verdict::toDo);
}

void DeviceViewTest::worstCoreStepHolds()
{
    Bench bench;
    bench.passAll("GR-06");
    bench.answer(bench.step("GR-06", "fixing"), Outcome::notAsPlanned);
    COMPARE_WORD(verdict(bench, "GR-06"), Verdict::fail);
}

void DeviceViewTest::noAccessOfTheWholeDevice()
{
    Bench bench;
    bench.passAll("GR-10", {"lowest-place", "wetted", "time-to-signal", "dried", "somebody-acts", "response"});
    bench.tell("a", NoAccessBody{bench.device("GR-10").device->id, {}});
    COMPARE_WORD(verdict(bench, "GR-10"), Verdict::noAccess);
}

void DeviceViewTest::noAccessGivesWayToAnAnswer()
{
    Bench bench;
    bench.tell("a", NoAccessBody{bench.device("GR-06").device->id, {}});
    bench.answer(bench.step("GR-06", "opened"), Outcome::asPlanned, "b"); // b never saw the no-access
    COMPARE_WORD(bench.verdict(bench.step("GR-06", "opened")), Verdict::pass);
    QVERIFY(!viewStep(bench.state, bench.step("GR-06", "opened")).disagreement);
    COMPARE_WORD(bench.verdict(bench.step("GR-06", "closed")), Verdict::noAccess);
}

void DeviceViewTest::responseStandsForItsLike()
{
    Bench bench(twoAlike());
    bench.passAll("GR-06");                            // back door: really tripped
    bench.passAll("GR-07", {"response"});              // store room movement: input and received only
    const DeviceView view = viewDevice(bench.state, bench.device("GR-07"));
    QVERIFY(view.proof(ProofKind::response).standIn == &bench.device("GR-06"));
    COMPARE_WORD(view.verdict, Verdict::pass);
}

void DeviceViewTest::withdrawnTripStandsForNothing()
{
    Bench bench(twoAlike());
    bench.passAll("GR-06", {"response"});
    const auto trip = bench.answer(bench.step("GR-06", "response"), Outcome::asPlanned);
    bench.passAll("GR-07", {"response"});
    bench.tell("a", WithdrawBody{trip, {}});
    COMPARE_WORD(proof(bench, "GR-07", ProofKind::response), ProofState::promised);
    COMPARE_WORD(verdict(bench, "GR-07"), Verdict::toDo);
}

void DeviceViewTest::fireIsNeverStoodFor()
{
    Bench bench;
    bench.passAll("GR-04");
    bench.passAll("GR-08", {"response"}); // same zone, same everything, but fire
    COMPARE_WORD(proof(bench, "GR-08", ProofKind::response), ProofState::promised);
}

void DeviceViewTest::differentDelayIsNotItsLike()
{
    Bench bench;
    bench.passAll("GR-06");               // no delay
    bench.passAll("GR-01", {"response"}); // entry delay
    COMPARE_WORD(proof(bench, "GR-01", ProofKind::response), ProofState::promised);
}

void DeviceViewTest::kindWithoutSheetIsToDo()
{
    plan::Plan plan = cornerShop();
    plan.devices.front().kind = "beam-pair";
    Bench bench(scopeOf(std::move(plan)));
    COMPARE_WORD(verdict(bench, "GR-01"), Verdict::toDo);
}

void DeviceViewTest::addingAFailNeverImproves()
{
    for (const std::string& tag : {std::string("GR-02"), std::string("GR-05"), std::string("GR-09")}) {
        Bench bench;
        for (const StepKey& key : bench.device(tag).steps) {
            const Verdict before = verdict(bench, tag);
            bench.answer(key, Outcome::notAsPlanned);
            QVERIFY2(verdict(bench, tag) <= before, key.name.c_str());
        }
    }
}

QTEST_GUILESS_MAIN(DeviceViewTest)
#include "deviceview.moc"
