// SPDX-License-Identifier: GPL-3.0-or-later
// Everything the sheets of a completion report show: finished words in the reader's language, and numbers with their
// scale. Nothing here is judged or computed by the pages; they only lay it out. All text is UTF-8. An empty text means
// that there is nothing to say there; an empty list is drawn as such, never left out without a word.
#pragma once

#include "core/report/labels.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace proofwalk::report {

/// What a mark says. Shape and word always stand together; the words come with the rows.
enum class Verdict : std::uint8_t { pass, fail, tooClose, noAccess, running, toDo, notApplicable, retest };

/// A verdict's mark before a tag.
struct Marked {
    Verdict verdict = Verdict::toDo;
    std::string tag;
};

/// A room as the building section and the device list show it.
struct Room {
    std::string name;
    Verdict verdict = Verdict::toDo; ///< the worst of its devices
    std::string word;                ///< "pass"; "too close, fail"
    std::vector<Marked> notable;     ///< devices that are not pass, worst first
};

/// A floor, in the order in which the section stacks them.
struct Floor {
    std::string name;
    int level = 0;        ///< 0 stands on the earth line, below 0 under it; not used outside
    bool outside = false; ///< a yard, a shed: drawn as a hut beside the house
    std::string count;    ///< how many devices, as words: "12"
    std::vector<Room> rooms;
};

/// How often a verdict was given, with its word.
struct Count {
    Verdict verdict = Verdict::pass;
    int number = 0;
    std::string word;
};

/// A row of "what does not" and of "not tested, and why".
struct Shortcoming {
    Verdict verdict = Verdict::fail;
    std::string tag; ///< may be empty
    std::string words;
};

/// A row of "what you must do".
struct Duty {
    std::string words;
    std::string due; ///< "due 2 Dec", "until put right"
};

/// One of those whom to call.
struct Contact {
    std::string occasion; ///< "A false alarm"
    std::string whom;     ///< "station, with your password"
};

/// A point of an ink stroke, in the units of Ink.
struct InkPoint {
    double x = 0;
    double y = 0;
};

/// A drawn signature: lines in a field of any size, y downwards.
struct Ink {
    double width = 0;  ///< of the field it was drawn in, above 0 if there are strokes
    double height = 0; ///< likewise
    std::vector<std::vector<InkPoint>> strokes;
};

/// The block at the foot of page one.
struct TitleBlock {
    std::string tester;       ///< name, or role
    std::string testedWhen;   ///< "25 November 2026, 07:40 to 15:18"
    std::string testerNote;   ///< "also fitted this system"
    std::string customerLine; ///< "customer, signed 15:18:22"; empty: Labels::customer
    std::string customerName;
    Ink ink;
    std::string key;       ///< the key's fingerprint, shortened
    std::string signedLine; ///< "signed 15:18:40"; empty: Labels::notSigned, without a mark
    std::string sealsLine;  ///< what the signature covers
    std::string agreed;     ///< the words the customer agreed to
    std::vector<std::string> fingerprint; ///< groups of four digits; the first four stand in every foot
    std::string code;                     ///< what the square code holds; empty: none is drawn
    std::string codeNote;                 ///< what to do with it
    std::string lastLine;                 ///< what the code does and does not prove
};

/// How far a proof has come, and how it was seen.
enum class ProofState : std::uint8_t { notPromised, promised, underWay, lit, failed };
enum class ProofSeen : std::uint8_t { singly, inBulk, byItsLike, byTheEar, byPartner };

/// One of the four windows of a device: input, response, output, received.
struct Proof {
    ProofState state = ProofState::notPromised;
    ProofSeen seen = ProofSeen::singly;
};

/// A reading on its scale. Limits and value are in one unit, which is not named here.
struct Scale {
    std::optional<double> lower;       ///< nothing below it is allowed
    std::optional<double> upper;       ///< nothing above it is allowed
    std::optional<double> value;       ///< what was read
    double uncertainty = 0;            ///< half a whisker, 0 or more
    Verdict verdict = Verdict::pass;   ///< fail: a diamond; tooClose: half behind the jamb
};

/// Trials that must all succeed, counted.
struct Trials {
    int seen = 0;
    int wanted = 0;
};

/// A device, a row of the list.
struct Device {
    Verdict verdict = Verdict::toDo;
    std::string tag;
    std::string icon;   ///< the catalogue's kind: "contact-surface"; one without a drawing gets `unknown`
    std::string device; ///< "Door contact"
    std::string where;
    std::string zone;
    std::string result; ///< the verdict's word
    std::array<Proof, 4> proofs;
    std::string reading; ///< "10.4 ± 1.0 dB"; "5 of 5"
    std::optional<Scale> scale;
    std::optional<Trials> trials; ///< takes the scale's place
    std::string limit; ///< "≥ 10 dB"
    std::string time;  ///< "12:04"
};

/// The devices of one room, in walking order. Rooms of one floor follow each other.
struct DeviceRoom {
    std::string floor; ///< the name of a Floor
    std::string room;  ///< the name of one of its rooms
    std::vector<Device> devices;
};

/// A line of a finding's history: a verdict with its mark, or an act with a dot.
struct HistoryLine {
    std::string time;
    std::optional<Verdict> verdict;
    std::string what;
    std::string detail;
};

/// A room of a floor plan: its outline in any unit, y downwards, closed by itself.
struct SketchRoom {
    std::vector<InkPoint> outline;
    bool here = false; ///< the room the finding is in
};

/// A floor plan of which one room is marked. Without rooms the building section takes its place.
struct Sketch {
    std::vector<SketchRoom> rooms;
    std::optional<InkPoint> mark; ///< where the device stands; without it the middle of the room
};

/// A photograph as it is in the record.
struct Photograph {
    std::string bytes; ///< PNG or JPEG
    std::string caption;
};

/// A row of "to retest".
struct RetestLine {
    Verdict verdict = Verdict::toDo;
    std::string tag;
    std::string words;
};

/// A finding with everything that happened to it.
struct Finding {
    Verdict verdict = Verdict::fail; ///< as it stands now; gives the band its tint
    std::string tag;
    std::string word;
    std::string line;
    std::string due; ///< "due 2 Dec", "cleared 14:52"
    std::string floor; ///< names of Floor and Room, for the section where there is no plan
    std::string room;
    Sketch sketch;
    std::vector<HistoryLine> history;
    std::string retestHead; ///< "To retest when it is put right"
    std::vector<RetestLine> retests;
    std::optional<Photograph> photograph;
};

/// A finding that was cleared the same day, as one row.
struct ClearedFinding {
    std::string tag;
    std::string what;   ///< bold: "Kitchen heat"
    std::string detail; ///< "base not seated, did not answer"
    std::string done;
    std::string retested;
    std::string time;
};

/// A reading on a chart.
struct ChartPoint {
    std::string label; ///< under the chart: the zone
    double value = 0;
    double uncertainty = 0;
    std::optional<double> lower;
    std::optional<double> upper;
    Verdict verdict = Verdict::pass;
    std::string figure; ///< the value as typed, for the table: "3.58"
    bool named = false; ///< its figure stands beside its mark
};

/// One question, answered by readings between walls.
struct RangeChart {
    std::string question;
    std::string answer;
    std::string unit;     ///< "kΩ"
    std::string axis;     ///< "zone, in the panel’s order"
    std::optional<double> nominal; ///< a dashed line
    std::vector<ChartPoint> points;
    std::string note; ///< under the table
};

/// A timer on its scale.
struct TimerStrip {
    std::string name;
    std::string reading;
    Scale scale;
};

/// Heads and rows of words. Columns take the width their words need.
struct Table {
    std::vector<std::string> heads; ///< may be empty
    std::vector<std::vector<std::string>> rows;
    std::vector<bool> figures; ///< which columns stand right-aligned in the figures' face; may be shorter
};

/// A block of the sheet of instruments and limits: a head at the left, words and a table at the right.
struct Block {
    std::string head;
    std::vector<std::string> paragraphs;
    std::optional<Table> table;
    std::vector<std::string> notes; ///< small, after the table
};

/// One step of the sheet that says how to check the report.
struct CheckStep {
    std::string head;
    std::string words;
    std::vector<std::string> commands; ///< to be typed as they stand
    std::string expect;                ///< what to see then
};

/// The whole report. In the words of page one, of heads and of closing lines "{sheet:NAME}" stands for the number
/// of the sheet where devices, findings, readings, grounds or checking begin.
struct Contents {
    Labels labels;

    // Every sheet
    std::string site;
    std::string subtitle;
    std::string date;
    std::string title; ///< "Interim sheet", "Not complete: customer informed"; empty on a final report
    std::string practice; ///< "PRACTICE" on every sheet of a rehearsal; else empty

    // Page one
    std::string headline;
    std::string testedAgainst;
    std::vector<Floor> floors;
    std::vector<Count> counts;
    std::vector<std::string> works;
    std::vector<Shortcoming> doesNot;
    std::vector<Shortcoming> notTested;
    std::string notTestedNote;
    std::vector<Duty> duties;
    std::string liveWord; ///< "yes", "no"
    Verdict liveVerdict = Verdict::pass; ///< the colour of its plate
    std::vector<std::string> liveLines;
    std::vector<Contact> contacts;
    TitleBlock titleBlock;

    // Devices
    std::string devicesNote; ///< "Uncertainty with k = 2."
    std::vector<DeviceRoom> deviceRooms;

    // Findings
    std::string findingsLine;
    std::vector<Finding> findings;
    std::string clearedLine;
    std::vector<ClearedFinding> cleared;
    std::string findingsClosing;

    // Readings
    std::vector<RangeChart> charts;
    std::string timersAnswer;
    std::vector<TimerStrip> timers;
    std::string readingsClosing;

    // Instruments, limits, assumptions, what was shown
    std::string groundsLine;
    std::vector<Block> grounds;

    // The sheet that says how to check
    std::string checkingLine;
    std::vector<CheckStep> checking;
    std::string checkingClosing;
};

} // namespace proofwalk::report
