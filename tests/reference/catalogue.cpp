// SPDX-License-Identifier: GPL-3.0-or-later
// Every figure the catalogue prints, and every rule it names as a step's source, against the collected source rows.
// Source: tests/reference/alarm-figures.csv, a row each of a collection of published rules made before the catalogue and
// independently of it; `basis` says how each is known: read (as quoted on a public page), from memory, or common
// practice. Exact: the digits printed are the digits collected.
#include "tests/catalogue/sample.h"

#include "core/base/csv.h"
#include "core/base/file.h"
#include "core/base/unit.h"
#include "core/catalogue/vocabulary.h"

#include <QtTest>
#include <map>
#include <set>

using namespace proofwalk;
using namespace proofwalk::catalogue;

namespace {

using Row = std::map<std::string, std::string>;

std::map<std::string, Row> collected()
{
    const auto bytes = base::readFile(PROOFWALK_SOURCE "/tests/reference/alarm-figures.csv");
    if (!bytes) qFatal("alarm-figures.csv cannot be read");
    const auto table = base::readCsv(*bytes, "alarm-figures.csv");
    if (!table) qFatal("%s %s", table.error().where.c_str(), table.error().code.c_str());
    std::map<std::string, Row> rows;
    for (const auto& line : table->rows) {
        Row row;
        for (std::size_t i = 0; i < line.cells.size(); ++i) row[table->header[i]] = line.cells[i];
        rows[row.at("id")] = row;
    }
    return rows;
}

/// Which collected row a printed limit is, by where it stands, its quantity and its side.
const std::map<std::string, std::string> figureRows{
    {"intruder-eu entry-delay upper 45", "IG-001"},
    {"intruder-eu signal-time upper 10", "IG-002"},
    {"intruder-eu recovery-time upper 15", "IG-035"},
    {"intruder-eu recovery-time upper 180", "IG-035 note"},
    {"fire-uk sound-level-fire lower 65", "SL-024"},
    {"fire-uk sound-level-fire upper 120", "SL-027"},
    {"fire-uk sound-over-background lower 5", "SL-025"},
    {"fire-uk sound-level-bedhead lower 75", "SL-026"},
    {"fire-uk coverage-radius-smoke upper 7.5", "FA-080"},
    {"fire-uk coverage-radius-heat upper 5.3", "FA-081"},
    {"fire-uk clear-space lower 500", "FA-116"},
    {"fire-uk alarm-indication upper 10", "FA-009"},
    {"fire-uk fault-indication upper 100", "FA-010"},
    {"kinds/contact-surface.toml opening-gap upper 25", "ID-017"},
    {"kinds/smoke-four-wire.toml time-to-alarm upper 60", "TM-017"},
    {"kinds/flood.toml trip-depth upper 3", "EN-010"},
    {"parts/feed-radio.toml radio-margin lower 10", "IG-031"},
};

/// Which collected row a step names as its source.
const std::map<std::string, std::string> stepRows{
    {"kinds/motion-infrared.toml lamp-and-view", "ID-009"}, {"kinds/smoke-four-wire.toml alarm-seen", "FA-023"},
    {"kinds/heat-fixed.toml alarm-seen", "FA-028"},         {"kinds/heat-fixed.toml head-out", "FA-082"},
    {"kinds/holdup-button.toml pressed", "ID-021"},         {"kinds/holdup-button.toml user-shown", "CF-014"},
    {"kinds/sounder-inside.toml fire-level", "SL-031"},     {"parts/purpose-hold-up.toml received", "IG-011"},
    {"sequences/entry-exit.toml set-refused", "IG-007"},    {"sequences/entry-exit.toml exit-heard", "IG-008"},
    {"sequences/entry-exit.toml off-route", "IG-006"},
};

/// Units as the sources write them. A difference of two levels is a ratio in dB, whatever weighting both have.
std::string unitOfSource(const Limit& limit)
{
    if (limit.quantity == "sound-over-background") return "dB(A)";
    return std::string(base::findUnit(limit.unit)->written);
}

/// "10-60": a usual range, of which the greater end is the limit.
std::string greaterEnd(const std::string& value)
{
    const auto dash = value.find('-');
    return dash == std::string::npos ? value : value.substr(dash + 1);
}

void compareSource(const Source& source, const Row& row)
{
    QCOMPARE(source.standard, row.at("standard"));
    const std::string edition = row.at("edition") == "not stated on the page" ? "" : row.at("edition");
    QCOMPARE(source.edition, edition);
    QCOMPARE(source.basis, row.at("basis"));
    const std::string clause = row.at("clause_basis") == "read" ? row.at("clause") : "";
    QCOMPARE(source.clause, clause);
}

} // namespace

class ReferenceCatalogue : public QObject {
    Q_OBJECT

private:
    const Catalogue m_catalogue = sample::whole();
    const std::map<std::string, Row> m_rows = collected();

    /// All steps that any zone can bring, once each.
    std::vector<Step> allSteps() const;
    void compareLimit(const std::string& place, const Limit& limit, std::set<std::string>& seen) const;

private Q_SLOTS:
    void everyFigureIsCollected();
    void everyStandardOfAStepIsCollected();
};

std::vector<Step> ReferenceCatalogue::allSteps() const
{
    std::vector<Step> steps;
    std::set<std::string> seen;
    const auto keep = [&](const Step& step) {
        if (seen.insert(step.part + step.name + step.signal + step.act).second) steps.push_back(step);
    };
    for (const Kind& kind : m_catalogue.kinds())
        for (const auto& purpose : columnWords("purpose"))
            for (const auto& delay : columnWords("delay"))
                for (const auto& feed : columnWords("feed"))
                    for (const auto& resistors : columnWords("resistors"))
                        for (const auto& rest : columnWords("rest"))
                            for (const char* sounding : {"loud", "silent"}) {
                                const auto sheet = m_catalogue.compose({kind.name,
                                                                        kind.signals,
                                                                        feed,
                                                                        rest,
                                                                        resistors,
                                                                        purpose,
                                                                        delay,
                                                                        sounding,
                                                                        "yes",
                                                                        {}});
                                if (!sheet) qFatal("%s", sheet.error().where.c_str());
                                for (const Step& step : sheet->steps) keep(step);
                            }
    for (const Sequence& sequence : m_catalogue.sequences())
        for (const Step& step : sequence.steps) keep(step);
    return steps;
}

void ReferenceCatalogue::compareLimit(const std::string& place, const Limit& limit, std::set<std::string>& seen) const
{
    for (const bool lower : {true, false}) {
        const auto& side = lower ? limit.lower : limit.upper;
        if (!side) continue;
        const std::string name = place + " " + limit.quantity + (lower ? " lower " : " upper ") + base::toText(*side);
        QVERIFY2(figureRows.contains(name), ("no source row for: " + name).c_str());
        seen.insert(name);
        const Row& row = m_rows.at(figureRows.at(name));
        QCOMPARE(base::toText(*side), greaterEnd(row.at("value")));
        QCOMPARE(unitOfSource(limit), row.at("unit"));
        compareSource(limit.source, row);
        // What was not read is never presented as confirmed.
        QCOMPARE(limit.confirmed, row.at("basis") == "read");
    }
}

void ReferenceCatalogue::everyFigureIsCollected()
{
    std::set<std::string> seen;
    for (const std::string& name : m_catalogue.ruleNames())
        for (const Limit& limit : m_catalogue.rules(name)->limits) compareLimit(name, limit, seen);
    for (const Step& step : allSteps())
        for (const Limit& limit : step.limits) compareLimit(step.part, limit, seen);
    // And none of the rows above has gone out of the catalogue unnoticed.
    QCOMPARE(seen.size(), figureRows.size());
}

void ReferenceCatalogue::everyStandardOfAStepIsCollected()
{
    std::set<std::string> seen;
    for (const Step& step : allSteps()) {
        if (step.source.standard.empty()) continue;
        const std::string name = step.part + " " + step.name;
        QVERIFY2(stepRows.contains(name), ("no source row for: " + name).c_str());
        seen.insert(name);
        compareSource(step.source, m_rows.at(stepRows.at(name)));
    }
    QCOMPARE(seen.size(), stepRows.size());
}

QTEST_GUILESS_MAIN(ReferenceCatalogue)
#include "catalogue.moc"
