// SPDX-License-Identifier: GPL-3.0-or-later
// The qpdf library without its repairs, and with bounds. For sources only.
#pragma once

#include "core/base/result.h"

#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>

#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace proofwalk::report {

/// No report is larger, nor anything unpacked from it.
constexpr std::size_t reportLimit = std::size_t{256} << 20U;
/// Nor has it more objects.
constexpr std::size_t objectLimit = 200000;

/// Parses the bytes, which must outlive what is returned. What is broken is refused and not repaired: reading goes on
/// until every object has been seen. Errors: seal.syntax {detail}; seal.encrypted; seal.too-large {limit}.
Result<std::shared_ptr<QPDF>> openPdf(std::string_view bytes);

/// A stream's bytes without its filters; nullopt if they cannot be undone or would be more than `limit` bytes.
std::optional<std::string> unpacked(QPDFObjectHandle stream, std::size_t limit);

/// Whether the object is a dictionary, or a stream with one, and the dictionary.
std::optional<QPDFObjectHandle> dictionaryOf(QPDFObjectHandle object);

/// The member if it is a name, "/Sig"; else empty. No complaint of the library if it is anything else.
std::string nameAt(QPDFObjectHandle dictionary, const std::string& key);

/// The member if it is a string, as UTF-8; else nullopt.
std::optional<std::string> textAt(QPDFObjectHandle dictionary, const std::string& key);

} // namespace proofwalk::report
