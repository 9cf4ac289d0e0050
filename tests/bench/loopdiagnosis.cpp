// SPDX-License-Identifier: GPL-3.0-or-later
// A loop is diagnosed in under 200 times one evaluation of its network, whatever the readings; both timed here, in turns,
// and the median of the turns' ratios taken. Exit 0: so it is; 1: not; 77: built without optimisation, which says nothing.
#include "core/measure/diagnosis.h"
#include "core/measure/networktext.h"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cmath>

namespace {

using namespace proofwalk::measure;
using Clock = std::chrono::steady_clock;

constexpr double bar = 200;
constexpr int turns = 31;
constexpr double infinity = std::numeric_limits<double>::infinity();

/// Nanoseconds a call, over enough calls for the clock.
template <class Call>
double each_ns(int calls, Call call)
{
    const auto start = Clock::now();
    for (int i = 0; i < calls; ++i) call(i);
    return std::chrono::duration<double, std::nano>(Clock::now() - start).count() / calls;
}

struct Case {
    const char* name;
    Network network;
    LoopQuestion question;
};

LoopReading reading(Parts acted, FarEnd end, double ohm)
{
    return {{acted, end}, ohm, std::isinf(ohm) ? 0 : 0.005 * ohm + 0.5};
}

/// Whether the case keeps the bar; prints what it took.
bool keeps(const Case& each)
{
    double sink = 0;
    std::vector<double> ratios;
    double evaluation_ns = 0;
    for (int turn = 0; turn < turns; ++turn) {
        evaluation_ns = each_ns(20000, [&](int i) {
            Circumstances at;
            at.acted = static_cast<Parts>(i) & 6;
            sink += spanOf(each.network, at).most_ohm;
        });
        const double diagnosis_ns =
            each_ns(200, [&](int) { sink += static_cast<double>(diagnose(each.network, each.question)->size()); });
        ratios.push_back(diagnosis_ns / evaluation_ns);
    }
    std::ranges::sort(ratios);
    const double median = ratios[ratios.size() / 2];
    fmt::print(
        "{}: one evaluation {:.0f} ns, a diagnosis {:.0f} evaluations (bar {:.0f}, {} readings, {} findings){}\n",
        each.name, evaluation_ns, median, bar, each.question.readings.size(),
        diagnose(each.network, each.question)->size(), std::isnan(sink) ? " " : "");
    return median < bar;
}

} // namespace

int main()
{
#ifndef __OPTIMIZE__
    fmt::print("built without optimisation: nothing to say\n");
    return 77;
#endif
    const Network loop = readNetwork("cable=12 + tamper:nc + (alarm:nc | zone=4700) + eol=2200", 1).value();
    const Parts alarm = partBit(*loop.find("alarm")), tamper = partBit(*loop.find("tamper"));
    const auto four = [&](double rest, double acted, double cover, double shorted) {
        LoopQuestion question;
        question.readings = {reading(0, FarEnd::untouched, rest), reading(alarm, FarEnd::untouched, acted),
                             reading(tamper, FarEnd::untouched, cover), reading(0, FarEnd::shorted, shorted)};
        return question;
    };
    LoopQuestion one;
    one.readings = {reading(0, FarEnd::untouched, 3310)};
    const Network chain =
        readNetwork("cable=12 + (a:nc | ra=4700) + (b:nc | rb=4700) + (c:nc | rc=4700) + (d:nc | rd=4700) "
                    "+ (e:nc | re=4700) + (f:nc | rf=4700) + eol=2200",
                    1)
            .value();
    const Case cases[]{{"sound", loop, four(2210, 6910, infinity, 10)},
                       {"wrong value", loop, four(3310, 8010, infinity, 10)},
                       {"leak", loop, four(1810, 4086.3, 10000, 9.99)},
                       {"one reading", loop, one},
                       {"one reading of a chain of six", chain, one}};
    bool kept = true;
    for (const Case& each : cases) kept = keeps(each) && kept;
    return kept ? 0 : 1;
}
