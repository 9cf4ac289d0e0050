// SPDX-License-Identifier: GPL-3.0-or-later
// Source: the promise of core/base/datafolder.h; no figure is involved.
#include "core/base/datafolder.h"

#include <QtTest>

using namespace proofwalk;

class TestDataFolder : public QObject {
    Q_OBJECT

private slots:
    void init() { qunsetenv("PROOFWALK_DATA"); }
    void theSourceTreeUnlessInstalled()
    {
        // A test program stands in a build folder, and beside that is no share/proofwalk.
        QCOMPARE(base::dataFolder(), std::filesystem::path(PROOFWALK_SOURCE) / "core");
        QVERIFY(std::filesystem::is_directory(base::dataFolder() / "words"));
    }
    void whatIsNamedGoesFirst()
    {
        qputenv("PROOFWALK_DATA", "/somewhere/else");
        QCOMPARE(base::dataFolder(), std::filesystem::path("/somewhere/else"));
    }
    void anEmptyNameNamesNothing()
    {
        qputenv("PROOFWALK_DATA", "");
        QCOMPARE(base::dataFolder(), std::filesystem::path(PROOFWALK_SOURCE) / "core");
    }
};

QTEST_GUILESS_MAIN(TestDataFolder)
#include "datafolder.moc"
