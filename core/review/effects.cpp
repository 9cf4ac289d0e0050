// SPDX-License-Identifier: GPL-3.0-or-later
// Whether each cause can happen and each effect has somebody to bring it about.
#include "core/review/checks.h"

#include <algorithm>
#include <array>

namespace proofwalk::review {
namespace {

constexpr std::array<std::string_view, 9> purposes{"intrusion", "hold-up",     "fire",   "carbon-monoxide", "gas",
                                                   "medical",   "environment", "tamper", "technical"};

/// "zone:7" to "zone" and "7"; a bare tag to "" and the tag.
std::pair<std::string_view, std::string_view> parted(std::string_view text)
{
    const auto colon = text.find(':');
    if (colon == std::string_view::npos) return {"", text};
    return {text.substr(0, colon), text.substr(colon + 1)};
}

template <class R>
void tellUnknown(const plan::Effect& effect, std::string_view name, const ByName<R>& known, const std::string& code,
                 Remarks& remarks)
{
    if (known.contains(name)) return;
    remarks.add(code, placeOf(effect, "effects.csv", effect.cause + " to " + effect.effect),
                {{"found", std::string(name)}, {"nearest", nearest(name, known)}});
}

} // namespace

void checkEffectsExist(const Context& context, Remarks& remarks)
{
    for (const plan::Effect& effect : context.plan.effects) {
        const auto [sort, name] = parted(effect.effect);
        if (sort == "path") tellUnknown(effect, name, context.paths, "review.effect-path-unknown", remarks);
        else tellUnknown(effect, name, context.devices, "review.effect-device-unknown", remarks);
    }
}

void checkCausesExist(const Context& context, Remarks& remarks)
{
    for (const plan::Effect& effect : context.plan.effects) {
        const auto [sort, name] = parted(effect.cause);
        if (sort == "zone") tellUnknown(effect, name, context.zones, "review.cause-zone-unknown", remarks);
        else if (sort == "mode") tellUnknown(effect, name, context.modes, "review.cause-mode-unknown", remarks);
        else if (sort.empty()) tellUnknown(effect, name, context.devices, "review.cause-device-unknown", remarks);
        else if (std::ranges::find(purposes, name) == purposes.end())
            remarks.add(
                "review.cause-purpose-unknown", placeOf(effect, "effects.csv", effect.cause),
                {{"found", std::string(name)}, {"nearest", nearestOf(name, {purposes.begin(), purposes.end()})}});
        else if (std::ranges::none_of(context.plan.zones, [&](const plan::Zone& zone) {
                     return zone.purpose == name || zone.purpose.empty(); // a blank one may become it
                 }))
            remarks.add("review.cause-purpose-unused", placeOf(effect, "effects.csv", effect.cause),
                        {{"found", std::string(name)}});
    }
}

} // namespace proofwalk::review
