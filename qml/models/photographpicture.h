// SPDX-License-Identifier: GPL-3.0-or-later
// A photograph of the job by its hash, or one of a folder by its path. Fetched and decoded on the job's thread; until
// then its place is empty.
#pragma once

#include <QImage>
#include <QQuickPaintedItem>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace proofwalk::models {

class PhotographPicture : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString hash READ hash WRITE setHash NOTIFY sourceChanged)
    Q_PROPERTY(QString file READ file WRITE setFile NOTIFY sourceChanged)
    Q_PROPERTY(bool whole READ whole WRITE setWhole NOTIFY sourceChanged) ///< shown whole; otherwise it fills its place
    Q_PROPERTY(QString problem READ problem NOTIFY loaded) ///< why it cannot be shown
    Q_PROPERTY(double aspect READ aspect NOTIFY loaded) ///< width by height; 1.5 until it is there

public:
    explicit PhotographPicture(QQuickItem* parent = nullptr);
    QString hash() const { return m_hash; }
    void setHash(const QString& hash);
    QString file() const { return m_file; }
    void setFile(const QString& file);
    bool whole() const { return m_whole; }
    void setWhole(bool whole);
    QString problem() const { return m_problem; }
    double aspect() const;

    void paint(QPainter* painter) override;

Q_SIGNALS:
    void sourceChanged();
    void loaded();

private:
    void load();
    void take(QImage image, QString problem);

    QString m_hash, m_file, m_problem;
    bool m_whole = false;
    QImage m_image;
};

} // namespace proofwalk::models
