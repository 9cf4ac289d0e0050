// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/verdictcount.h"

#include "qml/models/desk.h"
#include "qml/models/telling.h"

namespace proofwalk::models {

VerdictCount::VerdictCount(QObject* parent) : Rows(parent)
{
    connect(&Desk::instance(), &Desk::opened, this, &VerdictCount::refresh);
    connect(&Desk::instance(), &Desk::published, this, &VerdictCount::refresh);
    refresh();
}

void VerdictCount::refresh()
{
    constexpr std::array inOrder{walk::Verdict::pass,     walk::Verdict::fail,         walk::Verdict::tooClose,
                                 walk::Verdict::noAccess, walk::Verdict::toDo,         walk::Verdict::running,
                                 walk::Verdict::retest,   walk::Verdict::notApplicable};
    const auto job = Desk::instance().job();
    std::vector<VerdictRow> rows;
    if (job != nullptr) {
        const auto counts = walk::countVerdicts(job->state());
        for (const walk::Verdict verdict : inOrder) {
            const int count = counts[static_cast<std::size_t>(verdict)];
            VerdictRow row;
            row.verdict = markOf(verdict);
            row.words = verdictWord(verdict);
            if (count > 0) row.words += QStringLiteral(" %1").arg(count);
            rows.push_back(std::move(row));
        }
    }
    replace(std::move(rows));
}

} // namespace proofwalk::models
