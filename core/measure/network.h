// SPDX-License-Identifier: GPL-3.0-or-later
// A loop as a network of parts given as data: resistors, contacts and cable in series and in parallel, seen from the
// panel's terminals with the loop disconnected. No wiring is assumed: what an installer built is written down and
// computed by Ohm's law.
#pragma once

#include "core/base/result.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::measure {

/// Where a resistance may lie. An open circuit is infinite at all three.
struct Span {
    double least_ohm;
    double nominal_ohm;
    double most_ohm;
};

inline constexpr Span noResistance{0, 0, 0};
inline constexpr Span openCircuit{std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity(),
                                  std::numeric_limits<double>::infinity()};

/// One after the other; side by side. Each end of the whole is made of the same end of the parts, since it grows with
/// each of them.
Span inSeries(const Span& a, const Span& b);
Span inParallel(const Span& a, const Span& b);

enum class PartKind { resistor, contact, cable, series, parallel };

/// One part. The parts of a group stand before the group itself, so that one pass over the list computes the whole.
struct Part {
    PartKind kind = PartKind::resistor;
    std::string name;          ///< of a resistor, contact or cable; a group has none
    Span ohm = noResistance;   ///< of a resistor or cable
    bool restClosed = true;    ///< of a contact: how it stands when nothing acts on it
    std::size_t members = 0;   ///< of a group: how many of the parts and groups before it are its own
};

/// A resistor of that nominal value, anywhere in its tolerance.
Part resistor(std::string name, double nominal_ohm, double tolerance_pct);
/// A contact of no resistance.
Part contact(std::string name, bool restClosed);
/// A length of the pair, out and back. What follows it in its series stands beyond it, at its far end.
Part cable(std::string name, double least_ohm, double most_ohm);
/// The `members` parts or groups before it, in series or in parallel.
Part group(PartKind kind, std::size_t members);

/// Parts by number, a bit each.
using Parts = std::uint64_t;
inline constexpr Parts partBit(std::size_t part) { return Parts{1} << part; }

/// A sound network: built once, then computed in any circumstances without a further check.
class Network {
public:
    /// Of parts in the order described at Part, the last one being the whole.
    /// Errors: measure.network-size {found} (none, or more than 64 parts and groups); measure.network-order {found} (a
    /// group of more members than stand before it, or parts left over); measure.network-name {found} (two parts of one
    /// name, or one without); measure.out-of-range {input, found, wanted}: `input` names the part. A resistor is above
    /// 0 and finite, its least above 0 (so its tolerance is below 100 %); a cable is 0 or more, its least not above its
    /// most.
    static Result<Network> of(std::vector<Part> parts);

    const std::vector<Part>& parts() const { return m_parts; }
    std::optional<std::size_t> find(std::string_view name) const;
    /// What stands beyond the last cable: the device at the far end with all that follows it. The whole if there is no
    /// cable; nothing if the cable is the last of its series.
    Parts farEnd() const { return m_farEnd; }
    /// The group that holds the part; nothing for the whole.
    std::optional<std::size_t> groupOf(std::size_t part) const;
    /// The same with every resistor at its nominal value.
    Network withExactResistors() const;
    /// The same with every resistor's window widened by its temperature: least (1 - c dT), most (1 + c dT).
    /// Errors: measure.out-of-range {coefficient_ppm_per_k, change_k}: below 0, over 10^5 or 200, or together from 1
    /// on.
    Result<Network> withDrift(double coefficient_ppm_per_k, double change_k) const;
    /// The most all lengths of cable together may have.
    double cableMost_ohm() const;

private:
    Network() = default;
    std::vector<Part> m_parts;
    std::vector<std::size_t> m_groups; ///< of each part; its own number for the whole
    Parts m_farEnd = 0;
};

/// What is the case when the network is measured, apart from how it was planned.
struct Circumstances {
    Parts acted = 0; ///< contacts that are not at rest
    Parts bridged = 0; ///< parts or groups that have become a piece of wire
    Parts opened = 0; ///< parts or groups that are interrupted; wins over bridged
    struct Replaced {
        std::size_t part = 64; ///< 64: none
        Span ohm = noResistance;
    };
    std::array<Replaced, 2> replaced; ///< parts that have another resistance; of a contact, while it is closed
    Span inFront = noResistance; ///< in series with the whole, at the panel
    Span across = openCircuit; ///< in parallel with the whole (and with what is in front), at the panel
};

/// The resistance at the panel's terminals in those circumstances, after Ohm and Kirchhoff: sums in series, reciprocal
/// sums in parallel. Direct current; the reading meter's own error is not in it.
Span spanOf(const Network& network, const Circumstances& circumstances);

} // namespace proofwalk::measure
