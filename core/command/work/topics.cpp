// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/command/work/topic.h"

namespace proofwalk::command::work {

std::vector<Topic> topics()
{
    return {
        conformityTopic(), loopTopic(),  cableTopic(),       batteryTopic(), radioTopic(),    soundTopic(),
        trialsTopic(),     timerTopic(), temperatureTopic(), opticsTopic(),  temporalTopic(), routeTopic(),
    };
}

} // namespace proofwalk::command::work
