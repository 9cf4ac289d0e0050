// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a language's folder into a Book. Inside the room only.
#pragma once

#include "core/words/words.h"

// Without exceptions: a file that cannot be read is a value, not a throw. The shared library of toml++ throws, so its
// code is compiled in here.
#undef TOML_HEADER_ONLY
#undef TOML_SHARED_LIB
#define TOML_HEADER_ONLY 1
#define TOML_EXCEPTIONS 0
#include <toml++/toml.h>

namespace proofwalk::words {

/// Fills one Book; used once.
class BookReader {
public:
    /// Errors: as Book::open.
    Result<Book> read(const std::filesystem::path& folder);

private:
    Result<void> readFile(const std::filesystem::path& path);
    Result<void> readEntry(const std::filesystem::path& path, const toml::key& key, const toml::node& node);
    Book m_book;
};

} // namespace proofwalk::words
