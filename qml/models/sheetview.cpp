// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/sheetview.h"

#include <QPainter>
#include <QQuickWindow>

#include <cmath>

namespace proofwalk::models {

SheetView::SheetView(QQuickItem* parent) : QQuickPaintedItem(parent) { setOpaquePainting(false); }

void SheetView::setReport(ReportDesk* report)
{
    if (report == m_report) return;
    if (m_report != nullptr) disconnect(m_report, nullptr, this, nullptr);
    m_report = report;
    if (m_report != nullptr) connect(m_report, &ReportDesk::pagesChanged, this, &SheetView::ask);
    Q_EMIT reportChanged();
    ask();
}

void SheetView::setPage(int page)
{
    if (page == m_page) return;
    m_page = page;
    Q_EMIT pageChanged();
    ask();
}

double SheetView::ratio() const
{
    if (m_report == nullptr) return 297.0 / 210; // ISO 216, A4
    return m_report->paper().ratio(m_page);
}

void SheetView::geometryChange(const QRectF& now, const QRectF& before)
{
    QQuickPaintedItem::geometryChange(now, before);
    if (now.width() != before.width()) ask();
}

void SheetView::ask()
{
    m_sheet.words.clear();
    const bool there = m_report != nullptr && m_page < m_report->pages() && width() >= 1;
    if (!there) m_sheet.image = {};
    m_waiting = there;
    Q_EMIT drawn();
    update();
    if (!there) return;
    const double scale = window() == nullptr ? 1 : window()->effectiveDevicePixelRatio();
    const int width_px = static_cast<int>(std::lround(width() * scale));
    m_report->paper().draw(m_page, width_px, this, [this, page = m_page, width_px](const PaperBook::Sheet& sheet) {
        const double now = window() == nullptr ? 1 : window()->effectiveDevicePixelRatio();
        if (page != m_page || width_px != static_cast<int>(std::lround(width() * now))) return; // a newer one is coming
        m_sheet = sheet;
        m_waiting = false;
        Q_EMIT drawn();
        update();
    });
}

void SheetView::paint(QPainter* painter)
{
    if (m_sheet.image.isNull()) return;
    painter->setRenderHint(QPainter::SmoothPixmapTransform);
    painter->drawImage(QRectF(0, 0, width(), width() * ratio()), m_sheet.image);
}

} // namespace proofwalk::models
