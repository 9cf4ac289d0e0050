// SPDX-License-Identifier: GPL-3.0-or-later
// No vector is left unserved: each id of measure-vectors.json stands as a literal in a test of this folder. Those that
// cannot be tried are named here, and told as left out.
#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QtTest>

#include <algorithm>
#include <array>

/// They state the figure of an instance whose coordinates stand in no file here: a search has nothing to be tried on.
constexpr std::array withoutData{"route-pcb442-identity-pub", "route-a280-pub", "route-eil76-pub", "route-pcb442-pub",
                                 "route-pr1002-pub"};

class EveryVector : public QObject {
    Q_OBJECT

private:
    static QByteArray read(const QString& path)
    {
        QFile file(path);
        if (!file.open(QIODevice::ReadOnly)) qFatal("cannot open %s", qPrintable(path));
        return file.readAll();
    }
    /// The lines of all tests of the folder but this one, without what is only said in a comment.
    static QByteArray tests()
    {
        const QDir folder(PROOFWALK_SOURCE "/tests/reference");
        QByteArray all;
        for (const QString& name : folder.entryList({"*.cpp"}, QDir::Files)) {
            if (name == "everyvector.cpp") continue;
            for (const QByteArray& line : read(folder.filePath(name)).split('\n'))
                if (!line.trimmed().startsWith("//")) all += line + '\n';
        }
        return all;
    }

private slots:
    void noneIsLeftUnserved()
    {
        const auto vectors =
            QJsonDocument::fromJson(read(PROOFWALK_SOURCE "/tests/reference/measure-vectors.json")).array();
        QVERIFY(vectors.size() >= 160);
        const QByteArray written = tests();
        int unserved = 0;
        for (const auto& each : vectors) {
            const QString id = each.toObject()["id"].toString();
            const bool served = written.contains('"' + id.toUtf8() + '"');
            if (std::ranges::find(withoutData, id) != withoutData.end()) {
                QVERIFY2(!served, "it is tried after all: take it off the list");
                continue;
            }
            if (served) continue;
            ++unserved;
            qWarning("%s, %s: %s", qPrintable(id), qPrintable(each.toObject()["topic"].toString()),
                     qPrintable(each.toObject()["what"].toString()));
        }
        QCOMPARE(unserved, 0);
    }
    void someHaveNoData_data()
    {
        QTest::addColumn<QString>("id");
        for (const char* id : withoutData) QTest::newRow(id) << id;
    }
    void someHaveNoData() { QSKIP("left out: no coordinates of this instance stand in tests/reference"); }
};

QTEST_GUILESS_MAIN(EveryVector)
#include "everyvector.moc"
