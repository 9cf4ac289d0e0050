// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/stepref.h"

#include "core/walk/subject.h"

#include <algorithm>

namespace proofwalk::models {
namespace {

template <class Row>
const Row* rowWith(const std::vector<Row>& rows, const std::string& id)
{
    const auto row = std::ranges::find_if(rows, [&](const Row& each) { return each.id == id; });
    return row == rows.end() ? nullptr : &*row;
}

} // namespace

base::Json::Object named(const QString& subject)
{
    base::Json::Object members;
    const std::string word = subject.section(' ', 0, 0).toStdString(), rest = subject.section(' ', 1).toStdString();
    if (word == "zone" || word == "area") members[word] = rest;
    else if (word == "timer") {
        members["timer"] = subject.section(' ', 1, 1).toStdString();
        members["area"] = subject.section(' ', 2).toStdString();
    } else if (!subject.isEmpty()) members["device"] = subject.toStdString();
    return members;
}

QString subjectWord(const plan::Plan& plan, const std::string& id)
{
    if (const auto* device = rowWith(plan.devices, id)) return QString::fromStdString(device->tag);
    if (const auto* zone = rowWith(plan.zones, id)) return QString::fromStdString("zone " + zone->zone);
    if (const auto* area = rowWith(plan.areas, id)) return QString::fromStdString("area " + area->area);
    if (const auto* timer = rowWith(plan.timers, id))
        return QString::fromStdString("timer " + timer->timer + " " + timer->area);
    return {};
}

Result<walk::StepKey> stepNamed(const Snapshot& job, const QString& subject, const QString& step, const QString& signal)
{
    auto members = named(subject);
    members["step"] = step.toStdString();
    if (!signal.isEmpty()) members["signal"] = signal.toStdString();
    walk::Line line{base::Json(std::move(members))};
    return walk::stepOf(job.scope(), line);
}

} // namespace proofwalk::models
