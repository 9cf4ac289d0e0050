// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/walklist.h"

#include "core/walk/nextdevice.h"
#include "core/walk/upkeep.h"
#include "qml/models/desk.h"
#include "qml/models/telling.h"
#include "qml/models/whereabouts.h"
#include "qml/parts/words.h"

#include <algorithm>

namespace proofwalk::models {
namespace {

QString someOf(std::size_t some, std::size_t all)
{
    return parts::phrase("window.some-of",
                         {{"some", static_cast<std::int64_t>(some)}, {"all", static_cast<std::int64_t>(all)}});
}

struct Tally {
    std::size_t answered = 0, all = 0;
    walk::Verdict worst = walk::Verdict::notApplicable;

    void add(walk::Verdict verdict)
    {
        ++all;
        answered += verdict == walk::Verdict::toDo || verdict == walk::Verdict::retest ? 0 : 1;
        worst = std::min(worst, verdict);
    }
    bool finished() const { return answered == all; }
    walk::Verdict verdict() const { return all == 0 ? walk::Verdict::toDo : worst; }
};

WalkRow tallied(WalkList::Type type, const std::string& key, const QString& title, const Tally& tally)
{
    WalkRow row;
    row.type = type;
    row.key = text(key);
    row.title = title;
    row.note = someOf(tally.answered, tally.all);
    row.verdict = markOf(tally.verdict());
    row.finished = tally.finished();
    return row;
}

WalkRow arrivalRow(const walk::State& state)
{
    Tally tally;
    const auto done = [&](const auto& told) {
        tally.add(std::ranges::any_of(told, [&](const auto& each) { return state.stands(each.fact); })
                      ? walk::Verdict::pass
                      : walk::Verdict::toDo);
    };
    done(state.asFound);
    done(state.kit);
    done(state.clocks);
    done(state.onTests);
    return tallied(WalkList::Arrival, "arrival", parts::phrase("window.arrival"), tally);
}

void addRounds(const Snapshot& job, std::vector<WalkRow>& rows)
{
    for (const catalogue::Round& round : job.scope().catalogue->rounds()) {
        Tally tally;
        for (const auto& [key, step] : job.scope().steps)
            if (key.name == round.step && step.step.subject == round.subject)
                tally.add(walk::viewStep(job.state(), key).verdict);
        if (tally.all > 0) rows.push_back(tallied(WalkList::Round, round.name, text(round.title), tally));
    }
}

WalkRow deviceRow(const walk::DeviceView& view)
{
    WalkRow row;
    row.type = WalkList::Device;
    row.key = text(view.device->device->tag);
    row.title = kindTitle(*view.device);
    row.icon = text(view.device->device->kind);
    row.verdict = markOf(view.verdict);
    row.seen = view.newest == nullptr ? parts::seen::Singly : seenOf(view.newest->answer.how);
    const bool begun = view.verdict == walk::Verdict::toDo && view.answered > 0;
    row.note = begun ? someOf(static_cast<std::size_t>(view.answered), static_cast<std::size_t>(view.steps))
                     : verdictWord(view.verdict);
    row.finished = view.verdict != walk::Verdict::toDo && view.verdict != walk::Verdict::retest;
    row.here = Whereabouts::instance().subject() == row.key;
    return row;
}

void addDevices(const Snapshot& job, std::vector<WalkRow>& rows)
{
    const plan::Device* before = nullptr;
    std::size_t head = 0;
    Tally tally;
    const auto close = [&] {
        if (before == nullptr) return;
        const WalkRow filled = tallied(WalkList::Room, before->room, roomName(before->room), tally);
        rows[head].note = filled.note;
        rows[head].verdict = filled.verdict;
        rows[head].finished = filled.finished;
    };
    for (const std::size_t index : job.order()) {
        const walk::DeviceView& view = job.views()[index];
        const plan::Device& device = *view.device->device;
        if (before == nullptr || before->room != device.room || before->floor != device.floor) {
            close();
            tally = {};
            head = rows.size();
            WalkRow room;
            room.type = WalkList::Room;
            room.key = text(device.floor + "/" + device.room);
            room.title = roomName(device.room);
            room.floor = floorName(*job.scope().plan, device.floor);
            rows.push_back(std::move(room));
            before = &device;
        }
        rows.push_back(deviceRow(view));
        rows[head].here = rows[head].here || rows.back().here;
        tally.add(view.verdict);
    }
    close();
}

void addSequences(const Snapshot& job, std::vector<WalkRow>& rows)
{
    for (const walk::ScopeSequence& sequence : job.scope().sequences) {
        Tally tally;
        for (const walk::StepKey& key : sequence.steps) tally.add(walk::viewStep(job.state(), key).verdict);
        if (tally.all > 0) rows.push_back(tallied(WalkList::Sequence, sequence.name, text(sequence.title), tally));
    }
}

} // namespace

WalkList::WalkList(QObject* parent) : Rows(parent)
{
    connect(&Desk::instance(), &Desk::opened, this, &WalkList::refresh);
    connect(&Desk::instance(), &Desk::published, this, &WalkList::refresh);
    connect(&Whereabouts::instance(), &Whereabouts::moved, this, &WalkList::refresh);
    refresh();
}

void WalkList::refresh()
{
    const auto job = Desk::instance().job();
    std::vector<WalkRow> rows;
    QString next, nextWords;
    if (job != nullptr) {
        rows.push_back(arrivalRow(job->state()));
        addRounds(*job, rows);
        addDevices(*job, rows);
        addSequences(*job, rows);
        const auto left = static_cast<std::int64_t>(walk::notPutBack(job->state()).size());
        WalkRow back;
        back.type = PutBack;
        back.key = QStringLiteral("put-back");
        back.title = parts::phrase("window.put-back");
        back.note = parts::phrase("window.left", {{"count", left}});
        back.verdict = left == 0 ? parts::verdict::Pass : parts::verdict::ToDo;
        back.finished = left == 0;
        rows.push_back(std::move(back));
        if (const auto* device = walk::nextDevice(job->state(), Whereabouts::instance().subject().toStdString())) {
            next = text(device->device->tag);
            nextWords = parts::phrase("window.next-device",
                                      {{"tag", device->device->tag},
                                       {"floor", floorName(*job->scope().plan, device->device->floor).toStdString()},
                                       {"room", roomName(device->device->room).toStdString()}});
        }
    }
    replace(std::move(rows));
    if (next == m_next && nextWords == m_nextWords) return;
    m_next = next;
    m_nextWords = nextWords;
    Q_EMIT nextChanged();
}

} // namespace proofwalk::models
