// SPDX-License-Identifier: GPL-3.0-or-later
// The folders and photographs of one folder, to choose a picture from. Read by the job's thread: a card in a reader is
// slow.
#pragma once

#include "qml/models/rows.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct FolderRow {
    Q_GADGET
    Q_PROPERTY(QString label MEMBER label)
    Q_PROPERTY(QString path MEMBER path) ///< whole
    Q_PROPERTY(bool inner MEMBER inner) ///< a folder; else a picture
    Q_PROPERTY(QString second MEMBER second) ///< when it was taken: "24 Nov 09:34"

public:
    QString label, path, second;
    bool inner = false;
    friend bool operator==(const FolderRow&, const FolderRow&) = default;
};

class FolderList : public PROOFWALK_ROWS(FolderRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString folder READ folder WRITE setFolder NOTIFY folderChanged) ///< its whole path
    Q_PROPERTY(QString above READ above NOTIFY folderChanged) ///< the folder it lies in; empty at the top
    Q_PROPERTY(bool reading READ reading NOTIFY read)
    Q_PROPERTY(QString emptyWords READ emptyWords NOTIFY read) ///< why there is nothing to choose; else empty

public:
    /// Begins where a picture was last chosen, else where this machine keeps pictures.
    explicit FolderList(QObject* parent = nullptr);
    QString folder() const { return m_folder; }
    void setFolder(const QString& folder);
    QString above() const;
    bool reading() const { return m_reading; }
    QString emptyWords() const { return m_emptyWords; }

Q_SIGNALS:
    void folderChanged();
    void read();

private:
    void refresh();

    QString m_folder, m_emptyWords;
    bool m_reading = false;
};

} // namespace proofwalk::models
