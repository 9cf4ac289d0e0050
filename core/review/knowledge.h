// SPDX-License-Identifier: GPL-3.0-or-later
// What the checks know of the trade besides the catalogue, read from the data folder: the names of all kinds, the types
// of rooms, the event codes.
#pragma once

#include "core/base/result.h"
#include "core/review/roomtypes.h"
#include "core/signals/reportcode.h"

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace proofwalk::review {

/// A kind of device by its name, whether its sheet is written yet or not (review/known-kinds.csv).
struct KnownKind {
    bool needsZone = false; ///< its alarm must come in on a zone
    bool hasTamper = false; ///< it usually has a tamper contact
    std::vector<std::string> unsuitedRooms; ///< room types in which it is the wrong choice
};

struct Knowledge {
    std::map<std::string, KnownKind, std::less<>> kinds;
    RoomTypes rooms;
    signals::ReportCodes codes;

    /// Reads review/known-kinds.csv, catalogue/rooms.toml and signals/event-codes.csv of a data folder.
    /// Errors: those of base::readFile, base::readCsv, RoomTypes::read and signals::ReportCodes::open;
    /// review.kinds-table {found, wanted}.
    static Result<Knowledge> read(const std::filesystem::path& dataFolder);
};

} // namespace proofwalk::review
