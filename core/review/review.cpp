// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/review.h"

#include "core/review/checks.h"

#include <array>

namespace proofwalk::review {
namespace {

constexpr std::string_view itself = "the plan itself", practice = "common practice";

constexpr std::array table{
    Check{"tag-unique", Severity::error, itself, "", checkTagsUnique},
    Check{"name-unique", Severity::error, itself, "", checkNamesUnique},
    Check{"zone-exists", Severity::error, itself, "", checkZonesExist},
    Check{"area-exists", Severity::error, itself, "", checkAreasExist},
    Check{"mode-exists", Severity::error, itself, "", checkModesExist},
    Check{"floor-exists", Severity::error, itself, "", checkFloorsExist},
    Check{"signal-device", Severity::error, itself, "", checkSignals},
    Check{"supply-exists", Severity::error, itself, "", checkSuppliesExist},
    Check{"kind-known", Severity::error, practice, "", checkKindsKnown},
    Check{"kind-sheet", Severity::note, itself, "", checkKindsHaveSheets},
    Check{"purpose-fits-kind", Severity::warning, practice, "", checkPurposesFitKinds},
    Check{"purpose-stated", Severity::warning, itself, "", checkPurposesStated},
    Check{"zone-used", Severity::warning, itself, "", checkZonesUsed},
    Check{"device-zoned", Severity::warning, practice, "", checkDevicesZoned},
    // Grade 1 or 2 asks for it from memory only, so it is told as practice.
    Check{"tamper-where-public", Severity::warning, practice, "", checkTamperWherePublic},
    Check{"report-code", Severity::warning, "read", "DC-05 and DC-04, public code lists", checkReportCodes},
    Check{"resistors-stated", Severity::warning, itself, "", checkResistorsStated},
    Check{"resistor-value", Severity::warning, "from memory", "IEC 60063:2015", checkResistorValues},
    Check{"loop-cable", Severity::warning, "computed", "", checkLoopCable},
    Check{"loop-states", Severity::warning, "computed", "", checkLoopStates},
    Check{"serial-unique", Severity::error, itself, "", checkSerials},
    Check{"rules-known", Severity::error, itself, "", checkRulesKnown},
    Check{"timer-range", Severity::warning, "as the figure says", "", checkTimers},
    Check{"battery-load", Severity::warning, "computed",
          "capacity by standby and alarm load, the form NFPA 72 and BS 5839-1 share", checkBatteries},
    Check{"room-suits-kind", Severity::warning, practice, "", checkRooms},
    Check{"opening-protected", Severity::warning, practice, "", checkOpenings},
    Check{"opening-device", Severity::error, itself, "", checkOpeningDevices},
    Check{"effect-exists", Severity::error, itself, "", checkEffectsExist},
    Check{"cause-exists", Severity::error, itself, "", checkCausesExist},
    Check{"path-received", Severity::warning, itself, "", checkPathsReceived},
    Check{"zone-heard", Severity::warning, itself, "", checkZonesHeard},
    Check{"backup-path", Severity::error, itself, "", checkBackups},
};

} // namespace

std::string_view wordOf(Severity severity)
{
    switch (severity) {
    case Severity::error: return "error";
    case Severity::warning: return "warning";
    case Severity::note: return "note";
    }
    return {};
}

std::span<const Check> checks() { return table; }

std::vector<Remark> reviewPlan(const plan::Plan& plan, const catalogue::Catalogue& catalogue,
                               const Knowledge& knowledge)
{
    const Context context(plan, catalogue, knowledge);
    Remarks remarks;
    for (const Check& check : table) {
        remarks.begin(check);
        check.run(context, remarks);
    }
    return remarks.take();
}

} // namespace proofwalk::review
