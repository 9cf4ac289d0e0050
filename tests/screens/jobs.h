// SPDX-License-Identifier: GPL-3.0-or-later
// Job files for screens to open: an invented premises, walked as far as is asked for by the program's own words.
#pragma once

#include "core/base/result.h"

#include <QMap>
#include <QString>
#include <QTemporaryDir>

namespace proofwalk::screens {

class Jobs {
public:
    /// `program` is proofwalk itself, `fixtures` the folder of premises.
    Jobs(QString program, QString fixtures);

    /// A fresh copy of the job that states.txt calls so: "corner-shop@Walking: doors". Errors: jobs.no-such-place; what
    /// the program said when it failed (jobs.failed).
    Result<QString> fresh(const QString& asked);

private:
    Result<QString> make(const QString& asked);
    Result<void> run(const QStringList& words);
    Result<QString> linesUpTo(const QString& folder, const QString& place);
    Result<QString> lengthened(const QString& premises);

    QString m_program, m_fixtures;
    QTemporaryDir m_folder;
    QMap<QString, QString> m_made;
    int m_copies = 0;
};

} // namespace proofwalk::screens
