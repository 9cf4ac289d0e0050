// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/command.h"

#include "core/base/text.h"
#include "core/walk/drafting.h"

#include <algorithm>
#include <array>
#include <utility>

namespace proofwalk::walk {
namespace {

constexpr std::array<std::pair<std::string_view, Handler>, 19> handlers{{
    {"as-found", asFoundCommand},
    {"kit", kitCommand},
    {"clock", clockCommand},
    {"on-test", onTestCommand},
    {"off-test", offTestCommand},
    {"state", stateCommand},
    {"answer", answerCommand},
    {"round", roundCommand},
    {"no-access", noAccessCommand},
    {"finding", findingCommand},
    {"photograph", photographCommand},
    {"repair", repairCommand},
    {"accept", acceptCommand},
    {"withdraw", withdrawCommand},
    {"temporary", temporaryCommand},
    {"put-back", putBackCommand},
    {"note", noteCommand},
    {"shown", shownCommand},
    {"acceptance", acceptanceCommand},
}};

} // namespace

std::vector<std::string> commandNames()
{
    std::vector<std::string> names;
    for (const auto& [name, handler] : handlers) names.emplace_back(name);
    return names;
}

Result<std::vector<journal::Draft>> draftsFor(const CommandGround& ground, std::string_view text)
{
    auto line = Line::read(text);
    if (!line) return passOn(line);
    auto name = line->text("do");
    if (!name) return passOn(name);
    const auto found = std::ranges::find(handlers, *name, [](const auto& each) { return each.first; });
    if (found == handlers.end())
        return failure("command.unknown", "",
                       {{"found", *name}, {"nearest", base::nearestWord(*name, commandNames())}});
    auto drafts = found->second(ground, *line);
    if (!drafts) return drafts;
    if (auto finished = line->finish(); !finished) return passOn(finished);
    return drafts;
}

PrivateRef Sealing::seal(const std::string& value)
{
    if (value.empty()) return {};
    m_privates.push_back(journal::sealPrivate(value));
    return {m_privates.back().commitment};
}

Result<PrivateRef> Sealing::seal(Line& line, const char* name, bool required)
{
    auto value = required ? line.text(name) : line.maybeText(name);
    if (!value) return passOn(value);
    return seal(*value);
}

Drafts Sealing::draft(Line& line, const Body& body)
{
    auto at = line.at();
    if (!at) return passOn(at);
    journal::Draft draft;
    draft.kind = kindOf(body);
    draft.body = toJson(body, *at);
    draft.privates = std::move(m_privates);
    std::vector<journal::Draft> drafts;
    drafts.push_back(std::move(draft));
    return drafts;
}

} // namespace proofwalk::walk
