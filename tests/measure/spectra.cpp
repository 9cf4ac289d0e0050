// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: a discrete Fourier sum written out, slow and obvious; Parseval's theorem; the sum of the squares of a Hann
// window, 3/8 of its length (its Fourier series).
#include "core/measure/spectra.h"

#include <QtTest>

#include <cmath>
#include <complex>
#include <numbers>

using namespace proofwalk;

class TestSpectra : public QObject {
    Q_OBJECT

private slots:
    void agreesWithTheSumWrittenOut()
    {
        measure::Transform transform(60);
        const std::size_t length = transform.length();
        QVERIFY(length >= 60 && length % 2 == 0);
        std::vector<float> samples(length);
        for (std::size_t i = 0; i < length; ++i)
            samples[i] = static_cast<float>(std::sin(0.7 * static_cast<double>(i * i)));
        const auto power = transform.power(samples.data());
        QCOMPARE(power.size(), length / 2 + 1);
        for (std::size_t k = 0; k < power.size(); ++k) {
            std::complex<double> sum = 0;
            for (std::size_t i = 0; i < length; ++i) {
                const double turn = (static_cast<double>(i) + 0.5) / static_cast<double>(length);
                const double window = 0.5 - 0.5 * std::cos(2 * std::numbers::pi * turn);
                sum +=
                    window * double{samples[i]}
                    * std::polar(1.0, -2 * std::numbers::pi * static_cast<double>(k * i) / static_cast<double>(length));
            }
            QVERIFY(std::fabs(std::norm(sum) - double{power[k]}) < 1e-4 * (1 + std::norm(sum)));
        }
    }
    void aToneStandsWhereItIs_data()
    {
        QTest::addColumn<int>("rate_hz");
        for (const int rate : {8000, 11025, 22050, 44100, 48000, 96000, 192000}) QTest::addRow("%d Hz", rate) << rate;
    }
    void aToneStandsWhereItIs()
    {
        QFETCH(int, rate_hz);
        measure::Recording recording{rate_hz, std::vector<float>(static_cast<std::size_t>(rate_hz), 0)};
        for (std::size_t i = 0; i < recording.samples.size(); ++i)
            recording.samples[i] =
                static_cast<float>(std::sin(2 * std::numbers::pi * 1000 * static_cast<double>(i) / rate_hz));
        const auto spectra = measure::shortSpectra(recording);
        QVERIFY(spectra.frame_s > 0.0045 && spectra.frame_s < 0.0065);
        QVERIFY(std::fabs(static_cast<double>(spectra.frames) * spectra.frame_s - 1) < 0.01);
        const auto frame = spectra.frame(spectra.frames / 2);
        const auto best = static_cast<std::size_t>(std::ranges::max_element(frame) - frame.begin());
        QVERIFY(std::fabs(static_cast<double>(best + spectra.firstBin) * spectra.bin_hz - 1000)
                <= 0.6 * spectra.bin_hz);
    }
};

QTEST_GUILESS_MAIN(TestSpectra)
#include "spectra.moc"
