// SPDX-License-Identifier: GPL-3.0-or-later
// The job file: an append-only SQLite database. What append() returned is durable.
#pragma once

#include "core/journal/key.h"
#include "core/journal/record.h"

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace proofwalk::journal {

/// An event that is to be appended, with what its body names by hash or commitment.
struct Draft {
    std::string kind;
    std::int64_t v = 1;
    base::Json body;
    std::vector<Private> privates;
    std::vector<std::string> contents;    ///< bytes; the body names their SHA-256
    std::vector<std::string> photographs; ///< prepared by preparePhotograph()
};

/// A photograph as it may be kept: decoded, location and maker's data stripped, turned upright, scaled to at most 1600
/// pixels a side, encoded again. JPEG and PNG. Errors: photograph.format; photograph.damaged {detail};
/// photograph.too-large.
Result<std::string> preparePhotograph(std::string_view bytes);

class Journal {
public:
    /// A new job file with a random job id, owner-only. Nothing is there yet until the first append, whose first
    /// draft must be of kind "start". Errors: journal.exists; journal.full; journal.unwritable {detail}.
    static Result<Journal> create(const std::filesystem::path& file, std::shared_ptr<const SigningKey> machineKey);

    /// Opens for writing; a new chain begins with the first append (an "open" event with the machine's public key
    /// is put
    /// before it). Errors: file.missing; journal.foreign; journal.newer {found, known}; journal.damaged {detail};
    /// journal.in-use; journal.read-only {detail}; journal.full; journal.unwritable {detail}; file.unreadable {detail}.
    static Result<Journal> open(const std::filesystem::path& file, std::shared_ptr<const SigningKey> machineKey);

    /// The whole record, read-only and untrusting; the file is not changed. Errors as open.
    static Result<Record> read(const std::filesystem::path& file);

    /// One transaction, one flush: all of the drafts or none. The head is signed in the same transaction.
    /// Gives the events as stored, the chain's "open" event before them if one was put there. Errors: journal.full;
    /// journal.unwritable {detail}; journal.in-use (another program took the file over); journal.event-too-large
    /// {bytes};
    /// journal.not-started and journal.kind-reserved {found} ("start" is the first of a job and of nothing else, "open"
    /// is the journal's own); those of readEvent(), for a draft that would not be read again; key.cannot-sign {detail}.
    Result<std::vector<Event>> append(std::vector<Draft> drafts, const base::WallClock& now);

    /// The record as of the last append.
    Result<Record> record() const;
    /// The bytes of one photograph by its SHA-256 in hex, without reading the rest.
    /// Errors: journal.no-photograph {found}: none of that hash is there, or its bytes are not those; those of reading.
    Result<std::string> photograph(const std::string& hash) const;
    const std::string& job() const;

    Journal(const Journal&) = delete;
    Journal& operator=(const Journal&) = delete;
    Journal(Journal&&) noexcept;
    Journal& operator=(Journal&&) noexcept;
    ~Journal();

private:
    struct File;
    explicit Journal(std::unique_ptr<File> file);
    std::unique_ptr<File> m_file;
};

} // namespace proofwalk::journal
