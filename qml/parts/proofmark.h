// SPDX-License-Identifier: GPL-3.0-or-later
// One of the four proofs as a window in the wall, with its glyph.
#pragma once

#include "qml/parts/drawn.h"
#include "qml/parts/kinds.h"

namespace proofwalk::parts {

class ProofMark : public proofwalk::parts::Drawn {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int kind READ kind WRITE setKind NOTIFY kindChanged) ///< 0 input, 1 response, 2 output, 3 received
    Q_PROPERTY(int state READ proofState WRITE setProofState NOTIFY proofStateChanged) ///< Proof
    Q_PROPERTY(int seen READ seen WRITE setSeen NOTIFY seenChanged) ///< Seen; an ear takes room at the right
    Q_PROPERTY(double progress READ progress WRITE setProgress NOTIFY progressChanged) ///< 0 to 1, under way

public:
    explicit ProofMark(QQuickItem* parent = nullptr);
    int kind() const { return m_kind; }
    void setKind(int kind);
    int proofState() const { return m_state; }
    void setProofState(int state);
    int seen() const { return m_seen; }
    void setSeen(int seen);
    double progress() const { return m_progress; }
    void setProgress(double progress);

Q_SIGNALS:
    void kindChanged();
    void proofStateChanged();
    void seenChanged();
    void progressChanged();

protected:
    void draw(report::Drawing& drawing) override;

private:
    int m_kind = 0;
    int m_state = proof::NotPromised;
    int m_seen = seen::Singly;
    double m_progress = 0;
};

} // namespace proofwalk::parts
