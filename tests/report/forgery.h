// SPDX-License-Identifier: GPL-3.0-or-later
// Signed updates that a report must not have, made with the signer's own key so that the signature itself is sound: put
// together here as text, with no help from the code that appends them.
#pragma once

#include "core/report/cms.h"
#include "tests/report/sample.h"

#include <fmt/format.h>

#include <string>

namespace forgery {

using namespace proofwalk;

/// An update as it should be; each test changes one thing.
struct Update {
    std::string before; ///< the file that is added to
    int field = 0; ///< object number of its signature field
    std::string fieldWords; ///< what its dictionary says, without the value
    int size = 0; ///< /Size of its trailer
    std::string trailerWords; ///< /Root, /Info and /ID of its trailer
    std::string previous; ///< offset of its table
    std::string value = "/V"; ///< key of the field's value
    std::string extra; ///< objects between field and signature
    std::string extraEntries; ///< and their part of the table, with {} for the first one's offset
    std::string type = "/Type /Sig /Filter /Adobe.PPKLite /SubFilter /ETSI.CAdES.detached";
    std::string time = "D:20261125113000Z";
    std::string words = "/Name <FEFF005A006F00EB002000C5006E006700730074007200F6006D> /Reason (why)";
    std::string behind = " >>\nendobj\n"; ///< the digits
    std::string range = "0 {} {} {}";
    bool capitals = false;
    std::string padding; ///< digits instead of the last zeros
};

/// Reads what is needed out of a report that is not signed yet.
inline Update of(const std::string& built)
{
    const auto between = [&](const std::string& text, const char* from, const char* to, std::size_t at = 0) {
        const auto start = text.find(from, at) + std::string_view(from).size();
        return text.substr(start, text.find(to, start) - start);
    };
    Update update;
    update.before = built;
    const auto form = built.find("/Type /Annot");
    const auto object = built.rfind(" 0 obj\n<< ", form);
    const auto line = built.rfind('\n', object) + 1;
    update.field = std::stoi(built.substr(line, object - line));
    update.fieldWords = between(built, "<< ", " >>\nendobj", object);
    const std::string trailer = between(built, "trailer <<", ">>\nstartxref");
    const auto word = [&](const char* key, const char* to) { return std::string(key) + between(trailer, key, to); };
    update.size = std::stoi(between(trailer, "/Size ", " "));
    update.trailerWords = word("/Root", "R") + "R " + word("/Info", "R") + "R " + word("/ID", "]") + "]";
    update.previous = between(built, "startxref\n", "\n");
    return update;
}

inline std::string hex(const std::string& bytes, bool capitals)
{
    std::string digits;
    for (const char c : bytes) digits += fmt::format("{:02x}", static_cast<unsigned char>(c));
    if (capitals)
        for (char& c : digits) c = c >= 'a' ? static_cast<char>(c - 'a' + 'A') : c;
    return digits;
}

/// The signed file.
inline std::string sealed(const Update& update, const journal::Identity& identity = sample::identity())
{
    std::string file = update.before;
    const auto fieldAt = file.size();
    file += fmt::format("{} 0 obj\n<< {} {} {} 0 R >>\nendobj\n", update.field, update.fieldWords, update.value,
                        update.size);
    const auto extraAt = file.size();
    file += update.extra;
    const auto signatureAt = file.size();
    file += fmt::format("{} 0 obj\n<< {} /M ({}) {} /ByteRange [", update.size, update.type, update.time, update.words);
    const auto rangeAt = file.size();
    file += std::string(40, ' ') + "] /Contents ";
    const auto open = file.size();
    file += '<' + std::string(16384, '0') + '>';
    const auto after = file.size();
    file += update.behind;
    const auto table = file.size();
    file += fmt::format("xref\n0 1\n0000000000 65535 f \n{} 1\n{:010} 00000 n \n", update.field, fieldAt)
          + fmt::format(fmt::runtime(update.extraEntries), fmt::format("{:010}", extraAt))
          + fmt::format("{} 1\n{:010} 00000 n \ntrailer << /Size {} {} /Prev {} >>\nstartxref\n{}\n%%EOF\n",
                        update.size, signatureAt, update.size + 1, update.trailerWords, update.previous, table);
    const std::string range = fmt::format(fmt::runtime(update.range), open, after, file.size() - after);
    file.replace(rangeAt, range.size(), range);
    const std::string digits =
        hex(report::signedData(file.substr(0, open) + file.substr(after), identity).value(), update.capitals);
    file.replace(open + 1, digits.size(), digits);
    file.replace(after - 1 - update.padding.size(), update.padding.size(), update.padding);
    return file;
}

} // namespace forgery
