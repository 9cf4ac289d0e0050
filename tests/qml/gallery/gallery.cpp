// SPDX-License-Identifier: GPL-3.0-or-later
// Every control in each of its states, drawn into a folder: gallery FOLDER. To be looked at beside the design; that the
// pages load without a warning is its test.
#include "core/base/datafolder.h"
#include "qml/parts/theme.h"
#include "qml/parts/words.h"

#include <QApplication>
#include <QDir>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QStandardPaths>
#include <QTest>

#include <iostream>
#include <memory>

using namespace proofwalk;

namespace {

const std::pair<const char*, parts::Theme::Choice> looks[] = {
    {"light", parts::Theme::Light}, {"dark", parts::Theme::Dark}, {"contrast", parts::Theme::HighContrast}};
const char* const pages[] = {"Buttons", "Pads", "Stairs", "Lists", "Sheet", "Drawn"};

bool draw(QQmlEngine& engine, const QString& page, int width, const QString& file)
{
    QQmlComponent component(
        &engine, QUrl::fromLocalFile(QStringLiteral(PROOFWALK_SOURCE "/tests/qml/gallery/%1.qml").arg(page)));
    std::unique_ptr<QObject> made(component.create());
    auto* item = qobject_cast<QQuickItem*>(made.get());
    if (!item) {
        std::cerr << component.errorString().toStdString();
        return false;
    }
    QQuickWindow window;
    item->setParentItem(window.contentItem());
    item->setWidth(width);
    window.setColor(parts::Theme::instance().film());
    window.resize(width, int(item->height()));
    window.show();
    QTest::qWait(30);
    window.resize(width, int(item->height()));
    QTest::qWait(30);
    const bool kept = window.grabWindow().save(file);
    item->setParentItem(nullptr);
    return kept;
}

int warnings = 0;

void listen(QtMsgType type, const QMessageLogContext&, const QString& text)
{
    if (type != QtDebugMsg && type != QtInfoMsg) ++warnings;
    std::cerr << text.toStdString() << '\n';
}

} // namespace

int main(int argc, char** argv)
{
    QStandardPaths::setTestModeEnabled(true);
    QApplication application(argc, argv);
    QCoreApplication::setOrganizationName(QStringLiteral("proofwalk-gallery"));
    qInstallMessageHandler(listen);
    const QDir folder(argc > 1 ? QString::fromLocal8Bit(argv[1]) : QStringLiteral("."));
    auto book = words::Book::open(base::dataFolder() / "words" / "english");
    if (!book) {
        std::cerr << book.error().code << ' ' << book.error().where << '\n';
        return 1;
    }
    parts::speakFrom(std::move(*book));
    QQmlEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    bool all = folder.mkpath(QStringLiteral("."));
    for (const auto& [name, choice] : looks) {
        parts::Theme::instance().setChoice(choice);
        for (const char* page : pages) {
            for (const int width : {360, 800}) {
                const QString file = QStringLiteral("%1-%2-%3.png")
                                         .arg(QString::fromLatin1(page).toLower())
                                         .arg(width)
                                         .arg(QLatin1String(name));
                all = draw(engine, QString::fromLatin1(page), width, folder.filePath(file)) && all;
            }
        }
    }
    return all && warnings == 0 ? 0 : 1;
}
