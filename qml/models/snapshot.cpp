// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/snapshot.h"

#include "core/walk/order.h"

#include <algorithm>

namespace proofwalk::models {

Snapshot::Snapshot(const walk::Job& job, std::filesystem::path file)
    : m_file(std::move(file)), m_id(job.id()), m_state(job.state()), m_privates(job.privates()),
      m_findings(walk::allFindings(m_state)), m_readiness(walk::readinessOf(m_state, base::now())),
      m_order(walk::walkingOrder(*m_state.scope))
{
    m_views.reserve(m_state.scope->devices.size());
    for (const walk::ScopeDevice& device : m_state.scope->devices) m_views.push_back(walk::viewDevice(m_state, device));
}

const walk::DeviceView* Snapshot::view(const std::string& tag) const
{
    const auto found = std::ranges::find(m_views, tag, [](const auto& view) { return view.device->device->tag; });
    return found == m_views.end() ? nullptr : &*found;
}

QString Snapshot::reveal(const walk::PrivateRef& ref) const
{
    const auto found = m_privates->find(ref.commitment);
    return found == m_privates->end() ? QString() : QString::fromStdString(found->second);
}

} // namespace proofwalk::models
