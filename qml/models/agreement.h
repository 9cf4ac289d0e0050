// SPDX-License-Identifier: GPL-3.0-or-later
// What the customer agrees to: words made from what the job adds up to, what in it is not as it should be, and their ink.
#pragma once

#include "qml/models/asking.h"
#include "qml/models/rows.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

/// Something that is not put right, too close to tell, or not tested.
struct AgreedRow {
    Q_GADGET
    Q_PROPERTY(int verdict MEMBER verdict)
    Q_PROPERTY(QString tag MEMBER tag)
    Q_PROPERTY(QString words MEMBER words) ///< "loading door radio, due 2 Dec"

public:
    int verdict = 0;
    QString tag, words;
    friend bool operator==(const AgreedRow&, const AgreedRow&) = default;
};

class Agreement : public PROOFWALK_ROWS(AgreedRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString words READ words NOTIFY changed) ///< the sentences, without what the rows name
    Q_PROPERTY(QString fullWords READ fullWords NOTIFY changed) ///< with it: what is recorded
    Q_PROPERTY(bool agreed READ agreed NOTIFY changed) ///< an acceptance stands
    Q_PROPERTY(QString agreedWords READ agreedWords NOTIFY changed) ///< as they were agreed to
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString ink READ ink NOTIFY changed) ///< JSON strokes in thousandths of a box 5 wide and 2 high
    Q_PROPERTY(QString when READ when NOTIFY changed) ///< "25 November 2026, 15:18"; now, while nobody has agreed
    Q_PROPERTY(int count READ count NOTIFY changed)
    Q_PROPERTY(bool busy READ busy NOTIFY askingChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY askingChanged)

public:
    explicit Agreement(QObject* parent = nullptr);
    QString words() const { return m_words; }
    QString fullWords() const { return m_fullWords; }
    bool agreed() const { return m_agreed; }
    QString agreedWords() const { return m_agreedWords; }
    QString name() const { return m_name; }
    QString ink() const { return m_ink; }
    QString when() const { return m_when; }
    int count() const { return rowCount(); }
    bool busy() const { return m_asking.busy(); }
    QString problem() const { return m_asking.problem(); }

    /// Asks to record the acceptance. Core wants all three; the refusal says which is missing.
    Q_INVOKABLE void agree(const QString& name, const QString& words, const QString& ink);

Q_SIGNALS:
    void changed();
    void askingChanged();
    void taken();

private:
    void refresh();

    QString m_words, m_fullWords, m_agreedWords, m_name, m_ink, m_when;
    bool m_agreed = false;
    Asking m_asking;
};

} // namespace proofwalk::models
