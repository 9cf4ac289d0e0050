// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/ladder.h"

#include "core/walk/upkeep.h"
#include "qml/models/desk.h"
#include "qml/models/telling.h"
#include "qml/models/whereabouts.h"
#include "qml/parts/words.h"

#include <QStringList>

#include <algorithm>

namespace proofwalk::models {
namespace {

constexpr int treads = 7;

QString counted(const std::string& code, std::int64_t count)
{
    return parts::phrase(code + (count == 1 ? ".one" : ".many"), {{"count", count}});
}

bool stands(const walk::State& state, const auto& told)
{
    return std::ranges::any_of(told, [&](const auto& each) { return state.stands(each.fact); });
}

/// What of the arrival is not written down; nothing of it blocks.
QStringList leftOfArrival(const Snapshot& job)
{
    const walk::State& state = job.state();
    QStringList left;
    if (!stands(state, state.asFound)) left << parts::phrase("window.ladder.as-found");
    if (!stands(state, state.kit)) left << parts::phrase("window.ladder.kit");
    if (!stands(state, state.clocks)) left << parts::phrase("window.ladder.clocks");
    const bool watched =
        std::ranges::any_of(job.scope().plan->paths, [](const plan::Path& path) { return path.to == "station"; });
    if (watched && !stands(state, state.onTests)) left << parts::phrase("window.ladder.on-test");
    return left;
}

bool begun(const Snapshot& job) { return !job.state().attempts.empty(); }

class Stair {
public:
    explicit Stair(const Snapshot& job) : m_job(job) {}

    TreadRow row(tread::Value tread) const
    {
        TreadRow row;
        row.tread = tread;
        row.depth = tread;
        row.rungs = static_cast<int>(std::ranges::count_if(
            m_job.readiness().rungs, [&](const walk::Rung& rung) { return treadOf(rung) == tread; }));
        switch (tread) {
        case tread::Arrival: arrival(row); break;
        case tread::Plan: plan(row); break;
        case tread::Devices: devices(row); break;
        case tread::Findings: findings(row); break;
        case tread::Normal: normal(row); break;
        case tread::Shown: shown(row); break;
        case tread::Signature: signature(row); break;
        }
        return row;
    }

    bool done(tread::Value tread) const
    {
        if (tread == tread::Arrival) return leftOfArrival(m_job).isEmpty();
        if (tread == tread::Signature) return handedOver() != nullptr;
        return blockingOf(m_job, tread) == 0;
    }

    /// Nothing on it keeps the person from the next; of the arrival that can no longer be said once the walk began.
    bool passable(tread::Value tread) const { return done(tread) || (tread == tread::Arrival && begun(m_job)); }

private:
    static void way(TreadRow& row, bool done, const char* place)
    {
        row.link = parts::phrase(done ? "window.ladder.done-in" : "window.ladder.go-to",
                                 {{"place", parts::phrase(place).toStdString()}});
    }

    void arrival(TreadRow& row) const
    {
        const QStringList left = leftOfArrival(m_job);
        row.title = parts::phrase("window.ladder.arrival");
        row.second = left.isEmpty() ? parts::phrase("window.ladder.arrival-done")
                                    : parts::phrase("window.ladder.arrival-left",
                                                    {{"what", left.join(QStringLiteral(", ")).toStdString()}});
        way(row, left.isEmpty(), "window.ladder.walk-before");
    }

    void plan(TreadRow& row) const
    {
        const int gaps = blockingOf(m_job, tread::Plan);
        row.title = gaps == 0 ? parts::phrase("window.ladder.plan-done") : counted("window.ladder.plan", gaps);
        row.second = parts::phrase(gaps == 0 ? "window.ladder.plan-sound" : "window.ladder.plan-no-sheet");
        way(row, gaps == 0, "window.place.plan");
    }

    void devices(TreadRow& row) const
    {
        // A device may have two rungs and is walked to once; a sequence has one for each of its steps.
        std::vector<std::string> tags;
        std::vector<std::pair<QString, int>> floors;
        std::int64_t steps = 0;
        for (const walk::Rung& rung : m_job.readiness().rungs) {
            if (!rung.blocking || treadOf(rung) != tread::Devices) continue;
            const walk::DeviceView* view = m_job.view(rung.subject);
            if (view == nullptr) {
                ++steps;
                continue;
            }
            if (std::ranges::find(tags, rung.subject) != tags.end()) continue;
            tags.push_back(rung.subject);
            const QString floor = floorName(*m_job.scope().plan, view->device->device->floor);
            auto at = std::ranges::find(floors, floor, &std::pair<QString, int>::first);
            if (at == floors.end()) at = floors.insert(floors.end(), {floor, 0});
            ++at->second;
        }
        QStringList where;
        for (const auto& [floor, count] : floors) where << floor + QStringLiteral(" %1").arg(count);
        if (steps > 0) where << counted("window.ladder.sequence-steps", steps);
        // What has no sheet was not walked; it stands among the gaps of the plan.
        const std::int64_t without = std::ranges::count(m_job.scope().devices, nullptr, &walk::ScopeDevice::kind);
        const auto all = static_cast<std::int64_t>(m_job.views().size()) - without;
        if (without > 0) where << counted("window.ladder.without-sheet", without);
        row.title = !tags.empty() ? counted("window.ladder.devices", static_cast<std::int64_t>(tags.size()))
                  : steps > 0     ? parts::phrase("window.ladder.sequences")
                                  : counted("window.ladder.devices-done", all);
        row.second =
            where.isEmpty() ? parts::phrase("window.ladder.devices-answered") : where.join(QStringLiteral(", "));
        way(row, tags.empty() && steps == 0, "window.place.walk");
    }

    void findings(TreadRow& row) const
    {
        const int open = blockingOf(m_job, tread::Findings);
        row.title = open == 0 ? parts::phrase("window.ladder.findings-done") : counted("window.ladder.findings", open);
        const auto accepted = std::ranges::count_if(m_job.readiness().rungs, [](const walk::Rung& rung) {
            return rung.code == "ready.finding-accepted" || rung.code == "ready.too-close-accepted";
        });
        row.second = open == 0 && accepted > 0 ? counted("window.ladder.findings-accepted", accepted)
                   : open == 0 && row.rungs == 0 && m_job.findings().empty()
                       ? parts::phrase("window.ladder.no-findings")
                       : parts::phrase("window.ladder.findings-how");
        way(row, open == 0, "window.place.findings");
    }

    void normal(TreadRow& row) const
    {
        QStringList left;
        const auto back = static_cast<std::int64_t>(walk::notPutBack(m_job.state()).size());
        if (back > 0) left << counted("window.to-put-back", back);
        for (const auto* told : walk::accountsOnTest(m_job.state()))
            left << parts::phrase("window.ladder.account-on-test", {{"account", told->body.account}});
        for (const walk::Rung& rung : m_job.readiness().rungs)
            if (rung.code == "ready.state") left << sentenceOf(rung);
        row.title = parts::phrase("window.ladder.normal");
        row.second = left.isEmpty() ? parts::phrase("window.ladder.normal-done") : left.join(QStringLiteral(", "));
        way(row, left.isEmpty(), "window.ladder.after");
    }

    void shown(TreadRow& row) const
    {
        QStringList topics;
        for (const auto& told : m_job.state().shown)
            if (m_job.state().stands(told.fact)) topics << text(told.body.topic);
        row.title = parts::phrase("window.ladder.shown");
        row.second = topics.isEmpty() ? parts::phrase("window.ladder.shown-what") : topics.join(QStringLiteral(", "));
        way(row, !topics.isEmpty(), "window.place.handover");
    }

    const walk::Told<walk::HandedOverBody>* handedOver() const
    {
        const walk::Told<walk::HandedOverBody>* last = nullptr;
        for (const auto& told : m_job.state().handovers)
            if (told.body.form == "final") last = &told;
        return last;
    }

    void signature(TreadRow& row) const
    {
        row.title = parts::phrase("window.ladder.signature");
        if (const auto* told = handedOver()) {
            row.second = parts::phrase("window.ladder.handed-over", {{"time", base::localTime(told->fact.at)},
                                                                     {"day", words::longDate(told->fact.at)}});
        } else if (!m_job.readiness().blocked()) {
            row.second = parts::phrase("window.ladder.ready-to-sign");
        } else if (blockingOf(m_job, tread::Signature)
                   == std::ranges::count(m_job.readiness().rungs, true, &walk::Rung::blocking)) {
            row.second = parts::phrase("window.ladder.customer-next");
        } else {
            row.second = parts::phrase("window.ladder.opens-last");
        }
    }

    const Snapshot& m_job;
};

} // namespace

Ladder::Ladder(QObject* parent) : Rows(parent)
{
    connect(&Desk::instance(), &Desk::opened, this, &Ladder::refresh);
    connect(&Desk::instance(), &Desk::published, this, &Ladder::refresh);
    refresh();
}

void Ladder::go(int tread) const
{
    Whereabouts& whereabouts = Whereabouts::instance();
    switch (tread) {
    case tread::Arrival: return whereabouts.go(Whereabouts::Walk, QStringLiteral("arrival"));
    case tread::Plan: return whereabouts.go(Whereabouts::Plan);
    case tread::Devices: return whereabouts.go(Whereabouts::Walk);
    case tread::Findings: return whereabouts.go(Whereabouts::Findings);
    case tread::Normal: return whereabouts.go(Whereabouts::Handover, QStringLiteral("normal"));
    case tread::Shown: return whereabouts.go(Whereabouts::Handover, QStringLiteral("shown"));
    default: return whereabouts.go(Whereabouts::Handover, QStringLiteral("sign"));
    }
}

void Ladder::refresh()
{
    const auto job = Desk::instance().job();
    if (job == nullptr) return replace({});
    const Stair stair(*job);
    int here = 0;
    while (here < tread::Signature && stair.passable(static_cast<tread::Value>(here))) ++here;
    std::vector<TreadRow> rows;
    m_climbed = 0;
    for (int each = treads - 1; each >= 0; --each) {
        const auto tread = static_cast<tread::Value>(each);
        TreadRow row = stair.row(tread);
        const bool done = stair.done(tread);
        row.treadState = done ? Done : each == here ? Here : Ahead;
        m_climbed += done && each < tread::Signature ? 1 : 0;
        rows.push_back(std::move(row));
    }
    m_here = here;
    m_missing = static_cast<int>(std::ranges::count(job->readiness().rungs, true, &walk::Rung::blocking));
    m_climbedWords =
        parts::phrase("window.ladder.climbed", {{"count", std::int64_t{m_climbed}}, {"all", std::int64_t{treads - 1}}});
    m_missingWords = m_missing == 0 ? QString() : counted("window.ladder.missing", m_missing);
    m_standingWords = parts::phrase("standing." + std::string(walk::wordOf(job->readiness().standing)));
    replace(std::move(rows));
    Q_EMIT changed();
}

} // namespace proofwalk::models
