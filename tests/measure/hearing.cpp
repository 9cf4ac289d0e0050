// SPDX-License-Identifier: GPL-3.0-or-later
// Source: the rhythms of ISO 8201 and NFPA 720 (as quoted on public pages), made into sound with a known truth by
// tests/measure/sounds.h. PROOFWALK_ROUNDS makes more of them; the seed is printed, PROOFWALK_SEED repeats it.
#include "core/measure/hearing.h"
#include "tests/measure/sounds.h"

#include <fmt/format.h>

#include <QtTest>

#include <array>
#include <map>
#include <thread>

using namespace proofwalk;
using measure::Pattern;
using sounds::Made;
using sounds::Noise;
using sounds::Rhythm;
using sounds::Voice;

namespace {

Pattern truthOf(const Made& made)
{
    switch (made.rhythm) {
    case Rhythm::three: return Pattern::temporalThree;
    case Rhythm::four: return Pattern::temporalFour;
    case Rhythm::steady: return Pattern::steady;
    case Rhythm::hammer:
    case Rhythm::speech:
    case Rhythm::silence: return Pattern::none;
    default: break;
    }
    return Pattern::pulsed;
}

/// One recording of those that are possible, by chance.
Made chosen(std::uint64_t seed)
{
    sounds::Chance chance(seed);
    constexpr std::array rhythms{Rhythm::three,  Rhythm::three,  Rhythm::three,   Rhythm::four,     Rhythm::four,
                                 Rhythm::steady, Rhythm::march,  Rhythm::twoBeat, Rhythm::fourBeat, Rhythm::slow,
                                 Rhythm::quick,  Rhythm::hammer, Rhythm::speech,  Rhythm::silence};
    constexpr std::array rates{8000, 11025, 16000, 22050, 44100, 48000};
    constexpr std::array levels{40.0, 20.0, 10.0, 5.0, 0.0, 0.0};
    constexpr std::array echoes{0.0, 0.0, 0.3, 0.6, 1.0, 1.5};
    Made made;
    made.seed = seed;
    made.rhythm = rhythms[seed % rhythms.size()];
    made.rate_hz = rates[chance.below(rates.size())];
    made.voice = static_cast<Voice>(chance.below(6));
    made.frequency_hz = made.voice == Voice::lowSquare ? chance.within(475, 565)
                      : made.voice == Voice::bell      ? chance.within(700, 1200)
                                                       : chance.within(600, std::min(3400.0, 0.38 * made.rate_hz));
    made.tempo = chance.within(0.94, 1.06);
    made.snr_db = levels[chance.below(levels.size())];
    made.noise = chance.unit() < 0.5 ? Noise::white : Noise::pink;
    made.echo_s = echoes[chance.below(echoes.size())];
    made.clipped = chance.unit() < 0.2;
    made.length_s = made.rhythm == Rhythm::four ? chance.within(20, 28) : chance.within(14, 20);
    made.begin_s = chance.within(-4, 1.5);
    return made;
}

std::string told(const Made& made, const measure::Hearing& heard)
{
    std::string doubts;
    for (const auto doubt : heard.doubts) doubts += " " + std::string(wordOf(doubt));
    return fmt::format(
        "seed {} rhythm {} voice {} {:.0f} Hz tempo {:.3f} snr {} noise {} echo {} clipped {} rate {} length "
        "{:.1f} second {:.2f}: {} {} explained {:.2f} whole {}/{} contrast {:.1f}{}",
        made.seed, static_cast<int>(made.rhythm), static_cast<int>(made.voice), made.frequency_hz, made.tempo,
        made.snr_db, static_cast<int>(made.noise), made.echo_s, made.clipped, made.rate_hz, made.length_s,
        made.secondAfter_s, wordOf(heard.pattern), heard.confident ? "sure" : "unsure", heard.sight.explained,
        heard.sight.cyclesWhole, heard.sight.cyclesSeen, heard.contrast_db, doubts);
}

} // namespace

class TestHearing : public QObject {
    Q_OBJECT

private slots:
    // At least 500; none called a wrong pattern with confidence.
    void recordingsWithKnownTruth()
    {
        const int rounds = std::max(1, qEnvironmentVariable("PROOFWALK_ROUNDS").toInt());
        const auto first = static_cast<std::uint64_t>(qEnvironmentVariable("PROOFWALK_SEED", "1").toULongLong());
        const std::size_t count = 504 * static_cast<std::size_t>(rounds);
        std::vector<measure::Hearing> heard(count);
        const auto listen = [&](std::size_t from) {
            for (std::size_t i = from; i < count; i += 2)
                heard[i] = measure::listenTo(sounds::make(chosen(first + i))).value();
        };
        std::thread other(listen, 1);
        listen(0);
        other.join();
        std::map<std::pair<Pattern, Pattern>, int> table;
        int wrongSure = 0;
        int right = 0;
        for (std::size_t i = 0; i < count; ++i) {
            const Made made = chosen(first + i);
            ++table[{truthOf(made), heard[i].pattern}];
            if (heard[i].pattern == truthOf(made)) {
                ++right;
                continue;
            }
            if (heard[i].confident) ++wrongSure;
            qInfo("%s%s", heard[i].confident ? "WRONG AND SURE " : "", told(made, heard[i]).c_str());
        }
        constexpr std::array all{Pattern::temporalThree, Pattern::temporalFour, Pattern::steady,
                                 Pattern::pulsed,        Pattern::none,         Pattern::undecided};
        std::string head = "truth \\ heard  ";
        for (const Pattern column : all) head += fmt::format("{:>15}", wordOf(column));
        qInfo("%d recordings from seed %llu\n%s", static_cast<int>(count), static_cast<unsigned long long>(first),
              head.c_str());
        for (const Pattern row : all) {
            std::string line = fmt::format("{:15}", wordOf(row));
            for (const Pattern column : all) line += fmt::format("{:>15}", table[{row, column}]);
            if (row != Pattern::undecided) qInfo("%s", line.c_str());
        }
        QCOMPARE(wrongSure, 0);
        QVERIFY2(right >= static_cast<int>(count * 9 / 10), fmt::format("{} of {} right", right, count).c_str());
    }
};

QTEST_GUILESS_MAIN(TestHearing)
#include "hearing.moc"
