// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of every sample, and what is refused. The worked values stand in tests/reference/trials.cpp.
#include "core/measure/sample.h"

#include "tests/measure/refusal.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::tests::refused;

class TestSample : public QObject {
    Q_OBJECT

private slots:
    // Two of four are drawn, two are faulty: of the six pairs one holds no faulty one.
    void byCounting()
    {
        QVERIFY(std::fabs(chanceToMissAll({4, 2, 2}).value() - 1.0 / 6) < 1e-15);
        QVERIFY(std::fabs(chanceToMissAll({10, 3, 1}).value() - 0.7) < 1e-15);
        QCOMPARE(chanceToMissAll({10, 0, 3}).value(), 1.0);
        QCOMPARE(chanceToMissAll({10, 4, 0}).value(), 1.0);
        QCOMPARE(chanceToMissAll({10, 8, 3}).value(), 0.0);
    }
    // Which are drawn and which are faulty may change places: the chance is the same.
    void drawnAndFaultyMirror()
    {
        for (int drawn = 0; drawn <= 12; ++drawn)
            for (int faulty = 0; faulty <= 12; ++faulty)
                QCOMPARE(chanceToMissAll({12, drawn, faulty}).value(), chanceToMissAll({12, faulty, drawn}).value());
    }
    void moreDrawnMissesLess()
    {
        double before = 2;
        for (int drawn = 0; drawn <= 100; ++drawn) {
            const double miss = chanceToMissAll({100, drawn, 3}).value();
            QVERIFY(drawn > 97 ? miss == 0 : miss < before);
            before = miss;
        }
    }
    void justEnoughIsEnough()
    {
        for (const int lot : {1, 5, 60, 1000, 100000})
            for (const int faulty : {1, 2, 30}) {
                if (faulty > lot) continue;
                const int n = sampleToMeetOne(lot, faulty, 0.95).value();
                QVERIFY(1 - chanceToMissAll({lot, n, faulty}).value() >= 0.95);
                QVERIFY(n == 1 || 1 - chanceToMissAll({lot, n - 1, faulty}).value() < 0.95);
            }
    }
    void whatACleanSampleProves()
    {
        QCOMPARE(faultyAtMost(100, 100, 0.95).value(), 0);
        QCOMPARE(faultyAtMost(100, 0, 0.95).value(), 100);
        for (const int drawn : {10, 50, 90}) {
            const int most = faultyAtMost(100, drawn, 0.95).value();
            QVERIFY(chanceToMissAll({100, drawn, most}).value() > 0.05);
            QVERIFY(chanceToMissAll({100, drawn, most + 1}).value() <= 0.05 + 1e-12);
        }
    }
    // NFPA 72: a tenth, at most fifty.
    void sizeOfARetest()
    {
        QCOMPARE(retestSample(0).value(), 0);
        QCOMPARE(retestSample(1).value(), 1);
        QCOMPARE(retestSample(95).value(), 10);
        QCOMPARE(retestSample(100).value(), 10);
        QCOMPARE(retestSample(101).value(), 11);
        QCOMPARE(retestSample(800).value(), 50);
    }
    void badInput()
    {
        QCOMPARE(refused(chanceToMissAll({0, 0, 0})), std::string("measure.out-of-range lot"));
        QCOMPARE(refused(chanceToMissAll({5, 6, 1})), std::string("measure.out-of-range drawn"));
        QCOMPARE(refused(chanceToMissAll({5, -1, 1})), std::string("measure.out-of-range drawn"));
        QCOMPARE(refused(chanceToMissAll({5, 1, 6})), std::string("measure.out-of-range faulty"));
        QCOMPARE(refused(chanceToMissAll({2000000, 1, 6})), std::string("measure.out-of-range lot"));
        QCOMPARE(refused(sampleToMeetOne(5, 0, 0.9)), std::string("measure.out-of-range faulty"));
        QCOMPARE(refused(sampleToMeetOne(5, 1, 1)), std::string("measure.out-of-range confidence"));
        QCOMPARE(refused(sampleToMeetOne(5, 1, std::nan(""))), std::string("measure.out-of-range confidence"));
        QCOMPARE(refused(faultyAtMost(5, 6, 0.9)), std::string("measure.out-of-range drawn"));
        QCOMPARE(refused(faultyAtMost(5, 5, 0.4)), std::string("measure.out-of-range confidence"));
        QCOMPARE(refused(retestSample(-1)), std::string("measure.out-of-range rest"));
    }
};

QTEST_GUILESS_MAIN(TestSample)
#include "sample.moc"
