// SPDX-License-Identifier: GPL-3.0-or-later
// A signature put behind the last byte of a PDF as an incremental update (ISO 32000-1, 7.5.6 and 12.8.1; from memory):
// what was there keeps every byte. The update holds the field with its value, the signature dictionary, a table of
// these two and a trailer.
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

namespace proofwalk::report {

/// Digits kept free for the signature, in hex: 8 KiB where 1.4 KiB are used.
inline constexpr std::size_t contentsDigits = 16384;

/// What the signature dictionary says.
struct SignatureWords {
    std::string field;  ///< the name of the field that is signed
    std::string time;   ///< as pdfTimeUtc() writes it
    std::string name;   ///< UTF-8
    std::string reason; ///< UTF-8
};

/// A file that is complete but for the digits of its signature.
struct Unsealed {
    std::string bytes;
    std::size_t open = 0;  ///< where the "<" stands
    std::size_t after = 0; ///< just behind the ">"
};

/// Errors: those of openPdf; seal.field-missing {found}; seal.already-signed {found}; seal.cut-short.
Result<Unsealed> appendUpdate(std::string_view pdf, const SignatureWords& words);

/// What the signature covers: everything but the digits and their brackets.
std::string coveredBytes(const Unsealed& unsealed);

/// Writes the signature into its place. Error: seal.no-room {bytes}.
Result<std::string> fillIn(Unsealed unsealed, std::string_view signatureDer);

} // namespace proofwalk::report
