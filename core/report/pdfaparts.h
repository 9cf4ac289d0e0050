// SPDX-License-Identifier: GPL-3.0-or-later
// The rules of pdfacheck.h that can be asked of one dictionary alone: fonts, actions, streams, pictures, annotations,
// attachments.
#pragma once

#include "core/report/qpdf.h"

#include <string>
#include <utility>
#include <vector>

namespace proofwalk::report {

/// Collects what was found.
class Problems {
public:
    void add(std::string code, std::string where, std::vector<Argument> arguments = {})
    {
        m_found.push_back({std::move(code), std::move(where), std::move(arguments)});
    }
    std::vector<Error> take() { return std::move(m_found); }

private:
    std::vector<Error> m_found;
};

/// "object 12"; empty for one that has no number.
std::string placeOf(const QPDFObjectHandle& object);

/// Checks the object and every direct one inside it; those it refers to are objects of their own. `depth` from 0.
void checkParts(QPDFObjectHandle object, const std::string& where, Problems& problems, int depth);

} // namespace proofwalk::report
