// SPDX-License-Identifier: GPL-3.0-or-later
// The fixed words of the sheets: heads, column names, the words of the keys. They stand here in English; a report in
// another language is given another set. In braces stand the places that the pages fill in.
#pragma once

#include <array>
#include <string>

namespace proofwalk::report {

/// Every word a sheet shows that does not depend on the job.
struct Labels {
    // Every sheet
    std::string sheetOf = "sheet {sheet} of {sheets}";
    std::string continued = "continued";

    // Page one
    std::string whatWorks = "What works";
    std::string whatDoesNot = "What does not";
    std::string notTested = "Not tested, and why";
    std::string mustDo = "What you must do";
    std::string liveNow = "Live and monitored now?";
    std::string liveUnknown = "It was not written down."; ///< where nothing is said about it
    std::string whomToCall = "Whom to call";
    std::string nothing = "Nothing.";
    std::string moreBelow = "and {count} more: sheet {sheet}";
    std::string summaryContinued = "Page one, continued";
    std::string testedBy = "tested by";
    std::string customer = "customer";
    std::string key = "installer’s key";
    std::string agreedTo = "agreed to";
    std::string agreedInFull = "in full: sheet {sheet}";
    std::string fingerprint = "fingerprint of this report";
    std::string notSigned = "not signed";
    std::string rooms = "{count} rooms";
    std::string floors = "{count} floors";

    // Devices
    std::string devices = "Devices, in the order they were walked";
    std::string devicesSpan = "{floors}: devices {first} to {last} of {all}.";
    std::string noDevices = "No device is listed.";
    std::string tag = "tag";
    std::string device = "device";
    std::string where = "where";
    std::string zone = "zone";
    std::string result = "result";
    std::string proofs = "proofs";
    std::string reading = "reading";
    std::string scale = "on its scale";
    std::string limit = "limit";
    std::string time = "time";
    std::array<std::string, 4> proofLetters = {"I", "R", "O", "S"};
    std::array<std::string, 4> proofWords = {"input", "response", "output", "received"};
    std::string byItsLike = "by its like or in bulk";
    std::string byTheEar = "by the ear";
    std::string byPartner = "by a partner";
    std::string failed = "failed";
    std::string notPromised = "not promised";

    // Findings
    std::string findings = "Findings, with their history";
    std::string cleared = "Cleared";
    std::string photographUnreadable = "The photograph could not be read.";

    // Readings
    std::string readings = "Readings";
    std::string readingsLine =
        "A limit is drawn as a wall, what is allowed as a doorway; the whisker is the uncertainty.";
    std::string noReadings = "No reading was taken.";
    std::string timers = "Were the timers on time?";

    // Instruments and limits; the sheet that says how to check
    std::string grounds = "What it was measured with and judged by";
    std::string checking = "How to check this report without us";
};

} // namespace proofwalk::report
