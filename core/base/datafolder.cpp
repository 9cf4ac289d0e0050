// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/datafolder.h"

#include <cstdlib>
#include <system_error>

namespace proofwalk::base {

std::filesystem::path dataFolder()
{
    if (const char* named = std::getenv("PROOFWALK_DATA"); named != nullptr && *named != '\0') return named;
    std::error_code ignored;
    const auto program = std::filesystem::read_symlink("/proc/self/exe", ignored);
    if (!program.empty()) {
        auto installed = program.parent_path().parent_path() / "share" / "proofwalk";
        if (std::filesystem::is_directory(installed, ignored)) return installed;
    }
    return PROOFWALK_SOURCE_DATA;
}

} // namespace proofwalk::base
