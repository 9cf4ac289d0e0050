// SPDX-License-Identifier: GPL-3.0-or-later
// What there is to test: plan and catalogue brought together, once, when a job starts or is opened. Every step of every
// subject, what each device promises, and the limits a reading will be judged by.
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/measure/conductor.h"
#include "core/plan/plan.h"

#include <array>
#include <compare>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace proofwalk::walk {

/// Identifies a step for ever: whose it is, which signal, which name.
struct StepKey {
    std::string subject; ///< id of a plan row
    std::string signal; ///< "alarm", "tamper", …, or "-"
    std::string name;

    friend auto operator<=>(const StepKey&, const StepKey&) = default;
};

/// The four proofs, in the order in which they are always shown.
enum class ProofKind { input, response, output, received };
inline constexpr std::array allProofs{ProofKind::input, ProofKind::response, ProofKind::output, ProofKind::received};
std::string_view wordOf(ProofKind proof); ///< "input", "response", "output", "received"

/// Several limits on one quantity brought together: the intersection, in the base unit.
struct JointLimit {
    std::optional<base::Decimal> lower, upper;
    bool strict = false; ///< one of them is life-safety or legal
    std::vector<catalogue::Limit> from;

    bool empty() const { return !lower && !upper; }
};

/// A step with its place in the scope.
struct ScopeStep {
    StepKey key;
    catalogue::Step step;
    JointLimit confirmed; ///< decides the verdict
    JointLimit unconfirmed; ///< makes a recommendation
};

/// A device with its sheet.
struct ScopeDevice {
    const plan::Device* device = nullptr;
    const plan::Zone* zone = nullptr; ///< its alarm signal's; nullptr if it has none
    const catalogue::Kind* kind = nullptr; ///< nullptr: no sheet yet
    std::vector<StepKey> steps; ///< in the sheet's order; zone steps among them
    std::map<std::string, const plan::Zone*> signalZones; ///< signal -> zone, for every signal that has one
    std::array<bool, 4> promised{}; ///< by ProofKind

    bool promises(ProofKind proof) const { return promised[static_cast<std::size_t>(proof)]; }
    bool lifeSafety() const { return kind != nullptr && kind->lifeSafety; }
};

/// A sequence as this site can do it: its steps over its areas and timers.
struct ScopeSequence {
    std::string name, title;
    std::vector<StepKey> steps;
};

struct Scope {
    std::shared_ptr<const plan::Plan> plan;
    std::shared_ptr<const catalogue::Catalogue> catalogue;
    std::vector<ScopeDevice> devices; ///< in plan order
    std::map<StepKey, ScopeStep> steps;
    std::vector<ScopeSequence> sequences;
    std::map<std::string, std::size_t> deviceById;
    std::map<std::string, std::vector<std::size_t>> devicesOfZone; ///< by zone id

    const ScopeStep* step(const StepKey& key) const;
    const ScopeDevice* deviceOf(const std::string& id) const;
    /// A device whose card shows the step; nullptr for a sequence's step.
    const ScopeDevice* ownerOf(const StepKey& key) const;
};

/// Brings both together. The plan's rows must have ids. Errors: those of Catalogue::compose, `where` grown by the
/// device's
/// tag; walk.limits-empty {quantity} if two limits exclude each other; measure.* for a loop that cannot be computed.
Result<Scope> makeScope(plan::Plan plan, catalogue::Catalogue catalogue,
                        const std::vector<measure::Conductor>& conductors);

} // namespace proofwalk::walk
