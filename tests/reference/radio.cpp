// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: ITU-R P.525, ITU-R P.1238 (editions before and from 10; partly from memory, as each vector says),
// definitions of the units; each beside its vector in measure-vectors.json. Tolerance: that of the vector.
#include "core/measure/indoor.h"
#include "core/measure/radiolevel.h"
#include "tests/reference/vectors.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::reference::Vector;

class RadioReference : public QObject {
    Q_OBJECT

private slots:
    void freeSpace()
    {
        const Vector v("radio-01");
        const char* letters[] = {"a", "b", "g"};
        for (int i = 0; i < v.rowCount("cases"); ++i) {
            const auto one = v.row("cases", i); // MHz, m
            QVERIFY(v.agrees(letters[i], freeSpaceLoss_db(one[0], one[1]).value()));
        }
        QVERIFY(v.agrees("const_km_mhz", freeSpaceLoss_db(1, 1000).value()));
        QVERIFY(v.isServed());
    }
    void indoorBeforeEditionTen()
    {
        const Vector v("radio-02");
        const auto loss = [&](Building building) {
            return indoorLoss_db(building, v.in("f"), v.in("d"), static_cast<int>(v.in("floors"))).value();
        };
        QVERIFY(v.agrees("office", loss(Building::office)));
        QVERIFY(v.agrees("residential", loss(Building::residential)));
        QVERIFY(v.agrees("commercial", loss(Building::commercial)));
        QVERIFY(v.isServed());
        // The coefficients are the table's, too.
        const QJsonObject n = v.inputs()["n"].toObject();
        QCOMPARE(indoorCoefficients(Building::office, v.in("f"), 0).value().decadeLoss_db, n["office"].toDouble());
        QCOMPARE(indoorCoefficients(Building::residential, v.in("f"), 0).value().decadeLoss_db,
                 n["residential"].toDouble());
        QCOMPARE(indoorCoefficients(Building::commercial, v.in("f"), 0).value().decadeLoss_db,
                 n["commercial"].toDouble());
    }
    void indoorOfficeAt900()
    {
        const Vector v("radio-03");
        const double loss_db = indoorLoss_db(Building::office, v.in("f"), v.in("d"), 1).value();
        QVERIFY(v.agrees("loss", loss_db));
        QVERIFY(v.agrees("excess_over_free_space", loss_db - freeSpaceLoss_db(v.in("f"), v.in("d")).value()));
        QVERIFY(v.isServed());
        const auto found = indoorCoefficients(Building::office, v.in("f"), 1).value();
        QCOMPARE(found.decadeLoss_db, v.in("n"));
        QCOMPARE(found.floorLoss_db, v.in("floor_loss_db"));

        const Vector w("radio-11"); // from memory
        std::vector<double> losses_db;
        for (const double floors : w.ins("floors"))
            losses_db.push_back(
                indoorCoefficients(Building::office, 900, static_cast<int>(floors)).value().floorLoss_db);
        QVERIFY(w.agrees("loss_db", losses_db));
        QVERIFY(w.agrees("n_office", indoorCoefficients(Building::office, 900, 0).value().decadeLoss_db));
        QVERIFY(w.agrees("n_commercial", indoorCoefficients(Building::commercial, 900, 0).value().decadeLoss_db));
        QVERIFY(w.isServed());
    }
    void indoorFromEditionTen()
    {
        const Vector v("radio-04");
        const Surroundings& row = *surroundings("office-not-in-sight");
        QCOMPARE(row.a, v.in("al"));
        QCOMPARE(row.b, v.in("be"));
        QCOMPARE(row.g, v.in("ga"));
        QCOMPARE(row.deviation_db, v.in("si"));
        const auto found = indoorPrediction(row, v.in("f"), v.in("d")).value();
        QVERIFY(v.agrees("median", found.median_db));
        QVERIFY(v.agrees("p95", found.median_db + shadowingMargin_db(v.in("probability"), found.deviation_db).value()));
        // At 1 m and 1 GHz both logarithms are zero; nearer than 2 m the row itself is not claimed.
        QVERIFY(v.agrees("los_1m_1ghz", surroundings("office-in-sight")->b));
        QVERIFY(v.isServed());
    }
    void units()
    {
        const Vector v("radio-05");
        QVERIFY(v.agrees("dbuv", dbuvOfDbm(v.in("p")).value()));
        QVERIFY(v.agrees("uv", microvoltsOfDbuv(dbuvOfDbm(v.in("p")).value()).value()));
        QVERIFY(v.agrees("dbm", dbmOfDbuv(v.in("u")).value()));
        QVERIFY(v.isServed());
    }
    void field()
    {
        const Vector v("radio-06");
        const double eirp_dbm = eirpOfErp_dbm(v.in("erp")).value();
        QVERIFY(v.agrees("eirp", eirp_dbm));
        QVERIFY(v.agrees("e_dbuv_m", freeSpaceField_dbuv(eirp_dbm, v.in("d")).value()));
        QVERIFY(v.isServed());
    }
    void margin()
    {
        const Vector v("radio-07");
        const auto found = linkMargin({.eirp_dbm = v.in("p"),
                                       .loss_db = v.in("l"),
                                       .sensitivity_dbm = v.in("s"),
                                       .demanded_db = v.in("need")})
                               .value();
        QVERIFY(v.agrees("rx", found.received_dbm));
        QVERIFY(v.agrees("margin", found.margin_db));
        QVERIFY(v.agrees("spare", found.spare_db));
        QVERIFY(v.isServed());
    }
    void fading()
    {
        const Vector v("radio-08");
        const auto availability = v.ins("availability");
        QVERIFY(v.agrees("m90", rayleighMargin_db(availability[0]).value()));
        QVERIFY(v.agrees("m99", rayleighMargin_db(availability[1]).value()));
        QVERIFY(v.agrees("m999", rayleighMargin_db(availability[2]).value()));
        QVERIFY(v.agrees("ln95", shadowingMargin_db(v.in("lognormal_probability"), v.in("s")).value()));
        QVERIFY(v.isServed());
    }
    void meanOfReadings()
    {
        const Vector v("radio-09");
        const std::vector<double> all{v.in("a"), v.in("b"), v.in("c")};
        QVERIFY(v.agrees("power_mean", meanPower_dbm(all).value()));
        // The blunder, by hand: what our mean must not be.
        QVERIFY(v.agrees("db_mean", (all[0] + all[1] + all[2]) / 3));
        QVERIFY(meanPower_dbm(all).value() > v.out("db_mean") + 5);
        QVERIFY(v.isServed());
    }
    void rangeLeft()
    {
        const Vector v("radio-10");
        for (const double n : v.ins("n")) QVERIFY(v.agrees(QString("n%1").arg(n), rangeFactor(v.in("m"), n).value()));
        QVERIFY(v.isServed());
    }
    void ruleOfThumb()
    {
        const Vector v("radio-12"); // common practice
        QVERIFY(v.agrees("margin_db", std::vector<double>{leastLinkMargin_db, wishedLinkMargin_db}));
        QVERIFY(v.isServed());
        QCOMPARE(Link().demanded_db, leastLinkMargin_db);
    }
};

QTEST_GUILESS_MAIN(RadioReference)
#include "radio.moc"
