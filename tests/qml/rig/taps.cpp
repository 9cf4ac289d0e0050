// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/taps.h"

#include "tests/qml/rig/controls.h"
#include "tests/qml/rig/finding.h"

#include <QElapsedTimer>
#include <QInputMethodEvent>
#include <QPointer>
#include <QPointingDevice>
#include <QTest>

#include <memory>

namespace proofwalk::rig {
namespace {

QPointingDevice* finger()
{
    // Deleted with the application, or the leak sanitizer tells of it.
    static QPointer<QPointingDevice> device;
    if (device.isNull()) {
        device = QTest::createTouchDevice();
        device->setParent(qApp);
    }
    return device;
}

QQuickItem* padOf(QQuickItem* item)
{
    for (auto* at = item; at != nullptr; at = at->parentItem())
        if (QByteArray(at->metaObject()->className()).startsWith("NumberPad")) return at;
    return nullptr;
}

QPoint middleOf(const QQuickItem& item) { return item.mapToScene({item.width() / 2, item.height() / 2}).toPoint(); }

bool isWithin(const QQuickItem& item, const QString& objectName)
{
    for (const auto* at = item.parentItem(); at != nullptr; at = at->parentItem())
        if (at->objectName() == objectName) return true;
    return false;
}

bool isInSight(const QQuickWindow& window, const QQuickItem& item, bool& covered)
{
    covered = false;
    for (const auto& shown : shownItems(window)) {
        if (shown.item != &item) continue;
        covered = shown.covered;
        return !covered && shown.seen.adjusted(-1, -1, 1, 1).contains(shown.rect.center());
    }
    return false;
}

} // namespace

void touchAt(QQuickWindow& window, const QPoint& at)
{
    QTest::touchEvent(&window, finger()).press(0, at, &window);
    QTest::touchEvent(&window, finger()).release(0, at, &window);
    QCoreApplication::processEvents();
}

void clickAt(QQuickWindow& window, const QPoint& at)
{
    QTest::mouseClick(&window, Qt::LeftButton, {}, at);
    QCoreApplication::processEvents();
}

void dragBy(QQuickWindow& window, const QPoint& from, const QPoint& by)
{
    constexpr int steps = 8;
    QTest::touchEvent(&window, finger()).press(0, from, &window);
    for (int step = 1; step <= steps; ++step) {
        QTest::qWait(4);
        QTest::touchEvent(&window, finger()).move(0, from + by * step / steps, &window);
    }
    // Held still, so that nothing flies on.
    QTest::qWait(110);
    QTest::touchEvent(&window, finger()).release(0, from + by, &window);
    QTest::qWait(20);
}

Taps::Taps(QQuickWindow& window, By by) : m_window(window), m_by(by) {}

void Taps::look()
{
    ++m_thoughts;
    m_operators += QStringLiteral(" M");
}

void Taps::decide() { look(); }

bool Taps::fails(const QString& problem)
{
    m_problem = problem;
    return false;
}

QQuickItem* Taps::find(const QString& name)
{
    std::vector<QQuickItem*> byObject, within, byName;
    for (const auto& control : controlsOf(m_window)) {
        if (control.shown.covered) continue;
        auto* item = control.shown.item;
        if (item->objectName() == name) byObject.push_back(item);
        else if (isWithin(*item, name)) within.push_back(item);
        if (control.name == name) byName.push_back(item);
    }
    const auto& found = !byObject.empty() ? byObject : within.size() == 1 ? within : byName;
    if (found.size() == 1) return found.front();
    QString there;
    if (found.empty())
        for (const auto& control : controlsOf(m_window))
            if (!control.shown.covered) there += QStringLiteral("\n  ") + describe(*control.shown.item);
    fails(QStringLiteral("%1 controls are called \"%2\"").arg(found.size()).arg(name) + there);
    return nullptr;
}

bool Taps::scrollTo(QQuickItem& item)
{
    bool covered = false;
    for (int tries = 0; tries < 30; ++tries) {
        if (isInSight(m_window, item, covered)) return true;
        auto* around = scrollsAround(item);
        if (covered || around == nullptr) break;
        const QPointF middle = around->mapToScene({around->width() / 2, around->height() / 2});
        const QPointF way = middle - item.mapToScene({item.width() / 2, item.height() / 2});
        const double room = std::min(around->height(), double(m_window.height())) * 0.7;
        const int dy = int(std::clamp(way.y(), -room, room));
        const auto before = item.mapToScene({0, 0});
        dragBy(m_window, middle.toPoint() - QPoint(0, dy / 2), {0, dy});
        m_operators += QStringLiteral(" P K");
        ++m_points;
        ++m_keys;
        if (item.mapToScene({0, 0}) == before) break;
    }
    return fails(QStringLiteral("cannot be brought into sight: ") + describe(item));
}

bool Taps::tapAt(QQuickItem& item)
{
    if (!scrollTo(item)) return false;
    auto* pad = padOf(&item);
    if (pad == nullptr || pad != m_pad) {
        ++m_points;
        m_operators += QStringLiteral(" P");
    }
    m_pad = pad;
    ++m_keys;
    ++m_taps;
    m_operators += QStringLiteral(" K");
    if (m_by == By::touch) touchAt(m_window, middleOf(item));
    else clickAt(m_window, middleOf(item));
    return true;
}

bool Taps::focusOn(QQuickItem& item)
{
    QQuickItem* const first = m_window.activeFocusItem();
    for (int steps = 0; steps < 400; ++steps) {
        auto* at = m_window.activeFocusItem();
        if (at != nullptr && holds(item, *at)) return true;
        if (steps > 0 && at == first && steps > 200) break;
        key(Qt::Key_Tab);
    }
    return fails(QStringLiteral("Tab does not reach ") + describe(item));
}

bool Taps::tap(const QString& name)
{
    auto* item = find(name);
    return item != nullptr && tapOn(*item);
}

bool Taps::tapOn(QQuickItem& item)
{
    if (!item.isEnabled()) return fails(QStringLiteral("is disabled: ") + describe(item));
    if (m_by != By::keys) return tapAt(item);
    if (!focusOn(item)) return false;
    key(Qt::Key_Return);
    ++m_taps;
    return true;
}

void Taps::type(const QString& text)
{
    for (const QChar sign : text) {
        if (m_by == By::touch) {
            QInputMethodEvent commit;
            commit.setCommitString(QString(sign));
            if (auto* at = m_window.activeFocusItem(); at != nullptr) QCoreApplication::sendEvent(at, &commit);
        } else {
            QTest::keyClick(&m_window, sign.toLatin1());
        }
        ++m_keys;
        m_operators += QStringLiteral(" K");
    }
    QCoreApplication::processEvents();
}

void Taps::eraseAll()
{
    if (m_by != By::touch) {
        key(Qt::Key_A, Qt::ControlModifier);
        key(Qt::Key_Backspace);
        return;
    }
    auto* at = m_window.activeFocusItem();
    if (at == nullptr) return;
    QInputMethodQueryEvent asked(Qt::ImSurroundingText | Qt::ImCursorPosition);
    QCoreApplication::sendEvent(at, &asked);
    const int cursor = asked.value(Qt::ImCursorPosition).toInt();
    QInputMethodEvent gone;
    gone.setCommitString({}, -cursor, int(asked.value(Qt::ImSurroundingText).toString().size()));
    QCoreApplication::sendEvent(at, &gone);
    QCoreApplication::processEvents();
    m_keys += 2;
    m_operators += QStringLiteral(" K K");
}

bool Taps::draw(QQuickItem& item, const std::vector<QPointF>& places)
{
    if (places.empty() || !scrollTo(item)) return false;
    const auto at = [&](const QPointF& part) {
        return item.mapToScene({part.x() * item.width(), part.y() * item.height()}).toPoint();
    };
    QTest::touchEvent(&m_window, finger()).press(0, at(places.front()), &m_window);
    for (const auto& place : places) {
        QTest::touchEvent(&m_window, finger()).move(0, at(place), &m_window);
        QCoreApplication::processEvents();
    }
    QTest::touchEvent(&m_window, finger()).release(0, at(places.back()), &m_window);
    QCoreApplication::processEvents();
    ++m_points;
    ++m_keys;
    m_operators += QStringLiteral(" P K");
    m_pad = nullptr;
    return true;
}

void Taps::key(Qt::Key key, Qt::KeyboardModifiers modifiers)
{
    QTest::keyClick(&m_window, key, modifiers);
    QCoreApplication::processEvents();
    ++m_keys;
    m_operators += QStringLiteral(" K");
}

bool Taps::until(const std::function<bool()>& so, const QString& what, int most_ms)
{
    QElapsedTimer timer;
    timer.start();
    while (!so()) {
        if (timer.elapsed() > most_ms) return fails(QStringLiteral("waited %1 ms for ").arg(most_ms) + what);
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents | QEventLoop::AllEvents, 5);
        QTest::qSleep(1);
    }
    m_response_ms += double(timer.nsecsElapsed()) / 1e6;
    return true;
}

double Taps::seconds() const
{
    return m_keys * keystroke_s + m_points * pointing_s + m_thoughts * mental_s + m_response_ms / 1000;
}

QString Taps::account() const
{
    return QStringLiteral("%1 taps,%2: %3 s, of it %4 ms of waiting")
        .arg(m_taps)
        .arg(m_operators)
        .arg(seconds(), 0, 'f', 2)
        .arg(m_response_ms, 0, 'f', 0);
}

void Taps::startOver()
{
    m_taps = m_keys = m_points = m_thoughts = 0;
    m_response_ms = 0;
    m_operators.clear();
    m_problem.clear();
    m_pad = nullptr;
}

} // namespace proofwalk::rig
