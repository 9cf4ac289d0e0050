// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/readingentry.h"

#include "core/measure/instrument.h"
#include "core/walk/judge.h"
#include "qml/models/desk.h"
#include "qml/models/loopwords.h"
#include "qml/models/stepref.h"
#include "qml/models/telling.h"
#include "qml/models/whereabouts.h"
#include "qml/parts/words.h"

#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <cmath>

namespace proofwalk::models {
namespace {

/// No instrument shows more, and a Decimal holds fifteen.
constexpr qsizetype mostDigits = 12;

bool takesNumber(const catalogue::Step& step)
{
    return step.kind == catalogue::StepKind::read || step.kind == catalogue::StepKind::time;
}

/// What the data sheet of that instrument says of this reading.
std::optional<base::Decimal> uncertaintyOf(const walk::State& state, const std::string& instrument,
                                           const base::Quantity& reading)
{
    std::optional<base::Decimal> found;
    for (const auto& told : state.kit) {
        if (!state.stands(told.fact) || told.body.name != instrument) continue;
        found.reset();
        for (const walk::Measure& measure : told.body.measures) {
            if (measure.quantity != reading.unit->quantity) continue;
            if (const auto expanded = measure::expandedUncertainty(reading, measure.accuracy)) found = *expanded;
            break;
        }
    }
    return found;
}

QString endWords(int end) { return parts::phrase(end == 1 ? "window.loop-open" : "window.loop-short"); }

} // namespace

ReadingEntry::ReadingEntry(QObject* parent) : QObject(parent)
{
    connect(&Desk::instance(), &Desk::opened, this, &ReadingEntry::moveTo);
    connect(&Desk::instance(), &Desk::published, this, &ReadingEntry::refresh);
}

void ReadingEntry::setSubject(const QString& subject) { show(subject, m_step, m_signal); }

void ReadingEntry::setStep(const QString& step) { show(m_subject, step, m_signal); }

void ReadingEntry::setSignal(const QString& signal) { show(m_subject, m_step, signal); }

void ReadingEntry::show(const QString& subject, const QString& step, const QString& signal)
{
    if (subject == m_subject && step == m_step && signal == m_signal) return;
    m_subject = subject;
    m_step = step;
    m_signal = signal;
    Q_EMIT stepChanged();
    moveTo();
}

void ReadingEntry::moveTo()
{
    m_typed.clear();
    m_end = 0;
    m_unit = 0;
    m_problem.clear();
    m_busy = false;
    m_scopeStep = nullptr;
    m_units.clear();
    m_job = Desk::instance().job();
    if (m_job != nullptr && !m_subject.isEmpty() && !m_step.isEmpty())
        if (const auto key = stepNamed(*m_job, m_subject, m_step, m_signal)) m_scopeStep = m_job->scope().step(*key);
    if (m_scopeStep != nullptr && !takesNumber(m_scopeStep->step)) m_scopeStep = nullptr;
    if (m_scopeStep != nullptr) {
        const base::Unit* wanted = base::findUnit(m_scopeStep->step.unit);
        for (const base::Unit& unit : base::units())
            if (wanted != nullptr && unit.quantity == wanted->quantity) {
                if (&unit == wanted) m_unit = static_cast<int>(m_units.size());
                m_units.push_back(&unit);
            }
        if (m_units.empty()) m_scopeStep = nullptr;
    }
    if (m_scopeStep != nullptr) recallDraft();
    refresh();
}

void ReadingEntry::recallDraft()
{
    const auto kept = QJsonDocument::fromJson(Whereabouts::instance().draft(draftName()).toUtf8()).object();
    m_typed = kept["typed"].toString().left(mostDigits);
    m_end = std::clamp(kept["end"].toInt(), 0, 2);
    const std::string code = kept["unit"].toString().toStdString();
    const auto unit = std::ranges::find(m_units, code, &base::Unit::code);
    if (unit != m_units.end()) m_unit = static_cast<int>(unit - m_units.begin());
}

void ReadingEntry::keepDraft()
{
    QString kept;
    if (fresh()) {
        const std::string code(chosenUnit()->code);
        kept = QString::fromUtf8(
            QJsonDocument(QJsonObject{{"typed", m_typed}, {"end", m_end}, {"unit", QString::fromStdString(code)}})
                .toJson(QJsonDocument::Compact));
    }
    Whereabouts::instance().setDraft(draftName(), kept);
}

const base::Unit* ReadingEntry::chosenUnit() const
{
    return m_units.empty() ? nullptr : m_units[static_cast<std::size_t>(m_unit)];
}

bool ReadingEntry::isLoopAtRest() const
{
    return m_scopeStep != nullptr && m_scopeStep->step.planLimit == catalogue::PlanLimit::loopNormal;
}

void ReadingEntry::refresh()
{
    if (const auto job = Desk::instance().job(); job != nullptr && m_job != nullptr && &job->scope() != &m_job->scope())
        return moveTo();
    m_value = m_uncertainty = m_lower = m_upper = m_setPoint = absent;
    m_valueText = m_uncertaintyText = m_verdictWord = m_diagnosis = m_diagnosisLong = m_tell = m_wantingWords = {};
    m_verdict = parts::verdict::ToDo;
    m_wanting = Nothing;
    m_adviceOnly = m_complete = false;
    m_instruments.clear();
    if (m_scopeStep != nullptr) {
        // The scope outlives the snapshot it came with: all of one job share it.
        m_job = Desk::instance().job();
        listInstruments();
        findLimits();
        if (fresh()) readTyped();
        else readRecorded();
        lookForWants();
    }
    Q_EMIT changed();
}

void ReadingEntry::listInstruments()
{
    const std::string_view quantity = chosenUnit()->quantity;
    for (const auto& told : m_job->state().kit) {
        const bool fits = std::ranges::any_of(told.body.measures,
                                              [&](const walk::Measure& each) { return each.quantity == quantity; });
        const QString name = text(told.body.name);
        if (fits && m_job->state().stands(told.fact) && !m_instruments.contains(name)) m_instruments.append(name);
    }
    m_instrument = Whereabouts::instance().draft("instrument/" + text(std::string(quantity)));
    if (m_instrument == QStringLiteral("-")) m_instrument.clear();
    else if (!m_instruments.contains(m_instrument))
        m_instrument = m_instruments.isEmpty() ? QString() : m_instruments.constLast();
}

void ReadingEntry::findLimits()
{
    const base::Unit& unit = *chosenUnit();
    m_adviceOnly = m_scopeStep->confirmed.empty();
    const walk::JointLimit& limit = m_adviceOnly ? m_scopeStep->unconfirmed : m_scopeStep->confirmed;
    m_lower = inUnit(limit.lower, unit);
    m_upper = inUnit(limit.upper, unit);
    if (m_scopeStep->step.planLimit != catalogue::PlanLimit::timer) return;
    for (const plan::Timer& timer : m_job->scope().plan->timers)
        if (timer.id == m_scopeStep->key.subject && timer.planned_s)
            m_setPoint = base::toDouble(*timer.planned_s) / base::toDouble(unit.scale);
}

void ReadingEntry::readTyped()
{
    if (m_end != 0) {
        m_valueText = endWords(m_end);
        m_verdict = parts::verdict::Fail;
        m_verdictWord = models::verdictWord(walk::Verdict::fail);
        m_complete = true;
        return;
    }
    m_valueText = m_typed;
    const auto number = base::parseDecimal(m_typed.toStdString());
    if (!number) return;
    m_complete = true;
    Reading reading{{*number, chosenUnit()}, {}};
    reading.uncertainty = uncertaintyOf(m_job->state(), m_instrument.toStdString(), reading.quantity);
    judgeTyped(reading);
}

/// What core would say of it; asked of core and thrown away.
void ReadingEntry::judgeTyped(const Reading& reading)
{
    walk::Attempt attempt;
    attempt.answer.step = m_scopeStep->key;
    attempt.answer.outcome = walk::Outcome::value;
    attempt.answer.state = walk::stateFor(m_job->state(), m_scopeStep->key);
    attempt.answer.reading = reading.quantity;
    attempt.answer.uncertainty = reading.uncertainty;
    walk::judgeAttempt(attempt, *m_scopeStep);
    present(reading, attempt.verdict);
}

void ReadingEntry::readRecorded()
{
    const walk::StepView view = walk::viewStep(m_job->state(), m_scopeStep->key);
    m_verdict = markOf(view.verdict);
    m_verdictWord = models::verdictWord(view.verdict);
    if (view.newest == nullptr) return;
    if (view.newest->answer.reading)
        present({*view.newest->answer.reading, view.newest->answer.uncertainty}, view.verdict);
    else if (view.newest->answer.seen.there()) m_valueText = m_job->reveal(view.newest->answer.seen);
}

void ReadingEntry::present(const Reading& reading, walk::Verdict verdict)
{
    // Recorded in another unit than the one chosen: the figure is shown as it was typed, the scale converts.
    const double scale = base::toDouble(reading.quantity.unit->scale) / base::toDouble(chosenUnit()->scale);
    m_value = base::toDouble(reading.quantity.value) * scale;
    m_valueText =
        reading.quantity.unit == chosenUnit() ? text(base::toText(reading.quantity.value)) : written(reading.quantity);
    if (reading.uncertainty) {
        m_uncertainty = base::toDouble(*reading.uncertainty) * scale;
        m_uncertaintyText = models::uncertaintyText(reading.uncertainty);
    }
    m_verdict = markOf(verdict);
    m_verdictWord = models::verdictWord(verdict);
    diagnose(reading);
}

void ReadingEntry::diagnose(const Reading& reading)
{
    if (isLoopAtRest() && m_verdict != parts::verdict::Pass) {
        const LoopWords words = loopWords(*m_job, m_scopeStep->key, reading.quantity);
        m_diagnosis = words.line;
        m_diagnosisLong = words.sentences;
        m_tell = words.tell;
    }
    if (!m_diagnosis.isEmpty() || m_verdict != parts::verdict::TooClose) return;
    m_diagnosis = m_diagnosisLong = whiskerWords({m_value, m_uncertainty, m_lower, m_upper});
}

void ReadingEntry::lookForWants()
{
    const auto present = walk::stateFor(m_job->state(), m_scopeStep->key);
    const auto& allowed = m_scopeStep->step.states;
    if (std::ranges::find(allowed, present) == allowed.end()) {
        QStringList wanted;
        for (const auto state : allowed)
            wanted.append(parts::phrase("window.state." + std::string(catalogue::wordOf(state))));
        m_wanting = AreaState;
        m_wantingWords = parts::phrase(
            "window.wants-state",
            {{"found", parts::phrase("window.state." + std::string(catalogue::wordOf(present))).toStdString()},
             {"wanted", wanted.join(parts::phrase("window.or")).toStdString()}});
    } else if (m_instruments.isEmpty()) {
        m_wanting = Instrument;
        m_wantingWords = parts::phrase("window.wants-instrument");
    }
}

QStringList ReadingEntry::units() const
{
    QStringList written;
    for (const base::Unit* unit : m_units) written.append(text(std::string(unit->written)));
    return written;
}

QString ReadingEntry::unitText() const
{
    return m_units.empty() ? QString() : text(std::string(chosenUnit()->written));
}

QString ReadingEntry::act() const { return known() ? text(m_scopeStep->step.act) : QString(); }
QString ReadingEntry::expect() const { return known() ? text(m_scopeStep->step.expect) : QString(); }
QString ReadingEntry::caution() const { return known() ? text(m_scopeStep->step.caution) : QString(); }
QString ReadingEntry::never() const { return known() ? text(m_scopeStep->step.never) : QString(); }
QString ReadingEntry::leftEnd() const { return isLoopAtRest() ? endWords(1) : QString(); }
QString ReadingEntry::rightEnd() const { return isLoopAtRest() ? endWords(2) : QString(); }

void ReadingEntry::setTyped(const QString& typed)
{
    if (!known() || m_busy || typed == m_typed || typed.size() > mostDigits) return;
    m_typed = typed;
    m_end = 0;
    m_problem.clear();
    keepDraft();
    refresh();
}

void ReadingEntry::setUnit(int row)
{
    if (row == m_unit || row < 0 || row >= static_cast<int>(m_units.size())) return;
    m_unit = row;
    keepDraft();
    refresh();
}

void ReadingEntry::nextUnit()
{
    if (!m_units.empty()) setUnit((m_unit + 1) % static_cast<int>(m_units.size()));
}

void ReadingEntry::nextInstrument()
{
    const QStringList all = choices();
    setInstrument(all[(all.indexOf(m_instrument) + 1) % all.size()]);
}

void ReadingEntry::inSeconds()
{
    const auto seconds = std::ranges::find(m_units, std::string_view("s"), &base::Unit::code);
    if (seconds != m_units.end()) setUnit(static_cast<int>(seconds - m_units.begin()));
}

void ReadingEntry::setSeconds(double seconds)
{
    inSeconds();
    setTyped(QString::number(seconds, 'f', 1));
}

double ReadingEntry::corridor() const
{
    // Drawing only: what may be ends at three quarters, so that being late has room.
    if (!std::isnan(m_upper)) return m_upper * 4 / 3;
    return std::isnan(m_lower) ? 90 : m_lower * 2;
}

QList<double> ReadingEntry::earlier() const
{
    QList<double> values;
    if (!known()) return values;
    for (const walk::Attempt* attempt : walk::standingAttempts(m_job->state(), m_scopeStep->key)) {
        if (!attempt->answer.reading) continue;
        const base::Quantity& reading = *attempt->answer.reading;
        values.append(base::toDouble(reading.value) * base::toDouble(reading.unit->scale)
                      / base::toDouble(chosenUnit()->scale));
    }
    return values;
}

void ReadingEntry::setInstrument(const QString& name)
{
    if (!known() || name == m_instrument) return;
    Whereabouts::instance().setDraft("instrument/" + text(std::string(chosenUnit()->quantity)),
                                     name.isEmpty() ? QStringLiteral("-") : name);
    refresh();
}

void ReadingEntry::digit(const QString& digit)
{
    if (digit.size() != 1 || digit[0] < '0' || digit[0] > '9') return;
    setTyped((m_typed == QStringLiteral("0") ? QString() : m_typed) + digit);
}

void ReadingEntry::point()
{
    if (m_typed.contains('.')) return;
    const bool bare = m_typed.isEmpty() || m_typed == QStringLiteral("-");
    setTyped(m_typed + (bare ? QStringLiteral("0.") : QStringLiteral(".")));
}

void ReadingEntry::sign() { setTyped(m_typed.startsWith('-') ? m_typed.mid(1) : '-' + m_typed); }

void ReadingEntry::erase()
{
    if (m_end != 0) clear();
    else setTyped(m_typed.chopped(m_typed.isEmpty() ? 0 : 1));
}

void ReadingEntry::end(int which)
{
    if (!isLoopAtRest() || m_busy || which < 0 || which > 1) return;
    m_typed.clear();
    m_end = which + 1;
    m_problem.clear();
    keepDraft();
    refresh();
}

void ReadingEntry::clear()
{
    if (m_busy || !known()) return;
    m_typed.clear();
    m_end = 0;
    m_problem.clear();
    keepDraft();
    refresh();
}

void ReadingEntry::record()
{
    if (!known() || m_busy || !fresh()) return;
    auto command = named(m_subject);
    command["do"] = "answer";
    command["step"] = m_scopeStep->key.name;
    command["signal"] = m_scopeStep->key.signal;
    if (m_end != 0) {
        command["result"] = "not-as-planned";
        command["seen"] = endWords(m_end).toStdString();
    } else {
        command["value"] = m_typed.toStdString() + " " + std::string(chosenUnit()->code);
        if (!m_instrument.isEmpty()) command["instrument"] = m_instrument.toStdString();
    }
    m_busy = true;
    m_problem.clear();
    Q_EMIT changed();
    const walk::ScopeStep* asked = m_scopeStep;
    const QString draft = draftName();
    Desk::instance().tell(this, base::Json(std::move(command)), [this, asked, draft](const Result<int>& result) {
        if (result) Whereabouts::instance().setDraft(draft, {});
        // The page may have gone on to another step meanwhile: what was asked is answered, what is shown stays.
        if (asked != m_scopeStep) return;
        m_busy = false;
        if (!result) m_problem = sentence(result.error());
        else {
            m_typed.clear();
            m_end = 0;
        }
        refresh();
        if (result) Q_EMIT recorded();
    });
}

} // namespace proofwalk::models
