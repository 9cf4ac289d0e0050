// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/whereabouts.h"

#include "core/journal/home.h"
#include "qml/models/desk.h"

#include <QDir>
#include <QFile>
#include <QJSEngine>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>

#include <algorithm>

namespace proofwalk::models {

Whereabouts& Whereabouts::instance()
{
    static Whereabouts whereabouts;
    return whereabouts;
}

Whereabouts* Whereabouts::create(QQmlEngine*, QJSEngine*)
{
    QJSEngine::setObjectOwnership(&instance(), QJSEngine::CppOwnership);
    return &instance();
}

Whereabouts::Whereabouts()
{
    connect(&Desk::instance(), &Desk::opened, this, &Whereabouts::recall);
    recall();
}

void Whereabouts::setPlace(Place place) { go(place); }

void Whereabouts::setPage(const QString& page) { go(m_place, page, m_subject); }

void Whereabouts::setSubject(const QString& subject) { go(m_place, m_page, subject); }

void Whereabouts::go(Place place, const QString& page, const QString& subject)
{
    if (place == m_place && page == m_page && subject == m_subject) return;
    m_place = place;
    m_page = page;
    m_subject = subject;
    m_furthest = std::max(m_furthest, static_cast<int>(place));
    keep();
    Q_EMIT moved();
}

void Whereabouts::setDraft(const QString& of, const QString& typed)
{
    if (m_drafts.value(of) == typed) return;
    if (typed.isEmpty()) m_drafts.remove(of);
    else m_drafts[of] = typed;
    keep();
}

QString Whereabouts::fileOf(const QString& job) const
{
    const auto home = journal::homeFolder();
    if (!home || job.isEmpty()) return {};
    return QString::fromStdString((*home / "window" / (job.toStdString() + ".json")).string());
}

void Whereabouts::recall()
{
    const auto job = Desk::instance().job();
    m_job = job == nullptr ? QString() : QString::fromStdString(job->id());
    m_place = Walk;
    m_page.clear();
    m_subject.clear();
    m_furthest = Walk;
    m_drafts.clear();
    // A file that is missing or damaged costs a few taps and nothing of the record.
    if (QFile file(fileOf(m_job)); !m_job.isEmpty() && file.open(QIODevice::ReadOnly)) {
        const QJsonObject kept = QJsonDocument::fromJson(file.read(1 << 20)).object();
        m_place = static_cast<Place>(std::clamp(kept["place"].toInt(Walk), int{Plan}, int{Handover}));
        m_page = kept["page"].toString();
        m_subject = kept["subject"].toString();
        m_furthest = std::clamp(kept["furthest"].toInt(m_place), int{Plan}, int{Handover});
        const QJsonObject drafts = kept["drafts"].toObject();
        for (auto draft = drafts.begin(); draft != drafts.end(); ++draft)
            m_drafts[draft.key()] = draft.value().toString();
    }
    Q_EMIT moved();
}

void Whereabouts::keep()
{
    if (m_job.isEmpty()) return;
    QJsonObject drafts;
    for (auto draft = m_drafts.begin(); draft != m_drafts.end(); ++draft) drafts[draft.key()] = draft.value();
    const QJsonObject kept{
        {"place", m_place}, {"page", m_page}, {"subject", m_subject}, {"furthest", m_furthest}, {"drafts", drafts}};
    // Written by the job's thread, in the order of the taps: a slow disk must not hold up the window.
    Desk::instance().aside([name = fileOf(m_job), bytes = QJsonDocument(kept).toJson(QJsonDocument::Compact)] {
        QDir().mkpath(QFileInfo(name).path());
        QSaveFile file(name);
        if (!file.open(QIODevice::WriteOnly)) return;
        file.write(bytes);
        file.commit();
    });
}

} // namespace proofwalk::models
