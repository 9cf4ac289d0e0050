// SPDX-License-Identifier: GPL-3.0-or-later
// Source: IEC 60063:2015, Tables 1 and 2, as kept in preferred-values.csv with the basis of each row (E12 and E24 from
// memory; E96 recomputed with a general tool by the standard's rule). Nothing there was made by the code under test.
#include "core/measure/eseries.h"
#include "core/base/csv.h"
#include "core/base/file.h"

#include <QtTest>

#include <set>

using namespace proofwalk;
using measure::Series;

class PreferredValues : public QObject {
    Q_OBJECT

private slots:
    void agreeWithTheTable_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<int>("series");
        QTest::addColumn<int>("count");
        QTest::newRow("E12") << "E12" << static_cast<int>(Series::E12) << 12;
        QTest::newRow("E24") << "E24" << static_cast<int>(Series::E24) << 24;
        QTest::newRow("E96") << "E96" << static_cast<int>(Series::E96) << 96;
    }
    // Every three-digit number from 1.00 to 9.99 is asked: in the table or not.
    void agreeWithTheTable()
    {
        QFETCH(QString, name);
        QFETCH(int, series);
        QFETCH(int, count);
        const auto bytes = base::readFile(PROOFWALK_SOURCE "/tests/reference/preferred-values.csv").value();
        std::set<std::int64_t> hundredths;
        const auto table = base::readCsv(bytes, "preferred-values.csv").value();
        for (const auto& row : table.rows)
            if (row.cells[1] == name.toStdString()) {
                auto value = base::parseDecimal(row.cells[3]).value();
                for (; value.exponent > -2; --value.exponent) value.mantissa *= 10;
                hundredths.insert(value.mantissa);
            }
        QCOMPARE(static_cast<int>(hundredths.size()), count);
        for (std::int64_t m = 100; m < 1000; ++m)
            for (const int exponent : {-2, 0, 1, 4})
                QCOMPARE(measure::isPreferredValue({m, exponent}, static_cast<Series>(series)), hundredths.contains(m));
    }
};

QTEST_GUILESS_MAIN(PreferredValues)
#include "eseries.moc"
