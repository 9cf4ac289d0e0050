// SPDX-License-Identifier: GPL-3.0-or-later
// By which day a deficiency is to be put right: one of three that are usual, or another.
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

class DueChoice : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int choice READ choice WRITE setChoice NOTIFY changed) ///< row of `choices`
    Q_PROPERTY(QString other READ other WRITE setOther NOTIFY changed) ///< as typed, for the last choice
    Q_PROPERTY(QString day READ day NOTIFY changed)       ///< 2026-12-02; empty if what was typed is no day
    Q_PROPERTY(QString words READ words NOTIFY changed)   ///< "Wed 2 December"
    Q_PROPERTY(QString problem READ problem NOTIFY changed) ///< why what was typed is not taken; empty while nothing is
    Q_PROPERTY(QString example READ example CONSTANT) ///< of how a day is typed
    Q_PROPERTY(QStringList choices READ choices CONSTANT)

public:
    enum Choice { Today, Week, Month, Other };
    Q_ENUM(Choice)

    explicit DueChoice(QObject* parent = nullptr) : QObject(parent) {}
    int choice() const { return m_choice; }
    void setChoice(int choice);
    QString other() const { return m_other; }
    void setOther(const QString& other);
    QString day() const;
    QString words() const;
    QString problem() const;
    QString example() const;
    QStringList choices() const;

    /// A day that was recorded: one of the usual if it is, else the other.
    Q_INVOKABLE void take(const QString& day);

Q_SIGNALS:
    void changed();

private:
    int m_choice = Week;
    QString m_other;
};

} // namespace proofwalk::models
