// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/references.h"

namespace proofwalk::report {

namespace {

constexpr std::string_view opening = "{sheet:";

Result<void> nameIn(std::string& text, const Layout& layout)
{
    for (auto at = text.find(opening); at != std::string::npos; at = text.find(opening, at)) {
        const auto end = text.find('}', at);
        if (end == std::string::npos) {
            return {};
        }
        const std::string name = text.substr(at + opening.size(), end - at - opening.size());
        const auto start = layout.starts.find(name);
        if (layout.sheets > 0 && start == layout.starts.end()) {
            return failure("report.no-such-sheet", {}, {{"found", name}});
        }
        text.replace(at, end + 1 - at, std::to_string(layout.sheets > 0 ? start->second : 0));
    }
    return {};
}

/// Every text in which a sheet may be named.
std::vector<std::string*> textsOf(Contents& c)
{
    std::vector<std::string*> texts = {&c.headline,
                                       &c.testedAgainst,
                                       &c.notTestedNote,
                                       &c.titleBlock.testerNote,
                                       &c.titleBlock.sealsLine,
                                       &c.titleBlock.agreed,
                                       &c.titleBlock.codeNote,
                                       &c.titleBlock.lastLine,
                                       &c.devicesNote,
                                       &c.findingsLine,
                                       &c.clearedLine,
                                       &c.findingsClosing,
                                       &c.readingsClosing,
                                       &c.groundsLine,
                                       &c.checkingLine,
                                       &c.checkingClosing};
    for (auto* list : {&c.works, &c.liveLines}) {
        for (std::string& text : *list) {
            texts.push_back(&text);
        }
    }
    for (auto* list : {&c.doesNot, &c.notTested}) {
        for (Shortcoming& one : *list) {
            texts.push_back(&one.words);
        }
    }
    for (Duty& duty : c.duties) {
        texts.push_back(&duty.words);
    }
    return texts;
}

} // namespace

Result<void> nameSheets(Contents& contents, const Layout& layout)
{
    for (std::string* text : textsOf(contents)) {
        if (auto named = nameIn(*text, layout); !named) {
            return named;
        }
    }
    return {};
}

} // namespace proofwalk::report
