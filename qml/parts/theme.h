// SPDX-License-Identifier: GPL-3.0-or-later
// Colours, sizes and typefaces of every part, for the look that is chosen. QML asks for them as Theme.NAME.
#pragma once

#include "qml/parts/tokens.h"

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

QT_BEGIN_NAMESPACE
class QJSEngine;
class QQmlEngine;
QT_END_NAMESPACE

namespace proofwalk::parts {

class Theme : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON

    Q_PROPERTY(Choice choice READ choice WRITE setChoice NOTIFY changed) ///< what the person chose; kept
    Q_PROPERTY(bool dark READ dark NOTIFY changed)
    Q_PROPERTY(bool highContrast READ highContrast NOTIFY changed) ///< no tints: marks and words alone

    Q_PROPERTY(QColor film READ film NOTIFY changed) ///< ground, the sheet under drawings, bars
    Q_PROPERTY(QColor paper READ paper NOTIFY changed) ///< a card, a room not yet walked
    Q_PROPERTY(QColor ink READ ink NOTIFY changed) ///< text, walls, tag plates
    Q_PROPERTY(QColor ink2 READ ink2 NOTIFY changed) ///< second text, the ring of what is to do
    Q_PROPERTY(QColor hair READ hair NOTIFY changed) ///< row rules: decoration only
    Q_PROPERTY(QColor here READ here NOTIFY changed) ///< where you stand: one room, row, cell, door
    Q_PROPERTY(QColor hereEdge READ hereEdge NOTIFY changed) ///< its edge
    Q_PROPERTY(QColor sign READ sign NOTIFY changed) ///< the place sign
    Q_PROPERTY(QColor signInk READ signInk NOTIFY changed) ///< words on it
    Q_PROPERTY(QColor openBg READ openBg NOTIFY changed) ///< the step in hand
    Q_PROPERTY(QColor band READ band NOTIFY changed) ///< caution, the display as found
    Q_PROPERTY(QColor bandInk READ bandInk NOTIFY changed) ///< words on it
    Q_PROPERTY(QColor pick READ pick NOTIFY changed) ///< what is chosen while planning
    Q_PROPERTY(QColor route READ route NOTIFY changed) ///< what you do: route, links, caret
    Q_PROPERTY(QColor routeBtn READ routeBtn NOTIFY changed) ///< a filled action
    Q_PROPERTY(QColor btnInk READ btnInk NOTIFY changed) ///< words on every filled button
    Q_PROPERTY(QColor done READ done NOTIFY changed) ///< finished, all pass; a doorway
    Q_PROPERTY(QColor failT READ failT NOTIFY changed) ///< pale fill of a failure
    Q_PROPERTY(QColor nrT READ nrT NOTIFY changed) ///< pale fill of no access and retest
    Q_PROPERTY(QColor undT READ undT NOTIFY changed) ///< pale fill of too close
    Q_PROPERTY(QColor passC READ passC NOTIFY changed) ///< pass
    Q_PROPERTY(QColor passInk READ passInk NOTIFY changed) ///< tick and glyph on passC
    Q_PROPERTY(QColor passBtn READ passBtn NOTIFY changed) ///< "as planned"
    Q_PROPERTY(QColor failC READ failC NOTIFY changed) ///< fail
    Q_PROPERTY(QColor failBtn READ failBtn NOTIFY changed) ///< "keep as finding"
    Q_PROPERTY(QColor undC READ undC NOTIFY changed) ///< too close: ring, jamb, hatch
    Q_PROPERTY(QColor undF READ undF NOTIFY changed) ///< too close: the half in the open
    Q_PROPERTY(QColor nrC READ nrC NOTIFY changed) ///< no access
    Q_PROPERTY(QColor runC READ runC NOTIFY changed) ///< running, retest, the ear

    // Type: Clear Sans for words, B612 Bold for tags, readings, counts and the words of filled buttons.
    Q_PROPERTY(QString words READ words CONSTANT)
    Q_PROPERTY(QString figures READ figures CONSTANT)
    Q_PROPERTY(int label READ label CONSTANT)   ///< captions, room names
    Q_PROPERTY(int text READ text CONSTANT)     ///< steps, rows
    Q_PROPERTY(int lead READ lead CONSTANT)     ///< the step in hand, row titles
    Q_PROPERTY(int head READ head CONSTANT)     ///< page title, tag, large button
    Q_PROPERTY(int figure READ figure CONSTANT) ///< reading

    // Space, in units; what is touched is at least `target` high, a verdict `verdict`.
    Q_PROPERTY(int margin READ margin CONSTANT)
    Q_PROPERTY(int gap READ gap CONSTANT)
    Q_PROPERTY(int target READ target CONSTANT)
    Q_PROPERTY(int verdict READ verdict CONSTANT)
    Q_PROPERTY(int radius READ radius CONSTANT)

public:
    enum Choice { System, Light, Dark, HighContrast };
    Q_ENUM(Choice)

    /// The one Theme of the program. Lives as long as the program.
    static Theme& instance();
    static Theme* create(QQmlEngine* engine, QJSEngine* script);

    Choice choice() const { return m_choice; }
    void setChoice(Choice choice);
    bool dark() const { return m_look == Look::Dark; }
    bool highContrast() const { return m_look == Look::HighContrast; }
    const Tokens& tokens() const { return *m_tokens; }

    QColor film() const { return m_tokens->film; }
    QColor paper() const { return m_tokens->paper; }
    QColor ink() const { return m_tokens->ink; }
    QColor ink2() const { return m_tokens->ink2; }
    QColor hair() const { return m_tokens->hair; }
    QColor here() const { return m_tokens->here; }
    QColor hereEdge() const { return m_tokens->hereEdge; }
    QColor sign() const { return m_tokens->sign; }
    QColor signInk() const { return m_tokens->signInk; }
    QColor openBg() const { return m_tokens->openBg; }
    QColor band() const { return m_tokens->band; }
    QColor bandInk() const { return m_tokens->bandInk; }
    QColor pick() const { return m_tokens->pick; }
    QColor route() const { return m_tokens->route; }
    QColor routeBtn() const { return m_tokens->routeBtn; }
    QColor btnInk() const { return m_tokens->btnInk; }
    QColor done() const { return m_tokens->done; }
    QColor failT() const { return m_tokens->failT; }
    QColor nrT() const { return m_tokens->nrT; }
    QColor undT() const { return m_tokens->undT; }
    QColor passC() const { return m_tokens->passC; }
    QColor passInk() const { return m_tokens->passInk; }
    QColor passBtn() const { return m_tokens->passBtn; }
    QColor failC() const { return m_tokens->failC; }
    QColor failBtn() const { return m_tokens->failBtn; }
    QColor undC() const { return m_tokens->undC; }
    QColor undF() const { return m_tokens->undF; }
    QColor nrC() const { return m_tokens->nrC; }
    QColor runC() const { return m_tokens->runC; }

    QString words() const { return QStringLiteral("Clear Sans"); }
    QString figures() const { return QStringLiteral("B612"); }
    int label() const { return 13; }
    int text() const { return 15; }
    int lead() const { return 18; }
    int head() const { return 24; }
    int figure() const { return 40; }
    int margin() const { return 16; }
    int gap() const { return 8; }
    int target() const { return 48; }
    int verdict() const { return 64; }
    int radius() const { return 4; }

Q_SIGNALS:
    void changed();

private:
    Theme();
    bool eventFilter(QObject* watched, QEvent* event) override;
    void follow();

    Choice m_choice = System;
    Look m_look = Look::Light;
    const Tokens* m_tokens;
};

} // namespace proofwalk::parts
