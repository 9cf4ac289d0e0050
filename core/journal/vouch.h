// SPDX-License-Identifier: GPL-3.0-or-later
// A person answers for a machine's key: their signing key signs the machine's public key for one job.
#pragma once

#include "core/base/result.h"
#include "core/journal/identity.h"

#include <string>
#include <string_view>

namespace proofwalk::journal {

/// What is signed: "proofwalk/vouch/1\n", the job, "\n", the machine's public key in hex, "\n".
std::string vouchText(std::string_view job, std::string_view machineKeyHex);

/// A vouching as it stands in the record.
struct Vouching {
    std::string machineKey;  ///< DER in hex
    std::string certificate; ///< the signer's, DER in hex
    std::string root;        ///< that issued it, DER in hex
    std::string signature;   ///< DER in hex
};

/// Errors: key.cannot-sign {detail}.
Result<Vouching> vouchFor(std::string_view job, std::string_view machineKeyHex, const Identity& identity);

/// The name in the certificate, if signature and chain check at that time. Error: vouch.invalid.
Result<std::string> checkVouching(std::string_view job, const Vouching& vouching, std::int64_t at_utc_ms);

} // namespace proofwalk::journal
