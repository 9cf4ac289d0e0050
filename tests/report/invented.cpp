// SPDX-License-Identifier: GPL-3.0-or-later
#include "invented.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace proofwalk::report::invented {

namespace {

using enum Verdict;

/// A kind of device as this house has it: words, icon, what is promised, what is read.
struct Kind {
    std::string icon, words;
    std::string promised; ///< "IRS": which windows; a dot: by the ear; a plus: by its like
    double lower, upper, value, uncertainty; ///< NaN: no limit on that side
    std::string unit;
};

const double none = std::nan("");

const std::vector<Kind>& kinds()
{
    static const std::vector<Kind> list = {
        {"contact-surface", "Door contact", "I.RS", none, 12, 4, 1, "mm"},
        {"motion-infrared", "Motion detector", "I.R+", none, none, 5, 0, "of 5"},
        {"smoke-four-wire", "Smoke detector", "IROS", none, 10, 6, 0, "s"},
        {"holdup-button", "Hold-up button", "IRS", none, 5, 2, 0, "s"},
        {"sounder-inside", "Sounder", "O", 85, none, 96, 2, "dB(A)"},
        {"heat-fixed", "Heat detector", "IROS", none, 10, 7, 0, "s"},
        {"flood", "Water sensor", "IS+", 10, none, 13.1, 1.0, "dB"},
        {"thermometer-probe", "Temperature", "IR+", 23, 26, 24.3, 0.5, "°C"},
    };
    return list;
}

std::array<Proof, 4> proofsOf(const Kind& kind)
{
    std::array<Proof, 4> proofs;
    const std::string letters = "IROS";
    Proof* last = nullptr;
    for (const char sign : kind.promised) {
        if (const auto at = letters.find(sign); at != std::string::npos) {
            last = &proofs.at(at);
            last->state = ProofState::lit;
        } else if (last != nullptr) {
            last->seen = sign == '.' ? ProofSeen::byTheEar : ProofSeen::byItsLike;
        }
    }
    return proofs;
}

std::string number(double value, double uncertainty)
{
    return uncertainty != std::floor(uncertainty) ? fmt::format("{:.1f}", value) : fmt::format("{:.0f}", value);
}

Device deviceOf(const std::string& tag, std::size_t kindIndex, const std::string& where, int zone, int minute)
{
    const Kind& kind = kinds()[kindIndex % kinds().size()];
    Device device;
    device.verdict = pass;
    device.tag = tag;
    device.icon = kind.icon;
    device.device = kind.words;
    device.where = where;
    device.zone = fmt::format("{:02}", zone);
    device.result = "pass";
    device.proofs = proofsOf(kind);
    device.time = fmt::format("{:02}:{:02}", 8 + minute / 60, minute % 60);
    if (kind.unit == "of 5") {
        device.reading = "5 of 5";
        device.limit = "5 of 5";
        device.trials = Trials{5, 5};
        return device;
    }
    Scale scale{{}, {}, kind.value, kind.uncertainty, pass};
    if (!std::isnan(kind.lower)) {
        scale.lower = kind.lower;
        device.limit = fmt::format("≥ {} {}", kind.lower, kind.unit);
    }
    if (!std::isnan(kind.upper)) {
        device.limit = scale.lower ? fmt::format("{} to {} {}", kind.lower, kind.upper, kind.unit)
                                   : fmt::format("≤ {} {}", kind.upper, kind.unit);
        scale.upper = kind.upper;
    }
    device.reading = kind.uncertainty > 0 ? fmt::format("{} ± {} {}", number(kind.value, kind.uncertainty),
                                                        number(kind.uncertainty, kind.uncertainty), kind.unit)
                                          : fmt::format("{} {}", kind.value, kind.unit);
    device.scale = scale;
    return device;
}

Device& find(Contents& contents, const std::string& tag)
{
    for (DeviceRoom& room : contents.deviceRooms) {
        for (Device& device : room.devices) {
            if (device.tag == tag) {
                return device;
            }
        }
    }
    qFatal("no such tag");
}

/// The house: floor, level, and for each room its name, its devices and where they stand.
struct Plan {
    std::string floor, letters;
    int level;
    bool outside;
    std::vector<std::pair<std::string, std::vector<std::string>>> rooms;
};

const std::vector<Plan>& plans()
{
    static const std::vector<Plan> list = {
        {"Ground floor",
         "GR",
         0,
         false,
         {{"Entrance hall", {"Front door", "Hall", "Stair", "Under the stair"}},
          {"Office", {"Office window", "Office", "Under desk", "Safe"}},
          {"Shop", {"Shop window", "Shop", "Side door", "Over the till", "Ceiling"}},
          {"Packing", {"Packing", "Ceiling", "Bench"}},
          {"Loading", {"Loading door", "Loading", "By the ramp"}},
          {"Make room", {"By the vat", "Ceiling", "North window", "Vat"}}}},
        {"Cellar",
         "CE",
         -1,
         false,
         {{"Ageing room", {"Door", "North bay", "South bay", "Ceiling", "Rack 1", "Rack 4", "Floor drain", "Shelf"}},
          {"Pump room", {"Pump", "Sump", "Ceiling", "Door", "Frost corner", "Pipe"}},
          {"Brine", {"Tank", "Floor", "Ceiling", "Door", "Bath", "Hatch", "Outlet"}}}},
        {"Flat",
         "FL",
         1,
         false,
         {{"Living room", {"Balcony door", "Living room", "Ceiling", "Window"}},
          {"Box room", {"Loft hatch", "Ceiling"}},
          {"Bedroom", {"Bed head", "Bedroom window", "Landing", "Ceiling"}},
          {"Kitchen", {"Over the stove", "Kitchen window"}}}},
        {"Yard",
         "YD",
         0,
         true,
         {{"Cold store", {"Gate", "Cold store door", "Evaporator", "Wall", "Ramp", "Post"}},
          {"Wood shed", {"Shed door", "Roof", "Bench"}}}},
    };
    return list;
}

void fillHouse(Contents& contents)
{
    int zone = 0;
    int minute = 0;
    std::size_t kind = 0;
    for (const Plan& plan : plans()) {
        Floor floor{plan.floor, plan.level, plan.outside, {}, {}};
        int number = 0;
        for (const auto& [name, places] : plan.rooms) {
            DeviceRoom room{plan.floor, name, {}};
            for (const std::string& where : places) {
                room.devices.push_back(
                    deviceOf(fmt::format("{}-{:02}", plan.letters, ++number), kind++, where, ++zone, minute += 5));
            }
            floor.rooms.push_back({name, pass, "pass", {}});
            contents.deviceRooms.push_back(std::move(room));
        }
        floor.count = fmt::format("{}", number);
        contents.floors.push_back(std::move(floor));
    }
}

void spoil(Contents& contents, const std::string& tag, Verdict verdict, const std::string& word)
{
    Device& device = find(contents, tag);
    device.verdict = verdict;
    device.result = word;
    for (const DeviceRoom& room : contents.deviceRooms) {
        if (std::ranges::none_of(room.devices, [&](const Device& one) { return one.tag == tag; })) {
            continue;
        }
        for (Floor& floor : contents.floors) {
            for (Room& in : floor.rooms) {
                if (floor.name == room.floor && in.name == room.room) {
                    in.word = in.verdict == pass ? word : in.word + ", " + word;
                    in.verdict = in.verdict == pass || verdict == fail ? verdict : in.verdict;
                    in.notable.push_back({verdict, tag});
                }
            }
        }
    }
}

void radioReading(Device& device, const std::string& reading, double value, Verdict verdict)
{
    device.icon = "contact-radio";
    device.device = "Contact, radio";
    device.reading = reading;
    device.limit = "≥ 10 dB";
    device.scale = Scale{10, {}, value, 1.0, verdict};
    device.proofs = {Proof{ProofState::lit, ProofSeen::byTheEar}, Proof{ProofState::lit, ProofSeen::byItsLike}};
}

Photograph photograph(const std::string& caption, int which)
{
    QImage image(640, 430, QImage::Format_RGB32);
    image.fill(QColor(0x99, 0xA4, 0xA6));
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(0, 290, 640, 140, QColor(0x6C, 0x78, 0x7C));
    if (which == 0) {
        painter.fillRect(230, 180, 190, 110, QColor(0xE2, 0xE5, 0xE4));
        painter.setPen(QPen(QColor(0x12, 0x20, 0x2A), 8));
        painter.drawLine(420, 220, 570, 70);
    } else {
        painter.fillRect(0, 0, 240, 430, QColor(0x7F, 0x8B, 0x8E));
        painter.fillRect(260, 60, 95, 300, QColor(0xE2, 0xE5, 0xE4));
        painter.setPen(QPen(QColor(0x12, 0x20, 0x2A), 6));
        painter.drawEllipse(QPoint(305, 140), 80, 80);
    }
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, which == 0 ? "JPEG" : "PNG", 88);
    return {bytes.toStdString(), caption};
}

Sketch sketch(int here)
{
    const auto box = [](double x, double y, double w, double h) {
        return SketchRoom{{{x, y}, {x + w, y}, {x + w, y + h}, {x, y + h}}, false};
    };
    Sketch plan{{box(0, 0, 30, 38), box(30, 0, 140, 18), box(0, 38, 30, 66), box(30, 18, 70, 54), box(100, 18, 37, 54),
                 box(137, 18, 33, 54), box(30, 72, 70, 32), box(100, 72, 70, 32)},
                {}};
    plan.rooms[static_cast<std::size_t>(here)].here = true;
    return plan;
}

Ink signature()
{
    Ink drawn{220, 90, {{}}};
    for (int i = 0; i <= 120; ++i) {
        const double t = i / 120.0;
        const double x = 10 + 195 * t + 16 * std::sin(t * 20);
        const double y = 58 - 8 * t + (34 - 24 * t) * std::sin(t * 26 + 0.6) * (1 - 0.3 * t);
        drawn.strokes[0].push_back({x, y});
    }
    drawn.strokes.push_back({{14, 82}, {120, 76}, {212, 60}});
    return drawn;
}

TitleBlock titleBlock()
{
    TitleBlock block;
    block.tester = "Commissioning engineer";
    block.testedWhen = "25 November 2026, 07:40 to 15:18";
    block.testerNote = "also fitted this system. Sound meter, probe and radio meter in date, sheet {sheet:grounds}.";
    block.customerLine = "customer, signed 15:18:22";
    block.customerName = "Owner";
    block.ink = signature();
    block.key = "5f2a 91c4 e03b";
    block.signedLine = "signed 15:18:40";
    block.sealsLine = "seals 65 devices, 412 answers, 9 corrections and every sheet of this report";
    block.agreed = "I was shown how to set and unset the system and what it does in an alarm. I know that GR-17 and "
                   "FL-07 are not yet put right, GR-22 is too close and FL-05 was not tested.";
    block.fingerprint = {"c41e", "07b9", "5d30", "a2f8", "66e1", "9b04", "13cd", "7f52"};
    block.code = "proofwalk:1:c41e07b95d30a2f866e19b0413cd7f52:2026-11-25T15:18:40Z";
    block.codeNote = "Scan it, or type the eight groups, to check that not a letter has been changed.";
    block.lastLine =
        "Before this code is handed over, the key’s holder could rebuild the record; after, a change shows.";
    return block;
}

void fillPageOne(Contents& contents)
{
    contents.headline = "Sixty-one of the 65 devices did what the plan promises. Two did not, one is too close to its "
                        "limit to tell, and one could not be reached.";
    contents.testedAgainst =
        "Tested against this plan and these limits (sheet {sheet:grounds}). This sheet claims no standard and no "
        "grade.";
    contents.counts = {{pass, 61, "pass"},
                       {fail, 2, "fail"},
                       {tooClose, 1, "too close"},
                       {noAccess, 1, "no access"},
                       {toDo, 0, "to do"}};
    contents.works = {
        "All nine fire heads: alarm, sounders, received at the station. The three hold-up buttons: silent, "
        "received. The intruder system sets, alarms and unsets in each of its four ways."};
    contents.doesNot = {{fail, "GR-17", "Loading door contact may go unheard: radio margin 6.5 ± 1.0 dB, needs 10"},
                        {fail, "FL-07", "Bedroom sounder too quiet: 58 ± 2 dB at the bed head, needs 75"},
                        {tooClose, "GR-22", "Make room window, too close: radio margin 10.4 ± 1.0 dB, needs 10"}};
    contents.notTested = {{noAccess, "FL-05", "Loft hatch contact, box room: the hatch is painted shut"}};
    contents.notTestedNote = "Received was tried once for each kind of signal and path; which devices it stands for: "
                             "sheet {sheet:grounds}.";
    contents.duties = {{"Leave the bedroom door open at night: shut, you may not hear the alarm.", "until put right"},
                       {"Bolt the loading door by hand in the evening.", "until put right"},
                       {"Let us in to put GR-17 and FL-07 right, loft hatch cut free of its paint.", "due 2 Dec"},
                       {"Try one door each month, system set; if the panel does not name it, call.", "from now on"}};
    contents.liveWord = "yes";
    contents.liveLines = {"Since 15:05: station account 7301 off test, read back by the operator. Nothing isolated, "
                          "nothing muffled, nothing left open: 9 things to put back, 9 put back."};
    contents.contacts = {{"A fault, day or night", "installer, number on the panel door"},
                         {"A false alarm", "station, with your password"},
                         {"Fire, gas, break-in", "the emergency number, first"}};
    contents.titleBlock = titleBlock();
}

void fillFindings(Contents& contents)
{
    contents.findingsLine =
        "8 found: 2 not yet put right, 6 cleared. Nothing is taken out; what was withdrawn is shown "
        "as withdrawn.";
    Finding leak{pass,
                 "CE-14",
                 "pass",
                 "Leak sensor heard too weakly: margin 7.9 ± 1.0 dB, needs 10",
                 "cleared 14:52",
                 "Cellar",
                 "Pump room",
                 sketch(5),
                 {{"10:02", fail, "found in the radio round", "read off one screen, receiver on the stair"},
                  {"13:37", {}, "put right", "moved 1 m, away from the copper pipe"},
                  {"13:38", retest, "to retest, because it was moved", "input, received, radio margin"},
                  {"14:52", pass, "retested, pass", "wet 4 s, zone 22 heard, margin 12.6 ± 1.0 dB"}},
                 "Retested because of it",
                 {{pass, "CE-14", "input, moved"},
                  {pass, "CE-14", "received, radio path"},
                  {pass, "CE-13", "radio margin, shares the pipe"}},
                 photograph("13:37, moved off the pipe. Photograph 31 of 38", 0)};
    Finding loading{fail,
                    "GR-17",
                    "fail",
                    "Loading door may go unheard: margin 6.5 ± 1.0 dB, needs 10",
                    "due 2 Dec",
                    "Ground floor",
                    "Loading",
                    sketch(7),
                    {{"11:40", fail, "found at its card, input", "3 trips, 1 not heard by the panel"},
                     {"11:52", {}, "tried: turned, new cell", "margin 6.9, still short: stays a finding"},
                     {"15:16", {}, "customer told, bolts the door by hand", "interim measure, until put right"}},
                    "To retest when it is put right",
                    {{toDo, "GR-17", "input, response"},
                     {toDo, "GR-16", "radio margin, if a repeater"},
                     {toDo, "YD-02", "radio margin, if a repeater"}},
                    photograph("11:40, behind the steel frame. Photograph 12 of 38", 1)};
    Finding bedroom{
        fail,
        "FL-07",
        "fail",
        "Bedroom sounder too quiet: 58 ± 2 dB, needs 75",
        "due 2 Dec",
        "Flat",
        "Bedroom",
        {},
        {{"10:51", fail, "found in the sound round, output", "at the bed head, door shut, quiet 28 dB"},
         {"10:58", {}, "door open: 71 ± 2 dB", "still 4 short: stays a finding"},
         {"15:16", {}, "customer told, door left open at night", "interim measure, until put right"}},
        "To retest when it is put right",
        {{toDo, "FL-07", "output"}, {toDo, "Flat", "sound in all six rooms"}, {toDo, "supply", "load in alarm"}},
        {}};
    contents.findings = {leak, loading, bedroom};
    contents.clearedLine = "found, put right, retested on the same day";
    contents.cleared = {
        {"FL-02", "Kitchen heat", "base not seated, did not answer", "seated",
         "retested: input, response, output, received", "09:31"},
        {"GR-07", "Office contact", "gap 14 mm, needs 12 or less", "moved, 4 mm", "retested: input, tamper", "10:41"},
        {"GR-14", "Loading keypad", "key 5 dead", "keypad changed", "retested: every key, setting and unsetting",
         "13:04"},
        {"CE-02", "Passage contact", "answered as 18, planned 17", "wires changed over",
         "retested: CE-02 and CE-03, input", "13:40"},
        {"CE-12", "Pump room frost", "too close: 3.4 ± 0.5 °C", "better probe, 3.9 ± 0.1",
         "retested: measured again, pass", "14:19"}};
    contents.findingsClosing =
        "A device that failed and then passed with nothing put right stays a finding: it comes and "
        "goes. There is none of these today.";
}

void fillReadings(Contents& contents)
{
    RangeChart loops{
        "Which loops stand near their limit?",
        "None is past it. Loop 08 stands nearest, 0.12 kΩ inside; 29 and 30 are long cables to the yard.",
        "kΩ",
        "zone, in the panel’s order",
        3.3,
        {},
        "kΩ ± 0.05, meter A, wires off the panel, 14:55. Allowed 3.0 to 3.7: resistor 3.3 ± 10 %, and 0.04 "
        "for the cable at most."};
    const std::vector<int> zones = {1,  2,  3,  4,  5,  6,  7,  8,  9,  11, 14, 15, 16, 17,
                                    18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30, 31};
    const std::vector<double> values = {3.35, 3.31, 3.42, 3.38, 3.30, 3.36, 3.33, 3.58, 3.40, 3.34,
                                        3.37, 3.29, 3.35, 3.41, 3.39, 3.32, 3.36, 3.30, 3.44, 3.47,
                                        3.46, 3.43, 3.31, 3.28, 3.35, 3.52, 3.55, 3.34};
    for (std::size_t i = 0; i < zones.size(); ++i) {
        loops.points.push_back({fmt::format("{:02}", zones[i]), values[i], 0.05, 3.0, 3.7, pass,
                                fmt::format("{:.2f}", values[i]), zones[i] == 8});
    }
    RangeChart radio{"Which radio devices are near the edge?",
                     "GR-17 is past it, GR-22 too close to tell. All others have 2 dB to spare or more.",
                     "dB",
                     "device, in walking order",
                     {},
                     {},
                     "dB ± 1.0, read off the panel’s own screen, 10:02 to 12:04."};
    const std::vector<std::pair<std::string, double>> margins = {{"GR-16", 13.1}, {"GR-17", 6.5},  {"GR-22", 10.4},
                                                                 {"CE-13", 14.0}, {"CE-14", 12.6}, {"CE-20", 17.2},
                                                                 {"FL-03", 18.4}, {"YD-01", 12.2}, {"YD-02", 13.0}};
    for (const auto& [tag, margin] : margins) {
        const Verdict verdict = margin < 9 ? fail : margin < 11 ? tooClose : pass;
        radio.points.push_back({tag, margin, 1.0, 10, {}, verdict, fmt::format("{:.1f}", margin), false});
    }
    contents.charts = {loops, radio};
    contents.timersAnswer = "All three.";
    contents.timers = {{"exit, shop", "57.1 s", {54, 66, 57.1, 0.2, pass}},
                       {"entry, shop", "30.2 s", {27, 33, 30.2, 0.2, pass}},
                       {"sounder", "14 min 52", {{}, 900, 892, 1, pass}}};
    contents.readingsClosing = "No reading of an earlier year: this is the first walk of this system.";
}

void fillGrounds(Contents& contents)
{
    contents.groundsLine =
        "Every limit with its source, every instrument with its date, and what was taken for granted.";
    contents.grounds = {
        {"The kit",
         {},
         Table{{"instrument", "number", "uncertainty, k = 2", "calibrated"},
               {{"meter A, resistance", "0417", "± 0.5 % and 2 digits", "March 2026"},
                {"sound level meter, class 2", "2290", "± 2 dB(A)", "January 2026"},
                {"probe thermometer", "88-3", "± 0.1 °C", "June 2026"},
                {"stopwatch of the telephone", "", "± 0.2 s", "compared with the time signal, 07:41"}},
               {}},
         {}},
        {"How it was judged",
         {"A reading passes when it lies inside its limit by more than its uncertainty, and fails when it lies outside by "
          "more. Between the two it is called too close: nobody can tell, and the report does not pretend."},
         {},
         {"Guard band w = U, k = 2, on both sides; ILAC-G8:09/2019, 4.2."}},
        {"Limits",
         {},
         Table{{"what", "lower", "upper", "source"},
               {{"loop resistance at the panel, one resistor", "3.0", "3.7 kΩ", "the panel’s thresholds, as planned"},
                {"radio margin", "10 dB", "", "plan"},
                {"sounder at the bed head, doors shut", "75 dB(A)", "",
                 "plan; a figure of the fire standard, from memory"},
                {"gap at which a contact answers", "", "12 mm", "plan"},
                {"exit delay, shop", "54 s", "66 s", "plan: 60 s, tolerance 10 %"}},
               {false, true, true, false}},
         {}},
        {"Taken for granted",
         {"The station’s clock was 2 s ahead; its times are printed as they came.",
          "Zone labels were read from the plan of 3 November; none was changed on site."},
         {},
         {}},
        {"Sequences and rounds",
         {},
         Table{{"what", "when", "how it went"},
               {{"set and unset, keypad and fob, shop and flat", "12:20", "4 of 4 as planned"},
                {"fire over intruder", "12:52", "fire heard, intruder kept"},
                {"mains off, battery alone", "08:02 to 12:02", "4 h, 25.07 V at the end"},
                {"all loops at the panel", "14:55", "28 of 28 read"},
                {"sound in every room", "10:44", "19 rooms, one too quiet"}},
               {}},
         {}},
        {"Shown to the customer",
         {"Setting and unsetting by keypad and fob; what an alarm sounds like; silence and reset; the false alarm call; "
          "the monthly trial; where the fuse is and what must never be switched off."},
         {},
         {}}};
}

void fillChecking(Contents& contents)
{
    contents.checkingLine = "Nothing of ours is needed: these are programs that any computer shop can install.";
    contents.checking = {
        {"Has a letter been changed since it was signed?",
         "The signature covers every byte of this file. The program pdfsig is part of many systems.",
         {"pdfsig report.pdf"},
         "It must say “Signature is Valid” twice and “Total document signed” for the last one. Read the words: its exit "
         "status does not tell."},
        {"Whose key was it?",
         "The certificate is inside the signature. Its fingerprint stands on page one, in the installer’s square; ask the "
         "firm for it by another way, by telephone or from an invoice.",
         {"pdfsig -dump report.pdf", "openssl cms -inform DER -in report.pdf.sig0 -cmsout -print"},
         "The first three groups must be 5f2a 91c4 e03b."},
        {"What lies behind the sheets?",
         "The whole record is attached: every answer, in order, each sealed with the one before; and the results as a table "
         "that a spreadsheet opens.",
         {"pdfdetach -list report.pdf", "pdfdetach -saveall report.pdf"},
         "record.jsonl, results.csv and 38 photographs appear in the folder."},
        {"Is it the record that was agreed to?",
         "The eight groups beneath the square code begin the SHA-256 of the record’s heads. They were in your hand when you "
         "signed; compare them with those on page one.",
         {"sha256sum record.jsonl"},
         "It begins with c41e07b9 5d30a2f8."}};
    contents.checkingClosing =
        "A valid signature says that nothing was changed after signing. It does not say that the "
        "tests were done well: that is what the sheets before are for.";
}

} // namespace

Contents lanternMill()
{
    Contents contents;
    contents.site = "Lantern Mill";
    contents.subtitle = "walk test of the alarm system, creamery, shop and flat";
    contents.date = "25 November 2026";
    contents.devicesNote = "Uncertainty with k = 2.";
    fillHouse(contents);
    spoil(contents, "GR-17", fail, "fail");
    spoil(contents, "GR-22", tooClose, "too close");
    spoil(contents, "FL-05", noAccess, "no access");
    spoil(contents, "FL-07", fail, "fail");
    radioReading(find(contents, "GR-17"), "6.5 ± 1.0 dB", 6.5, fail);
    find(contents, "GR-17").proofs = {Proof{ProofState::failed, ProofSeen::singly},
                                      Proof{ProofState::promised, ProofSeen::singly}};
    radioReading(find(contents, "GR-22"), "10.4 ± 1.0 dB", 10.4, tooClose);
    Device& bedroom = find(contents, "FL-07");
    bedroom = deviceOf("FL-07", 4, "Bed head", 51, 171);
    bedroom.verdict = fail;
    bedroom.result = "fail";
    bedroom.reading = "58 ± 2 dB(A)";
    bedroom.limit = "≥ 75 dB(A)";
    bedroom.scale = Scale{75, {}, 58, 2, fail};
    bedroom.proofs[2].state = ProofState::failed;
    find(contents, "GR-04").proofs[0].seen = ProofSeen::byPartner;
    Device& hatch = find(contents, "FL-05");
    hatch.reading = hatch.limit = {};
    hatch.scale.reset();
    hatch.proofs = {Proof{ProofState::promised, ProofSeen::singly}, Proof{ProofState::promised, ProofSeen::singly}};
    fillPageOne(contents);
    fillFindings(contents);
    fillReadings(contents);
    fillGrounds(contents);
    fillChecking(contents);
    return contents;
}

Contents oneDevice()
{
    Contents contents;
    contents.site = "Gate house";
    contents.date = "25 November 2026";
    contents.headline = "The one device did what the plan promises.";
    contents.deviceRooms = {{"Ground floor", "Hall", {deviceOf("GR-01", 0, "Front door", 1, 12)}}};
    contents.floors = {{"Ground floor", 0, false, "1", {{"Hall", pass, "pass", {}}}}};
    return contents;
}

Contents longWords()
{
    Contents contents = lanternMill();
    const std::string word = "Donaudampfschifffahrtsgesellschaftskapitänskajütentürschlüsselloch ";
    contents.site = "The former office, affluent fish and flax warehouse of the lantern mill with its efficient annexe";
    contents.title = "Interim sheet. Not complete: customer informed";
    contents.practice = "PRACTICE";
    contents.headline += " " + contents.headline;
    for (int i = 0; i < 24; ++i) {
        contents.doesNot.push_back(
            {fail, fmt::format("XX-{:03}", i), "A finding that is told at some length: " + word + word});
    }
    contents.titleBlock.agreed += " " + contents.titleBlock.agreed + " " + word + contents.titleBlock.agreed
                                + contents.titleBlock.agreed + contents.titleBlock.agreed;
    contents.titleBlock.tester = word;
    for (DeviceRoom& room : contents.deviceRooms) {
        room.room += " " + word + word;
        for (Device& device : room.devices) {
            device.device = "Verified efficient " + device.device + " " + word;
            device.where = word + device.where;
        }
    }
    for (Floor& floor : contents.floors) {
        for (Room& in : floor.rooms) {
            in.name += " " + word + word;
        }
    }
    find(contents, "GR-05").tag = "OFFICE-SND-05";
    Finding& finding = contents.findings.front();
    finding.line += " " + word + word;
    for (int i = 0; i < 60; ++i) {
        finding.history.push_back(
            {fmt::format("{:02}:{:02}", 15 + i / 60, i % 60), {}, "tried once more " + word, word + word});
    }
    finding.photograph->bytes.resize(200);
    RangeChart& loops = contents.charts.front();
    for (int i = 0; i < 90; ++i) {
        loops.points.push_back({fmt::format("{}", 100 + i), 2.2 + 0.004 * i, 0.05, 2.0, i < 40 ? 2.4 : 2.7,
                                i > 88 ? fail : pass, "2.25", false});
    }
    contents.grounds.front().paragraphs = {word + word + word};
    contents.grounds.front().table->rows.front().front() = word + word;
    return contents;
}

} // namespace proofwalk::report::invented
