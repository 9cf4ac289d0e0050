// SPDX-License-Identifier: GPL-3.0-or-later
// appender FILE KEYS COUNT: opens or creates a job and appends COUNT notes (0: without end), a commit each; writes each
// number to standard output once the journal has acknowledged it. The tests kill it.
#include "core/journal/journal.h"

#include <charconv>
#include <cstdio>
#include <string>
#include <unistd.h>

using namespace proofwalk;
using namespace proofwalk::journal;

namespace {

int fail(const Error& error)
{
    std::fprintf(stderr, "%s\n", error.code.c_str());
    return 2;
}

Draft draft(const char* kind, base::Json body)
{
    return {.kind = kind, .body = std::move(body), .privates = {}, .contents = {}, .photographs = {}};
}

} // namespace

int main(int count, char** words)
{
    if (count != 4) return 2;
    const std::string most = words[3];
    long notes = 0;
    std::from_chars(most.data(), most.data() + most.size(), notes);
    auto key = openMachineKey(words[2]);
    if (!key) return fail(key.error());
    const bool isNew = !std::filesystem::exists(words[1]);
    auto journal = isNew ? Journal::create(words[1], *key) : Journal::open(words[1], *key);
    if (!journal) return fail(journal.error());
    if (isNew)
        if (auto started = journal->append({draft("start", base::Json::Object{})}, base::now()); !started)
            return fail(started.error());
    for (long i = 1; notes == 0 || i <= notes; ++i) {
        auto done = journal->append({draft("note", base::Json::Object{{"number", std::int64_t{i}}})}, base::now());
        if (!done) return fail(done.error());
        const std::string line = std::to_string(i) + "\n";
        if (::write(STDOUT_FILENO, line.data(), line.size()) != static_cast<ssize_t>(line.size())) return 1;
    }
    return 0;
}
