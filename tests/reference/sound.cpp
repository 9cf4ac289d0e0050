// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: inverse square law, ISO 3744, IEC 61672-1 (table as printed in a national adoption), NFPA 72, BS 5839-1;
// each beside its vector in measure-vectors.json. Tolerance: that of the vector.
#include "core/measure/audibility.h"
#include "core/measure/conformity.h"
#include "core/measure/guard.h"
#include "core/measure/soundlevel.h"
#include "core/measure/weighting.h"
#include "tests/reference/vectors.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::reference::Vector;

class SoundReference : public QObject {
    Q_OBJECT

private slots:
    void fallsWithDistance()
    {
        const Vector v("sound-01");
        const SoundSource sounder{v.in("L"), 1};
        QVERIFY(v.agrees("at10", levelAtDistance_db(sounder, 10).value()));
        QVERIFY(v.agrees("at25", levelAtDistance_db(sounder, 25).value()));
        QVERIFY(
            v.agrees("per_doubling", levelAtDistance_db(sounder, 7).value() - levelAtDistance_db(sounder, 14).value()));
        QVERIFY(v.isServed());
        const Vector w("sound-02");
        const SoundSource rated{w.in("L"), w.in("r")};
        QVERIFY(w.agrees("r65", distanceForLevel_m(rated, w.in("T")).value()));
        QVERIFY(w.agrees("at12", levelAtDistance_db(rated, 12).value()));
        QVERIFY(w.isServed());
    }
    void addUp()
    {
        for (const char* id : {"sound-03-pub", "sound-03"}) {
            const Vector v(id);
            const std::vector<double> three{v.in("a"), v.in("b"), v.in("c")};
            const std::vector<double> two{v.in("b"), v.in("b")};
            QVERIFY(v.agrees("two80", sumOfLevels_db(two).value()));
            QVERIFY(v.agrees("sum3", sumOfLevels_db(three).value()));
            QVERIFY(v.agrees("mean3", meanOfLevels_db(three).value()));
            QVERIFY(v.isServed());
        }
    }
    void background()
    {
        const Vector v("sound-04");
        const auto found = withoutBackground(v.in("on"), v.in("off"), BackgroundMethod::engineering).value();
        QVERIFY(v.agrees("signal", found.signal_db));
        QVERIFY(v.agrees("k1", found.correction_db));
        QVERIFY(v.isServed());
        const Vector printed("sound-05-pub");
        const Vector w("sound-05");
        for (const double difference_db : w.ins("differences_db"))
            QVERIFY(w.agrees("k" + QString::number(difference_db), backgroundCorrection_db(difference_db).value()));
        QVERIFY(printed.agrees("k6", backgroundCorrection_db(6).value()));
        QVERIFY(printed.agrees("k10", backgroundCorrection_db(10).value()));
        QVERIFY(w.isServed() && printed.isServed());
    }
    void northAmericanLimits()
    {
        const Vector v("sound-06");
        const Ambient ambient{v.in("a"), v.in("m")};
        const auto second = v.ins("second_pair");
        QVERIFY(v.agrees("public", audibilityLimits(AudibilityRule::nfpaPublic, ambient).value().least_dba));
        QVERIFY(v.agrees("sleeping", audibilityLimits(AudibilityRule::nfpaSleeping, ambient).value().least_dba));
        QVERIFY(v.agrees("public_62_64",
                         audibilityLimits(AudibilityRule::nfpaPublic, {second[0], second[1]}).value().least_dba));
        QVERIFY(v.isServed());
    }
    void britishLimits()
    {
        const Vector v("sound-07");
        const auto least = [](AudibilityRule rule, double ambient_dba) {
            return audibilityLimits(rule, {ambient_dba, {}}).value().least_dba;
        };
        QVERIFY(v.agrees("need58", least(AudibilityRule::bsGeneral, v.in("b1"))));
        QVERIFY(v.agrees("need63", least(AudibilityRule::bsGeneral, v.in("b2"))));
        QVERIFY(v.agrees("bedhead", least(AudibilityRule::bsBedhead, v.in("b1"))));
        QVERIFY(v.isServed());
    }
    void throughADoor()
    {
        const Vector v("sound-08");
        const Vector doors("sound-14");
        QVERIFY(doors.agrees("ordinary_door_db", ordinaryDoorLoss_db));
        QVERIFY(doors.agrees("fire_door_db", fireDoorLoss_db));
        QVERIFY(doors.isServed());
        QCOMPARE(v.ins("door_db"), (std::vector<double>{ordinaryDoorLoss_db, fireDoorLoss_db}));
        const double there_db = levelAtDistance_db({v.in("L"), 1}, v.in("d") + v.in("d_beyond")).value();
        QVERIFY(v.agrees("ordinary", there_db - ordinaryDoorLoss_db));
        QVERIFY(v.agrees("fire_door", there_db - fireDoorLoss_db));
        QVERIFY(v.isServed());
    }
    void weighting()
    {
        const Vector v("sound-09");
        const auto at = v.ins("frequencies_hz");
        const char* letters[] = {"a1000", "a125", "a520", "a3100"};
        for (std::size_t i = 0; i < at.size(); ++i) QVERIFY(v.agrees(letters[i], aWeighting_db(at[i]).value()));
        QVERIFY(v.isServed());
    }
    void weightingTable()
    {
        const Vector printed("sound-13-pub");
        const auto nominals_hz = printed.ins("nominal_hz");
        std::vector<double> bands_db;
        for (const double nominal_hz : nominals_hz) bands_db.push_back(aWeightingOfBand_db(nominal_hz).value());
        QVERIFY(printed.agrees("a_db", bands_db));
        QCOMPARE(bands_db, printed.outs("a_db")); // to the tenth it is the table
        // And the formula keeps to the table, from 10 Hz on in steps of a tenth of a decade.
        std::vector<double> formula_db;
        for (std::size_t i = 0; i < nominals_hz.size(); ++i)
            formula_db.push_back(aWeighting_db(std::pow(10, 1 + static_cast<double>(i) / 10)).value());
        QVERIFY(printed.agrees("a_db", formula_db));
        const Vector v("sound-13");
        std::vector<double> exact_db;
        for (const double exact_hz : v.ins("exact_hz")) exact_db.push_back(aWeighting_db(exact_hz).value());
        QVERIFY(v.agrees("a_db", exact_db));
        QVERIFY(printed.isServed() && v.isServed());
    }
    void octaves()
    {
        const Vector v("sound-10");
        const std::vector<Band> bands{{125, v.in("a")},  {250, v.in("b")},  {500, v.in("c")},
                                      {1000, v.in("d")}, {2000, v.in("e")}, {4000, v.in("f")}};
        QVERIFY(v.agrees("la", weightedTotal_dba(bands).value()));
        QVERIFY(v.isServed());
    }
    void lowFrequencySquareWave()
    {
        const Vector v("sound-11");
        const auto wave = squareWave(v.in("fundamental_hz"), static_cast<int>(v.ins("harmonics").size())).value();
        for (const Harmonic& line : wave.harmonics) {
            if (line.order > 1) QVERIFY(v.agrees(QString("h%1").arg(line.order), line.level_db));
            QVERIFY(v.agrees(QString("w%1").arg(line.order), line.weighting_db));
        }
        QVERIFY(v.agrees("z_total", wave.total_db));
        QVERIFY(v.agrees("a_total", wave.weightedTotal_dba));
        QVERIFY(v.agrees("a_minus_z", wave.weightedTotal_dba - wave.total_db));
        QVERIFY(v.isServed());
    }
    void verdictWithAMeter()
    {
        const Vector v("sound-12");
        const double limit_dba = audibilityLimits(AudibilityRule::bsGeneral, {40, {}}).value().least_dba;
        QCOMPARE(limit_dba, v.in("lim"));
        QVERIFY(v.agrees("margin", v.in("y") - limit_dba));
        QVERIFY(v.agrees("p_conform", conformanceProbability(v.in("y"), v.in("U") / 2, limit_dba, {}).value()));
        QVERIFY(v.agrees("accept_from", acceptanceLimits(v.in("U"), limit_dba, {}).value().passFrom.value()));
        QVERIFY(v.isServed());
        QVERIFY(judgeComputed(v.in("y"), v.in("U"), limit_dba, 120.0).value() == Conformity::undecided);
    }
};

QTEST_GUILESS_MAIN(SoundReference)
#include "sound.moc"
