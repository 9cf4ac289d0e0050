// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: ISO 8201 as in the appendix of a Canadian building code, as quoted on a public page (temporal-three); NFPA 720 and NFPA
// 72, 10 % from memory (temporal-four). The intervals of the vectors were built from these timings, the words follow from
// how they were built. Their temporal-3, temporal-4 and continuous are our temporal-three, temporal-four and steady;
// their other is pulsed or none.
#include "core/measure/pattern.h"
#include "tests/reference/vectors.h"

using namespace proofwalk;
using measure::Pattern;
using reference::Vector;

namespace {

std::vector<measure::Sounding> soundingsOf(const Vector& vector)
{
    std::vector<measure::Sounding> soundings;
    for (int i = 0; i < vector.rowCount("on_intervals_s"); ++i)
        soundings.push_back({vector.row("on_intervals_s", i)[0], vector.row("on_intervals_s", i)[1]});
    return soundings;
}

QString theirWord(Pattern pattern)
{
    switch (pattern) {
    case Pattern::temporalThree: return "temporal-3";
    case Pattern::temporalFour: return "temporal-4";
    case Pattern::steady: return "continuous";
    default: break;
    }
    return "other";
}

/// The first fault by the vectors' word.
QString faultOf(const measure::PatternSight& sight, const measure::PatternDurations& durations)
{
    if (sight.missingPulse) return "missing pulse";
    if (durations.faults.empty()) return "";
    const std::string_view word = wordOf(durations.faults.front());
    return QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()));
}

} // namespace

class Temporal : public QObject {
    Q_OBJECT

private slots:
    void agreesWithTheVectors_data()
    {
        QTest::addColumn<QString>("id");
        for (const char* id : {"temporal-01", "temporal-02", "temporal-03", "temporal-04", "temporal-05", "temporal-06",
                               "temporal-07", "temporal-08", "temporal-09", "temporal-10"})
            QTest::newRow(id) << id;
    }
    void agreesWithTheVectors()
    {
        QFETCH(QString, id);
        const Vector vector(id);
        const auto sight = measure::sightOfPattern(soundingsOf(vector)).value();
        QVERIFY(vector.says("pattern", theirWord(sight.pattern)));
        QVERIFY(vector.agrees("onset_intervals_s", sight.onsetIntervals_s));
        const QJsonObject expected = vector.expected();
        if (expected.contains("period_s")) QVERIFY(vector.agrees("period_s", sight.period_s.value()));
        if (expected.contains("cycles_seen")) QVERIFY(vector.agrees("cycles_seen", sight.cyclesSeen));
        if (expected.contains("cycles_whole")) QVERIFY(vector.agrees("cycles_whole", sight.cyclesWhole));
        if (sight.pattern == Pattern::temporalThree || sight.pattern == Pattern::temporalFour) {
            const auto raw = measure::judgeDurations(sight.pattern, sight.times, 0, 0).value();
            if (expected.contains("durations_ok")) QVERIFY(vector.says("durations_ok", raw.conform.value()));
            if (expected.contains("fault")) QVERIFY(vector.says("fault", faultOf(sight, raw)));
            if (expected.contains("durations_ok_raw")) {
                QVERIFY(vector.says("durations_ok_raw", raw.conform.value()));
                const auto allowed =
                    measure::judgeDurations(sight.pattern, sight.times, vector.in("decay_allowance_s"), 0).value();
                QVERIFY(vector.says("durations_ok_with_decay_0_12", allowed.conform.value()));
            }
        }
        QVERIFY(vector.isServed());
    }
};

QTEST_GUILESS_MAIN(Temporal)
#include "temporal.moc"
