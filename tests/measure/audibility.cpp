// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of every requirement and of the advice, and what is refused. Worked values: tests/reference/sound.cpp.
#include "core/measure/audibility.h"

#include "tests/measure/refusal.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::tests::hostile;
using proofwalk::tests::refused;

class TestAudibility : public QObject {
    Q_OBJECT

private slots:
    void louderSurroundingsNeverAskLess()
    {
        using enum AudibilityRule;
        for (const auto rule : {nfpaPublic, nfpaPrivate, nfpaSleeping, bsGeneral, bsReduced, bsBedhead}) {
            double before = 0;
            for (double ambient_dba = 0; ambient_dba <= 90; ambient_dba += 5) {
                const auto limits = audibilityLimits(rule, {ambient_dba, {}}).value();
                QVERIFY(limits.least_dba >= before && limits.least_dba <= limits.most_dba);
                before = limits.least_dba;
            }
        }
    }
    // The quiet floors of the rules: 75 where people sleep; 65, 60 and 75 of BS 5839-1.
    void floors()
    {
        const auto least = [](AudibilityRule rule) { return audibilityLimits(rule, {20, {}}).value().least_dba; };
        QCOMPARE(least(AudibilityRule::nfpaSleeping), 75.0);
        QCOMPARE(least(AudibilityRule::nfpaPublic), 35.0);
        QCOMPARE(least(AudibilityRule::nfpaPrivate), 30.0);
        QCOMPARE(least(AudibilityRule::bsGeneral), 65.0);
        QCOMPARE(least(AudibilityRule::bsReduced), 60.0);
        QCOMPARE(least(AudibilityRule::bsBedhead), 75.0);
    }
    // NFPA 72: above 110 dB(A) no sounder may be; 98 dB(A) of ambient would ask for 113.
    void tooLoudToBeHeard()
    {
        QCOMPARE(refused(audibilityLimits(AudibilityRule::nfpaPublic, {98, {}})),
                 std::string("measure.too-loud-to-be-heard"));
        QVERIFY(audibilityLimits(AudibilityRule::nfpaPublic, {95, {}}).has_value());
        QVERIFY(audibilityLimits(AudibilityRule::bsGeneral, {115, {}}).has_value());
    }
    // What was advised, added to what there is, makes what is wanted.
    void theAdviceFillsTheGap()
    {
        const SoundSource sounder{97, 1};
        for (const double measured_dba : {50.0, 60.0, 64.9}) {
            const auto advice = soundersNeeded(measured_dba, 65, sounder, 20).value();
            const std::vector<double> both{measured_dba, advice.added_dba};
            QVERIFY(std::fabs(sumOfLevels_db(both).value() - 65) < 1e-9);
            const double there_db = levelAtDistance_db({97 - 20, 1}, advice.oneMoreWithin_m).value();
            QVERIFY(std::fabs(there_db - advice.added_dba) < 1e-9);
            const double withMore = measured_dba + 10 * std::log10(1 + advice.moreOfTheSame);
            QVERIFY(withMore >= 65 - 1e-9);
            QVERIFY(measured_dba + 10 * std::log10(advice.moreOfTheSame) < 65); // one less is too few
        }
        // 62 to 65 dB: once more as loud brings 3.01 dB.
        QCOMPARE(soundersNeeded(62, 65, sounder, 0).value().moreOfTheSame, 1);
        QCOMPARE(soundersNeeded(55, 65, sounder, 0).value().moreOfTheSame, 9); // ten times the energy
    }
    void enoughIsEnough()
    {
        const auto advice = soundersNeeded(70, 65, {97, 1}, 0).value();
        QCOMPARE(advice.moreOfTheSame, 0);
        QCOMPARE(advice.oneMoreWithin_m, 0.0);
        QVERIFY(advice.lacking_dba < 0);
    }
    void hostileNumbers()
    {
        for (const double bad : hostile({.negative = true, .huge = true})) {
            QCOMPARE(refused(audibilityLimits(AudibilityRule::bsGeneral, {bad, {}})),
                     std::string("measure.out-of-range ambient_dba"));
            QCOMPARE(refused(audibilityLimits(AudibilityRule::nfpaPublic, {50, bad})),
                     std::string("measure.out-of-range loudest_dba"));
            QCOMPARE(refused(soundersNeeded(bad, 65, {97, 1}, 0)), std::string("measure.out-of-range measured_dba"));
            QCOMPARE(refused(soundersNeeded(60, bad, {97, 1}, 0)), std::string("measure.out-of-range wanted_dba"));
            QCOMPARE(refused(soundersNeeded(60, 65, {97, 1}, bad)), std::string("measure.out-of-range loss_db"));
            QCOMPARE(refused(soundersNeeded(60, 65, {97, bad}, 0)), std::string("measure.out-of-range rated_at_m"));
        }
        QCOMPARE(refused(soundersNeeded(34, 65, {97, 1}, 0)), std::string("measure.out-of-range measured_dba"));
    }
};

QTEST_GUILESS_MAIN(TestAudibility)
#include "audibility.moc"
