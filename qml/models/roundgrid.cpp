// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/roundgrid.h"

#include "core/walk/findings.h"
#include "qml/models/desk.h"
#include "qml/models/findingtelling.h"
#include "qml/models/loopwords.h"
#include "qml/models/stepref.h"
#include "qml/models/telling.h"
#include "qml/models/whereabouts.h"
#include "qml/parts/words.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace proofwalk::models {
namespace {

bool same(double left, double right) { return left == right || (std::isnan(left) && std::isnan(right)); }

/// Zones by their number, whatever else by its letters.
bool panelOrder(const RoundCellRow& left, const RoundCellRow& right)
{
    bool leftCounts = false, rightCounts = false;
    const int leftNumber = left.number.toInt(&leftCounts), rightNumber = right.number.toInt(&rightCounts);
    if (leftCounts && rightCounts && leftNumber != rightNumber) return leftNumber < rightNumber;
    return leftCounts == rightCounts ? left.number < right.number : leftCounts;
}

RoundCellRow cellOf(const Snapshot& job, const walk::StepKey& key, const walk::ScopeStep& step)
{
    RoundCellRow cell;
    const plan::Plan& plan = *job.scope().plan;
    cell.subject = subjectWord(plan, key.subject);
    cell.number = cell.subject.section(' ', -1);
    const auto zone = std::ranges::find_if(plan.zones, [&](const auto& each) { return each.id == key.subject; });
    if (zone != plan.zones.end()) cell.label = text(zone->label);
    else if (const auto* device = job.scope().deviceOf(key.subject)) cell.label = kindTitle(*device);

    const base::Unit* unit = base::findUnit(step.step.unit);
    if (unit == nullptr) return cell;
    const walk::JointLimit& limit = step.confirmed.empty() ? step.unconfirmed : step.confirmed;
    cell.lower = inUnit(limit.lower, *unit);
    cell.upper = inUnit(limit.upper, *unit);
    const walk::StepView view = walk::viewStep(job.state(), key);
    cell.verdict = markOf(view.verdict);
    cell.verdictWord = verdictWord(view.verdict);
    cell.answered = view.answered() && view.verdict != walk::Verdict::retest && view.verdict != walk::Verdict::toDo;
    if (view.newest == nullptr || !view.newest->answer.reading) return cell;
    const walk::AnswerBody& answer = view.newest->answer;
    const double scale = base::toDouble(answer.reading->unit->scale) / base::toDouble(unit->scale);
    cell.value = base::toDouble(answer.reading->value) * scale;
    if (answer.uncertainty) cell.uncertainty = base::toDouble(*answer.uncertainty) * scale;
    cell.figure = answer.reading->unit == unit ? text(base::toText(answer.reading->value)) : shortFigure(cell.value);
    return cell;
}

} // namespace

bool operator==(const RoundCellRow& left, const RoundCellRow& right)
{
    return left.subject == right.subject && left.number == right.number && left.label == right.label
        && left.figure == right.figure && left.verdictWord == right.verdictWord && left.verdict == right.verdict
        && left.answered == right.answered && same(left.value, right.value) && same(left.uncertainty, right.uncertainty)
        && same(left.lower, right.lower) && same(left.upper, right.upper);
}

RoundGrid::RoundGrid(QObject* parent) : Rows(parent), m_asking(this, [this] { Q_EMIT asked(); })
{
    connect(&Desk::instance(), &Desk::opened, this, &RoundGrid::refresh);
    connect(&Desk::instance(), &Desk::published, this, &RoundGrid::refresh);
}

void RoundGrid::setRound(const QString& round)
{
    if (round == m_round) return;
    m_round = round;
    m_current = -1;
    refresh();
}

const RoundCellRow* RoundGrid::inHand() const
{
    return m_current < 0 || m_current >= count() ? nullptr : &rows()[static_cast<std::size_t>(m_current)];
}

QString RoundGrid::answeredWords() const
{
    return parts::phrase("window.some-of", {{"some", std::int64_t{m_answered}}, {"all", std::int64_t{count()}}});
}

void RoundGrid::refresh()
{
    const auto job = Desk::instance().job();
    std::vector<RoundCellRow> cells;
    m_title.clear();
    m_summary.clear();
    m_step.clear();
    m_fewWords.clear();
    m_answered = 0;
    const catalogue::Round* round = nullptr;
    if (job != nullptr)
        for (const auto& each : job->scope().catalogue->rounds())
            if (text(each.name) == m_round) round = &each;
    if (round != nullptr) {
        m_title = text(round->title);
        m_summary = text(round->summary);
        m_step = text(round->step);
        for (const auto& [key, step] : job->scope().steps)
            if (key.name == round->step && step.step.subject == round->subject)
                cells.push_back(cellOf(*job, key, step));
        std::ranges::sort(cells, panelOrder);
        for (const RoundCellRow& cell : cells) m_answered += cell.answered ? 1 : 0;
        const auto zones = job->scope().plan->zones.size();
        if (round->subject == catalogue::Subject::zone && zones > cells.size())
            m_fewWords =
                parts::phrase("window.round-others", {{"count", static_cast<std::int64_t>(zones - cells.size())}});
    }
    replace(std::move(cells));
    if (inHand() == nullptr && count() > 0) {
        const QString kept = Whereabouts::instance().draft("round/" + m_round);
        const auto at = std::ranges::find(rows(), kept, &RoundCellRow::subject);
        const auto waits = std::ranges::find(rows(), false, &RoundCellRow::answered);
        const auto first = at != rows().end() ? at : waits != rows().end() ? waits : rows().begin();
        m_current = static_cast<int>(first - rows().begin());
    }
    if (count() == 0) m_current = -1;
    if (job != nullptr) describeInHand(*job);
    Q_EMIT changed();
}

void RoundGrid::describeInHand(const Snapshot& job)
{
    m_floor.clear();
    m_room.clear();
    m_wiring.clear();
    m_findingKey.clear();
    if (inHand() == nullptr) return;
    const auto key = stepNamed(job, inHand()->subject, m_step, {});
    if (!key) return;
    if (walk::findingOf(job.state(), *key)) m_findingKey = keyText(*key);
    const auto* device = job.scope().ownerOf(*key);
    if (device == nullptr) return;
    m_floor = floorName(*job.scope().plan, device->device->floor);
    m_room = roomName(device->device->room);
    const auto wiring = wiringOf(job, *key);
    if (!wiring || wiring->resistors == 0) return;
    m_wiring = parts::phrase(wiring->resistors == 1 ? "window.round-wiring.one"
                             : wiring->fireStyle    ? "window.round-wiring.across"
                                                    : "window.round-wiring.over",
                             {{"tag", device->device->tag},
                              {"end", shortFigure(wiring->eol_ohm / 1000).toStdString() + " kΩ"},
                              {"alarm", shortFigure(wiring->alarm_ohm / 1000).toStdString() + " kΩ"}});
}

void RoundGrid::setCurrent(int row)
{
    if (row == m_current || row < 0 || row >= count()) return;
    m_current = row;
    Whereabouts::instance().setDraft("round/" + m_round, inHand()->subject);
    if (const auto job = Desk::instance().job()) describeInHand(*job);
    Q_EMIT changed();
}

void RoundGrid::moveOn()
{
    for (int step = 1; step < count(); ++step) {
        const int row = (m_current + step) % count();
        if (!rows()[static_cast<std::size_t>(row)].answered) return setCurrent(row);
    }
}

void RoundGrid::noAccess(const QString& reason)
{
    if (inHand() == nullptr) return;
    auto command = named(inHand()->subject);
    command["do"] = "answer";
    command["step"] = m_step.toStdString();
    command["result"] = "no-access";
    command["reason"] = reason.toStdString();
    m_asking.tell(std::move(command), [this] { moveOn(); });
}

} // namespace proofwalk::models
