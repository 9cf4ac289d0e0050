// SPDX-License-Identifier: GPL-3.0-or-later
// A person at the window, who costs time. Counted after the keystroke-level model: Card, Moran, Newell, "The
// keystroke-level model for user performance time with interactive systems", Communications of the ACM 23 (7), 1980,
// pp. 396-410; the figures from memory. They came from mouse and keyboard: a ratio between designs, not a promise.
#pragma once

#include "tests/qml/rig/shown.h"

#include <QString>

#include <functional>
#include <vector>

namespace proofwalk::rig {

constexpr double keystroke_s = 0.28; ///< K, an average typist who does not type for a living
constexpr double pointing_s = 1.10;  ///< P
constexpr double mental_s = 1.35;    ///< M

enum class By { mouse, touch, keys };

class Taps {
public:
    Taps(QQuickWindow& window, By by);

    /// M: the eye goes from device or meter to the screen and back; once a step (the project's choice).
    void look();
    /// M: a decision, before a verdict or a choice; not before each digit.
    void decide();
    /// P and K on the control that find() finds; K alone for the next key on one NumberPad.
    /// With keys: Tab until it has the focus, then Return, K each. One out of sight is scrolled to first, P and K each
    /// time. False, with problem(), if no such control can be tapped where a person would.
    bool tap(const QString& name);
    /// The same on an item that was sought before.
    bool tapOn(QQuickItem& item);
    /// K for each sign. By touch the platform's keyboard on the screen is meant: it commits to what has the focus.
    void type(const QString& text);
    /// What stands in the field that has the focus goes: one K, and K for the choice of it all.
    void eraseAll();
    /// A line drawn on an item, through places in parts of its width and height: P, and K for the pressing down.
    bool draw(QQuickItem& item, const std::vector<QPointF>& places);
    /// The control of that objectName, else the one inside an item of that objectName, else that accessible name. Only
    /// such as a person could see now or scroll to. nullptr, with problem(), if there is none or more than one.
    QQuickItem* find(const QString& name);
    /// With keys: Tab until the item has the focus, K each. False, with problem(), if Tab does not lead there.
    bool focusOn(QQuickItem& item);
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {});
    /// R: waits until it is so, and counts how long that took. False, with problem(), if it does not come to be.
    bool until(const std::function<bool()>& so, const QString& what, int most_ms = 5000);

    By by() const { return m_by; }
    int taps() const { return m_taps; }
    double seconds() const;
    double response_ms() const { return m_response_ms; }
    /// "3 taps, M P K P K: 4.11 s, of it 31 ms of waiting".
    QString account() const;
    QString problem() const { return m_problem; }
    void startOver();

private:
    bool fails(const QString& problem);
    bool scrollTo(QQuickItem& item);
    bool tapAt(QQuickItem& item);

    QQuickWindow& m_window;
    By m_by;
    int m_taps = 0, m_keys = 0, m_points = 0, m_thoughts = 0;
    double m_response_ms = 0;
    QString m_operators, m_problem;
    QQuickItem* m_pad = nullptr; ///< the pad the hand is over; compared, never followed
};

/// One touch, or one click, at a place of the window.
void touchAt(QQuickWindow& window, const QPoint& at);
void clickAt(QQuickWindow& window, const QPoint& at);
/// A slow drag by touch that does not fling.
void dragBy(QQuickWindow& window, const QPoint& from, const QPoint& by);

} // namespace proofwalk::rig
