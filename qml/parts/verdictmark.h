// SPDX-License-Identifier: GPL-3.0-or-later
// A verdict's mark with how it was seen. The word beside it is its user's.
#pragma once

#include "qml/parts/drawn.h"
#include "qml/parts/kinds.h"

namespace proofwalk::parts {

class VerdictMark : public proofwalk::parts::Drawn {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int mark READ mark WRITE setMark NOTIFY markChanged) ///< Verdict; outside of it nothing is drawn
    Q_PROPERTY(int seen READ seen WRITE setSeen NOTIFY seenChanged) ///< Seen; an ear takes room at the right

public:
    explicit VerdictMark(QQuickItem* parent = nullptr);
    int mark() const { return m_mark; }
    void setMark(int mark);
    int seen() const { return m_seen; }
    void setSeen(int seen);

Q_SIGNALS:
    void markChanged();
    void seenChanged();

protected:
    void draw(report::Drawing& drawing) override;

private:
    int m_mark = verdict::ToDo;
    int m_seen = seen::Singly;
};

} // namespace proofwalk::parts
