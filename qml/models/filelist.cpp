// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/filelist.h"

#include "qml/models/desk.h"
#include "qml/parts/words.h"

#include <QDir>

#include <memory>

namespace proofwalk::models {
namespace {

/// A folder that holds more is not listed to its end: its path is typed then.
constexpr std::size_t mostRows = 500;

FileRow row(const QFileInfo& info, FileList::Type type, const QString& second = {})
{
    FileRow made;
    made.label = info.fileName();
    made.path = info.absoluteFilePath();
    made.type = type;
    made.second = second;
    return made;
}

std::vector<FileRow> rowsOf(const QString& folder, bool plans)
{
    std::vector<FileRow> rows;
    const QDir dir(folder);
    for (const QFileInfo& info : dir.entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name | QDir::IgnoreCase)) {
        const bool plan = plans && QFileInfo::exists(info.absoluteFilePath() + QStringLiteral("/devices.csv"));
        rows.push_back(plan ? row(info, FileList::Plan, parts::phrase("window.files.plan"))
                            : row(info, FileList::Folder));
        if (rows.size() >= mostRows) return rows;
    }
    if (plans) return rows;
    for (const QFileInfo& info :
         dir.entryInfoList({QStringLiteral("*.walk")}, QDir::Files, QDir::Name | QDir::IgnoreCase)) {
        rows.push_back(row(info, FileList::Job, parts::phrase("window.files.job")));
        if (rows.size() >= mostRows) return rows;
    }
    return rows;
}

} // namespace

void FileList::setFolder(const QString& folder)
{
    const QString clean = QDir::cleanPath(folder.trimmed());
    if (folder.trimmed().isEmpty() || clean == m_folder) return;
    m_folder = clean;
    Q_EMIT folderChanged();
    refresh();
}

void FileList::setPlans(bool plans)
{
    if (plans == m_plans) return;
    m_plans = plans;
    Q_EMIT folderChanged();
    refresh();
}

QString FileList::above() const
{
    QDir dir(m_folder);
    return !m_folder.isEmpty() && dir.cdUp() ? dir.absolutePath() : QString();
}

void FileList::refresh()
{
    if (m_folder.isEmpty()) return;
    auto found = std::make_shared<std::vector<FileRow>>();
    auto readable = std::make_shared<bool>(false);
    Desk::instance().aside(
        [found, readable, folder = m_folder, plans = m_plans] {
            *readable = QDir(folder).isReadable();
            if (*readable) *found = rowsOf(folder, plans);
        },
        this,
        [this, found, readable, folder = m_folder] {
            if (folder != m_folder) return;
            m_emptyWords = !*readable     ? parts::phrase("window.files.unreadable")
                         : found->empty() ? parts::phrase("window.files.empty")
                                          : QString();
            replace(std::move(*found));
            Q_EMIT read();
        });
}

} // namespace proofwalk::models
