// SPDX-License-Identifier: GPL-3.0-or-later
// Source: core/walk/EVENTS.md, `answer`: both counts of a trial may be missing. A record may come from anywhere.
#include "core/walk/results.h"

#include "tests/walk/bench.h"

#include <QtTest>

using namespace proofwalk::walk;

class ResultsTest : public QObject {
    Q_OBJECT

private slots:
    void bothCountsOfATrialStandInItsRow();
    void oneCountOfATrialIsNoFigure_data();
    void oneCountOfATrialIsNoFigure();
};

namespace {

/// The row of a trial's step after an answer with those counts.
QString rowAfter(std::optional<std::int64_t> hits, std::optional<std::int64_t> tries)
{
    Bench bench;
    AnswerBody body;
    for (const auto& [key, step] : bench.state.scope->steps)
        if (step.step.kind == proofwalk::catalogue::StepKind::trial) body.step = key;
    if (body.step.name.empty()) throw std::runtime_error("the corner shop has no trial");
    body.outcome = Outcome::value;
    body.state = bench.state.scope->step(body.step)->step.states.front();
    body.hits = hits;
    body.tries = tries;
    bench.tell("a", body);
    for (const QString& row : QString::fromStdString(resultsCsv(bench.state)).split("\r\n"))
        if (row.startsWith("step,") && !row.contains(",to-do,")) return row; // no other step is answered
    throw std::runtime_error("no step is answered");
}

} // namespace

void ResultsTest::bothCountsOfATrialStandInItsRow() { QVERIFY(rowAfter(3, 3).contains(",3 of 3,")); }

void ResultsTest::oneCountOfATrialIsNoFigure_data()
{
    QTest::addColumn<bool>("hits");
    QTest::newRow("hits alone") << true;
    QTest::newRow("tries alone") << false;
}

void ResultsTest::oneCountOfATrialIsNoFigure()
{
    QFETCH(bool, hits);
    const QString row = hits ? rowAfter(3, std::nullopt) : rowAfter(std::nullopt, 3);
    QVERIFY2(row.contains(",fail,"), qPrintable(row));
    QVERIFY2(!row.contains(" of "), qPrintable(row));
}

QTEST_GUILESS_MAIN(ResultsTest)
#include "results.moc"
