// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/reportdesk.h"

#include "core/base/file.h"
#include "core/journal/home.h"
#include "core/report/examinedwords.h"
#include "qml/models/desk.h"
#include "qml/models/installerkey.h"
#include "qml/models/telling.h"
#include "qml/parts/words.h"

#include <QFileInfo>

#include <memory>

namespace proofwalk::models {
namespace {

struct Made {
    Result<report::Handed> handed;
    std::string pdf;
};

/// All of it by the job's thread, where nothing else can be recorded meanwhile.
Made handOver(walk::Job& job, const report::Handing& handing, const std::string& passphrase)
{
    // What can be wrong without the passphrase is told before it is tried.
    if (auto may = report::mayHandOver(job, handing); !may) return {passOn(may), {}};
    auto folder = identityFolder();
    if (!folder) return {passOn(folder), {}};
    auto machine = journal::machineKey();
    if (!machine) return {passOn(machine), {}};
    auto identity = journal::openIdentity(*folder, passphrase);
    if (!identity) return {passOn(identity), {}};
    Made made{report::handOver(job, **machine, *identity, parts::book(), handing), {}};
    if (!made.handed) return made;
    if (auto bytes = base::readFile(handing.out)) made.pdf = std::move(*bytes);
    return made;
}

Result<std::string> draftOf(const walk::Job& job, bool interim)
{
    journal::IdentityFacts signer;
    if (auto folder = identityFolder())
        if (auto facts = journal::describeIdentity(*folder)) signer = *facts;
    return report::draftReport(job, parts::book(), signer, interim);
}

struct Checked {
    QStringList lines;
    bool sound = false;
};

Checked check(const std::string& path)
{
    Checked checked;
    auto examined = report::examine(path);
    if (!examined) {
        checked.lines << sentence(examined.error());
        return checked;
    }
    checked.sound = examined->sound();
    for (const std::string& line : report::tellSoundness(*examined, parts::book())) checked.lines << text(line);
    const std::string name = std::filesystem::path(path).filename().string();
    for (const std::string& line : report::tellContents(*examined, parts::book(), name)) checked.lines << text(line);
    return checked;
}

} // namespace

ReportDesk::ReportDesk(QObject* parent) : QObject(parent), m_asking(this, [this] { Q_EMIT changed(); })
{
    connect(&m_paper, &PaperBook::loaded, this, &ReportDesk::pagesChanged);
    connect(&Desk::instance(), &Desk::opened, this, &ReportDesk::interimChanged);
}

void ReportDesk::setInterim(bool interim)
{
    if (interim == m_interim) return;
    m_interim = interim;
    m_file.clear();
    m_checks.clear();
    m_paper.show({});
    Q_EMIT interimChanged();
    Q_EMIT changed();
}

QString ReportDesk::proposed() const
{
    const auto job = Desk::instance().job();
    if (job == nullptr) return {};
    const std::filesystem::path base = std::filesystem::absolute(job->file()).replace_extension();
    const std::string day = base::localDate(base::now());
    const QString stem =
        text(base.string()) + (m_interim ? QStringLiteral("-interim-") : QStringLiteral("-report-")) + text(day);
    QString name = stem + QStringLiteral(".pdf");
    for (int again = 2; QFileInfo::exists(name) && again < 1000; ++again)
        name = stem + QStringLiteral("-%1.pdf").arg(again);
    return name;
}

QString ReportDesk::fileName() const { return QFileInfo(m_file).fileName(); }

QString ReportDesk::sheetWords(int page, int pages) const
{
    if (pages == 0) return {};
    return parts::phrase("window.report.sheet", {{"page", std::int64_t{page} + 1}, {"pages", std::int64_t{pages}}});
}

void ReportDesk::draft()
{
    if (m_asking.busy()) return;
    m_asking.begin();
    Desk::instance().ask<Result<std::string>>(
        this, [interim = m_interim](walk::Job& job) { return draftOf(job, interim); },
        [this](Result<std::string> drawn) {
            if (drawn) {
                m_drafted = true;
                m_file.clear();
                m_checks.clear();
                m_paper.show(std::move(*drawn));
            }
            m_asking.end(drawn ? QString() : sentence(drawn.error()));
        });
}

void ReportDesk::sign(const QString& path, const QString& passphrase)
{
    if (m_asking.busy()) return;
    m_asking.begin();
    const report::Handing handing{path.trimmed().toStdString(), m_interim};
    Desk::instance().ask<std::shared_ptr<Made>>(
        this,
        [handing, secret = passphrase.toStdString()](walk::Job& job) {
            return std::make_shared<Made>(handOver(job, handing, secret));
        },
        [this, path = path.trimmed()](const std::shared_ptr<Made>& outcome) {
            made(path, outcome->handed, std::move(outcome->pdf));
        });
}

void ReportDesk::made(const QString& path, const Result<report::Handed>& handed, std::string pdf)
{
    if (!handed) return m_asking.end(sentence(handed.error()));
    m_file = path;
    m_drafted = false;
    m_madeWords = m_interim ? parts::phrase("window.report.interim-made")
                            : parts::phrase("standing." + std::string(walk::wordOf(handed->standing)));
    m_paper.show(std::move(pdf));
    m_asking.end();
    Q_EMIT interimChanged(); // another name is proposed now
    Q_EMIT handedOver();
    verify();
}

void ReportDesk::verify()
{
    if (m_asking.busy() || m_file.isEmpty()) return;
    m_asking.begin();
    auto checked = std::make_shared<Checked>();
    Desk::instance().aside([checked, path = m_file.toStdString()] { *checked = check(path); }, this,
                           [this, checked] {
                               m_checks = checked->lines;
                               m_sound = checked->sound;
                               m_asking.end();
                           });
}

} // namespace proofwalk::models
