// SPDX-License-Identifier: GPL-3.0-or-later
// What models share: core's words and verdicts as the window has them.
#pragma once

#include "core/base/result.h"
#include "core/walk/deviceview.h"
#include "qml/models/snapshot.h"
#include "qml/parts/kinds.h"

#include <QString>

#include <string>

namespace proofwalk::models {

QString text(const std::string& utf8);

/// The error as a sentence for a person.
QString sentence(const Error& error);

parts::verdict::Value markOf(walk::Verdict verdict);
QString verdictWord(walk::Verdict verdict);
parts::seen::Value seenOf(walk::How how);
parts::proof::Value proofOf(walk::ProofState state);

/// The floor's name as people say it; its short one if it has no other.
QString floorName(const plan::Plan& plan, const std::string& floor);
/// The room's name; "no room given" if it has none.
QString roomName(const std::string& room);
/// The kind's title, or the word of the plan if it has no sheet.
QString kindTitle(const walk::ScopeDevice& device);

} // namespace proofwalk::models
