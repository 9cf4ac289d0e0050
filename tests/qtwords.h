// SPDX-License-Identifier: GPL-3.0-or-later
// Qt's keyword "signals" is a word of the trade and a room's name here: after Qt's headers it is a plain word again. Code
// that declares signals of its own writes Q_SIGNALS.
#pragma once

#undef signals
