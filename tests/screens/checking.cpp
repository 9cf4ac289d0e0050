// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/screens/checking.h"

#include "core/journal/home.h"
#include "qml/models/desk.h"
#include "qml/models/jobshelf.h"
#include "qml/models/whereabouts.h"
#include "qml/parts/theme.h"
#include "tests/qml/rig/accessible.h"
#include "tests/qml/rig/contrast.h"
#include "tests/qml/rig/legible.h"
#include "tests/qml/rig/stage.h"
#include "tests/qml/rig/tabwalk.h"
#include "tests/qml/rig/targets.h"
#include "tests/screens/acting.h"

#include <filesystem>
#include <functional>

namespace proofwalk::screens {
namespace {

using parts::Theme;

struct Look {
    const char* name;
    Theme::Choice choice;
};

constexpr Look looks[] = {{"light", Theme::Light}, {"dark", Theme::Dark}, {"contrast", Theme::HighContrast}};
constexpr QSize sizes[] = {{360, 640}, {360, 780}, {800, 1280}, {1280, 800}};

QStringList* heard = nullptr;

/// Warnings are violations: a binding that fails, a file that is not there.
void hear(QtMsgType type, const QMessageLogContext& context, const QString& text)
{
    if (type == QtDebugMsg || type == QtInfoMsg) return;
    if (heard != nullptr) *heard << QStringLiteral("warning: %1 %2").arg(QString::fromUtf8(context.category), text);
    else fprintf(stderr, "%s\n", qPrintable(text));
}

class Hearing {
public:
    explicit Hearing(QStringList& list)
    {
        heard = &list;
        m_before = qInstallMessageHandler(hear);
    }
    Hearing(const Hearing&) = delete;
    Hearing& operator=(const Hearing&) = delete;
    Hearing(Hearing&&) = delete;
    Hearing& operator=(Hearing&&) = delete;
    ~Hearing()
    {
        qInstallMessageHandler(m_before);
        heard = nullptr;
    }

private:
    QtMessageHandler m_before;
};

QString opened(const QString& file)
{
    auto& desk = models::Desk::instance();
    QObject here;
    bool done = false;
    QString problem;
    desk.open(file.toStdString(), &here, [&](const Result<void>& result) {
        done = true;
        if (!result) problem = QString::fromStdString(result.error().code + " " + result.error().where);
    });
    if (!QTest::qWaitFor([&] { return done; }, 20000)) return QStringLiteral("the job does not open");
    return problem;
}

void collect(const QQuickItem& item, QSet<QString>& types)
{
    const QString name = QString::fromLatin1(item.metaObject()->className());
    if (const auto at = name.indexOf(QStringLiteral("_QML")); at > 0) types << name.left(at);
    for (const auto* child : item.childItems()) collect(*child, types);
}

using Say = std::function<void(const QString&)>;

void sayAll(const rig::Findings& findings, const Say& say)
{
    for (const auto& line : rig::toText(findings).split(u'\n', Qt::SkipEmptyParts)) say(line);
}

/// Forgets what the window kept of the jobs before: where one stood in them, what was half typed, which were open.
QString forgotten()
{
    const auto home = journal::homeFolder();
    if (!home) return QString::fromStdString(home.error().code);
    std::error_code failed;
    std::filesystem::remove_all(*home / "window", failed);
    models::JobShelf::instance().recall();
    return QString::fromStdString(failed ? failed.message() : "");
}

/// Job, window, actions; nullptr, and said, if any of it fails.
QQuickWindow* begin(const State& state, const QSize& size, rig::Stage& stage, Jobs& jobs, const Say& say)
{
    QString problem = forgotten();
    if (problem.isEmpty() && state.job != u"-") {
        const auto file = jobs.fresh(state.job);
        problem = file ? opened(*file) : QString::fromStdString(file.error().code + " " + file.error().where);
    }
    auto* window =
        problem.isEmpty() ? stage.open(QUrl(QStringLiteral("qrc:/qt/qml/Proofwalk/Screens/Main.qml")), size) : nullptr;
    if (window == nullptr) {
        say(problem + stage.problem());
        return nullptr;
    }
    rest(*window);
    for (const auto& action : state.actions)
        if (const auto failed = act(*window, action); !failed.isEmpty()) {
            say(action + QStringLiteral(": ") + failed);
            return nullptr;
        }
    return window;
}

} // namespace

void Checking::inSize(const State& state, const QSize& size, Told& told)
{
    const QString place = QStringLiteral("%1-%2x%3").arg(state.name).arg(size.width()).arg(size.height());
    QString look = QString::fromLatin1(looks[0].name);
    const Say say = [&](const QString& what) { told.violations << place + u'-' + look + QStringLiteral(": ") + what; };
    QStringList warnings;
    {
        const Hearing hearing(warnings);
        Theme::instance().setChoice(looks[0].choice);
        models::Whereabouts::instance().go(models::Whereabouts::Walk);
        rig::Stage stage;
        if (auto* window = begin(state, size, stage, m_jobs, say); window != nullptr) {
            collect(*window->contentItem(), told.types);
            sayAll(rig::legible(*window), say);
            sayAll(rig::targets(*window), say);
            sayAll(rig::accessible(*window), say);
            for (const auto& one : looks) {
                if (m_folder.isEmpty() && one.choice != Theme::Light && size != sizes[0]) continue;
                look = QString::fromLatin1(one.name);
                Theme::instance().setChoice(one.choice);
                rest(*window);
                const QImage grab = window->grabWindow();
                sayAll(rig::contrasts(*window, grab), say);
                ++told.pictures;
                if (!m_folder.isEmpty() && !grab.save(m_folder + u'/' + place + u'-' + look + QStringLiteral(".png")))
                    say(QStringLiteral("the picture cannot be written"));
            }
            look = QString::fromLatin1(looks[0].name);
            Theme::instance().setChoice(looks[0].choice);
            rest(*window);
            // The order of Tab hangs on what is there, not on how it is coloured; the marks are looked at once.
            sayAll(rig::tabWalk(*window, size == sizes[0]), say);
        }
    }
    warnings.removeDuplicates();
    for (const auto& warning : warnings) say(warning);
}

void Checking::check(const State& state, Told& told)
{
    for (const auto& size : sizes)
        if (isForWidth(state.actions, size.width())) inSize(state, size, told);
}

} // namespace proofwalk::screens
