// SPDX-License-Identifier: GPL-3.0-or-later
// The sheets, judged from outside by poppler's pdftotext, pdffonts, pdfimages and pdfinfo.
// With PROOFWALK_SHOW=FOLDER the three reports are kept there, to be looked at.
#include "core/report/pages.h"
#include "invented.h"

#include <QApplication>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

using namespace proofwalk;
using namespace proofwalk::report;

namespace {

QString run(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished(60000) || process.exitCode() != 0) {
        return {};
    }
    return QString::fromUtf8(process.readAllStandardOutput());
}

/// A word with its box, in grid units, as pdftotext sees it.
struct Word {
    int sheet;
    QRectF box;
    QString text;
};

} // namespace

class Pages : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;

    QString pathOf(const QString& name) const
    {
        const QString folder = qEnvironmentVariable("PROOFWALK_SHOW", m_folder.path());
        return folder + QLatin1Char('/') + name + QStringLiteral(".pdf");
    }
    static Contents contentsOf(const QString& name)
    {
        return name == QStringLiteral("mill") ? invented::lanternMill()
             : name == QStringLiteral("one")  ? invented::oneDevice()
             : name == QStringLiteral("long") ? invented::longWords()
                                              : Contents{};
    }
    std::vector<Word> wordsOf(const QString& name) const;
    int sheetsOf(const QString& name) const;

private slots:
    void initTestCase();
    void namesRows();
    void everySheetIsNumbered_data() { namesRows(); }
    void everySheetIsNumbered();
    void fontsAreEmbedded_data() { namesRows(); }
    void fontsAreEmbedded();
    void wordsStayInsideTheFrame_data() { namesRows(); }
    void wordsStayInsideTheFrame();
    void wordsDoNotOverlap_data() { namesRows(); }
    void wordsDoNotOverlap();
    void aDeviceIsOneLine_data();
    void aDeviceIsOneLine();
    void ligaturesAreSearchable();
    void everyWordOfPageOneIsThere();
    void everyFindingIsThere();
    void everyReadingOfAChartIsInItsTable();
    void photographsAreInside();
    void practiceStandsOnEverySheet();
    void nothingIsTransparent();
    void sameContentsSamePages();
    void aCodeTooLongIsAnError();
    void aSheetThatIsNotThereIsAnError();
};

void Pages::namesRows()
{
    QTest::addColumn<QString>("name");
    for (const char* name : {"mill", "one", "long", "empty"}) {
        QTest::newRow(name) << QString::fromLatin1(name);
    }
}

void Pages::initTestCase()
{
    for (const char* name : {"mill", "one", "long", "empty"}) {
        const auto drawn = drawPages(contentsOf(QString::fromLatin1(name)));
        QVERIFY2(drawn, drawn ? "" : drawn.error().code.c_str());
        QFile file(pathOf(QString::fromLatin1(name)));
        QVERIFY(file.open(QIODevice::WriteOnly));
        QCOMPARE(file.write(drawn->data(), static_cast<qint64>(drawn->size())), static_cast<qint64>(drawn->size()));
    }
}

std::vector<Word> Pages::wordsOf(const QString& name) const
{
    std::vector<Word> words;
    int sheet = 0;
    static const QRegularExpression pattern(QStringLiteral(
        "<word xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" yMax=\"([-0-9.]+)\">(.*)</word>"));
    constexpr double unitsPerPoint = 110.0 / 72;
    for (const QString& line : run("pdftotext", {"-bbox", pathOf(name), "-"}).split(QLatin1Char('\n'))) {
        sheet += line.contains(QStringLiteral("<page ")) ? 1 : 0;
        if (const auto match = pattern.match(line); match.hasMatch()) {
            const QPointF from(match.captured(1).toDouble(), match.captured(2).toDouble());
            const QPointF to(match.captured(3).toDouble(), match.captured(4).toDouble());
            words.push_back({sheet, QRectF(from * unitsPerPoint, to * unitsPerPoint), match.captured(5)});
        }
    }
    return words;
}

int Pages::sheetsOf(const QString& name) const
{
    static const QRegularExpression pages(QStringLiteral("Pages:\\s+(\\d+)"));
    return pages.match(run("pdfinfo", {pathOf(name)})).captured(1).toInt();
}

void Pages::everySheetIsNumbered()
{
    QFETCH(QString, name);
    const int sheets = sheetsOf(name);
    QVERIFY(sheets >= 3);
    for (int sheet = 1; sheet <= sheets; ++sheet) {
        const QString number = QString::number(sheet);
        const QString text = run("pdftotext", {"-f", number, "-l", number, "-layout", pathOf(name), "-"});
        const QString wanted = QStringLiteral("sheet %1 of %2").arg(sheet).arg(sheets);
        QVERIFY2(text.contains(wanted), qPrintable(wanted));
    }
}

void Pages::fontsAreEmbedded()
{
    QFETCH(QString, name);
    const QStringList lines = run("pdffonts", {pathOf(name)}).split(QLatin1Char('\n'), Qt::SkipEmptyParts).mid(2);
    QVERIFY(lines.size() >= (name == "empty" ? 2 : 3)); // without tags and figures the third face is not needed
    for (const QString& line : lines) {
        // Columns: name, type, encoding, emb, sub, uni, object. Only the two typefaces, and never the Mono cut.
        QVERIFY2(line.contains(QStringLiteral("ClearSans")) || line.contains(QStringLiteral("B612-Bold")),
                 qPrintable(line));
        QVERIFY2(line.contains(QRegularExpression(QStringLiteral("\\s(yes)\\s+(yes|no)\\s+(yes)\\s+\\d+\\s+\\d+$"))),
                 qPrintable(line));
    }
}

void Pages::wordsStayInsideTheFrame()
{
    QFETCH(QString, name);
    const auto words = wordsOf(name);
    QVERIFY(!words.empty());
    const QRectF frame(QPointF(45, 45), QPointF(865, 1241));
    const QRectF practice(QPointF(45, 10), QPointF(865, 45));
    for (const Word& word : words) {
        const bool inside = frame.contains(word.box) || (name == "long" && practice.contains(word.box));
        QVERIFY2(inside, qPrintable(QStringLiteral("sheet %1: %2").arg(word.sheet).arg(word.text)));
    }
}

void Pages::wordsDoNotOverlap()
{
    QFETCH(QString, name);
    const auto words = wordsOf(name);
    // poppler's boxes reach from the typeface's highest to its lowest point; what the letters fill is their middle.
    const auto core = [](const Word& word) {
        const double quarter = word.box.height() * 0.27;
        return word.box.adjusted(0.6, quarter, -0.6, -quarter);
    };
    for (std::size_t i = 0; i < words.size(); ++i) {
        for (std::size_t j = i + 1; j < words.size() && words[j].sheet == words[i].sheet; ++j) {
            QVERIFY2(!core(words[i]).intersects(core(words[j])),
                     qPrintable(QStringLiteral("sheet %1: \"%2\" and \"%3\" at %4, %5")
                                    .arg(words[i].sheet)
                                    .arg(words[i].text, words[j].text)
                                    .arg(words[j].box.x())
                                    .arg(words[j].box.y())));
        }
    }
}

void Pages::aDeviceIsOneLine_data()
{
    QTest::addColumn<QString>("name");
    QTest::newRow("mill") << QStringLiteral("mill");
    QTest::newRow("one") << QStringLiteral("one");
    QTest::newRow("long") << QStringLiteral("long");
}

void Pages::aDeviceIsOneLine()
{
    QFETCH(QString, name);
    const QStringList lines = run("pdftotext", {"-layout", pathOf(name), "-"}).split(QLatin1Char('\n'));
    int devices = 0;
    for (const DeviceRoom& room : contentsOf(name).deviceRooms) {
        for (const Device& device : room.devices) {
            ++devices;
            const auto text = [](const std::string& part) { return QString::fromStdString(part); };
            const bool found = std::ranges::any_of(lines, [&](const QString& line) {
                return line.contains(text(device.tag)) && line.contains(text(device.result))
                    && line.contains(text(device.reading)) && line.contains(text(device.limit))
                    && line.trimmed().endsWith(text(device.time));
            });
            QVERIFY2(found, device.tag.c_str());
        }
    }
    QCOMPARE(devices, name == "one" ? 1 : 65);
}

void Pages::ligaturesAreSearchable()
{
    const QString text = run("pdftotext", {"-raw", pathOf("long"), "-"});
    for (const char* word :
         {"Verified", "office", "affluent", "fish", "flax", "efficient", "certificate", "fingerprint"}) {
        QVERIFY2(text.contains(QLatin1String(word))
                     || run("pdftotext", {"-raw", pathOf("mill"), "-"}).contains(QLatin1String(word)),
                 word);
    }
    for (char16_t ligature = 0xFB00; ligature <= 0xFB06; ++ligature) {
        QVERIFY(!text.contains(QChar(ligature)));
    }
}

/// The words of a text in their order, with line breaks and gaps made one blank.
static QString flat(const QString& text) { return text.simplified(); }

void Pages::everyWordOfPageOneIsThere()
{
    const QString text = flat(run("pdftotext", {"-l", "1", pathOf("mill"), "-"}));
    const Contents mill = invented::lanternMill();
    std::vector<std::string> wanted = {mill.site,
                                       mill.subtitle,
                                       mill.date,
                                       mill.headline,
                                       mill.testedAgainst,
                                       mill.notTestedNote,
                                       mill.liveWord,
                                       mill.titleBlock.tester,
                                       mill.titleBlock.key,
                                       mill.titleBlock.agreed,
                                       mill.titleBlock.customerName,
                                       mill.titleBlock.lastLine,
                                       mill.titleBlock.signedLine};
    for (const Duty& duty : mill.duties) {
        wanted.push_back(duty.words);
        wanted.push_back(duty.due);
    }
    for (const auto& list : {mill.doesNot, mill.notTested}) {
        for (const Shortcoming& one : list) {
            wanted.push_back(one.tag);
            wanted.push_back(one.words);
        }
    }
    for (const std::string& group : mill.titleBlock.fingerprint) {
        wanted.push_back(group);
    }
    // The words name the sheet of instruments and limits; poppler says on which page its head really is.
    int grounds = 0;
    for (int sheet = 1; sheet <= sheetsOf("mill"); ++sheet) {
        const QString page =
            run("pdftotext", {"-f", QString::number(sheet), "-l", QString::number(sheet), pathOf("mill"), "-"});
        grounds = page.startsWith(QString::fromStdString(mill.labels.grounds)) ? sheet : grounds;
    }
    QVERIFY(grounds > 1);
    for (const std::string& one : wanted) {
        const QString full =
            QString::fromStdString(one).replace(QStringLiteral("{sheet:grounds}"), QString::number(grounds));
        QVERIFY2(text.contains(flat(full)), one.c_str());
    }
}

void Pages::everyFindingIsThere()
{
    const QString text = flat(run("pdftotext", {pathOf("mill"), "-"}));
    const Contents mill = invented::lanternMill();
    for (const Finding& finding : mill.findings) {
        for (const HistoryLine& line : finding.history) {
            QVERIFY2(text.contains(QString::fromStdString(line.what)), line.what.c_str());
            QVERIFY2(text.contains(QString::fromStdString(line.detail)), line.detail.c_str());
        }
        for (const RetestLine& line : finding.retests) {
            QVERIFY2(text.contains(QString::fromStdString(line.words)), line.words.c_str());
        }
    }
    for (const ClearedFinding& one : mill.cleared) {
        QVERIFY2(text.contains(QString::fromStdString(one.what)), one.what.c_str());
        QVERIFY2(text.contains(QString::fromStdString(one.time)), one.time.c_str());
    }
    // A history longer than a sheet goes on: its last line must not be lost.
    QVERIFY(flat(run("pdftotext", {"-layout", pathOf("long"), "-"})).contains(QStringLiteral("15:59")));
}

void Pages::everyReadingOfAChartIsInItsTable()
{
    const QStringList lines = run("pdftotext", {"-layout", pathOf("mill"), "-"}).split(QLatin1Char('\n'));
    for (const RangeChart& chart : invented::lanternMill().charts) {
        for (const ChartPoint& point : chart.points) {
            // The line of figures stands beneath the line of labels, each figure under its own label.
            bool found = false;
            for (qsizetype i = 0; i + 1 < lines.size() && !found; ++i) {
                const QStringList labels = lines[i].split(QLatin1Char(' '), Qt::SkipEmptyParts);
                const auto at = labels.indexOf(QString::fromStdString(point.label));
                for (qsizetype below = i + 1; at >= 0 && below < std::min(i + 3, lines.size()); ++below) {
                    const QStringList figures = lines[below].split(QLatin1Char(' '), Qt::SkipEmptyParts);
                    found = found
                         || (figures.size() == labels.size() && figures[at] == QString::fromStdString(point.figure));
                }
            }
            QVERIFY2(found, (point.label + " " + point.figure).c_str());
        }
    }
}

void Pages::photographsAreInside()
{
    const QStringList images = run("pdfimages", {"-list", pathOf("mill")}).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    QCOMPARE(images.mid(2).size(), 2); // two photographs; charts, marks, icons and code are drawn, not painted
    for (const QString& line : images.mid(2)) {
        QVERIFY2(!line.contains(QStringLiteral("smask")), qPrintable(line));
    }
    // One that cannot be read says so in its place.
    QVERIFY(
        flat(run("pdftotext", {pathOf("long"), "-"})).contains(QStringLiteral("The photograph could not be read.")));
    QCOMPARE(run("pdfimages", {"-list", pathOf("one")}).split(QLatin1Char('\n'), Qt::SkipEmptyParts).size(), 2);
}

void Pages::practiceStandsOnEverySheet()
{
    std::vector<bool> seen(static_cast<std::size_t>(sheetsOf("long")) + 1, false);
    for (const Word& word : wordsOf("long")) {
        if (word.text == QStringLiteral("PRACTICE")) {
            seen[static_cast<std::size_t>(word.sheet)] = true;
        }
    }
    QCOMPARE(std::ranges::count(seen, true), static_cast<std::ptrdiff_t>(seen.size()) - 1);
    QVERIFY(!run("pdftotext", {pathOf("mill"), "-"}).contains(QStringLiteral("PRACTICE")));
}

void Pages::nothingIsTransparent()
{
    // PDF/A-1 (ISO 19005-1, 6.4) forbids it, and the writer would silently make it opaque. from memory
    QFile file(pathOf("mill"));
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QByteArray bytes = file.readAll();
    QVERIFY(bytes.startsWith("%PDF-1.4"));
    static const QRegularExpression mask(QStringLiteral("/SMask\\s*[^/\\s]"));
    QVERIFY(!mask.match(QString::fromLatin1(bytes)).hasMatch()); // "/SMask /None" is allowed
    for (const char* part : {"/ca 0", "/CA 0"}) {
        QVERIFY(!bytes.contains(part));
    }
}

void Pages::sameContentsSamePages()
{
    const auto again = drawPages(invented::lanternMill());
    QVERIFY(again);
    QFile file(m_folder.path() + QStringLiteral("/again.pdf"));
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(again->data(), static_cast<qint64>(again->size()));
    file.close();
    QCOMPARE(run("pdftotext", {"-bbox", file.fileName(), "-"}).section("<page", 1),
             run("pdftotext", {"-bbox", pathOf("mill"), "-"}).section("<page", 1));
}

void Pages::aCodeTooLongIsAnError()
{
    // ISO/IEC 18004: version 40 with correction M holds 2331 bytes. from memory
    Contents contents = invented::oneDevice();
    contents.titleBlock.code = std::string(2332, 'x');
    const auto drawn = drawPages(contents);
    QVERIFY(!drawn);
    QCOMPARE(drawn.error().code, std::string("report.code-too-long"));
    contents.titleBlock.code.pop_back();
    QVERIFY(drawPages(contents));
}

void Pages::aSheetThatIsNotThereIsAnError()
{
    Contents contents = invented::oneDevice();
    contents.testedAgainst = "Limits: sheet {sheet:grounds}.";
    const auto drawn = drawPages(contents);
    QVERIFY(!drawn);
    QCOMPARE(drawn.error().code, std::string("report.no-such-sheet"));
}

QTEST_MAIN(Pages)
#include "pages.moc"
