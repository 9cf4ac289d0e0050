// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/upkeep.h"

#include <algorithm>
#include <map>

namespace proofwalk::walk {

std::vector<const Told<OnTestBody>*> accountsOnTest(const State& state)
{
    std::map<std::string, const Told<OnTestBody>*> on;
    for (const auto& told : state.onTests)
        if (state.stands(told.fact)) on[told.body.account] = &told;
    std::vector<const Told<OnTestBody>*> result;
    for (const auto& [account, told] : on) {
        const bool off = std::ranges::any_of(state.offTests, [&](const Told<OffTestBody>& other) {
            return other.body.account == account && state.stands(other.fact) && state.hasSeen(other.fact, told->fact);
        });
        if (!off) result.push_back(told);
    }
    return result;
}

std::vector<const Told<TemporaryBody>*> notPutBack(const State& state)
{
    std::vector<const Told<TemporaryBody>*> result;
    for (const auto& temporary : state.temporaries)
        if (state.stands(temporary.fact) && putBackOf(state, temporary) == nullptr) result.push_back(&temporary);
    return result;
}

const Told<PutBackBody>* putBackOf(const State& state, const Told<TemporaryBody>& temporary)
{
    const auto back = std::ranges::find_if(state.putBacks, [&](const Told<PutBackBody>& told) {
        return told.body.event == temporary.fact.event && state.stands(told.fact);
    });
    return back == state.putBacks.end() ? nullptr : &*back;
}

} // namespace proofwalk::walk
