// SPDX-License-Identifier: GPL-3.0-or-later
// The window: its engine, its first page, its end.
#pragma once

#include "core/base/result.h"

#include <QtGlobal>

QT_BEGIN_NAMESPACE
class QQmlApplicationEngine;
QT_END_NAMESPACE

namespace proofwalk::window {

/// What every program that shows our QML does before it loads any: names, typefaces, the sentences.
/// There must be a QApplication. Errors: those of Book::open and checkFonts.
Result<void> prepare(QQmlApplicationEngine& engine);

/// Opens the window and gives the program's exit status. Without a display it says so and lists the words.
int run(int argc, char** argv);

} // namespace proofwalk::window
