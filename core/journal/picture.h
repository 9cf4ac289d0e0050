// SPDX-License-Identifier: GPL-3.0-or-later
// A decoded picture, and turning and shrinking it.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::journal {

/// Rows from the top, three bytes a pixel: red, green, blue.
struct Picture {
    std::size_t width = 0;
    std::size_t height = 0;
    std::vector<std::uint8_t> rgb;
    int orientation = 1; ///< as Exif's tag of that name says (1 to 8); 1 is upright
};

constexpr std::size_t picturePixels_most = 64ULL * 1'000'000; ///< of what is read
constexpr std::size_t photographSide_most = 1600;             ///< of what is kept

/// The bytes of a JPEG file as a picture, at full size or at a half, a quarter or an eighth of it, but never less than
/// `side` on the longer side; and its orientation. Errors as preparePhotograph().
Result<Picture> decodeJpeg(std::string_view bytes, std::size_t side);
/// Baseline JPEG, quality 85, with no marker but what decoding needs.
std::string encodeJpeg(const Picture& picture);

/// The bytes of a PNG file as a picture, what is transparent laid on white. Errors as preparePhotograph().
Result<Picture> decodePng(std::string_view bytes);
/// PNG with no chunk but what decoding needs.
std::string encodePng(const Picture& picture);

/// Whether it is small enough to be decoded at all. Error: photograph.too-large {width, height}.
Result<void> checkSize(std::size_t width, std::size_t height);

/// The value of the tag Orientation in the first directory of Exif data (a TIFF structure, CIPA DC-008, 4.6.4): 1
/// if there is none, or if it or the data is malformed: a damaged note about the picture is not a damaged picture.
int orientationOf(std::string_view tiff);

/// The picture as it is to be seen, orientation 1.
Picture turnedUpright(Picture picture);

/// Shrunk to at most `side` on the longer side by averaging areas; as it is if it is no larger.
Picture shrunk(Picture picture, std::size_t side);

} // namespace proofwalk::journal
