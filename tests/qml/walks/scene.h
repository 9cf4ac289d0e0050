// SPDX-License-Identifier: GPL-3.0-or-later
// A walk made from copies of one job: by touch only, by keyboard only, by lines of the command line. The command line
// then reads each file, and must print the same, byte for byte: the copies are of one job, so even its name is.
#pragma once

#include "tests/qml/rig/stage.h"
#include "tests/qml/walks/hand.h"
#include "tests/screens/jobs.h"

namespace proofwalk::rig {

class WalkTest : public WindowTest {
    Q_OBJECT

protected:
    // Pages are made while it walks, and this build is not optimised.
    WalkTest() { m_hold_ms = 400; }

    /// The file the walk begins with, to be copied; screens::Jobs::fresh makes one that suits. Errors are failures.
    virtual QString begun() { return made(QStringLiteral("corner-shop")); }
    /// The walk, from the list of the opened job on.
    virtual void walk(Hand& hand) = 0;
    /// The same as commands: a file of this folder.
    virtual QString lines() = 0;
    /// What else is to be true of the file, given what `where --json` printed of it. Uses QVERIFY.
    virtual void check(const QJsonObject& where) = 0;
    /// After the lines were taken, before `where`: what no line says.
    virtual void finish(const QString&) {}

    /// A copy of the job that states.txt would call so.
    QString made(const QString& asked);
    /// A job of the plan in that folder, with these commands taken.
    QString started(const QString& plan, const QByteArray& commands);
    /// What the program prints, run with these words. Its exit status goes to `status`.
    QByteArray say(const QStringList& words, int* status = nullptr);
    /// A file, for the person who photographs, where the window looks for pictures first.
    void lay(const QString& picture);
    QString folder() const { return m_folder.path(); }

private:
    QByteArray byHand(By by, const QSize& size);
    QByteArray byLines();
    void compare(By by, const QSize& size = {360, 780});
    void forget();

    QTemporaryDir m_folder;
    std::unique_ptr<screens::Jobs> m_jobs;
    QString m_begun;
    QByteArray m_byLines;
    int m_copies = 0;

private Q_SLOTS:
    void byTouch() { compare(By::touch); }
    void byKeys() { compare(By::keys); }
    void byKeysOnAWideWindow() { compare(By::keys, {1280, 800}); }
};

} // namespace proofwalk::rig
