// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/loopwords.h"

#include "core/measure/loopsight.h"
#include "core/walk/loopwiring.h"
#include "qml/models/figures.h"
#include "qml/parts/words.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace proofwalk::models {
namespace {

using measure::LoopState;

const char* wordOf(LoopState state)
{
    switch (state) {
    case LoopState::closed: return "closed";
    case LoopState::alarm: return "alarm";
    case LoopState::open: return "open";
    case LoopState::shorted: return "shorted";
    }
    return "closed";
}

const char* codeOf(const measure::LoopSight& sight)
{
    if (!sight.fits.empty()) return wordOf(sight.fits.front());
    return sight.fromClosed_ohm > 0 ? "high" : "low";
}

QString stateWord(const std::optional<LoopState>& state)
{
    return state ? parts::phrase(std::string("window.loop-state.") + wordOf(*state)) : QString();
}

} // namespace

std::optional<measure::LoopWiring> wiringOf(const Snapshot& job, const walk::StepKey& step)
{
    const auto& zones = job.scope().plan->zones;
    const auto zone = std::ranges::find_if(zones, [&](const plan::Zone& each) { return each.id == step.subject; });
    if (zone == zones.end()) return {};
    const auto conductor = measure::conductorByName(zone->conductor);
    if (!conductor) return {};
    const auto wiring = walk::loopWiring(*zone, std::array{*conductor});
    return wiring ? *wiring : std::nullopt;
}

LoopWords loopWords(const Snapshot& job, const walk::StepKey& step, const base::Quantity& reading)
{
    const auto wiring = wiringOf(job, step);
    const auto inBase = base::inBaseUnit(reading);
    if (!wiring || !inBase) return {};
    const auto sight = measure::sightOf(*wiring, base::toDouble(*inBase));
    // A bare pair has no resistor that could be wrong, and its short reads like its rest.
    if (!sight || wiring->resistors == 0) return {};
    const double scale = base::toDouble(reading.unit->scale);
    const std::string unit = " " + std::string(reading.unit->written);
    const std::vector<Argument> arguments{{"value", written(reading).toStdString()},
                                          {"by", shortFigure(std::abs(sight->fromClosed_ohm) / scale).toStdString()},
                                          {"end", shortFigure(wiring->eol_ohm / scale).toStdString() + unit},
                                          {"below", stateWord(sight->below).toStdString()},
                                          {"above", stateWord(sight->above).toStdString()}};
    const std::string code = std::string("window.loop-reads.") + codeOf(*sight);
    LoopWords words;
    if (sight->fits.size() == 1 && sight->fits.front() == LoopState::closed) return words;
    words.line = parts::phrase(code, arguments);
    words.sentences = parts::phrase(code + ".long", arguments);
    words.tell = parts::phrase(code + ".tell", arguments);
    return words;
}

QString whiskerWords(const Whisker& whisker)
{
    const auto words = [&](double reach, double limit) {
        return parts::phrase("window.whisker", {{"uncertainty", shortFigure(whisker.uncertainty).toStdString()},
                                                {"reach", shortFigure(reach).toStdString()},
                                                {"limit", shortFigure(limit).toStdString()}});
    };
    const double low = whisker.value - whisker.uncertainty, high = whisker.value + whisker.uncertainty;
    if (low < whisker.lower && high >= whisker.lower)
        return words(whisker.value >= whisker.lower ? low : high, whisker.lower);
    if (high > whisker.upper && low <= whisker.upper)
        return words(whisker.value <= whisker.upper ? high : low, whisker.upper);
    return {};
}

} // namespace proofwalk::models
