// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/subject.h"

#include "core/base/text.h"

#include <algorithm>

namespace proofwalk::walk {
namespace {

/// The row of `rows` whose member is `found`, or an error that names the nearest.
template <class R>
Result<std::string> idOf(const std::vector<R>& rows, std::string R::* member, const std::string& found,
                         const char* code)
{
    const auto row = std::ranges::find(rows, found, member);
    if (row != rows.end()) return row->id;
    std::vector<std::string> known;
    for (const R& each : rows) known.push_back(each.*member);
    return failure(code, "", {{"found", found}, {"nearest", base::nearestWord(found, known)}});
}

Result<std::string> timerId(const plan::Plan& plan, const std::string& timer, const std::string& area)
{
    if (const plan::Timer* row = plan.findTimer(timer, area)) return row->id;
    std::vector<std::string> known;
    for (const plan::Timer& each : plan.timers) known.push_back(each.timer + ", " + each.area);
    const std::string found = timer + ", " + area;
    return failure("walk.timer-unknown", "", {{"found", found}, {"nearest", base::nearestWord(found, known)}});
}

/// The steps a subject shows: a device's card, or everything whose subject it is.
std::vector<StepKey> stepsOf(const Scope& scope, const std::string& id)
{
    if (const ScopeDevice* device = scope.deviceOf(id)) return device->steps;
    std::vector<StepKey> steps;
    for (auto each = scope.steps.lower_bound({id, "", ""}); each != scope.steps.end() && each->first.subject == id;
         ++each)
        steps.push_back(each->first);
    return steps;
}

} // namespace

Result<std::string> subjectOf(const Scope& scope, Line& line)
{
    const plan::Plan& plan = *scope.plan;
    auto device = line.maybeText("device"), zone = line.maybeText("zone");
    auto timer = line.maybeText("timer"), area = line.maybeText("area");
    for (auto* each : {&device, &zone, &timer, &area})
        if (!*each) return passOn(*each);

    const int given =
        int{!device->empty()} + int{!zone->empty()} + int{!timer->empty()} + int{timer->empty() && !area->empty()};
    if (given != 1) return failure("command.subject-missing", "");
    if (!device->empty()) return idOf(plan.devices, &plan::Device::tag, *device, "walk.device-unknown");
    if (!zone->empty()) return idOf(plan.zones, &plan::Zone::zone, *zone, "walk.zone-unknown");
    if (!timer->empty()) return timerId(plan, *timer, *area);
    return idOf(plan.areas, &plan::Area::area, *area, "walk.area-unknown");
}

Result<StepKey> stepOf(const Scope& scope, Line& line)
{
    auto subject = subjectOf(scope, line);
    if (!subject) return passOn(subject);
    auto name = line.text("step");
    auto signal = line.maybeText("signal");
    if (!name) return passOn(name);
    if (!signal) return passOn(signal);

    const ScopeDevice* device = scope.deviceOf(*subject);
    if (device != nullptr && device->kind == nullptr)
        return failure("walk.no-sheet", device->device->tag, {{"kind", device->device->kind}});
    std::vector<StepKey> found;
    std::vector<std::string> known, signals;
    for (const StepKey& key : stepsOf(scope, *subject)) {
        known.push_back(key.name);
        if (key.name != *name || (!signal->empty() && key.signal != *signal)) continue;
        found.push_back(key);
        signals.push_back(key.signal);
    }
    if (found.empty())
        return failure("walk.step-unknown", "", {{"found", *name}, {"nearest", base::nearestWord(*name, known)}});
    if (found.size() > 1)
        return failure("walk.step-ambiguous", "", {{"found", *name}, {"wanted", base::join(signals, ", ")}});
    return found.front();
}

} // namespace proofwalk::walk
