// SPDX-License-Identifier: GPL-3.0-or-later
// One transmitter, one device; one input, one signal. A serial number is private: the remark names the rows, not it.
#include "core/review/checks.h"

#include <map>

namespace proofwalk::review {

void checkSerials(const Context& context, Remarks& remarks)
{
    std::map<std::string_view, const plan::Device*> owner;
    for (const plan::Device& device : context.plan.devices) {
        if (device.serial.empty()) continue;
        const auto [first, fresh] = owner.emplace(device.serial, &device);
        if (!fresh)
            remarks.add("review.serial-twice", placeOf(device, "devices.csv", device.tag),
                        {{"other", first->second->tag}});
    }
    std::map<std::pair<std::string_view, std::string_view>, const plan::Signal*> inputs;
    for (const plan::Signal& signal : context.plan.signals) {
        const auto device = context.devices.find(signal.tag);
        const std::string_view serial =
            signal.serial.empty() && device != context.devices.end() ? device->second->serial : signal.serial;
        if (serial.empty()) continue;
        const std::string where = placeOf(signal, "signals.csv", signal.tag);
        const auto other = owner.find(serial);
        if (other != owner.end() && other->second->tag != signal.tag)
            remarks.add("review.serial-twice", where, {{"other", other->second->tag}});
        else if (other == owner.end() && device != context.devices.end()) owner.emplace(serial, device->second);
        if (signal.input.empty()) continue;
        const auto [first, fresh] = inputs.emplace(std::pair{serial, std::string_view(signal.input)}, &signal);
        if (!fresh)
            remarks.add("review.input-twice", where, {{"input", signal.input}, {"other", first->second->signal}});
    }
}

} // namespace proofwalk::review
