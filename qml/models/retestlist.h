// SPDX-License-Identifier: GPL-3.0-or-later
// What must be tested again because of a repair and why: of one that is about to be entered, or of the last that was.
#pragma once

#include "qml/models/rows.h"

#include <QList>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct RetestRow {
    Q_GADGET
    Q_PROPERTY(QString tag MEMBER tag)
    Q_PROPERTY(QString step MEMBER step)
    Q_PROPERTY(QString why MEMBER why)     ///< "it failed", "the terminals were touched"
    Q_PROPERTY(int verdict MEMBER verdict) ///< Verdict, as it stands now

public:
    QString tag, step, why;
    int verdict = 0;
    friend bool operator==(const RetestRow&, const RetestRow&) = default;
};

class RetestList : public PROOFWALK_ROWS(RetestRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString key READ key WRITE setKey NOTIFY asked)
    Q_PROPERTY(QStringList touched READ touched WRITE setTouched NOTIFY asked) ///< words of Touchable.words
    Q_PROPERTY(
        bool recorded READ recorded WRITE setRecorded NOTIFY asked) ///< of the last repair; `touched` is not asked
    Q_PROPERTY(QString summary READ summary NOTIFY changed) ///< "6 steps at 3 places to retest"; empty if none
    Q_PROPERTY(QStringList touchable READ touchable CONSTANT) ///< the words a repair may name
    Q_PROPERTY(QList<bool> marks READ marks NOTIFY asked) ///< which of them were touched, in their order
    Q_PROPERTY(
        QString draft READ draft WRITE setDraft NOTIFY asked) ///< `touched` as one text, to keep: "terminals,device"

public:
    explicit RetestList(QObject* parent = nullptr);
    QString key() const { return m_key; }
    void setKey(const QString& key);
    QStringList touched() const { return m_touched; }
    void setTouched(const QStringList& touched);
    bool recorded() const { return m_recorded; }
    void setRecorded(bool recorded);
    QString summary() const { return m_summary; }
    QStringList touchable() const;
    QList<bool> marks() const;
    QString draft() const { return m_touched.join(','); }
    void setDraft(const QString& draft) { setTouched(draft.split(',', Qt::SkipEmptyParts)); }

    /// That this was touched or was not; any other word than the touchable ones is dropped.
    Q_INVOKABLE void turn(const QString& word, bool on);

Q_SIGNALS:
    void asked();
    void changed();

private:
    void refresh();

    QString m_key, m_summary;
    QStringList m_touched;
    bool m_recorded = false;
};

} // namespace proofwalk::models
