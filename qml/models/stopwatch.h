// SPDX-License-Identifier: GPL-3.0-or-later
// A stopwatch that goes on while nobody looks and after the program was killed: it keeps when it was started, not how
// far it has come. While it runs in one program it goes by the steady clock, whatever is done to the time of day.
#pragma once

#include "qml/models/figures.h"

#include <QElapsedTimer>
#include <QList>
#include <QObject>
#include <QString>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

class Stopwatch : public QObject {
    Q_OBJECT
    QML_ELEMENT

    Q_PROPERTY(QString of READ of WRITE setOf NOTIFY ofChanged) ///< what is timed; names what is kept
    Q_PROPERTY(bool seen READ seen WRITE setSeen NOTIFY seenChanged) ///< somebody looks: ten times a second, else never
    Q_PROPERTY(double lower READ lower WRITE setLower NOTIFY ticked) ///< when it may end, in seconds; NaN: any time
    Q_PROPERTY(double upper READ upper WRITE setUpper NOTIFY ticked)

    Q_PROPERTY(bool running READ running NOTIFY turned)
    Q_PROPERTY(bool stopped READ stopped NOTIFY turned) ///< it ran and has a result
    Q_PROPERTY(double elapsed READ elapsed NOTIFY ticked) ///< seconds
    Q_PROPERTY(QString figure READ figure NOTIFY ticked) ///< "38.2"
    Q_PROPERTY(QString aheadWords READ aheadWords NOTIFY ticked) ///< "15.8 s until it may end"
    Q_PROPERTY(QList<double> laps READ laps NOTIFY turned) ///< seconds

public:
    explicit Stopwatch(QObject* parent = nullptr);

    QString of() const { return m_of; }
    void setOf(const QString& of);
    bool seen() const { return m_seen; }
    void setSeen(bool seen);
    double lower() const { return m_lower; }
    void setLower(double lower);
    double upper() const { return m_upper; }
    void setUpper(double upper);
    bool running() const { return m_running; }
    bool stopped() const { return !m_running && m_held_ms > 0; }
    double elapsed() const;
    QString figure() const { return QString::number(elapsed(), 'f', 1); }
    QString aheadWords() const;
    QList<double> laps() const { return m_laps; }

    Q_INVOKABLE void start(); ///< from nought
    Q_INVOKABLE void stop();
    Q_INVOKABLE void lap();
    Q_INVOKABLE void clear();

Q_SIGNALS:
    void ofChanged();
    void seenChanged();
    void turned();
    void ticked();

private:
    qint64 elapsed_ms() const { return m_running ? m_before_ms + m_steady.elapsed() : m_held_ms; }
    void recall();
    void keep();
    void turn();

    QString m_of;
    QTimer m_tick;
    QElapsedTimer m_steady;
    qint64 m_begun_ms = 0; ///< time of day at the start, since 1970
    qint64 m_before_ms = 0; ///< what had passed when this program took the watch up
    qint64 m_held_ms = 0;
    double m_lower = absent, m_upper = absent;
    QList<double> m_laps;
    bool m_running = false, m_seen = false;
};

} // namespace proofwalk::models
