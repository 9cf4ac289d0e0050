// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/journal.h"
#include "core/journal/picture.h"

namespace proofwalk::journal {

Result<std::string> preparePhotograph(std::string_view bytes)
{
    return failure("photograph.format", "", {{"found", static_cast<std::int64_t>(bytes.size())}});
}

} // namespace proofwalk::journal
