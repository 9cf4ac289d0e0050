// SPDX-License-Identifier: GPL-3.0-or-later
// What every drawn part is: a picture made by the report's own hand with the inks of the look that is chosen.
#pragma once

#include "core/report/contents.h"
#include "core/report/drawing.h"

#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

#include <cmath>
#include <optional>

namespace proofwalk::parts {

/// The report's inks in the colours of the Theme.
report::Palette inksOfLook();

/// An enumerator of kinds.h as the report has it; nothing if there is none of that number.
std::optional<report::Verdict> verdictOf(int mark);
std::optional<report::ProofSeen> seenOf(int seen);
std::optional<report::ProofState> proofOf(int state);

/// Those that draw name it with its namespace: Qt 6.4's type register finds no base otherwise, nor does qmllint then.
class Drawn : public QQuickPaintedItem {
    Q_OBJECT
    QML_ANONYMOUS

public:
    explicit Drawn(QSizeF implicit, QQuickItem* parent = nullptr);
    void paint(QPainter* painter) final;

protected:
    /// In units of the item, from its top left corner.
    virtual void draw(report::Drawing& drawing) = 0;

    /// Keeps a property's new value and draws afresh; false if it is the old one.
    template <class T>
    bool take(T& kept, const T& value)
    {
        if (same(kept, value)) return false;
        kept = value;
        update();
        return true;
    }

private:
    template <class T>
    static bool same(const T& one, const T& other)
    {
        return one == other;
    }
    /// Two absent numbers are the same number.
    static bool same(double one, double other)
    {
        return std::isnan(one) ? std::isnan(other) : !(one < other) && !(one > other);
    }
};

} // namespace proofwalk::parts
