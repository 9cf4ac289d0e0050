// SPDX-License-Identifier: GPL-3.0-or-later
// A PDF being looked at: read and drawn by a thread of its own, so that neither the window nor the job waits for it.
#pragma once

#include <QImage>
#include <QObject>
#include <QPointer>
#include <QSizeF>
#include <QString>
#include <QThread>

#include <functional>
#include <memory>
#include <string>
#include <vector>

QT_BEGIN_NAMESPACE
class QBuffer;
class QPdfDocument;
QT_END_NAMESPACE

namespace proofwalk::models {

class PaperBook : public QObject {
    Q_OBJECT

public:
    explicit PaperBook(QObject* parent = nullptr);
    ~PaperBook() override;
    PaperBook(const PaperBook&) = delete;
    PaperBook& operator=(const PaperBook&) = delete;
    PaperBook(PaperBook&&) = delete;
    PaperBook& operator=(PaperBook&&) = delete;

    /// Takes another document, given as its bytes; loaded() follows. Empty bytes: none.
    void show(std::string pdf);
    int pages() const { return static_cast<int>(m_sizes.size()); }
    /// Height over width of a page, numbered from 0; of A4 upright if there is no such page.
    double ratio(int page) const;

    struct Sheet {
        QImage image;
        QString words; ///< what is written on it, for those who cannot see it
    };
    /// Draws a page so many pixels wide; `drawn` is called here if `context` is still there and the document the same.
    void draw(int page, int width_px, QObject* context, std::function<void(const Sheet&)> drawn);

Q_SIGNALS:
    void loaded();

private:
    struct Reader; ///< lives on the thread

    QThread m_thread;
    std::unique_ptr<Reader> m_reader;
    std::vector<QSizeF> m_sizes;
    int m_edition = 0; ///< counts documents, so that a late page of the last one is not shown
};

} // namespace proofwalk::models
