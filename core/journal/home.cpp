// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/home.h"

#include <cstdlib>

namespace proofwalk::journal {
namespace {

std::string environment(const char* name)
{
    const char* value = std::getenv(name); // NOLINT(concurrency-mt-unsafe): nobody sets it after the start
    return value == nullptr ? std::string() : std::string(value);
}

} // namespace

Result<std::filesystem::path> homeFolder()
{
    if (auto own = environment("PROOFWALK_HOME"); !own.empty()) return std::filesystem::path(own);
    if (auto data = environment("XDG_DATA_HOME"); !data.empty()) return std::filesystem::path(data) / "proofwalk";
    if (auto home = environment("HOME"); !home.empty())
        return std::filesystem::path(home) / ".local" / "share" / "proofwalk";
    return failure("place.no-home", "HOME");
}

Result<std::shared_ptr<const SigningKey>> machineKey()
{
    auto home = homeFolder();
    if (!home) return passOn(home);
    return openMachineKey(*home);
}

} // namespace proofwalk::journal
