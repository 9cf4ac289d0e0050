// SPDX-License-Identifier: GPL-3.0-or-later
// The devices, a row each, with proofs, reading and scale, in the order they were walked.
#include "core/report/icon.h"
#include "core/report/marks.h"
#include "core/report/proofwindow.h"
#include "core/report/scale.h"
#include "core/report/section.h"
#include "core/report/sheets.h"

#include <algorithm>
#include <functional>

namespace proofwalk::report {

namespace {

constexpr double walkedLine = 66;
constexpr double tagLeft = 86;
constexpr double rowHeight = 37.5;
constexpr double roomHeight = 30;
constexpr double timeRight = 858;
constexpr double proofPitch = 27;
constexpr double firstRow = 173; ///< under key and column heads

const Style cellStyle{Face::text, 13, ink};
const Style cellBold{Face::strong, 13, ink};

/// Where the columns stand. Tags and readings are never cut, so the columns beside them give way.
struct Columns {
    double icon = 140;
    double device = 164;
    double where = 276;
    double zone = 371; ///< its middle
    double result = 390;
    double proofs = 464; ///< the middle of the first window
    double reading = 644;
    double scale = 652;
    double scaleEnd = 742;
    double limit = 814;
    Style tagStyle{Face::figure, 15, ink};
    Style readingStyle{Face::figure, 15, ink};
};

double widest(const std::vector<DeviceRoom>& rooms, std::string Device::* text, const Style& style)
{
    double width = 0;
    for (const DeviceRoom& room : rooms) {
        for (const Device& device : room.devices) {
            width = std::max(width, widthOf(words(device.*text), style));
        }
    }
    return width;
}

Columns columnsOf(const std::vector<DeviceRoom>& rooms)
{
    Columns c;
    double tags = widest(rooms, &Device::tag, c.tagStyle);
    if (tags > c.icon - tagLeft - 5) {
        c.tagStyle.size = 13;
        tags = widest(rooms, &Device::tag, c.tagStyle);
    }
    c.icon = std::clamp(tagLeft + tags + 7, c.icon, 206.0);
    c.device = c.icon + 24;
    c.where = c.device + 0.56 * (361 - c.device);
    const double room = c.reading - (c.proofs + 3 * proofPitch + 18);
    double readings = widest(rooms, &Device::reading, c.readingStyle);
    if (readings > room + 12) {
        c.readingStyle.size = 13;
        readings = widest(rooms, &Device::reading, c.readingStyle);
    }
    const double wider = std::clamp(readings + 1 - room, 0.0, 40.0);
    c.reading += wider;
    c.scale += wider;
    return c;
}

/// What stands on a sheet: a room's band, or a device.
struct Item {
    const DeviceRoom* room = nullptr;
    const Device* device = nullptr; ///< nullptr: the room's band
    bool floorBegins = false;
    bool continued = false;
    int number = 0; ///< of the device, from 1

    double height() const { return device == nullptr ? roomHeight : rowHeight; }
};

using SheetItems = std::vector<Item>;

/// Bands and rows dealt out to sheets. A band never stands last; a room that goes on has its band again.
std::vector<SheetItems> dealtOut(const std::vector<DeviceRoom>& rooms)
{
    std::vector<SheetItems> sheets(1);
    double y = firstRow;
    int number = 0;
    const std::string* floor = nullptr;
    for (const DeviceRoom& room : rooms) {
        bool band = false;
        for (const Device& device : room.devices) {
            const double height = rowHeight + (band ? 0 : roomHeight);
            if (y + height > flowBottom && !sheets.back().empty()) {
                sheets.emplace_back();
                y = firstRow;
                if (band) {
                    sheets.back().push_back({&room, nullptr, false, true, 0});
                    y += roomHeight;
                }
            }
            if (!band) {
                const bool begins = floor == nullptr || *floor != room.floor;
                sheets.back().push_back({&room, nullptr, begins, false, 0});
                y += roomHeight;
                floor = &room.floor;
                band = true;
            }
            sheets.back().push_back({&room, &device, false, false, ++number});
            y += rowHeight;
        }
    }
    return sheets;
}

/// Words in a cell: one line on the row's baseline, or two around it.
void drawCell(Drawing& drawing, double x, double middle, double width, const std::string& text, const Style& style,
              bool right = false)
{
    const QStringList lines = wrapped(words(text), style, width, 2);
    double y = middle + 5 - (lines.size() > 1 ? 8 : 0);
    for (const QString& line : lines) {
        right ? drawing.textRight(x, y, line, style) : drawing.text(x, y, line, style);
        y += 16;
    }
}

void drawBand(Book& book, const Item& item, double top)
{
    Drawing& drawing = book.drawing();
    drawing.fill(QRectF(frameLeft + 1, top, frameRight - frameLeft - 2, roomHeight), film);
    const Style name{Face::strong, 15, ink};
    const Style beside{Face::text, 13, ink2};
    const QString floor = words(item.room->floor);
    drawing.textRight(timeRight, top + 20, elided(floor, beside, 200), beside);
    const double room = timeRight - 216 - tagLeft;
    const QString fitted = elided(words(item.room->room), name, room - (item.continued ? 80 : 0));
    drawing.text(tagLeft, top + 20, fitted, name);
    if (item.continued) {
        drawing.text(tagLeft + widthOf(fitted, name) + 10, top + 20, words(book.labels().continued), beside);
    }
    if (item.floorBegins) {
        drawing.rule(top, frameLeft, frameRight, ink, 2);
    }
}

void drawRow(Book& book, const Columns& c, const Device& device, double top)
{
    Drawing& drawing = book.drawing();
    const double middle = top + rowHeight / 2 - 0.5;
    if (device.verdict != Verdict::pass && tintOf(device.verdict) != paper) {
        drawing.fill(QRectF(frameLeft + 1, top, frameRight - frameLeft - 2, rowHeight), tintOf(device.verdict));
    }
    drawing.rule(top + rowHeight, tagLeft, frameRight - 1, hair);
    drawing.line(walkedLine, top, walkedLine, top + rowHeight, ink, 3);
    if (device.verdict == Verdict::notApplicable) {
        drawing.fill(QRectF(walkedLine - 9, middle - 6, 18, 12), paper);
    }
    drawVerdict(drawing, QPointF(walkedLine, middle), 9, device.verdict);
    drawCell(drawing, tagLeft, middle, c.icon - tagLeft - 4, device.tag, c.tagStyle);
    drawIcon(drawing, QPointF(c.icon, middle - 10), 20, device.icon);
    drawCell(drawing, c.device, middle, c.where - c.device - 6, device.device, cellStyle);
    drawCell(drawing, c.where, middle, 355 - c.where, device.where, cellStyle);
    const QString zone = elided(words(device.zone), cellStyle, 30);
    drawing.textCentre(c.zone, middle + 5, zone, cellStyle);
    const bool plain = device.verdict == Verdict::pass || device.verdict == Verdict::notApplicable;
    drawCell(drawing, c.result, middle, c.proofs - c.result - 12, device.result, plain ? cellStyle : cellBold);
    for (std::size_t i = 0; i < device.proofs.size(); ++i) {
        drawProof(drawing, QPointF(c.proofs + proofPitch * static_cast<double>(i), middle), device.proofs[i],
                  words(book.labels().proofLetters[i]));
    }
    const double room = c.reading - (c.proofs + 3 * proofPitch + 18);
    drawCell(drawing, c.reading, middle, room, device.reading, c.readingStyle, true);
    if (device.trials) {
        drawTrials(drawing, QRectF(c.scale, middle - 9, c.scaleEnd - c.scale, 18), *device.trials);
    } else if (device.scale) {
        drawScale(drawing, QRectF(c.scale, middle - 9, c.scaleEnd - c.scale, 18), *device.scale);
    }
    drawCell(drawing, c.limit, middle, c.limit - c.scaleEnd - 5, device.limit, cellStyle, true);
    drawing.textRight(timeRight, middle + 5, elided(words(device.time), cellStyle, timeRight - c.limit - 6), cellStyle);
}

/// Which signs beside the four windows the report uses.
struct UsedSigns {
    bool byItsLike = false, byTheEar = false, byPartner = false, failed = false, notPromised = false;
};

UsedSigns signsIn(const std::vector<DeviceRoom>& rooms)
{
    UsedSigns used;
    for (const DeviceRoom& room : rooms) {
        for (const Device& device : room.devices) {
            for (const Proof& proof : device.proofs) {
                const bool promised = proof.state != ProofState::notPromised;
                used.notPromised = used.notPromised || !promised;
                used.failed = used.failed || proof.state == ProofState::failed;
                used.byTheEar = used.byTheEar || (promised && proof.seen == ProofSeen::byTheEar);
                used.byPartner = used.byPartner || (promised && proof.seen == ProofSeen::byPartner);
                used.byItsLike = used.byItsLike
                              || (promised && (proof.seen == ProofSeen::inBulk || proof.seen == ProofSeen::byItsLike));
            }
        }
    }
    return used;
}

/// The key of the proofs, on every sheet that uses it: glyph, letter, word.
void drawKey(Book& book)
{
    Drawing& drawing = book.drawing();
    const Labels& labels = book.labels();
    double x = textLeft;
    constexpr double y = 128;
    for (std::size_t i = 0; i < labels.proofWords.size(); ++i) {
        const QString letter = words(labels.proofLetters[i]);
        const QString word = words(labels.proofWords[i]);
        drawProofKey(drawing, QPointF(x + 10, y), i);
        drawing.text(x + 24, y + 5, letter, {Face::figure, 13, ink});
        x += 24 + widthOf(letter, {Face::figure, 13, ink}) + 4;
        drawing.text(x, y + 5, word, cellStyle);
        x += widthOf(word, cellStyle) + 11;
    }
    // What follows stands there only if the report uses it; what has no room left is the dash, which speaks for itself.
    const auto add = [&](bool used, const std::string& label, double mark, const std::function<void(double)>& draw) {
        const QString word = words(label);
        if (!used || x + mark + widthOf(word, cellStyle) > textRight) {
            return;
        }
        draw(x);
        drawing.text(x + mark, y + 5, word, cellStyle);
        x += mark + widthOf(word, cellStyle) + 12;
    };
    const UsedSigns used = signsIn(book.contents().deviceRooms);
    add(used.byItsLike, labels.byItsLike, 32, [&](double at) { drawProofKey(drawing, QPointF(at + 14, y), 0, true); });
    add(used.byTheEar, labels.byTheEar, 12, [&](double at) { drawEar(drawing, QPointF(at, y - 7), 13); });
    add(used.byPartner, labels.byPartner, 14, [&](double at) { drawPartner(drawing, QPointF(at, y - 6), 12); });
    add(used.failed, labels.failed, 27,
        [&](double at) { drawProof(drawing, QPointF(at + 12, y), {ProofState::failed, ProofSeen::singly}, {}); });
    add(used.notPromised, labels.notPromised, 17, [&](double at) { drawing.line(at, y, at + 12, y, ink2, 1.8); });
}

void drawColumnHeads(Book& book, const Columns& c)
{
    Drawing& drawing = book.drawing();
    const Labels& labels = book.labels();
    drawing.rule(147, frameLeft, frameRight, ink, 2);
    constexpr double y = 165;
    drawing.text(tagLeft, y, words(labels.tag), cellBold);
    drawing.text(c.icon, y, words(labels.device), cellBold);
    drawing.text(c.where, y, words(labels.where), cellBold);
    drawing.textRight(c.result - 7, y, words(labels.zone), cellBold);
    drawing.text(c.result, y, words(labels.result), cellBold);
    drawing.text(c.proofs - 8.5, y, words(labels.proofs), cellBold);
    drawing.textRight(c.reading, y, words(labels.reading), cellBold);
    drawing.text(c.scale, y, words(labels.scale), cellBold);
    drawing.textRight(c.limit, y, words(labels.limit), cellBold);
    drawing.textRight(timeRight, y, words(labels.time), cellBold);
    drawing.rule(firstRow - 0.5, frameLeft, frameRight);
}

QString spanOf(const Book& book, const SheetItems& items, int all)
{
    QStringList floors;
    int first = 0;
    int last = 0;
    for (const Item& item : items) {
        if (const QString floor = words(item.room->floor); !floors.contains(floor)) {
            floors << floor;
        }
        if (item.device != nullptr) {
            first = first == 0 ? item.number : first;
            last = item.number;
        }
    }
    return fill(book.labels().devicesSpan, {{"floors", floors.join(QStringLiteral(", ")).toStdString()},
                                            {"first", std::to_string(first)},
                                            {"last", std::to_string(last)},
                                            {"all", std::to_string(all)}});
}

void drawDeviceHead(Book& book, const Columns& columns, const SheetItems& items, int all)
{
    Drawing& drawing = book.drawing();
    const Contents& contents = book.contents();
    const double right = contents.floors.empty() ? textRight : 706;
    const Style second{Face::text, 15, ink2};
    drawing.text(textLeft, 84, elided(words(book.labels().devices), {Face::strong, 24, ink}, right - textLeft),
                 {Face::strong, 24, ink});
    QString line = spanOf(book, items, all);
    if (!contents.devicesNote.empty()) {
        line += QLatin1Char(' ') + words(contents.devicesNote);
    }
    drawing.text(textLeft, 109, elided(line, second, right - textLeft), second);
    if (!contents.floors.empty()) {
        std::set<RoomName> shown;
        for (const Item& item : items) {
            shown.insert({item.room->floor, item.room->room});
        }
        drawKeySection(drawing, QRectF(718, 53, 132, 62), contents.floors, shown, 5);
    }
    drawKey(book);
    drawColumnHeads(book, columns);
}

} // namespace

void drawDevices(Book& book)
{
    const std::vector<DeviceRoom>& rooms = book.contents().deviceRooms;
    int all = 0;
    for (const DeviceRoom& room : rooms) {
        all += static_cast<int>(room.devices.size());
    }
    if (all == 0) {
        const Flow flow(book, [&book](bool continued) {
            return drawHead(book, words(book.labels().devices), words(book.labels().noDevices), continued);
        });
        return;
    }
    const Columns columns = columnsOf(rooms);
    for (const SheetItems& items : dealtOut(rooms)) {
        book.next();
        book.begins("devices");
        drawDeviceHead(book, columns, items, all);
        double y = firstRow;
        for (const Item& item : items) {
            if (item.device == nullptr) {
                drawBand(book, item, y);
            } else {
                drawRow(book, columns, *item.device, y);
            }
            y += item.height();
        }
    }
}

} // namespace proofwalk::report
