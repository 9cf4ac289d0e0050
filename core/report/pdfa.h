// SPDX-License-Identifier: GPL-3.0-or-later
// Drawn pages made into a document for the archive: built to PDF/A-3b (ISO 19005-3) with the record attached and one
// empty signature field. "Built to": no judge of conformity has seen it.
#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::report {

/// What the document says of itself, in its information dictionary and in its XMP alike. UTF-8.
struct DocumentFacts {
    std::string title;
    std::string creator;  ///< the tool: "Proofwalk 0.1.0"
    std::string producer; ///< the library that wrote the file
    std::string language; ///< BCP 47: "en-GB"
    base::WallClock made;
};

/// A file inside the report; its relationship to the report is Data (ISO 32000-2, 7.11.3; from memory).
struct Attachment {
    std::string name; ///< "record.jsonl": ASCII letters, digits, full stop, hyphen, underscore; each name once
    std::string mime; ///< "application/json"
    std::string bytes;
    std::string description; ///< for people; may be empty
};

/// Where the installer's signature field lies, as drawn: from the page's upper left corner, in points (1/72 inch).
struct SignaturePlace {
    int page = 0; ///< from 0
    double left_pt = 0;
    double top_pt = 0;
    double width_pt = 0;
    double height_pt = 0;
};

/// The name of the only signature field of a report.
inline constexpr std::string_view installerField = "Installer";

/// From a PDF that QPdfWriter wrote in its A1b mode. The same input gives the same bytes, whenever it is done: the
/// times and the file identifier that Qt wrote are replaced. What comes out was checked by pdfaProblems().
/// Errors: seal.attachment-name {found}; seal.attachment-twice {found}; seal.field-page {found, pages};
/// seal.field-outside {page}; seal.fact-missing {found}; seal.has-form; those of openPdf and of pdfaProblems.
Result<std::string> buildPdfA(std::string_view drawn, const DocumentFacts& facts,
                              std::span<const Attachment> attachments, const SignaturePlace& place);

} // namespace proofwalk::report
