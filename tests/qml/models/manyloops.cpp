// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/models/manyloops.h"

#include <QFile>
#include <QTest>

namespace proofwalk::rig {
namespace {

void write(const std::filesystem::path& path, const QString& words)
{
    QFile file(QString::fromStdString(path.string()));
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(words.toUtf8());
}

QString firstLine(const std::filesystem::path& path)
{
    QFile file(QString::fromStdString(path.string()));
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readLine()).trimmed() : QString();
}

} // namespace

std::filesystem::path planOfLoops(const std::filesystem::path& folder, int loops)
{
    const std::filesystem::path mill = PROOFWALK_SOURCE "/fixtures/lantern-mill";
    std::filesystem::create_directories(folder);
    for (const char* name :
         {"areas.csv", "floors.csv", "modes.csv", "panel.csv", "paths.csv", "power.csv", "site.csv", "timers.csv"})
        std::filesystem::copy_file(mill / name, folder / name);
    QString zones = firstLine(mill / "zones.csv") + "\n", devices = firstLine(mill / "devices.csv") + "\n";
    for (const char* panel : {"CE-01,panel,,cellar,Switch room,,,,,,,main,120,200,no,2026-11-18,,\n",
                              "CE-02,power-supply,,cellar,Switch room,,,,,,,auxiliary,30,40,no,2026-11-18,,\n",
                              "CE-03,communicator,,cellar,Switch room,,,,,,CE-01,main,70,120,no,2026-11-18,,\n",
                              "CE-04,voice-dialler,,cellar,Switch room,,,,,,CE-01,main,25,90,no,2026-11-18,,\n",
                              "GR-03,keypad,,ground,Entrance hall,,,,,,,main,30,60,no,2026-11-18,,\n"})
        devices += panel;
    for (int zone = loops; zone > 0; --zone) {
        zones += QStringLiteral("%1,Window %1,mill,intrusion,none,full;night,loud,yes,131,loop,closed,2,4700,4700,,,1,"
                                "W-%1,0.22 mm2,20\n")
                     .arg(zone);
        devices += QStringLiteral("W-%1,contact-surface,%2,ground,Hall,window frame,,,,,,,,,no,2026-11-18,,\n")
                       .arg(zone, 2, 10, QChar(u'0'))
                       .arg(zone);
    }
    write(folder / "zones.csv", zones);
    write(folder / "devices.csv", devices);
    return folder;
}

} // namespace proofwalk::rig
