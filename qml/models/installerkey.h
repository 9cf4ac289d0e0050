// SPDX-License-Identifier: GPL-3.0-or-later
// The installer's own key: whether there is one, what its certificate says, and the making of it. Its passphrase is
// handed on and not kept.
#pragma once

#include "core/journal/identity.h"
#include "qml/models/asking.h"

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <filesystem>
#include <optional>

namespace proofwalk::models {

/// Where the window keeps the identity it signs with: homeFolder()/identity. Error: place.no-home.
Result<std::filesystem::path> identityFolder();

class InstallerKey : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool known READ known NOTIFY changed)     ///< it was looked for
    Q_PROPERTY(bool ready READ ready NOTIFY changed)     ///< there is one
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString firm READ firm NOTIFY changed)
    Q_PROPERTY(QString fingerprint READ fingerprint NOTIFY changed) ///< "5f2a 91c4 e03b"
    Q_PROPERTY(QString fullFingerprint READ fullFingerprint NOTIFY changed) ///< all of it, in groups of four
    Q_PROPERTY(int passphraseLeast READ passphraseLeast CONSTANT)
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)

public:
    explicit InstallerKey(QObject* parent = nullptr);
    bool known() const { return m_known; }
    bool ready() const { return m_facts.has_value(); }
    QString name() const;
    QString firm() const;
    QString fingerprint() const;
    QString fullFingerprint() const;
    int passphraseLeast() const { return static_cast<int>(journal::passphraseLeast); }
    bool busy() const { return m_asking.busy(); }
    QString problem() const { return m_asking.problem(); }

    /// Makes one, if both passphrases are the same.
    Q_INVOKABLE void make(const QString& name, const QString& firm, const QString& passphrase, const QString& again);
    Q_INVOKABLE void look();

Q_SIGNALS:
    void changed();
    void made();

private:
    bool m_known = false;
    std::optional<journal::IdentityFacts> m_facts;
    Asking m_asking;
};

} // namespace proofwalk::models
