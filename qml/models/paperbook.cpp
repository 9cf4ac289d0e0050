// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/paperbook.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfDocument>
#include <QPdfSelection>

#include <algorithm>
#include <cmath>

namespace proofwalk::models {

/// Made, used and destroyed on the thread; the document must go before the bytes it reads.
struct PaperBook::Reader : QObject {
    std::unique_ptr<QBuffer> bytes;
    std::unique_ptr<QPdfDocument> document;

    std::vector<QSizeF> load(const std::string& pdf)
    {
        document.reset();
        bytes.reset();
        if (pdf.empty()) return {};
        bytes = std::make_unique<QBuffer>();
        bytes->setData(QByteArray(pdf.data(), static_cast<qsizetype>(pdf.size())));
        bytes->open(QIODevice::ReadOnly);
        document = std::make_unique<QPdfDocument>();
        document->load(bytes.get());
        std::vector<QSizeF> sizes;
        for (int page = 0; page < document->pageCount(); ++page) sizes.push_back(document->pagePointSize(page));
        return sizes;
    }

    Sheet draw(int page, int width_px)
    {
        if (document == nullptr || page < 0 || page >= document->pageCount()) return {};
        const QSizeF size = document->pagePointSize(page);
        if (size.isEmpty()) return {};
        const int height_px = static_cast<int>(std::lround(width_px * size.height() / size.width()));
        const QImage drawn = document->render(page, {width_px, height_px});
        // Paper is white; what the document leaves open would be black on a dark ground.
        QImage sheet(width_px, height_px, QImage::Format_RGB32);
        sheet.fill(Qt::white);
        QPainter(&sheet).drawImage(0, 0, drawn);
        return {sheet, document->getAllText(page).text()};
    }
};

PaperBook::PaperBook(QObject* parent) : QObject(parent), m_reader(std::make_unique<Reader>())
{
    m_thread.setObjectName(QStringLiteral("paper"));
    m_reader->moveToThread(&m_thread);
    m_thread.start();
}

PaperBook::~PaperBook()
{
    QMetaObject::invokeMethod(m_reader.get(), [this] { m_reader->load({}); }, Qt::BlockingQueuedConnection);
    m_thread.quit();
    m_thread.wait();
}

double PaperBook::ratio(int page) const
{
    constexpr double upright = 297.0 / 210; // ISO 216, A4
    if (page < 0 || page >= pages()) return upright;
    const QSizeF& size = m_sizes[static_cast<std::size_t>(page)];
    return size.isEmpty() ? upright : size.height() / size.width();
}

void PaperBook::show(std::string pdf)
{
    const int edition = ++m_edition;
    m_sizes.clear();
    Q_EMIT loaded();
    QMetaObject::invokeMethod(m_reader.get(), [this, edition, pdf = std::move(pdf)] {
        auto sizes = m_reader->load(pdf);
        QMetaObject::invokeMethod(this, [this, edition, sizes = std::move(sizes)] {
            if (edition != m_edition) return;
            m_sizes = sizes;
            Q_EMIT loaded();
        });
    });
}

void PaperBook::draw(int page, int width_px, QObject* context, std::function<void(const Sheet&)> drawn)
{
    QMetaObject::invokeMethod(m_reader.get(), [this, edition = m_edition, page, width_px,
                                               guard = QPointer<QObject>(context), drawn = std::move(drawn)] {
        Sheet sheet = m_reader->draw(page, width_px);
        QMetaObject::invokeMethod(this, [this, edition, guard, drawn, sheet = std::move(sheet)] {
            if (edition == m_edition && guard != nullptr) drawn(sheet);
        });
    });
}

} // namespace proofwalk::models
