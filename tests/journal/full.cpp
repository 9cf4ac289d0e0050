// SPDX-License-Identifier: GPL-3.0-or-later
// A disk that fills up, and one that cannot be written to: told before anything is acknowledged, and nothing lost. The
// disk is a small file system in memory that only this process sees.
#include "tests/journal/jobs.h"

#include "core/base/file.h"

#include <cerrno>
#include <cstring>

#include <sched.h>
#include <sys/mount.h>

using namespace proofwalk;
using namespace proofwalk::journal;
namespace fs = std::filesystem;

class FullDisk : public QObject {
    Q_OBJECT
private slots:
    void initTestCase();
    void cleanup();
    void fillsUp();
    void noRoomToBegin();
    void noRoomToOpen();
    void cannotBeWrittenTo();

private:
    fs::path on(const char* name) const { return m_shop.path("disk") / name; }
    Workshop m_shop;
};

void FullDisk::initTestCase()
{
    fs::create_directory(m_shop.path("disk"));
    // A namespace of its own: the mount ends with this process, and no other sees it.
    const bool apart = ::unshare(CLONE_NEWNS) == 0 || ::unshare(CLONE_NEWUSER | CLONE_NEWNS) == 0;
    if (!apart || ::mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) != 0
        || ::mount("tmpfs", m_shop.path("disk").c_str(), "tmpfs", 0, "size=600k") != 0)
        QSKIP(qPrintable(QString("no small disk can be had here: %1").arg(std::strerror(errno))));
}

void FullDisk::cleanup()
{
    for (const auto& entry : fs::directory_iterator(m_shop.path("disk"))) fs::remove_all(entry);
}

void FullDisk::fillsUp()
{
    VERIFY_GOOD(base::writeFile(on("ballast"), std::string(100'000, 'x')));
    std::vector<std::string> acknowledged;
    {
        auto journal = Journal::create(on("job.walk"), m_shop.key());
        VERIFY_GOOD(journal);
        auto started = journal->append({draft("start")}, clockAt(0));
        VERIFY_GOOD(started);
        acknowledged.push_back(started->front().hash);
        const std::string words(3000, 'w');
        std::string code;
        for (int i = 1; code.empty() && i < 1000; ++i) {
            auto done = journal->append({draft("note", base::Json::Object{{"words", words}})}, clockAt(i));
            if (done) acknowledged.push_back(done->front().hash);
            else code = done.error().code;
        }
        QCOMPARE(code, std::string("journal.full"));
        QVERIFY(acknowledged.size() > 5);
        auto record = journal->record();
        VERIFY_GOOD(record);
        QCOMPARE(record->events.size(), acknowledged.size());

        // Again and again, and a group: always told, never half done.
        for (int i = 0; i < 5; ++i)
            QCOMPARE(codeOf(journal->append({note(1), draft("note", base::Json::Object{{"words", words}}), note(2)},
                                            clockAt(2000))),
                     std::string("journal.full"));
        auto reread = Journal::read(on("job.walk"));
        VERIFY_GOOD(reread);
        QCOMPARE(reread->events.size(), acknowledged.size());

        fs::remove(on("ballast")); // room is made: the same journal goes on
        for (int i = 0; i < 3; ++i) {
            auto done = journal->append({note(i)}, clockAt(3000 + i));
            VERIFY_GOOD(done);
            acknowledged.push_back(done->front().hash);
        }
    }
    auto record = Journal::read(on("job.walk"));
    VERIFY_GOOD(record);
    QVERIFY(checkRecord(*record).sound());
    QCOMPARE(record->events.size(), acknowledged.size());
    for (std::size_t i = 0; i < acknowledged.size(); ++i) QCOMPARE(record->events[i].hash, acknowledged[i]);
}

void FullDisk::noRoomToBegin()
{
    (void)base::writeFile(on("ballast"), std::string(560'000, 'x'));
    QCOMPARE(codeOf(Journal::create(on("job.walk"), m_shop.key())), std::string("journal.full"));
    QVERIFY(!fs::exists(on("job.walk")));
}

void FullDisk::noRoomToOpen()
{
    fs::copy_file(m_shop.job(3, "sound.walk"), on("job.walk"));
    const auto before = base::readFile(on("job.walk"));
    std::FILE* ballast = std::fopen(on("ballast").c_str(), "wb");
    const std::string block(1000, 'x');
    while (std::fwrite(block.data(), 1, block.size(), ballast) == block.size() && std::fflush(ballast) == 0) {
    }
    std::fclose(ballast);
    auto refused = Journal::open(on("job.walk"), m_shop.key());
    QVERIFY2(codeOf(refused) == "journal.full", qPrintable(told(refused)));
    auto record = Journal::read(on("job.walk"));
    VERIFY_GOOD(record);
    QCOMPARE(record->events.size(), 4U);
    QVERIFY(*base::readFile(on("job.walk")) == *before);
}

void FullDisk::cannotBeWrittenTo()
{
    fs::copy_file(m_shop.job(3, "other.walk"), on("job.walk"));
    const std::string disk = m_shop.path("disk").string();
    QCOMPARE(::mount("none", disk.c_str(), nullptr, MS_REMOUNT | MS_RDONLY, nullptr), 0);
    const std::string open = codeOf(Journal::open(on("job.walk"), m_shop.key()));
    const std::string create = codeOf(Journal::create(on("new.walk"), m_shop.key()));
    auto record = Journal::read(on("job.walk"));
    QCOMPARE(::mount("none", disk.c_str(), nullptr, MS_REMOUNT, "size=600k"), 0);
    QCOMPARE(open, std::string("journal.read-only"));
    QCOMPARE(create, std::string("journal.unwritable"));
    VERIFY_GOOD(record);
    QCOMPARE(record->events.size(), 4U);
}

QTEST_GUILESS_MAIN(FullDisk)
#include "full.moc"
