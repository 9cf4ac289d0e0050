// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/pages.h"

#include "core/report/sheets.h"

#include <QApplication>
#include <QBuffer>
#include <QPageLayout>
#include <QPdfWriter>

namespace proofwalk::report {

namespace {

constexpr int unitsPerInch = 110;

/// Lays out everything once onto fresh bytes.
Result<Layout> layOut(const Contents& contents, const Layout& earlier, QByteArray& bytes)
{
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setPageLayout(QPageLayout(QPageSize(QPageSize::A4), QPageLayout::Portrait, QMarginsF(0, 0, 0, 0)));
    writer.setResolution(static_cast<int>(unitsPerInch * typeFactor));
    writer.setTitle(words(contents.site) + QStringLiteral(", ") + words(contents.date));
    writer.setCreator(QStringLiteral("Proofwalk"));
    QPainter painter(&writer);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(typeFactor, typeFactor);
    Book book(writer, painter, contents, earlier);
    if (auto drawn = drawSummary(book); !drawn) {
        return passOn(drawn);
    }
    drawDevices(book);
    drawFindings(book);
    drawReadings(book);
    drawGrounds(book);
    drawChecking(book);
    painter.end();
    return book.layout();
}

} // namespace

Result<std::string> drawPages(const Contents& contents)
{
    if (qobject_cast<QApplication*>(QCoreApplication::instance()) == nullptr) {
        return failure("report.no-application", {});
    }
    if (auto fonts = checkFonts(); !fonts) {
        return passOn(fonts);
    }
    QByteArray bytes;
    const auto counted = layOut(contents, {}, bytes);
    if (!counted) {
        return std::unexpected(counted.error());
    }
    bytes.clear();
    const auto bound = layOut(contents, *counted, bytes);
    if (!bound) {
        return std::unexpected(bound.error());
    }
    return bytes.toStdString();
}

} // namespace proofwalk::report
