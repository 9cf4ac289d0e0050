// SPDX-License-Identifier: GPL-3.0-or-later
// The checks by the file they stand in; what each is for stands in the table of review.cpp.
#pragma once

#include "core/review/context.h"

namespace proofwalk::review {

// integrity.cpp
void checkTagsUnique(const Context&, Remarks&);
void checkNamesUnique(const Context&, Remarks&);
void checkZonesExist(const Context&, Remarks&);
void checkAreasExist(const Context&, Remarks&);
void checkModesExist(const Context&, Remarks&);
void checkFloorsExist(const Context&, Remarks&);
void checkSignals(const Context&, Remarks&);
void checkSuppliesExist(const Context&, Remarks&);
// kinds.cpp
void checkKindsKnown(const Context&, Remarks&);
void checkKindsHaveSheets(const Context&, Remarks&);
void checkPurposesFitKinds(const Context&, Remarks&);
void checkPurposesStated(const Context&, Remarks&);
void checkRooms(const Context&, Remarks&);
// zones.cpp
void checkZonesUsed(const Context&, Remarks&);
void checkDevicesZoned(const Context&, Remarks&);
void checkTamperWherePublic(const Context&, Remarks&);
void checkOpenings(const Context&, Remarks&);
void checkOpeningDevices(const Context&, Remarks&);
// wiring.cpp
void checkResistorsStated(const Context&, Remarks&);
void checkResistorValues(const Context&, Remarks&);
void checkLoopCable(const Context&, Remarks&);
// thresholds.cpp
void checkLoopStates(const Context&, Remarks&);
// reporting.cpp
void checkReportCodes(const Context&, Remarks&);
void checkPathsReceived(const Context&, Remarks&);
void checkZonesHeard(const Context&, Remarks&);
void checkBackups(const Context&, Remarks&);
// serials.cpp
void checkSerials(const Context&, Remarks&);
// timers.cpp
void checkRulesKnown(const Context&, Remarks&);
void checkTimers(const Context&, Remarks&);
// power.cpp
void checkBatteries(const Context&, Remarks&);
// effects.cpp
void checkEffectsExist(const Context&, Remarks&);
void checkCausesExist(const Context&, Remarks&);

} // namespace proofwalk::review
