// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/photographpicture.h"

#include "qml/models/desk.h"
#include "qml/models/telling.h"
#include "qml/parts/theme.h"
#include "qml/parts/words.h"

#include <QBuffer>
#include <QImageReader>
#include <QPainter>

#include <memory>

namespace proofwalk::models {
namespace {

constexpr int longestSide = 1600; ///< as the journal keeps them: nothing larger is held in memory

struct Loaded {
    QImage image;
    QString problem;
};

Loaded decode(QImageReader& reader)
{
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (size.width() > longestSide || size.height() > longestSide)
        reader.setScaledSize(size.scaled(longestSide, longestSide, Qt::KeepAspectRatio));
    Loaded loaded{reader.read(), {}};
    if (loaded.image.isNull()) loaded.problem = parts::phrase("window.pictures.undrawable");
    return loaded;
}

Loaded fetch(const walk::Job& job, const std::string& hash)
{
    auto bytes = job.photograph(hash);
    if (!bytes) return {{}, sentence(bytes.error())};
    QByteArray kept = QByteArray::fromStdString(*bytes);
    QBuffer buffer(&kept);
    QImageReader reader(&buffer);
    return decode(reader);
}

} // namespace

PhotographPicture::PhotographPicture(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    connect(&parts::Theme::instance(), &parts::Theme::changed, this, [this] { update(); });
}

double PhotographPicture::aspect() const
{
    return m_image.isNull() || m_image.height() == 0 ? 1.5 : double(m_image.width()) / m_image.height();
}

void PhotographPicture::setHash(const QString& hash)
{
    if (hash == m_hash) return;
    m_hash = hash;
    Q_EMIT sourceChanged();
    load();
}

void PhotographPicture::setFile(const QString& file)
{
    if (file == m_file) return;
    m_file = file;
    Q_EMIT sourceChanged();
    load();
}

void PhotographPicture::setWhole(bool whole)
{
    if (whole == m_whole) return;
    m_whole = whole;
    Q_EMIT sourceChanged();
    update();
}

void PhotographPicture::load()
{
    take({}, {});
    if (!m_hash.isEmpty()) {
        Desk::instance().ask<Loaded>(
            this, [hash = m_hash.toStdString()](walk::Job& job) { return fetch(job, hash); },
            [this, hash = m_hash](Loaded loaded) {
                if (hash == m_hash) take(std::move(loaded.image), std::move(loaded.problem));
            });
    } else if (!m_file.isEmpty()) {
        auto loaded = std::make_shared<Loaded>();
        Desk::instance().aside(
            [file = m_file, loaded] {
                QImageReader reader(file);
                *loaded = decode(reader);
            },
            this,
            [this, file = m_file, loaded] {
                if (file == m_file) take(std::move(loaded->image), std::move(loaded->problem));
            });
    }
}

void PhotographPicture::take(QImage image, QString problem)
{
    m_image = std::move(image);
    m_problem = std::move(problem);
    Q_EMIT loaded();
    update();
}

void PhotographPicture::paint(QPainter* painter)
{
    const QRectF place(0, 0, width(), height());
    painter->fillRect(place, parts::Theme::instance().hair());
    if (m_image.isNull()) return;
    painter->setRenderHint(QPainter::SmoothPixmapTransform);
    QSizeF size = m_image.size();
    size.scale(place.size(), m_whole ? Qt::KeepAspectRatio : Qt::KeepAspectRatioByExpanding);
    QRectF target(QPointF(), size);
    target.moveCenter(place.center());
    painter->setClipRect(place);
    painter->drawImage(target, m_image);
}

} // namespace proofwalk::models
