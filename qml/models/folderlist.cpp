// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/folderlist.h"

#include "qml/models/desk.h"
#include "qml/models/whereabouts.h"
#include "qml/parts/words.h"

#include <QDateTime>
#include <QDir>
#include <QLocale>
#include <QStandardPaths>

#include <memory>

namespace proofwalk::models {
namespace {

const QString keptAs = QStringLiteral("folder-of-photographs");

struct Contents {
    std::vector<FolderRow> rows;
    bool readable = false;
};

Contents contentsOf(const QString& folder)
{
    Contents contents;
    const QDir dir(folder);
    contents.readable = dir.exists() && dir.isReadable();
    const auto add = [&contents](const QFileInfo& each) {
        FolderRow row;
        row.label = each.fileName();
        row.path = each.absoluteFilePath();
        row.inner = each.isDir();
        if (!row.inner)
            row.second = QLocale(QLocale::English).toString(each.lastModified(), QStringLiteral("d MMM yyyy HH:mm"));
        contents.rows.push_back(std::move(row));
    };
    for (const QFileInfo& each : dir.entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name | QDir::IgnoreCase))
        add(each);
    const QStringList pictures{QStringLiteral("*.jpg"), QStringLiteral("*.jpeg"), QStringLiteral("*.png")};
    for (const QFileInfo& each : dir.entryInfoList(pictures, QDir::Files, QDir::Time)) add(each); // newest first
    return contents;
}

} // namespace

FolderList::FolderList(QObject* parent) : Rows(parent)
{
    QString start = Whereabouts::instance().draft(keptAs);
    if (!QDir(start).exists() || start.isEmpty())
        start = QStandardPaths::writableLocation(QStandardPaths::PicturesLocation);
    if (!QDir(start).exists() || start.isEmpty()) start = QDir::homePath();
    m_folder = QDir(start).absolutePath();
    refresh();
}

QString FolderList::above() const
{
    QDir dir(m_folder);
    return dir.cdUp() ? dir.absolutePath() : QString();
}

void FolderList::setFolder(const QString& folder)
{
    if (folder == m_folder || folder.isEmpty()) return;
    m_folder = folder;
    Whereabouts::instance().setDraft(keptAs, folder);
    Q_EMIT folderChanged();
    refresh();
}

void FolderList::refresh()
{
    auto contents = std::make_shared<Contents>();
    m_reading = true;
    Q_EMIT read();
    Desk::instance().aside([folder = m_folder, contents] { *contents = contentsOf(folder); }, this,
                           [this, folder = m_folder, contents] {
                               if (folder != m_folder) return; // another was opened meanwhile
                               m_reading = false;
                               m_emptyWords = !contents->readable    ? parts::phrase("window.pictures.unreadable")
                                            : contents->rows.empty() ? parts::phrase("window.pictures.none")
                                                                     : QString();
                               replace(std::move(contents->rows));
                               Q_EMIT read();
                           });
}

} // namespace proofwalk::models
