// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/indoor.h"

#include "core/measure/distribution.h"
#include "core/measure/inputs.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace proofwalk::measure {
namespace {

/// The rows of ITU-R P.1238, editions 1 to 9. 1.8 to 2 GHz: met in the source of an open network simulator; the others
/// from memory. The 1.2 GHz row gives no floor loss and is left out.
struct Row {
    double least_mhz, most_mhz;
    Building building;
    double decadeLoss_db;
    int mostFloors;
    double firstFloor_db; ///< Lf(1)
    double nextFloor_db;  ///< each further one; at 900 MHz see below
};
constexpr std::array rows{
    Row{825, 975, Building::office, 33, 3, 9, 0},        Row{825, 975, Building::commercial, 20, 0, 0, 0},
    Row{1800, 2200, Building::residential, 28, 9, 4, 4}, Row{1800, 2200, Building::office, 30, 9, 15, 4},
    Row{1800, 2200, Building::commercial, 22, 9, 6, 3},  Row{2400, 2500, Building::residential, 28, 1, 10, 0},
    Row{2400, 2500, Building::office, 30, 1, 14, 0},     Row{5150, 5850, Building::residential, 30, 1, 13, 0},
    Row{5150, 5850, Building::office, 31, 1, 16, 0}};

constexpr std::array officeFloors900_db{0.0, 9.0, 19.0, 24.0};

double floorLoss_db(const Row& row, int floors)
{
    if (floors == 0) return 0;
    if (row.least_mhz < 1000) return officeFloors900_db.at(static_cast<std::size_t>(floors));
    return row.firstFloor_db + row.nextFloor_db * (floors - 1);
}

// ITU-R P.1238, editions 10 and 11.
constexpr std::array places{Surroundings{"office-in-sight", 1.46, 34.62, 2.03, 3.76, 0.3, 83.5, 2, 27},
                            Surroundings{"office-not-in-sight", 2.46, 29.53, 2.38, 5.04, 0.3, 82, 4, 30},
                            Surroundings{"corridor-in-sight", 1.63, 28.12, 2.25, 4.07, 0.3, 83.5, 2, 160},
                            Surroundings{"corridor-not-in-sight", 2.77, 29.27, 2.48, 7.63, 0.625, 83.5, 4, 94},
                            Surroundings{"industrial-in-sight", 2.31, 24.52, 2.06, 2.69, 0.625, 70.28, 2, 101},
                            Surroundings{"industrial-not-in-sight", 3.79, 21.01, 1.34, 9.05, 0.625, 70.28, 5, 108}};

} // namespace

Result<IndoorCoefficients> indoorCoefficients(Building building, double frequency_mhz, int floors)
{
    if (auto sound = checkWithin("frequency_mhz", frequency_mhz, 1, 1e5); !sound) return passOn(sound);
    const auto row = std::ranges::find_if(rows, [&](const Row& each) {
        return each.building == building && frequency_mhz >= each.least_mhz && frequency_mhz <= each.most_mhz;
    });
    if (row == rows.end())
        return failure("measure.no-coefficients", "",
                       {{"input", std::string("frequency_mhz")},
                        {"found", written(frequency_mhz)},
                        {"wanted", std::string("825-975 (office, commercial), 1800-2200, 2400-2500 or 5150-5850 (not "
                                               "commercial)")}});
    if (auto sound = checkWithin("floors", floors, 0, row->mostFloors); !sound) return passOn(sound);
    return IndoorCoefficients{row->decadeLoss_db, floorLoss_db(*row, floors)};
}

Result<double> indoorLoss_db(Building building, double frequency_mhz, double distance_m, int floors)
{
    auto found = indoorCoefficients(building, frequency_mhz, floors);
    if (!found) return passOn(found);
    if (!(distance_m > 1 && distance_m <= 1000)) return outOfRange("distance_m", distance_m, "above 1 to 1000");
    return 20 * std::log10(frequency_mhz) + found->decadeLoss_db * std::log10(distance_m) + found->floorLoss_db - 28;
}

const Surroundings* surroundings(std::string_view name)
{
    const auto found = std::ranges::find(places, name, &Surroundings::name);
    return found == places.end() ? nullptr : &*found;
}

Result<IndoorPrediction> indoorPrediction(const Surroundings& row, double frequency_ghz, double distance_m)
{
    if (auto sound = checkWithin("frequency_ghz", frequency_ghz, row.least_ghz, row.most_ghz); !sound)
        return passOn(sound);
    if (auto sound = checkWithin("distance_m", distance_m, row.least_m, row.most_m); !sound) return passOn(sound);
    return IndoorPrediction{10 * row.a * std::log10(distance_m) + row.b + 10 * row.g * std::log10(frequency_ghz),
                            row.deviation_db};
}

Result<double> chanceOfSuchLoss(const IndoorPrediction& prediction, double loss_db)
{
    if (auto sound = checkWithin("loss_db", loss_db, 0, 300); !sound) return passOn(sound);
    if (auto sound = checkWithin("median_db", prediction.median_db, -300, 1000); !sound) return passOn(sound);
    if (auto sound = checkAbove("deviation_db", prediction.deviation_db, 0); !sound) return passOn(sound);
    return normalBelow((prediction.median_db - loss_db) / prediction.deviation_db);
}

} // namespace proofwalk::measure
