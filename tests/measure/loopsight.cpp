// SPDX-License-Identifier: GPL-3.0-or-later
// What a reading can be, by Ohm's law worked by hand: 3.3 kilohms at the end, 4.7 kilohms over the contact, 1 % each,
// 10 ohms of cable at the most. At rest 3267 to 3343; in alarm 3267 + 4653 to 3333 + 4747 + 10, 7920 to 8090.
#include "core/measure/loopsight.h"

#include <QtTest>

#include <limits>

using namespace proofwalk;
using measure::LoopState;

class LoopSightTest : public QObject {
    Q_OBJECT

private:
    static constexpr measure::LoopWiring loop{
        .resistors = 2, .eol_ohm = 3300, .alarm_ohm = 4700, .tolerance_pct = 1, .cable_ohm_max = 10};

private Q_SLOTS:
    void betweenRestAndAlarm()
    {
        const auto sight = measure::sightOf(loop, 4100);
        QVERIFY(sight && sight->fits.empty());
        QCOMPARE(*sight->below, LoopState::closed);
        QCOMPARE(*sight->above, LoopState::alarm);
        QVERIFY(std::abs(sight->fromClosed_ohm - (4100 - 3343)) < 1e-6);
    }

    void atRestAndInAlarm()
    {
        const auto rest = measure::sightOf(loop, 3300);
        QVERIFY(rest && rest->fits == std::vector{LoopState::closed});
        QCOMPARE(rest->fromClosed_ohm, 0.0);
        const auto alarm = measure::sightOf(loop, 8000);
        QVERIFY(alarm && alarm->fits == std::vector{LoopState::alarm});
    }

    void tooLowForRest()
    {
        const auto sight = measure::sightOf(loop, 1500);
        QVERIFY(sight && sight->fits.empty());
        QCOMPARE(*sight->below, LoopState::shorted);
        QCOMPARE(*sight->above, LoopState::closed);
        QVERIFY(std::abs(sight->fromClosed_ohm - (1500 - 3267)) < 1e-6);
    }

    void noResistance()
    {
        for (const double bad :
             {-1.0, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()})
            QCOMPARE(measure::sightOf(loop, bad).error().code, std::string("measure.out-of-range"));
    }
};

QTEST_GUILESS_MAIN(LoopSightTest)
#include "loopsight.moc"
