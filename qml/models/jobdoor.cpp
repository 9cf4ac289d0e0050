// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/jobdoor.h"

#include "core/base/datafolder.h"
#include "core/walk/starting.h"
#include "qml/models/desk.h"
#include "qml/models/jobshelf.h"
#include "qml/models/telling.h"
#include "qml/parts/words.h"

#include <QDir>
#include <QFileInfo>

#include <memory>

namespace proofwalk::models {
namespace {

std::filesystem::path pathOf(const QString& typed)
{
    QString path = typed.trimmed();
    if (path.startsWith(QStringLiteral("~/"))) path = QDir::homePath() + path.mid(1);
    return QDir::cleanPath(path).toStdString();
}

/// What keeps the plan from becoming a job, as sentences; none if it may.
QStringList wrongWith(const std::filesystem::path& plan)
{
    QStringList wrong;
    auto files = catalogue::readFolder(base::dataFolder() / "catalogue");
    if (!files) return {sentence(files.error())};
    auto reviewed = walk::readAndReview(plan, *files);
    if (!reviewed) {
        for (const Error& error : reviewed.error()) wrong << sentence(error);
        return wrong;
    }
    for (const review::Remark& remark : reviewed->remarks)
        if (remark.severity == review::Severity::error)
            wrong << sentence({remark.code, remark.where, remark.arguments});
    return wrong;
}

} // namespace

JobDoor::JobDoor(QObject* parent) : QObject(parent), m_asking(this, [this] { Q_EMIT changed(); }) {}

void JobDoor::open(const QString& file)
{
    if (m_asking.busy()) return;
    m_problems.clear();
    m_asking.begin();
    Desk::instance().open(pathOf(file), this, [this](const Result<void>& opened) {
        m_asking.end(opened ? QString() : sentence(opened.error()));
    });
}

void JobDoor::start(const QString& plan, const QString& file)
{
    if (m_asking.busy()) return;
    m_problems.clear();
    m_asking.begin();
    auto wrong = std::make_shared<QStringList>();
    Desk::instance().aside([wrong, folder = pathOf(plan)] { *wrong = wrongWith(folder); }, this,
                           [this, wrong, folder = pathOf(plan), path = pathOf(file)] {
                               m_problems = *wrong;
                               if (!wrong->isEmpty()) return m_asking.end(parts::phrase("window.start.plan-wrong"));
                               Desk::instance().start(path, folder, this, [this](const Result<void>& started) {
                                   m_asking.end(started ? QString() : sentence(started.error()));
                               });
                           });
}

void JobDoor::close()
{
    if (Desk::instance().job() == nullptr || m_asking.busy()) return;
    JobShelf::instance().putAway();
    Desk::instance().close();
}

QString JobDoor::proposed(const QString& plan) const
{
    const QFileInfo folder(QString::fromStdString(pathOf(plan).string()));
    if (plan.trimmed().isEmpty() || folder.fileName().isEmpty()) return {};
    const QString stem = folder.absolutePath() + QLatin1Char('/') + folder.fileName();
    QString name = stem + QStringLiteral(".walk");
    for (int again = 2; QFileInfo::exists(name) && again < 1000; ++again)
        name = stem + QStringLiteral("-%1.walk").arg(again);
    return name;
}

QString JobDoor::folder() const
{
    const auto& jobs = JobShelf::instance().jobs();
    return jobs.empty() ? QDir::homePath() : QFileInfo(jobs.front().file).absolutePath();
}

void reopen()
{
    JobShelf& shelf = JobShelf::instance();
    shelf.recall();
    const QString named = qEnvironmentVariable("PROOFWALK_JOB");
    const QString file = named.isEmpty() ? shelf.open() : named;
    if (file.isEmpty() || (named.isEmpty() && !QFileInfo::exists(file))) return;
    static JobDoor door; // lives as long as what it asks
    door.open(file);
}

} // namespace proofwalk::models
