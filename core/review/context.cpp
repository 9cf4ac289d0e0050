// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/context.h"

#include "core/base/text.h"

#include <algorithm>

namespace proofwalk::review {
namespace {

template <class R>
ByName<R> byName(const std::vector<R>& rows, std::string R::* name)
{
    ByName<R> map;
    map.reserve(rows.size());
    for (const R& row : rows) map.try_emplace(row.*name, &row);
    return map;
}

} // namespace

Context::Context(const plan::Plan& p, const catalogue::Catalogue& c, const Knowledge& k)
    : plan(p), catalogue(c), knowledge(k), zones(byName(p.zones, &plan::Zone::zone)),
      devices(byName(p.devices, &plan::Device::tag)), areas(byName(p.areas, &plan::Area::area)),
      modes(byName(p.modes, &plan::Mode::mode)), floors(byName(p.floors, &plan::Floor::floor)),
      paths(byName(p.paths, &plan::Path::path)), supplies(byName(p.supplies, &plan::Supply::supply))
{
}

void Remarks::add(std::string code, std::string where, std::vector<Argument> arguments)
{
    m_remarks.push_back(
        {std::string(m_check->id), m_check->severity, std::move(where), std::move(code), std::move(arguments)});
}

std::string placeOf(const plan::Row& row, std::string_view file, std::string_view name)
{
    std::string place(file);
    if (row.line > 0) place += ":" + std::to_string(row.line);
    return name.empty() ? place : place + ", " + std::string(name);
}

std::string nearestOf(std::string_view typed, std::vector<std::string> names)
{
    std::ranges::sort(names); // so that of equally near names it is always the same one
    return base::nearestWord(typed, names);
}

} // namespace proofwalk::review
