// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/command/face.h"

namespace proofwalk::command {

void Face::say(const std::string& line)
{
    if (!m_json) m_out << line << '\n';
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

base::Json Face::errorJson(const Error& error) const
{
    base::Json arguments;
    for (const Argument& argument : error.arguments)
        std::visit([&](const auto& value) { arguments[argument.name] = value; }, argument.value);
    return base::Json::Object{
        {"code", error.code}, {"where", error.where}, {"arguments", arguments}, {"sentence", m_book.sentence(error)}};
}

Exit Face::cannot(const Error& error)
{
    if (m_json) m_err << base::canonical(base::Json::Object{{"error", errorJson(error)}, {"format", 1}}) << '\n';
    else m_err << m_book.sentence(error) << '\n';
    return Exit::cannot;
}

} // namespace proofwalk::command
