// SPDX-License-Identifier: GPL-3.0-or-later
// The table of conductors by the names plans use: "0.22 mm2", "AWG 22", "7/0.2 mm". The figures are data with a
// source each, in conductors.csv beside this file.
#pragma once

#include "core/base/result.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace proofwalk::measure {

/// One conductor of the table.
struct Conductor {
    std::string name;                 ///< as it stands in a plan: "0.5 mm2 flexible"
    double section_mm2 = 0;           ///< nominal
    double resistance_ohm_per_km = 0; ///< of one conductor, at temperature_c
    double temperature_c = 20;
    bool isMaximum = false;           ///< the most its standard permits; else the nominal figure of ideal copper
    std::string source;
    std::string basis;                ///< published, computed, from memory
};

/// Reads a table of conductors (columns name, section_mm2, resistance_ohm_per_km, temperature_c, bound, source,
/// basis). `name` is the file's, for errors.
/// Errors, with `where` = "NAME:LINE": those of base::readCsv; measure.table-column {found} (missing);
/// measure.table-number {column, found}; measure.table-word {column, found, wanted}; measure.table-twice {found}.
Result<std::vector<Conductor>> readConductors(std::string_view bytes, const std::string& name);

/// The conductor of that name in the table; "mm²" reads as "mm2".
/// Error: measure.conductor-unknown {found, nearest}.
Result<Conductor> conductorByName(std::string_view name, std::span<const Conductor> table);

/// As above, in the table that came with the program (base::dataFolder(), read once). Errors besides: those of
/// base::readFile and readConductors.
Result<Conductor> conductorByName(std::string_view name);

/// A run of two-conductor cable of a known conductor.
struct ConductorRun {
    Conductor conductor;
    double length_m = 0;       ///< one way
    double temperature_c = 20; ///< of the conductor
};

/// Out and back, in ohms: 2 L r, brought to the temperature (see resistanceAtTemperature_ohm). For a conductor whose
/// figure is a maximum this is the most a sound pair may have.
/// Errors: measure.out-of-range {input, found, wanted}.
Result<double> pairResistance_ohm(const ConductorRun& run);

} // namespace proofwalk::measure
