// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/screens/states.h"

#include <QFile>

#include <algorithm>

namespace proofwalk::screens {

Result<std::vector<State>> readStates(const QString& file)
{
    QFile table(file);
    if (!table.open(QIODevice::ReadOnly)) return failure("file.missing", file.toStdString());
    std::vector<State> states;
    for (int number = 1; !table.atEnd(); ++number) {
        const QString line = QString::fromUtf8(table.readLine()).trimmed();
        if (line.isEmpty() || line.startsWith(u'#')) continue;
        const std::string where = file.toStdString() + ":" + std::to_string(number);
        const auto cells = line.split(u'|');
        if (cells.size() != 3) return failure("states.cells", where);
        State state{cells[0].trimmed(), cells[1].trimmed(), {}};
        for (const auto& action : cells[2].split(u';', Qt::SkipEmptyParts))
            if (!action.trimmed().isEmpty()) state.actions << action.trimmed();
        if (std::ranges::any_of(states, [&](const State& other) { return other.name == state.name; }))
            return failure("states.twice", where);
        states.push_back(std::move(state));
    }
    return states;
}

} // namespace proofwalk::screens
