// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/words.h"

namespace proofwalk::parts {
namespace {

words::Book& spoken()
{
    static words::Book book;
    return book;
}

} // namespace

void speakFrom(words::Book book) { spoken() = std::move(book); }

const words::Book& book() { return spoken(); }

QString phrase(std::string_view code, const std::vector<Argument>& arguments)
{
    return QString::fromStdString(spoken().phrase(code, arguments));
}

QString Words::of(const QString& code) const { return phrase(code.toStdString()); }

QString Words::with(const QString& code, const QString& place, const QString& value) const
{
    return phrase(code.toStdString(), {{place.toStdString(), value.toStdString()}});
}

QString Words::with(const QString& code, const QString& place, const QString& value, const QString& place2,
                    const QString& value2) const
{
    return phrase(code.toStdString(),
                  {{place.toStdString(), value.toStdString()}, {place2.toStdString(), value2.toStdString()}});
}

QString Words::join(const QString& code, const QStringList& words) const
{
    QString joined;
    for (const QString& next : words) {
        if (next.isEmpty()) continue;
        joined = joined.isEmpty() ? next : with(code, QStringLiteral("one"), joined, QStringLiteral("next"), next);
    }
    return joined;
}

} // namespace proofwalk::parts
