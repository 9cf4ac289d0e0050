// SPDX-License-Identifier: GPL-3.0-or-later
// What every check is given: the plan with its rows found by name, and where to say what it sees.
#pragma once

#include "core/review/review.h"

#include <string>
#include <string_view>
#include <unordered_map>

namespace proofwalk::review {

/// Rows by their name; of two with one name the first.
template <class R>
using ByName = std::unordered_map<std::string_view, const R*>;

struct Context {
    Context(const plan::Plan& plan, const catalogue::Catalogue& catalogue, const Knowledge& knowledge);

    const plan::Plan& plan;
    const catalogue::Catalogue& catalogue;
    const Knowledge& knowledge;
    ByName<plan::Zone> zones;
    ByName<plan::Device> devices;
    ByName<plan::Area> areas;
    ByName<plan::Mode> modes;
    ByName<plan::Floor> floors;
    ByName<plan::Path> paths;
    ByName<plan::Supply> supplies;
};

/// Collects the remarks of the check that runs.
class Remarks {
public:
    void begin(const Check& check) { m_check = &check; }
    void add(std::string code, std::string where, std::vector<Argument> arguments = {});
    std::vector<Remark> take() { return std::move(m_remarks); }

private:
    const Check* m_check = nullptr;
    std::vector<Remark> m_remarks;
};

/// "devices.csv:7, K-01"; without a line only file and name.
std::string placeOf(const plan::Row& row, std::string_view file, std::string_view name);

/// The name in the map that looks most like `typed`; empty if there is none.
template <class R>
std::string nearest(std::string_view typed, const ByName<R>& names);
std::string nearestOf(std::string_view typed, std::vector<std::string> names);

template <class R>
std::string nearest(std::string_view typed, const ByName<R>& names)
{
    std::vector<std::string> all;
    for (const auto& [name, row] : names) all.emplace_back(name);
    return nearestOf(typed, std::move(all));
}

} // namespace proofwalk::review
