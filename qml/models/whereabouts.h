// SPDX-License-Identifier: GPL-3.0-or-later
// Where the person stands in the window: which place, which card, what is half typed. Kept beside the machine's key for
// each job, so that a program that was killed opens where it was. No record of the site: that is the job's.
#pragma once

#include <QMap>
#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

QT_BEGIN_NAMESPACE
class QJSEngine;
class QQmlEngine;
QT_END_NAMESPACE

namespace proofwalk::models {

class Whereabouts : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON

    Q_PROPERTY(Place place READ place WRITE setPlace NOTIFY moved)
    Q_PROPERTY(QString page READ page WRITE setPage NOTIFY moved) ///< within the place: "", "card", "round", …
    Q_PROPERTY(QString subject READ subject WRITE setSubject NOTIFY moved) ///< what the page is about: a tag, a name
    Q_PROPERTY(int furthest READ furthest NOTIFY moved) ///< the furthest place the day has come to

public:
    enum Place { Plan, Walk, Findings, Readings, Handover };
    Q_ENUM(Place)

    static Whereabouts& instance();
    static Whereabouts* create(QQmlEngine* engine, QJSEngine* script);

    Place place() const { return m_place; }
    void setPlace(Place place);
    QString page() const { return m_page; }
    void setPage(const QString& page);
    QString subject() const { return m_subject; }
    void setSubject(const QString& subject);
    int furthest() const { return m_furthest; }

    /// One move instead of three.
    Q_INVOKABLE void go(Place place, const QString& page = {}, const QString& subject = {});

    /// What was typed and not yet recorded, by whatever names it: "GR-01/opening-gap". An empty text forgets it.
    Q_INVOKABLE QString draft(const QString& of) const { return m_drafts.value(of); }
    Q_INVOKABLE void setDraft(const QString& of, const QString& typed);

Q_SIGNALS:
    void moved();

private:
    Whereabouts();
    void recall();
    void keep();
    QString fileOf(const QString& job) const;

    Place m_place = Walk;
    QString m_page, m_subject;
    int m_furthest = Walk;
    QMap<QString, QString> m_drafts;
    QString m_job; ///< id of the job it is kept for; empty: nothing is kept
};

} // namespace proofwalk::models
