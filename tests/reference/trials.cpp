// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: Clopper and Pearson (1934), Wilson (1927), the success run, the hypergeometric and binomial distributions,
// ISO 2859-1; each beside its vector in measure-vectors.json. Tolerance: that of the vector.
#include "core/measure/trials.h"
#include "core/measure/distribution.h"
#include "core/measure/sample.h"
#include "tests/reference/vectors.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::reference::Vector;

class TrialsReference : public QObject {
    Q_OBJECT

private:
    static TrialCount countOf(const Vector& v) { return {static_cast<int>(v.in("k")), static_cast<int>(v.in("n"))}; }
    static bool runsAgree(const Vector& v, const QStringList& letters)
    {
        bool all = true;
        for (int i = 0; i < v.rowCount("cases_confidence_reliability"); ++i) {
            const auto one = v.row("cases_confidence_reliability", i);
            const double runs = successRun(one[1], one[0]).value();
            if (v.expected().contains(letters[i])) all = v.agrees(letters[i], runs) && all;
        }
        return all && v.isServed();
    }

private slots:
    void intervals_data()
    {
        QTest::addColumn<QString>("id");
        for (const char* id : {"trials-01", "trials-02", "trials-03", "trials-04", "trials-05", "trials-06",
                               "trials-07", "trials-08", "trials-09", "trials-10", "trials-11", "trials-12"})
            QTest::newRow(id) << QString(id);
    }
    void intervals()
    {
        QFETCH(QString, id);
        const Vector v(id);
        const double confidence = v.in("conf");
        const auto exact = clopperPearson(countOf(v), confidence).value();
        QVERIFY(v.agrees("cp_lo", exact.lower));
        QVERIFY(v.agrees("cp_hi", exact.upper));
        QVERIFY(v.agrees("z", normalQuantile(1 - (1 - confidence) / 2).value()));
        const auto score = wilson(countOf(v), confidence).value();
        QVERIFY(v.agrees("wilson_lo", score.lower));
        QVERIFY(v.agrees("wilson_hi", score.upper));
        QVERIFY(v.agrees("cp_lower_one_sided", provedAtLeast(countOf(v), confidence).value()));
        QVERIFY(v.isServed());
    }
    void printedIntervals()
    {
        for (const char* id : {"trials-07-pub", "trials-08-pub"}) {
            const Vector v(id);
            const auto exact = clopperPearson(countOf(v), v.in("conf")).value();
            QVERIFY(v.agrees("cp_lo", exact.lower));
            QVERIFY(v.agrees("cp_hi", exact.upper));
            QVERIFY(v.isServed());
        }
    }
    void intervalTable()
    {
        const Vector v("trials-21");
        QVERIFY(v.rowCount("rows") >= 60);
        for (int i = 0; i < v.rowCount("rows"); ++i) {
            const auto row = v.row("rows", i); // n, k, confidence, exact two-sided, score two-sided, exact one-sided
            const TrialCount count{static_cast<int>(row[1]), static_cast<int>(row[0])};
            const auto exact = clopperPearson(count, row[2]).value();
            const auto score = wilson(count, row[2]).value();
            const std::vector<double> found{exact.lower, exact.upper, score.lower, score.upper,
                                            provedAtLeast(count, row[2]).value()};
            for (std::size_t j = 0; j < found.size(); ++j)
                QVERIFY2(std::fabs(found[j] - row[j + 3]) <= v.absoluteTolerance(),
                         qPrintable(QString("row %1, column %2: %3").arg(i).arg(j + 3).arg(found[j], 0, 'g', 9)));
        }
    }
    void successRuns()
    {
        const QStringList letters{"n90_90", "n95_90", "n95_95", "n95_99", "n95_999"};
        QVERIFY(runsAgree(Vector("trials-13-pub"), letters));
        QVERIFY(runsAgree(Vector("trials-13"), letters));
        const Vector v("trials-14");
        for (const double n : v.ins("n")) {
            const int count = static_cast<int>(n);
            QVERIFY(v.agrees(QString("r%1").arg(count), provedAtLeast({count, count}, v.in("c")).value()));
        }
        QVERIFY(v.isServed());
    }
    void uniformPrior()
    {
        for (const char* id : {"trials-15-pub", "trials-15"}) {
            const Vector v(id);
            for (const double n : v.ins("n")) {
                const int count = static_cast<int>(n);
                QVERIFY(v.agrees(QString("b%1").arg(count), provedWithUniformPrior(count, v.in("c")).value()));
            }
            QVERIFY(v.isServed());
        }
    }
    void rules()
    {
        const Vector v("trials-16");
        for (const int needed : {4, 5})
            for (const double chance : v.ins("p")) {
                const QString letter = QString("p%1of5_%2").arg(needed).arg(std::lround(chance * 100));
                if (v.expected().contains(letter))
                    QVERIFY(v.agrees(letter, chanceToKeepRule(needed, 5, chance).value()));
            }
        QVERIFY(v.isServed());
    }
    void retestSamples()
    {
        const Vector v("trials-17");
        const char* letters[] = {"miss100", "miss800"};
        for (int i = 0; i < 2; ++i) {
            const auto one = v.row("cases_lot_sample_faulty", i);
            const Sample sample{static_cast<int>(one[0]), static_cast<int>(one[1]), static_cast<int>(one[2])};
            QVERIFY(v.agrees(letters[i], chanceToMissAll(sample).value()));
            QCOMPARE(retestSample(sample.lot).value(), sample.drawn); // a tenth, at most fifty
        }
        // As if each fault were drawn anew: 5 of them, each left out with the chance 1 - 50 / 800.
        QVERIFY(v.agrees("miss800_binomial", binomialAtMost(0, 5, 50.0 / 800).value()));
        QVERIFY(v.isServed());
        const Vector w("trials-18");
        const int lot = static_cast<int>(w.in("lot"));
        const int faulty = static_cast<int>(w.in("faulty"));
        for (const double drawn : w.ins("samples"))
            QVERIFY(w.agrees(QString("p_at_%1").arg(drawn),
                             1 - chanceToMissAll({lot, static_cast<int>(drawn), faulty}).value()));
        QVERIFY(w.isServed());
        QCOMPARE(sampleToMeetOne(lot, faulty, 0.95).value(), 38);
    }
    void acceptance()
    {
        const Vector v("trials-19");
        const char* letters[] = {"p1", "p25", "p5", "p10"};
        const auto chances = v.ins("p");
        for (std::size_t i = 0; i < chances.size(); ++i)
            QVERIFY(v.agrees(
                letters[i],
                binomialAtMost(static_cast<int>(v.in("ac")), static_cast<int>(v.in("n")), chances[i]).value()));
        QVERIFY(v.isServed());
    }
    void atMost()
    {
        const Vector v("trials-20");
        const int n = static_cast<int>(v.in("n"));
        QVERIFY(v.agrees("upper", provedAtMost({static_cast<int>(v.in("f")), n}, 0.95).value()));
        QVERIFY(v.agrees("exact_for_zero", provedAtMost({0, n}, 0.95).value()));
        // The rule of three is 3 / n: what the exact limit stays under, and comes near to.
        QVERIFY(v.agrees("rule_of_three_for_zero", 3.0 / n));
        QVERIFY(provedAtMost({0, n}, 0.95).value() < v.out("rule_of_three_for_zero"));
        QVERIFY(v.isServed());
    }
};

QTEST_GUILESS_MAIN(TrialsReference)
#include "trials.moc"
