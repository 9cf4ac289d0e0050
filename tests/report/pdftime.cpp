// SPDX-License-Identifier: GPL-3.0-or-later
// The forms are those of ISO 32000-1, 7.9.4 (from memory); the moments were worked out with `date -u -d`, a public
// test source: 2026-11-25T10:02:00+01:00 is second 1795597320.
#include "core/report/pdftime.h"

#include <QtTest>

using namespace proofwalk;

class PdfTimeTest : public QObject {
    Q_OBJECT

private slots:
    void oneMomentInThreeForms()
    {
        const base::WallClock there{1795597320250, 60};
        QCOMPARE(report::pdfTime(there), std::string("D:20261125100200+01'00'"));
        QCOMPARE(report::xmpTime(there), std::string("2026-11-25T10:02:00+01:00"));
        QCOMPARE(report::pdfTimeUtc(there), std::string("D:20261125090200Z"));
        QCOMPARE(report::pdfTime({1795597320000, -570}), std::string("D:20261124233200-09'30'"));
        QCOMPARE(report::xmpTime({1795597320000, 0}), std::string("2026-11-25T09:02:00+00:00"));
    }

    void readsBack()
    {
        const auto time = report::readPdfTimeUtc("D:20261125090200Z");
        QVERIFY(time);
        QCOMPARE(time->utc_ms, std::int64_t{1795597320000});
        QCOMPARE(time->offset_min, 0);
    }

    void otherForms()
    {
        for (const char* text : {"", "D:20261125090200", "D:20261125090200z", "D:20261125100200+01'00'",
                                 "20261125090200Z", "D:20261325090200Z", "D:20260230090200Z", "D:20261125240000Z",
                                 "D:2026112509020 Z", "D:20261125090260Z", "D:19691231235959Z"})
            QVERIFY2(!report::readPdfTimeUtc(text), text);
    }
};

QTEST_GUILESS_MAIN(PdfTimeTest)
#include "pdftime.moc"
