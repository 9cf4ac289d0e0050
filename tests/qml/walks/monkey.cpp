// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/walks/monkey.h"

#include "qml/models/desk.h"
#include "tests/qml/rig/controls.h"
#include "tests/qml/rig/finding.h"
#include "tests/qml/rig/taps.h"

#include <QElapsedTimer>
#include <QTest>

namespace proofwalk::rig {
namespace {

constexpr int keys[] = {Qt::Key_Tab,       Qt::Key_Return, Qt::Key_Space,  Qt::Key_Escape, Qt::Key_0,
                        Qt::Key_1,         Qt::Key_4,      Qt::Key_7,      Qt::Key_9,      Qt::Key_Period,
                        Qt::Key_Backspace, Qt::Key_Down,   Qt::Key_PageUp, Qt::Key_A,      Qt::Key_Minus};

/// What can be tapped now: not covered, enabled, its middle in sight.
std::vector<Control> within(const QQuickWindow& window)
{
    auto all = controlsOf(window);
    std::erase_if(all, [](const Control& control) {
        return control.shown.covered || !control.enabled || !control.shown.seen.contains(control.shown.rect.center());
    });
    return all;
}

} // namespace

Monkey::Monkey(QQuickWindow& window, quint32 seed) : m_window(window), m_seed(seed), m_chance(seed) {}

QString Monkey::choose()
{
    const auto controls = within(m_window);
    m_key = 0;
    if (controls.empty() || m_chance.bounded(4) == 0) {
        m_key = keys[m_chance.bounded(int(std::size(keys)))];
        return QStringLiteral("key %1").arg(m_key);
    }
    const auto& control = controls[m_chance.bounded(quint32(controls.size()))];
    m_at = control.shown.rect.center().toPoint();
    m_touch = m_chance.bounded(2) == 0;
    return QStringLiteral("tap ") + describe(*control.shown.item);
}

void Monkey::act()
{
    if (m_key != 0) QTest::keyClick(&m_window, Qt::Key(m_key));
    else if (m_touch) touchAt(m_window, m_at);
    else clickAt(m_window, m_at);
    // Sometimes the next tap comes before the answer to this one.
    if (m_chance.bounded(3) != 0) untilAnswered();
}

/// Whoever changes something and sees this fail has broken it, and not been unlucky.
constexpr quint32 usual = 99;

quint32 seedAsked()
{
    bool given = false;
    const auto asked = qEnvironmentVariable("PROOFWALK_SEED").toUInt(&given);
    if (given) return asked;
    return qEnvironmentVariableIsSet("PROOFWALK_LONG") ? QRandomGenerator::global()->generate() : usual;
}

void untilAnswered()
{
    QElapsedTimer timer;
    timer.start();
    do QTest::qWait(1);
    while (models::Desk::instance().busy() && timer.elapsed() < 10000);
}

} // namespace proofwalk::rig
