// SPDX-License-Identifier: GPL-3.0-or-later
// One state in all its sizes and looks: drawn, checked, and kept as pictures.
#pragma once

#include "tests/screens/jobs.h"
#include "tests/screens/states.h"

#include <QSet>

namespace proofwalk::screens {

struct Told {
    int pictures = 0;
    QStringList violations;  ///< "walk-card-360x640-light: rule: item: says"
    QSet<QString> types;     ///< of our own QML that was seen: "CardFoot"
};

class Checking {
public:
    /// Pictures go to `folder`; empty: none are kept, and the looks besides light are drawn in the smallest size only.
    Checking(Jobs& jobs, QString folder) : m_jobs(jobs), m_folder(std::move(folder)) {}

    void check(const State& state, Told& told);

private:
    void inSize(const State& state, const QSize& size, Told& told);

    Jobs& m_jobs;
    QString m_folder;
};

} // namespace proofwalk::screens
