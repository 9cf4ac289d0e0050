// SPDX-License-Identifier: GPL-3.0-or-later
// Where one device stands: its four proofs and its verdict (EVENTS.md, "Verdict of a device", "Proofs").
#pragma once

#include "core/walk/stepview.h"

#include <array>
#include <vector>

namespace proofwalk::walk {

enum class ProofState { none, promised, underWay, lit, failed };
std::string_view wordOf(ProofState state); ///< "none", "promised", "under-way", "lit", "failed"

struct ProofView {
    ProofState state = ProofState::none;
    How how = How::singly;                 ///< of the least direct attempt it rests on
    const ScopeDevice* standIn = nullptr;  ///< the device whose trip stands for it
};

struct DeviceView {
    const ScopeDevice* device = nullptr;
    Verdict verdict = Verdict::toDo;
    std::array<ProofView, 4> proofs;
    int answered = 0;              ///< core steps answered
    int steps = 0;                 ///< core steps
    const Attempt* newest = nullptr; ///< the newest deciding attempt of all its steps

    const ProofView& proof(ProofKind kind) const { return proofs[static_cast<std::size_t>(kind)]; }
    /// The promised proofs that do not hold, in order.
    std::vector<ProofKind> openProofs() const;
};

DeviceView viewDevice(const State& state, const ScopeDevice& device);

} // namespace proofwalk::walk
