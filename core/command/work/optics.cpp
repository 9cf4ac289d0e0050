// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk work optics: beams and motion detectors (core/measure/beam.h, motion.h).
#include "core/command/work/topic.h"

#include "core/measure/beam.h"
#include "core/measure/motion.h"

#include <fmt/format.h>

namespace proofwalk::command::work {
namespace {

constexpr Range lengths{0, 1e4, true};
constexpr Range speeds{0, 10};
constexpr Range ranges{0, 100, true};

Result<Worked> beam(const Given& given)
{
    const double length = given.number("length_m");
    auto diameter = measure::spotDiameter_m(length, given.number("divergence_deg"), given.number("lens_m"));
    if (!diameter) return passOn(diameter);
    auto offset = measure::aimOffset_m(length, given.number("misalignment_deg"));
    if (!offset) return passOn(offset);
    Worked worked;
    worked.lines = {{"D = D0 + 2 L tan(q/2)",
                     fmt::format("{} + 2 × {} tan({}°/2)", shown(given.number("lens_m")), shown(length),
                                 shown(given.number("divergence_deg"))),
                     "diameter_m", *diameter},
                    {"offset = L tan d",
                     fmt::format("{} tan {}°", shown(length), shown(given.number("misalignment_deg"))), "offset_m",
                     *offset}};
    worked.remarks = {{*offset > *diameter / 2 ? "work.optics.misses" : "work.optics.hits", {}}};
    worked.sources = {"work.optics.geometry"};
    return worked;
}

Result<Worked> mirror(const Given& given)
{
    auto offset = measure::mirrorOffset_m(given.number("length_m"), given.number("tilt_deg"));
    if (!offset) return passOn(offset);
    Worked worked;
    worked.lines = {{"path = 2 L", "2 × " + shown(given.number("length_m")), "path_m", 2 * given.number("length_m")},
                    {"offset at the receiver = L tan 2 d",
                     fmt::format("{} tan(2 × {}°)", shown(given.number("length_m")), shown(given.number("tilt_deg"))),
                     "offset_m", *offset}};
    worked.limits = {"work.optics.flat-mirror"};
    worked.sources = {"work.optics.geometry"};
    return worked;
}

Result<Worked> spread(const Given& given)
{
    auto loss = measure::spreadLoss_db(given.number("from_m"), given.number("to_m"));
    if (!loss) return passOn(loss);
    Worked worked;
    worked.lines = {{"20 log10(L1/L2)",
                     fmt::format("20 log10({}/{})", shown(given.number("from_m")), shown(given.number("to_m"))),
                     "level_db", *loss}};
    worked.limits = {"work.optics.spot-over-lens", "work.optics.light-not-volts"};
    worked.sources = {"work.optics.inverse-square"};
    return worked;
}

Result<Worked> filter(const Given& given)
{
    auto loss = measure::filterLoss_db(given.number("obscuration_pct"));
    if (!loss) return passOn(loss);
    Worked worked;
    worked.lines = {{"10 log10(1 − O)", fmt::format("10 log10(1 − {}/100)", shown(given.number("obscuration_pct"))),
                     "level_db", *loss}};
    worked.limits = {"work.optics.light-not-volts"};
    worked.sources = {"work.optics.density"};
    return worked;
}

Result<Worked> smoke(const Given& given)
{
    const double total = given.number("obscuration_pct");
    const double length = given.number("length_m");
    auto found = measure::obscurationPerLength(total, length);
    if (!found) return passOn(found);
    Worked worked;
    worked.lines = {
        {"per metre: 1 − (1 − O)^(1/L)", fmt::format("1 − (1 − {}/100)^(1/{})", shown(total), shown(length)),
         "obscuration_pct_per_m", found->perMetre_pct},
        {"per foot: 1 − (1 − O)^(0.3048/L)", "", "obscuration_pct_per_ft", found->perFoot_pct},
        {"optical density: log10(1/(1 − O))/L", fmt::format("log10(1/(1 − {}/100))/{}", shown(total), shown(length)),
         "density_per_m", found->density_per_m},
        {"ten times that", "", "loss_db_per_m", found->loss_db_per_m}};
    worked.limits = {"work.optics.even-smoke"};
    worked.sources = {"work.optics.obscuration"};
    return worked;
}

Result<Worked> walk(const Given& given)
{
    const measure::Walk path{given.number("speed_m_per_s"), given.number("range_m"), given.number("angle_deg")};
    auto found = measure::crossing(path);
    if (!found) return passOn(found);
    Worked worked;
    worked.lines = {{"across = v sin b", fmt::format("{} sin {}°", shown(path.speed_m_per_s), shown(path.angle_deg)),
                     "across_m_per_s", found->across_m_per_s},
                    {"along = v cos b", fmt::format("{} cos {}°", shown(path.speed_m_per_s), shown(path.angle_deg)),
                     "along_m_per_s", found->along_m_per_s},
                    {"angular speed = across/r",
                     fmt::format("{}/{}", shown(found->across_m_per_s), shown(path.range_m)), "angular_deg_per_s",
                     found->angular_deg_per_s}};
    worked.limits = {"work.optics.walk-across"};
    worked.sources = {"work.optics.geometry"};
    if (!given.has("pitch_deg")) return worked;
    auto pitch = measure::zonePitch_m(path.range_m, given.number("pitch_deg"));
    if (!pitch) return passOn(pitch);
    auto frequency = measure::crossingFrequency_hz(path, given.number("pitch_deg"));
    if (!frequency) return passOn(frequency);
    worked.lines.push_back({"between zones: r p",
                            fmt::format("{} × {}°", shown(path.range_m), shown(given.number("pitch_deg"))), "pitch_m",
                            *pitch});
    worked.lines.push_back({"signal: across/(r p)", fmt::format("{}/{}", shown(found->across_m_per_s), shown(*pitch)),
                            "signal_hz", *frequency});
    return worked;
}

Result<Worked> mounting(const Given& given)
{
    const double height = given.number("height_m");
    const double tilt = given.number("tilt_deg");
    auto onFloor = measure::zoneReach_m(height, tilt);
    if (!onFloor) return passOn(onFloor);
    auto onTarget = measure::zoneReach_m(height, tilt, given.number("target_m"));
    if (!onTarget) return passOn(onTarget);
    Worked worked;
    worked.lines = {
        {"meets the floor at h/tan t", fmt::format("{}/tan {}°", shown(height), shown(tilt)), "floor_m", *onFloor},
        {"meets the top of the target at (h − z)/tan t",
         fmt::format("({} − {})/tan {}°", shown(height), shown(given.number("target_m")), shown(tilt)), "target_m",
         *onTarget}};
    worked.limits = {"work.optics.one-zone"};
    worked.sources = {"work.optics.geometry"};
    return worked;
}

} // namespace

Topic opticsTopic()
{
    const Input obscuration = needed("obscuration_pct", {0, 99.9999});
    return {
        "optics",
        {{"beam",
          {needed("length_m", lengths), needed("divergence_deg", {0, 90}), usual("misalignment_deg", "0", {0, 45}),
           usual("lens_m", "0", {0, 10})},
          beam,
          "length_m=60 divergence_deg=1.5 misalignment_deg=0.5"},
         {"mirror", {needed("length_m", lengths), needed("tilt_deg", {0, 22.5})}, mirror, "length_m=30 tilt_deg=0.25"},
         {"spread", {needed("from_m", lengths), needed("to_m", lengths)}, spread, "from_m=40 to_m=60"},
         {"filter", {obscuration}, filter, "obscuration_pct=90"},
         {"smoke", {obscuration, needed("length_m", lengths)}, smoke, "obscuration_pct=50 length_m=20"},
         {"walk",
          {needed("speed_m_per_s", speeds), needed("range_m", ranges), usual("angle_deg", "90", {0, 90}),
           optional("pitch_deg", {0, 90, true})},
          walk,
          "speed_m_per_s=1.0 range_m=8 pitch_deg=5"},
         {"mounting",
          {needed("height_m", {0, 20, true}), needed("tilt_deg", {0, 89.9, true}), usual("target_m", "0.4", {0, 20})},
          mounting,
          "height_m=2.2 tilt_deg=8 target_m=0.4"}}};
}

} // namespace proofwalk::command::work
