// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/network.h"

#include "core/measure/inputs.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace proofwalk::measure {
namespace {

constexpr std::size_t mostParts = 64;  // a bit each
constexpr double greatest_ohm = 1e9;   // our choice: beyond it lies insulation, not a part

// 1/0 is infinite in IEEE arithmetic, so that a short needs no case of its own; beside an open circuit the other stays
// exactly what it was.
double parallelOf(double a, double b)
{
    if (std::isinf(a)) return b;
    if (std::isinf(b)) return a;
    return 1 / (1 / a + 1 / b);
}

bool isGroup(const Part& part) { return part.kind == PartKind::series || part.kind == PartKind::parallel; }

Result<void> checkLeaf(const Part& part)
{
    const char* name = part.name.c_str();
    if (part.kind == PartKind::contact) return {};
    for (const double each : {part.ohm.nominal_ohm, part.ohm.least_ohm, part.ohm.most_ohm}) {
        if (part.kind == PartKind::resistor) {
            if (auto sound = checkAbove(name, each, 0); !sound) return sound;
        }
        if (auto sound = checkWithin(name, each, 0, greatest_ohm); !sound) return sound;
    }
    if (part.ohm.least_ohm > part.ohm.most_ohm)
        return outOfRange(name, part.ohm.least_ohm, fmt::format("at most {}", part.ohm.most_ohm));
    return {};
}

/// The group of each part, from the list alone; an error if the groups do not add up to one whole.
Result<std::vector<std::size_t>> groupsOf(const std::vector<Part>& parts)
{
    std::vector<std::size_t> groups(parts.size());
    std::vector<std::size_t> standing;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (isGroup(parts[i])) {
            const std::size_t members = parts[i].members;
            if (members < 1 || members > standing.size())
                return failure("measure.network-order", "", {{"found", static_cast<std::int64_t>(members)}});
            for (std::size_t k = standing.size() - members; k < standing.size(); ++k) groups[standing[k]] = i;
            standing.resize(standing.size() - members);
        }
        standing.push_back(i);
    }
    if (standing.size() != 1)
        return failure("measure.network-order", "", {{"found", static_cast<std::int64_t>(standing.size())}});
    groups.back() = parts.size() - 1;
    return groups;
}

Result<void> checkNames(const std::vector<Part>& parts)
{
    for (auto each = parts.begin(); each != parts.end(); ++each) {
        if (isGroup(*each)) continue;
        const auto same = [&](const Part& other) { return !isGroup(other) && other.name == each->name; };
        if (each->name.empty() || std::any_of(parts.begin(), each, same))
            return failure("measure.network-name", "", {{"found", each->name}});
    }
    return {};
}

} // namespace

Span inSeries(const Span& a, const Span& b)
{
    return {a.least_ohm + b.least_ohm, a.nominal_ohm + b.nominal_ohm, a.most_ohm + b.most_ohm};
}

Span inParallel(const Span& a, const Span& b)
{
    return {parallelOf(a.least_ohm, b.least_ohm), parallelOf(a.nominal_ohm, b.nominal_ohm),
            parallelOf(a.most_ohm, b.most_ohm)};
}

Part resistor(std::string name, double nominal_ohm, double tolerance_pct)
{
    const Span ohm{nominal_ohm * (1 - tolerance_pct / 100), nominal_ohm, nominal_ohm * (1 + tolerance_pct / 100)};
    return {.kind = PartKind::resistor, .name = std::move(name), .ohm = ohm};
}

Part contact(std::string name, bool restClosed)
{
    return {.kind = PartKind::contact, .name = std::move(name), .restClosed = restClosed};
}

Part cable(std::string name, double least_ohm, double most_ohm)
{
    return {.kind = PartKind::cable,
            .name = std::move(name),
            .ohm = {least_ohm, least_ohm + (most_ohm - least_ohm) / 2, most_ohm}};
}

Part group(PartKind kind, std::size_t members) { return {.kind = kind, .name = {}, .members = members}; }

Result<Network> Network::of(std::vector<Part> parts)
{
    if (parts.empty() || parts.size() > mostParts)
        return failure("measure.network-size", "", {{"found", static_cast<std::int64_t>(parts.size())}});
    for (const Part& each : parts)
        if (auto sound = isGroup(each) ? Result<void>{} : checkLeaf(each); !sound) return passOn(sound);
    if (auto sound = checkNames(parts); !sound) return passOn(sound);
    auto groups = groupsOf(parts);
    if (!groups) return passOn(groups);

    Network network;
    network.m_parts = std::move(parts);
    network.m_groups = std::move(*groups);
    const auto last = std::ranges::find(network.m_parts.rbegin(), network.m_parts.rend(), PartKind::cable, &Part::kind);
    if (last == network.m_parts.rend()) {
        network.m_farEnd = partBit(network.m_parts.size() - 1);
        return network;
    }
    const auto at = static_cast<std::size_t>(network.m_parts.rend() - last) - 1;
    if (const auto around = network.groupOf(at); around && network.m_parts[*around].kind == PartKind::series)
        for (std::size_t i = at + 1; i < *around; ++i)
            if (network.m_groups[i] == *around) network.m_farEnd |= partBit(i);
    return network;
}

std::optional<std::size_t> Network::find(std::string_view name) const
{
    for (std::size_t i = 0; i < m_parts.size(); ++i)
        if (!isGroup(m_parts[i]) && m_parts[i].name == name) return i;
    return std::nullopt;
}

std::optional<std::size_t> Network::groupOf(std::size_t part) const
{
    if (part + 1 >= m_parts.size()) return std::nullopt;
    return m_groups[part];
}

Network Network::withExactResistors() const
{
    Network exact = *this;
    for (Part& each : exact.m_parts)
        if (each.kind == PartKind::resistor) each.ohm.least_ohm = each.ohm.most_ohm = each.ohm.nominal_ohm;
    return exact;
}

Result<Network> Network::withDrift(double coefficient_ppm_per_k, double change_k) const
{
    if (auto sound = checkWithin("coefficient_ppm_per_k", coefficient_ppm_per_k, 0, 1e5); !sound) return passOn(sound);
    if (auto sound = checkWithin("change_k", change_k, 0, 200); !sound) return passOn(sound);
    const double drift = coefficient_ppm_per_k * 1e-6 * change_k;
    if (drift >= 1) return outOfRange("change_k", change_k, fmt::format("below {}", 1e6 / coefficient_ppm_per_k));
    Network widened = *this;
    for (Part& each : widened.m_parts) {
        if (each.kind != PartKind::resistor) continue;
        each.ohm.least_ohm *= 1 - drift;
        each.ohm.most_ohm *= 1 + drift;
    }
    return widened;
}

double Network::cableMost_ohm() const
{
    double sum = 0;
    for (const Part& each : m_parts)
        if (each.kind == PartKind::cable) sum += each.ohm.most_ohm;
    return sum;
}

Span spanOf(const Network& network, const Circumstances& circumstances)
{
    const std::vector<Part>& parts = network.parts();
    // Filled from below as the parts come; clearing it would cost as much as the sums.
    std::array<Span, mostParts> standing; // NOLINT(cppcoreguidelines-pro-type-member-init)
    std::size_t height = 0;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const Part& part = parts[i];
        Span span = part.ohm;
        if (isGroup(part)) {
            height -= part.members;
            span = standing[height];
            for (std::size_t k = 1; k < part.members; ++k)
                span = part.kind == PartKind::series ? inSeries(span, standing[height + k])
                                                     : inParallel(span, standing[height + k]);
        }
        for (const auto& replaced : circumstances.replaced)
            if (replaced.part == i) span = replaced.ohm;
        const Parts bit = partBit(i);
        if (part.kind == PartKind::contact && part.restClosed == ((circumstances.acted & bit) != 0)) span = openCircuit;
        if (circumstances.bridged & bit) span = noResistance;
        if (circumstances.opened & bit) span = openCircuit;
        standing[height++] = span;
    }
    return inParallel(inSeries(circumstances.inFront, standing[0]), circumstances.across);
}

} // namespace proofwalk::measure
