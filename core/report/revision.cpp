// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/revision.h"

#include "core/report/tail.h"

#include <fmt/format.h>
#include <qpdf/QPDFXRefEntry.hh>

#include <map>
#include <set>
#include <string>

namespace proofwalk::report {
namespace {

using Handle = QPDFObjectHandle;

std::unexpected<Error> wrong(std::string part) { return failure("seal.revision", "", {{"part", std::move(part)}}); }

/// The two objects of the update, in the order in which they stand.
struct Update {
    TableEntry field;
    TableEntry signature;
    std::size_t table = 0;
};

Result<Update> readUpdate(std::string_view bytes, const Signature& signature)
{
    const auto table = tableOffset(bytes);
    const auto entries = table ? updateTable(bytes, *table) : std::nullopt;
    if (!entries || entries->size() != 2) return wrong("xref");
    const auto is = [](const TableEntry& entry, const Handle& object) {
        return entry.number == object.getObjectID() && entry.generation == object.getGeneration();
    };
    const Update update{(*entries)[0], (*entries)[1], *table};
    if (!is(update.field, signature.field) || !is(update.signature, signature.dictionary)) return wrong("xref");
    if (update.field.offset >= update.signature.offset || update.signature.offset >= *table) return wrong("xref");
    return update;
}

/// Each object begins where the table says and ends where the next one begins.
bool standsAlone(std::string_view bytes, const TableEntry& entry, std::size_t end)
{
    const std::string_view object = bytes.substr(entry.offset, end - entry.offset);
    return object.starts_with(fmt::format("{} {} obj\n<< ", entry.number, entry.generation))
        && object.ends_with(" >>\nendobj\n");
}

Result<void> compareTrailers(Handle before, Handle after, std::size_t tableBefore, int signatureNumber)
{
    if (before.hasKey("/Prev") || before.hasKey("/XRefStm")) return wrong("/Prev");
    if (after.getKeys() != std::set<std::string>{"/ID", "/Info", "/Prev", "/Root", "/Size"}) return wrong("trailer");
    for (const char* key : {"/ID", "/Info", "/Root"}) {
        if (before.getKey(key).unparse() != after.getKey(key).unparse()) return wrong(key);
    }
    Handle size = before.getKey("/Size"), newSize = after.getKey("/Size"), previous = after.getKey("/Prev");
    if (!size.isInteger() || !newSize.isInteger() || size.getIntValue() != signatureNumber
        || newSize.getIntValue() != signatureNumber + 1)
        return wrong("/Size");
    if (!previous.isInteger() || static_cast<std::uint64_t>(previous.getIntValue()) != tableBefore)
        return wrong("/Prev");
    return {};
}

/// The bytes before the update are the same in both, so an object that is still found at its old place is the same.
Result<void> compareTables(QPDF& before, QPDF& after, const Update& update)
{
    auto old = before.getXRefTable(), now = after.getXRefTable();
    const QPDFObjGen field(update.field.number, update.field.generation), signature(update.signature.number, 0);
    if (!old.contains(field) || old.contains(signature)) return wrong("xref");
    old.erase(field);
    now.erase(field);
    now.erase(signature);
    if (old.size() != now.size()) return wrong("xref");
    for (auto& [id, entry] : old) {
        const auto found = now.find(id);
        if (found == now.end() || entry.getType() != 1 || found->second.getType() != 1
            || entry.getOffset() != found->second.getOffset())
            return wrong(fmt::format("object {}", id.getObj()));
    }
    return {};
}

Result<void> compareFields(Handle before, Handle after)
{
    if (!before.isDictionary() || before.hasKey("/V")) return wrong("/V");
    auto now = after.getDictAsMap(), old = before.getDictAsMap();
    now.erase("/V");
    if (now.size() != old.size()) return wrong("field");
    for (auto& [key, value] : old) {
        if (!now.contains(key) || now[key].unparse() != value.unparse()) return wrong(key);
    }
    return {};
}

} // namespace

Result<void> checkRevision(std::string_view bytes, QPDF& after, const Signature& signature)
{
    const auto update = readUpdate(bytes, signature);
    if (!update) return std::unexpected(update.error());
    if (!standsAlone(bytes, update->field, update->signature.offset)
        || !standsAlone(bytes, update->signature, update->table))
        return wrong("xref");
    const std::string_view cut = bytes.substr(0, update->field.offset);
    const auto tableBefore = tableOffset(cut);
    if (!tableBefore) return wrong("startxref");
    auto before = openPdf(cut);
    if (!before) return wrong(before.error().code);
    auto same = compareTrailers((*before)->getTrailer(), after.getTrailer(), *tableBefore, update->signature.number);
    if (same) same = compareTables(**before, after, *update);
    if (same) same = compareFields((*before)->getObject(signature.field.getObjGen()), signature.field);
    return same;
}

} // namespace proofwalk::report
