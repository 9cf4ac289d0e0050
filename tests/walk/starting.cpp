// SPDX-License-Identifier: GPL-3.0-or-later
// From a plan's folder to the ground of a job.
#include "core/walk/starting.h"

#include "tests/walk/bench.h"

#include <QTemporaryDir>
#include <QTest>

using namespace proofwalk;

class StartingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void readsAndReviewsTheShop()
    {
        const auto files = catalogue::readFolder(PROOFWALK_SOURCE "/core/catalogue");
        const auto reviewed = walk::readAndReview(PROOFWALK_SOURCE "/fixtures/corner-shop", *files);
        QVERIFY(reviewed.has_value());
        QCOMPARE(reviewed->errors, 0);
        const auto ground = walk::groundFor(reviewed->plan, *files);
        QVERIFY(ground.has_value());
        QVERIFY(ground->words.contains("english/walk.toml"));
        QVERIFY(ground->conductors.starts_with("#") || ground->conductors.find(',') != std::string::npos);
    }

    void tellsEveryCellAtOnce()
    {
        const QTemporaryDir folder;
        const auto path = std::filesystem::path(folder.path().toStdString());
        QVERIFY(base::writeFile(path / "devices.csv", "tag,kind,room,x_m,y_m\nA-01,flood,cellar,left,up\n"));
        const auto files = catalogue::readFolder(PROOFWALK_SOURCE "/core/catalogue");
        const auto reviewed = walk::readAndReview(path, *files);
        QVERIFY(!reviewed.has_value());
        QCOMPARE(reviewed.error().size(), std::size_t{2});
    }

    void noFolder()
    {
        const auto files = catalogue::readFolder(PROOFWALK_SOURCE "/core/catalogue");
        QVERIFY(!walk::readAndReview("/no/such/folder", *files).has_value());
    }
};

QTEST_GUILESS_MAIN(StartingTest)
#include "starting.moc"
