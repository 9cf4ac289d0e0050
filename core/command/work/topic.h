// SPDX-License-Identifier: GPL-3.0-or-later
// What `proofwalk work` can compute. A topic is data, the tables of its inputs, and functions that give a worked
// computation; reading, choosing, help and printing are done once, for all topics.
//
// A topic's words stand in core/words/english/work-TOPIC.toml:
//     work.TOPIC             what the topic is about, one line
//     work.TOPIC.as.WHAT     what the computation answers
//     work.TOPIC.in.NAME     what an input is; of one that need not be given, why it has the value it has
#pragma once

#include "core/base/result.h"
#include "core/command/work/given.h"

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace proofwalk::command::work {

using Value = std::variant<double, std::vector<double>, std::string, std::vector<std::string>>;

/// One step of a computation, as a person would write it down.
struct Line {
    std::string formula; ///< in mathematical text, with letters: "V = 2 L r I"
    /// The same with the numbers put in, "2 × 60 m × 12.1 Ω/km × 0.5 A", or what was given, "k = 5, n = 5". Or empty.
    std::string numbers;
    std::string name; ///< of the result, with its unit: "drop_v"
    Value value;
};

/// A phrase of core/words with its arguments: a sentence about the result.
struct Remark {
    std::string code;
    std::vector<Argument> arguments;
};

/// A computation that can be followed.
struct Worked {
    std::vector<Line> lines;
    std::vector<Remark> remarks; ///< what the result says, in words
    std::vector<std::string> limits; ///< where it stops being true: phrases of core/words
    std::vector<std::string> sources; ///< where the formulas come from: phrases of core/words
};

/// One question a topic answers.
struct Computation {
    std::string_view what; ///< a word: "margin"; one topic has none twice
    std::vector<Input> inputs; ///< in the order of help
    /// Errors of core/measure; its inputs there should bear the names they have here.
    Result<Worked> (*run)(const Given& given) = nullptr;
    std::string_view example; ///< "value_db=66.2 lower_db=65": shown in help and run by a test
};

/// The topics of one subject. Without `what=` the first computation is done that knows every name given and lacks none.
struct Topic {
    std::string_view name; ///< "radio"
    std::vector<Computation> computations;
};

/// All topics, in the order of help.
std::vector<Topic> topics();

Topic batteryTopic();
Topic cableTopic();
Topic conformityTopic();
Topic loopTopic();
Topic opticsTopic();
Topic radioTopic();
Topic routeTopic();
Topic soundTopic();
Topic temperatureTopic();
Topic temporalTopic();
Topic timerTopic();
Topic trialsTopic();

/// A number for people: six significant digits, without exponent where that can be read.
std::string shown(double number);
/// The same with the unit that the name ends in: shown("drop_v", 0.726) is "0.726 V".
std::string shown(std::string_view name, double number);

} // namespace proofwalk::command::work
