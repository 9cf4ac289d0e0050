// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/application.h"

#include <QApplication>

#include <array>
#include <string>

namespace proofwalk::report {
namespace {

QtMessageHandler usualHandler = nullptr;

/// Without a session Qt complains of its runtime folder, which nothing here uses. All else it says is said.
void allButRuntimeFolder(QtMsgType type, const QMessageLogContext& context, const QString& message)
{
    if (!message.startsWith("QStandardPaths: ")) usualHandler(type, context, message);
}

} // namespace

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
    usualHandler = qInstallMessageHandler(allButRuntimeFolder);
    m_own = std::make_unique<Own>();
}

DrawingApplication::~DrawingApplication()
{
    if (m_own != nullptr) qInstallMessageHandler(usualHandler);
}

} // namespace proofwalk::report
