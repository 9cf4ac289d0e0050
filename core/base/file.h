// SPDX-License-Identifier: GPL-3.0-or-later
// Whole files in and out. What is written is either wholly there, flushed to the disk, or not there.
#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <string>
#include <string_view>

namespace proofwalk::base {

/// Who may read a file that is written.
enum class FileAccess { everybody, ownerOnly };

/// Reads a regular file of at most `limit` bytes.
/// Errors, with `where` = the path: file.missing; file.unreadable {detail}; file.too-large {bytes, limit}.
Result<std::string> readFile(const std::filesystem::path& path, std::size_t limit = std::size_t{256} << 20U);

/// Writes to a temporary name beside it, flushes, renames over `path`, flushes the folder.
/// Errors, with `where` = the path: file.unwritable {detail} (a full disk, a read-only folder).
Result<void> writeFile(const std::filesystem::path& path, std::string_view bytes,
                       FileAccess access = FileAccess::everybody);

} // namespace proofwalk::base
