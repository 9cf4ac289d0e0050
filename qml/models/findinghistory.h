// SPDX-License-Identifier: GPL-3.0-or-later
// One finding: what it is, where, and everything that ever happened to it. What was withdrawn is shown as withdrawn.
#pragma once

#include "qml/models/findingtelling.h"
#include "qml/models/rows.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

#include <memory>

namespace proofwalk::models {

struct HistoryRow {
    Q_GADGET
    Q_PROPERTY(QString time MEMBER time)       ///< "24 Nov" and "09:27" below it, the day only where it is another
    Q_PROPERTY(int verdict MEMBER verdict)     ///< Verdict; -1 for what is no answer
    Q_PROPERTY(QString title MEMBER title)     ///< "put right (terminals)"
    Q_PROPERTY(QString detail MEMBER detail)   ///< the words
    Q_PROPERTY(QString picture MEMBER picture) ///< hash of a photograph; empty if it is none
    Q_PROPERTY(QString event MEMBER event)     ///< hash by which it can be withdrawn; empty once it was
    Q_PROPERTY(bool withdrawn MEMBER withdrawn)

public:
    QString time, title, detail, picture, event;
    int verdict = -1;
    bool withdrawn = false;
    friend bool operator==(const HistoryRow&, const HistoryRow&) = default;
};

class FindingHistory : public PROOFWALK_ROWS(HistoryRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString key READ key WRITE setKey NOTIFY keyChanged) ///< as FindingRow.key
    Q_PROPERTY(bool found READ found NOTIFY changed)          ///< there is such a finding
    Q_PROPERTY(QString tag READ tag NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)       ///< the device's kind, the zone's label
    Q_PROPERTY(QString floor READ floor NOTIFY changed)
    Q_PROPERTY(QString room READ room NOTIFY changed)
    Q_PROPERTY(QString step READ step NOTIFY changed)
    Q_PROPERTY(QString line READ line NOTIFY changed)
    Q_PROPERTY(int verdict READ verdict NOTIFY changed)
    Q_PROPERTY(QString word READ word NOTIFY changed)
    Q_PROPERTY(QString dueWords READ dueWords NOTIFY changed)
    Q_PROPERTY(QString expected READ expected NOTIFY changed)
    Q_PROPERTY(QString seen READ seen NOTIFY changed)         ///< at the last failure; empty if nothing failed
    Q_PROPERTY(
        QString standing READ standing NOTIFY changed) ///< what acceptance or life safety mean for it; may be empty
    Q_PROPERTY(bool failed READ failed NOTIFY changed)        ///< a deficiency; else a recommendation or too close
    Q_PROPERTY(bool lifeSafety READ lifeSafety NOTIFY changed) ///< acceptance does not make the result complete
    Q_PROPERTY(bool repairable READ repairable NOTIFY changed) ///< something failed and is not put right yet
    Q_PROPERTY(bool acceptable READ acceptable NOTIFY changed) ///< the customer may be told of it
    Q_PROPERTY(QString cardTag READ cardTag NOTIFY changed)   ///< whose card retests it; empty for a sequence
    Q_PROPERTY(QString retestWords READ retestWords NOTIFY changed) ///< "retest GR-01"; empty if nothing is to retest
    Q_PROPERTY(QString words READ words NOTIFY changed)       ///< of its last description
    Q_PROPERTY(QString due READ due NOTIFY changed)           ///< of its last description: 2026-12-02

public:
    explicit FindingHistory(QObject* parent = nullptr);

    QString key() const { return m_key; }
    void setKey(const QString& key);
    bool found() const { return m_found; }
    QString tag() const { return m_tag; }
    QString title() const { return m_title; }
    QString floor() const { return m_floor; }
    QString room() const { return m_room; }
    QString step() const { return m_step; }
    QString line() const { return m_line; }
    int verdict() const { return m_verdict; }
    QString word() const { return m_word; }
    QString dueWords() const { return m_dueWords; }
    QString expected() const { return m_expected; }
    QString seen() const { return m_seen; }
    QString standing() const { return m_standing; }
    bool failed() const { return m_failed; }
    bool lifeSafety() const { return m_lifeSafety; }
    bool repairable() const { return m_repairable; }
    bool acceptable() const { return m_acceptable; }
    QString cardTag() const { return m_cardTag; }
    QString retestWords() const { return m_retestWords; }
    QString words() const { return m_words; }
    QString due() const { return m_due; }

    /// The title of the line whose event that is; empty if there is none.
    Q_INVOKABLE QString titleOf(const QString& event) const;

Q_SIGNALS:
    void keyChanged();
    void changed();

private:
    void refresh();
    void describe(const Snapshot& job, const Noticed& noticed);
    void describeFinding(const Snapshot& job, const walk::Finding& finding);

    QString m_key, m_tag, m_title, m_floor, m_room, m_step, m_line, m_word, m_dueWords, m_expected, m_seen, m_standing,
        m_cardTag, m_retestWords, m_words, m_due;
    int m_verdict = 0;
    bool m_found = false, m_failed = false, m_lifeSafety = false, m_repairable = false, m_acceptable = false;
};

/// Everything that happened at a step, oldest first.
std::vector<HistoryRow> historyOf(const Snapshot& job, const walk::StepKey& key);

} // namespace proofwalk::models
