// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/order.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <tuple>

namespace proofwalk::walk {

std::vector<std::size_t> walkingOrder(const Scope& scope)
{
    std::map<std::string, std::size_t> floors;
    for (const plan::Floor& floor : scope.plan->floors) floors.try_emplace(floor.floor, floors.size());
    std::map<std::pair<std::string, std::string>, std::size_t> rooms;
    for (const ScopeDevice& device : scope.devices) {
        floors.try_emplace(device.device->floor, floors.size());
        rooms.try_emplace({device.device->floor, device.device->room}, rooms.size());
    }
    std::vector<std::size_t> order(scope.devices.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t index) {
        const plan::Device& device = *scope.devices[index].device;
        return std::tuple{floors[device.floor], rooms[{device.floor, device.room}]};
    });
    return order;
}

} // namespace proofwalk::walk
