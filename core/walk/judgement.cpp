// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/judgement.h"

#include "core/plan/rows.h"

#include <algorithm>

namespace proofwalk::walk {
namespace {

Result<StartBody> startOf(const journal::Record& record)
{
    const auto start =
        std::ranges::find_if(record.events, [](const journal::Event& event) { return event.kind == "start"; });
    if (start == record.events.end() || start->n != 1) return failure("walk.no-start", "");
    auto body = bodyFrom(start->kind, start->v, start->body);
    if (!body) return passOn(body);
    StartBody found = std::get<StartBody>(*body);
    if (found.judgement != judgementVersion)
        return failure("walk.judgement-unknown", "", {{"found", found.judgement}, {"known", judgementVersion}});
    return found;
}

Result<std::string> contentsOf(const journal::Record& record, const std::string& hash, const std::string& name)
{
    const auto found = record.contents.find(hash);
    if (found == record.contents.end()) return failure("walk.contents-missing", name, {{"found", hash.substr(0, 12)}});
    return found->second;
}

Result<plan::Plan> planOf(const journal::Record& record, const StartBody& start)
{
    constexpr base::JsonBounds bounds{std::size_t{64} << 20U, 16};
    auto text = contentsOf(record, start.plan, "plan");
    if (!text) return passOn(text);
    auto rows = base::parseCanonical(*text, bounds);
    if (!rows) return std::unexpected(std::move(rows.error()).within("plan"));
    return plan::fromRows(*rows, [&](const std::string& commitment) -> std::optional<std::string> {
        const auto found = record.privates.find(commitment);
        if (found == record.privates.end()) return std::nullopt;
        return found->second.value;
    });
}

Result<catalogue::Catalogue> catalogueOf(const journal::Record& record, const StartBody& start)
{
    catalogue::Files files;
    for (const auto& [path, hash] : start.catalogue) {
        auto text = contentsOf(record, hash, path);
        if (!text) return passOn(text);
        files[path] = std::move(*text);
    }
    return catalogue::Catalogue::read(std::move(files));
}

Result<std::vector<measure::Conductor>> conductorsOf(const journal::Record& record, const StartBody& start)
{
    for (const auto& [path, hash] : start.tables) {
        if (path != "conductors.csv") continue;
        auto text = contentsOf(record, hash, path);
        if (!text) return passOn(text);
        return measure::readConductors(*text, path);
    }
    return failure("walk.contents-missing", "conductors.csv");
}

std::vector<journal::Event> soundEvents(const journal::Record& record, const journal::Soundness& soundness)
{
    std::vector<journal::Event> events;
    for (const journal::Event& event : record.events) {
        const auto sound = soundness.soundEvents.find(event.chain);
        if (sound != soundness.soundEvents.end() && event.n <= sound->second) events.push_back(event);
    }
    return inOrderSeen(std::move(events));
}

Result<Judged> judge(const journal::Record& record, const catalogue::Catalogue* other)
{
    auto start = startOf(record);
    if (!start) return passOn(start);
    auto plan = planOf(record, *start);
    if (!plan) return passOn(plan);
    auto conductors = conductorsOf(record, *start);
    if (!conductors) return passOn(conductors);
    Result<catalogue::Catalogue> catalogue =
        other != nullptr ? Result<catalogue::Catalogue>(*other) : catalogueOf(record, *start);
    if (!catalogue) return passOn(catalogue);
    auto scope = makeScope(std::move(*plan), std::move(*catalogue), *conductors);
    if (!scope) return passOn(scope);

    Judged judged{std::move(*start), journal::checkRecord(record),
                  emptyState(std::make_shared<const Scope>(std::move(*scope)))};
    for (const journal::Event& event : soundEvents(record, judged.soundness)) apply(judged.state, event);
    return judged;
}

} // namespace

Result<Judged> judgeRecord(const journal::Record& record) { return judge(record, nullptr); }

Result<Judged> judgeRecordWith(const journal::Record& record, const catalogue::Catalogue& catalogue)
{
    return judge(record, &catalogue);
}

std::string reveal(const journal::Record& record, const PrivateRef& ref)
{
    const auto found = record.privates.find(ref.commitment);
    return found == record.privates.end() ? std::string() : found->second.value;
}

} // namespace proofwalk::walk
