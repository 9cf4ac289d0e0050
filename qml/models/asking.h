// SPDX-License-Identifier: GPL-3.0-or-later
// What every model does that asks core/walk for something: one thing at a time, its refusal kept as a sentence.
#pragma once

#include "core/base/json.h"

#include <QObject>
#include <QString>

#include <functional>

namespace proofwalk::models {

/// Held by a model. `changed` is called whenever busy() or problem() is another.
class Asking {
public:
    Asking(QObject* owner, std::function<void()> changed) : m_owner(owner), m_changed(std::move(changed)) {}

    bool busy() const { return m_busy; }
    const QString& problem() const { return m_problem; }

    /// Does nothing while an answer is awaited. `done` is called once it is durable, not after a refusal.
    void tell(base::Json::Object command, std::function<void()> done = {});
    void begin();
    void end(const QString& problem = {});

private:
    QObject* m_owner;
    std::function<void()> m_changed;
    bool m_busy = false;
    QString m_problem;
};

} // namespace proofwalk::models
