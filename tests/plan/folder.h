// SPDX-License-Identifier: GPL-3.0-or-later
// A plan's folder made for one test.
#pragma once

#include "core/plan/read.h"

#include <QTemporaryDir>

#include <fstream>
#include <map>

namespace proofwalk::test {

class PlanFolder {
public:
    PlanFolder(std::initializer_list<std::pair<const char*, std::string>> files)
        : PlanFolder(std::map<std::string, std::string>(files.begin(), files.end()))
    {
    }
    explicit PlanFolder(const std::map<std::string, std::string>& files)
    {
        for (const auto& [name, text] : files) {
            std::ofstream file(path() / name, std::ios::binary); // base::writeFile waits for the disk each time
            if (!(file << text)) qFatal("the test's folder cannot be written");
        }
    }
    std::filesystem::path path() const { return m_folder.path().toStdString(); }
    plan::ResultOrErrors<plan::Plan> read() const { return plan::readPlan(path()); }

private:
    QTemporaryDir m_folder;
};

/// "found" and its like of an error or a remark; empty if there is none.
inline std::string argument(const std::vector<Argument>& arguments, std::string_view name)
{
    for (const Argument& each : arguments) {
        if (each.name == name) {
            const auto* text = std::get_if<std::string>(&each.value);
            return text ? *text : std::to_string(std::get<std::int64_t>(each.value));
        }
    }
    return {};
}

} // namespace proofwalk::test
