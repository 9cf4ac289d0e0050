// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/runglist.h"

#include "qml/models/desk.h"
#include "qml/models/telling.h"

namespace proofwalk::models {

RungList::RungList(QObject* parent) : Rows(parent)
{
    connect(&Desk::instance(), &Desk::opened, this, &RungList::refresh);
    connect(&Desk::instance(), &Desk::published, this, &RungList::refresh);
    refresh();
}

void RungList::setTread(int tread)
{
    if (tread == m_tread) return;
    m_tread = tread;
    refresh();
    Q_EMIT treadChanged();
}

void RungList::go(int row) const
{
    const auto job = Desk::instance().job();
    if (job != nullptr && row >= 0 && row < static_cast<int>(m_rungs.size()))
        goWhere(m_rungs[static_cast<std::size_t>(row)], *job);
}

void RungList::refresh()
{
    const auto job = Desk::instance().job();
    std::vector<RungRow> rows;
    m_rungs.clear();
    if (job != nullptr) {
        for (const walk::Rung& rung : job->readiness().rungs) {
            if (m_tread < 0 ? !rung.blocking : treadOf(rung) != m_tread) continue;
            const walk::DeviceView* view = job->view(rung.subject);
            m_rungs.push_back(rung);
            rows.push_back({});
            rows.back().sentence = sentenceOf(rung);
            rows.back().verdict = view == nullptr ? parts::verdict::ToDo : markOf(view->verdict);
            rows.back().blocking = rung.blocking;
        }
    }
    replace(std::move(rows));
    Q_EMIT countChanged();
}

} // namespace proofwalk::models
