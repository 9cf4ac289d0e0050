// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/findingtelling.h"

#include "core/report/filling.h"
#include "core/walk/readiness.h"
#include "qml/models/telling.h"
#include "qml/parts/words.h"

#include <QStringList>

#include <algorithm>

namespace proofwalk::models {
namespace {

bool isTooClose(const Snapshot& job, const walk::StepKey& key)
{
    return walk::viewStep(job.state(), key).verdict == walk::Verdict::tooClose;
}

/// The reading with what is allowed; empty if the attempt has no figure.
QString figureOf(const walk::Scope& scope, const walk::Attempt& attempt)
{
    const std::string reading = report::readingText(attempt.answer);
    if (reading.empty()) return {};
    const walk::ScopeStep* step = scope.step(attempt.answer.step);
    return parts::phrase("report.reading-outside",
                         {{"step", attempt.answer.step.name},
                          {"reading", reading},
                          {"limit", step == nullptr ? std::string() : report::limitText(*step)}});
}

/// The devices a step belongs to: its own, or all of its zone.
std::vector<const walk::ScopeDevice*> devicesOf(const walk::Scope& scope, const walk::StepKey& key)
{
    if (const walk::ScopeDevice* device = scope.deviceOf(key.subject)) return {device};
    std::vector<const walk::ScopeDevice*> devices;
    if (const auto zone = scope.devicesOfZone.find(key.subject); zone != scope.devicesOfZone.end())
        for (const std::size_t index : zone->second) devices.push_back(&scope.devices[index]);
    return devices;
}

/// The rooms of a floor in the order in which the plan lists devices in them.
std::vector<std::string> roomsOf(const walk::Scope& scope, const std::string& floor)
{
    std::vector<std::string> rooms;
    for (const walk::ScopeDevice& each : scope.devices)
        if (each.device->floor == floor && std::ranges::find(rooms, each.device->room) == rooms.end())
            rooms.push_back(each.device->room);
    return rooms;
}

} // namespace

QString keyText(const walk::StepKey& key) { return text(key.subject + "/" + key.signal + "/" + key.name); }

std::optional<walk::StepKey> keyFrom(const walk::Scope& scope, const QString& text)
{
    const QStringList parts = text.split(u'/');
    if (parts.size() != 3) return {};
    walk::StepKey key{parts[0].toStdString(), parts[1].toStdString(), parts[2].toStdString()};
    if (scope.step(key) == nullptr) return {};
    return key;
}

base::Json::Object commandOn(const walk::Scope& scope, const walk::StepKey& key, const char* act)
{
    base::Json::Object command{{"do", act}, {"step", key.name}, {"signal", key.signal}};
    const plan::Plan& plan = *scope.plan;
    if (const walk::ScopeDevice* device = scope.deviceOf(key.subject)) command["device"] = device->device->tag;
    for (const plan::Zone& zone : plan.zones)
        if (zone.id == key.subject) command["zone"] = zone.zone;
    for (const plan::Area& area : plan.areas)
        if (area.id == key.subject) command["area"] = area.area;
    for (const plan::Timer& timer : plan.timers) {
        if (timer.id != key.subject) continue;
        command["timer"] = timer.timer;
        command["area"] = timer.area;
    }
    return command;
}

std::vector<Noticed> everythingNoticed(const Snapshot& job)
{
    std::vector<Noticed> all;
    for (const walk::Finding& finding : job.findings()) all.push_back({finding.step, finding});
    for (const auto& [key, attempts] : job.state().attempts) {
        const bool described = std::ranges::any_of(all, [&key](const Noticed& each) { return each.step == key; });
        if (!described && isTooClose(job, key)) all.push_back({key, std::nullopt});
    }
    return all;
}

std::optional<Noticed> noticedAt(const Snapshot& job, const walk::StepKey& key)
{
    const auto found = std::ranges::find(job.findings(), key, &walk::Finding::step);
    if (found != job.findings().end()) return Noticed{key, *found};
    if (isTooClose(job, key)) return Noticed{key, std::nullopt};
    return {};
}

walk::Verdict verdictOf(const Snapshot& job, const Noticed& noticed)
{
    if (!noticed.finding) return walk::Verdict::tooClose;
    switch (noticed.finding->status) {
    case walk::FindingStatus::open:
    case walk::FindingStatus::intermittent: return walk::Verdict::fail;
    case walk::FindingStatus::putRight: return walk::Verdict::retest;
    case walk::FindingStatus::cleared: return walk::Verdict::pass;
    case walk::FindingStatus::noted: return walk::viewStep(job.state(), noticed.step).verdict;
    }
    return walk::Verdict::fail;
}

QString wordFor(const Snapshot& job, const Noticed& noticed)
{
    if (noticed.finding && noticed.finding->status == walk::FindingStatus::intermittent)
        return parts::phrase("report.comes-and-goes");
    if (noticed.finding && noticed.finding->status == walk::FindingStatus::noted
        && verdictOf(job, noticed) != walk::Verdict::tooClose)
        return parts::phrase("report.recommended");
    return verdictWord(verdictOf(job, noticed));
}

QString lineOf(const Snapshot& job, const Noticed& noticed)
{
    if (noticed.finding) {
        const walk::Finding& finding = *noticed.finding;
        if (!finding.described.empty())
            if (QString words = job.reveal(finding.described.back()->body.words); !words.isEmpty()) return words;
        if (finding.lastFail != nullptr) {
            if (QString seen = job.reveal(finding.lastFail->answer.seen); !seen.isEmpty()) return seen;
            if (QString figure = figureOf(job.scope(), *finding.lastFail); !figure.isEmpty()) return figure;
        }
    } else if (const walk::Attempt* newest = walk::viewStep(job.state(), noticed.step).newest) {
        if (QString figure = figureOf(job.scope(), *newest); !figure.isEmpty()) return figure;
    }
    return expectedAt(job.scope(), noticed.step);
}

QString dueWords(const Noticed& noticed)
{
    if (!noticed.finding || noticed.finding->described.empty()) return {};
    if (noticed.finding->status == walk::FindingStatus::cleared) return {};
    const std::string& due = noticed.finding->described.back()->body.due;
    if (due.empty()) return {};
    const bool past = due < base::localDate(base::now()); // days of one form: their order is that of the texts
    return parts::phrase(past ? "window.finding.was-due" : "report.due", {{"day", report::shortDay(due)}});
}

QString expectedAt(const walk::Scope& scope, const walk::StepKey& key)
{
    const walk::ScopeStep* step = scope.step(key);
    if (step == nullptr) return text(key.name);
    const std::string& words = step->step.expect.empty() ? step->step.act : step->step.expect;
    const std::string limit = report::limitText(*step);
    if (limit.empty()) return text(words);
    return parts::phrase("window.finding.expected", {{"words", words}, {"limit", limit}});
}

QString subjectName(const walk::Scope& scope, const walk::StepKey& key)
{
    return text(walk::nameOfSubject(scope, key));
}

QString subjectTitle(const walk::Scope& scope, const walk::StepKey& key)
{
    if (const walk::ScopeDevice* device = scope.deviceOf(key.subject)) return kindTitle(*device);
    for (const plan::Zone& zone : scope.plan->zones)
        if (zone.id == key.subject) return text(zone.label);
    for (const plan::Area& area : scope.plan->areas)
        if (area.id == key.subject) return text(area.name);
    return {};
}

QString cardOf(const walk::Scope& scope, const walk::StepKey& key)
{
    const walk::ScopeDevice* owner = scope.ownerOf(key);
    return owner == nullptr ? QString() : text(owner->device->tag);
}

Spot spotOf(const walk::Scope& scope, const walk::StepKey& key)
{
    Spot spot;
    const auto devices = devicesOf(scope, key);
    if (devices.empty()) return spot;
    const std::string& floor = devices.front()->device->floor;
    const auto rooms = roomsOf(scope, floor);
    spot.floor = floorName(*scope.plan, floor);
    spot.rooms = static_cast<int>(rooms.size());
    QStringList names;
    for (const walk::ScopeDevice* each : devices) {
        const QString name = roomName(each->device->room);
        if (!names.contains(name)) names.push_back(name);
        if (each->device->floor != floor) continue;
        const int at = static_cast<int>(std::ranges::find(rooms, each->device->room) - rooms.begin());
        if (!spot.at.contains(at)) spot.at.push_back(at);
    }
    spot.room = names.join(QStringLiteral(", "));
    return spot;
}

QString ageWords(const base::WallClock& then, const base::WallClock& now)
{
    constexpr std::int64_t hour = 60;
    constexpr std::int64_t day = 24 * hour;
    const std::int64_t minutes = (now.utc_ms - then.utc_ms) / 60'000;
    if (minutes < 0) return text(report::shortDay(base::localDate(then)));
    if (minutes < 1) return parts::phrase("window.finding.age.now");
    if (minutes < hour) return parts::phrase("window.finding.age.minutes", {{"count", minutes}});
    if (minutes < 2 * day) return parts::phrase("window.finding.age.hours", {{"count", minutes / hour}});
    return parts::phrase("window.finding.age.days", {{"count", minutes / day}});
}

} // namespace proofwalk::models
