// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/pages.h"

#include "core/report/references.h"
#include "core/report/sheets.h"

#include <QApplication>
#include <QBuffer>
#include <QPageLayout>
#include <QPdfWriter>

namespace proofwalk::report {

namespace {

constexpr int unitsPerInch = 110;
constexpr int mostRounds = 5;

/// Lays out everything once onto fresh bytes.
Result<Layout> layOut(const Contents& written, const Layout& earlier, QByteArray& bytes)
{
    Contents contents = written;
    if (auto named = nameSheets(contents, earlier); !named) {
        return passOn(named);
    }
    bytes.clear();
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
    // Numbers of sheets stand in the words, and could in turn move a line to another sheet: until nothing moves.
    QByteArray bytes;
    Layout known;
    for (int round = 0; round < mostRounds; ++round) {
        const auto laidOut = layOut(contents, known, bytes);
        if (!laidOut) {
            return std::unexpected(laidOut.error());
        }
        if (*laidOut == known) {
            break;
        }
        known = *laidOut;
    }
    return bytes.toStdString();
}

} // namespace proofwalk::report
