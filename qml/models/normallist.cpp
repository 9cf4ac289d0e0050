// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/normallist.h"

#include "core/walk/upkeep.h"
#include "qml/models/desk.h"
#include "qml/models/telling.h"
#include "qml/parts/words.h"

#include <algorithm>

namespace proofwalk::models {
namespace {

const walk::Told<walk::OnTestBody>* onTest(const Snapshot& job, const QString& account)
{
    const auto on = walk::accountsOnTest(job.state());
    const auto found =
        std::ranges::find(on, account.toStdString(), [](const auto* told) { return told->body.account; });
    return found == on.end() ? nullptr : *found;
}

NormalRow row(NormalList::Type type, const std::string& key, bool back)
{
    NormalRow made;
    made.type = type;
    made.key = made.title = text(key);
    made.back = back;
    return made;
}

/// Each account once: on test, or off it again.
void addAccounts(const Snapshot& job, std::vector<NormalRow>& rows)
{
    std::vector<std::string> accounts;
    for (const auto& told : job.state().onTests)
        if (job.state().stands(told.fact) && std::ranges::find(accounts, told.body.account) == accounts.end())
            accounts.push_back(told.body.account);
    for (const std::string& account : accounts) {
        const auto* on = onTest(job, text(account));
        NormalRow made = row(NormalList::Account, account, on == nullptr);
        made.title = parts::phrase("window.normal.account", {{"account", account}});
        if (on != nullptr) {
            made.second = parts::phrase("window.normal.on-since", {{"time", base::localTime(on->fact.at)},
                                                                   {"told", job.reveal(on->body.told).toStdString()}});
        } else {
            for (const auto& told : job.state().offTests)
                if (told.body.account == account && job.state().stands(told.fact))
                    made.second =
                        parts::phrase("window.normal.off-since", {{"time", base::localTime(told.fact.at)},
                                                                  {"told", job.reveal(told.body.told).toStdString()}});
        }
        rows.push_back(std::move(made));
    }
}

void addTemporaries(const Snapshot& job, std::vector<NormalRow>& rows)
{
    for (const auto& told : job.state().temporaries) {
        if (!job.state().stands(told.fact)) continue;
        const auto* back = walk::putBackOf(job.state(), told);
        NormalRow made = row(NormalList::Temporary, told.body.name, back != nullptr);
        made.second = back != nullptr
                        ? parts::phrase("window.normal.back-at", {{"time", base::localTime(back->fact.at)}})
                        : parts::phrase("window.normal.since", {{"time", base::localTime(told.fact.at)},
                                                                {"words", job.reveal(told.body.words).toStdString()}});
        rows.push_back(std::move(made));
    }
}

void addAreas(const Snapshot& job, std::vector<NormalRow>& rows)
{
    for (const walk::Rung& rung : job.readiness().rungs) {
        if (rung.code != "ready.state") continue;
        const auto area = std::ranges::find(job.scope().plan->areas, rung.subject, &plan::Area::area);
        NormalRow made = row(NormalList::AreaState, rung.subject, false);
        if (area != job.scope().plan->areas.end() && !area->name.empty()) made.title = text(area->name);
        for (const Argument& argument : rung.arguments)
            if (argument.name == "state")
                made.second = parts::phrase("window.normal.state", {{"state", argument.value}});
        rows.push_back(std::move(made));
    }
}

} // namespace

NormalList::NormalList(QObject* parent) : Rows(parent), m_asking(this, [this] { Q_EMIT askingChanged(); })
{
    connect(&Desk::instance(), &Desk::opened, this, &NormalList::refresh);
    connect(&Desk::instance(), &Desk::published, this, &NormalList::refresh);
    refresh();
}

QString NormalList::toldBefore(const QString& account) const
{
    const auto job = Desk::instance().job();
    const auto* on = job == nullptr ? nullptr : onTest(*job, account);
    return on == nullptr ? QString() : job->reveal(on->body.told);
}

QString NormalList::referenceBefore(const QString& account) const
{
    const auto job = Desk::instance().job();
    const auto* on = job == nullptr ? nullptr : onTest(*job, account);
    return on == nullptr ? QString() : job->reveal(on->body.reference);
}

void NormalList::offTest(const QString& account, const QString& told, const QString& reference)
{
    base::Json::Object command{
        {"do", "off-test"}, {"account", account.toStdString()}, {"told", told.trimmed().toStdString()}};
    if (!reference.trimmed().isEmpty()) command["reference"] = reference.trimmed().toStdString();
    m_asking.tell(std::move(command), [this] { Q_EMIT taken(); });
}

void NormalList::putBack(const QString& name)
{
    m_asking.tell({{"do", "put-back"}, {"name", name.toStdString()}}, [this] { Q_EMIT taken(); });
}

void NormalList::unset(const QString& area)
{
    m_asking.tell({{"do", "state"}, {"area", area.toStdString()}, {"state", "unset"}}, [this] { Q_EMIT taken(); });
}

void NormalList::refresh()
{
    const auto job = Desk::instance().job();
    std::vector<NormalRow> rows;
    if (job != nullptr) {
        addTemporaries(*job, rows);
        addAreas(*job, rows);
        addAccounts(*job, rows);
        std::ranges::stable_partition(rows, [](const NormalRow& each) { return !each.back; });
    }
    replace(std::move(rows));
}

} // namespace proofwalk::models
