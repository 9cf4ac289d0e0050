// SPDX-License-Identifier: GPL-3.0-or-later
// The thread that owns journal and fold. It drains a queue in order; what a piece of work commits is published before
// its answer is given.
#pragma once

#include "qml/models/desk.h"

#include <QObject>
#include <QThread>

#include <optional>

namespace proofwalk::models {

class JobThread {
public:
    explicit JobThread(Desk& desk);
    JobThread(const JobThread&) = delete;
    JobThread& operator=(const JobThread&) = delete;
    JobThread(JobThread&&) = delete;
    JobThread& operator=(JobThread&&) = delete;
    ~JobThread();

    /// Does what is in the queue, lets go of the job and ends; nothing asked for later is done.
    void finish();

    using Make = std::function<Result<walk::Job>()>;

    void take(Make make, std::filesystem::path file, Desk::Opened opened);
    void letGo();
    void work(std::function<void(walk::Job&)> work, std::function<void()> then);
    void aside(std::function<void()> work, std::function<void()> then);
    /// Waits until everything asked for so far is done on the thread.
    void drain();

private:
    void onThread(std::function<void()> work);
    void onDesk(std::function<void()> news);
    std::shared_ptr<const Snapshot> picture() const;

    Desk& m_desk;
    QThread m_thread;
    QObject m_worker; ///< lives on m_thread; a place to post to
    std::optional<walk::Job> m_job;
    std::filesystem::path m_file;
};

} // namespace proofwalk::models
