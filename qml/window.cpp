// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/window.h"

#include "core/base/datafolder.h"
#include "core/command/command.h"
#include "core/report/type.h"
#include "qml/models/desk.h"
#include "qml/models/jobdoor.h"
#include "qml/parts/words.h"

#include <QApplication>
#include <QFont>
#include <QQmlApplicationEngine>
#include <QQuickWindow>

#include <iostream>

namespace proofwalk::window {
namespace {

/// Without one Qt would end the program with its own words. A platform that is named needs none.
bool hasDisplay()
{
    return qEnvironmentVariableIsSet("QT_QPA_PLATFORM") || qEnvironmentVariableIsSet("DISPLAY")
        || qEnvironmentVariableIsSet("WAYLAND_DISPLAY");
}

int cannot(const Error& error)
{
    std::cerr << parts::book().sentence(error) << '\n';
    return static_cast<int>(command::Exit::cannot);
}

} // namespace

Result<void> prepare(QQmlApplicationEngine& engine)
{
    QCoreApplication::setApplicationName(QStringLiteral("proofwalk"));
    QCoreApplication::setOrganizationName(QStringLiteral("proofwalk"));
    auto book = words::Book::open(base::dataFolder() / "words" / "english");
    if (!book) return passOn(book);
    parts::speakFrom(std::move(*book));
    if (auto there = report::checkFonts(); !there) return passOn(there);
    QFont font(QStringLiteral("Clear Sans"));
    font.setPixelSize(15);
    QGuiApplication::setFont(font);
    // The person scales by the platform's factor; the sheets of the design are in whole units.
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    return {};
}

int run(int argc, char** argv)
{
    if (!hasDisplay()) return static_cast<int>(command::runWords({}, std::cout, std::cerr));
    const QApplication application(argc, argv);
    int status = 0;
    {
        QQmlApplicationEngine engine;
        if (auto ready = prepare(engine); !ready) return cannot(ready.error());
        models::reopen();
        engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Proofwalk/Screens/Main.qml")));
        if (engine.rootObjects().isEmpty()) return static_cast<int>(command::Exit::cannot);
        status = QApplication::exec();
    }
    models::Desk::instance().end();
    return status;
}

} // namespace proofwalk::window
