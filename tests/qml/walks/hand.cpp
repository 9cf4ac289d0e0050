// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/walks/hand.h"

#include "qml/models/desk.h"
#include "qml/parts/words.h"
#include "tests/qml/rig/controls.h"
#include "tests/qml/rig/finding.h"
#include "tests/qml/rig/stage.h"

#include <QImage>
#include <QTest>

namespace proofwalk::rig {
namespace {

constexpr int patience_ms = 10'000;

bool answersNow(const QQuickItem& item)
{
    return item.isEnabled() && !item.property("shut").toBool() && !item.property("busy").toBool();
}

/// The row itself, or what of it is called so.
bool isCalled(QQuickItem& item, const QString& name)
{
    if (!item.isVisible()) return false;
    if (item.objectName() == name) return true;
    if (auto* told = QAccessible::queryAccessibleInterface(&item);
        told != nullptr && isWorked(told->role()) && told->text(QAccessible::Name) == name)
        return true;
    for (auto* child : item.childItems())
        if (isCalled(*child, name)) return true;
    return false;
}

class Touch : public Hand {
public:
    explicit Touch(QQuickWindow& window) : Hand(window, By::touch) {}

    void figures(const QString& figures) override
    {
        for (const QChar figure : figures) press(figure == u'.' ? parts::phrase("window.part.point") : QString(figure));
    }
    void next() override
    {
        if (auto* pad = seen(QStringLiteral("pad")); pad != nullptr) press(pad->property("nextText").toString());
    }
    void leave(const QString& door) override { press(door); }
    void draw(const QString& field) override
    {
        auto* item = seen(field);
        if (item == nullptr) return;
        if (!taps().draw(*item, {{0.1, 0.7}, {0.2, 0.3}, {0.3, 0.7}, {0.45, 0.4}, {0.6, 0.7}, {0.8, 0.5}}))
            return fails(taps().problem());
        settle();
    }

protected:
    /// From where the list stands to its end, then once more from its beginning.
    bool takeRow(QQuickItem& list, const QString& row) override
    {
        for (const bool down : {true, false})
            for (int tries = 0; tries < 40; ++tries) {
                if (auto* item = taps().find(row); item != nullptr) return taps().tapOn(*item);
                if (list.property(down ? "atYEnd" : "atYBeginning").toBool()) break;
                const int by = int(list.height() * 0.6) * (down ? -1 : 1);
                dragBy(window(), list.mapToScene({list.width() / 2, list.height() * (down ? 0.8 : 0.2)}).toPoint(),
                       {0, by});
            }
        return false;
    }
};

class Keys : public Hand {
public:
    explicit Keys(QQuickWindow& window) : Hand(window, By::keys) {}

    void figures(const QString& figures) override
    {
        if (!well() || !toPad()) return;
        taps().type(figures);
    }
    void next() override
    {
        if (!well() || !toPad()) return;
        taps().key(Qt::Key_Return);
        settle();
    }
    void leave(const QString&) override
    {
        if (!well()) return;
        taps().key(Qt::Key_Escape);
        settle();
    }
    void draw(const QString& field) override
    {
        auto* item = seen(field);
        if (item == nullptr) return;
        if (!taps().focusOn(*item)) return fails(taps().problem());
        taps().key(Qt::Key_Space);
        for (const auto way : {Qt::Key_Right, Qt::Key_Up, Qt::Key_Right, Qt::Key_Down, Qt::Key_Right})
            for (int step = 0; step < 4; ++step) taps().key(way);
        taps().key(Qt::Key_Space);
        settle();
    }

protected:
    /// Whoever works by keys must see where they are.
    void look() override
    {
        auto* at = window().activeFocusItem();
        if (at == nullptr || at == window().contentItem()) return fails(QStringLiteral("the focus is nowhere"));
        for (const auto& shown : shownItems(window()))
            if (shown.item == at && !shown.covered && !shown.seen.isEmpty()) return;
        fails(QStringLiteral("the focus cannot be seen: ") + describe(*at));
    }

    bool takeRow(QQuickItem& list, const QString& row) override
    {
        if (!taps().focusOn(list)) return false;
        taps().key(Qt::Key_Home);
        for (int at = 0; at < list.property("count").toInt(); ++at) {
            if (auto* item = list.property("currentItem").value<QQuickItem*>();
                item != nullptr && isCalled(*item, row)) {
                taps().key(Qt::Key_Return);
                return true;
            }
            taps().key(Qt::Key_Down);
        }
        return false;
    }

private:
    /// Where a page has a pad, figures can be typed at once: the keyboard is at it, or on a page that hands them on.
    bool toPad()
    {
        auto* pad = seen(QStringLiteral("pad"));
        if (pad == nullptr) return false;
        if (auto* at = window().activeFocusItem(); at != nullptr && holds(*pad->parentItem(), *at)) return true;
        fails(QStringLiteral("the keyboard is not at the pad"));
        return false;
    }
};

} // namespace

Hand::Hand(QQuickWindow& window, By by) : m_window(window), m_taps(window, by) {}

void Hand::fails(const QString& problem)
{
    if (!m_problem.isEmpty()) return;
    auto* at = m_window.activeFocusItem();
    m_problem = QStringLiteral("after \"%1\": %2\nthe focus is at %3")
                    .arg(m_done.mid(std::max<qsizetype>(0, m_done.size() - 6)).join(QStringLiteral("\", \"")), problem,
                         at == nullptr ? QStringLiteral("nothing") : describe(*at));
}

void Hand::settle()
{
    rig::settle(m_window);
    m_taps.until([] { return !models::Desk::instance().busy(); }, QStringLiteral("the desk"), patience_ms);
    rig::settle(m_window);
    m_window.grabWindow(); // drawn, so that all is laid out
    rig::settle(m_window);
    look();
}

QQuickItem* Hand::ready(const QString& name)
{
    QQuickItem* item = nullptr;
    const auto placeOf = [&] { return item->mapRectToScene({0, 0, item->width(), item->height()}); };
    // Nobody taps what is still moving to its place: it is where it was when the window had been drawn.
    const auto there = [&] {
        item = m_taps.find(name);
        if (item == nullptr || !answersNow(*item)) return false;
        const QRectF before = placeOf();
        m_window.grabWindow();
        return placeOf() == before;
    };
    if (!well() || there() || m_taps.until(there, name, patience_ms)) return item;
    item = m_taps.find(name);
    fails(item == nullptr
              ? m_taps.problem()
              : QStringLiteral("cannot be pressed: ") + describe(*item) + u' ' + item->property("second").toString());
    return nullptr;
}

QQuickItem* Hand::seen(const QString& objectName)
{
    QQuickItem* found = nullptr;
    const auto there = [&] {
        for (const auto& shown : shownItems(m_window))
            if (!shown.covered && shown.item->objectName() == objectName) found = shown.item;
        return found != nullptr;
    };
    if (well() && !there() && !m_taps.until(there, objectName, patience_ms)) fails(m_taps.problem());
    return well() ? found : nullptr;
}

/// For who mends a walk: a picture of the window after each verb, in the folder PROOFWALK_SHOTS.
void Hand::show()
{
    const QString folder = qEnvironmentVariable("PROOFWALK_SHOTS");
    if (folder.isEmpty()) return;
    const QString name = QStringLiteral("%1-%2-%3.png")
                             .arg(m_taps.by() == By::keys ? "keys" : "touch")
                             .arg(m_done.size(), 3, 10, QChar(u'0'))
                             .arg(m_done.constLast());
    m_window.grabWindow().save(folder + u'/' + QString(name).replace(u' ', u'-'));
}

void Hand::press(const QString& name)
{
    if (!well()) return;
    m_done << name;
    auto* item = ready(name);
    if (item == nullptr) return;
    if (!m_taps.tapOn(*item)) return fails(m_taps.problem());
    settle();
    show();
}

void Hand::take(const QString& list, const QString& row)
{
    if (!well()) return;
    m_done << row;
    auto* rows = seen(list);
    if (rows == nullptr) return;
    if (!m_taps.until([&] { return rows->property("count").toInt() > 0; }, list, patience_ms) || !takeRow(*rows, row))
        return fails(QStringLiteral("no such row of %1: %2; %3").arg(list, row, m_taps.problem()));
    settle();
    show();
}

void Hand::write(const QString& field, const QString& words)
{
    if (!well()) return;
    m_done << field;
    auto* item = ready(field);
    if (item == nullptr) return;
    // Where the keyboard is there already nothing is pressed: Return in a field is a new line.
    const bool there = holds(*item, *m_window.activeFocusItem());
    if (!there && !(m_taps.by() == By::keys ? m_taps.focusOn(*item) : m_taps.tapOn(*item)))
        return fails(m_taps.problem());
    if (!item->property("text").toString().isEmpty()) m_taps.eraseAll();
    m_taps.type(words);
    settle();
    if (item->property("text").toString() != words)
        fails(QStringLiteral("%1 holds \"%2\"").arg(describe(*item), item->property("text").toString()));
}

int Hand::pressOn(const QString& name, const std::function<void()>& look)
{
    constexpr int most = 200;
    for (int times = 0; times < most; ++times) {
        look();
        auto* item = well() ? m_taps.find(name) : nullptr;
        if (item == nullptr || !answersNow(*item)) return times;
        press(name);
    }
    fails(QStringLiteral("no end of ") + name);
    return most;
}

QString Hand::reads(const QString& objectName)
{
    auto* item = seen(objectName);
    auto* told = item == nullptr ? nullptr : QAccessible::queryAccessibleInterface(item);
    if (told == nullptr) return {};
    return told->text(QAccessible::Name) + u'\n' + told->text(QAccessible::Description);
}

void Hand::await(const std::function<bool()>& so, const QString& what, int most_ms)
{
    if (well() && !m_taps.until(so, what, most_ms)) fails(m_taps.problem());
}

void Hand::wait(int ms)
{
    if (well()) QTest::qWait(ms);
}

std::unique_ptr<Hand> handOf(QQuickWindow& window, By by)
{
    if (by == By::keys) return std::make_unique<Keys>(window);
    return std::make_unique<Touch>(window);
}

} // namespace proofwalk::rig
