// SPDX-License-Identifier: GPL-3.0-or-later
// What the files that fill the sheets share. Each fills one sheet.
#pragma once

#include "core/report/fill.h"
#include "core/walk/deviceview.h"
#include "core/walk/findings.h"

#include <optional>
#include <string>
#include <vector>

namespace proofwalk::report {

/// The ground, with the views every sheet needs computed once.
struct Filling {
    const Ground& ground;
    const walk::State& state;
    const walk::Scope& scope;
    const plan::Plan& plan;
    std::vector<walk::DeviceView> views; ///< as scope.devices
    std::vector<walk::Finding> findings;

    explicit Filling(const Ground& given);

    std::string phrase(std::string_view code, const std::vector<Argument>& arguments = {}) const
    {
        return ground.book.phrase(code, arguments);
    }
    /// A private value of the record, or nothing.
    std::string reveal(const walk::PrivateRef& ref) const { return walk::reveal(ground.record, ref); }
    std::string verdictWord(walk::Verdict verdict) const;
    /// What a finding is called on page one and on its band: its description, else what was seen instead.
    std::string lineOf(const walk::Finding& finding) const;
};

/// The mark of a verdict.
Verdict markOf(walk::Verdict verdict);

/// "3.40 ± 0.05 kΩ", "5 of 5"; empty if the attempt has no figure.
std::string readingText(const walk::AnswerBody& answer);
/// "3.0 to 3.7 kΩ", "≤ 12 mm", "≥ 10 dB", in the step's unit; empty without a confirmed limit.
std::string limitText(const walk::ScopeStep& step);
/// The reading on its scale, in the step's unit; nothing if it is no reading.
std::optional<Scale> scaleOf(const walk::ScopeStep& step, const walk::Attempt& attempt);
/// A figure in the base unit, brought to the unit of the step, for drawing.
double inUnitOf(const walk::ScopeStep& step, const base::Decimal& inBase);

/// "a3f0 119c 05de …": the first `groups` groups of four digits.
std::vector<std::string> fingerprintGroups(const std::string& hex, std::size_t groups);

/// "2 Dec" of "2026-12-02".
std::string shortDay(const std::string& day);

void fillSummary(const Filling& filling, Contents& contents);
void fillTitleBlock(const Filling& filling, Contents& contents);
void fillFloors(const Filling& filling, Contents& contents);
void fillDevices(const Filling& filling, Contents& contents);
void fillFindings(const Filling& filling, Contents& contents);
void fillReadings(const Filling& filling, Contents& contents);
void fillGrounds(const Filling& filling, Contents& contents);
void fillChecking(const Filling& filling, Contents& contents);

} // namespace proofwalk::report
