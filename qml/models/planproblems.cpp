// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/planproblems.h"

#include "core/base/datafolder.h"
#include "core/review/review.h"
#include "qml/models/desk.h"
#include "qml/models/telling.h"
#include "qml/parts/words.h"

#include <algorithm>

namespace proofwalk::models {

PlanProblems::PlanProblems(QObject* parent) : Rows(parent)
{
    connect(&Desk::instance(), &Desk::opened, this, &PlanProblems::refresh);
    refresh();
}

void PlanProblems::refresh()
{
    m_ready = false;
    replace({});
    Q_EMIT changed();
    if (Desk::instance().job() == nullptr) return;
    // Every check of the review takes its time: on the job's thread, so that the window does not wait.
    using Reviewed = Result<std::vector<review::Remark>>;
    Desk::instance().ask<Reviewed>(
        this,
        [](walk::Job& job) -> Reviewed {
            auto knowledge = review::Knowledge::read(base::dataFolder());
            if (!knowledge) return passOn(knowledge);
            const walk::Scope& scope = *job.state().scope;
            auto remarks = review::reviewPlan(*scope.plan, *scope.catalogue, *knowledge);
            std::ranges::stable_sort(remarks, {}, &review::Remark::severity);
            return remarks;
        },
        [this](const Reviewed& reviewed) {
            std::vector<ProblemRow> rows;
            if (!reviewed) {
                rows.emplace_back().words = sentence(reviewed.error());
            } else {
                for (const review::Remark& remark : *reviewed) {
                    ProblemRow row;
                    row.where = text(remark.where);
                    row.words = sentence({remark.code, "", remark.arguments});
                    row.severity = parts::phrase("check." + std::string(review::wordOf(remark.severity)));
                    row.error = remark.severity == review::Severity::error;
                    rows.push_back(std::move(row));
                }
            }
            const auto count = static_cast<std::int64_t>(rows.size());
            m_headline = parts::phrase(count == 0   ? "window.plan-fits"
                                       : count == 1 ? "window.plan-problems.one"
                                                    : "window.plan-problems.many",
                                       {{"count", count}});
            m_ready = true;
            replace(std::move(rows));
            Q_EMIT changed();
        });
}

} // namespace proofwalk::models
