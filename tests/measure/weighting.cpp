// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of the A-weighting, and what is refused. Its values are held against the table in
// tests/reference/sound.cpp.
#include "core/measure/weighting.h"

#include "tests/measure/refusal.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::tests::hostile;
using proofwalk::tests::refused;

class TestWeighting : public QObject {
    Q_OBJECT

private slots:
    // It rises to a crest between 2 and 4 kHz and falls after.
    void oneCrest()
    {
        double before = -100;
        for (double f = 10; f <= 2000; f *= 1.1) {
            QVERIFY(aWeighting_db(f).value() > before);
            before = aWeighting_db(f).value();
        }
        for (double f = 4000; f < 20000; f *= 1.1) {
            QVERIFY(aWeighting_db(f).value() < before);
            before = aWeighting_db(f).value();
        }
        QVERIFY(std::fabs(aWeighting_db(1000).value()) < 0.001);
    }
    // One band alone is its level and its weighting; two equal ones are 3.01 dB more.
    void bandsAddUp()
    {
        const std::vector<Band> one{{1000, 60}};
        QCOMPARE(weightedTotal_dba(one).value(), 60.0);
        const std::vector<Band> two{{1000, 60}, {1000, 60}};
        QVERIFY(std::fabs(weightedTotal_dba(two).value() - 63.0103) < 1e-4);
        const std::vector<Band> low{{10, -40}};
        QVERIFY(weightedTotal_dba(low).has_value());
    }
    void moreLinesMoreEnergy()
    {
        double before = -1;
        for (const int lines : {1, 2, 3, 10, 19}) {
            const auto wave = squareWave(520, lines).value();
            QCOMPARE(static_cast<int>(wave.harmonics.size()), lines);
            QVERIFY(wave.total_db > before);
            before = wave.total_db;
        }
        // All lines together: pi^2 / 8 of the first (the sum of 1 / n^2 over odd n), 0.912 dB.
        QVERIFY(before < 0.912 && before > 0.8);
        QCOMPARE(squareWave(520, 1).value().total_db, 0.0);
    }
    void badInput()
    {
        for (const double bad : hostile({.zero = true, .negative = true, .huge = true})) {
            QCOMPARE(refused(aWeighting_db(bad)), std::string("measure.out-of-range frequency_hz"));
            QCOMPARE(refused(aWeightingOfBand_db(bad)), std::string("measure.not-a-band"));
            QCOMPARE(refused(squareWave(bad, 1)), std::string("measure.out-of-range fundamental_hz"));
        }
        QCOMPARE(refused(aWeighting_db(20001)), std::string("measure.out-of-range frequency_hz"));
        QCOMPARE(refused(aWeightingOfBand_db(1001)), std::string("measure.not-a-band"));
        QCOMPARE(refused(squareWave(520, 0)), std::string("measure.out-of-range lines"));
        QCOMPARE(refused(squareWave(520, 20)), std::string("measure.out-of-range fundamental_hz")); // 39 x 520 Hz
        QCOMPARE(refused(weightedTotal_dba({})), std::string("measure.levels-missing"));
        QCOMPARE(refused(weightedTotal_dba(std::vector<Band>{{1000, std::nan("")}})),
                 std::string("measure.out-of-range levels_db"));
    }
};

QTEST_GUILESS_MAIN(TestWeighting)
#include "weighting.moc"
