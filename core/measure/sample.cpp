// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/sample.h"

#include "core/measure/inputs.h"

#include <algorithm>

namespace proofwalk::measure {
namespace {

constexpr int mostDevices = 1'000'000;
constexpr int tenth = 10;      // NFPA 72, 2002 and 2013
constexpr int mostSample = 50; // NFPA 72, 2002 and 2013

Result<void> checkConfidence(double confidence)
{
    if (confidence >= 0.5 && confidence < 1) return {};
    return outOfRange("confidence", confidence, "0.5 to below 1");
}

/// C(N-D, n) / C(N, n) as a product of the fewer factors: each of the faulty lies among those left out, one by one.
double missAll(int lot, int drawn, int faulty)
{
    const int few = std::min(drawn, faulty);
    const int many = std::max(drawn, faulty);
    double chance = 1;
    for (int i = 0; i < few; ++i) {
        if (lot - many - i <= 0) return 0;
        chance *= static_cast<double>(lot - many - i) / (lot - i);
    }
    return chance;
}

} // namespace

Result<double> chanceToMissAll(const Sample& sample)
{
    if (auto sound = checkWithin("lot", sample.lot, 1, mostDevices); !sound) return passOn(sound);
    if (auto sound = checkWithin("drawn", sample.drawn, 0, sample.lot); !sound) return passOn(sound);
    if (auto sound = checkWithin("faulty", sample.faulty, 0, sample.lot); !sound) return passOn(sound);
    return missAll(sample.lot, sample.drawn, sample.faulty);
}

Result<int> sampleToMeetOne(int lot, int faulty, double confidence)
{
    if (auto sound = checkWithin("lot", lot, 1, mostDevices); !sound) return passOn(sound);
    if (auto sound = checkWithin("faulty", faulty, 1, lot); !sound) return passOn(sound);
    if (auto sound = checkConfidence(confidence); !sound) return passOn(sound);
    int few = 0; // not enough; all of the lot always is
    int enough = lot;
    while (enough - few > 1) {
        const int middle = few + (enough - few) / 2;
        (1 - missAll(lot, middle, faulty) >= confidence ? enough : few) = middle;
    }
    return enough;
}

Result<int> faultyAtMost(int lot, int drawn, double confidence)
{
    if (auto sound = checkWithin("lot", lot, 1, mostDevices); !sound) return passOn(sound);
    if (auto sound = checkWithin("drawn", drawn, 0, lot); !sound) return passOn(sound);
    if (auto sound = checkConfidence(confidence); !sound) return passOn(sound);
    int possible = 0; // so many faults could well have been missed
    int impossible = lot - drawn + 1;
    while (impossible - possible > 1) {
        const int middle = possible + (impossible - possible) / 2;
        (missAll(lot, drawn, middle) > 1 - confidence ? possible : impossible) = middle;
    }
    return possible;
}

Result<int> retestSample(int restOfDevices)
{
    if (auto sound = checkWithin("rest", restOfDevices, 0, mostDevices); !sound) return passOn(sound);
    return std::min(mostSample, (restOfDevices + tenth - 1) / tenth);
}

} // namespace proofwalk::measure
