// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/catalogue/parts.h"

#include "core/catalogue/vocabulary.h"

#include <algorithm>

namespace proofwalk::catalogue {

const std::vector<std::string>& partNames()
{
    static const std::vector<std::string> names = [] {
        std::vector<std::string> all;
        for (const std::string_view column : partColumns)
            for (const std::string& word : columnWords(column)) all.push_back(std::string(column) + "-" + word);
        return all;
    }();
    return names;
}

bool isPartName(std::string_view name) { return std::ranges::find(partNames(), name) != partNames().end(); }

void readFormat(const Keys& keys)
{
    const Node* node = keys.find("format");
    if (node == nullptr) {
        keys.refuse("format", "catalogue.key-missing", {{"wanted", "format"}});
    } else if (node->wholeNumber() == nullptr) {
        keys.refuse("format", "catalogue.value",
                    {{"key", "format"}, {"found", std::string(typeOf(*node))}, {"wanted", "whole-number"}});
    } else if (*node->wholeNumber() != 1) {
        keys.refuse("format", "catalogue.format", {{"found", *node->wholeNumber()}});
    }
}

void refuseForbiddingOwn(const std::vector<StepEntry>& steps, const std::vector<std::string>& forbid, const Keys& keys)
{
    for (const StepEntry& each : steps)
        if (std::ranges::find(forbid, each.step.name) != forbid.end())
            keys.refuse("forbid", "catalogue.forbid-own", {{"found", each.step.name}});
}

PartFile readPartFile(const Node& document, Reading& reading)
{
    const Keys keys(document, reading, {"format", "steps", "forbid"});
    readFormat(keys);
    PartFile file;
    file.steps = readSteps(keys, "steps", StepPlace::sheet);
    if (keys.has("forbid")) file.forbid = keys.words("forbid", {});
    if (file.steps.empty() && file.forbid.empty()) keys.refuse("steps", "catalogue.key-missing", {{"wanted", "steps"}});
    refuseTwins(file.steps, reading);
    refuseForbiddingOwn(file.steps, file.forbid, keys);
    return file;
}

} // namespace proofwalk::catalogue
