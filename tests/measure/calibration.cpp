// SPDX-License-Identifier: GPL-3.0-or-later
// Days between two dates: by the calendar, worked beside each.
#include "core/measure/calibration.h"

#include "tests/measure/refusal.h"

using namespace proofwalk;
using measure::calibrationAge;
using proofwalk::tests::refused;

class TestCalibration : public QObject {
    Q_OBJECT

private slots:
    // 2024 is a leap year: 2024-02-28 to 2024-03-01 is two days, 2023 one; 2025-03-02 to 2026-03-02 is 365.
    void days()
    {
        QCOMPARE(calibrationAge("2024-02-28", "2024-03-01", 365).value().days, 2);
        QCOMPARE(calibrationAge("2023-02-28", "2023-03-01", 365).value().days, 1);
        QVERIFY(!calibrationAge("2025-03-02", "2026-03-02", 365).value().overdue);
        QVERIFY(calibrationAge("2025-03-02", "2026-03-03", 365).value().overdue);
        QCOMPARE(calibrationAge("2026-03-02", "2026-03-02", 1).value().days, 0);
    }
    void badInput()
    {
        QCOMPARE(refused(calibrationAge("2026-02-30", "2026-03-02", 365)), std::string("measure.not-a-day calibrated"));
        QCOMPARE(refused(calibrationAge("", "2026-03-02", 365)), std::string("measure.not-a-day calibrated"));
        QCOMPARE(refused(calibrationAge("2026-02-03", "yesterday", 365)), std::string("measure.not-a-day read_on"));
        QCOMPARE(refused(calibrationAge("2026-03-03", "2026-03-02", 365)), std::string("measure.calibrated-later"));
        QCOMPARE(refused(calibrationAge("2026-03-02", "2026-03-02", 0)),
                 std::string("measure.out-of-range interval_days"));
    }
};

QTEST_GUILESS_MAIN(TestCalibration)
#include "calibration.moc"
