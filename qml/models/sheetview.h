// SPDX-License-Identifier: GPL-3.0-or-later
// One page of the report on the screen, as wide as the item. The page is drawn elsewhere (PaperBook); here it is shown.
#pragma once

#include "qml/models/reportdesk.h"

#include <QImage>
#include <QQuickPaintedItem>

namespace proofwalk::models {

class SheetView : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(proofwalk::models::ReportDesk* report READ report WRITE setReport NOTIFY reportChanged)
    Q_PROPERTY(int page READ page WRITE setPage NOTIFY pageChanged) ///< from 0
    Q_PROPERTY(double ratio READ ratio NOTIFY drawn) ///< height over width of the page
    Q_PROPERTY(QString words READ words NOTIFY drawn) ///< what is written on it
    Q_PROPERTY(bool waiting READ waiting NOTIFY drawn) ///< the page is being drawn

public:
    explicit SheetView(QQuickItem* parent = nullptr);
    ReportDesk* report() const { return m_report; }
    void setReport(ReportDesk* report);
    int page() const { return m_page; }
    void setPage(int page);
    double ratio() const;
    QString words() const { return m_sheet.words; }
    bool waiting() const { return m_waiting; }
    void paint(QPainter* painter) override;

Q_SIGNALS:
    void reportChanged();
    void pageChanged();
    void drawn();

protected:
    void geometryChange(const QRectF& now, const QRectF& before) override;

private:
    void ask();

    QPointer<ReportDesk> m_report;
    PaperBook::Sheet m_sheet;
    int m_page = 0;
    bool m_waiting = false;
};

} // namespace proofwalk::models
