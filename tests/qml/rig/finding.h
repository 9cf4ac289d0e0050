// SPDX-License-Identifier: GPL-3.0-or-later
// What a check of a page tells: which rule, which item, what about it.
#pragma once

#include <QQuickItem>
#include <QString>

#include <vector>

namespace proofwalk::rig {

struct Finding {
    QString rule; ///< "truncated", "overlap", "small-target"; stable, tests name it
    QString item; ///< the item's way from the page, as describe() tells it
    QString says; ///< figures and words of the case
};

using Findings = std::vector<Finding>;

/// An item told to a person: its type, its objectName or accessible name or words, and where it stands in the window.
QString describe(const QQuickItem& item);

/// "rule: item: says", a line each.
QString toText(const Findings& findings);

/// Whether some finding is of that rule.
bool has(const Findings& findings, const QString& rule);

void append(Findings& to, Findings&& more);

} // namespace proofwalk::rig
