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
    // NFPA 72 as quoted on public pages: 520 Hz within 10 %, a square wave. A sine of that pitch is not that signal.
    void theLowFrequencySignal_data()
    {
        QTest::addColumn<int>("voice");
        QTest::addColumn<double>("frequency_hz");
        QTest::addColumn<int>("rate_hz");
        QTest::addColumn<QString>("signal");
        for (const int rate : {8000, 16000, 44100, 48000})
            for (const double frequency : {475.0, 520.0, 565.0})
                QTest::addRow("square %.0f at %d", frequency, rate)
                    << static_cast<int>(Voice::lowSquare) << frequency << rate << "yes";
        QTest::newRow("sine") << static_cast<int>(Voice::sine) << 520.0 << 16000 << "no";
        QTest::newRow("too low") << static_cast<int>(Voice::lowSquare) << 440.0 << 16000 << "no";
        QTest::newRow("too high") << static_cast<int>(Voice::lowSquare) << 600.0 << 16000 << "no";
        QTest::newRow("another tone") << static_cast<int>(Voice::highSquare) << 3100.0 << 16000 << "no";
    }
    void theLowFrequencySignal()
    {
        QFETCH(int, voice);
        QFETCH(double, frequency_hz);
        QFETCH(int, rate_hz);
        QFETCH(QString, signal);
        Made made;
        made.voice = static_cast<Voice>(voice);
        made.frequency_hz = frequency_hz;
        made.rate_hz = rate_hz;
        made.snr_db = 20;
        const auto heard = measure::listenTo(sounds::make(made)).value();
        QCOMPARE(heard.pattern, Pattern::temporalThree);
        QVERIFY(std::fabs(heard.tone.dominant_hz.value() - frequency_hz) < 0.01 * frequency_hz);
        QCOMPARE(QString::fromStdString(std::string(wordOf(heard.tone.lowFrequency))), signal);
    }
    // The times as made, of both patterns; wrong ones are found, an echo does not make right ones wrong.
    void timesAreJudged_data()
    {
        QTest::addColumn<int>("rhythm");
        QTest::addColumn<double>("tempo");
        QTest::addColumn<double>("echo_s");
        QTest::addColumn<int>("wanted"); // 1 right, 0 wrong, -1 not wrong
        QTest::newRow("three") << 0 << 1.0 << 0.0 << 1;
        QTest::newRow("three, 15 % slow") << 0 << 1.15 << 0.0 << 0;
        QTest::newRow("three, 15 % quick") << 0 << 0.85 << 0.0 << 0;
        QTest::newRow("three, echo") << 0 << 1.0 << 0.6 << -1;
        QTest::newRow("three, long echo") << 0 << 1.0 << 1.2 << -1;
        QTest::newRow("four") << 1 << 1.0 << 0.0 << -1;
        QTest::newRow("four, 16 % slow") << 1 << 1.16 << 0.0 << 0;
    }
    void timesAreJudged()
    {
        QFETCH(int, rhythm);
        QFETCH(double, tempo);
        QFETCH(double, echo_s);
        QFETCH(int, wanted);
        Made made;
        made.rhythm = static_cast<Rhythm>(rhythm);
        made.tempo = tempo;
        made.echo_s = echo_s;
        made.length_s = 26;
        const auto heard = measure::listenTo(sounds::make(made)).value();
        QCOMPARE(heard.pattern, truthOf(made));
        QVERIFY(heard.durations.has_value());
        qInfo("pulse %.3f gap %.3f pause %.3f decay %.3f", heard.usual.pulses_s.at(0), heard.usual.gaps_s.at(0),
              heard.usual.pauses_s.at(0), heard.decay_s);
        if (wanted == 1) QVERIFY(heard.durations->conform.value());
        else if (wanted == 0) QVERIFY(!heard.durations->conform.value());
        else QVERIFY(heard.durations->conform.value_or(true));
    }
    // Two sounders of one pattern at any distance in time: never another pattern with confidence.
    void twoOutOfStep()
    {
        int named = 0;
        int told = 0;
        for (int i = 1; i < 40; ++i) {
            Made made;
            made.rhythm = i % 4 == 0 ? Rhythm::four : Rhythm::three;
            made.secondAfter_s = 0.05 * i;
            made.second_hz = i % 3 == 0 ? 2500 : 0;
            made.length_s = 26;
            made.snr_db = 15;
            made.seed = static_cast<std::uint64_t>(i);
            const auto heard = measure::listenTo(sounds::make(made)).value();
            const bool right = heard.pattern == truthOf(made);
            QVERIFY2(right || !heard.confident, ::told(made, heard).c_str());
            named += right ? 1 : 0;
            told += std::ranges::find(heard.doubts, measure::HearingDoubt::outOfStep) != heard.doubts.end() ? 1 : 0;
            if (!right) qInfo("%s", ::told(made, heard).c_str());
        }
        qInfo("39 pairs: %d named, of %d it is said that two are out of step", named, told);
        QVERIFY(named >= 20);
        QVERIFY(told >= 5);
    }
    void tooShortIsSaid()
    {
        Made made;
        made.length_s = 5;
        const auto heard = measure::listenTo(sounds::make(made)).value();
        QVERIFY(!heard.confident);
        QVERIFY(std::ranges::find(heard.doubts, measure::HearingDoubt::tooShort) != heard.doubts.end());
    }
    void silenceIsNone()
    {
        const auto heard = measure::listenTo({16000, std::vector<float>(320000, 0)}).value();
        QCOMPARE(heard.pattern, Pattern::none);
        QVERIFY(!heard.tone.dominant_hz.has_value());
    }
};

QTEST_GUILESS_MAIN(TestHearing)
#include "hearing.moc"
