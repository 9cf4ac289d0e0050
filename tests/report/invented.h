// SPDX-License-Identifier: GPL-3.0-or-later
// Contents of a report about a house that does not exist, for drawing and looking at. All invented.
#pragma once

#include "core/report/contents.h"

namespace proofwalk::report::invented {

/// A creamery with cellar, ground floor, flat and yard: 65 devices, findings, charts, everything.
Contents lanternMill();

/// Almost nothing: one device, all lists else empty.
Contents oneDevice();

/// Names, words and lists far longer than anyone would type on purpose; interim, and a rehearsal.
Contents longWords();

} // namespace proofwalk::report::invented
