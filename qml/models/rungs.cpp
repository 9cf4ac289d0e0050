// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/rungs.h"

#include "qml/models/telling.h"
#include "qml/models/whereabouts.h"
#include "qml/parts/words.h"

#include <algorithm>
#include <map>

namespace proofwalk::models {

tread::Value treadOf(const walk::Rung& rung)
{
    static const std::map<std::string, tread::Value, std::less<>> treads{{"ready.calibration", tread::Arrival},
                                                                         {"ready.no-sheet", tread::Plan},
                                                                         {"ready.unjudged", tread::Plan},
                                                                         {"ready.untested", tread::Devices},
                                                                         {"ready.running", tread::Devices},
                                                                         {"ready.retest", tread::Devices},
                                                                         {"ready.no-access", tread::Devices},
                                                                         {"ready.disagreement", tread::Devices},
                                                                         {"ready.sequence", tread::Devices},
                                                                         {"ready.too-close", tread::Findings},
                                                                         {"ready.finding", tread::Findings},
                                                                         {"ready.too-close-accepted", tread::Findings},
                                                                         {"ready.recommendation", tread::Findings},
                                                                         {"ready.finding-accepted", tread::Findings},
                                                                         {"ready.state", tread::Normal},
                                                                         {"ready.on-test", tread::Normal},
                                                                         {"ready.put-back", tread::Normal},
                                                                         {"ready.shown", tread::Shown},
                                                                         {"ready.acceptance", tread::Signature}};
    const auto found = treads.find(rung.code);
    // A rung of a kind that is new to the window still blocks: it stands where nothing can pass it unseen.
    return found == treads.end() ? tread::Signature : found->second;
}

QString sentenceOf(const walk::Rung& rung)
{
    std::vector<Argument> arguments = rung.arguments;
    arguments.push_back({"subject", rung.subject});
    return parts::phrase(rung.code, arguments);
}

void goWhere(const walk::Rung& rung, const Snapshot& job)
{
    Whereabouts& whereabouts = Whereabouts::instance();
    const QString subject = text(rung.subject);
    switch (treadOf(rung)) {
    case tread::Arrival: return whereabouts.go(Whereabouts::Walk, QStringLiteral("arrival"));
    case tread::Plan:
        if (job.view(rung.subject) != nullptr)
            return whereabouts.go(Whereabouts::Walk, QStringLiteral("card"), subject);
        return whereabouts.go(Whereabouts::Plan);
    case tread::Devices: {
        if (job.view(rung.subject) != nullptr)
            return whereabouts.go(Whereabouts::Walk, QStringLiteral("card"), subject);
        const auto sequence =
            std::ranges::find_if(rung.arguments, [](const Argument& argument) { return argument.name == "sequence"; });
        const std::string* title =
            sequence == rung.arguments.end() ? nullptr : std::get_if<std::string>(&sequence->value);
        const auto& all = job.scope().sequences;
        const auto found = title == nullptr ? all.end() : std::ranges::find(all, *title, &walk::ScopeSequence::title);
        if (found == all.end()) return whereabouts.go(Whereabouts::Walk);
        return whereabouts.go(Whereabouts::Walk, QStringLiteral("sequence"), text(found->name));
    }
    case tread::Findings: return whereabouts.go(Whereabouts::Findings, {}, subject);
    case tread::Normal: return whereabouts.go(Whereabouts::Handover, QStringLiteral("normal"));
    case tread::Shown: return whereabouts.go(Whereabouts::Handover, QStringLiteral("shown"));
    case tread::Signature: return whereabouts.go(Whereabouts::Handover, QStringLiteral("sign"));
    }
}

int blockingOf(const Snapshot& job, tread::Value tread)
{
    return static_cast<int>(std::ranges::count_if(
        job.readiness().rungs, [&](const walk::Rung& rung) { return rung.blocking && treadOf(rung) == tread; }));
}

} // namespace proofwalk::models
