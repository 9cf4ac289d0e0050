// SPDX-License-Identifier: GPL-3.0-or-later
// Where the tests of the window stand: a program set up like the real one, in a home of its own, in which any warning
// of Qt or of QML fails the test.
//
//     class ATest : public proofwalk::rig::WindowTest {
//         Q_OBJECT
//     private Q_SLOTS:
//         void itCanBePressed() { rig::Stage stage; auto* window = stage.show("ActionButton { … }"); … }
//     };
//     PROOFWALK_WINDOW_TEST(ATest)
#pragma once

#include "tests/qml/rig/watchdog.h"

#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QTest>

#include <functional>
#include <memory>

namespace proofwalk::rig {

/// A temporary home: settings, keys and the program's own data go there, never to the person who runs the tests.
/// Made before the application.
class Home {
public:
    Home();
    QString path() const { return m_folder.path(); }

private:
    QTemporaryDir m_folder;
};

/// An engine prepared as the program prepares its own, and one window.
class Stage {
public:
    Stage();
    Stage(const Stage&) = delete;
    Stage& operator=(const Stage&) = delete;
    Stage(Stage&&) = delete;
    Stage& operator=(Stage&&) = delete;
    ~Stage();

    /// A window of that size on film that holds `qml`, one item; QtQuick and our parts are imported. It is shown and
    /// active when this returns; nullptr, with problem(), if it is not.
    QQuickWindow* show(const QString& qml, const QSize& size = {360, 640});
    /// A page that is a window by itself: "qrc:/qt/qml/Proofwalk/Screens/Main.qml", or a file.
    QQuickWindow* open(const QUrl& page, const QSize& size = {360, 780});

    QQmlApplicationEngine& engine() { return *m_engine; }
    /// The item of that objectName, anywhere in the window.
    QQuickItem* item(const QString& objectName) const;
    QString problem() const { return m_problem; }

private:
    QQuickWindow* present(const QSize& size);

    std::unique_ptr<QQmlApplicationEngine> m_engine;
    QQuickWindow* m_window = nullptr;
    QString m_problem;
};

/// Lets events, layouts and one frame pass.
void settle(QQuickWindow& window);

/// Every test of the window is one. A class with an init() or cleanup() of its own calls these.
class WindowTest : public QObject {
    Q_OBJECT

protected:
    /// The longest hold a test function may cause, in ms; below 0 for no limit.
    double m_hold_ms = longestHold_ms;

    void begin();
    void end();

private Q_SLOTS:
    void init() { begin(); }
    void cleanup() { end(); }
};

/// Qt's parts of main(): application, accessibility, the home. The body gets the words of the command line.
int onStage(int count, char** words, const std::function<int(int, char**)>& body);

} // namespace proofwalk::rig

#define PROOFWALK_WINDOW_TEST(TestClass)                                                                               \
    int main(int count, char** words)                                                                                  \
    {                                                                                                                  \
        return proofwalk::rig::onStage(count, words, [](int c, char** w) {                                             \
            TestClass test;                                                                                            \
            return QTest::qExec(&test, c, w);                                                                          \
        });                                                                                                            \
    }
