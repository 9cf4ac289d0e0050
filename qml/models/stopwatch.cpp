// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/stopwatch.h"

#include "qml/models/whereabouts.h"
#include "qml/parts/words.h"

#include <QDateTime>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <cmath>

namespace proofwalk::models {
namespace {

constexpr qint64 longest_ms = qint64{7} * 24 * 3600 * 1000; ///< nobody times a week by hand

} // namespace

Stopwatch::Stopwatch(QObject* parent) : QObject(parent)
{
    m_tick.setInterval(100);
    connect(&m_tick, &QTimer::timeout, this, &Stopwatch::ticked);
}

void Stopwatch::setOf(const QString& of)
{
    if (of == m_of) return;
    m_of = of;
    Q_EMIT ofChanged();
    recall();
}

void Stopwatch::setSeen(bool seen)
{
    if (seen == m_seen) return;
    m_seen = seen;
    Q_EMIT seenChanged();
    turn();
}

void Stopwatch::setLower(double lower)
{
    m_lower = lower;
    Q_EMIT ticked();
}

void Stopwatch::setUpper(double upper)
{
    m_upper = upper;
    Q_EMIT ticked();
}

double Stopwatch::elapsed() const { return static_cast<double>(elapsed_ms()) / 1000.0; }

QString Stopwatch::aheadWords() const
{
    const auto words = [](const char* code, double seconds) {
        return parts::phrase(code, {{"seconds", QString::number(seconds, 'f', 1).toStdString()}});
    };
    if (!m_running) return {};
    const double now = elapsed();
    if (now < m_lower) return words("window.watch-early", m_lower - now);
    if (now <= m_upper) return words("window.watch-within", m_upper - now);
    return std::isnan(m_upper) ? QString() : words("window.watch-late", now - m_upper);
}

void Stopwatch::start()
{
    m_begun_ms = QDateTime::currentMSecsSinceEpoch();
    m_before_ms = m_held_ms = 0;
    m_laps.clear();
    m_steady.start();
    m_running = true;
    keep();
    turn();
}

void Stopwatch::stop()
{
    if (!m_running) return;
    m_held_ms = std::max(elapsed_ms(), qint64{1});
    m_running = false;
    keep();
    turn();
}

void Stopwatch::lap()
{
    if (!m_running) return;
    m_laps.append(elapsed());
    keep();
    Q_EMIT turned();
}

void Stopwatch::clear()
{
    m_running = false;
    m_held_ms = 0;
    m_laps.clear();
    keep();
    turn();
}

void Stopwatch::turn()
{
    if (m_running && m_seen) m_tick.start();
    else m_tick.stop();
    Q_EMIT turned();
    Q_EMIT ticked();
}

void Stopwatch::keep()
{
    if (m_of.isEmpty()) return;
    QString kept;
    if (m_running || m_held_ms > 0) {
        QJsonArray laps;
        for (const double lap : m_laps) laps.append(lap);
        kept = QString::fromUtf8(QJsonDocument(QJsonObject{{m_running ? "begun" : "held",
                                                            static_cast<double>(m_running ? m_begun_ms : m_held_ms)},
                                                           {"laps", laps}})
                                     .toJson(QJsonDocument::Compact));
    }
    Whereabouts::instance().setDraft("watch/" + m_of, kept);
}

void Stopwatch::recall()
{
    const auto kept = QJsonDocument::fromJson(Whereabouts::instance().draft("watch/" + m_of).toUtf8()).object();
    m_running = false;
    m_held_ms = 0;
    m_laps.clear();
    for (const auto lap : kept["laps"].toArray()) m_laps.append(lap.toDouble());
    if (kept.contains("held"))
        m_held_ms = std::clamp<qint64>(static_cast<qint64>(kept["held"].toDouble()), 0, longest_ms);
    if (kept.contains("begun")) {
        m_begun_ms = static_cast<qint64>(kept["begun"].toDouble());
        m_before_ms = QDateTime::currentMSecsSinceEpoch() - m_begun_ms;
        // A time of day that was set back, or a start long ago, gives no duration worth showing.
        m_running = m_before_ms >= 0 && m_before_ms < longest_ms;
        m_steady.start();
    }
    turn();
}

} // namespace proofwalk::models
