// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/picture.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <utility>

namespace proofwalk::journal {
namespace {

/// Numbers of a TIFF structure, in whichever byte order it chose; nothing beyond its end.
class Tiff {
public:
    explicit Tiff(std::string_view bytes) : m_bytes(bytes), m_big(bytes.starts_with("MM")) {}

    bool isTiff() const { return (m_bytes.starts_with("II") || m_big) && number(2, 2) == 42; }

    /// 0 for what lies outside, which is no value of anything asked for here.
    std::size_t number(std::size_t at, std::size_t size) const
    {
        if (at > m_bytes.size() || m_bytes.size() - at < size) return 0;
        std::size_t value = 0;
        for (std::size_t i = 0; i < size; ++i) {
            const auto byte = static_cast<unsigned char>(m_bytes[m_big ? at + i : at + size - 1 - i]);
            value = value << 8U | byte;
        }
        return value;
    }

private:
    std::string_view m_bytes;
    bool m_big;
};

struct Point {
    std::size_t x, y;
};

/// Where the pixel of that stored row and column is to be seen. CIPA DC-008 (Exif), tag 274: each value names the
/// side at which the first stored row is seen and that at which the first stored column is (from memory).
Point seenAt(int orientation, std::size_t row, std::size_t column, std::size_t width, std::size_t height)
{
    switch (orientation) {
    case 2: return {width - 1 - column, row};              // top, right
    case 3: return {width - 1 - column, height - 1 - row}; // bottom, right
    case 4: return {column, height - 1 - row};             // bottom, left
    case 5: return {row, column};                          // left, top
    case 6: return {height - 1 - row, column};             // right, top
    case 7: return {height - 1 - row, width - 1 - column}; // right, bottom
    case 8: return {row, width - 1 - column};              // left, bottom
    default: return {column, row};                         // top, left
    }
}

/// The mean colour of the pixels in a rectangle.
std::array<std::uint8_t, 3> meanOf(const Picture& picture, Point from, Point to)
{
    std::array<std::uint64_t, 3> sums{};
    for (std::size_t y = from.y; y < to.y; ++y)
        for (std::size_t x = from.x; x < to.x; ++x)
            for (std::size_t c = 0; c < 3; ++c) sums[c] += picture.rgb[(y * picture.width + x) * 3 + c];
    const std::uint64_t count = (to.x - from.x) * (to.y - from.y);
    std::array<std::uint8_t, 3> mean{};
    for (std::size_t c = 0; c < 3; ++c) mean[c] = static_cast<std::uint8_t>((sums[c] + count / 2) / count);
    return mean;
}

} // namespace

Result<void> checkSize(std::size_t width, std::size_t height)
{
    if (width == 0 || height == 0) return failure("photograph.damaged", "", {{"detail", "empty"}});
    if (width <= picturePixels_most / height) return {};
    return failure("photograph.too-large", "",
                   {{"width", static_cast<std::int64_t>(width)}, {"height", static_cast<std::int64_t>(height)}});
}

int orientationOf(std::string_view bytes)
{
    constexpr std::size_t tagOrientation = 0x0112, typeShort = 3;
    const Tiff tiff(bytes);
    if (!tiff.isTiff()) return 1;
    const std::size_t directory = tiff.number(4, 4);
    const std::size_t entries = tiff.number(directory, 2);
    for (std::size_t i = 0; i < entries; ++i) {
        const std::size_t entry = directory + 2 + 12 * i;
        if (tiff.number(entry, 2) != tagOrientation) continue;
        const std::size_t value = tiff.number(entry + 8, 2);
        const bool good = tiff.number(entry + 2, 2) == typeShort && value >= 1 && value <= 8;
        return good ? static_cast<int>(value) : 1;
    }
    return 1;
}

Picture turnedUpright(Picture picture)
{
    if (picture.orientation == 1) return picture;
    assert(picture.rgb.size() == picture.width * picture.height * 3);
    Picture turned;
    turned.width = picture.orientation >= 5 ? picture.height : picture.width;
    turned.height = picture.orientation >= 5 ? picture.width : picture.height;
    turned.rgb.resize(picture.rgb.size());
    for (std::size_t row = 0; row < picture.height; ++row)
        for (std::size_t column = 0; column < picture.width; ++column) {
            const auto [x, y] = seenAt(picture.orientation, row, column, picture.width, picture.height);
            const auto from = picture.rgb.begin() + static_cast<std::ptrdiff_t>((row * picture.width + column) * 3);
            std::copy_n(from, 3, turned.rgb.begin() + static_cast<std::ptrdiff_t>((y * turned.width + x) * 3));
        }
    return turned;
}

Picture shrunk(Picture picture, std::size_t side)
{
    const std::size_t longer = std::max(picture.width, picture.height);
    if (longer <= side) return picture;
    Picture small;
    small.orientation = picture.orientation;
    small.width = std::max<std::size_t>(1, (picture.width * side + longer / 2) / longer);
    small.height = std::max<std::size_t>(1, (picture.height * side + longer / 2) / longer);
    small.rgb.reserve(small.width * small.height * 3);
    for (std::size_t y = 0; y < small.height; ++y)
        for (std::size_t x = 0; x < small.width; ++x) {
            const Point from{x * picture.width / small.width, y * picture.height / small.height};
            const Point to{(x + 1) * picture.width / small.width, (y + 1) * picture.height / small.height};
            const auto mean = meanOf(picture, from, to);
            small.rgb.insert(small.rgb.end(), mean.begin(), mean.end());
        }
    return small;
}

} // namespace proofwalk::journal
