// SPDX-License-Identifier: GPL-3.0-or-later
// states.txt, read.
#pragma once

#include "core/base/result.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace proofwalk::screens {

struct State {
    QString name; ///< "walk-card": the place, then the state
    QString job;  ///< as written; "-" for none
    QStringList actions;
};

/// Errors: file.missing; a line that is not three cells, with its number (states.cells), or whose name stands twice
/// (states.twice).
Result<std::vector<State>> readStates(const QString& file);

} // namespace proofwalk::screens
