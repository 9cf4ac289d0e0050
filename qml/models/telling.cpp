// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/telling.h"

#include "qml/parts/words.h"

#include <algorithm>

namespace proofwalk::models {

QString text(const std::string& utf8) { return QString::fromStdString(utf8); }

QString sentence(const Error& error) { return text(parts::book().sentence(error)); }

parts::verdict::Value markOf(walk::Verdict verdict)
{
    switch (verdict) {
    case walk::Verdict::fail: return parts::verdict::Fail;
    case walk::Verdict::retest: return parts::verdict::Retest;
    case walk::Verdict::tooClose: return parts::verdict::TooClose;
    case walk::Verdict::noAccess: return parts::verdict::NoAccess;
    case walk::Verdict::running: return parts::verdict::Running;
    case walk::Verdict::toDo: return parts::verdict::ToDo;
    case walk::Verdict::pass: return parts::verdict::Pass;
    case walk::Verdict::notApplicable: return parts::verdict::NotApplicable;
    }
    return parts::verdict::ToDo;
}

QString verdictWord(walk::Verdict verdict) { return parts::phrase("verdict." + std::string(walk::wordOf(verdict))); }

parts::seen::Value seenOf(walk::How how)
{
    switch (how) {
    case walk::How::singly: return parts::seen::Singly;
    case walk::How::bulk: return parts::seen::Bulk;
    case walk::How::ear: return parts::seen::Ear;
    case walk::How::partner: return parts::seen::Partner;
    }
    return parts::seen::Singly;
}

parts::proof::Value proofOf(walk::ProofState state)
{
    switch (state) {
    case walk::ProofState::none: return parts::proof::NotPromised;
    case walk::ProofState::promised: return parts::proof::Promised;
    case walk::ProofState::underWay: return parts::proof::UnderWay;
    case walk::ProofState::lit: return parts::proof::Lit;
    case walk::ProofState::failed: return parts::proof::Failed;
    }
    return parts::proof::NotPromised;
}

QString floorName(const plan::Plan& plan, const std::string& floor)
{
    const auto row = std::ranges::find(plan.floors, floor, &plan::Floor::floor);
    return text(row == plan.floors.end() || row->name.empty() ? floor : row->name);
}

QString roomName(const std::string& room) { return room.empty() ? parts::phrase("report.no-room") : text(room); }

QString kindTitle(const walk::ScopeDevice& device)
{
    return text(device.kind != nullptr ? device.kind->title : device.device->kind);
}

} // namespace proofwalk::models
