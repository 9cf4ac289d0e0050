// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/trialcount.h"

#include "qml/models/whereabouts.h"
#include "qml/parts/words.h"

#include <QStringList>

namespace proofwalk::models {

void TrialCount::setOf(const QString& of)
{
    if (of == m_of) return;
    m_of = of;
    const QStringList kept = Whereabouts::instance().draft(m_of + "/trials").split('/');
    m_hits = kept.size() == 2 ? kept[0].toInt() : 0;
    m_tries = kept.size() == 2 ? kept[1].toInt() : 0;
    Q_EMIT changed();
}

void TrialCount::setWanted(int wanted)
{
    if (wanted == m_wanted) return;
    m_wanted = wanted;
    Q_EMIT changed();
}

QString TrialCount::words() const
{
    return parts::phrase("window.some-of", {{"some", std::int64_t{m_tries}}, {"all", std::int64_t{m_wanted}}});
}

void TrialCount::answered() { count(true); }

void TrialCount::missed() { count(false); }

void TrialCount::startOver()
{
    m_hits = m_tries = 0;
    Whereabouts::instance().setDraft(m_of + "/trials", {});
    Q_EMIT changed();
}

void TrialCount::count(bool hit)
{
    if (m_tries >= m_wanted) return; // told already; what comes of it is being recorded
    ++m_tries;
    m_hits += hit ? 1 : 0;
    Whereabouts::instance().setDraft(m_of + "/trials", QStringLiteral("%1/%2").arg(m_hits).arg(m_tries));
    Q_EMIT changed();
    if (m_tries == m_wanted) Q_EMIT complete(m_hits, m_tries);
}

} // namespace proofwalk::models
