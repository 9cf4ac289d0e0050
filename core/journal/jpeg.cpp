// SPDX-License-Identifier: GPL-3.0-or-later
// JPEG by libjpeg-turbo. The library leaves on an error by longjmp, past every destructor between: so whatever has one
// lives outside the functions that call it.
#include "core/journal/picture.h"

#include <algorithm>
#include <csetjmp>
#include <cstdio>
#include <cstdlib>

#include <jpeglib.h>

#include <jerror.h>

namespace proofwalk::journal {
namespace {

/// A progressive file may ask for the whole picture again with each scan; real ones have about ten.
constexpr int scans_most = 100;

/// What the library is given in place of its own ways to complain and to exit.
struct Trouble {
    jpeg_error_mgr manager{}; // first, so that a pointer to it is one to the whole
    std::jmp_buf leave{};
    char detail[JMSG_LENGTH_MAX]{};
    bool isDamaged = false;

    Trouble()
    {
        jpeg_std_error(&manager);
        manager.error_exit = [](j_common_ptr info) {
            auto* trouble = reinterpret_cast<Trouble*>(info->err);
            info->err->format_message(info, trouble->detail);
            std::longjmp(trouble->leave, 1);
        };
        // A file cut short is a warning to the library, which fills up with grey: to us it is damage.
        manager.emit_message = [](j_common_ptr info, int level) {
            auto* trouble = reinterpret_cast<Trouble*>(info->err);
            if (level >= 0 || info->err->msg_code == JWRN_EXTRANEOUS_DATA || trouble->isDamaged) return;
            trouble->isDamaged = true;
            info->err->format_message(info, trouble->detail);
        };
        manager.output_message = [](j_common_ptr) {};
    }
};

struct Decoder {
    Trouble trouble;
    jpeg_decompress_struct info{};
    jpeg_progress_mgr progress{};
    Picture picture;
    bool isOtherColour = false;

    Decoder() { info.err = &trouble.manager; }
    Decoder(const Decoder&) = delete;
    Decoder& operator=(const Decoder&) = delete;
    ~Decoder() { jpeg_destroy_decompress(&info); }
};

void stopEndlessScans(j_common_ptr info)
{
    auto* decoder = reinterpret_cast<j_decompress_ptr>(info);
    if (decoder->input_scan_number <= scans_most) return;
    info->err->msg_code = JERR_BAD_PROGRESSION;
    info->err->error_exit(info);
}

const unsigned char* octets(std::string_view bytes) { return reinterpret_cast<const unsigned char*>(bytes.data()); }

bool readHeader(Decoder& decoder, std::string_view bytes)
{
    if (setjmp(decoder.trouble.leave) != 0) return false;
    jpeg_create_decompress(&decoder.info);
    decoder.progress.progress_monitor = stopEndlessScans;
    decoder.info.progress = &decoder.progress;
    jpeg_mem_src(&decoder.info, octets(bytes), bytes.size());
    jpeg_save_markers(&decoder.info, JPEG_APP0 + 1, 0xFFFF);
    jpeg_read_header(&decoder.info, TRUE);
    decoder.isOtherColour = decoder.info.jpeg_color_space == JCS_CMYK || decoder.info.jpeg_color_space == JCS_YCCK;
    return true;
}

/// How many times smaller it can be decoded while its longer side is still no less than wanted.
unsigned denominator(const jpeg_decompress_struct& info, std::size_t side)
{
    const std::size_t longer = std::max(info.image_width, info.image_height);
    for (const unsigned times : {8U, 4U, 2U})
        if (longer / times >= side) return times;
    return 1;
}

bool beginPixels(Decoder& decoder, std::size_t side)
{
    if (setjmp(decoder.trouble.leave) != 0) return false;
    decoder.info.out_color_space = JCS_RGB;
    decoder.info.scale_num = 1;
    decoder.info.scale_denom = denominator(decoder.info, side);
    jpeg_start_decompress(&decoder.info);
    return true;
}

bool readPixels(Decoder& decoder)
{
    if (setjmp(decoder.trouble.leave) != 0) return false;
    while (decoder.info.output_scanline < decoder.info.output_height) {
        JSAMPROW row = decoder.picture.rgb.data() + decoder.info.output_scanline * decoder.picture.width * 3;
        jpeg_read_scanlines(&decoder.info, &row, 1);
    }
    jpeg_finish_decompress(&decoder.info);
    return true;
}

int orientationIn(const jpeg_decompress_struct& info)
{
    constexpr std::string_view exif("Exif\0\0", 6);
    for (const auto* marker = info.marker_list; marker != nullptr; marker = marker->next) {
        const std::string_view data(reinterpret_cast<const char*>(marker->data), marker->data_length);
        if (data.starts_with(exif)) return orientationOf(data.substr(exif.size()));
    }
    return 1;
}

struct Encoder {
    Trouble trouble;
    jpeg_compress_struct info{};
    unsigned char* bytes = nullptr;
    unsigned long size = 0;

    Encoder() { info.err = &trouble.manager; }
    Encoder(const Encoder&) = delete;
    Encoder& operator=(const Encoder&) = delete;
    ~Encoder()
    {
        jpeg_destroy_compress(&info);
        std::free(bytes);
    }
};

bool write(Encoder& encoder, const Picture& picture)
{
    if (setjmp(encoder.trouble.leave) != 0) return false;
    jpeg_create_compress(&encoder.info);
    jpeg_mem_dest(&encoder.info, &encoder.bytes, &encoder.size);
    encoder.info.image_width = static_cast<JDIMENSION>(picture.width);
    encoder.info.image_height = static_cast<JDIMENSION>(picture.height);
    encoder.info.input_components = 3;
    encoder.info.in_color_space = JCS_RGB;
    jpeg_set_defaults(&encoder.info);
    jpeg_set_quality(&encoder.info, 85, TRUE);
    encoder.info.optimize_coding = TRUE;
    jpeg_start_compress(&encoder.info, TRUE);
    while (encoder.info.next_scanline < encoder.info.image_height) {
        // The library takes a pointer to what may change and changes nothing.
        auto* row = const_cast<JSAMPROW>(picture.rgb.data() + encoder.info.next_scanline * picture.width * 3);
        jpeg_write_scanlines(&encoder.info, &row, 1);
    }
    jpeg_finish_compress(&encoder.info);
    return true;
}

} // namespace

Result<Picture> decodeJpeg(std::string_view bytes, std::size_t side)
{
    Decoder decoder;
    const auto damaged = [&] { return failure("photograph.damaged", "", {{"detail", decoder.trouble.detail}}); };
    if (!readHeader(decoder, bytes)) return damaged();
    if (decoder.isOtherColour) return failure("photograph.format", "", {{"found", "CMYK"}});
    if (auto fits = checkSize(decoder.info.image_width, decoder.info.image_height); !fits) return passOn(fits);
    decoder.picture.orientation = orientationIn(decoder.info);
    if (!beginPixels(decoder, side)) return damaged();
    decoder.picture.width = decoder.info.output_width;
    decoder.picture.height = decoder.info.output_height;
    decoder.picture.rgb.resize(decoder.picture.width * decoder.picture.height * 3);
    if (!readPixels(decoder) || decoder.trouble.isDamaged) return damaged();
    return Result<Picture>(std::move(decoder.picture));
}

std::string encodeJpeg(const Picture& picture)
{
    Encoder encoder;
    // Writing to memory fails only when there is none left, or on a picture no decoder here can have made.
    if (!write(encoder, picture)) std::abort();
    return {reinterpret_cast<const char*>(encoder.bytes), encoder.size};
}

} // namespace proofwalk::journal
