// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/mistake.h"

namespace proofwalk::measure {
namespace {

constexpr std::size_t manyContacts = 8; // beyond, pairs of acted contacts are too many to be of help

Span scaled(const Span& ohm, double factor)
{
    return {ohm.least_ohm * factor, ohm.nominal_ohm * factor, ohm.most_ohm * factor};
}

bool standsBeside(const Network& network, std::size_t part)
{
    const auto around = network.groupOf(part);
    return around && network.parts()[*around].kind == PartKind::parallel;
}

/// Whether only series lead from the part to the terminals: all current of the loop flows through it.
bool carriesAll(const Network& network, std::size_t part)
{
    for (auto around = network.groupOf(part); around; around = network.groupOf(*around))
        if (network.parts()[*around].kind == PartKind::parallel) return false;
    return true;
}

/// Whether the part shunts a contact that rests closed, as an alarm resistor does: it ends no line.
bool shuntsContact(const Network& network, std::size_t part)
{
    const auto around = network.groupOf(part);
    if (!around || !standsBeside(network, part)) return false;
    for (std::size_t i = 0; i < *around; ++i)
        if (network.groupOf(i) == around && network.parts()[i].kind == PartKind::contact
            && network.parts()[i].restClosed)
            return true;
    return false;
}

/// Takes a resistor out of its place without a trace: joined through in a series, left off beside others.
void remove(const Network& network, std::size_t part, Circumstances& at)
{
    (standsBeside(network, part) ? at.opened : at.bridged) |= partBit(part);
}

/// The contacts that stand open whatever acts on them, or closed.
void hold(const Part& contact, Parts bit, bool open, Circumstances& at)
{
    if (contact.restClosed == open) at.acted |= bit;
    else at.acted &= ~bit;
}

void applyToContact(const Network& network, const Suspicion& suspicion, Circumstances& at)
{
    const Part& part = network.parts()[suspicion.part];
    const Parts bit = partBit(suspicion.part);
    switch (suspicion.what) {
    case Mistake::contactStaysOpen: return hold(part, bit, true, at);
    case Mistake::contactStaysClosed: return hold(part, bit, false, at);
    case Mistake::contactReversed: at.acted ^= bit; return;
    case Mistake::contactsBothActed: at.acted |= bit | partBit(suspicion.other); return;
    default: at.replaced[0] = {suspicion.part, suspicion.size}; return;
    }
}

void applyToResistor(const Network& network, const Suspicion& suspicion, Circumstances& at)
{
    const Part& part = network.parts()[suspicion.part];
    const Parts bit = partBit(suspicion.part);
    switch (suspicion.what) {
    case Mistake::resistorBridged: at.bridged |= bit; return;
    case Mistake::resistorMissing: at.opened |= bit; return;
    case Mistake::resistorDoubled: at.replaced[0] = {suspicion.part, scaled(part.ohm, 2)}; return;
    case Mistake::resistorHalved: at.replaced[0] = {suspicion.part, scaled(part.ohm, 0.5)}; return;
    case Mistake::resistorsSwapped:
        at.replaced[0] = {suspicion.part, network.parts()[suspicion.other].ohm};
        at.replaced[1] = {suspicion.other, part.ohm};
        return;
    case Mistake::resistorAtPanel:
        remove(network, suspicion.part, at);
        (standsBeside(network, suspicion.part) ? at.across : at.inFront) = part.ohm;
        return;
    case Mistake::resistorAcrossPanel:
        remove(network, suspicion.part, at);
        at.across = part.ohm;
        return;
    case Mistake::secondAtPanel: at.across = part.ohm; return;
    default: at.replaced[0] = {suspicion.part, suspicion.size}; return;
    }
}

void addResistor(const Network& network, std::size_t part, std::vector<Suspicion>& all)
{
    for (const Mistake what :
         {Mistake::resistorMissing, Mistake::resistorDoubled, Mistake::resistorHalved, Mistake::resistorWrong})
        all.push_back({what, part});
    const bool beside = standsBeside(network, part);
    if (!beside) all.push_back({Mistake::resistorBridged, part});
    const bool carries = carriesAll(network, part);
    if (carries || (beside && !shuntsContact(network, part))) {
        all.push_back({Mistake::resistorAtPanel, part});
        all.push_back({Mistake::secondAtPanel, part});
    }
    if (carries) all.push_back({Mistake::resistorAcrossPanel, part});
}

} // namespace

Circumstances withMistake(const Network& network, const Suspicion& suspicion, const Handling& handling)
{
    Circumstances at;
    at.acted = handling.acted;
    if (handling.end == FarEnd::shorted) at.bridged |= network.farEnd();
    if (handling.end == FarEnd::opened) at.opened |= network.farEnd();
    switch (suspicion.what) {
    case Mistake::none:
    case Mistake::earthFault:
    case Mistake::shorted: break;
    case Mistake::cut: at.opened |= partBit(network.parts().size() - 1); break;
    case Mistake::joint: at.inFront = suspicion.size; break;
    case Mistake::leakage: at.across = suspicion.size; break;
    case Mistake::contactStaysOpen:
    case Mistake::contactStaysClosed:
    case Mistake::contactReversed:
    case Mistake::contactsBothActed:
    case Mistake::contactResistance: applyToContact(network, suspicion, at); break;
    default: applyToResistor(network, suspicion, at); break;
    }
    return at;
}

bool hasSize(Mistake what)
{
    return what == Mistake::contactResistance || what == Mistake::resistorWrong || what == Mistake::joint
        || what == Mistake::leakage;
}

std::vector<Suspicion> mistakesOf(const Network& network)
{
    const std::vector<Part>& parts = network.parts();
    std::vector<Suspicion> all{{Mistake::none}, {Mistake::joint},   {Mistake::leakage},
                               {Mistake::cut},  {Mistake::shorted}, {Mistake::earthFault}};
    std::vector<std::size_t> contacts, resistors;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (parts[i].kind == PartKind::contact) contacts.push_back(i);
        if (parts[i].kind == PartKind::resistor) resistors.push_back(i);
    }
    for (const std::size_t each : contacts)
        for (const Mistake what : {Mistake::contactStaysOpen, Mistake::contactStaysClosed, Mistake::contactReversed,
                                   Mistake::contactResistance})
            all.push_back({what, each});
    if (contacts.size() <= manyContacts)
        for (std::size_t i = 0; i < contacts.size(); ++i)
            for (std::size_t k = i + 1; k < contacts.size(); ++k)
                all.push_back({Mistake::contactsBothActed, contacts[i], contacts[k]});
    for (const std::size_t each : resistors) addResistor(network, each, all);
    for (std::size_t i = 0; i < resistors.size(); ++i)
        for (std::size_t k = i + 1; k < resistors.size(); ++k)
            if (parts[resistors[i]].ohm.nominal_ohm != parts[resistors[k]].ohm.nominal_ohm)
                all.push_back({Mistake::resistorsSwapped, resistors[i], resistors[k]});
    return all;
}

double weightOf(Mistake what)
{
    switch (what) {
    case Mistake::none: return 50;
    case Mistake::resistorAtPanel: return 4;
    case Mistake::contactStaysOpen:
    case Mistake::contactReversed:
    case Mistake::resistorBridged:
    case Mistake::resistorMissing:
    case Mistake::resistorsSwapped:
    case Mistake::resistorWrong:
    case Mistake::joint:
    case Mistake::leakage:
    case Mistake::cut:
    case Mistake::shorted: return 3;
    case Mistake::contactStaysClosed:
    case Mistake::contactResistance:
    case Mistake::resistorHalved:
    case Mistake::secondAtPanel:
    case Mistake::earthFault: return 2;
    case Mistake::contactsBothActed:
    case Mistake::resistorDoubled:
    case Mistake::resistorAcrossPanel: return 1;
    }
    return 0;
}

} // namespace proofwalk::measure
