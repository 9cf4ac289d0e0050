// SPDX-License-Identifier: GPL-3.0-or-later
// Worked values with their sources, from tests/reference/measure-vectors.json. Each was met in print or computed by two
// general tools (Python with SciPy, and R) from the expressions in its field "how"; none by the code under test.
#pragma once

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSet>
#include <QtTest>

#include <vector>

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
    double in(const QString& letter) const { return number(inputs(), letter); }
    double out(const QString& letter) const { return number(expected(), letter); }
    /// A list of numbers: "rows" of numbers are asked for with row().
    std::vector<double> ins(const QString& letter) const { return numbers(inputs()[letter]); }
    std::vector<double> outs(const QString& letter) const { return numbers(expected()[letter]); }
    std::vector<double> row(const QString& letter, int at) const { return numbers(rows(letter)[at]); }
    int rowCount(const QString& letter) const { return static_cast<int>(rows(letter).size()); }
    /// Whatever else stands there: words, objects, lists of lists.
    QJsonObject inputs() const { return m_entry["inputs"].toObject(); }
    QJsonObject expected() const { return m_entry["expected"].toObject(); }

    /// Whether the value agrees to the vector's own tolerance (relative or absolute, whichever is wider).
    bool agrees(const QString& letter, double value) const
    {
        m_asked.insert(letter);
        return near(letter, out(letter), value);
    }
    /// The same for a list, number by number.
    bool agrees(const QString& letter, const std::vector<double>& values) const
    {
        m_asked.insert(letter);
        const std::vector<double> wanted = outs(letter);
        bool all = values.size() == wanted.size();
        if (!all) tell(letter, static_cast<double>(values.size()), static_cast<double>(wanted.size()));
        for (std::size_t i = 0; all && i < wanted.size(); ++i) all = near(letter, wanted[i], values[i]);
        return all;
    }
    /// For a table, whose cells are compared where they are made.
    double absoluteTolerance() const { return room("absolute", {}); }
    /// For a word, a truth or a list of words.
    bool says(const QString& letter, const QJsonValue& value) const
    {
        m_asked.insert(letter);
        if (expected()[letter] == value) return true;
        qWarning() << letter << value << "wanted" << expected()[letter] << qPrintable(m_entry["source"].toString());
        return false;
    }
    /// Whether every result of the vector was asked for: the last line of its test.
    bool isServed() const
    {
        for (const QString& letter : expected().keys())
            if (!m_asked.contains(letter)) {
                qWarning("%s was not asked for", qPrintable(letter));
                return false;
            }
        return true;
    }

private:
    static double number(const QJsonObject& object, const QString& key)
    {
        if (!object[key].isDouble()) qFatal("no number %s", qPrintable(key));
        return object[key].toDouble();
    }
    static std::vector<double> numbers(const QJsonValue& value)
    {
        if (!value.isArray()) qFatal("no list");
        std::vector<double> all;
        for (const auto& each : value.toArray()) {
            if (!each.isDouble()) qFatal("a list that holds more than numbers");
            all.push_back(each.toDouble());
        }
        return all;
    }
    QJsonArray rows(const QString& letter) const
    {
        const auto found = inputs().contains(letter) ? inputs()[letter] : expected()[letter];
        if (!found.isArray()) qFatal("no rows %s", qPrintable(letter));
        return found.toArray();
    }
    /// A tolerance is one number for all results, or one for each.
    double room(const QString& kind, const QString& letter) const
    {
        const QJsonObject tolerance = m_entry["tolerance"].toObject();
        if (!tolerance.contains(kind)) return 0;
        const QJsonValue found = tolerance[kind];
        return found.isDouble() ? found.toDouble() : number(found.toObject(), letter);
    }
    bool near(const QString& letter, double wanted, double value) const
    {
        const double most = std::max(room("absolute", letter), room("relative", letter) * std::fabs(wanted));
        if (std::fabs(value - wanted) <= most) return true; // not-a-number is not
        tell(letter, value, wanted);
        return false;
    }
    void tell(const QString& letter, double value, double wanted) const
    {
        qWarning("%s, %s: %.15g, wanted %.15g. Source: %s. Number: %s", qPrintable(m_entry["id"].toString()),
                 qPrintable(letter), value, wanted, qPrintable(m_entry["source"].toString()),
                 qPrintable(m_entry["basis"].toString()));
    }
    QJsonObject m_entry;
    mutable QSet<QString> m_asked;
};

} // namespace proofwalk::reference
