// SPDX-License-Identifier: GPL-3.0-or-later
// One device and the stage of it that is in hand: what the card shows and what its buttons ask of core/walk.
#pragma once

#include "core/base/json.h"
#include "core/walk/stages.h"
#include "qml/models/rows.h"
#include "qml/models/snapshot.h"

#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace proofwalk::models {

/// One of the four windows of a device.
struct ProofRow {
    Q_GADGET
    Q_PROPERTY(int kind MEMBER kind)         ///< 0 to 3: input, response, output, received
    Q_PROPERTY(int state MEMBER state)       ///< Proof
    Q_PROPERTY(int seen MEMBER seen)         ///< Seen
    Q_PROPERTY(double progress MEMBER progress)
    Q_PROPERTY(QString word MEMBER word)

public:
    int kind = 0, state = 0, seen = 0;
    double progress = 0;
    QString word;
    friend bool operator==(const ProofRow&, const ProofRow&) = default;
};

class ProofList : public PROOFWALK_ROWS(ProofRow) {
    Q_OBJECT
    QML_ANONYMOUS

public:
    using Rows::Rows;
    void show(const walk::DeviceView* view);
};

/// A stage as a tread of the stair.
struct StageRow {
    Q_GADGET
    Q_PROPERTY(QString title MEMBER title)   ///< "fixing, opened, closed"
    Q_PROPERTY(QString figure MEMBER figure) ///< "3.40 ± 0.05 kΩ", "5 of 5"; empty if it has none
    Q_PROPERTY(QString needs MEMBER needs) ///< the states it can be done in, where the present one is not among them
    Q_PROPERTY(int verdict MEMBER verdict)
    Q_PROPERTY(int seen MEMBER seen)
    Q_PROPERTY(bool answered MEMBER answered)
    Q_PROPERTY(bool possible MEMBER possible)
    Q_PROPERTY(bool here MEMBER here)

public:
    QString title, figure, needs;
    int verdict = 0, seen = 0;
    bool answered = false, possible = false, here = false;
    friend bool operator==(const StageRow&, const StageRow&) = default;
};

class StageList : public PROOFWALK_ROWS(StageRow) {
    Q_OBJECT
    QML_ANONYMOUS

public:
    using Rows::Rows;
    void show(std::vector<StageRow> rows) { replace(std::move(rows)); }
};

/// A step of the stage in hand, in full.
struct StepRow {
    Q_GADGET
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString signal MEMBER signal)
    Q_PROPERTY(QString act MEMBER act)
    Q_PROPERTY(QString expect MEMBER expect)
    Q_PROPERTY(QString never MEMBER never)

public:
    QString name, signal, act, expect, never;
    friend bool operator==(const StepRow&, const StepRow&) = default;
};

class StepList : public PROOFWALK_ROWS(StepRow) {
    Q_OBJECT
    QML_ANONYMOUS

public:
    using Rows::Rows;
    void show(std::vector<StepRow> rows) { replace(std::move(rows)); }
};

class DeviceCard : public QObject {
    Q_OBJECT
    QML_ELEMENT

    Q_PROPERTY(QString tag READ tag WRITE setTag NOTIFY changed)
    Q_PROPERTY(bool found READ found NOTIFY changed) ///< there is such a device
    Q_PROPERTY(bool sheet READ sheet NOTIFY changed) ///< and a test sheet for its kind
    Q_PROPERTY(QString floor READ floor NOTIFY changed)
    Q_PROPERTY(QString room READ room NOTIFY changed)
    Q_PROPERTY(QString position READ position NOTIFY changed) ///< "above the counter"; may be empty
    Q_PROPERTY(QString kind READ kind NOTIFY changed) ///< names its drawing
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString stopWords READ stopWords NOTIFY changed) ///< "stop 42 of 64"
    Q_PROPERTY(QString provedWords READ provedWords NOTIFY changed) ///< "0 of 2 proved"
    Q_PROPERTY(QString zoneWords READ zoneWords NOTIFY changed) ///< "zone 19 “Cellar movement”"
    Q_PROPERTY(QString purpose READ purpose NOTIFY changed) ///< "intrusion, on-route"
    Q_PROPERTY(int verdict READ verdict NOTIFY changed)
    Q_PROPERTY(QString verdictWord READ verdictWord NOTIFY changed)

    Q_PROPERTY(proofwalk::models::ProofList* proofs READ proofs CONSTANT)
    Q_PROPERTY(proofwalk::models::StageList* stages READ stages CONSTANT)
    Q_PROPERTY(proofwalk::models::StepList* steps READ steps CONSTANT) ///< of the stage in hand

    Q_PROPERTY(int extras READ extras NOTIFY changed) ///< steps of its sheet that may be left out
    Q_PROPERTY(bool extended READ extended WRITE setExtended NOTIFY changed) ///< they are to be done here too
    Q_PROPERTY(int inHand READ inHand NOTIFY changed) ///< row of stages; -1 if there is nothing to do
    Q_PROPERTY(Task task READ task NOTIFY changed) ///< what the stage in hand asks of the person
    Q_PROPERTY(
        QString subject READ subject NOTIFY changed) ///< of the stage in hand, as commands name it: "GR-01", "zone 4"
    Q_PROPERTY(QStringList stepNames READ stepNames NOTIFY changed) ///< of the stage in hand
    Q_PROPERTY(QString stepsName READ stepsName NOTIFY changed) ///< the same as one: "opened,closed"
    Q_PROPERTY(QString caution READ caution NOTIFY changed) ///< stands before the stage in hand
    Q_PROPERTY(QString pattern READ pattern NOTIFY changed) ///< Listen: how it should sound; may be empty
    Q_PROPERTY(bool possible READ possible NOTIFY changed) ///< in the present state of its areas
    Q_PROPERTY(QString needsWords READ needsWords NOTIFY changed) ///< else: what it needs
    Q_PROPERTY(
        QString answersWords READ answersWords NOTIFY changed) ///< what "as planned" answers, and what stays open
    Q_PROPERTY(int trialsWanted READ trialsWanted NOTIFY changed)
    Q_PROPERTY(QString doneWords READ doneWords NOTIFY changed) ///< "4 steps done"; empty if none
    Q_PROPERTY(int doneMark READ doneMark NOTIFY changed) ///< Verdict: the worst of theirs
    Q_PROPERTY(QString aheadWords READ aheadWords NOTIFY changed) ///< "tamper-open, then 2 more"; empty if none
    Q_PROPERTY(
        int bulkPeers READ bulkPeers NOTIFY changed) ///< devices of its kind in its room with the same stage in hand

    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged) ///< a tap is not durable yet
    Q_PROPERTY(QString problem READ problem NOTIFY problemChanged)
    Q_PROPERTY(QString nextTag READ nextTag NOTIFY changed)
    Q_PROPERTY(QString nextWords READ nextWords NOTIFY changed)

public:
    enum Task { Nothing, Look, Read, Time, Trials, Listen, Photograph, Confirm };
    Q_ENUM(Task)

    explicit DeviceCard(QObject* parent = nullptr);

    QString tag() const { return m_tag; }
    void setTag(const QString& tag);
    bool found() const { return m_found; }
    bool sheet() const { return m_sheet; }
    QString floor() const { return m_floor; }
    QString room() const { return m_room; }
    QString position() const { return m_position; }
    QString kind() const { return m_kind; }
    QString title() const { return m_title; }
    QString stopWords() const { return m_stopWords; }
    QString provedWords() const { return m_provedWords; }
    QString zoneWords() const { return m_zoneWords; }
    QString purpose() const { return m_purpose; }
    int verdict() const { return m_verdict; }
    QString verdictWord() const { return m_verdictWord; }
    ProofList* proofs() { return &m_proofs; }
    StageList* stages() { return &m_stageRows; }
    StepList* steps() { return &m_steps; }
    int extras() const { return m_extras; }
    bool extended() const { return m_extended; }
    void setExtended(bool extended);
    int inHand() const { return m_inHand; }
    Task task() const { return m_task; }
    QString subject() const { return m_subject; }
    QStringList stepNames() const;
    QString stepsName() const { return stepNames().join(','); }
    QString caution() const { return m_caution; }
    QString pattern() const { return m_pattern; }
    bool possible() const { return m_possible; }
    QString needsWords() const { return m_needsWords; }
    QString answersWords() const { return m_answersWords; }
    int trialsWanted() const { return m_trialsWanted; }
    QString doneWords() const { return m_doneWords; }
    int doneMark() const { return m_doneMark; }
    QString aheadWords() const { return m_aheadWords; }
    int bulkPeers() const { return static_cast<int>(m_peers.size()); }
    bool busy() const { return m_waiting > 0; }
    QString problem() const { return m_problem; }
    QString nextTag() const { return m_nextTag; }
    QString nextWords() const { return m_nextWords; }

    /// Takes another stage in hand; -1 goes back to the first that waits.
    Q_INVOKABLE void choose(int stage);
    /// Every step of the stage in hand was seen to be as planned.
    Q_INVOKABLE void asPlanned();
    /// The same for its like in this room, each marked as answered in bulk. Core refuses what may not be.
    Q_INVOKABLE void asPlannedInBulk();
    Q_INVOKABLE void trials(int hits, int tries);
    Q_INVOKABLE void noAccess(const QString& reason); ///< to the whole device
    Q_INVOKABLE void notApplicable(const QString& reason); ///< the stage in hand
    Q_INVOKABLE void started(); ///< the result comes hours or days later
    Q_INVOKABLE void withdraw(int stage, const QString& reason); ///< the newest answer of each of its steps
    Q_INVOKABLE void note(const QString& words);
    Q_INVOKABLE void clearProblem();

Q_SIGNALS:
    void changed();
    void busyChanged();
    void problemChanged();
    void answered(); ///< what was asked is durable
    void left(); ///< and nothing more can be done here now

private:
    void refresh();
    void clear();
    void describe(const Snapshot& job, const walk::DeviceView& view);
    void describeStages(const Snapshot& job, const walk::DeviceView& view);
    void describeInHand(const Snapshot& job, const walk::DeviceView& view);
    void findPeers(const Snapshot& job, const walk::DeviceView& view);
    const walk::Stage* stage(int row) const;
    base::Json::Object answerTo(const walk::StepKey& key, const std::string& tag) const;
    void tell(std::vector<base::Json> commands);
    void setProblem(const QString& problem);

    QString m_tag, m_floor, m_room, m_position, m_kind, m_title, m_stopWords, m_provedWords, m_zoneWords, m_purpose,
        m_verdictWord, m_subject, m_caution, m_pattern, m_needsWords, m_answersWords, m_doneWords, m_aheadWords,
        m_problem, m_nextTag, m_nextWords;
    int m_verdict = 0, m_doneMark = 0, m_inHand = -1, m_chosen = -1, m_trialsWanted = 0, m_waiting = 0, m_extras = 0;
    bool m_found = false, m_sheet = false, m_possible = false, m_extended = false;
    Task m_task = Nothing;
    ProofList m_proofs;
    StageList m_stageRows;
    StepList m_steps;
    std::shared_ptr<const Snapshot> m_job;
    std::vector<walk::Stage> m_stages;
    std::vector<std::string> m_peers;
};

} // namespace proofwalk::models
