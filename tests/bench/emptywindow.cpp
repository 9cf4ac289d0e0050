// SPDX-License-Identifier: GPL-3.0-or-later
// What the window is measured against: an empty window of Qt Quick Controls ("controls"), or one without any ("plain").
#include <QApplication>
#include <QQmlApplicationEngine>

int main(int count, char** words)
{
    const QApplication application(count, words);
    QQmlApplicationEngine engine;
    const bool plain = count > 1 && qstrcmp(words[1], "plain") == 0;
    engine.loadData(plain ? "import QtQuick\nimport QtQuick.Window\nWindow { width: 360; height: 780; visible: true }"
                          : "import QtQuick\nimport QtQuick.Controls.Basic\n"
                            "ApplicationWindow { width: 360; height: 780; visible: true }");
    return engine.rootObjects().isEmpty() ? 2 : QApplication::exec();
}
