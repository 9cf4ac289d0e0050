// SPDX-License-Identifier: GPL-3.0-or-later
// The window with a monkey at it, for killed.py: opens the job that PROOFWALK_JOB names, as the program itself does, and
// tells, a line each and flushed:
//   at PLACE PAGE SUBJECT     where it stands, with nothing under way
//   event HASH                published, so it must be in the file
//   going WHAT                before a tap or a key
#include "qml/models/desk.h"
#include "qml/models/jobdoor.h"
#include "qml/models/snapshot.h"
#include "qml/models/whereabouts.h"
#include "tests/qml/rig/accessible.h"
#include "tests/qml/rig/stage.h"
#include "tests/qml/walks/monkey.h"

#include <cstdio>
#include <set>

using namespace proofwalk;

namespace {

std::set<std::string> told;

void tell(const QString& line)
{
    std::printf("%s\n", qPrintable(line));
    std::fflush(stdout);
}

void acknowledge()
{
    const auto job = models::Desk::instance().job();
    if (job == nullptr) return;
    for (const auto& [hash, kind] : job->state().kindOfEvent)
        if (told.insert(hash).second) tell(QStringLiteral("event ") + QString::fromStdString(hash));
}

void tellWhere()
{
    // Where one stands is written by the job's thread too, after what was asked of it before.
    QObject here;
    bool written = false;
    models::Desk::instance().aside([] {}, &here, [&] { written = true; });
    if (!QTest::qWaitFor([&] { return written; }, 20000)) return;
    const auto& where = models::Whereabouts::instance();
    tell(QStringLiteral("at %1 %2 %3").arg(int(where.place())).arg(where.page(), where.subject()));
}

int run()
{
    QObject::connect(&models::Desk::instance(), &models::Desk::published, acknowledge);
    rig::Stage stage;
    models::reopen();
    if (!QTest::qWaitFor([] { return models::Desk::instance().job() != nullptr; }, 20000)) return 2;
    auto* window = stage.open(QUrl(QStringLiteral("qrc:/qt/qml/Proofwalk/Screens/Main.qml")));
    if (window == nullptr) return 2;
    acknowledge();
    rig::untilAnswered();
    tellWhere();
    rig::Monkey monkey(*window, rig::seedAsked());
    for (int step = 0; step < 2000 && models::Desk::instance().job() != nullptr; ++step) {
        tell(QStringLiteral("going ") + monkey.choose());
        monkey.act();
        rig::untilAnswered();
        tellWhere();
        QTest::qWait(5);
    }
    return 0;
}

} // namespace

int main(int count, char** words)
{
    // The home is killed.py's: it must outlive the program.
    rig::WatchedApplication application(count, words);
    rig::switchAccessibilityOn();
    return run();
}
