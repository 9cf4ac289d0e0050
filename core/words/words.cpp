// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/words/words.h"

#include "core/words/reader.h"

#include <cctype>

namespace proofwalk::words {
namespace {

std::string written(const Argument& argument)
{
    const auto* text = std::get_if<std::string>(&argument.value);
    return text != nullptr ? *text : std::to_string(std::get<std::int64_t>(argument.value));
}

/// The template with each {name} replaced. What is filled in is not searched again: it may come from a stranger.
std::string filled(std::string_view form, const std::vector<Argument>& arguments)
{
    std::string text;
    while (!form.empty()) {
        const auto open = form.find('{');
        const auto close = form.find('}', open == std::string_view::npos ? form.size() : open);
        if (close == std::string_view::npos) break;
        text += form.substr(0, open);
        const std::string_view name = form.substr(open + 1, close - open - 1);
        const Argument* found = nullptr;
        for (const Argument& each : arguments)
            if (each.name == name) found = &each;
        text += found != nullptr ? written(*found) : std::string(form.substr(open, close - open + 1));
        form.remove_prefix(close + 1);
    }
    return text.append(form);
}

/// A code nobody has written words for: at least nothing is lost.
std::string plain(std::string_view code, const std::vector<Argument>& arguments)
{
    std::string text(code);
    for (const Argument& each : arguments) {
        text += &each == arguments.data() ? " (" : ", ";
        text += each.name + " = " + written(each);
    }
    return arguments.empty() ? text : text + ")";
}

} // namespace

Result<Book> Book::open(const std::filesystem::path& languageFolder) { return BookReader().read(languageFolder); }

std::string Book::sentence(const Error& error) const
{
    const auto found = m_errors.find(error.code);
    std::string text =
        found == m_errors.end() ? plain(error.code, error.arguments) : filled(found->second.what, error.arguments);
    if (!error.where.empty()) text.insert(0, error.where + ": ");
    else if (found != m_errors.end() && !text.empty())
        text[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(text[0])));
    text += '.';
    if (found != m_errors.end() && !found->second.remedy.empty()) {
        text += " " + filled(found->second.remedy, error.arguments);
        if (!text.ends_with('?')) text += ".";
    }
    return text;
}

std::string Book::phrase(std::string_view code, const std::vector<Argument>& arguments) const
{
    const auto found = m_phrases.find(code);
    return found == m_phrases.end() ? plain(code, arguments) : filled(found->second, arguments);
}

bool Book::has(std::string_view code) const { return m_errors.contains(code) || m_phrases.contains(code); }

std::vector<std::string> Book::codes() const
{
    std::vector<std::string> all;
    for (const auto& [code, words] : m_errors) all.push_back(code);
    for (const auto& [code, words] : m_phrases) all.push_back(code);
    return all;
}

} // namespace proofwalk::words
