// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/readingscale.h"

namespace proofwalk::parts {
namespace {

std::optional<double> given(double number) { return std::isfinite(number) ? std::optional(number) : std::nullopt; }

} // namespace

report::Scale ReadingScale::scale() const
{
    return {.lower = given(m_lower),
            .upper = given(m_upper),
            .value = given(m_value),
            .uncertainty = given(m_uncertainty).value_or(0),
            .verdict = verdictOf(m_mark).value_or(report::Verdict::toDo)};
}

} // namespace proofwalk::parts
