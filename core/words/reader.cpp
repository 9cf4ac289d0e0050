// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/words/reader.h"

#include "core/base/file.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

namespace proofwalk::words {
namespace {

constexpr const char* errorForm = "{ what = \"...\", remedy = \"...\" }";
constexpr std::size_t fileLimit = std::size_t{4} << 20U;

std::string placeOf(const std::filesystem::path& path, const toml::source_region& region)
{
    return fmt::format("{}:{}", path.string(), region.begin.line);
}

std::unexpected<Error> bad(const char* code, const std::filesystem::path& path, const toml::source_region& region,
                           std::string found)
{
    return failure(code, placeOf(path, region), {{"found", std::move(found)}});
}

std::unexpected<Error> wrongType(const std::filesystem::path& path, const toml::node& node, const char* wanted)
{
    return failure("words.syntax", placeOf(path, node.source()), {{"detail", std::string(wanted) + " is wanted here"}});
}

Result<std::vector<std::filesystem::path>> filesOf(const std::filesystem::path& folder)
{
    std::error_code error;
    std::vector<std::filesystem::path> files;
    for (auto entry = std::filesystem::directory_iterator(folder, error);
         !error && entry != std::filesystem::directory_iterator(); entry.increment(error))
        if (entry->path().extension() == ".toml") files.push_back(entry->path());
    if (error) return failure("file.unreadable", folder.string(), {{"detail", error.message()}});
    if (files.empty()) return failure("words.empty", folder.string());
    std::ranges::sort(files); // so that the same fault is named on every machine
    return files;
}

} // namespace

Result<Book> BookReader::read(const std::filesystem::path& folder)
{
    auto files = filesOf(folder);
    if (!files) return passOn(files);
    for (const auto& path : *files)
        if (auto done = readFile(path); !done) return passOn(done);
    return std::move(m_book);
}

Result<void> BookReader::readFile(const std::filesystem::path& path)
{
    auto bytes = base::readFile(path, fileLimit);
    if (!bytes) return passOn(bytes);
    const toml::parse_result parsed = toml::parse(*bytes, path.string());
    if (!parsed)
        return failure("words.syntax", placeOf(path, parsed.error().source()),
                       {{"detail", std::string(parsed.error().description())}});

    for (const auto& [key, node] : parsed.table()) {
        const bool isSection = key == "errors" || key == "phrases";
        const toml::table* table = node.as_table();
        if (isSection && table == nullptr) return wrongType(path, node, "a table");
        if (!isSection) {
            if (auto done = readEntry(path, key, node); !done) return done;
            continue;
        }
        for (const auto& [code, entry] : *table) {
            if (entry.is_table() != (key == "errors"))
                return wrongType(path, entry, key == "errors" ? errorForm : "a text in quotes");
            if (auto done = readEntry(path, code, entry); !done) return done;
        }
    }
    return {};
}

Result<void> BookReader::readEntry(const std::filesystem::path& path, const toml::key& key, const toml::node& node)
{
    const std::string code(key);
    if (m_book.has(code)) return bad("words.twice", path, key.source(), code);
    if (node.is_string()) {
        m_book.m_phrases.emplace(code, node.ref<std::string>());
        return {};
    }
    const toml::table* words = node.as_table();
    if (words == nullptr) return wrongType(path, node, "a text in quotes");
    Book::ErrorWords entry;
    for (const auto& [part, text] : *words) {
        if (part != "what" && part != "remedy") return bad("words.unknown", path, part.source(), std::string(part));
        if (!text.is_string()) return wrongType(path, text, "a text in quotes");
        (part == "what" ? entry.what : entry.remedy) = text.ref<std::string>();
    }
    if (entry.what.empty()) return wrongType(path, node, errorForm);
    m_book.m_errors.emplace(code, std::move(entry));
    return {};
}

} // namespace proofwalk::words
