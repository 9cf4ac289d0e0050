// SPDX-License-Identifier: GPL-3.0-or-later
// WAV files are written here by hand, byte for byte, after the RIFF form of 1991 (from memory), or by the sound library
// that also reads them where the depth is unusual; what a reader must refuse is written by hand.
#include "core/measure/recording.h"

#include <QtTest>

#include <sndfile.h>

#include <cmath>
#include <cstring>

using namespace proofwalk;

namespace {

void put(std::string& bytes, std::uint32_t number, int count)
{
    for (int i = 0; i < count; ++i) bytes += static_cast<char>(number >> (8U * static_cast<unsigned>(i)) & 0xFFU);
}

/// 16 bit WAV; every channel's samples are given by a function of time and channel.
template <class F>
std::string wav(std::uint32_t rate_hz, std::uint32_t channels, double length_s, F&& sample)
{
    const auto frames = static_cast<std::uint32_t>(length_s * rate_hz);
    const std::uint32_t data = frames * channels * 2;
    std::string bytes = "RIFF";
    put(bytes, 36 + data, 4);
    bytes += "WAVEfmt ";
    put(bytes, 16, 4);
    put(bytes, 1, 2);
    put(bytes, channels, 2);
    put(bytes, rate_hz, 4);
    put(bytes, rate_hz * channels * 2, 4);
    put(bytes, channels * 2, 2);
    put(bytes, 16, 2);
    bytes += "data";
    put(bytes, data, 4);
    for (std::uint32_t i = 0; i < frames; ++i)
        for (std::uint32_t channel = 0; channel < channels; ++channel) {
            const double value = sample(static_cast<double>(i) / rate_hz, channel);
            put(bytes, static_cast<std::uint32_t>(static_cast<int>(std::lround(value * 32767))) & 0xFFFFU, 2);
        }
    return bytes;
}

double tone(double at_s, std::uint32_t channel) { return (channel == 1 ? 0.5 : 0.01) * std::sin(6283.2 * at_s); }

std::string codeOf(const std::string& bytes)
{
    const auto read = measure::readRecording(bytes);
    return read ? "read" : read.error().code;
}

} // namespace

class TestRecording : public QObject {
    Q_OBJECT

private slots:
    void samplesAsWritten()
    {
        const auto read =
            measure::readRecording(wav(8000, 1, 2, [](double at_s, std::uint32_t) { return at_s / 4; })).value();
        QCOMPARE(read.rate_hz, 8000);
        QCOMPARE(read.samples.size(), std::size_t{16000});
        QCOMPARE(read.length_s(), 2.0);
        for (std::size_t i = 0; i < read.samples.size(); i += 97)
            QVERIFY(std::fabs(double{read.samples[i]} - static_cast<double>(i) / 8000 / 4) < 1e-4);
    }
    void ofTwoChannelsTheLouder()
    {
        const auto read = measure::readRecording(wav(8000, 2, 1, tone)).value();
        const float most = *std::ranges::max_element(read.samples);
        QVERIFY(most > 0.49F && most < 0.51F);
    }
    void anyDepth_data()
    {
        QTest::addColumn<int>("format");
        QTest::newRow("8 bit") << (SF_FORMAT_WAV | SF_FORMAT_PCM_U8);
        QTest::newRow("24 bit") << (SF_FORMAT_WAV | SF_FORMAT_PCM_24);
        QTest::newRow("32 bit") << (SF_FORMAT_WAV | SF_FORMAT_PCM_32);
        QTest::newRow("float") << (SF_FORMAT_WAV | SF_FORMAT_FLOAT);
        QTest::newRow("double, extensible") << (SF_FORMAT_WAVEX | SF_FORMAT_DOUBLE);
        QTest::newRow("RF64") << (SF_FORMAT_RF64 | SF_FORMAT_PCM_16);
    }
    void anyDepth()
    {
        QFETCH(int, format);
        const QTemporaryDir folder;
        const QString path = folder.filePath("a.wav");
        SF_INFO info{};
        info.samplerate = 96000;
        info.channels = 1;
        info.format = format;
        SNDFILE* file = sf_open(path.toUtf8().constData(), SFM_WRITE, &info);
        QVERIFY(file != nullptr);
        std::vector<float> samples(96000, 0.25F);
        sf_writef_float(file, samples.data(), static_cast<sf_count_t>(samples.size()));
        sf_close(file);
        QFile written(path);
        QVERIFY(written.open(QIODevice::ReadOnly));
        const auto read = measure::readRecording(written.readAll().toStdString()).value();
        QCOMPARE(read.rate_hz, 96000);
        QVERIFY(std::fabs(read.samples[5000] - 0.25F) < 0.01F);
    }
    void refused()
    {
        QCOMPARE(codeOf(""), std::string("measure.recording-kind"));
        QCOMPARE(codeOf("OggS............"), std::string("measure.recording-kind"));
        QCOMPARE(codeOf("RIFF....AVI ...."), std::string("measure.recording-kind"));
        QCOMPARE(codeOf("RIFF....WAVE...."), std::string("measure.recording-damaged"));
        QCOMPARE(codeOf(wav(8000, 1, 0.5, tone)), std::string("measure.out-of-range"));
        QCOMPARE(codeOf(wav(2000, 1, 2, tone)), std::string("measure.out-of-range"));
        QCOMPARE(codeOf(wav(8000, 9, 2, tone)), std::string("measure.out-of-range"));
    }
    void refusesWhatIsNoNumber()
    {
        measure::Recording recording{8000, std::vector<float>(16000, 0)};
        QVERIFY(measure::checkRecording(recording).has_value());
        recording.samples[7000] = std::nanf("");
        QVERIFY(!measure::checkRecording(recording).has_value());
        recording.samples[7000] = INFINITY;
        QVERIFY(!measure::checkRecording(recording).has_value());
        recording.rate_hz = 0;
        QVERIFY(!measure::checkRecording(recording).has_value());
    }
    // Cut off, or with a byte changed: an error or a recording, never a crash.
    void damagedAnywhere()
    {
        const std::string whole = wav(8000, 1, 1.2, tone);
        for (std::size_t length = 0; length < 60; ++length) codeOf(whole.substr(0, length));
        for (std::size_t at = 0; at < 48; ++at)
            for (const char byte : {'\0', '\x7f', '\xff'}) {
                std::string changed = whole;
                changed[at] = byte;
                codeOf(changed);
            }
        QCOMPARE(codeOf(whole), std::string("read"));
    }
};

QTEST_GUILESS_MAIN(TestRecording)
#include "recording.moc"
