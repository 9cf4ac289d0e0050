// SPDX-License-Identifier: GPL-3.0-or-later
// A small report for the tests of the seal: two drawn sheets, three attachments, one invented signer.
#pragma once

#include "core/base/file.h"
#include "core/journal/identity.h"
#include "core/report/pdfa.h"
#include "core/report/sign.h"

#include <QBuffer>
#include <QGuiApplication>
#include <QImage>
#include <QPainter>
#include <QPdfWriter>
#include <QProcess>
#include <QTemporaryDir>

#include <string>
#include <vector>

namespace sample {

using namespace proofwalk;

inline const std::string passphrase = "four words and then some";
inline const base::WallClock drawnAt{1795597320000, 60}; // 2026-11-25T10:02:00+01:00
inline const report::SignaturePlace place{1, 60, 600, 200, 60};

/// Two sheets as QPdfWriter draws them in its A1b mode.
inline std::string drawn(const QString& title = {},
                         QPagedPaintDevice::PdfVersion version = QPagedPaintDevice::PdfVersion_A1b)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setPdfVersion(version);
    writer.setTitle(title);
    writer.setResolution(300);
    QPainter painter(&writer);
    QFont font("Clear Sans", 12);
    font.setLetterSpacing(QFont::PercentageSpacing, 100.5);
    painter.setFont(font);
    painter.drawText(200, 300, QString::fromUtf8("Zone 7 verified: 3.40 kΩ, Küche, grzejnik, “office”"));
    QImage picture(40, 30, QImage::Format_RGB32);
    picture.fill(QColor(40, 90, 160));
    painter.drawImage(QRect(200, 500, 400, 300), picture);
    writer.newPage();
    painter.setFont(QFont("B612", 12, QFont::Bold));
    painter.drawText(200, 300, "Signed below");
    painter.end();
    return buffer.data().toStdString();
}

inline report::DocumentFacts facts()
{
    return {"Lantern Mill: walk test & handover <Küche>", "Proofwalk 0.1.0", "Proofwalk with Qt and qpdf", "en-GB",
            drawnAt};
}

inline std::vector<report::Attachment> attachments()
{
    std::string octets;
    for (int i = 0; i < 1000; ++i) octets += static_cast<char>(i * 7 % 256);
    return {{"record.jsonl", "application/jsonl", "{\"format\":1}\n{\"n\":1}\n", "The record of the walk"},
            {"results.csv", "text/csv", "tag,verdict\r\nD1,pass\r\n", "Devices (a table)"},
            {"0a1b.jpg", "image/jpeg", octets, ""}};
}

inline Result<std::string> built() { return report::buildPdfA(drawn(), facts(), attachments(), place); }

/// One identity for a whole test program; making it takes most of a second.
inline const journal::Identity& identity()
{
    static const QTemporaryDir folder;
    static const auto opened = [] {
        const std::filesystem::path at = folder.filePath("signer").toStdString();
        (void)journal::createIdentity(at, {"Zoë Ångström", "Kłos & Söhne (Alarms)"}, passphrase);
        return journal::openIdentity(at, passphrase);
    }();
    return opened.value();
}

inline report::Signing signing() { return {base::now(), "Walked and found as written (interim)"}; }

/// A program's words, both streams, and its exit status.
struct Said {
    QString words;
    int status = -1;
};

inline Said run(const QString& program, const QStringList& words, const QString& folder = {})
{
    QProcess process;
    process.setProcessChannelMode(QProcess::MergedChannels);
    if (!folder.isEmpty()) process.setWorkingDirectory(folder);
    process.start(program, words);
    if (!process.waitForFinished(60000)) return {"did not finish: " + program, -1};
    return {QString::fromUtf8(process.readAll()), process.exitCode()};
}

/// The code and the place of an error, to be compared and printed.
template <class T>
std::string codeOf(const Result<T>& result)
{
    return result ? "no error" : result.error().code;
}

/// The code with its arguments, for a failing test to print.
inline std::string toText(const Error& error)
{
    std::string text = error.where + " " + error.code;
    for (const Argument& argument : error.arguments) {
        text += " " + argument.name + "=";
        if (const auto* words = std::get_if<std::string>(&argument.value)) text += *words;
        else text += std::to_string(std::get<std::int64_t>(argument.value));
    }
    return text;
}

} // namespace sample
