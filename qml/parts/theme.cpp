// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/theme.h"

#include <QEvent>
#include <QGuiApplication>
#include <QJSEngine>
#include <QPalette>
#include <QSettings>

namespace proofwalk::parts {
namespace {

constexpr auto settingsKey = "look";

/// Without a word from the platform (Qt 6.4 has none) its palette tells: light words on a darker window.
bool systemIsDark()
{
    const QPalette palette = QGuiApplication::palette();
    return palette.color(QPalette::WindowText).lightness() > palette.color(QPalette::Window).lightness();
}

} // namespace

Theme& Theme::instance()
{
    static Theme theme;
    return theme;
}

Theme* Theme::create(QQmlEngine*, QJSEngine*)
{
    QJSEngine::setObjectOwnership(&instance(), QJSEngine::CppOwnership);
    return &instance();
}

Theme::Theme() : m_tokens(&tokensOf(Look::Light))
{
    bool known = false;
    const int kept = QSettings().value(settingsKey).toInt(&known);
    if (known && kept >= System && kept <= HighContrast) m_choice = static_cast<Choice>(kept);
    qApp->installEventFilter(this);
    follow();
}

void Theme::setChoice(Choice choice)
{
    if (choice == m_choice) return;
    m_choice = choice;
    QSettings().setValue(settingsKey, static_cast<int>(choice));
    follow();
}

bool Theme::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::ApplicationPaletteChange) follow();
    return QObject::eventFilter(watched, event);
}

void Theme::follow()
{
    m_look = m_choice == Dark         ? Look::Dark
           : m_choice == HighContrast ? Look::HighContrast
           : m_choice == Light        ? Look::Light
           : systemIsDark()           ? Look::Dark
                                      : Look::Light;
    m_tokens = &tokensOf(m_look);
    Q_EMIT changed();
}

} // namespace proofwalk::parts
