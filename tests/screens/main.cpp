// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk-screens [--to FOLDER] [FILTER]: every state of states.txt whose name has FILTER in it, in four sizes and three
// looks, checked by the rig; the pictures kept in FOLDER. What breaks a rule is printed, a line each; exit status 1 then.
#include "tests/qml/rig/stage.h"
#include "tests/screens/checking.h"

#include <QDir>
#include <QElapsedTimer>

#include <cstdio>

using namespace proofwalk;

namespace {

/// Screens of our own that no state shows: nobody has looked at them.
QStringList neverShown(const QSet<QString>& types)
{
    QStringList missing;
    for (const auto& file : QDir(QStringLiteral(PROOFWALK_SOURCE "/qml/screens")).entryList({QStringLiteral("*.qml")}))
        if (const QString name = file.chopped(4); name != u"Main" && !types.contains(name)) missing << name;
    return missing;
}

int run(const QString& folder, const QString& filter)
{
    const auto states = screens::readStates(QStringLiteral(PROOFWALK_SOURCE "/tests/screens/states.txt"));
    if (!states) {
        std::printf("%s %s\n", states.error().code.c_str(), states.error().where.c_str());
        return 2;
    }
    if (!folder.isEmpty()) QDir().mkpath(folder);
    screens::Jobs jobs(QStringLiteral(PROOFWALK_PROGRAM), QStringLiteral(PROOFWALK_SOURCE "/fixtures"));
    screens::Checking checking(jobs, folder);
    screens::Told told;
    QElapsedTimer timer;
    timer.start();
    qsizetype printed = 0;
    int shown = 0;
    for (const auto& state : *states) {
        if (!state.name.contains(filter)) continue;
        ++shown;
        checking.check(state, told);
        for (; printed < told.violations.size(); ++printed) std::printf("%s\n", qPrintable(told.violations[printed]));
        std::fflush(stdout);
    }
    const QStringList missing = filter.isEmpty() ? neverShown(told.types) : QStringList();
    for (const auto& name : missing) std::printf("%s.qml: no state shows it\n", qPrintable(name));
    std::printf("%d states, %d pictures, %lld violations, %.0f s\n", shown, told.pictures,
                static_cast<long long>(told.violations.size()), double(timer.elapsed()) / 1000);
    // What no state shows is told, so that it is added; it is not a fault of a screen.
    return told.violations.isEmpty() && shown > 0 ? 0 : 1;
}

} // namespace

int main(int count, char** words)
{
    return rig::onStage(count, words, [](int c, char** w) {
        QStringList rest;
        QString folder;
        for (int at = 1; at < c; ++at)
            if (QString::fromLocal8Bit(w[at]) == u"--to" && at + 1 < c) folder = QString::fromLocal8Bit(w[++at]);
            else rest << QString::fromLocal8Bit(w[at]);
        return run(folder, rest.value(0));
    });
}
