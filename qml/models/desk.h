// SPDX-License-Identifier: GPL-3.0-or-later
// The one door to the job. One thread owns journal and fold; here the window hands it commands and gets back, once they
// are durable, what the job then adds up to.
//
//     a model                      the desk (window's thread)        the job's thread
//     tell(command) ------------>  queue  ------------------------>  check, commit, fold
//     done(Result) <-------------  published() <-------------------  a new Snapshot
//
// A model that is destroyed before its answer comes is not called.
#pragma once

#include "core/base/json.h"
#include "core/base/result.h"
#include "qml/models/snapshot.h"

#include <QObject>
#include <QPointer>
#include <QString>

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace proofwalk::models {

class JobThread;

class Desk : public QObject {
    Q_OBJECT

public:
    /// The one desk of the program; made and used on the window's thread.
    static Desk& instance();
    ~Desk() override;

    /// The job as of the last commit; nullptr while none is open. Keep the pointer while using what it points to.
    std::shared_ptr<const Snapshot> job() const { return m_job; }

    using Opened = std::function<void(const Result<void>&)>;
    using Done = std::function<void(const Result<int>&)>;

    /// Opens a job file for writing and closes the one that was open.
    void open(const std::filesystem::path& file, QObject* context, Opened opened);
    /// A new job from a plan's folder. Errors: those of readPlan, start.plan-has-errors and Job::start.
    void start(const std::filesystem::path& file, const std::filesystem::path& plan, QObject* context, Opened opened);
    /// Waits for what is under way, then lets go of the job.
    void close();
    /// Ends the job's thread, as the last act before the application goes: what the thread drew with ends with that.
    void end();

    /// Asks core/walk to take one command. `done` comes after published(), with how many events it made or why none.
    void tell(QObject* context, const base::Json& command, Done done, const std::filesystem::path& folder = {});

    /// Any other work on the job, by its thread: work(job) gives R, then(R) is called here after published().
    template <class R>
    void ask(QObject* context, std::function<R(walk::Job&)> work, std::function<void(R)> then)
    {
        auto result = std::make_shared<std::optional<R>>();
        enqueue([work = std::move(work), result](walk::Job& job) { result->emplace(work(job)); },
                [context = QPointer<QObject>(context), result, then = std::move(then)] {
                    if (context != nullptr && result->has_value()) then(std::move(**result));
                });
    }

    /// Work that touches no job (a key, a file of settings), in the same order of time.
    void aside(std::function<void()> work, QObject* context = nullptr, std::function<void()> then = {});

    /// Whether something is asked and not answered yet.
    bool busy() const { return m_waiting > 0; }

Q_SIGNALS:
    void opened(); ///< job() is another one, or none
    void published(); ///< job() has moved on

private:
    friend class JobThread;

    Desk();
    void enqueue(std::function<void(walk::Job&)> work, std::function<void()> then);
    void receive(std::shared_ptr<const Snapshot> job, bool another);

    std::unique_ptr<JobThread> m_thread;
    std::shared_ptr<const Snapshot> m_job;
    int m_waiting = 0;
};

} // namespace proofwalk::models
