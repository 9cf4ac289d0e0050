// SPDX-License-Identifier: GPL-3.0-or-later
// How pages name whose a step is, as people would: a device by its tag ("GR-01"), others by a word before
// ("zone 12", "area mill", "timer entry-delay mill").
#pragma once

#include "core/base/json.h"
#include "qml/models/snapshot.h"

#include <QString>

#include <optional>

namespace proofwalk::models {

/// The members by which a command names the subject; none for an empty one.
base::Json::Object named(const QString& subject);

/// The name of the plan's row with that id; empty if it is none of the four.
QString subjectWord(const plan::Plan& plan, const std::string& id);

/// The step of that name; `signal` may be empty where it is clear. Error: those of walk::stepOf.
Result<walk::StepKey> stepNamed(const Snapshot& job, const QString& subject, const QString& step,
                                const QString& signal);

} // namespace proofwalk::models
