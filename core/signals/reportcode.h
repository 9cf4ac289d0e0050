// SPDX-License-Identifier: GPL-3.0-or-later
// The event codes alarm systems report with: the three digits of DC-05 and the two capitals of DC-04. The list is data,
// event-codes.csv beside this file, each code with the basis on which we have it; which purposes of a zone a code
// fits is common practice.
#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::signals {

/// One code and what it says.
struct ReportCode {
    std::string system; ///< "DC-05" or "DC-04"
    std::string code; ///< "130", "BA"
    std::string event; ///< "intrusion, unspecified"
    std::string group; ///< "burglary", "fire", "trouble", ...
    std::vector<std::string> purposes; ///< of zones whose alarm may carry it; empty: not the alarm of a zone
    std::string basis; ///< where the entry was met
};

/// Whether the alarm of a zone of that purpose may carry the code.
bool fitsPurpose(const ReportCode& code, std::string_view purpose);

/// The list as a whole.
class ReportCodes {
public:
    /// Reads a list (columns system, code, event, group, purposes, basis). Errors: those of base::readCsv;
    /// signals.column-missing {wanted}; signals.code-form {found}; signals.code-twice {found}.
    static Result<ReportCodes> read(std::string_view bytes, const std::string& name);

    /// The list in a data folder (base::dataFolder()): signals/event-codes.csv. Errors besides: those of
    /// base::readFile.
    static Result<ReportCodes> open(const std::filesystem::path& dataFolder);

    /// Error: signals.code-unknown {found}.
    Result<ReportCode> find(std::string_view code) const;

    std::size_t size() const { return m_codes.size(); }

private:
    std::map<std::string, ReportCode, std::less<>> m_codes;
};

/// In the list that came with the program, read once. Errors: signals.code-unknown {found}; those of ReportCodes::open.
Result<ReportCode> findReportCode(std::string_view text);

} // namespace proofwalk::signals
