// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/attachments.h"

#include <set>

namespace proofwalk::report {
namespace {

using Handle = QPDFObjectHandle;
using Tree = std::map<std::string, QPDFObjGen>;

constexpr int treeDepth = 16;

std::unexpected<Error> wrong(const std::string& found) { return failure("seal.attachment", "", {{"found", found}}); }

/// Adds the names of a node and of those under it; false if it is no tree, goes too deep or has a name twice.
bool readNode(Handle node, Tree& tree, int depth)
{
    if (!node.isDictionary() || depth > treeDepth) return false;
    Handle kids = node.getKey("/Kids"), names = node.getKey("/Names");
    if (kids.isArray() == names.isArray()) return false;
    for (int i = 0; kids.isArray() && i < kids.getArrayNItems(); ++i) {
        if (!readNode(kids.getArrayItem(i), tree, depth + 1)) return false;
    }
    if (!names.isArray()) return true;
    if (names.getArrayNItems() % 2 != 0) return false;
    for (int i = 0; i < names.getArrayNItems(); i += 2) {
        Handle name = names.getArrayItem(i), spec = names.getArrayItem(i + 1);
        if (!name.isString() || !spec.isIndirect()) return false;
        if (!tree.emplace(name.getUTF8Value(), spec.getObjGen()).second) return false;
    }
    return true;
}

Result<Tree> readTree(Handle root)
{
    Tree tree;
    Handle names = root.getKey("/Names");
    Handle files = names.isDictionary() ? names.getKey("/EmbeddedFiles") : Handle::newNull();
    if (!files.isNull() && !readNode(files, tree, 0)) return wrong("/EmbeddedFiles");
    return tree;
}

} // namespace

Result<std::map<std::string, std::string>> readAttachments(QPDF& pdf)
{
    auto tree = readTree(pdf.getRoot());
    if (!tree) return passOn(tree);
    std::map<std::string, std::string> attachments;
    std::size_t room = reportLimit;
    Handle list = pdf.getRoot().getKey("/AF");
    for (int i = 0; list.isArray() && i < list.getArrayNItems(); ++i) {
        Handle spec = list.getArrayItem(i);
        const auto name = textAt(spec, "/UF");
        if (!name || textAt(spec, "/F") != *name) return wrong("/UF");
        const auto listed = tree->find(*name);
        if (listed == tree->end() || listed->second != spec.getObjGen()) return wrong(*name);
        Handle files = spec.getKey("/EF");
        if (!files.isDictionary() || !files.getKey("/F").isStream()
            || files.getKey("/F").getObjGen() != files.getKey("/UF").getObjGen())
            return wrong(*name);
        auto bytes = unpacked(files.getKey("/F"), room);
        if (!bytes) return wrong(*name);
        room -= bytes->size();
        if (!attachments.emplace(*name, std::move(*bytes)).second) return wrong(*name);
    }
    if (attachments.size() != tree->size()) return wrong("/AF");
    return attachments;
}

} // namespace proofwalk::report
