// SPDX-License-Identifier: GPL-3.0-or-later
// What is kept before anything is touched: how the system was found, the instruments, the clocks, who was told.
#pragma once

#include "qml/models/asking.h"
#include "qml/models/rows.h"
#include "qml/models/snapshot.h"

#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct ArrivalRow {
    Q_GADGET
    Q_PROPERTY(int part MEMBER part)     ///< Arrival::Part
    Q_PROPERTY(QString key MEMBER key)   ///< "panel", "station", an account; empty if it is of its part alone
    Q_PROPERTY(QString event MEMBER event) ///< what can be withdrawn; empty: still to do
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString second MEMBER second)
    Q_PROPERTY(QString right MEMBER right) ///< when: "08:46"
    Q_PROPERTY(bool kept MEMBER done)

public:
    int part = 0;
    QString key, event, title, second, right;
    bool done = false;
    friend bool operator==(const ArrivalRow&, const ArrivalRow&) = default;
};

class Arrival : public PROOFWALK_ROWS(ArrivalRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString display READ display NOTIFY changed) ///< as typed off the panel
    Q_PROPERTY(QString keptWords READ keptWords NOTIFY changed) ///< "3 of 5 kept"
    Q_PROPERTY(bool foundKept READ foundKept NOTIFY changed) ///< how the system was found
    Q_PROPERTY(QString missingWords READ missingWords NOTIFY changed) ///< "not yet: clocks"; empty if all is kept
    Q_PROPERTY(QStringList accounts READ accounts NOTIFY changed) ///< of the plan
    Q_PROPERTY(QString waiting READ waiting NOTIFY changed) ///< the first account not on test; empty if none
    Q_PROPERTY(
        QStringList quantities READ quantities CONSTANT) ///< that an instrument can measure, as commands name them
    Q_PROPERTY(bool busy READ busy NOTIFY askingChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY askingChanged)

public:
    enum Part { Found, Kit, Clock, Test };
    Q_ENUM(Part)

    explicit Arrival(QObject* parent = nullptr);
    QString display() const { return m_display; }
    QString keptWords() const { return m_keptWords; }
    bool foundKept() const { return m_foundKept; }
    QString missingWords() const { return m_missingWords; }
    QStringList accounts() const { return m_accounts; }
    QString waiting() const { return m_waiting; }
    QStringList quantities() const;
    bool busy() const { return m_asking.busy(); }
    QString problem() const { return m_asking.problem(); }

    Q_INVOKABLE void found(const QString& words, const QString& display);
    /// One instrument for one quantity. `percent`, `digits`, `fixed` (a value with the written unit of the quantity, as
    /// typed: "0.5"), `calibrated` (a day as 2026-03-02) may be empty.
    Q_INVOKABLE void addInstrument(const QString& name, const QString& quantity, const QString& percent,
                                   const QString& digits, const QString& fixed, const QString& calibrated);
    /// Seconds as typed, less than zero if that clock is behind.
    Q_INVOKABLE void clock(const QString& of, const QString& offset_s, const QString& uncertainty_s);
    /// `until` is a time of today as 15:30, or empty.
    Q_INVOKABLE void onTest(const QString& account, const QString& told, const QString& reference,
                            const QString& until);
    Q_INVOKABLE void withdraw(const QString& event, const QString& reason);
    /// What people call a quantity, and the unit a fixed part of its accuracy is given in.
    Q_INVOKABLE QString quantityWord(const QString& quantity) const;
    Q_INVOKABLE QString quantityUnit(const QString& quantity) const;

Q_SIGNALS:
    void changed();
    void askingChanged();
    void taken();

private:
    void refresh();
    void tell(base::Json::Object command);

    QString m_display, m_keptWords, m_missingWords, m_waiting;
    QStringList m_accounts;
    bool m_foundKept = false;
    Asking m_asking;
};

} // namespace proofwalk::models
