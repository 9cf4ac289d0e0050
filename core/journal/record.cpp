// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/record.h"

#include "core/base/digest.h"

namespace proofwalk::journal {

Private sealPrivate(std::string value)
{
    std::string salt = base::randomHex(16);
    std::string commitment = commitmentOf(salt, value);
    return {std::move(commitment), std::move(salt), std::move(value)};
}

std::string commitmentOf(const std::string& salt, const std::string& value)
{
    return base::sha256Hex(base::canonical(base::Json::Array{"proofwalk/private/1", salt, value}));
}

std::string headText(const std::string& job, const Head& head)
{
    return "proofwalk/head/1\n" + job + '\n' + head.chain + '\n' + std::to_string(head.n) + '\n' + head.hash + '\n';
}

} // namespace proofwalk::journal
