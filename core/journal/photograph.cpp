// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/journal.h"
#include "core/journal/picture.h"

#include "core/base/digest.h"

namespace proofwalk::journal {
namespace {

Picture upright(Picture picture) { return turnedUpright(shrunk(std::move(picture), photographSide_most)); }

} // namespace

// Nothing is taken over from the file but its pixels, so nothing of its notes can be forgotten in it.
Result<std::string> preparePhotograph(std::string_view bytes)
{
    if (bytes.starts_with("\xFF\xD8\xFF")) {
        auto picture = decodeJpeg(bytes, photographSide_most);
        if (!picture) return passOn(picture);
        return encodeJpeg(upright(std::move(*picture)));
    }
    if (bytes.starts_with("\x89PNG\r\n\x1A\n")) {
        auto picture = decodePng(bytes);
        if (!picture) return passOn(picture);
        return encodePng(upright(std::move(*picture)));
    }
    return failure("photograph.format", "", {{"found", base::toHex(bytes.substr(0, 8))}});
}

} // namespace proofwalk::journal
