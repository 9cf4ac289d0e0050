// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/desk.h"

#include "core/base/datafolder.h"
#include "core/journal/home.h"
#include "core/walk/starting.h"
#include "qml/models/jobthread.h"

namespace proofwalk::models {
namespace {

Result<walk::Job> openJob(const std::filesystem::path& file)
{
    auto key = journal::machineKey();
    if (!key) return passOn(key);
    return walk::Job::open(file, *key);
}

Result<walk::Job> startJob(const std::filesystem::path& file, const std::filesystem::path& folder)
{
    auto files = catalogue::readFolder(base::dataFolder() / "catalogue");
    if (!files) return passOn(files);
    auto reviewed = walk::readAndReview(folder, *files);
    if (!reviewed) return std::unexpected(std::move(reviewed.error().front()));
    if (reviewed->errors > 0)
        return failure("start.plan-has-errors", folder.string(), {{"count", std::int64_t{reviewed->errors}}});
    auto ground = walk::groundFor(std::move(reviewed->plan), std::move(*files));
    if (!ground) return passOn(ground);
    auto key = journal::machineKey();
    if (!key) return passOn(key);
    return walk::Job::start(file, std::move(*ground), *key, base::now());
}

} // namespace

Desk& Desk::instance()
{
    static Desk desk;
    return desk;
}

Desk::Desk() : m_thread(std::make_unique<JobThread>(*this)) {}

Desk::~Desk() = default;

void Desk::open(const std::filesystem::path& file, QObject* context, Opened opened)
{
    ++m_waiting;
    m_thread->take([file] { return openJob(file); }, file,
                   [this, guard = QPointer<QObject>(context), opened = std::move(opened)](const Result<void>& outcome) {
                       --m_waiting;
                       if (guard != nullptr) opened(outcome);
                   });
}

void Desk::start(const std::filesystem::path& file, const std::filesystem::path& plan, QObject* context, Opened opened)
{
    ++m_waiting;
    m_thread->take([file, plan] { return startJob(file, plan); }, file,
                   [this, guard = QPointer<QObject>(context), opened = std::move(opened)](const Result<void>& outcome) {
                       --m_waiting;
                       if (guard != nullptr) opened(outcome);
                   });
}

void Desk::close()
{
    m_thread->letGo();
    m_thread->drain();
    m_job.reset();
    Q_EMIT opened();
}

void Desk::end()
{
    m_thread->finish();
    m_job.reset();
}

void Desk::tell(QObject* context, const base::Json& command, Done done, const std::filesystem::path& folder)
{
    ask<Result<int>>(
        context,
        [line = base::canonical(command), folder](walk::Job& job) { return job.take(line, folder, base::now()); },
        [done = std::move(done)](Result<int> outcome) { done(outcome); });
}

void Desk::enqueue(std::function<void(walk::Job&)> work, std::function<void()> then)
{
    ++m_waiting;
    m_thread->work(std::move(work), [this, then = std::move(then)] {
        --m_waiting;
        then();
    });
}

void Desk::aside(std::function<void()> work, QObject* context, std::function<void()> then)
{
    m_thread->aside(std::move(work),
                    [guard = QPointer<QObject>(context), wanted = context != nullptr, then = std::move(then)] {
                        if (then && (!wanted || guard != nullptr)) then();
                    });
}

void Desk::receive(std::shared_ptr<const Snapshot> job, bool another)
{
    m_job = std::move(job);
    if (another) Q_EMIT opened();
    else Q_EMIT published();
}

} // namespace proofwalk::models
