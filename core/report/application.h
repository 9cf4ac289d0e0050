// SPDX-License-Identifier: GPL-3.0-or-later
// Charts need a QApplication. A window has one; a run by words makes this one, which needs no display.
#pragma once

#include <memory>

namespace proofwalk::report {

/// Makes an offscreen QApplication unless there is one already. Must outlive all drawing.
class DrawingApplication {
public:
    DrawingApplication();
    DrawingApplication(const DrawingApplication&) = delete;
    DrawingApplication& operator=(const DrawingApplication&) = delete;
    ~DrawingApplication();

private:
    struct Own;
    std::unique_ptr<Own> m_own;
};

} // namespace proofwalk::report
