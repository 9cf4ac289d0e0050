// SPDX-License-Identifier: GPL-3.0-or-later
// How long the window's thread was held by one event. A thread of its own keeps time beside it: when that one too is
// late, the machine had no processor to give, and the time is not laid to the window.
#pragma once

#include <QApplication>
#include <QString>

#include <atomic>
#include <memory>
#include <thread>

namespace proofwalk::rig {

/// The longest the window may be held (the project's own limit), in ms.
constexpr double longestHold_ms = 50;

/// An application that times each event it delivers. What test code does between events is not counted, a grab neither.
class WatchedApplication : public QApplication {
public:
    WatchedApplication(int& count, char** arguments);
    WatchedApplication(const WatchedApplication&) = delete;
    WatchedApplication& operator=(const WatchedApplication&) = delete;
    WatchedApplication(WatchedApplication&&) = delete;
    WatchedApplication& operator=(WatchedApplication&&) = delete;
    ~WatchedApplication() override;

    bool notify(QObject* receiver, QEvent* event) override;

    /// Forgets what was; after a page was loaded, before it is worked.
    void forget();
    double longest_ms() const { return m_longest_ms; }
    /// What was delivered then: the event's number and its receiver's class.
    QString longestWas() const { return m_longestWas; }

private:
    void keepTime();

    int m_depth = 0;
    double m_longest_ms = 0;
    QString m_longestWas;
    std::atomic<double> m_late_ms = 0; ///< added up: how late the keeper of time woke
    std::atomic<double> m_since_ms = 0; ///< when the event under way began; 0 for none
    std::atomic<bool> m_over = false;
    std::thread m_keeper;
};

/// The one there is; nullptr if the program runs under another kind of application.
WatchedApplication* watched();

} // namespace proofwalk::rig
