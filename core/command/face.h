// SPDX-License-Identifier: GPL-3.0-or-later
// How a command speaks: to people in sentences, to programs (--json) in one JSON object a run, and by its exit status.
#pragma once

#include "core/base/json.h"
#include "core/words/words.h"

#include <ostream>
#include <string>

namespace proofwalk::command {

/// What a run ends with.
enum class Exit {
    well = 0,   ///< done, and the answer is yes
    no = 1,     ///< done, and the answer is no: findings, not ready, not verified
    cannot = 2, ///< it could not be done; stderr says what to do
};

class Face {
public:
    Face(std::ostream& out, std::ostream& err, const words::Book& book, bool json)
        : m_out(out), m_err(err), m_book(book), m_json(json)
    {
    }

    bool json() const { return m_json; }
    const words::Book& book() const { return m_book; }

    /// A line for people; nothing with --json.
    void say(const std::string& line);
    /// The same, from a phrase of core/words.
    void say(std::string_view code, const std::vector<Argument>& arguments);
    /// A phrase as text.
    std::string phrase(std::string_view code, const std::vector<Argument>& arguments = {}) const;

    /// The answer of the command as JSON; nothing without --json. Members "command", "format" are added.
    void answer(const char* command, base::Json::Object members);
    /// An answer already written as JSON, with "command" and "format": for what base::Json cannot hold. Nothing without
    /// --json.
    void answerText(const std::string& json);

    /// One clear line on stderr (with --json: an object with code, where, arguments and sentence) and Exit::cannot.
    Exit cannot(const Error& error);

    /// An error as JSON: code, where, arguments, sentence.
    base::Json errorJson(const Error& error) const;

private:
    std::ostream& m_out;
    std::ostream& m_err;
    const words::Book& m_book;
    bool m_json;
};

} // namespace proofwalk::command
