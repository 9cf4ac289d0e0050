// SPDX-License-Identifier: GPL-3.0-or-later
// What the job's thread publishes after each commit: the job as it stands, for reading only.
#pragma once

#include "core/walk/job.h"
#include "core/walk/readiness.h"

#include <QString>

#include <filesystem>
#include <memory>
#include <vector>

namespace proofwalk::models {

/// Never changed once published, so it may be read on any thread. Views and findings point into its own state.
class Snapshot {
public:
    Snapshot(const walk::Job& job, std::filesystem::path file);
    Snapshot(const Snapshot&) = delete;
    Snapshot& operator=(const Snapshot&) = delete;
    Snapshot(Snapshot&&) = delete;
    Snapshot& operator=(Snapshot&&) = delete;
    ~Snapshot() = default;

    const std::filesystem::path& file() const { return m_file; }
    const std::string& id() const { return m_id; }
    const walk::State& state() const { return m_state; }
    const walk::Scope& scope() const { return *m_state.scope; }
    const std::vector<walk::DeviceView>& views() const { return m_views; } ///< as scope().devices
    const std::vector<walk::Finding>& findings() const { return m_findings; }
    const walk::Readiness& readiness() const { return m_readiness; } ///< as of the commit
    const std::vector<std::size_t>& order() const { return m_order; } ///< indices into scope().devices

    /// The device of that tag; nullptr if there is none.
    const walk::DeviceView* view(const std::string& tag) const;
    /// A private value; empty if it was left out or erased.
    QString reveal(const walk::PrivateRef& ref) const;

private:
    std::filesystem::path m_file;
    std::string m_id;
    walk::State m_state;
    std::shared_ptr<const walk::Privates> m_privates;
    std::vector<walk::DeviceView> m_views;
    std::vector<walk::Finding> m_findings;
    walk::Readiness m_readiness;
    std::vector<std::size_t> m_order;
};

} // namespace proofwalk::models
