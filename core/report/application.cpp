// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/application.h"

#include <QApplication>

#include <array>
#include <string>

namespace proofwalk::report {

struct DrawingApplication::Own {
    std::string name = "proofwalk";
    std::array<char*, 2> arguments{name.data(), nullptr};
    int count = 1;
    QApplication application{count, arguments.data()};
};

DrawingApplication::DrawingApplication()
{
    if (QCoreApplication::instance() != nullptr) return;
    // Without this a machine without a display ends the process, whatever is to be drawn (Qt's xcb plugin aborts).
    qputenv("QT_QPA_PLATFORM", "offscreen");
    m_own = std::make_unique<Own>();
}

DrawingApplication::~DrawingApplication() = default;

} // namespace proofwalk::report
