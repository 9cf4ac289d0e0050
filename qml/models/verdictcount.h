// SPDX-License-Identifier: GPL-3.0-or-later
// How many devices have each verdict: the legend of the marks with its figures.
#pragma once

#include "qml/models/rows.h"

#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

struct VerdictRow {
    Q_GADGET
    Q_PROPERTY(int verdict MEMBER verdict)
    Q_PROPERTY(QString words MEMBER words) ///< "pass 37"; without a figure if there is none

public:
    int verdict = 0;
    QString words;
    friend bool operator==(const VerdictRow&, const VerdictRow&) = default;
};

class VerdictCount : public PROOFWALK_ROWS(VerdictRow) {
    Q_OBJECT
    QML_ELEMENT

public:
    explicit VerdictCount(QObject* parent = nullptr);

private:
    void refresh();
};

} // namespace proofwalk::models
