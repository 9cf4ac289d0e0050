// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/hearing.h"

#include "core/measure/overlap.h"
#include "core/measure/pulses.h"

#include <algorithm>
#include <cmath>

namespace proofwalk::measure {
namespace {

/// One way of looking at the recording: its level at some frequencies, and what its pulses make.
struct View {
    const Level* level = nullptr;
    std::vector<Pulse> pulses;
    std::vector<Sounding> soundings;
    PatternSight sight;
    double score = 0; ///< how well the pulses make a pattern, 0 to 1
};

bool prescribed(Pattern pattern) { return pattern == Pattern::temporalThree || pattern == Pattern::temporalFour; }

double median(std::vector<double> values)
{
    if (values.empty()) return 0;
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::ranges::nth_element(values, middle);
    return *middle;
}

double scoreOf(const PatternSight& sight, double length_s)
{
    if (prescribed(sight.pattern)) {
        const double heard_s = sight.cyclesSeen * *sight.period_s;
        const double whole = static_cast<double>(sight.cyclesWhole) / sight.cyclesSeen;
        return 1
             + sight.explained * whole * std::min(1.0, sight.cyclesWhole / 3.0) * std::min(1.0, 2 * heard_s / length_s);
    }
    return sight.pattern == Pattern::pulsed ? sight.explained : 0;
}

/// With a pulse or two too many or too few a rhythm is still one: most neighbours are alike.
void lookForRhythm(PatternSight& sight, std::size_t count)
{
    if (sight.pattern != Pattern::none || count < 5) return;
    const auto& between = sight.onsetIntervals_s;
    for (std::size_t length = 1; length <= 6 && 3 * length <= between.size(); ++length) {
        std::size_t alike = 0;
        double sum = 0;
        for (std::size_t i = 0; i + length < between.size(); ++i)
            alike += std::fabs(between[i + length] - between[i]) <= 0.12 * between[i] ? 1U : 0U;
        for (const double each : between) sum += each;
        const double share = static_cast<double>(alike) / static_cast<double>(between.size() - length);
        if (share < 0.8) continue;
        sight.pattern = Pattern::pulsed;
        sight.explained = share;
        sight.period_s = sum / static_cast<double>(between.size()) * static_cast<double>(length);
        return;
    }
}

Result<void> judge(View& view, double length_s)
{
    view.soundings.clear();
    for (const Pulse& pulse : view.pulses) view.soundings.push_back({pulse.from_s, pulse.to_s});
    auto sight = sightOfPattern(view.soundings);
    if (!sight) return passOn(sight);
    view.sight = std::move(*sight);
    lookForRhythm(view.sight, view.pulses.size());
    view.score = scoreOf(view.sight, length_s);
    return {};
}

Result<View> viewOf(const Level& level, double turn_db, double length_s)
{
    View view{&level, pulsesOf(level, turn_db), {}, {}, 0};
    if (auto ok = judge(view, length_s); !ok) return passOn(ok);
    // The recording may begin within a pulse, whose own beginning is then not known.
    if (view.pulses.size() < 3 || view.pulses[0].from_s > 3 * level.frame_s) return view;
    View without{&level, {view.pulses.begin() + 1, view.pulses.end()}, {}, {}, 0};
    if (auto ok = judge(without, length_s); !ok) return passOn(ok);
    return without.score > view.score ? without : view;
}

/// Every way of looking that is worth it: all frequencies that change or one line, hurried or patient, wary or not.
struct Views {
    std::vector<Level> levels;
    std::vector<View> views;
};

Result<void> look(Views& all, const std::vector<Strength>& strengths, double length_s)
{
    for (const Strength& strength : strengths)
        for (const std::size_t pieces : {3U, 11U, 25U}) all.levels.push_back(levelOf(strength, pieces));
    for (const Level& level : all.levels)
        for (const double turn_db : {6.5, 3.0}) {
            auto view = viewOf(level, turn_db, length_s);
            if (!view) return passOn(view);
            all.views.push_back(std::move(*view));
        }
    return {};
}

/// By how many decibels the strongest frequency, whichever it is, is weaker between the pulses than during them.
/// Hardly, if
/// the sound goes to and fro between frequencies and is never off.
double dropBetween_db(const Spectra& spectra, const std::vector<Sounding>& soundings)
{
    double on_db = 0;
    double off_db = 0;
    double framesOn = 0;
    double framesOff = 0;
    std::size_t next = 0;
    for (std::size_t frame = 0; frame < spectra.frames; ++frame) {
        const double at_s = (static_cast<double>(frame) + 0.5) * spectra.frame_s;
        while (next < soundings.size() && soundings[next].to_s < at_s) ++next;
        if (next == soundings.size()) break;
        if (at_s < soundings.front().from_s) continue; // before anything sounded
        const bool within = at_s >= soundings[next].from_s;
        const double strongest = std::max(1e-20, double{*std::ranges::max_element(spectra.frame(frame))});
        (within ? on_db : off_db) += 10 * std::log10(strongest);
        (within ? framesOn : framesOff) += 1;
    }
    return framesOn == 0 || framesOff == 0 ? 0 : on_db / framesOn - off_db / framesOff;
}

/// One pulse every six seconds or so may be four that run into each other.
bool mayBeFour(const View& view)
{
    return !view.sight.onsetIntervals_s.empty()
        && std::ranges::all_of(view.sight.onsetIntervals_s, [](double each_s) { return each_s > 5 && each_s < 13; })
        && std::ranges::all_of(view.soundings, [](const Sounding& each) { return each.to_s - each.from_s < 2; });
}

bool clipped(const Recording& recording)
{
    float most = 0;
    for (const float sample : recording.samples) most = std::max(most, std::fabs(sample));
    std::size_t flat = 0;
    for (std::size_t i = 1; i < recording.samples.size(); ++i)
        flat += std::fabs(recording.samples[i]) >= 0.998F * most && recording.samples[i] == recording.samples[i - 1]
                  ? 1U
                  : 0U;
    return most > 0 && static_cast<double>(flat) > 0.002 * static_cast<double>(recording.samples.size());
}

void judgeTimes(Hearing& hearing, const View& view)
{
    std::vector<double> decays;
    for (const Pulse& pulse : view.pulses) decays.push_back(pulse.decay_s);
    hearing.decay_s = median(decays);
    const PatternTimes& times = view.sight.times;
    if (times.pulses_s.empty()) return;
    const double pulse_s = median(times.pulses_s) - hearing.decay_s;
    hearing.usual.pulses_s = {pulse_s};
    if (!times.gaps_s.empty()) hearing.usual.gaps_s = {median(times.gaps_s) + hearing.decay_s};
    if (!times.pauses_s.empty()) hearing.usual.pauses_s = {median(times.pauses_s) + hearing.decay_s};
    // Half a piece at each edge, what the medians scatter by, and what was taken off for the echo.
    double scatter_s = 0;
    for (const double each : times.pulses_s) scatter_s += std::fabs(each - median(times.pulses_s));
    scatter_s /= static_cast<double>(times.pulses_s.size()) * std::sqrt(static_cast<double>(times.pulses_s.size()));
    const double uncertainty_s = view.level->frame_s + 2 * scatter_s + hearing.decay_s;
    if (auto judged = judgeDurations(view.sight.pattern, hearing.usual, 0, uncertainty_s))
        hearing.durations = std::move(*judged);
    if (hearing.decay_s > 0.1 * shapeOf(view.sight.pattern).pulse_s) hearing.doubts.push_back(HearingDoubt::echo);
}

void takePrescribed(Hearing& hearing, const View& view)
{
    const PatternSight& sight = view.sight;
    hearing.pattern = sight.pattern;
    const bool few = sight.cyclesWhole < 3;
    const bool unlike = sight.explained < 0.9 || 4 * sight.cyclesWhole < 3 * sight.cyclesSeen;
    if (few) hearing.doubts.push_back(HearingDoubt::fewCycles);
    if (unlike) hearing.doubts.push_back(HearingDoubt::unlike);
    if (hearing.contrast_db < 8) hearing.doubts.push_back(HearingDoubt::weak);
    hearing.confident = !unlike && hearing.contrast_db >= 6;
    judgeTimes(hearing, view);
}

/// What the level shows once it is folded over a cycle, where single pulses drown in noise or in each other.
struct Repeated {
    Pattern pattern = Pattern::none;
    bool outOfStep = false;
    bool hint = false; ///< not enough to name a pattern, too much to deny one
    double most = 0; ///< the greatest likeness met
};

Repeated repeats(std::span<const Strength> strengths)
{
    Repeated found;
    for (const Strength& strength : strengths) {
        if (const auto three = foldedOver(levelOf(strength, 15), Pattern::temporalThree)) {
            found.most = std::max(found.most, three->one);
            const bool likelier = three->one > three->march + 0.03 && three->one > three->block + 0.03;
            if (three->one >= 0.85 && three->repeats >= 0.5 && likelier)
                return {Pattern::temporalThree, false, true, three->one};
            if (three->two >= 0.9 && three->two > three->march + 0.03 && three->two > three->block + 0.03
                && three->repeats >= 0.85)
                return {Pattern::temporalThree, true, true, three->two};
            found.hint = found.hint || (three->one >= 0.6 && three->one > three->march && three->one > three->block);
        }
        if (const auto four = foldedOver(levelOf(strength, 7), Pattern::temporalFour)) {
            found.most = std::max(found.most, four->one);
            if (four->one >= 0.6 && four->repeats >= 0.45 && four->one > four->block)
                return {Pattern::temporalFour, false, true, four->one};
            if (four->two >= 0.85 && four->repeats >= 0.8 && four->two > four->block + 0.1)
                return {Pattern::temporalFour, true, true, four->two};
            found.hint = found.hint || four->one >= 0.5;
        }
    }
    return found;
}

/// Whether all pulses are equally loud: two sounders out of step can make a march of unequal ones.
bool evenPulses(const View& best)
{
    std::vector<double> levels;
    for (const Pulse& pulse : best.pulses) levels.push_back(pulse.level_db);
    std::ranges::sort(levels);
    return levels[levels.size() - 1 - levels.size() / 10] - levels[levels.size() / 10] < 1.5;
}

/// How many of the strengths are worth folding: a clear rhythm is only asked whether it is two sounders' sum.
std::size_t foldedViews(const View& best, std::size_t strengths)
{
    const bool clear =
        best.sight.pattern == Pattern::pulsed && best.sight.explained >= 0.95 && best.level->contrast_db >= 10;
    return std::min<std::size_t>(strengths, clear ? 1 : 2);
}

/// How much of a level comes again after some time between 0.1 s and 6 s, 0 to 1.
double returning(const Level& level)
{
    constexpr std::size_t pieces = 3;
    std::vector<double> values;
    double mean = 0;
    for (std::size_t i = 0; i < level.level_db.size(); i += pieces) values.push_back(double{level.level_db[i]});
    for (const double value : values) mean += value / static_cast<double>(values.size());
    double all = 0;
    for (double& value : values) {
        value -= mean;
        all += value * value;
    }
    double best = 0;
    const auto from = static_cast<std::size_t>(0.1 / (level.frame_s * pieces));
    const auto to = std::min(values.size() / 2, static_cast<std::size_t>(6 / (level.frame_s * pieces)));
    double before = 1;
    for (std::size_t lag = from; lag < to; ++lag) {
        double sum = 0;
        for (std::size_t i = lag; i < values.size(); ++i) sum += values[i] * values[i - lag];
        const double share =
            all > 0 ? sum / all * static_cast<double>(values.size()) / static_cast<double>(values.size() - lag) : 0;
        if (share > before) best = std::max(best, share); // a rise: not the slow fall from lag 0
        before = share;
    }
    return best;
}

/// Neither a pattern nor a rhythm: a tone all the time, or nothing.
void takeRest(Hearing& hearing, const Recording& recording, const Views& views, const std::vector<Line>& lines)
{
    const auto leastContrast = [&](std::size_t from, std::size_t to) {
        double least = 1e9;
        for (std::size_t i = from + 2; i < to; i += 3) least = std::min(least, views.levels[i].contrast_db);
        return least;
    };
    const double wandering = shareWithLine(recording, std::nullopt);
    const double standing = lines.empty() ? 0 : shareWithLine(recording, lines[0].frequency_hz);
    const bool even = leastContrast(0, 3) < 6;
    const bool evenLine = lines.empty() ? false : leastContrast(3, views.levels.size()) < 6;
    const double share = std::max(even ? wandering : 0, evenLine ? standing : 0);
    hearing.pattern = share >= 0.9                            ? Pattern::steady
                    : std::max(share, 0.6 * wandering) >= 0.5 ? Pattern::undecided
                                                              : Pattern::none;
    // That nothing is there can be said only of a recording in which it would be heard: not of one full of noise.
    const double even_db = leastContrast(0, 3);
    hearing.confident =
        hearing.pattern == Pattern::steady ? share >= 0.97 : even_db > 12 && std::max(standing, wandering) < 0.2;
    if (hearing.pattern == Pattern::steady) hearing.sight = {};
    for (std::size_t i = 0; i < views.levels.size(); ++i)
        if (i % 3 < 2 && returning(views.levels[i]) > 0.2) hearing.confident = false;
}

} // namespace

std::string_view wordOf(HearingDoubt doubt)
{
    switch (doubt) {
    case HearingDoubt::tooShort: return "too-short";
    case HearingDoubt::fewCycles: return "few-cycles";
    case HearingDoubt::unlike: return "unlike";
    case HearingDoubt::weak: return "weak";
    case HearingDoubt::outOfStep: return "out-of-step";
    case HearingDoubt::echo: return "echo";
    case HearingDoubt::clipped: break;
    }
    return "clipped";
}

Result<Hearing> listenTo(const Recording& recording)
{
    if (auto ok = checkRecording(recording); !ok) return passOn(ok);
    Hearing hearing;
    hearing.length_s = recording.length_s();
    if (clipped(recording)) hearing.doubts.push_back(HearingDoubt::clipped);
    const Sounding all{0, hearing.length_s};
    const Spectra spectra = shortSpectra(recording);
    const auto habits = habitsOf(spectra);
    const auto lines = linesOf(lineSpectrum(recording, {&all, 1}, 150), 6);

    std::vector<Strength> strengths{strengthByContrast(spectra, habits)};
    for (const Line& line : lines) strengths.push_back(strengthAt(spectra, habits, line.frequency_hz));
    Views views;
    if (auto ok = look(views, strengths, hearing.length_s); !ok) return passOn(ok);
    const View& best = *std::ranges::max_element(views.views, {}, &View::score);
    hearing.contrast_db = best.level->contrast_db;
    hearing.sight = best.sight;
    if (prescribed(best.sight.pattern)) takePrescribed(hearing, best);
    else if (const auto repeated = repeats(std::span(strengths).first(foldedViews(best, strengths.size())));
             repeated.pattern != Pattern::none) {
        hearing.pattern = repeated.pattern;
        hearing.doubts.push_back(repeated.outOfStep ? HearingDoubt::outOfStep : HearingDoubt::weak);
    } else if (const double drop_db = dropBetween_db(spectra, best.soundings);
               best.sight.pattern == Pattern::pulsed && (drop_db > 3 || hearing.contrast_db < 8)) {
        hearing.pattern = mayBeFour(best) ? Pattern::undecided : Pattern::pulsed;
        hearing.confident = best.sight.explained >= 0.9 && best.pulses.size() >= 6 && hearing.contrast_db >= 8
                         && evenPulses(best) && drop_db > std::min(10.0, 0.6 * hearing.contrast_db)
                         && hearing.pattern == Pattern::pulsed && !repeated.hint;
    } else {
        takeRest(hearing, recording, views, lines);
        if (repeated.hint) hearing.confident = false;
        if (repeated.hint && hearing.pattern == Pattern::none) hearing.pattern = Pattern::undecided;
    }
    if (hearing.length_s < 8) {
        hearing.doubts.push_back(HearingDoubt::tooShort);
        hearing.confident = false;
    }
    const bool wholeTime = !prescribed(hearing.pattern) && hearing.pattern != Pattern::pulsed;
    hearing.tone = toneOf(recording, wholeTime ? std::span(&all, 1) : std::span(best.soundings));
    return hearing;
}

} // namespace proofwalk::measure
