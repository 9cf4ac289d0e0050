// SPDX-License-Identifier: GPL-3.0-or-later
// The catalogue: how each kind of device is tested, in TOML files a tradesperson can correct. FORMAT.md beside this
// file says what may stand in them.
#pragma once

#include "core/catalogue/sheet.h"

#include <filesystem>
#include <map>
#include <memory>
#include <string>
#include <vector>

namespace proofwalk::catalogue {

/// The files of a catalogue by their path in its folder ("kinds/flood.toml"). Whole, so that they can be embedded in a
/// job by their content hash and read back from there.
using Files = std::map<std::string, std::string>;

/// Reads kinds/, parts/, rules/, sequences/ and rounds/ of a folder. Errors: those of base::readFile; catalogue.empty.
Result<Files> readFolder(const std::filesystem::path& folder);

/// What a kind's file says of the kind itself.
struct Kind {
    std::string name;        ///< "contact-surface"
    std::string title;       ///< "Surface contact", for people
    std::string group;       ///< "openings", "interior", "fire", "people", "environment", "output"
    bool output = false;     ///< it is driven: it promises output
    bool lifeSafety = false; ///< an open deficiency on it makes "not complete: customer informed"
    std::vector<std::string> purposes; ///< the purposes of a zone that fit it
    std::string summary;     ///< one sentence: what it is and what proves it
};

/// A test of the system as a whole, its steps in order.
struct Sequence {
    std::string name;  ///< "entry-exit"
    std::string title; ///< "Entry and exit"
    std::string summary;
    std::vector<Step> steps; ///< of areas and timers; for a timer the quantity names it ("entry-delay")
};

/// One step over many subjects.
struct Round {
    std::string name;  ///< "loop-readings"
    std::string title;
    std::string step;  ///< the step's name
    Subject subject = Subject::zone;
    std::string summary;
};

/// A rule set as a whole: its figures are given out through composed steps; this is for listing the sources.
struct RuleSet {
    std::string name;  ///< "intruder-eu"
    std::string title;
    std::vector<Limit> limits;
};

class Catalogue {
public:
    /// Reads strictly: an unknown key, a missing one, a wrong type or word is an error with file and line.
    /// Errors: catalogue.syntax {detail}; catalogue.key-unknown {found, nearest}; catalogue.key-missing {wanted};
    /// catalogue.value {found, wanted}; catalogue.step-twice {found}; catalogue.format {found}.
    static Result<Catalogue> read(Files files);

    const Files& files() const;
    const std::vector<Kind>& kinds() const;      ///< by name
    const Kind* kind(std::string_view name) const; ///< nullptr: no sheet for it yet
    const std::vector<Sequence>& sequences() const;
    const std::vector<Round>& rounds() const;
    const RuleSet* rules(std::string_view name) const;
    std::vector<std::string> ruleNames() const;

    /// The sheet for a device: kind before, purpose, delay, feed, resistors, kind after. Only steps whose signal the
    /// device has are in it. Limits of the rule sets stand in the steps they apply to.
    /// Errors, with `where` = the file: catalogue.kind-unknown {found, nearest}; catalogue.rules-unknown {found, nearest};
    /// catalogue.step-twice {found}; catalogue.unit-mismatch {found, wanted}.
    Result<Sheet> compose(const Traits& traits) const;

private:
    struct Contents;
    std::shared_ptr<const Contents> m_contents;
};

} // namespace proofwalk::catalogue
