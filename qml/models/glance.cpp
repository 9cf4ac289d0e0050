// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/glance.h"

#include "core/walk/upkeep.h"
#include "qml/models/desk.h"
#include "qml/models/telling.h"
#include "qml/parts/words.h"

#include <algorithm>

namespace proofwalk::models {
namespace {

bool isAnswered(walk::Verdict verdict)
{
    return verdict != walk::Verdict::toDo && verdict != walk::Verdict::retest && verdict != walk::Verdict::running;
}

/// A count with its word: one of it, or several.
QString counted(const std::string& code, int count)
{
    return parts::phrase(code + (count == 1 ? ".one" : ".many"), {{"count", std::int64_t{count}}});
}

/// "15:30" of an RFC 3339 moment; all of it if it is not one.
std::string clockOf(const std::string& moment) { return moment.size() >= 16 ? moment.substr(11, 5) : moment; }

} // namespace

Glance::Glance(QObject* parent) : QObject(parent)
{
    connect(&Desk::instance(), &Desk::opened, this, &Glance::refresh);
    connect(&Desk::instance(), &Desk::published, this, &Glance::refresh);
    refresh();
}

void Glance::refresh()
{
    const auto job = Desk::instance().job();
    m_open = job != nullptr;
    if (!m_open) {
        Q_EMIT changed();
        return;
    }
    m_site = text(job->scope().plan->siteFact("name"));
    m_total = static_cast<int>(job->views().size());
    m_answered = static_cast<int>(
        std::ranges::count_if(job->views(), [](const auto& view) { return isAnswered(view.verdict); }));
    m_findings = static_cast<int>(std::ranges::count_if(job->findings(), &walk::Finding::pending));
    m_putBack = static_cast<int>(walk::notPutBack(job->state()).size());
    m_zonesWords =
        parts::phrase("window.in-zones", {{"devices", std::int64_t{m_total}},
                                          {"zones", static_cast<std::int64_t>(job->scope().plan->zones.size())}});
    m_walkWords = parts::phrase("window.some-of", {{"some", std::int64_t{m_answered}}, {"all", std::int64_t{m_total}}});
    m_rungsWords = counted("window.rungs",
                           static_cast<int>(std::ranges::count(job->readiness().rungs, true, &walk::Rung::blocking)));
    m_answeredWords = parts::phrase("window.of-answered", {{"total", std::int64_t{m_total}}});
    m_findingsWords = counted("window.findings", m_findings);
    m_putBackWords = counted("window.to-put-back", m_putBack);
    tellTest(*job);
    Q_EMIT changed();
}

void Glance::tellTest(const Snapshot& job)
{
    const auto& state = job.state();
    const auto on = walk::accountsOnTest(state);
    m_onTest = !on.empty();
    m_live = false;
    if (m_onTest) {
        // The first to run out is the one to watch.
        const auto* next = *std::ranges::min_element(
            on, {}, [](const auto* told) { return told->body.until.empty() ? std::string("~") : told->body.until; });
        m_testWords = next->body.until.empty()
                        ? parts::phrase("window.on-test")
                        : parts::phrase("window.on-test-until", {{"time", clockOf(next->body.until)}});
        return;
    }
    const auto off = std::ranges::find_if(state.offTests.rbegin(), state.offTests.rend(),
                                          [&](const auto& told) { return state.stands(told.fact); });
    if (off != state.offTests.rend()) {
        m_testWords = parts::phrase("window.off-test", {{"time", base::localTime(off->fact.at)}});
        return;
    }
    m_live = std::ranges::any_of(job.scope().plan->paths,
                                 [](const plan::Path& path) { return path.to == "station" || path.to == "owner"; });
    m_testWords = parts::phrase(m_live ? "window.live" : "window.nobody-to-tell");
}

} // namespace proofwalk::models
