// SPDX-License-Identifier: GPL-3.0-or-later
// The words that models give and parts draw, as enumerators QML can name: Verdict.Pass, Seen.Bulk, Proof.Lit.
#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::parts {

/// What a verdict's mark says; in the order of report::Verdict.
namespace verdict {
Q_NAMESPACE
QML_NAMED_ELEMENT(Verdict)
enum Value { Pass, Fail, TooClose, NoAccess, Running, ToDo, NotApplicable, Retest };
Q_ENUM_NS(Value)
} // namespace verdict

/// How something was seen; in the order of report::ProofSeen.
namespace seen {
Q_NAMESPACE
QML_NAMED_ELEMENT(Seen)
enum Value { Singly, Bulk, ByItsLike, Ear, Partner };
Q_ENUM_NS(Value)
} // namespace seen

/// How far a proof has come; in the order of report::ProofState.
namespace proof {
Q_NAMESPACE
QML_NAMED_ELEMENT(Proof)
enum Value { NotPromised, Promised, UnderWay, Lit, Failed };
Q_ENUM_NS(Value)
} // namespace proof

} // namespace proofwalk::parts
