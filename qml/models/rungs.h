// SPDX-License-Identifier: GPL-3.0-or-later
// What still stands between here and the signature, as the ladder of the window groups it.
#pragma once

#include "core/walk/readiness.h"
#include "qml/models/snapshot.h"

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

/// The treads, from the ground up.
namespace tread {
Q_NAMESPACE
QML_NAMED_ELEMENT(Tread)
enum Value { Arrival, Plan, Devices, Findings, Normal, Shown, Signature };
Q_ENUM_NS(Value)
} // namespace tread

/// Which tread a rung belongs to.
tread::Value treadOf(const walk::Rung& rung);

/// The rung as core tells it everywhere.
QString sentenceOf(const walk::Rung& rung);

/// Goes to where the rung can be climbed: the card of a device, the list of what is to be put back, …
void goWhere(const walk::Rung& rung, const Snapshot& job);

/// How often a code of one of that tread's rungs blocks.
int blockingOf(const Snapshot& job, tread::Value tread);

} // namespace proofwalk::models
