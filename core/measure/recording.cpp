// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/recording.h"

#include "core/measure/inputs.h"

#include <sndfile.h>

#include <algorithm>
#include <cstring>
#include <memory>

namespace proofwalk::measure {
namespace {

constexpr double mostLength_s = 1200;
constexpr int mostChannels = 8;
constexpr double mostSamples = 120e6; // 20 minutes at 48 kHz on two channels, rounded up: half a gigabyte
constexpr int leastRate_hz = 4000;
constexpr int mostRate_hz = 384000;

/// A file in memory, as the library reads one.
struct Source {
    std::string_view bytes;
    sf_count_t at = 0;
};

Source& sourceOf(void* user) { return *static_cast<Source*>(user); }

sf_count_t lengthOf(void* user) { return static_cast<sf_count_t>(sourceOf(user).bytes.size()); }

sf_count_t seekTo(sf_count_t offset, int whence, void* user)
{
    Source& source = sourceOf(user);
    const sf_count_t from = whence == SEEK_SET ? 0 : whence == SEEK_CUR ? source.at : lengthOf(user);
    source.at = std::clamp<sf_count_t>(from + offset, 0, lengthOf(user));
    return source.at;
}

sf_count_t readFrom(void* into, sf_count_t count, void* user)
{
    Source& source = sourceOf(user);
    const sf_count_t left = std::clamp<sf_count_t>(lengthOf(user) - source.at, 0, std::max<sf_count_t>(count, 0));
    if (left > 0) std::memcpy(into, source.bytes.data() + source.at, static_cast<std::size_t>(left));
    source.at += left;
    return left;
}

sf_count_t whereIn(void* user) { return sourceOf(user).at; }

/// The channel with the most power.
std::vector<float> loudest(const std::vector<float>& interleaved, std::size_t channels)
{
    std::vector<double> power(channels, 0);
    for (std::size_t i = 0; i < interleaved.size(); ++i)
        power[i % channels] += double{interleaved[i]} * double{interleaved[i]};
    const auto best = static_cast<std::size_t>(std::ranges::max_element(power) - power.begin());
    std::vector<float> samples;
    samples.reserve(interleaved.size() / channels);
    for (std::size_t i = best; i < interleaved.size(); i += channels) samples.push_back(interleaved[i]);
    return samples;
}

bool isWav(int format)
{
    const int kind = format & SF_FORMAT_TYPEMASK;
    return kind == SF_FORMAT_WAV || kind == SF_FORMAT_WAVEX || kind == SF_FORMAT_RF64;
}

} // namespace

Result<void> checkRecording(const Recording& recording)
{
    if (auto ok = checkWithin("rate_hz", recording.rate_hz, leastRate_hz, mostRate_hz); !ok) return ok;
    if (auto ok = checkWithin("length_s", recording.length_s(), 1, mostLength_s); !ok) return ok;
    for (const float sample : recording.samples)
        if (!(std::fabs(sample) <= 1e6F)) return outOfRange("samples", sample, "a finite number, full scale being 1");
    return {};
}

Result<Recording> readRecording(std::string_view bytes)
{
    // Asked before the library is, which also reads kinds of file that nobody means here.
    if (bytes.size() < 12 || (!bytes.starts_with("RIFF") && !bytes.starts_with("RF64")) || bytes.substr(8, 4) != "WAVE")
        return failure("measure.recording-kind", "");
    Source source{bytes};
    SF_VIRTUAL_IO door{lengthOf, seekTo, readFrom, nullptr, whereIn};
    SF_INFO info{};
    const std::unique_ptr<SNDFILE, int (*)(SNDFILE*)> file(sf_open_virtual(&door, SFM_READ, &info, &source), sf_close);
    if (!file) return failure("measure.recording-damaged", "", {{"detail", std::string(sf_strerror(nullptr))}});
    if (!isWav(info.format)) return failure("measure.recording-kind", "");
    if (auto ok = checkWithin("rate_hz", info.samplerate, leastRate_hz, mostRate_hz); !ok) return passOn(ok);
    if (auto ok = checkWithin("channels", info.channels, 1, mostChannels); !ok) return passOn(ok);
    const double claimed_s = static_cast<double>(info.frames) / info.samplerate;
    if (auto ok = checkWithin("length_s", claimed_s, 1, mostLength_s); !ok) return passOn(ok);

    const double samples = static_cast<double>(info.frames) * info.channels;
    if (auto ok = checkWithin("samples", samples, 1, mostSamples); !ok) return passOn(ok);

    const auto channels = static_cast<std::size_t>(info.channels);
    std::vector<float> interleaved(static_cast<std::size_t>(info.frames) * channels);
    const sf_count_t read = sf_readf_float(file.get(), interleaved.data(), info.frames);
    if (sf_error(file.get()) != SF_ERR_NO_ERROR)
        return failure("measure.recording-damaged", "", {{"detail", std::string(sf_strerror(file.get()))}});
    interleaved.resize(static_cast<std::size_t>(std::max<sf_count_t>(read, 0)) * channels);
    Recording recording{info.samplerate, channels == 1 ? std::move(interleaved) : loudest(interleaved, channels)};
    if (auto ok = checkRecording(recording); !ok) return passOn(ok);
    return recording;
}

} // namespace proofwalk::measure
