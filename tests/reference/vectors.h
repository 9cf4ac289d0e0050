// SPDX-License-Identifier: GPL-3.0-or-later
// Worked values with their sources, from tests/reference/measure-vectors.json. Each was computed by two general
// tools (Python with SciPy, and R) from the expressions in its field "how"; none by the code under test.
#pragma once

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QtTest>

namespace proofwalk::reference {

/// One worked value: inputs and results by the letters of its source.
class Vector {
public:
    /// Ends the test program if there is no such vector: the file is part of the test.
    explicit Vector(const QString& id)
    {
        QFile file(PROOFWALK_SOURCE "/tests/reference/measure-vectors.json");
        if (!file.open(QIODevice::ReadOnly)) qFatal("cannot open the vectors");
        for (const auto& each : QJsonDocument::fromJson(file.readAll()).array())
            if (each.toObject()["id"] == id) m_entry = each.toObject();
        if (m_entry.isEmpty()) qFatal("no vector %s", qPrintable(id));
    }
    double in(const QString& letter) const { return number(m_entry["inputs"].toObject(), letter); }
    double out(const QString& letter) const { return number(m_entry["expected"].toObject(), letter); }

    /// Whether the value agrees to the vector's own tolerance (relative or absolute, whichever is wider).
    bool agrees(const QString& letter, double value) const
    {
        const QJsonObject tolerance = m_entry["tolerance"].toObject();
        const double wanted = out(letter);
        const double room = std::max(number(tolerance, "absolute"), number(tolerance, "relative") * std::fabs(wanted));
        if (std::fabs(value - wanted) <= room) return true;
        qWarning("%s: %.15g, wanted %.15g", qPrintable(letter), value, wanted);
        return false;
    }

private:
    static double number(const QJsonObject& object, const QString& key)
    {
        if (!object[key].isDouble()) qFatal("no number %s", qPrintable(key));
        return object[key].toDouble();
    }
    QJsonObject m_entry;
};

} // namespace proofwalk::reference
