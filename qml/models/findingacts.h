// SPDX-License-Identifier: GPL-3.0-or-later
// What can be done about one finding, each act a command of core/walk.
#pragma once

#include "core/base/json.h"

#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <filesystem>

namespace proofwalk::models {

class FindingActs : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString key MEMBER m_key NOTIFY keyChanged)   ///< as FindingRow.key
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged)       ///< asked for and not durable yet
    Q_PROPERTY(
        QString problem READ problem NOTIFY problemChanged) ///< why the last act was refused; empty if it was not

public:
    explicit FindingActs(QObject* parent = nullptr) : QObject(parent) {}
    bool busy() const { return m_busy; }
    QString problem() const { return m_problem; }

    Q_INVOKABLE void repair(const QStringList& touched, const QString& words);
    Q_INVOKABLE void accept(const QString& name, const QString& words);
    /// `due` is a day as 2026-12-02, or empty.
    Q_INVOKABLE void describe(bool deficiency, const QString& words, const QString& due);
    Q_INVOKABLE void photograph(const QString& path, const QString& words);
    Q_INVOKABLE void withdraw(const QString& event, const QString& reason);
    Q_INVOKABLE void clearProblem();

Q_SIGNALS:
    void keyChanged();
    void busyChanged();
    void problemChanged();
    void taken(); ///< the act is durable

private:
    /// Completes `act` on the step and asks for it. Nothing is asked while one is under way.
    void tell(const char* act, const base::Json::Object& more, const std::filesystem::path& folder = {});
    void send(const base::Json& command, const std::filesystem::path& folder);
    void setProblem(const QString& problem);

    QString m_key, m_problem;
    bool m_busy = false;
};

} // namespace proofwalk::models
