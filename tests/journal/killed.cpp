// SPDX-License-Identifier: GPL-3.0-or-later
// A program that dies while it records. Every number it acknowledged must be there, and nothing half. (A killed process
// leaves its written pages to the kernel: this says nothing of a power cut.)
#include "tests/journal/jobs.h"

#include <QRandomGenerator>

#include <csignal>
#include <fcntl.h>
#include <poll.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace proofwalk;
using namespace proofwalk::journal;
namespace fs = std::filesystem;

namespace {

struct Run {
    long acknowledged = 0; ///< the last number that came through the pipe whole
    bool wasKilled = false;
};

/// Starts the appender, kills it some microseconds after its start or after its first number, and reads what it had
/// acknowledged.
enum class From { start, firstNumber };
Run runAndKill(const fs::path& file, const fs::path& keys, From from, useconds_t life_us)
{
    int ends[2];
    if (::pipe(ends) != 0) return {};
    const pid_t child = ::fork();
    if (child == 0) {
        ::dup2(ends[1], STDOUT_FILENO);
        ::close(ends[0]);
        ::close(ends[1]);
        ::execl(PROOFWALK_APPENDER, PROOFWALK_APPENDER, file.c_str(), keys.c_str(), "0", nullptr);
        ::_exit(127);
    }
    ::close(ends[1]);
    if (from == From::firstNumber) {
        pollfd first{.fd = ends[0], .events = POLLIN, .revents = 0};
        ::poll(&first, 1, 20'000);
    }
    // The pipe holds some ten thousand numbers, far more than a second brings: the child never waits for a reader.
    ::usleep(life_us);
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    std::string words;
    char bytes[4096];
    for (ssize_t count = 0; (count = ::read(ends[0], bytes, sizeof bytes)) > 0;)
        words.append(bytes, static_cast<std::size_t>(count));
    ::close(ends[0]);
    Run run;
    run.wasKilled = WIFSIGNALED(status);
    for (std::size_t at = 0, end = 0; (end = words.find('\n', at)) != std::string::npos; at = end + 1)
        run.acknowledged = std::stol(words.substr(at, end - at));
    return run;
}

/// The highest number in the newest chain.
long lastNumber(const Record& record, const std::string& chain)
{
    std::int64_t last = 0;
    for (const Event& event : record.events)
        if (event.chain == chain && event.kind == "note") last = std::max(last, *event.body.find("number")->integer());
    return last;
}

std::string newestChain(const Record& record)
{
    const auto newest = std::ranges::max_element(record.events, {}, [](const Event& event) { return event.stamp; });
    return newest == record.events.end() ? "" : newest->chain;
}

} // namespace

class Killed : public QObject {
    Q_OBJECT
private slots:
    void everyAcknowledgedNumberIsThere();
    void theCountCanFail();
};

void Killed::everyAcknowledgedNumberIsThere()
{
    constexpr int rounds = 50;
    const quint32 seed = QRandomGenerator::global()->generate();
    qInfo("seed %u", seed);
    QRandomGenerator random(seed);
    const Workshop shop;
    const fs::path file = shop.job(0);
    QVERIFY(!file.empty());
    long all = 0;
    int inTheMidst = 0;
    for (int round = 0; round < rounds; ++round) {
        const From from = round % 5 == 0 ? From::start : From::firstNumber;
        const Run run = runAndKill(file, shop.path("keys"), from, static_cast<useconds_t>(random.bounded(60'000)));
        QVERIFY(run.wasKilled);
        auto record = Journal::read(file);
        VERIFY_GOOD(record);
        const Soundness soundness = checkRecord(*record);
        QVERIFY2(soundness.sound(), soundness.sound() ? "" : qPrintable(told(soundness.problems.front())));
        if (run.acknowledged == 0) continue; // it was killed before it had begun
        const long there = lastNumber(*record, newestChain(*record));
        QVERIFY2(there >= run.acknowledged,
                 qPrintable(QString("acknowledged %1, there %2").arg(run.acknowledged).arg(there)));
        QVERIFY(there <= run.acknowledged + 1); // one more may have been committed and not yet told
        all += run.acknowledged;
        ++inTheMidst;
    }
    qInfo("%ld acknowledged in %d of %d rounds", all, inTheMidst, rounds);
    QVERIFY(inTheMidst > rounds / 2);
    // And the job can be gone on with.
    auto journal = Journal::open(file, shop.key());
    VERIFY_GOOD(journal);
    VERIFY_GOOD(journal->append({note(1)}, base::now()));
}

void Killed::theCountCanFail()
{
    // With the log thrown away, as a careless copy would, acknowledged numbers are missing: the count above sees it.
    const Workshop shop;
    const fs::path file = shop.job(0);
    const Run run = runAndKill(file, shop.path("keys"), From::firstNumber, 20'000);
    QVERIFY(run.acknowledged > 0);
    fs::remove(file.string() + "-wal");
    fs::remove(file.string() + "-shm");
    auto record = Journal::read(file);
    VERIFY_GOOD(record);
    QVERIFY(lastNumber(*record, newestChain(*record)) < run.acknowledged);
}

QTEST_GUILESS_MAIN(Killed)
#include "killed.moc"
