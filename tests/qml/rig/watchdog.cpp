// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/rig/watchdog.h"

#include <QThread>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <ctime>

namespace proofwalk::rig {
namespace {

constexpr double tick_ms = 4;
constexpr double usuallyLate_ms = 6;
constexpr double hangs_ms = 10000;

double now_ms()
{
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

/// Processor time of the calling thread.
double reckoned_ms()
{
    timespec time{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return double(time.tv_sec) * 1e3 + double(time.tv_nsec) / 1e6;
}

} // namespace

WatchedApplication::WatchedApplication(int& count, char** arguments)
    : QApplication(count, arguments), m_keeper([this] { keepTime(); })
{
}

WatchedApplication::~WatchedApplication()
{
    m_over = true;
    m_keeper.join();
}

void WatchedApplication::keepTime()
{
    double told = 0;
    while (!m_over) {
        const double begun = now_ms();
        std::this_thread::sleep_for(std::chrono::duration<double, std::milli>(tick_ms));
        // A little late is how sleeping is.
        if (const double late = now_ms() - begun - tick_ms; late > usuallyLate_ms) m_late_ms = m_late_ms + late;
        const double since = m_since_ms;
        if (since > 0 && since != told && now_ms() - since > hangs_ms) {
            told = since;
            std::fprintf(stderr, "the window's thread has been held by one event for %.0f s\n",
                         (now_ms() - since) / 1000);
        }
    }
}

bool WatchedApplication::notify(QObject* receiver, QEvent* event)
{
    if (m_depth > 0 || QThread::currentThread() != thread()) return QApplication::notify(receiver, event);
    // The receiver may be gone afterwards.
    const char* name = receiver->metaObject()->className();
    const int type = event->type();
    const double lateBefore = m_late_ms;
    const double reckonedBefore = reckoned_ms();
    const double begun = now_ms();
    m_since_ms = begun;
    ++m_depth;
    const bool result = QApplication::notify(receiver, event);
    --m_depth;
    m_since_ms = 0;
    const double held = now_ms() - begun;
    if (held > m_longest_ms) {
        // What it reckoned itself is its own however late the keeper was.
        const double own = std::max(reckoned_ms() - reckonedBefore, held - std::min(held, m_late_ms - lateBefore));
        if (own > m_longest_ms) {
            m_longest_ms = own;
            m_longestWas = QStringLiteral("event %1 to %2").arg(type).arg(QString::fromLatin1(name));
        }
    }
    return result;
}

void WatchedApplication::forget()
{
    m_longest_ms = 0;
    m_longestWas.clear();
}

WatchedApplication* watched() { return dynamic_cast<WatchedApplication*>(QCoreApplication::instance()); }

} // namespace proofwalk::rig
