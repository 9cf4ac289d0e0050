// SPDX-License-Identifier: GPL-3.0-or-later
// What there is to test: promises by the plan alone, limits brought together, steps of zones shared.
#include "core/walk/limits.h"
#include "core/walk/promises.h"
#include "core/walk/retest.h"
#include "tests/walk/bench.h"

#include <QTest>

using namespace proofwalk;
using namespace proofwalk::walk;

class ScopeTest : public QObject {
    Q_OBJECT

private slots:
    void promises_data();
    void promises();
    void stepOfAZoneIsOneForItsDevices();
    void loopWindowIsResistorAndCable();
    void loopWiredOtherwiseIsNotJudged();
    void timerIsPlannedAndTolerance();
    void planAndRuleSetAreIntersected();
    void excludingLimitsAreAnError();
    void detectorIsHeldToWhatItDrives();
    void terminalsPutTheWholeZoneInDoubt();
};

void ScopeTest::promises_data()
{
    QTest::addColumn<QByteArray>("tag");
    QTest::addColumn<QByteArray>("wanted"); // letters of input, response, output, received
    // By exact rule: input with a zone; response if the zone sounds or is a cause; output if an effect; received if the zone
    // reports and a path of its account leads to anyone. Worked by hand from fixtures/corner-shop.
    QTest::newRow("contact on a loud zone") << QByteArray("GR-01") << QByteArray("IR-S");
    QTest::newRow("silent hold-up that is a cause") << QByteArray("GR-03") << QByteArray("IR-S");
    QTest::newRow("smoke") << QByteArray("GR-04") << QByteArray("IR-S");
    QTest::newRow("sounder with a tamper zone only") << QByteArray("GR-05") << QByteArray("I-O-");
    QTest::newRow("flood that only tells, but is a cause") << QByteArray("GR-10") << QByteArray("IR-S");
}

void ScopeTest::promises()
{
    QFETCH(QByteArray, tag);
    QFETCH(QByteArray, wanted);
    const Bench bench;
    const ScopeDevice& device = bench.device(tag.toStdString());
    QByteArray found;
    for (const ProofKind kind : allProofs)
        found += device.promises(kind) ? "IROS"[static_cast<std::size_t>(kind)] : '-';
    QCOMPARE(found, wanted);
}

void ScopeTest::stepOfAZoneIsOneForItsDevices()
{
    Bench bench;
    const auto here = bench.step("GR-04", "loop-ohms");
    QCOMPARE(here, bench.step("GR-08", "loop-ohms"));
    QCOMPARE(here.signal, std::string("-"));
    bench.read(here, "4.70 kOhm", "0.01");
    COMPARE_WORD(bench.verdict(bench.step("GR-08", "loop-ohms")), Verdict::pass);
}

void ScopeTest::loopWindowIsResistorAndCable()
{
    // Zone 1: 4700 ohm 1 % at the end, 12 m of 0.22 mm2. By hand: 4700 x 0.99 = 4653.0. Upper: 4700 x 1.01 = 4747 and
    // 2 x 12 m of the conductor; IEC 60228's figure for it is under 100 ohm/km, so under 2.4 ohm.
    const Bench bench;
    const ScopeStep& step = *bench.state.scope->step(bench.step("GR-01", "loop-ohms"));
    QVERIFY(step.confirmed.lower && step.confirmed.upper);
    QCOMPARE(base::compare(*step.confirmed.lower, {4653, 0}), std::strong_ordering::equal);
    QVERIFY(base::compare(*step.confirmed.upper, {4747, 0}) > 0);
    QVERIFY(base::compare(*step.confirmed.upper, {47494, -1}) < 0);
}

void ScopeTest::loopWiredOtherwiseIsNotJudged()
{
    plan::Plan plan = cornerShop();
    plan.zones.front().resistors.reset();
    const Bench bench(scopeOf(std::move(plan)));
    for (const auto& [key, step] : bench.state.scope->steps)
        if (key.name == "loop-ohms" && key.subject == bench.device("GR-01").zone->id) QVERIFY(step.confirmed.empty());
}

void ScopeTest::timerIsPlannedAndTolerance()
{
    const Bench bench;
    int found = 0;
    for (const auto& [key, step] : bench.state.scope->steps) {
        if (step.step.quantity != "exit-delay") continue;
        ++found;
        QCOMPARE(base::compare(*step.confirmed.lower, {54, 0}), std::strong_ordering::equal); // 60 less 6
        QCOMPARE(base::compare(*step.confirmed.upper, {66, 0}), std::strong_ordering::equal);
    }
    QCOMPARE(found, 1);
}

namespace {

catalogue::Limit limit(const char* unit, std::optional<base::Decimal> lower, std::optional<base::Decimal> upper,
                       bool confirmed = true)
{
    catalogue::Limit made;
    made.quantity = "entry-delay";
    made.unit = unit;
    made.lower = lower;
    made.upper = upper;
    made.confirmed = confirmed;
    return made;
}

ScopeStep timed()
{
    ScopeStep step;
    step.step.unit = "s";
    step.step.quantity = "entry-delay";
    return step;
}

} // namespace

void ScopeTest::planAndRuleSetAreIntersected()
{
    ScopeStep step = timed();
    QVERIFY(joinLimits(step, {limit("s", base::Decimal{27, 0}, base::Decimal{60, 0}),
                              limit("ms", {}, base::Decimal{45000, 0}), limit("s", {}, base::Decimal{20, 0}, false)}));
    QCOMPARE(base::compare(*step.confirmed.upper, {45, 0}), std::strong_ordering::equal);
    QCOMPARE(base::compare(*step.confirmed.lower, {27, 0}), std::strong_ordering::equal);
    QCOMPARE(base::compare(*step.unconfirmed.upper, {20, 0}), std::strong_ordering::equal); // apart: it only advises
}

void ScopeTest::excludingLimitsAreAnError()
{
    ScopeStep step = timed();
    const auto joined = joinLimits(step, {limit("s", base::Decimal{50, 0}, {}), limit("s", {}, base::Decimal{45, 0})});
    QVERIFY(!joined);
    QCOMPARE(joined.error().code, std::string("walk.limits-empty"));
}

void ScopeTest::detectorIsHeldToWhatItDrives()
{
    const Bench bench;
    const ScopeStep& step = *bench.state.scope->step(bench.step("GR-04", "alarm-to-sounders"));
    QVERIFY(step.confirmed.upper); // purpose:fire drives GR-05 within 10 s
    QCOMPARE(base::compare(*step.confirmed.upper, {10, 0}), std::strong_ordering::equal);
}

void ScopeTest::terminalsPutTheWholeZoneInDoubt()
{
    Bench bench;
    bench.passAll("GR-04");
    bench.passAll("GR-08");
    const auto finding = bench.step("GR-04", "alarm-seen");
    const auto doubtful = stepsToRetest(bench.state, {finding}, {"terminals"});
    const auto has = [&](const StepKey& key) { return std::ranges::find(doubtful, key) != doubtful.end(); };
    QVERIFY(has(finding));
    QVERIFY(has(bench.step("GR-08", "alarm-seen"))); // the other head of the zone
    QVERIFY(has(bench.step("GR-04", "loop-ohms")));
    QVERIFY(!has(bench.step("GR-08", "head-placed"))); // where it hangs has nothing to do with terminals
    const auto own = stepsToRetest(bench.state, {finding}, {"device"});
    QVERIFY(std::ranges::find(own, bench.step("GR-08", "alarm-seen")) == own.end());
}

QTEST_GUILESS_MAIN(ScopeTest)
#include "scope.moc"
