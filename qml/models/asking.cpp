// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/asking.h"

#include "qml/models/desk.h"
#include "qml/models/telling.h"

namespace proofwalk::models {

void Asking::begin()
{
    m_busy = true;
    m_problem.clear();
    m_changed();
}

void Asking::end(const QString& problem)
{
    m_busy = false;
    m_problem = problem;
    m_changed();
}

void Asking::tell(base::Json::Object command, std::function<void()> done)
{
    if (m_busy) return;
    begin();
    Desk::instance().tell(m_owner, base::Json(std::move(command)),
                          [this, done = std::move(done)](const Result<int>& outcome) {
                              end(outcome ? QString() : sentence(outcome.error()));
                              if (outcome && done) done();
                          });
}

} // namespace proofwalk::models
