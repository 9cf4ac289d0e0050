// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/models/duechoice.h"

#include "qml/parts/words.h"

#include <QDate>
#include <QLocale>

#include <array>

namespace proofwalk::models {
namespace {

constexpr std::array daysAhead{0, 7, 28};

QDate dayAhead(int choice) { return QDate::currentDate().addDays(daysAhead[static_cast<std::size_t>(choice)]); }

} // namespace

void DueChoice::setChoice(int choice)
{
    if (choice == m_choice || choice < Today || choice > Other) return;
    m_choice = choice;
    Q_EMIT changed();
}

void DueChoice::setOther(const QString& other)
{
    if (other == m_other) return;
    m_other = other;
    Q_EMIT changed();
}

QString DueChoice::day() const
{
    if (m_choice != Other) return dayAhead(m_choice).toString(Qt::ISODate);
    // Not Qt::ISODate, which passes over what stands behind the day.
    const QDate day = QDate::fromString(m_other.trimmed(), QStringLiteral("yyyy-MM-dd"));
    return day.isValid() ? day.toString(Qt::ISODate) : QString();
}

QString DueChoice::words() const
{
    const QDate date = QDate::fromString(day(), Qt::ISODate);
    if (!date.isValid()) return parts::phrase("window.due.which");
    const bool thisYear = date.year() == QDate::currentDate().year();
    return QLocale(QLocale::English)
        .toString(date, thisYear ? QStringLiteral("ddd d MMMM") : QStringLiteral("ddd d MMMM yyyy"));
}

QString DueChoice::problem() const
{
    if (m_choice != Other || m_other.trimmed().isEmpty() || !day().isEmpty()) return {};
    return parts::phrase("window.due.no-day", {{"example", example().toStdString()}});
}

QString DueChoice::example() const { return dayAhead(Week).toString(Qt::ISODate); }

QStringList DueChoice::choices() const
{
    return {parts::phrase("window.due.today"), parts::phrase("window.due.week"), parts::phrase("window.due.month"),
            parts::phrase("window.due.other")};
}

void DueChoice::take(const QString& day)
{
    m_choice = Other;
    m_other = day;
    for (int choice = Today; choice < Other; ++choice)
        if (dayAhead(choice).toString(Qt::ISODate) == day) m_choice = choice;
    if (day.isEmpty()) m_choice = Week;
    Q_EMIT changed();
}

} // namespace proofwalk::models
