// SPDX-License-Identifier: GPL-3.0-or-later
// The report: looked at before it is signed, signed and written beside the job, looked at again, verified.
#pragma once

#include "core/report/handing.h"
#include "qml/models/asking.h"
#include "qml/models/paperbook.h"

#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

class ReportDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(
        bool interim READ interim WRITE setInterim NOTIFY interimChanged) ///< an interim sheet; else the final report
    Q_PROPERTY(QString proposed READ proposed NOTIFY interimChanged) ///< a name beside the job that is not taken yet
    Q_PROPERTY(int pages READ pages NOTIFY pagesChanged)   ///< 0 while there is nothing to look at
    Q_PROPERTY(bool drafted READ drafted NOTIFY changed)   ///< what is looked at is not signed
    Q_PROPERTY(QString file READ file NOTIFY changed)      ///< the file that was made; empty before
    Q_PROPERTY(QString fileName READ fileName NOTIFY changed)
    Q_PROPERTY(QString madeWords READ madeWords NOTIFY changed)
    Q_PROPERTY(QStringList checks READ checks NOTIFY changed) ///< what verifying found, a sentence each
    Q_PROPERTY(bool sound READ sound NOTIFY changed)
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)

public:
    explicit ReportDesk(QObject* parent = nullptr);
    bool interim() const { return m_interim; }
    void setInterim(bool interim);
    QString proposed() const;
    int pages() const { return m_paper.pages(); }
    bool drafted() const { return m_drafted; }
    QString file() const { return m_file; }
    QString fileName() const;
    QString madeWords() const { return m_madeWords; }
    QStringList checks() const { return m_checks; }
    bool sound() const { return m_sound; }
    bool busy() const { return m_asking.busy(); }
    QString problem() const { return m_asking.problem(); }
    PaperBook& paper() { return m_paper; }

    /// "sheet 2 of 7", of a page numbered from 0; empty while there is none.
    Q_INVOKABLE QString sheetWords(int page, int pages) const;
    /// Draws the sheets as they would be signed now.
    Q_INVOKABLE void draft();
    /// Signs, writes, records; then shows the pages of the file and verifies it. The passphrase is not kept.
    Q_INVOKABLE void sign(const QString& path, const QString& passphrase);
    /// Reads the file from the disk again and checks it.
    Q_INVOKABLE void verify();

Q_SIGNALS:
    void changed();
    void interimChanged();
    void pagesChanged();
    void handedOver();

private:
    void made(const QString& path, const Result<report::Handed>& handed, std::string pdf);

    PaperBook m_paper;
    bool m_interim = false, m_drafted = false, m_sound = false;
    QString m_file, m_madeWords;
    QStringList m_checks;
    Asking m_asking;
};

} // namespace proofwalk::models
