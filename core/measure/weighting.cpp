// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/weighting.h"

#include "core/measure/inputs.h"
#include "core/measure/soundlevel.h"

#include <array>
#include <cmath>

namespace proofwalk::measure {
namespace {

// IEC 61672-1 annex E.
constexpr double f1_hz = 20.598997;
constexpr double f2_hz = 107.65265;
constexpr double f3_hz = 737.86223;
constexpr double f4_hz = 12194.217;
constexpr double at1kHz_db = 2.000;

/// A row of the table of IEC 61672-1:2002, as printed in a national adoption. Not the formula rounded: at 160 Hz that
/// gives -13.34997, and -13.4 is printed.
struct Printed {
    double nominal_hz;
    double weighting_db;
};
constexpr std::array table{
    Printed{10, -70.4},   Printed{12.5, -63.4}, Printed{16, -56.7},   Printed{20, -50.5},  Printed{25, -44.7},
    Printed{31.5, -39.4}, Printed{40, -34.6},   Printed{50, -30.2},   Printed{63, -26.2},  Printed{80, -22.5},
    Printed{100, -19.1},  Printed{125, -16.1},  Printed{160, -13.4},  Printed{200, -10.9}, Printed{250, -8.6},
    Printed{315, -6.6},   Printed{400, -4.8},   Printed{500, -3.2},   Printed{630, -1.9},  Printed{800, -0.8},
    Printed{1000, 0},     Printed{1250, 0.6},   Printed{1600, 1},     Printed{2000, 1.2},  Printed{2500, 1.3},
    Printed{3150, 1.2},   Printed{4000, 1},     Printed{5000, 0.5},   Printed{6300, -0.1}, Printed{8000, -1.1},
    Printed{10000, -2.5}, Printed{12500, -4.3}, Printed{16000, -6.6}, Printed{20000, -9.3}};

double square(double value) { return value * value; }

} // namespace

Result<double> aWeighting_db(double frequency_hz)
{
    // The exact frequency of the 20 kHz band is 19953 Hz, that of the 10 Hz band 10 Hz.
    if (auto sound = checkWithin("frequency_hz", frequency_hz, 10, 20000); !sound) return passOn(sound);
    const double f2 = square(frequency_hz);
    const double above = square(f4_hz) * square(f2);
    const double below =
        (f2 + square(f1_hz)) * std::sqrt(f2 + square(f2_hz)) * std::sqrt(f2 + square(f3_hz)) * (f2 + square(f4_hz));
    return 20 * std::log10(above / below) + at1kHz_db;
}

Result<double> aWeightingOfBand_db(double nominal_hz)
{
    for (const Printed& row : table)
        if (row.nominal_hz == nominal_hz) return row.weighting_db;
    return failure("measure.not-a-band", "",
                   {{"found", written(nominal_hz)}, {"wanted", std::string("10, 12.5, 16 ... 20000")}});
}

Result<double> weightedTotal_dba(std::span<const Band> bands)
{
    std::vector<double> levels_db;
    for (const Band& band : bands) {
        auto weighting = aWeightingOfBand_db(band.nominal_hz);
        if (!weighting) return passOn(weighting);
        if (auto sound = checkWithin("levels_db", band.level_db, -50, 200); !sound) return passOn(sound);
        levels_db.push_back(std::max(band.level_db + *weighting, -50.0)); // what is quieter adds nothing that shows
    }
    return sumOfLevels_db(levels_db);
}

Result<SquareWave> squareWave(double fundamental_hz, int lines)
{
    if (auto sound = checkWithin("lines", lines, 1, 100); !sound) return passOn(sound);
    const double highest_hz = fundamental_hz * (2 * lines - 1);
    if (!(fundamental_hz >= 10 && highest_hz <= 20000))
        return outOfRange("fundamental_hz", fundamental_hz, fmt::format("10 to {:g}", 20000.0 / (2 * lines - 1)));
    SquareWave wave;
    double energy = 0;
    double weighted = 0;
    for (int order = 1; order < 2 * lines; order += 2) {
        auto weighting = aWeighting_db(fundamental_hz * order);
        if (!weighting) return passOn(weighting);
        const double level_db = -20 * std::log10(order);
        wave.harmonics.push_back({order, order == 1 ? 0 : level_db, *weighting});
        energy += std::pow(10, level_db / 10);
        weighted += std::pow(10, (level_db + *weighting) / 10);
    }
    wave.total_db = 10 * std::log10(energy);
    wave.weightedTotal_dba = 10 * std::log10(weighted);
    return wave;
}

} // namespace proofwalk::measure
