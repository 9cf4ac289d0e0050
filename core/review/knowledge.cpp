// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/knowledge.h"

#include "core/base/csv.h"
#include "core/base/file.h"
#include "core/base/text.h"

namespace proofwalk::review {
namespace {

Result<bool> truth(const std::string& cell, const std::string& where)
{
    if (cell == "yes" || cell == "no") return cell == "yes";
    return failure("review.kinds-table", where, {{"found", cell}, {"wanted", std::string("yes or no")}});
}

Result<std::map<std::string, KnownKind, std::less<>>> readKinds(const std::filesystem::path& path)
{
    auto bytes = base::readFile(path);
    if (!bytes) return passOn(bytes);
    auto table = base::readCsv(*bytes, path.string());
    if (!table) return passOn(table);
    const std::vector<std::string> wanted{"kind", "needs_zone", "has_tamper", "unsuited_rooms"};
    if (table->header != wanted)
        return failure("review.kinds-table", path.string(),
                       {{"found", base::join(table->header, ",")}, {"wanted", base::join(wanted, ",")}});

    std::map<std::string, KnownKind, std::less<>> kinds;
    for (const auto& row : table->rows) {
        const std::string where = path.string() + ":" + std::to_string(row.line);
        auto needsZone = truth(row.cells[1], where);
        if (!needsZone) return passOn(needsZone);
        auto hasTamper = truth(row.cells[2], where);
        if (!hasTamper) return passOn(hasTamper);
        kinds[row.cells[0]] = {*needsZone, *hasTamper, base::split(row.cells[3], ';')};
    }
    return kinds;
}

} // namespace

Result<Knowledge> Knowledge::read(const std::filesystem::path& dataFolder)
{
    auto kinds = readKinds(dataFolder / "review" / "known-kinds.csv");
    if (!kinds) return passOn(kinds);
    const auto roomsPath = dataFolder / "catalogue" / "rooms.toml";
    auto roomsText = base::readFile(roomsPath);
    if (!roomsText) return passOn(roomsText);
    auto rooms = RoomTypes::read(*roomsText, roomsPath.string());
    if (!rooms) return passOn(rooms);
    auto codes = signals::ReportCodes::open(dataFolder);
    if (!codes) return passOn(codes);
    return Knowledge{std::move(*kinds), std::move(*rooms), std::move(*codes)};
}

} // namespace proofwalk::review
