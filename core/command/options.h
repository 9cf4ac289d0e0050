// SPDX-License-Identifier: GPL-3.0-or-later
// The words after a command's name, read against a table that also makes its help.
#pragma once

#include "core/base/result.h"

#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::command {

struct OptionSpec {
    std::string_view name;  ///< "--plan"
    std::string_view value; ///< "FOLDER"; empty for a switch
    bool required = false;
};

struct Usage {
    std::string_view command; ///< "start"
    /// "JOB.walk"; in brackets if it may be left out: "[NAME]"; the last with dots for any number.
    std::vector<std::string_view> words;
    std::vector<OptionSpec> options; ///< besides --json and --help, which every command has
};

/// The words of one run.
struct Options {
    std::vector<std::string> words;
    std::map<std::string, std::string, std::less<>> values; ///< switches have an empty value

    bool has(std::string_view name) const { return values.contains(name); }
    /// The option's value; empty if it was not given.
    std::string value(std::string_view name) const;
};

/// Errors, with `where` = the option or word as typed: option.unknown {nearest}; option.value-missing {wanted};
/// option.twice; option.missing {wanted}; word.missing {wanted}; word.extra.
Result<Options> parseOptions(const Usage& usage, std::span<const std::string> arguments);

/// "proofwalk start JOB.walk --plan FOLDER".
std::string usageLine(const Usage& usage);

} // namespace proofwalk::command
