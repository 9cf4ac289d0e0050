// SPDX-License-Identifier: GPL-3.0-or-later
// The sentences of core/words for QML: Words.of("window.as-planned").
#pragma once

#include "core/words/words.h"

#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

QT_BEGIN_NAMESPACE
class QJSEngine;
class QQmlEngine;
QT_END_NAMESPACE

namespace proofwalk::parts {

/// The book the window speaks from; set once, before any QML is loaded.
void speakFrom(words::Book book);
const words::Book& book();

/// A phrase by its code, with its arguments, as Qt has texts.
QString phrase(std::string_view code, const std::vector<Argument>& arguments = {});

class Words : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON

public:
    explicit Words(QObject* parent = nullptr) : QObject(parent) {}

    /// The phrase of that code; the code itself if it has none (a test fails on that).
    Q_INVOKABLE QString of(const QString& code) const;
    /// With one place filled: Words.with("window.next-is", "tag", "GR-01").
    Q_INVOKABLE QString with(const QString& code, const QString& place, const QString& value) const;
    /// With two.
    Q_INVOKABLE QString with(const QString& code, const QString& place, const QString& value, const QString& place2,
                             const QString& value2) const;
    /// All that are not empty as one text: Words.join("window.join.list", [tag, title]) is "GR-01, front door". The code
    /// names what stands between two of them: a phrase with places for "one" and "next".
    Q_INVOKABLE QString join(const QString& code, const QStringList& words) const;
};

} // namespace proofwalk::parts
