// SPDX-License-Identifier: GPL-3.0-or-later
// A hand at the window, by touch only or by keyboard only, with the same verbs for both, so that a walk is written once.
// The first verb that cannot be done is kept in problem(), and what follows does nothing: a walk is a list of verbs, and
// whoever told it asks well() at the end.
#pragma once

#include "tests/qml/rig/taps.h"

#include <memory>

namespace proofwalk::rig {

class Hand {
public:
    virtual ~Hand() = default;
    Hand(const Hand&) = delete;
    Hand& operator=(const Hand&) = delete;
    Hand(Hand&&) = delete;
    Hand& operator=(Hand&&) = delete;

    /// Presses what is called so once it is there and can be pressed, and waits until what came of it is durable.
    void press(const QString& name);
    /// Takes a row of a list, by the objectName or accessible name of the row.
    void take(const QString& list, const QString& row);
    /// Writes into a field; what stood there goes.
    void write(const QString& field, const QString& words);
    /// Figures on the number pad, as they are on its keys.
    virtual void figures(const QString& figures) = 0;
    /// The pad's own "next".
    virtual void next() = 0;
    /// A name drawn in a field.
    virtual void draw(const QString& field) = 0;
    /// Leaves a page for what it came from: by keys as every page is left, by touch through the door of its place.
    virtual void leave(const QString& door) = 0;
    /// Whether what is called so is there now.
    bool offers(const QString& name) { return well() && m_taps.find(name) != nullptr; }
    /// Presses it as often as it can be pressed, and looks at what comes each time. Returns how often that was.
    int pressOn(const QString& name, const std::function<void()>& look);
    /// What is told of an item by its objectName, once it is in sight: its name, and after it what is said of it.
    QString reads(const QString& objectName);
    /// Waits until it is so.
    void await(const std::function<bool()>& so, const QString& what, int most_ms = 10000);
    /// Time passes, for a watch that runs.
    void wait(int ms);

    Taps& taps() { return m_taps; }
    bool well() const { return m_problem.isEmpty(); }
    QString problem() const { return m_problem; }

    QQuickWindow& window() { return m_window; }

protected:
    Hand(QQuickWindow& window, By by);

    /// What is called so and can be pressed now; waits for it. nullptr, with the problem kept.
    QQuickItem* ready(const QString& name);
    /// An item of that objectName in sight, control or not.
    QQuickItem* seen(const QString& objectName);
    /// The row in a list whose rows are made as they come into sight.
    virtual bool takeRow(QQuickItem& list, const QString& row) = 0;
    /// What must hold after each verb.
    virtual void look() {}
    void fails(const QString& problem);
    /// Lets the window answer.
    void settle();

private:
    void show();

    QQuickWindow& m_window;
    Taps m_taps;
    QString m_problem;
    QStringList m_done; ///< the last verbs, for the problem
};

/// By::touch or By::keys.
std::unique_ptr<Hand> handOf(QQuickWindow& window, By by);

} // namespace proofwalk::rig
