// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/spotlist.h"

#include "qml/models/desk.h"
#include "qml/models/telling.h"

namespace proofwalk::models {

SpotList::SpotList(QObject* parent) : Rows(parent)
{
    connect(&Desk::instance(), &Desk::opened, this, &SpotList::refresh);
    connect(&Desk::instance(), &Desk::published, this, &SpotList::refresh);
}

void SpotList::setTag(const QString& tag)
{
    if (tag == m_tag) return;
    m_tag = tag;
    refresh();
    Q_EMIT tagChanged();
}

QString SpotList::tagAt(int row) const
{
    const bool there = row >= 0 && row < rowCount();
    return there ? rows()[static_cast<std::size_t>(row)].tag : QString();
}

void SpotList::refresh()
{
    const auto job = Desk::instance().job();
    const walk::DeviceView* here = job == nullptr ? nullptr : job->view(m_tag.toStdString());
    std::vector<SpotRow> rows;
    if (here != nullptr) {
        const plan::Device& device = *here->device->device;
        for (const walk::DeviceView& view : job->views()) {
            const plan::Device& other = *view.device->device;
            if (other.room != device.room || other.floor != device.floor) continue;
            SpotRow row;
            row.tag = text(other.tag);
            row.position = text(other.position);
            row.verdict = markOf(view.verdict);
            row.here = &other == &device;
            rows.push_back(std::move(row));
        }
    }
    replace(std::move(rows));
}

} // namespace proofwalk::models
