// SPDX-License-Identifier: GPL-3.0-or-later
// The folder of a catalogue on disk.
#include "core/base/file.h"
#include "core/catalogue/catalogue.h"

#include <array>

namespace proofwalk::catalogue {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t largestFile = std::size_t{1} << 20U;

/// What an editor or a file manager leaves behind.
bool isLitter(const std::string& name) { return name.starts_with('.') || name.ends_with('~'); }

Result<void> readInto(Files& files, const fs::path& folder, const std::string& part)
{
    std::error_code code;
    fs::directory_iterator entry(folder / part, code);
    if (code == std::errc::no_such_file_or_directory) return {};
    for (; !code && entry != fs::directory_iterator(); entry.increment(code)) {
        const std::string name = entry->path().filename().string();
        if (isLitter(name)) continue;
        auto text = base::readFile(entry->path(), largestFile);
        if (!text) return passOn(text);
        files.emplace(part + "/" + name, std::move(*text));
    }
    if (code) return failure("file.unreadable", (folder / part).string(), {{"detail", code.message()}});
    return {};
}

} // namespace

Result<Files> readFolder(const fs::path& folder)
{
    constexpr std::array<const char*, 5> parts{"kinds", "parts", "rules", "sequences", "rounds"};
    Files files;
    for (const char* part : parts)
        if (auto done = readInto(files, folder, part); !done) return passOn(done);
    if (files.lower_bound("kinds/") == files.end() || !files.lower_bound("kinds/")->first.starts_with("kinds/"))
        return failure("catalogue.empty", folder.string());
    return files;
}

} // namespace proofwalk::catalogue
