// SPDX-License-Identifier: GPL-3.0-or-later
// What the card shows, computed afresh after each commit.
#include "core/base/text.h"
#include "core/report/filling.h"
#include "core/walk/nextdevice.h"
#include "core/walk/order.h"
#include "qml/models/desk.h"
#include "qml/models/devicecard.h"
#include "qml/models/telling.h"
#include "qml/parts/words.h"

#include <algorithm>

namespace proofwalk::models {
namespace {

using catalogue::StepKind;

/// A step's name as people read it: "tamper shut".
std::string titleOf(const walk::StepKey& key)
{
    std::string title = key.name;
    std::ranges::replace(title, '-', ' ');
    return title;
}

std::string titleOf(const walk::Stage& stage)
{
    std::vector<std::string> titles;
    for (const walk::StepKey& key : stage.steps) titles.push_back(titleOf(key));
    return base::join(titles, ", ");
}

DeviceCard::Task taskOf(StepKind kind)
{
    switch (kind) {
    case StepKind::act:
    case StepKind::see:
    case StepKind::inspect: return DeviceCard::Look;
    case StepKind::read: return DeviceCard::Read;
    case StepKind::time: return DeviceCard::Time;
    case StepKind::trial: return DeviceCard::Trials;
    case StepKind::listen: return DeviceCard::Listen;
    case StepKind::photograph: return DeviceCard::Photograph;
    case StepKind::confirm: return DeviceCard::Confirm;
    }
    return DeviceCard::Look;
}

std::string statesOf(const catalogue::Step& step)
{
    std::vector<std::string> words;
    for (const auto state : step.states)
        words.push_back(parts::book().phrase("window.state." + std::string(catalogue::wordOf(state))));
    return base::join(words, parts::book().phrase("window.or"));
}

/// How much of a proof under way has been answered: the foot of its window is filled so far.
double progressOf(const walk::DeviceView& view)
{
    return view.steps == 0 ? 0 : static_cast<double>(view.answered) / view.steps;
}

std::vector<walk::StepView> viewsOf(const walk::State& state, const walk::Stage& stage)
{
    std::vector<walk::StepView> views;
    for (const walk::StepKey& key : stage.steps) views.push_back(walk::viewStep(state, key));
    return views;
}

/// "Not applicable" if there is none.
walk::Verdict worstOf(const std::vector<walk::StepView>& views)
{
    walk::Verdict worst = walk::Verdict::notApplicable;
    for (const walk::StepView& view : views) worst = std::min(worst, view.verdict);
    return worst;
}

StageRow rowOf(const Snapshot& job, const walk::Stage& stage, const std::vector<walk::StepView>& views)
{
    StageRow row;
    row.title = text(titleOf(stage));
    row.answered = stage.answered;
    row.possible = stage.possible;
    for (const walk::StepView& view : views) {
        if (view.newest == nullptr) continue;
        row.seen = seenOf(view.newest->answer.how);
        if (const auto figure = report::readingText(view.newest->answer); !figure.empty()) row.figure = text(figure);
    }
    row.verdict = markOf(worstOf(views));
    if (!stage.possible)
        row.needs = parts::phrase("window.needs", {{"states", statesOf(job.scope().step(stage.steps.front())->step)}});
    return row;
}

} // namespace

void ProofList::show(const walk::DeviceView* view)
{
    std::vector<ProofRow> rows;
    for (int i = 0; i < 4; ++i) {
        const auto kind = static_cast<walk::ProofKind>(i);
        ProofRow row;
        row.kind = i;
        row.word = parts::phrase("proof." + std::string(walk::wordOf(kind)));
        if (view != nullptr) {
            const walk::ProofView& proof = view->proof(kind);
            row.state = proofOf(proof.state);
            row.seen = proof.standIn != nullptr ? parts::seen::ByItsLike : seenOf(proof.how);
            row.progress = proof.state == walk::ProofState::underWay ? progressOf(*view) : 0;
        }
        rows.push_back(std::move(row));
    }
    replace(std::move(rows));
}

void DeviceCard::refresh()
{
    m_job = Desk::instance().job();
    const walk::DeviceView* view = m_job == nullptr ? nullptr : m_job->view(m_tag.toStdString());
    clear();
    m_found = view != nullptr;
    if (m_found) {
        describe(*m_job, *view);
        describeStages(*m_job, *view);
        describeInHand(*m_job, *view);
    }
    m_proofs.show(view);
    Q_EMIT changed();
}

void DeviceCard::clear()
{
    m_floor = m_room = m_position = m_kind = m_title = m_stopWords = m_provedWords = m_zoneWords = m_purpose =
        m_verdictWord = m_subject = m_caution = m_pattern = m_needsWords = m_answersWords = m_doneWords = m_aheadWords =
            m_nextTag = m_nextWords = QString();
    m_inHand = -1;
    m_trialsWanted = m_extras = 0;
    m_task = Nothing;
    m_possible = m_sheet = false;
    m_stages.clear();
    m_peers.clear();
    if (!m_found) {
        m_stageRows.show({});
        m_steps.show({});
    }
}

void DeviceCard::describe(const Snapshot& job, const walk::DeviceView& view)
{
    const walk::ScopeDevice& device = *view.device;
    const plan::Device& row = *device.device;
    m_sheet = device.kind != nullptr;
    m_floor = floorName(*job.scope().plan, row.floor);
    m_room = roomName(row.room);
    m_position = text(row.position);
    m_kind = text(row.kind);
    m_title = kindTitle(device);
    m_verdict = markOf(view.verdict);
    m_verdictWord = models::verdictWord(view.verdict);
    const auto promised = std::ranges::count(device.promised, true);
    const auto lit = std::ranges::count(view.proofs, walk::ProofState::lit, &walk::ProofView::state);
    m_provedWords = parts::phrase("window.proved", {{"some", std::int64_t{lit}}, {"all", std::int64_t{promised}}});
    const auto& order = job.order();
    const auto stop = std::ranges::find(order, static_cast<std::size_t>(&device - job.scope().devices.data()));
    m_stopWords = parts::phrase("window.stop", {{"at", std::int64_t{stop - order.begin() + 1}},
                                                {"all", static_cast<std::int64_t>(order.size())}});
    if (device.zone != nullptr) {
        m_zoneWords = parts::phrase(device.zone->label.empty() ? "window.zone" : "window.zone-named",
                                    {{"zone", device.zone->zone}, {"label", device.zone->label}});
        m_purpose = text(device.zone->purpose);
        if (device.zone->delay == "on-route" || device.zone->delay == "entry")
            m_purpose += parts::phrase("window.delay." + device.zone->delay);
    }
    if (const auto* next = walk::nextDevice(job.state(), row.tag); next != nullptr && next != &device) {
        m_nextTag = text(next->device->tag);
        const bool same = next->device->room == row.room && next->device->floor == row.floor;
        m_nextWords = parts::phrase(same ? "window.next-here" : "window.next-there",
                                    {{"tag", next->device->tag},
                                     {"kind", kindTitle(*next).toStdString()},
                                     {"floor", floorName(*job.scope().plan, next->device->floor).toStdString()},
                                     {"room", roomName(next->device->room).toStdString()}});
    }
}

void DeviceCard::describeStages(const Snapshot& job, const walk::DeviceView& view)
{
    if (view.device->kind == nullptr) {
        m_stageRows.show({});
        m_steps.show({});
        return;
    }
    m_stages = walk::stagesOf(job.state(), *view.device, m_extended);
    m_extras = static_cast<int>(std::ranges::count_if(
        view.device->steps, [&](const walk::StepKey& key) { return !job.scope().step(key)->step.core; }));
    const std::size_t waits = walk::stageInHand(m_stages);
    m_inHand = stage(m_chosen) != nullptr ? m_chosen : waits < m_stages.size() ? static_cast<int>(waits) : -1;
    std::vector<StageRow> rows;
    std::int64_t done = 0, ahead = 0;
    std::string next;
    walk::Verdict worst = walk::Verdict::notApplicable;
    for (std::size_t i = 0; i < m_stages.size(); ++i) {
        const auto views = viewsOf(job.state(), m_stages[i]);
        rows.push_back(rowOf(job, m_stages[i], views));
        rows.back().here = static_cast<int>(i) == m_inHand;
        if (rows.back().here) continue;
        const auto steps = static_cast<std::int64_t>(m_stages[i].steps.size());
        (m_stages[i].answered ? done : ahead) += steps;
        if (m_stages[i].answered) worst = std::min(worst, worstOf(views));
        if (!m_stages[i].answered && next.empty()) {
            next = titleOf(m_stages[i]);
            ahead -= steps;
        }
    }
    m_doneMark = markOf(worst);
    if (done > 0) m_doneWords = parts::phrase(done == 1 ? "window.step-done" : "window.steps-done", {{"count", done}});
    if (!next.empty())
        m_aheadWords =
            parts::phrase(ahead == 0 ? "window.ahead-one" : "window.ahead-more", {{"next", next}, {"count", ahead}});
    m_stageRows.show(std::move(rows));
}

void DeviceCard::describeInHand(const Snapshot& job, const walk::DeviceView& view)
{
    const walk::Stage* now = stage(m_inHand);
    std::vector<StepRow> rows;
    if (now != nullptr) {
        for (const walk::StepKey& key : now->steps) {
            const catalogue::Step& step = job.scope().step(key)->step;
            StepRow row;
            row.name = text(key.name);
            row.signal = text(key.signal);
            row.act = text(step.act);
            row.expect = text(step.expect);
            row.never = text(step.never);
            rows.push_back(std::move(row));
        }
        const walk::ScopeStep& first = *job.scope().step(now->steps.front());
        m_task = taskOf(first.step.kind);
        m_caution = text(first.step.caution);
        m_pattern = text(first.step.pattern);
        m_trialsWanted = first.step.trialsWanted;
        m_possible = now->possible;
        const auto& zones = job.scope().plan->zones;
        const auto zone = std::ranges::find(zones, first.key.subject, &plan::Zone::id);
        m_subject = zone == zones.end() ? m_tag : QStringLiteral("zone ") + text(zone->zone);
        if (!m_possible)
            m_needsWords = parts::phrase(
                "window.needs-now",
                {{"states", statesOf(first.step)},
                 {"state",
                  parts::book().phrase("window.state."
                                       + std::string(catalogue::wordOf(walk::stateFor(job.state(), first.key))))}});
        std::vector<std::string> open;
        for (const walk::ProofKind proof : view.openProofs())
            open.push_back(parts::book().phrase("proof." + std::string(walk::wordOf(proof))));
        m_answersWords = open.empty() ? text(titleOf(*now))
                                      : parts::phrase("window.answers",
                                                      {{"steps", titleOf(*now)}, {"open", base::join(open, ", ")}});
        findPeers(job, view);
    }
    m_steps.show(std::move(rows));
}

/// Those that a person standing here sees at once: same room, same kind, the same steps waiting.
void DeviceCard::findPeers(const Snapshot& job, const walk::DeviceView& view)
{
    const walk::Stage& now = m_stages[static_cast<std::size_t>(m_inHand)];
    const auto ownName = [](const walk::StepKey& a, const walk::StepKey& b) {
        return a.name == b.name && a.signal == b.signal;
    };
    const bool own = std::ranges::all_of(
        now.steps, [&](const walk::StepKey& key) { return key.subject == view.device->device->id; });
    if (!own || !now.possible || (m_task != Look && m_task != Confirm)) return;
    for (const walk::ScopeDevice& other : job.scope().devices) {
        const bool alike = &other != view.device && other.kind == view.device->kind
                        && other.device->room == view.device->device->room
                        && other.device->floor == view.device->device->floor;
        if (!alike) continue;
        const auto stages = walk::stagesOf(job.state(), other, false);
        const std::size_t at = walk::stageInHand(stages);
        if (at < stages.size() && stages[at].possible && std::ranges::equal(stages[at].steps, now.steps, ownName))
            m_peers.push_back(other.device->tag);
    }
}

} // namespace proofwalk::models
