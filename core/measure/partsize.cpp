// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/partsize.h"

#include "core/measure/eseries.h"

#include <algorithm>
#include <cmath>

namespace proofwalk::measure {
namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr double unusual = 1e-4; // of a size outside what is usual: unlikely, not impossible; our choice
constexpr double vague = 0.0004; // decades: a thousandth of the value, so that an exact size is not impossible

/// The network's resistance with the part at nothing, at `middle_ohm`, and open; at one end of all other parts.
struct Curve {
    double atNothing;
    double atMiddle;
    double whenOpen;
    double middle_ohm;

    bool isConstant() const { return std::isinf(atNothing) || atMiddle == atNothing; }
    /// The size at which the resistance is `wanted`; 0 or infinite where the whole curve lies above or below it.
    double sizeAt(double wanted) const
    {
        if (wanted <= atNothing) return 0;
        if (wanted >= whenOpen) return infinity;
        if (std::isinf(whenOpen)) return middle_ohm * (wanted - atNothing) / (atMiddle - atNothing);
        return middle_ohm * (whenOpen - atMiddle) / (atMiddle - atNothing) * (wanted - atNothing) / (whenOpen - wanted);
    }
};

/// What sizes are thought of beforehand; our choice, without a source. Resistors of loops lie between a hundred ohms
/// and a megohm; a contact or joint beyond these is open, a leak above is none.
Sizes usualSizes(Mistake what)
{
    switch (what) {
    case Mistake::resistorWrong: return {1e2, 1e6};
    case Mistake::leakage: return {1, 1e7};
    case Mistake::contactResistance: return {1, 1e4};
    default: return {1, 1e5};
    }
}

/// A size in the region where the network's resistance depends on it, for a well-conditioned solution.
double middleSize_ohm(const Network& network, const Suspicion& suspicion)
{
    switch (suspicion.what) {
    case Mistake::resistorWrong: return network.parts()[suspicion.part].ohm.nominal_ohm;
    case Mistake::leakage: return 1e4;
    default: return 100;
    }
}

} // namespace

Sizes within(const Sizes& a, const Sizes& b)
{
    return {std::max(a.least_ohm, b.least_ohm), std::min(a.most_ohm, b.most_ohm)};
}

Sizes sizesFor(const Network& network, const Suspicion& suspicion, const LoopReading& reading, double range_ohm)
{
    Suspicion trial = suspicion;
    const auto with = [&](double size_ohm) {
        trial.size = {size_ohm, size_ohm, size_ohm};
        return spanOf(network, withMistake(network, trial, reading.handling));
    };
    const double middle_ohm = middleSize_ohm(network, suspicion);
    const Span nothing = with(0), middle = with(middle_ohm), open = with(infinity);
    const Curve least{nothing.least_ohm, middle.least_ohm, open.least_ohm, middle_ohm};
    const Curve most{nothing.most_ohm, middle.most_ohm, open.most_ohm, middle_ohm};

    const bool overRange = std::isinf(reading.ohm);
    const double low = overRange ? range_ohm : reading.ohm - reading.expanded_ohm;
    const double high = overRange ? infinity : reading.ohm + reading.expanded_ohm;
    // A curve that the size does not move either lets the reading be, whatever the size, or never.
    if (!overRange && !(least.atNothing <= high)) return noSize;
    if (overRange ? !(most.whenOpen > low) : !(most.whenOpen >= low)) return noSize;
    return {most.isConstant() ? 0 : most.sizeAt(low), overRange || least.isConstant() ? infinity : least.sizeAt(high)};
}

double usualShare(Mistake what, const Sizes& sizes)
{
    const Sizes usual = usualSizes(what);
    const Sizes both = within(usual, sizes);
    if (both.least_ohm > both.most_ohm) return unusual;
    return (std::log10(both.most_ohm / both.least_ohm) + vague) / std::log10(usual.most_ohm / usual.least_ohm);
}

double middleOf(const Sizes& sizes)
{
    if (std::isinf(sizes.most_ohm)) return sizes.least_ohm;
    if (sizes.least_ohm <= 0) return sizes.most_ohm;
    return std::sqrt(sizes.least_ohm) * std::sqrt(sizes.most_ohm);
}

PreferredIn preferredIn(const Sizes& sizes, double relativeTolerance)
{
    PreferredIn found;
    const double middle = middleOf(sizes);
    const Sizes usual = usualSizes(Mistake::resistorWrong);
    const auto digits = digitsOf(Series::E24);
    int all = 0;
    for (double scale = usual.least_ohm / 100; 100 * scale < usual.most_ohm; scale *= 10) // the digits are three
        for (const int each : digits) {
            const double value = each * scale;
            ++all;
            if (value * (1 + relativeTolerance) < sizes.least_ohm || value * (1 - relativeTolerance) > sizes.most_ohm)
                continue;
            ++found.count;
            if (!found.nearest_ohm || std::fabs(value - middle) < std::fabs(*found.nearest_ohm - middle))
                found.nearest_ohm = value;
        }
    found.share = found.count / static_cast<double>(all);
    return found;
}

} // namespace proofwalk::measure
