// SPDX-License-Identifier: GPL-3.0-or-later
// The numbers of a reading on its scale, large or small. A limit is a wall, what is allowed the doorway in it.
#pragma once

#include "qml/parts/drawn.h"
#include "qml/parts/kinds.h"

#include <limits>

namespace proofwalk::parts {

/// Those that derive from it name it with its namespace, as it does Drawn.
class ReadingScale : public proofwalk::parts::Drawn {
    Q_OBJECT
    QML_ANONYMOUS
    // All in one unit; NaN: absent.
    Q_PROPERTY(double lower READ lower WRITE setLower NOTIFY numbersChanged)
    Q_PROPERTY(double upper READ upper WRITE setUpper NOTIFY numbersChanged)
    Q_PROPERTY(double value READ value WRITE setValue NOTIFY numbersChanged)
    Q_PROPERTY(double uncertainty READ uncertainty WRITE setUncertainty NOTIFY numbersChanged) ///< half a whisker
    Q_PROPERTY(int mark READ mark WRITE setMark NOTIFY numbersChanged) ///< Verdict of the reading

public:
    static constexpr double absent = std::numeric_limits<double>::quiet_NaN();

    using Drawn::Drawn;
    double lower() const { return m_lower; }
    void setLower(double lower) { keep(m_lower, lower); }
    double upper() const { return m_upper; }
    void setUpper(double upper) { keep(m_upper, upper); }
    double value() const { return m_value; }
    void setValue(double value) { keep(m_value, value); }
    double uncertainty() const { return m_uncertainty; }
    void setUncertainty(double uncertainty) { keep(m_uncertainty, uncertainty); }
    int mark() const { return m_mark; }
    void setMark(int mark) { keep(m_mark, mark); }

Q_SIGNALS:
    void numbersChanged();

protected:
    report::Scale scale() const;
    template <class T>
    void keep(T& kept, const T& value)
    {
        if (take(kept, value)) Q_EMIT numbersChanged();
    }

private:
    double m_lower = absent, m_upper = absent, m_value = absent, m_uncertainty = 0;
    int m_mark = verdict::ToDo;
};

} // namespace proofwalk::parts
