// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/command/face.h"

#include "core/base/text.h"

namespace proofwalk::command {
namespace {

/// What came from a stranger's file may steer a terminal or be no text at all: such bytes are shown as U+FFFD.
std::string legible(std::string_view text, bool keepLines)
{
    const bool utf8 = base::isUtf8(text);
    std::string shown;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        const bool lineEnd = c == '\n' && keepLines;
        if ((byte < 0x20 && !lineEnd) || byte == 0x7f || (byte >= 0x80 && !utf8)) shown += "\uFFFD";
        else shown += c;
    }
    return shown;
}

} // namespace

void Face::say(const std::string& line)
{
    if (!m_json) m_out << legible(line, true) << '\n';
}

void Face::say(std::string_view code, const std::vector<Argument>& arguments) { say(phrase(code, arguments)); }

std::string Face::phrase(std::string_view code, const std::vector<Argument>& arguments) const
{
    return m_book.phrase(code, arguments);
}

void Face::answer(const char* command, base::Json::Object members)
{
    if (!m_json) return;
    members["command"] = command;
    members["format"] = 1;
    m_out << base::canonical(base::Json(std::move(members))) << '\n';
}

void Face::answerText(const std::string& json)
{
    if (m_json) m_out << json << '\n';
}

base::Json Face::errorJson(const Error& error) const
{
    base::Json arguments;
    for (const Argument& argument : error.arguments) {
        if (const auto* text = std::get_if<std::string>(&argument.value))
            arguments[argument.name] = legible(*text, true);
        else arguments[argument.name] = std::get<std::int64_t>(argument.value);
    }
    return base::Json::Object{{"code", error.code},
                              {"where", legible(error.where, false)},
                              {"arguments", arguments},
                              {"sentence", legible(m_book.sentence(error), false)}};
}

Exit Face::cannot(const Error& error)
{
    if (m_json) m_err << base::canonical(base::Json::Object{{"error", errorJson(error)}, {"format", 1}}) << '\n';
    else m_err << legible(m_book.sentence(error), false) << '\n';
    return Exit::cannot;
}

} // namespace proofwalk::command
