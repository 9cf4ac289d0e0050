// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/jobthread.h"

namespace proofwalk::models {

JobThread::JobThread(Desk& desk) : m_desk(desk)
{
    m_thread.setObjectName(QStringLiteral("job"));
    m_worker.moveToThread(&m_thread);
    m_thread.start();
}

JobThread::~JobThread() { finish(); }

void JobThread::finish()
{
    if (!m_thread.isRunning()) return;
    letGo();
    drain();
    m_thread.quit();
    m_thread.wait();
}

void JobThread::onThread(std::function<void()> work)
{
    QMetaObject::invokeMethod(&m_worker, std::move(work), Qt::QueuedConnection);
}

void JobThread::onDesk(std::function<void()> news)
{
    QMetaObject::invokeMethod(&m_desk, std::move(news), Qt::QueuedConnection);
}

void JobThread::drain()
{
    QMetaObject::invokeMethod(&m_worker, [] {}, Qt::BlockingQueuedConnection);
}

std::shared_ptr<const Snapshot> JobThread::picture() const
{
    return m_job ? std::make_shared<const Snapshot>(*m_job, m_file) : nullptr;
}

void JobThread::take(Make make, std::filesystem::path file, Desk::Opened opened)
{
    onThread([this, make = std::move(make), file = std::move(file), opened = std::move(opened)] {
        // The file that is open must be let go before it can be opened again; if the other cannot be had it is taken up
        // once more.
        auto made = make();
        Result<void> outcome;
        if (made) {
            m_job.reset();
            m_job.emplace(std::move(*made));
            m_file = file;
        } else {
            outcome = passOn(made);
        }
        onDesk([this, outcome, opened, picture = made ? picture() : nullptr] {
            if (outcome) m_desk.receive(picture, true);
            opened(outcome);
        });
    });
}

void JobThread::letGo()
{
    onThread([this] {
        m_job.reset();
        m_file.clear();
    });
}

void JobThread::work(std::function<void(walk::Job&)> work, std::function<void()> then)
{
    onThread([this, work = std::move(work), then = std::move(then)] {
        std::shared_ptr<const Snapshot> moved;
        if (m_job) {
            const auto before = m_job->state().eventCount;
            work(*m_job);
            if (m_job->state().eventCount != before) moved = picture();
        }
        onDesk([this, then, moved] {
            if (moved != nullptr) m_desk.receive(moved, false);
            then();
        });
    });
}

void JobThread::aside(std::function<void()> work, std::function<void()> then)
{
    onThread([this, work = std::move(work), then = std::move(then)] {
        work();
        onDesk(then);
    });
}

} // namespace proofwalk::models
