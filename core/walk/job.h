// SPDX-License-Identifier: GPL-3.0-or-later
// A job that is being worked on: the journal and the state it adds up to, kept together. Nobody else writes to it.
#pragma once

#include "core/journal/journal.h"
#include "core/walk/judgement.h"

#include <filesystem>
#include <map>
#include <memory>
#include <string>
#include <string_view>

namespace proofwalk::walk {

/// What a new job is judged by from its first day.
struct StartGround {
    plan::Plan plan; ///< as read; it gets its ids here
    catalogue::Files catalogue;
    std::string conductors;                   ///< bytes of core/measure/conductors.csv
    std::map<std::string, std::string> words; ///< path -> bytes of the language's sentences
};

/// Commitment -> value of every private text there is; for a photograph or ink, the hash of its bytes.
using Privates = std::map<std::string, std::string>;

class Job {
public:
    /// Makes the file and its first event, which embeds all of the ground.
    /// Errors: those of Journal::create and append, Catalogue::read, makeScope.
    static Result<Job> start(const std::filesystem::path& file, StartGround ground,
                             std::shared_ptr<const journal::SigningKey> key, const base::WallClock& now);

    /// Opens for writing. Errors: those of Journal::open and judgeRecord.
    static Result<Job> open(const std::filesystem::path& file, std::shared_ptr<const journal::SigningKey> key);

    /// Checks one command, makes it durable, folds it. `folder` is where photographs named in it lie.
    /// Gives how many events it made. Errors: those of draftsFor and Journal::append; nothing was recorded then.
    Result<int> take(std::string_view line, const std::filesystem::path& folder, const base::WallClock& now);

    /// For events that no command makes: vouching for the machine's key, the report handed over.
    Result<void> append(std::vector<journal::Draft> drafts, const base::WallClock& now);

    const State& state() const { return m_judged.state; }
    const Judged& judged() const { return m_judged; }
    Result<journal::Record> record() const { return m_journal.record(); }
    /// The bytes of a photograph by its hash. Errors: those of Journal::photograph.
    Result<std::string> photograph(const std::string& hash) const { return m_journal.photograph(hash); }
    const std::string& id() const { return m_journal.job(); }
    /// As of the last append; what it points to never changes.
    std::shared_ptr<const Privates> privates() const { return m_privates; }

private:
    Job(journal::Journal journal, Judged judged, const journal::Record& record);

    journal::Journal m_journal;
    Judged m_judged;
    std::shared_ptr<const Privates> m_privates;
};

} // namespace proofwalk::walk
