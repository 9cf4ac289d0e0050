// SPDX-License-Identifier: GPL-3.0-or-later
// A number being typed for one step: its digits as they come, what it would be judged as, and the limits it is held
// against. What is typed is kept at each key, so that it is there again after the program was killed.
#pragma once

#include "core/walk/stepview.h"
#include "qml/models/figures.h"
#include "qml/models/snapshot.h"

#include <QList>
#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

class ReadingEntry : public QObject {
    Q_OBJECT
    QML_ELEMENT

    // Which step (qml/models/stepref.h): "GR-01", "zone 12", "area mill", "timer entry-delay mill".
    Q_PROPERTY(QString subject READ subject WRITE setSubject NOTIFY stepChanged)
    Q_PROPERTY(QString step READ step WRITE setStep NOTIFY stepChanged)
    Q_PROPERTY(QString signal READ signal WRITE setSignal NOTIFY stepChanged) ///< may be empty where it is clear
    Q_PROPERTY(bool known READ known NOTIFY changed) ///< there is such a step and it takes a number
    Q_PROPERTY(QString act READ act NOTIFY changed)
    Q_PROPERTY(QString expect READ expect NOTIFY changed)
    Q_PROPERTY(QString caution READ caution NOTIFY changed)
    Q_PROPERTY(QString never READ never NOTIFY changed)

    Q_PROPERTY(QString typed READ typed WRITE setTyped NOTIFY changed) ///< "3.40"; empty: nothing typed
    Q_PROPERTY(int unit READ unit WRITE setUnit NOTIFY changed) ///< row of units
    Q_PROPERTY(QStringList units READ units NOTIFY changed) ///< as written, all of the step's quantity
    Q_PROPERTY(QString unitText READ unitText NOTIFY changed)
    Q_PROPERTY(QStringList instruments READ instruments NOTIFY changed) ///< of the kit, those that measure it
    Q_PROPERTY(QStringList choices READ choices NOTIFY changed) ///< those, and last an empty one: without any
    Q_PROPERTY(QString instrument READ instrument WRITE setInstrument NOTIFY changed) ///< empty: none

    // For the scale, in the unit that is chosen; NaN where there is none. What is typed, else what is recorded.
    Q_PROPERTY(double value READ value NOTIFY changed)
    Q_PROPERTY(QString valueText READ valueText NOTIFY changed)
    Q_PROPERTY(double uncertainty READ uncertainty NOTIFY changed)
    Q_PROPERTY(QString uncertaintyText READ uncertaintyWords NOTIFY changed) ///< "± 0.05"
    Q_PROPERTY(double lower READ lower NOTIFY changed)
    Q_PROPERTY(double upper READ upper NOTIFY changed)
    Q_PROPERTY(double setPoint READ setPoint NOTIFY changed)
    Q_PROPERTY(QString lowerText READ lowerText NOTIFY changed)
    Q_PROPERTY(QString upperText READ upperText NOTIFY changed)
    Q_PROPERTY(QString limitsText READ limitsText NOTIFY changed) ///< "3.0 to 3.7"
    Q_PROPERTY(double corridor READ corridor NOTIFY changed) ///< of a time: the length that shows its limits well
    Q_PROPERTY(QList<double> earlier READ earlier NOTIFY changed) ///< what stands from earlier attempts
    Q_PROPERTY(bool adviceOnly READ adviceOnly NOTIFY changed) ///< the limits shown make a recommendation, no verdict

    Q_PROPERTY(int verdict READ verdict NOTIFY changed) ///< Verdict of value; ToDo if there is none
    Q_PROPERTY(QString verdictWord READ verdictWord NOTIFY changed)
    Q_PROPERTY(bool fresh READ fresh NOTIFY changed) ///< something is typed that is not recorded yet
    Q_PROPERTY(bool complete READ complete NOTIFY changed) ///< and it can be recorded
    Q_PROPERTY(QString diagnosis READ diagnosis NOTIFY changed) ///< one line; empty if nothing physical can be said
    Q_PROPERTY(QString diagnosisLong READ diagnosisLong NOTIFY changed) ///< two sentences
    Q_PROPERTY(QString tell READ tell NOTIFY changed) ///< the act that tells the causes apart

    // The ends of the pad: a reading that is no number ("loop open"). Empty where there is none.
    Q_PROPERTY(QString leftEnd READ leftEnd NOTIFY changed)
    Q_PROPERTY(QString rightEnd READ rightEnd NOTIFY changed)

    // What core would want first, before a number can be recorded or believed.
    Q_PROPERTY(Wanting wanting READ wanting NOTIFY changed)
    Q_PROPERTY(QString wantingWords READ wantingWords NOTIFY changed)

    Q_PROPERTY(QString problem READ problem NOTIFY changed) ///< the last refusal as a sentence
    Q_PROPERTY(bool busy READ busy NOTIFY changed)

public:
    /// AreaState: the area is in none of the step's states. Instrument: nothing in the kit measures this, so the
    /// uncertainty is not known (it may be recorded so).
    enum Wanting { Nothing, AreaState, Instrument };
    Q_ENUM(Wanting)

    explicit ReadingEntry(QObject* parent = nullptr);

    QString subject() const { return m_subject; }
    void setSubject(const QString& subject);
    QString step() const { return m_step; }
    void setStep(const QString& step);
    QString signal() const { return m_signal; }
    void setSignal(const QString& signal);
    /// All three in one move.
    Q_INVOKABLE void show(const QString& subject, const QString& step, const QString& signal = {});

    bool known() const { return m_scopeStep != nullptr; }
    QString act() const, expect() const, caution() const, never() const;
    QString typed() const { return m_typed; }
    void setTyped(const QString& typed);
    int unit() const { return m_unit; }
    void setUnit(int row);
    QStringList units() const;
    QString unitText() const;
    QStringList instruments() const { return m_instruments; }
    QStringList choices() const { return m_instruments + QStringList{QString()}; }
    QString instrument() const { return m_instrument; }
    void setInstrument(const QString& name);

    double value() const { return m_value; }
    QString valueText() const { return m_valueText; }
    double uncertainty() const { return m_uncertainty; }
    QString uncertaintyWords() const { return m_uncertaintyText; }
    double lower() const { return m_lower; }
    double upper() const { return m_upper; }
    double setPoint() const { return m_setPoint; }
    QString lowerText() const { return shortFigure(m_lower); }
    QString upperText() const { return shortFigure(m_upper); }
    QString limitsText() const { return rangeText(m_lower, m_upper); }
    double corridor() const;
    QList<double> earlier() const;
    bool adviceOnly() const { return m_adviceOnly; }
    int verdict() const { return m_verdict; }
    QString verdictWord() const { return m_verdictWord; }
    bool fresh() const { return !m_typed.isEmpty() || m_end != 0; }
    bool complete() const { return m_complete; }
    QString diagnosis() const { return m_diagnosis; }
    QString diagnosisLong() const { return m_diagnosisLong; }
    QString tell() const { return m_tell; }
    QString leftEnd() const, rightEnd() const;
    Wanting wanting() const { return m_wanting; }
    QString wantingWords() const { return m_wantingWords; }
    QString problem() const { return m_problem; }
    bool busy() const { return m_busy; }

    // The pad.
    Q_INVOKABLE void digit(const QString& digit);
    Q_INVOKABLE void point();
    Q_INVOKABLE void sign();
    Q_INVOKABLE void erase();
    Q_INVOKABLE void end(int which); ///< 0 left, 1 right
    Q_INVOKABLE void clear();
    Q_INVOKABLE void nextUnit(); ///< the unit key
    Q_INVOKABLE void nextInstrument(); ///< the choice after the present one, round and round
    /// A time by the stopwatch: in seconds, with one place after the point.
    Q_INVOKABLE void setSeconds(double seconds);
    Q_INVOKABLE void inSeconds(); ///< chooses the unit
    /// Records what is typed; recorded() once it is durable, else problem. Nothing typed: nothing happens.
    Q_INVOKABLE void record();

Q_SIGNALS:
    void stepChanged();
    void changed();
    void recorded();

private:
    struct Reading {
        base::Quantity quantity;
        std::optional<base::Decimal> uncertainty;
    };

    void moveTo();
    void refresh();
    void recallDraft();
    void keepDraft();
    void listInstruments();
    void findLimits();
    void readTyped();
    void readRecorded();
    void judgeTyped(const Reading& reading);
    void present(const Reading& reading, walk::Verdict verdict);
    void diagnose(const Reading& reading);
    void lookForWants();
    QString draftName() const { return m_subject + "/" + m_signal + "/" + m_step; }
    const base::Unit* chosenUnit() const;
    bool isLoopAtRest() const;

    std::shared_ptr<const Snapshot> m_job; ///< holds what m_scopeStep points into
    const walk::ScopeStep* m_scopeStep = nullptr;
    QString m_subject, m_step, m_signal;
    QString m_typed;
    int m_end = 0; ///< 1 left, 2 right, 0 none
    int m_unit = 0;
    std::vector<const base::Unit*> m_units;
    QStringList m_instruments;
    QString m_instrument;
    double m_value = absent, m_uncertainty = absent, m_lower = absent, m_upper = absent, m_setPoint = absent;
    QString m_valueText, m_uncertaintyText, m_verdictWord, m_diagnosis, m_diagnosisLong, m_tell, m_wantingWords,
        m_problem;
    int m_verdict = 0;
    Wanting m_wanting = Nothing;
    bool m_adviceOnly = false, m_complete = false, m_busy = false;
};

} // namespace proofwalk::models
