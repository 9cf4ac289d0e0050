// SPDX-License-Identifier: GPL-3.0-or-later
// Where the machine's own things are kept. The order of places is that of the XDG Base Directory Specification 0.8 for data.
#include "core/journal/home.h"

#include <QTemporaryDir>
#include <QTest>

using namespace proofwalk;

class HomeTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void ownBeforeSharedBeforeHome()
    {
        qputenv("PROOFWALK_HOME", "/a");
        qputenv("XDG_DATA_HOME", "/b");
        qputenv("HOME", "/c");
        QCOMPARE(journal::homeFolder()->string(), std::string("/a"));
        qunsetenv("PROOFWALK_HOME");
        QCOMPARE(journal::homeFolder()->string(), std::string("/b/proofwalk"));
        qputenv("XDG_DATA_HOME", "");
        QCOMPARE(journal::homeFolder()->string(), std::string("/c/.local/share/proofwalk"));
        qunsetenv("HOME");
        QCOMPARE(journal::homeFolder().error().code, std::string("place.no-home"));
        QCOMPARE(journal::machineKey().error().code, std::string("place.no-home"));
    }

    void theKeyIsMadeOnce()
    {
        const QTemporaryDir folder;
        qputenv("PROOFWALK_HOME", folder.path().toUtf8());
        const auto first = journal::machineKey();
        const auto second = journal::machineKey();
        QVERIFY(first && second);
        QVERIFY((*first)->publicKeyDer() == (*second)->publicKeyDer());
    }
};

QTEST_GUILESS_MAIN(HomeTest)
#include "home.moc"
