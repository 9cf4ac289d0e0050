// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/stage.h"

#include "qml/models/desk.h"
#include "qml/parts/words.h"
#include "qml/window.h"
#include "tests/qml/rig/accessible.h"

#include <QQmlComponent>
#include <QRegularExpression>
#include <QSettings>
#include <QStyleHints>

namespace proofwalk::rig {

Home::Home()
{
    const QByteArray path = m_folder.path().toLocal8Bit();
    for (const char* name : {"HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_STATE_HOME"})
        qputenv(name, path);
    qputenv("PROOFWALK_HOME", path + "/proofwalk");
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, m_folder.path());
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, m_folder.path());
}

namespace {

/// By the tree of items: what a Repeater or a Loader makes is not always a child as objects go.
QQuickItem* itemIn(QQuickItem& item, const QString& objectName)
{
    if (item.objectName() == objectName) return &item;
    for (auto* child : item.childItems())
        if (auto* found = itemIn(*child, objectName); found != nullptr) return found;
    return nullptr;
}

} // namespace

Stage::Stage() : m_engine(std::make_unique<QQmlApplicationEngine>())
{
    if (auto ready = window::prepare(*m_engine); !ready)
        m_problem = QString::fromStdString(ready.error().code + " " + ready.error().where);
}

Stage::~Stage()
{
    m_engine.reset();
    models::Desk::instance().close();
}

QQuickWindow* Stage::present(const QSize& size)
{
    m_window =
        m_engine->rootObjects().isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(m_engine->rootObjects().constFirst());
    if (m_window == nullptr) {
        m_problem = QStringLiteral("no window");
        return nullptr;
    }
    m_window->resize(size);
    m_window->show();
    m_window->requestActivate();
    if (!QTest::qWaitForWindowActive(m_window)) m_problem = QStringLiteral("the window does not get active");
    settle(*m_window);
    if (watched() != nullptr) watched()->forget();
    return m_problem.isEmpty() ? m_window : nullptr;
}

QQuickWindow* Stage::show(const QString& qml, const QSize& size)
{
    const QString page = QStringLiteral("import QtQuick\nimport QtQuick.Window\nimport Proofwalk.Parts\n"
                                        "Window { visible: false; color: Theme.film; width: %1; height: %2\n%3\n}\n")
                             .arg(size.width())
                             .arg(size.height())
                             .arg(qml);
    m_engine->loadData(page.toUtf8(), QUrl(QStringLiteral("qrc:/stage.qml")));
    return present(size);
}

QQuickWindow* Stage::open(const QUrl& page, const QSize& size)
{
    m_engine->load(page);
    return present(size);
}

QQuickItem* Stage::item(const QString& objectName) const
{
    return m_window == nullptr ? nullptr : itemIn(*m_window->contentItem(), objectName);
}

void settle(QQuickWindow& window)
{
    // A layout may ask for another one; three rounds have always been enough.
    for (int round = 0; round < 3; ++round) {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents();
        window.update();
    }
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

void WindowTest::begin()
{
    // One is Qt's own: a row that a list made ahead, and no longer has when it calls it off.
    QTest::failOnWarning(QRegularExpression(QStringLiteral("^(?!DelegateModel::cancel: index out range).")));
    if (watched() != nullptr) watched()->forget();
}

void WindowTest::end()
{
    const auto* application = watched();
    if (application == nullptr || application->longest_ms() < 1) return;
    qInfo("longest hold %.1f ms, %s", application->longest_ms(), qPrintable(application->longestWas()));
#ifndef PROOFWALK_SLOW
    if (m_hold_ms >= 0) QVERIFY2(application->longest_ms() <= m_hold_ms, "the window was held too long");
#endif
}

int onStage(int count, char** words, const std::function<int(int, char**)>& body)
{
    const Home home;
    WatchedApplication application(count, words);
    switchAccessibilityOn();
    QGuiApplication::styleHints()->setCursorFlashTime(0);
    const int status = body(count, words);
    models::Desk::instance().end();
    return status;
}

} // namespace proofwalk::rig
