// SPDX-License-Identifier: GPL-3.0-or-later
// The folders and jobs of one folder, to choose a job or a plan from. Read by the job's thread.
#pragma once

#include "qml/models/rows.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct FileRow {
    Q_GADGET
    Q_PROPERTY(QString label MEMBER label)
    Q_PROPERTY(QString path MEMBER path)  ///< whole
    Q_PROPERTY(int type MEMBER type)      ///< FileList::Type
    Q_PROPERTY(QString second MEMBER second)

public:
    QString label, path, second;
    int type = 0;
    friend bool operator==(const FileRow&, const FileRow&) = default;
};

class FileList : public PROOFWALK_ROWS(FileRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString folder READ folder WRITE setFolder NOTIFY folderChanged)
    Q_PROPERTY(QString above READ above NOTIFY folderChanged) ///< empty at the top
    Q_PROPERTY(bool plans READ plans WRITE setPlans NOTIFY folderChanged) ///< folders of plans are wanted, not jobs
    Q_PROPERTY(QString emptyWords READ emptyWords NOTIFY read)

public:
    enum Type { Folder, Plan, Job };
    Q_ENUM(Type)

    explicit FileList(QObject* parent = nullptr) : Rows(parent) {}
    QString folder() const { return m_folder; }
    void setFolder(const QString& folder);
    QString above() const;
    bool plans() const { return m_plans; }
    void setPlans(bool plans);
    QString emptyWords() const { return m_emptyWords; }

Q_SIGNALS:
    void folderChanged();
    void read();

private:
    void refresh();

    QString m_folder, m_emptyWords;
    bool m_plans = false;
};

} // namespace proofwalk::models
