// SPDX-License-Identifier: GPL-3.0-or-later
// PNG by libpng's simplified interface: whole pictures in memory, no jumping.
#include "core/journal/picture.h"

#include <png.h>

#include <cstdlib>

namespace proofwalk::journal {
namespace {

/// What libpng holds for a picture, freed at the end.
struct Image {
    png_image image{};
    Image() { image.version = PNG_IMAGE_VERSION; }
    Image(const Image&) = delete;
    Image& operator=(const Image&) = delete;
    ~Image() { png_image_free(&image); }
};

std::size_t bigEndian(std::string_view bytes)
{
    std::size_t value = 0;
    for (const char c : bytes.substr(0, 4)) value = value << 8U | static_cast<unsigned char>(c);
    return value;
}

/// The data of the chunk eXIf (PNG, third edition, 11.3.4.5), which the simplified interface passes over. Chunks are:
/// length, type, data, checksum.
std::string_view exifOf(std::string_view png)
{
    for (png.remove_prefix(8); png.size() >= 12;) {
        const std::size_t length = bigEndian(png);
        if (length > png.size() - 12) break;
        if (png.substr(4, 4) == "eXIf") return png.substr(8, length);
        png.remove_prefix(length + 12);
    }
    return {};
}

} // namespace

Result<Picture> decodePng(std::string_view bytes)
{
    Image png;
    const auto damaged = [&] { return failure("photograph.damaged", "", {{"detail", png.image.message}}); };
    if (png_image_begin_read_from_memory(&png.image, bytes.data(), bytes.size()) == 0) return damaged();
    if (auto fits = checkSize(png.image.width, png.image.height); !fits) return passOn(fits);

    Picture picture;
    picture.width = png.image.width;
    picture.height = png.image.height;
    picture.orientation = orientationOf(exifOf(bytes));
    picture.rgb.resize(picture.width * picture.height * 3);
    png.image.format = PNG_FORMAT_RGB;
    const png_color white{255, 255, 255};
    if (png_image_finish_read(&png.image, &white, picture.rgb.data(), 0, nullptr) == 0) return damaged();
    return picture;
}

std::string encodePng(const Picture& picture)
{
    Image png;
    png.image.width = static_cast<png_uint_32>(picture.width);
    png.image.height = static_cast<png_uint_32>(picture.height);
    png.image.format = PNG_FORMAT_RGB;
    std::string bytes(PNG_IMAGE_PNG_SIZE_MAX(png.image), '\0');
    png_alloc_size_t size = bytes.size();
    // Writing to memory that is large enough fails only when there is none left.
    if (png_image_write_to_memory(&png.image, bytes.data(), &size, 0, picture.rgb.data(), 0, nullptr) == 0)
        std::abort();
    bytes.resize(size);
    return bytes;
}

} // namespace proofwalk::journal
