// SPDX-License-Identifier: GPL-3.0-or-later
// The words "name=value" of one run, read against the table of a computation's inputs.
#pragma once

#include "core/base/decimal.h"
#include "core/base/result.h"
#include "core/command/work/unit.h"

#include <limits>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::command::work {

/// What a number may be. Every range has two ends: what lies beyond is refused by name, not computed.
struct Range {
    double least = -1e9;
    double most = 1e9;
    bool above = false; ///< `least` itself is not in it
};
constexpr Range anyNumber{};
constexpr Range positive{0, 1e9, true};
constexpr Range notNegative{0, 1e9};
constexpr Range fraction{0, 1};

/// "above 0, to 90", "-40 to 90".
std::string rangeText(const Range& range);

struct Input {
    enum class Kind { number, whole, numbers, wholes, word, text };

    std::string_view name; ///< with its unit at the end: "length_m". Or a stem, if `anyUnit`
    Range range{};         ///< of each number, in the unit of `name`
    Kind kind = Kind::number;
    bool required = true;
    std::string_view otherwise{};            ///< as typed; taken when it is not given. Empty: then it is absent
    std::vector<std::string_view> choices{}; ///< of a word
    bool anyUnit = false; ///< the name may end in any unit, the same for all such inputs of a run: "value_db"
};

/// Short ways to write a table of inputs.
Input needed(std::string_view name, Range range);
Input neededList(std::string_view name, Range range);
Input usual(std::string_view name, std::string_view otherwise, Range range); ///< has a value when it is not given
Input optional(std::string_view name, Range range);
Input optionalList(std::string_view name, Range range);
Input word(std::string_view name, std::vector<std::string_view> choices, std::string_view otherwise = {});
Input whole(Input input); ///< whole numbers only
Input ofAnyUnit(Input input);

/// The inputs of one run, each checked against its range. A name that the table does not have is a slip of ours, and
/// asserted.
class Given {
public:
    /// Reads the words. Errors, with `where` = the word as typed: work.form; work.twice; work.empty; work.missing
    /// {wanted}; work.not-a-number {found}; work.not-whole {found}; work.out-of-range {wanted}; work.choice {wanted};
    /// work.unit-differs {wanted}; work.unknown {nearest}; work.unit-missing {wanted}; work.unit-other {wanted}.
    static Result<Given> read(std::span<const Input> inputs, std::span<const std::string> words);

    bool has(std::string_view name) const { return m_numbers.contains(name) || m_words.contains(name); }
    /// The number, in the unit of the table's name.
    double number(std::string_view name) const { return numbers(name).front(); }
    std::optional<double> maybe(std::string_view name) const;
    const std::vector<double>& numbers(std::string_view name) const;
    int count(std::string_view name) const { return static_cast<int>(number(name)); }
    const std::string& word(std::string_view name) const;
    /// The digits as typed, for what is judged in exact decimals; `where` = name. Error: those of base::parseDecimal.
    Result<std::optional<base::Decimal>> decimal(std::string_view name) const;

    /// "_db" if the inputs of any unit end so: to be put behind the names of results; and the unit as written.
    const std::string& ending() const { return m_ending; }
    std::string_view unit() const { return writtenUnit("x" + m_ending); }

    /// "length_m", "60": what was taken, in the order of the table, defaults included.
    struct Taken {
        std::string name;
        std::string text;
        bool isNumber = false;
        bool isList = false;
        bool byDefault = false;
        std::vector<double> numbers;
    };
    const std::vector<Taken>& taken() const { return m_taken; }

private:
    Result<void> take(const Input& input, const std::string& name, const std::string& text, bool byDefault);

    std::map<std::string, std::vector<double>, std::less<>> m_numbers;
    std::map<std::string, std::string, std::less<>> m_words; ///< words, and of numbers the text
    std::string m_ending;
    std::vector<Taken> m_taken;
};

/// Whether a name as typed means this input: the same name, or the same stem under a unit of the same quantity.
bool means(std::string_view typed, const Input& input);

/// Why no input has this name: work.unit-missing, work.unit-other or work.unknown, with `where` = the name.
Error unknownName(std::string_view typed, std::span<const Input> inputs);

} // namespace proofwalk::command::work
