// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/diagnosis.h"

#include "core/measure/inputs.h"
#include "core/measure/partsize.h"

#include <algorithm>
#include <cmath>

namespace proofwalk::measure {
namespace {

constexpr std::size_t mostReadings = 16;
constexpr double leastShare = 1e-3; // less is not worth a look while others explain it too; our choice
constexpr double offSeries = 0.1; // a value in no series against one that is; our choice

/// The name of the part that stands last; groups have none.
std::string lastNameOf(const Network& network)
{
    std::string name;
    for (const Part& each : network.parts())
        if (!each.name.empty()) name = each.name;
    return name;
}

Result<void> check(const Network& network, const LoopReading& reading, double range_ohm)
{
    if (std::isnan(reading.ohm) || reading.ohm < 0) return outOfRange("ohm", reading.ohm, "zero or more, or open");
    if (std::isfinite(reading.ohm) && reading.ohm > range_ohm)
        return outOfRange("ohm", reading.ohm, fmt::format("at most {}, or open", range_ohm));
    if (auto sound = checkNotNegative("expanded_ohm", reading.expanded_ohm); !sound) return sound;
    if (reading.handling.end != FarEnd::untouched && network.farEnd() == 0)
        return failure("measure.far-end", "", {{"found", lastNameOf(network)}});
    return {};
}

Result<void> check(const Network& network, const LoopQuestion& question)
{
    if (question.readings.empty() || question.readings.size() > mostReadings)
        return failure("measure.readings", "", {{"found", static_cast<std::int64_t>(question.readings.size())}});
    if (auto sound = checkAbove("range_ohm", question.range_ohm, 0); !sound) return sound;
    if (auto sound = checkAbove("least_to_earth_ohm", question.leastToEarth_ohm, 0); !sound) return sound;
    if (question.toEarth_ohm && !(*question.toEarth_ohm >= 0))
        return outOfRange("to_earth_ohm", *question.toEarth_ohm, "zero or more, or open");
    for (const LoopReading& each : question.readings)
        if (auto sound = check(network, each, question.range_ohm); !sound) return sound;
    return {};
}

/// What the reading leaves of the window: 0 if it lies outside, 1 if the window is no wider than the reading is vague.
double agreement(const Span& span, const LoopReading& reading, double range_ohm)
{
    if (std::isinf(reading.ohm)) return span.most_ohm > range_ohm ? 1 : 0;
    const double low = reading.ohm - reading.expanded_ohm;
    const double high = reading.ohm + reading.expanded_ohm;
    // Rounding of a sum of parts must not throw out a reading that is exactly at an end.
    const double slack = 1e-9 * high;
    if (std::isinf(span.least_ohm) || span.least_ohm > high + slack || span.most_ohm < low - slack) return 0;
    const double vague = std::max(2 * reading.expanded_ohm, 1e-3 * reading.ohm + 0.1); // no meter is better; our choice
    return std::min(1.0, vague / (span.most_ohm - span.least_ohm + vague));
}

/// All readings together against one explanation.
class Trial {
public:
    Trial(const Network& network, const LoopQuestion& question) : m_network(network), m_question(question) {}

    std::optional<Finding> of(const Suspicion& suspicion) const
    {
        return hasSize(suspicion.what) ? sized(suspicion) : plain(suspicion);
    }

private:
    Span spanFor(const Suspicion& suspicion, const Handling& handling) const
    {
        if (suspicion.what != Mistake::shorted) return spanOf(m_network, withMistake(m_network, suspicion, handling));
        const double most = m_network.cableMost_ohm();
        return {0, most / 2, most};
    }
    std::optional<Finding> plain(const Suspicion& suspicion) const
    {
        double likelihood = weightOf(suspicion.what) * earth(suspicion.what);
        for (const LoopReading& each : m_question.readings) {
            likelihood *= agreement(spanFor(suspicion, each.handling), each, m_question.range_ohm);
            if (likelihood == 0) return std::nullopt;
        }
        return Finding{suspicion, std::nullopt, std::nullopt, likelihood};
    }
    std::optional<Finding> sized(Suspicion suspicion) const
    {
        const double seen = earth(suspicion.what);
        if (seen == 0) return std::nullopt;
        Sizes possible = anySize;
        for (const LoopReading& each : m_question.readings) {
            possible = within(possible, sizesFor(m_network, suspicion, each, m_question.range_ohm));
            if (possible.least_ohm > possible.most_ohm) return std::nullopt;
        }
        const bool isResistor = suspicion.what == Mistake::resistorWrong;
        Finding finding{suspicion, std::nullopt, std::nullopt, 0};
        double prior = usualShare(suspicion.what, possible);
        if (isResistor) {
            const Span& planned = m_network.parts()[suspicion.part].ohm;
            if (possible.least_ohm <= planned.most_ohm && possible.most_ohm >= planned.least_ohm) return std::nullopt;
            const PreferredIn preferred = preferredIn(possible, planned.most_ohm / planned.nominal_ohm - 1);
            finding.preferred_ohm = preferred.nearest_ohm;
            prior = preferred.count > 0 ? preferred.share : offSeries * prior;
        }
        const double middle = middleOf(possible);
        finding.suspicion.size = {middle, middle, middle};
        finding.share = weightOf(suspicion.what) * seen * prior * others(finding.suspicion);
        if (!(finding.share > 0)) return std::nullopt;
        finding.suspicion.size = {possible.least_ohm, middle, possible.most_ohm};
        finding.size = Window{possible.least_ohm,
                              std::isfinite(possible.most_ohm) ? std::optional(possible.most_ohm) : std::nullopt};
        return finding;
    }
    /// What the readings leave of a mistake of that size, but for the one that fixed it: the strictest.
    double others(const Suspicion& suspicion) const
    {
        constexpr double least = 0.01; // the middle of what all allow may lie just beside what one allows
        double product = 1, strictest = 1;
        for (const LoopReading& each : m_question.readings) {
            const double agrees =
                std::max(least, agreement(spanFor(suspicion, each.handling), each, m_question.range_ohm));
            product *= agrees;
            strictest = std::min(strictest, agrees);
        }
        return product / strictest;
    }
    /// What the reading to earth, if there is one, leaves of a mistake.
    double earth(Mistake what) const
    {
        constexpr double strange = 1e-3; // a second, independent mistake; our choice
        if (!m_question.toEarth_ohm) return 1;
        const bool low = *m_question.toEarth_ohm < m_question.leastToEarth_ohm;
        if (what == Mistake::earthFault) return low ? 1 : 0;
        return !low ? 1 : what == Mistake::leakage ? 0.5 : strange;
    }

    const Network& m_network;
    const LoopQuestion& m_question;
};

/// Lets the shares add up to 1.
void weigh(std::vector<Finding>& findings)
{
    double sum = 0;
    for (const Finding& each : findings) sum += each.share;
    for (Finding& each : findings) each.share /= sum;
}

} // namespace

Result<std::vector<Finding>> diagnose(const Network& network, const LoopQuestion& question)
{
    if (auto sound = check(network, question); !sound) return passOn(sound);
    const Trial trial(network, question);
    std::vector<Finding> findings;
    bool asPlanned = false;
    for (const Suspicion& each : mistakesOf(network)) {
        if (asPlanned && hasSize(each.what)) continue;
        auto finding = trial.of(each);
        if (!finding) continue;
        asPlanned = asPlanned || each.what == Mistake::none;
        findings.push_back(*finding);
    }
    weigh(findings);
    std::erase_if(findings, [](const Finding& each) { return each.share < leastShare; });
    weigh(findings);
    std::ranges::stable_sort(findings, std::ranges::greater{}, &Finding::share);
    return findings;
}

Window expectedReading(const Network& network, const Finding& finding, const Handling& handling)
{
    if (finding.suspicion.what == Mistake::shorted) return {0.0, network.cableMost_ohm()};
    const Span span = spanOf(network, withMistake(network, finding.suspicion, handling));
    if (std::isinf(span.least_ohm)) return {};
    return {span.least_ohm, std::isinf(span.most_ohm) ? std::nullopt : std::optional(span.most_ohm)};
}

std::optional<Handling> handlingThatTells(const Network& network, const Finding& a, const Finding& b,
                                          double relativeUncertainty)
{
    const auto differ = [&](const Handling& handling) {
        Window low = expectedReading(network, a, handling), high = expectedReading(network, b, handling);
        if (!low.lower_ohm || !high.lower_ohm) return low.lower_ohm.has_value() != high.lower_ohm.has_value();
        if (*low.lower_ohm > *high.lower_ohm) std::swap(low, high);
        const auto away = [&](double ohm) { return relativeUncertainty * ohm + 1; };
        return low.upper_ohm && *low.upper_ohm + away(*low.upper_ohm) < *high.lower_ohm - away(*high.lower_ohm);
    };
    if (differ({})) return Handling{};
    for (std::size_t i = 0; i < network.parts().size(); ++i)
        if (network.parts()[i].kind == PartKind::contact && differ({.acted = partBit(i)}))
            return Handling{.acted = partBit(i)};
    if (network.farEnd() != 0)
        for (const FarEnd end : {FarEnd::shorted, FarEnd::opened})
            if (differ({.end = end})) return Handling{.end = end};
    return std::nullopt;
}

} // namespace proofwalk::measure
