// SPDX-License-Identifier: GPL-3.0-or-later
// What the list of findings and the page of one have in common: which there are, and how each is told.
#pragma once

#include "core/base/json.h"
#include "core/walk/findings.h"
#include "qml/models/snapshot.h"

#include <QList>
#include <QString>

#include <optional>
#include <string>
#include <vector>

namespace proofwalk::models {

/// A step as one text, for QML and for drafts: "SUBJECT/SIGNAL/NAME".
QString keyText(const walk::StepKey& key);
/// The step behind it; nothing if the text is none or the job has no such step.
std::optional<walk::StepKey> keyFrom(const walk::Scope& scope, const QString& text);

/// A command on a step, which is named as commands name it.
base::Json::Object commandOn(const walk::Scope& scope, const walk::StepKey& key, const char* act);

/// A step that was found not as planned, or described, or whose reading is too close to tell. The last has no finding
/// until somebody describes it. Points into the snapshot.
struct Noticed {
    walk::StepKey step;
    std::optional<walk::Finding> finding;
};

/// All of them, in the order of the first failure or description; those too close after them, in plan order.
std::vector<Noticed> everythingNoticed(const Snapshot& job);
/// One; nothing if the step is as planned, or not tried.
std::optional<Noticed> noticedAt(const Snapshot& job, const walk::StepKey& key);

/// The verdict whose mark it bears: a finding that is put right is to retest, one that comes and goes has failed.
walk::Verdict verdictOf(const Snapshot& job, const Noticed& noticed);
/// "fail", "comes and goes", "recommended".
QString wordFor(const Snapshot& job, const Noticed& noticed);
/// What it is: its description; else what was seen instead, the reading with what is allowed, or what was expected.
QString lineOf(const Snapshot& job, const Noticed& noticed);
/// "due 2 Dec", "was due 2 Dec"; empty without a day, or once it is cleared.
QString dueWords(const Noticed& noticed);
/// What must happen at the step, with its limit.
QString expectedAt(const walk::Scope& scope, const walk::StepKey& key);
/// "GR-01", "zone 4", "entry-delay, shop".
QString subjectName(const walk::Scope& scope, const walk::StepKey& key);
/// What the subject is: the device's kind, the zone's label, the area's name.
QString subjectTitle(const walk::Scope& scope, const walk::StepKey& key);
/// The tag whose card shows the step; empty for a step of a sequence.
QString cardOf(const walk::Scope& scope, const walk::StepKey& key);

/// Where on its floor a finding lies.
struct Spot {
    QString floor, room;    ///< empty for what lies nowhere; of several rooms all their names
    int rooms = 0;          ///< of that floor, in the order listed
    QList<int> at;          ///< which of them
};
Spot spotOf(const walk::Scope& scope, const walk::StepKey& key);

/// "now", "25 min", "2 h", "3 d"; the day itself if that lies ahead.
QString ageWords(const base::WallClock& then, const base::WallClock& now);

} // namespace proofwalk::models
