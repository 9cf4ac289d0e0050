// SPDX-License-Identifier: GPL-3.0-or-later
// Random taps and keys lose nothing: every event that was published while they fell is in the file afterwards, and the
// file read anew adds up to the same. The seed is printed; PROOFWALK_SEED repeats it, PROOFWALK_ROUNDS makes it longer.
#include "core/journal/home.h"
#include "core/walk/job.h"
#include "qml/models/desk.h"
#include "qml/models/snapshot.h"
#include "tests/qml/rig/stage.h"
#include "tests/qml/walks/monkey.h"
#include "tests/screens/jobs.h"

#include <set>

using namespace proofwalk;

namespace {

constexpr int steps = 400;
const QUrl page(QStringLiteral("qrc:/qt/qml/Proofwalk/Screens/Main.qml"));

/// What a state says of the devices, a line each.
QStringList toldOf(const models::Snapshot& job)
{
    QStringList lines;
    for (const auto& view : job.views())
        lines << QStringLiteral("%1 verdict %2, %3 of %4 answered")
                     .arg(QString::fromStdString(view.device->device->tag))
                     .arg(int(view.verdict))
                     .arg(view.answered)
                     .arg(view.steps);
    lines << QStringLiteral("%1 findings, %2 events").arg(job.findings().size()).arg(job.state().eventCount);
    return lines;
}

} // namespace

class WalkMonkey : public rig::WindowTest {
    Q_OBJECT

    QTemporaryDir m_folder;
    std::set<std::string> m_acknowledged;
    std::map<std::filesystem::path, std::shared_ptr<const models::Snapshot>> m_last;

    void acknowledge()
    {
        const auto job = models::Desk::instance().job();
        if (job == nullptr) return;
        for (const auto& [hash, kind] : job->state().kindOfEvent) m_acknowledged.insert(hash);
        m_last[job->file()] = job;
    }

    void open(const QString& file)
    {
        bool done = false;
        models::Desk::instance().open(file.toStdString(), this,
                                      [&](const Result<void>& result) { done = result.has_value(); });
        QVERIFY(QTest::qWaitFor([&] { return done; }, 20000));
        acknowledge();
    }

private Q_SLOTS:
    void losesNothing()
    {
        // Chance opens page after page, and this build is not optimised: what may be held here is a whole page's making.
        m_hold_ms = 250;
        screens::Jobs jobs(QStringLiteral(PROOFWALK_PROGRAM), QStringLiteral(PROOFWALK_SOURCE "/fixtures"));
        const auto file = jobs.fresh(QStringLiteral("corner-shop@Walking: doors"));
        QVERIFY2(file, file ? "" : file.error().where.c_str());
        connect(&models::Desk::instance(), &models::Desk::published, this, &WalkMonkey::acknowledge);
        const int rounds = std::max(1, qEnvironmentVariable("PROOFWALK_ROUNDS").toInt());
        std::size_t before = 0;
        {
            rig::Stage stage;
            open(*file);
            before = m_acknowledged.size();
            auto* window = stage.open(page);
            QVERIFY2(window != nullptr, qPrintable(stage.problem()));
            rig::Monkey monkey(*window, rig::seedAsked());
            qInfo("PROOFWALK_SEED=%u", monkey.seed());
            for (int step = 0; step < steps * rounds; ++step) {
                const QString what = monkey.choose();
                if (qEnvironmentVariableIsSet("PROOFWALK_TELL")) qInfo("%d %s", step, qPrintable(what));
                monkey.act();
                if (models::Desk::instance().job() == nullptr && !models::Desk::instance().busy()) open(*file);
            }
            rig::untilAnswered();
        }
        qInfo("%zu events came of it", m_acknowledged.size() - before);
        QVERIFY2(m_acknowledged.size() > before, "nothing was recorded: the taps met nothing");
        auto key = journal::machineKey();
        QVERIFY(key);
        std::set<std::string> found;
        for (const auto& [place, last] : m_last) {
            auto job = walk::Job::open(place, *key);
            QVERIFY2(job, job ? "" : job.error().code.c_str());
            for (const auto& [hash, kind] : job->state().kindOfEvent) found.insert(hash);
            QCOMPARE(toldOf(models::Snapshot(*job, place)), toldOf(*last));
        }
        for (const auto& hash : m_acknowledged) QVERIFY2(found.contains(hash), hash.c_str());
    }
};

PROOFWALK_WINDOW_TEST(WalkMonkey)
#include "walk_monkey.moc"
