// SPDX-License-Identifier: GPL-3.0-or-later
// Counted trials as squares: filled for a hit, hollow for one to come, crossed for one that failed.
#pragma once

#include "qml/parts/drawn.h"

namespace proofwalk::parts {

class TrialBoxes : public proofwalk::parts::Drawn {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int hits READ hits WRITE setHits NOTIFY countsChanged)
    Q_PROPERTY(int tries READ tries WRITE setTries NOTIFY countsChanged) ///< hits and misses together
    Q_PROPERTY(int wanted READ wanted WRITE setWanted NOTIFY countsChanged)

public:
    explicit TrialBoxes(QQuickItem* parent = nullptr);
    int hits() const { return m_hits; }
    void setHits(int hits) { keep(m_hits, hits); }
    int tries() const { return m_tries; }
    void setTries(int tries) { keep(m_tries, tries); }
    int wanted() const { return m_wanted; }
    void setWanted(int wanted) { keep(m_wanted, wanted); }

Q_SIGNALS:
    void countsChanged();

protected:
    void draw(report::Drawing& drawing) override;

private:
    void keep(int& kept, int value);
    int boxes() const;

    int m_hits = 0, m_tries = 0, m_wanted = 0;
};

} // namespace proofwalk::parts
