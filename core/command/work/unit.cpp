// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/command/work/unit.h"

#include <array>

namespace proofwalk::command::work {
namespace {

// Exact by definition: the foot 0.3048 m and the inch 25.4 mm (1959 agreement), the SI prefixes, minute and hour, 0 °F
// at -160/9 °C. A level in dB(A) does not turn into one without weighting, nor dBm into a ratio.
constexpr std::array suffixes{
    Suffix{"m", "m", "length"},
    Suffix{"mm", "mm", "length", 1e-3},
    Suffix{"cm", "cm", "length", 1e-2},
    Suffix{"km", "km", "length", 1e3},
    Suffix{"ft", "ft", "length", 0.3048},
    Suffix{"in", "in", "length", 0.0254},
    Suffix{"mm2", "mm²", "area"},
    Suffix{"m2", "m²", "floor-area"},
    Suffix{"ohm", "Ω", "resistance"},
    Suffix{"kohm", "kΩ", "resistance", 1e3},
    Suffix{"megohm", "MΩ", "resistance", 1e6},
    Suffix{"milliohm", "mΩ", "resistance", 1e-3},
    Suffix{"ohm_per_km", "Ω/km", "resistance-by-length"},
    Suffix{"ohm_per_kft", "Ω/kft", "resistance-by-length", 1 / 0.3048},
    Suffix{"ohm_per_m", "Ω/m", "resistance-by-length", 1e3},
    Suffix{"ppm_per_k", "ppm/K", "temperature-coefficient"},
    Suffix{"per_k", "/K", "temperature-coefficient", 1e6},
    Suffix{"v", "V", "voltage"},
    Suffix{"mv", "mV", "voltage", 1e-3},
    Suffix{"v_per_k", "V/K", "voltage-by-temperature"},
    Suffix{"mv_per_k", "mV/K", "voltage-by-temperature", 1e-3},
    Suffix{"a", "A", "current"},
    Suffix{"ma", "mA", "current", 1e-3},
    Suffix{"w", "W", "power"},
    Suffix{"mw", "mW", "power", 1e-3},
    Suffix{"ah", "Ah", "charge"},
    Suffix{"mah", "mAh", "charge", 1e-3},
    Suffix{"h", "h", "time", 3600},
    Suffix{"s", "s", "time"},
    Suffix{"ms", "ms", "time", 1e-3},
    Suffix{"min", "min", "time", 60},
    Suffix{"hz", "Hz", "frequency"},
    Suffix{"khz", "kHz", "frequency", 1e3},
    Suffix{"mhz", "MHz", "frequency", 1e6},
    Suffix{"ghz", "GHz", "frequency", 1e9},
    Suffix{"m_per_s", "m/s", "speed"},
    Suffix{"deg_per_s", "°/s", "angular-speed"},
    Suffix{"deg", "°", "angle"},
    Suffix{"c", "°C", "temperature"},
    Suffix{"f", "°F", "temperature", 5 / 9.0, -160 / 9.0},
    Suffix{"k", "K", "temperature-difference"},
    Suffix{"pct", "%", "ratio"},
    Suffix{"ppm", "ppm", "small-ratio"},
    Suffix{"pct_per_m", "%/m", "obscuration"},
    Suffix{"pct_per_ft", "%/ft", "obscuration-by-foot"},
    Suffix{"db_per_m", "dB/m", "attenuation"},
    Suffix{"per_m", "/m", "density"},
    Suffix{"db", "dB", "level-ratio"},
    Suffix{"dba", "dB(A)", "sound-level"},
    Suffix{"dbi", "dBi", "antenna-gain"},
    Suffix{"dbm", "dBm", "radio-level"},
    Suffix{"dbuv", "dBµV", "voltage-level"},
    Suffix{"uv", "µV", "small-voltage"},
    Suffix{"dbuv_per_m", "dBµV/m", "field-level"},
    Suffix{"bar", "bar", "pressure"},
    Suffix{"kpa", "kPa", "pressure", 0.01},
};

} // namespace

const Suffix* suffixOf(std::string_view name)
{
    const Suffix* best = nullptr;
    for (const Suffix& each : suffixes) {
        if (name.size() < each.ending.size() + 2 || !name.ends_with(each.ending)) continue;
        if (name[name.size() - each.ending.size() - 1] != '_') continue;
        if (best == nullptr || each.ending.size() > best->ending.size()) best = &each;
    }
    return best;
}

std::string_view stemOf(std::string_view name)
{
    const Suffix* suffix = suffixOf(name);
    return suffix == nullptr ? name : name.substr(0, name.size() - suffix->ending.size() - 1);
}

std::optional<double> converted(double value, const Suffix& from, const Suffix& to)
{
    if (from.quantity != to.quantity) return {};
    if (from.ending == to.ending) return value;
    return (value * from.scale + from.offset - to.offset) / to.scale;
}

std::string_view writtenUnit(std::string_view name)
{
    const Suffix* suffix = suffixOf(name);
    return suffix == nullptr ? std::string_view() : suffix->written;
}

} // namespace proofwalk::command::work
