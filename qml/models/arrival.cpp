// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/arrival.h"

#include "core/walk/upkeep.h"
#include "qml/models/desk.h"
#include "qml/models/figures.h"
#include "qml/models/telling.h"
#include "qml/parts/words.h"

#include <QDateTime>

#include <algorithm>
#include <array>
#include <cmath>

namespace proofwalk::models {
namespace {

/// What the trade's meters give; others can be added by a file of commands.
constexpr std::array measured{"resistance", "voltage",     "current",     "time",
                              "length",     "temperature", "sound-level", "level-ratio"};

const base::Unit* unitOf(const QString& quantity)
{
    const std::string name = quantity.toStdString();
    const base::Unit* found = nullptr;
    for (const base::Unit& unit : base::units()) {
        if (unit.quantity != name) continue;
        // The base unit, which is the one data sheets use, where there are several.
        if (found == nullptr || unit.scale == base::Decimal{1, 0}) found = &unit;
    }
    return found;
}

QString accuracyWords(const walk::Measure& measure)
{
    QStringList parts;
    const measure::Accuracy& accuracy = measure.accuracy;
    if (accuracy.percentOfReading.mantissa != 0) parts.append(text(base::toText(accuracy.percentOfReading)) + " %");
    if (accuracy.digits != 0)
        parts.append(parts::phrase("window.kit-digits", {{"count", std::int64_t{accuracy.digits}}}));
    if (accuracy.fixed) parts.append(written(*accuracy.fixed));
    const QString name = parts::phrase("window.quantity." + measure.quantity);
    return parts.isEmpty() ? name : name + " ± " + parts.join(" + ");
}

ArrivalRow rowFor(Arrival::Part part, const QString& title, const QString& second)
{
    ArrivalRow row;
    row.part = part;
    row.title = title;
    row.second = second;
    return row;
}

ArrivalRow keptRow(Arrival::Part part, const walk::Fact& fact, const QString& title, const QString& second)
{
    ArrivalRow row = rowFor(part, title, second);
    row.right = text(base::localTime(fact.at));
    row.event = text(fact.event);
    row.done = true;
    return row;
}

void addFound(const Snapshot& job, std::vector<ArrivalRow>& rows)
{
    bool any = false;
    for (const auto& told : job.state().asFound) {
        if (!job.state().stands(told.fact)) continue;
        rows.push_back(
            keptRow(Arrival::Found, told.fact, parts::phrase("window.as-found"), job.reveal(told.body.words)));
        any = true;
    }
    if (!any)
        rows.push_back(rowFor(Arrival::Found, parts::phrase("window.as-found"), parts::phrase("window.as-found.todo")));
}

void addKit(const Snapshot& job, std::vector<ArrivalRow>& rows)
{
    bool any = false;
    for (const auto& told : job.state().kit) {
        if (!job.state().stands(told.fact)) continue;
        QStringList words;
        for (const walk::Measure& measure : told.body.measures) words.append(accuracyWords(measure));
        if (!told.body.calibrated.empty())
            words.append(parts::phrase("window.kit-calibrated", {{"day", told.body.calibrated}}));
        ArrivalRow row = rowFor(Arrival::Kit, text(told.body.name), words.join(", "));
        row.event = text(told.fact.event);
        row.done = any = true;
        rows.push_back(std::move(row));
    }
    if (!any) rows.push_back(rowFor(Arrival::Kit, parts::phrase("window.kit"), parts::phrase("window.kit.todo")));
}

void addClocks(const Snapshot& job, std::vector<ArrivalRow>& rows)
{
    bool any = false;
    for (const auto& told : job.state().clocks) {
        if (!job.state().stands(told.fact)) continue;
        const double seconds = static_cast<double>(told.body.offset_ms) / 1000;
        rows.push_back(keptRow(
            Arrival::Clock, told.fact, parts::phrase("window.clock." + told.body.of),
            parts::phrase(
                seconds < 0 ? "window.clock-behind" : "window.clock-ahead",
                {{"seconds", shortFigure(std::abs(seconds)).toStdString()},
                 {"uncertainty", shortFigure(static_cast<double>(told.body.uncertainty_ms) / 1000).toStdString()}})));
        any = true;
    }
    if (!any)
        rows.push_back(rowFor(Arrival::Clock, parts::phrase("window.clocks"), parts::phrase("window.clocks.todo")));
}

void addTests(const Snapshot& job, const QStringList& accounts, std::vector<ArrivalRow>& rows)
{
    const auto on = walk::accountsOnTest(job.state());
    for (const QString& account : accounts) {
        const auto told =
            std::ranges::find_if(on, [&](const auto* each) { return text(each->body.account) == account; });
        const QString title = parts::phrase("window.account", {{"account", account.toStdString()}});
        ArrivalRow row = rowFor(Arrival::Test, title, parts::phrase("window.account.todo"));
        if (told != on.end()) {
            const std::string& until = (*told)->body.until;
            row = keptRow(Arrival::Test, (*told)->fact, title,
                          parts::phrase(until.empty() ? "window.account-told" : "window.account-told-until",
                                        {{"told", job.reveal((*told)->body.told).toStdString()},
                                         {"time", until.size() >= 16 ? until.substr(11, 5) : until}}));
        }
        row.key = account;
        rows.push_back(std::move(row));
    }
}

} // namespace

Arrival::Arrival(QObject* parent) : Rows(parent), m_asking(this, [this] { Q_EMIT askingChanged(); })
{
    connect(&Desk::instance(), &Desk::opened, this, &Arrival::refresh);
    connect(&Desk::instance(), &Desk::published, this, &Arrival::refresh);
    refresh();
}

void Arrival::refresh()
{
    const auto job = Desk::instance().job();
    std::vector<ArrivalRow> rows;
    m_display.clear();
    m_accounts.clear();
    m_waiting.clear();
    if (job != nullptr) {
        for (const plan::Area& area : job->scope().plan->areas)
            if (!area.account.empty() && !m_accounts.contains(text(area.account)))
                m_accounts.append(text(area.account));
        for (const auto& told : job->state().asFound)
            if (job->state().stands(told.fact)) m_display = job->reveal(told.body.display);
        addFound(*job, rows);
        addKit(*job, rows);
        addClocks(*job, rows);
        addTests(*job, m_accounts, rows);
    }
    std::array<bool, 3> kept{};
    std::int64_t done = 0;
    for (const ArrivalRow& row : rows) {
        if (row.part == Test) {
            done += row.done ? 1 : 0;
            if (!row.done && m_waiting.isEmpty()) m_waiting = row.key;
        } else kept[static_cast<std::size_t>(row.part)] |= row.done;
    }
    m_foundKept = kept[Found];
    QStringList missing;
    for (const auto& [part, code] : {std::pair{0, "window.as-found"}, {1, "window.kit"}, {2, "window.clocks"}}) {
        if (kept[static_cast<std::size_t>(part)]) ++done;
        else missing.append(parts::phrase(std::string(code) + ".short"));
    }
    m_missingWords =
        missing.isEmpty() ? QString() : parts::phrase("window.not-yet", {{"what", missing.join(", ").toStdString()}});
    m_keptWords = parts::phrase("window.arrival-kept", {{"some", done}, {"all", std::int64_t{3} + m_accounts.size()}});
    replace(std::move(rows));
    Q_EMIT changed();
}

QStringList Arrival::quantities() const { return {measured.begin(), measured.end()}; }

QString Arrival::quantityWord(const QString& quantity) const
{
    return parts::phrase("window.quantity." + quantity.toStdString());
}

QString Arrival::quantityUnit(const QString& quantity) const
{
    const base::Unit* unit = unitOf(quantity);
    return unit == nullptr ? QString() : text(std::string(unit->written));
}

void Arrival::tell(base::Json::Object command)
{
    m_asking.tell(std::move(command), [this] { Q_EMIT taken(); });
}

void Arrival::found(const QString& words, const QString& display)
{
    base::Json::Object command{{"do", "as-found"}, {"words", words.trimmed().toStdString()}};
    if (!display.trimmed().isEmpty()) command["display"] = display.trimmed().toStdString();
    tell(std::move(command));
}

void Arrival::addInstrument(const QString& name, const QString& quantity, const QString& percent, const QString& digits,
                            const QString& fixed, const QString& calibrated)
{
    base::Json::Object measure{{"quantity", quantity.toStdString()}};
    if (!percent.trimmed().isEmpty()) measure["percent"] = percent.trimmed().toStdString();
    if (!digits.trimmed().isEmpty()) {
        bool whole = false;
        const int count = digits.trimmed().toInt(&whole);
        // What is no whole number goes on as typed, so that core refuses it in its own words.
        measure["digits"] = whole ? base::Json(count) : base::Json(digits.trimmed().toStdString());
    }
    if (const base::Unit* unit = unitOf(quantity); unit != nullptr && !fixed.trimmed().isEmpty())
        measure["fixed"] = fixed.trimmed().toStdString() + " " + std::string(unit->code);
    base::Json::Object command{{"do", "kit"},
                               {"name", name.trimmed().toStdString()},
                               {"measures", base::Json::Array{base::Json(std::move(measure))}}};
    if (!calibrated.trimmed().isEmpty()) command["calibrated"] = calibrated.trimmed().toStdString();
    tell(std::move(command));
}

void Arrival::clock(const QString& of, const QString& offset_s, const QString& uncertainty_s)
{
    const auto milliseconds = [](const QString& typed) -> Result<base::Json> {
        const auto seconds = base::parseDecimal(typed.trimmed().toStdString());
        if (!seconds) return std::unexpected(seconds.error());
        return base::Json(static_cast<std::int64_t>(std::llround(base::toDouble(*seconds) * 1000)));
    };
    const auto offset = milliseconds(offset_s), uncertainty = milliseconds(uncertainty_s);
    if (!offset) return m_asking.end(sentence(offset.error()));
    if (!uncertainty) return m_asking.end(sentence(uncertainty.error()));
    tell({{"do", "clock"}, {"of", of.toStdString()}, {"offset_ms", *offset}, {"uncertainty_ms", *uncertainty}});
}

void Arrival::onTest(const QString& account, const QString& told, const QString& reference, const QString& until)
{
    base::Json::Object command{
        {"do", "on-test"}, {"account", account.toStdString()}, {"told", told.trimmed().toStdString()}};
    if (!reference.trimmed().isEmpty()) command["reference"] = reference.trimmed().toStdString();
    if (!until.trimmed().isEmpty()) {
        const QTime time = QTime::fromString(until.trimmed(), QStringLiteral("H:mm"));
        QDateTime moment(QDate::currentDate(), time);
        if (time.isValid() && moment < QDateTime::currentDateTime()) moment = moment.addDays(1);
        // As Qt::ISODate writes it, but with the place's offset; what is no time goes on as typed, to be refused.
        command["until"] = time.isValid()
                             ? moment.toOffsetFromUtc(moment.offsetFromUtc()).toString(Qt::ISODate).toStdString()
                             : until.trimmed().toStdString();
    }
    tell(std::move(command));
}

void Arrival::withdraw(const QString& event, const QString& reason)
{
    tell({{"do", "withdraw"}, {"event", event.toStdString()}, {"reason", reason.toStdString()}});
}

} // namespace proofwalk::models
