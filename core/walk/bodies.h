// SPDX-License-Identifier: GPL-3.0-or-later
// The bodies of the walk's events as types, and their JSON (EVENTS.md tables them).
#pragma once

#include "core/base/instant.h"
#include "core/base/json.h"
#include "core/base/unit.h"
#include "core/catalogue/sheet.h"
#include "core/measure/instrument.h"
#include "core/walk/scope.h"
#include "core/walk/words.h"

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace proofwalk::walk {

/// A private value as a body holds it: its commitment; empty if the member is absent.
struct PrivateRef {
    std::string commitment;
    bool there() const { return !commitment.empty(); }
    friend bool operator==(const PrivateRef&, const PrivateRef&) = default;
};

struct StartBody {
    using Listed = std::vector<std::pair<std::string, std::string>>; ///< path, content hash
    std::string key, program, plan;
    std::int64_t judgement = 0;
    Listed catalogue, tables, words;
};
struct OpenBody {
    std::string key, program;
};
struct AnswerBody {
    StepKey step;
    Outcome outcome = Outcome::asPlanned;
    How how = How::singly;
    catalogue::SystemState state = catalogue::SystemState::unset;
    std::optional<base::Quantity> reading;
    std::optional<base::Decimal> uncertainty; ///< expanded, k = 2, in the reading's unit
    std::string instrument;                   ///< hash of a kit event
    std::optional<std::int64_t> hits, tries;
    PrivateRef reason, seen;
};
struct NoAccessBody {
    std::string subject;
    PrivateRef reason;
};
struct FindingBody {
    StepKey step;
    Grade grade = Grade::deficiency;
    PrivateRef words;
    std::string due;
};
struct PhotographBody {
    StepKey step;
    PrivateRef photograph, words;
};
struct RepairBody {
    std::vector<StepKey> findings;
    std::vector<std::string> touched;
    std::vector<StepKey> retest;
    PrivateRef words;
};
struct AcceptBody {
    std::vector<StepKey> findings;
    PrivateRef name, words;
};
struct WithdrawBody {
    std::string event;
    PrivateRef reason;
};
/// What one instrument can measure and how well.
struct Measure {
    std::string quantity; ///< as base::Unit::quantity
    measure::Accuracy accuracy;
};
struct KitBody {
    std::string name;
    std::vector<Measure> measures;
    std::string calibrated;
    PrivateRef serial;
};
struct ClockBody {
    std::string of;
    std::int64_t offset_ms = 0, uncertainty_ms = 0;
};
struct StateBody {
    std::string area;
    catalogue::SystemState state = catalogue::SystemState::unset;
    std::string mode;
};
struct OnTestBody {
    std::string account;
    PrivateRef told, reference;
    std::string until;
};
struct OffTestBody {
    std::string account;
    PrivateRef told, reference;
};
struct AsFoundBody {
    PrivateRef words, display;
};
struct TemporaryBody {
    std::string name, subject;
    PrivateRef words;
};
struct PutBackBody {
    std::string event;
};
struct ShownBody {
    std::string topic;
    PrivateRef words;
};
struct NoteBody {
    std::string subject;
    PrivateRef words;
};
struct AcceptanceBody {
    PrivateRef name, words, ink;
};
struct VouchBody {
    std::string key, certificate, root, signature;
};
struct HandedOverBody {
    std::string report, form;
};

using Body = std::variant<StartBody, OpenBody, AnswerBody, NoAccessBody, FindingBody, PhotographBody, RepairBody,
                          AcceptBody, WithdrawBody, KitBody, ClockBody, StateBody, OnTestBody, OffTestBody, AsFoundBody,
                          TemporaryBody, PutBackBody, ShownBody, NoteBody, AcceptanceBody, VouchBody, HandedOverBody>;

/// The kind's word: "answer", "no-access", …
std::string_view kindOf(const Body& body);

/// The JSON of a body; `observed` becomes the member `at`.
base::Json toJson(const Body& body, const std::optional<base::WallClock>& observed);

/// Reads a body of a kind and version this program knows.
/// Errors: walk.kind-unknown {found}; walk.body {kind, member}: missing, unknown or malformed.
Result<Body> bodyFrom(std::string_view kind, std::int64_t version, const base::Json& json);

/// The member `at`, if there is one that reads.
std::optional<base::WallClock> observedAt(const base::Json& body);

} // namespace proofwalk::walk
