// SPDX-License-Identifier: GPL-3.0-or-later
// Files that are missing, of the wrong kind, too large, and disks that are full. Expected behaviour after POSIX.
#include "core/base/file.h"

#include <QTemporaryDir>
#include <QtTest>

#include <csignal>
#include <fstream>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/stat.h>

using namespace proofwalk;

namespace {

std::size_t filesIn(const std::filesystem::path& folder)
{
    return static_cast<std::size_t>(std::distance(std::filesystem::directory_iterator(folder), {}));
}

template <class T>
std::string codeOf(const Result<T>& result)
{
    return result ? "" : result.error().code;
}

} // namespace

class TestFile : public QObject {
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::filesystem::path at(const char* name) const
    {
        return std::filesystem::path(m_folder.path().toStdString()) / name;
    }

private slots:
    void writtenAndReadBack()
    {
        const std::string bytes("line\r\n\0\xFF", 8);
        QVERIFY(base::writeFile(at("a"), bytes).has_value());
        QCOMPARE(base::readFile(at("a")).value(), bytes);
        QVERIFY(base::writeFile(at("a"), "").has_value());
        QCOMPARE(base::readFile(at("a")).value(), std::string());
        QCOMPARE(filesIn(m_folder.path().toStdString()), std::size_t{1}); // no temporary file stays
    }
    void ownerOnly()
    {
        QVERIFY(base::writeFile(at("secret"), "x", base::FileAccess::ownerOnly).has_value());
        const auto mode = std::filesystem::status(at("secret")).permissions();
        QVERIFY((mode & (std::filesystem::perms::group_all | std::filesystem::perms::others_all))
                == std::filesystem::perms::none);
    }
    void missing()
    {
        QCOMPARE(codeOf(base::readFile(at("none"))), std::string("file.missing"));
        QCOMPARE(base::readFile(at("none")).error().where, at("none").string());
        QCOMPARE(codeOf(base::readFile("")), std::string("file.missing"));
    }
    void notARegularFile()
    {
        QCOMPARE(codeOf(base::readFile(at(""))), std::string("file.unreadable"));
        QCOMPARE(codeOf(base::readFile("/dev/zero")), std::string("file.unreadable"));
        QVERIFY(base::writeFile(at("plain"), "x").has_value());
        QCOMPARE(codeOf(base::readFile(at("plain") / "under")), std::string("file.unreadable"));
        // A pipe nobody writes to must be refused, not waited for.
        QCOMPARE(::mkfifo(at("pipe").c_str(), 0600), 0);
        QCOMPARE(codeOf(base::readFile(at("pipe"))), std::string("file.unreadable"));
    }
    void tooLarge()
    {
        QVERIFY(base::writeFile(at("ten"), "0123456789").has_value());
        QVERIFY(base::readFile(at("ten"), 10).has_value());
        const auto refused = base::readFile(at("ten"), 9);
        QCOMPARE(codeOf(refused), std::string("file.too-large"));
        QVERIFY(refused.error().arguments
                == (std::vector<Argument>{{"bytes", std::int64_t{10}}, {"limit", std::int64_t{9}}}));
    }
    void nowhereToWrite()
    {
        QCOMPARE(codeOf(base::writeFile(at("none") / "a", "x")), std::string("file.unwritable"));
        QCOMPARE(codeOf(base::writeFile("/proc/a", "x")), std::string("file.unwritable")); // no files are made there
        std::filesystem::create_directory(at("folder"));
        QCOMPARE(codeOf(base::writeFile(at("folder"), "x")), std::string("file.unwritable"));
        QVERIFY(std::filesystem::is_directory(at("folder")));
        QCOMPARE(codeOf(base::writeFile(at(std::string(300, 'n').c_str()), "x")), std::string("file.unwritable"));
    }
    // The limit on a file's size stands for the disk's: write() fails half-way in the same manner.
    void noRoomLeavesTheOldFile()
    {
        std::filesystem::create_directory(at("small"));
        const auto target = at("small") / "a";
        QVERIFY(base::writeFile(target, "old").has_value());
        std::signal(SIGXFSZ, SIG_IGN);
        rlimit before{};
        QCOMPARE(::getrlimit(RLIMIT_FSIZE, &before), 0);
        const rlimit tight{1000, before.rlim_max};
        QCOMPARE(::setrlimit(RLIMIT_FSIZE, &tight), 0);
        const auto written = base::writeFile(target, std::string(5000, 'x'));
        QCOMPARE(::setrlimit(RLIMIT_FSIZE, &before), 0);
        QCOMPARE(codeOf(written), std::string("file.unwritable"));
        QCOMPARE(base::readFile(target).value(), std::string("old"));
        QCOMPARE(filesIn(at("small")), std::size_t{1});
    }
    void fullDisk()
    {
        std::filesystem::create_directory(at("disk"));
        if (::mount("tmpfs", at("disk").c_str(), "tmpfs", 0, "size=16k") != 0)
            QSKIP("a file system of 16 KiB cannot be mounted here (needs root); noRoomLeavesTheOldFile stands for it");
        const auto target = at("disk") / "a";
        const bool old = base::writeFile(target, "old").has_value();
        const auto written = base::writeFile(target, std::string(100'000, 'x'));
        const std::string kept = base::readFile(target).value_or("");
        const std::size_t files = filesIn(at("disk"));
        QCOMPARE(::umount(at("disk").c_str()), 0);
        QVERIFY(old);
        QCOMPARE(codeOf(written), std::string("file.unwritable"));
        QCOMPARE(kept, std::string("old"));
        QCOMPARE(files, std::size_t{1});
    }
};

QTEST_GUILESS_MAIN(TestFile)
#include "file.moc"
