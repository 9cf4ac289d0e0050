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

/// Reads kinds/, parts/, rules/, sequences/ and rounds/ of a folder. Errors: those of base::readFile; file.unreadable
/// {detail}; catalogue.empty (no kind in it).
Result<Files> readFolder(const std::filesystem::path& folder);

/// What a kind's file says of the kind itself.
struct Kind {
    std::string name;        ///< "contact-surface"
    std::string title;       ///< "Surface contact", for people
    std::string group;       ///< "openings", "interior", "fire", "people", "environment", "output"
    bool output = false;     ///< it is driven: it promises output
    bool lifeSafety = false; ///< an open deficiency on it makes "not complete: customer informed"
    std::vector<std::string> purposes; ///< the purposes of a zone that fit it
    std::vector<std::string> signals;  ///< the signals its sheet proves: "alarm", "tamper", ...
    int coreSeconds = 0;               ///< budget: operator time of its own core steps but for further signals
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
    std::string jurisdiction; ///< where it applies: "United Kingdom"
    std::vector<Limit> limits;
};

class Catalogue {
public:
    /// Reads strictly: an unknown key, a missing one, a wrong type or word is an error with file and line.
    /// Errors: catalogue.syntax {detail}; catalogue.too-deep; catalogue.format {found}; catalogue.file-name
    /// {found}; catalogue.part-name
    /// {found, nearest}; catalogue.key-unknown {found, nearest}; catalogue.key-missing {wanted}; catalogue.key-unsuited
    /// {found, kind}; catalogue.value {key, found, wanted}; catalogue.word {key, found, nearest, wanted};
    /// catalogue.word-twice {key, found}; catalogue.bare-number {found}; base.decimal-form; base.unit-unknown;
    /// catalogue.unit-mismatch; catalogue.limit-empty; catalogue.limit-crossed; catalogue.confirmed-unread {found};
    /// catalogue.source {found, wanted}; catalogue.proof {found}; catalogue.signal-unlisted {found, wanted};
    /// catalogue.forbid-own {found}; catalogue.step-twice {found}.
    static Result<Catalogue> read(Files files);

    const Files& files() const;
    const std::vector<Kind>& kinds() const; ///< by name
    const Kind* kind(std::string_view name) const; ///< nullptr: no sheet for it yet
    const std::vector<Sequence>& sequences() const;
    const std::vector<Round>& rounds() const;
    const RuleSet* rules(std::string_view name) const;
    std::vector<std::string> ruleNames() const;

    /// The sheet for a device: kind before, purpose, delay, feed, resistors, kind after. Only steps whose signal the
    /// device has are in it. Limits of the rule sets stand in the steps they apply to.
    /// Errors, with `where` = the file: catalogue.kind-unknown {found, nearest}; catalogue.rules-unknown {found,
    /// nearest}; catalogue.step-twice {found}; catalogue.unit-mismatch {found, wanted}.
    Result<Sheet> compose(const Traits& traits) const;

    /// A sequence with the limits of those rule sets in its steps.
    /// Errors: catalogue.sequence-unknown {found, nearest}; catalogue.rules-unknown; catalogue.unit-mismatch.
    Result<Sequence> composeSequence(std::string_view name, const std::vector<std::string>& rules) const;

private:
    struct Contents;
    std::shared_ptr<const Contents> m_contents;
};

} // namespace proofwalk::catalogue
