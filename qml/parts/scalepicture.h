// SPDX-License-Identifier: GPL-3.0-or-later
// The large scale of a reading: walls with what lies behind them, the doorway, the reading on its whisker.
#pragma once

#include "core/report/scale.h"

#include "qml/parts/readingscale.h"

namespace proofwalk::parts {

class ScalePicture : public proofwalk::parts::ReadingScale {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(double setPoint READ setPoint WRITE setSetPoint NOTIFY numbersChanged) ///< dashed; NaN: absent
    Q_PROPERTY(QString lowerText READ lowerText WRITE setLowerText NOTIFY wordsChanged) ///< "3.0", under its jamb
    Q_PROPERTY(QString upperText READ upperText WRITE setUpperText NOTIFY wordsChanged)
    Q_PROPERTY(QString lowerWord READ lowerWord WRITE setLowerWord NOTIFY wordsChanged) ///< "too cold to alarm"
    Q_PROPERTY(QString upperWord READ upperWord WRITE setUpperWord NOTIFY wordsChanged)
    Q_PROPERTY(QString valueText READ valueText WRITE setValueText NOTIFY wordsChanged) ///< over the reading

public:
    explicit ScalePicture(QQuickItem* parent = nullptr);
    double setPoint() const { return m_setPoint; }
    void setSetPoint(double setPoint) { keep(m_setPoint, setPoint); }
    QString lowerText() const { return m_lowerText; }
    void setLowerText(const QString& text) { keepWords(m_lowerText, text); }
    QString upperText() const { return m_upperText; }
    void setUpperText(const QString& text) { keepWords(m_upperText, text); }
    QString lowerWord() const { return m_lowerWord; }
    void setLowerWord(const QString& text) { keepWords(m_lowerWord, text); }
    QString upperWord() const { return m_upperWord; }
    void setUpperWord(const QString& text) { keepWords(m_upperWord, text); }
    QString valueText() const { return m_valueText; }
    void setValueText(const QString& text) { keepWords(m_valueText, text); }

    /// Where a number stands, in units from the left edge.
    Q_INVOKABLE double xOf(double number) const;

Q_SIGNALS:
    void wordsChanged();

protected:
    void draw(report::Drawing& drawing) override;
    void geometryChange(const QRectF& now, const QRectF& before) override;

private:
    /// Where the parts stand, from the top.
    struct Layout {
        QStringList lowerLines, upperLines;
        double valueBase = 0; ///< baseline of the value's figure; 0: not shown
        double wordsBase = 0; ///< baseline of the first line of words
        QRectF band;
        double bottom = 0;
    };
    Layout layOut() const;
    void keepWords(QString& kept, const QString& text);
    void fitHeight();
    void drawBand(report::Drawing& drawing, const Layout& layout, const report::Scale& scale) const;
    void drawReading(report::Drawing& drawing, const Layout& layout, const report::Scale& scale) const;
    void drawFigures(report::Drawing& drawing, const Layout& layout) const;

    double m_setPoint = absent;
    QString m_lowerText, m_upperText, m_lowerWord, m_upperWord, m_valueText;
};

} // namespace proofwalk::parts
