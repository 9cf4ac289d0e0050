// SPDX-License-Identifier: GPL-3.0-or-later
// Time as a corridor that is walked: the doorway is when it may end, walls are too early and too late. In seconds.
#pragma once

#include "qml/parts/drawn.h"

#include <limits>

namespace proofwalk::parts {

class TimedPicture : public proofwalk::parts::Drawn {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(double elapsed READ elapsed WRITE setElapsed NOTIFY timesChanged) ///< 0: not yet begun
    Q_PROPERTY(double lower READ lower WRITE setLower NOTIFY timesChanged)       ///< NaN: no limit
    Q_PROPERTY(double upper READ upper WRITE setUpper NOTIFY timesChanged)       ///< NaN: no limit
    Q_PROPERTY(double full READ full WRITE setFull NOTIFY timesChanged)          ///< the whole corridor, above 0

public:
    using Drawn::Drawn;
    double elapsed() const { return m_elapsed; }
    void setElapsed(double elapsed) { keep(m_elapsed, elapsed); }
    double lower() const { return m_lower; }
    void setLower(double lower) { keep(m_lower, lower); }
    double upper() const { return m_upper; }
    void setUpper(double upper) { keep(m_upper, upper); }
    double full() const { return m_full; }
    void setFull(double full) { keep(m_full, full); }

Q_SIGNALS:
    void timesChanged();

protected:
    /// Where a moment stands, 0 at the start to 1 at the end of the corridor; past the end one stands at the end, the
    /// figure beside tells how long since. Nothing if it is absent or the corridor has no length.
    std::optional<double> share(double seconds) const;

private:
    void keep(double& kept, double value)
    {
        if (take(kept, value)) Q_EMIT timesChanged();
    }

    double m_elapsed = 0;
    double m_lower = std::numeric_limits<double>::quiet_NaN();
    double m_upper = std::numeric_limits<double>::quiet_NaN();
    double m_full = 90;
};

} // namespace proofwalk::parts
