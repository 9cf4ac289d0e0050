// SPDX-License-Identifier: GPL-3.0-or-later
// An attacker's and a mishap's tools: a plain SQLite connection that heeds nothing of ours.
#pragma once

#include <sqlite3.h>

#include <filesystem>
#include <string>
#include <vector>

namespace proofwalk::journal {

/// Runs statements on a file as anyone with SQLite can; gives the first column of all rows.
inline std::vector<std::string> withSqlite(const std::filesystem::path& file, const std::string& sql)
{
    std::vector<std::string> found;
    sqlite3* database = nullptr;
    sqlite3_open(file.c_str(), &database);
    char* problem = nullptr;
    const auto take = [](void* list, int, char** values, char**) {
        static_cast<std::vector<std::string>*>(list)->emplace_back(values[0] == nullptr ? "" : values[0]);
        return 0;
    };
    if (sqlite3_exec(database, sql.c_str(), take, &found, &problem) != SQLITE_OK)
        found.emplace_back(std::string("error: ") + problem);
    sqlite3_free(problem);
    sqlite3_close(database);
    return found;
}

} // namespace proofwalk::journal
