// SPDX-License-Identifier: GPL-3.0-or-later
// The sentences of core/words for QML: Words.of("window.as-planned").
#pragma once

#include "core/words/words.h"

#include <QObject>
#include <QString>
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
};

} // namespace proofwalk::parts
