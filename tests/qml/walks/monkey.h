// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody who taps and types whatever comes, by a seed that repeats it.
#pragma once

#include <QQuickWindow>
#include <QRandomGenerator>
#include <QString>

namespace proofwalk::rig {

class Monkey {
public:
    /// `seed` 0 draws one. Tell it to whoever may want to repeat the run.
    Monkey(QQuickWindow& window, quint32 seed);

    quint32 seed() const { return m_seed; }
    /// Chooses and says what comes next: "tap ActionButton \"walk-on\" …", "key 3", "type 3".
    QString choose();
    /// Does it and lets what it started come to an end.
    void act();

private:
    QQuickWindow& m_window;
    quint32 m_seed;
    QRandomGenerator m_chance;
    QPoint m_at;
    int m_key = 0; ///< 0: a tap
    bool m_touch = false;
};

/// The seed of PROOFWALK_SEED; else a new one in a long run (PROOFWALK_LONG), and always the same in a usual one.
quint32 seedAsked();

/// Waits until the desk owes nothing.
void untilAnswered();

} // namespace proofwalk::rig
