// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: geometry, law of reflection, definition of optical density, the obscuration formula of UL 268 and EN 54-7;
// each beside its vector in measure-vectors.json. Tolerance: that of the vector.
#include "core/measure/beam.h"
#include "core/measure/motion.h"
#include "tests/reference/vectors.h"

using namespace proofwalk;
using namespace proofwalk::measure;
using proofwalk::reference::Vector;

class OpticsReference : public QObject {
    Q_OBJECT

private slots:
    void spreadAndAim()
    {
        const Vector v("optics-01");
        QVERIFY(v.agrees("diameter", spotDiameter_m(v.in("L"), v.in("th")).value()));
        QVERIFY(v.agrees("offset", aimOffset_m(v.in("L"), v.in("de")).value()));
        QVERIFY(v.isServed());
        const Vector w("optics-02");
        QVERIFY(w.agrees("offset_at_receiver", mirrorOffset_m(w.in("L"), w.in("ti")).value()));
        QVERIFY(w.agrees("path", 2 * w.in("L"))); // there and back
        QVERIFY(w.isServed());
    }
    void losses()
    {
        const Vector v("optics-03");
        const auto distances_m = v.ins("distances_m");
        const auto obscurations_pct = v.ins("obscuration_percent");
        QVERIFY(v.agrees("db_60_40", spreadLoss_db(distances_m[0], distances_m[1]).value()));
        QVERIFY(v.agrees("db_90", filterLoss_db(obscurations_pct[0]).value()));
        QVERIFY(v.agrees("db_75", filterLoss_db(obscurations_pct[1]).value()));
        QVERIFY(v.isServed());
    }
    void smoke()
    {
        const Vector v("optics-04");
        const auto found = obscurationPerLength(v.in("o"), v.in("L")).value();
        QVERIFY(v.agrees("percent_per_m", found.perMetre_pct));
        QVERIFY(v.agrees("percent_per_ft", found.perFoot_pct));
        QVERIFY(v.agrees("od_per_m", found.density_per_m));
        QVERIFY(v.agrees("db_per_m", found.loss_db_per_m));
        QVERIFY(v.isServed());
    }
    void walkers()
    {
        const Vector v("optics-05");
        QVERIFY(v.agrees("pitch_m", zonePitch_m(v.in("r"), v.in("p")).value()));
        QVERIFY(v.agrees("hz_1", crossingFrequency_hz({1.0, v.in("r"), 90}, v.in("p")).value()));
        QVERIFY(v.agrees("hz_03", crossingFrequency_hz({0.3, v.in("r"), 90}, v.in("p")).value()));
        QVERIFY(v.agrees("deg_per_s", crossing({1.0, v.in("r"), 90}).value().angular_deg_per_s));
        QVERIFY(v.isServed());
        const Vector w("optics-06");
        const auto found = crossing({w.in("v"), w.in("r"), w.in("b")}).value();
        QVERIFY(w.agrees("vt", found.across_m_per_s));
        QVERIFY(w.agrees("vr", found.along_m_per_s));
        QVERIFY(w.agrees("deg_per_s", found.angular_deg_per_s));
        QVERIFY(w.isServed());
    }
    void mounting()
    {
        const Vector v("optics-07");
        QVERIFY(v.agrees("floor", zoneReach_m(v.in("h"), v.in("t")).value()));
        QVERIFY(v.agrees("target", zoneReach_m(v.in("h"), v.in("t"), 0.4).value()));
        QVERIFY(v.isServed());
    }
};

QTEST_GUILESS_MAIN(OpticsReference)
#include "optics.moc"
