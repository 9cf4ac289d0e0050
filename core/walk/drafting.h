// SPDX-License-Identifier: GPL-3.0-or-later
// What the handlers of commands share: a draft in the making, and private values sealed into it.
#pragma once

#include "core/walk/command.h"
#include "core/walk/line.h"
#include "core/walk/subject.h"

namespace proofwalk::walk {

/// A handler reads its line and gives drafts; `finish()` of the line is called by the caller.
using Drafts = Result<std::vector<journal::Draft>>;
using Handler = Drafts (*)(const CommandGround&, Line&);

/// Collects the private values that a body names.
class Sealing {
public:
    /// Empty text gives no reference.
    PrivateRef seal(const std::string& value);
    /// The member as a private value; empty if it is not there.
    Result<PrivateRef> seal(Line& line, const char* name, bool required = false);

    /// The finished draft; `at` of the line is put into the body. May be called once.
    Drafts draft(Line& line, const Body& body);

private:
    std::vector<journal::Private> m_privates;
};

Drafts answerCommand(const CommandGround& ground, Line& line);
Drafts roundCommand(const CommandGround& ground, Line& line);
Drafts noAccessCommand(const CommandGround& ground, Line& line);
Drafts findingCommand(const CommandGround& ground, Line& line);
Drafts photographCommand(const CommandGround& ground, Line& line);
Drafts repairCommand(const CommandGround& ground, Line& line);
Drafts acceptCommand(const CommandGround& ground, Line& line);
Drafts withdrawCommand(const CommandGround& ground, Line& line);
Drafts kitCommand(const CommandGround& ground, Line& line);
Drafts clockCommand(const CommandGround& ground, Line& line);
Drafts stateCommand(const CommandGround& ground, Line& line);
Drafts onTestCommand(const CommandGround& ground, Line& line);
Drafts offTestCommand(const CommandGround& ground, Line& line);
Drafts asFoundCommand(const CommandGround& ground, Line& line);
Drafts temporaryCommand(const CommandGround& ground, Line& line);
Drafts putBackCommand(const CommandGround& ground, Line& line);
Drafts shownCommand(const CommandGround& ground, Line& line);
Drafts noteCommand(const CommandGround& ground, Line& line);
Drafts acceptanceCommand(const CommandGround& ground, Line& line);

} // namespace proofwalk::walk
