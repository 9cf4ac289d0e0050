// SPDX-License-Identifier: GPL-3.0-or-later
// What the journal's tests share: a key, drafts, a job with a few events.
#pragma once

#include "core/journal/journal.h"

#include <QTemporaryDir>
#include <QTest>

#include <filesystem>

namespace proofwalk::journal {

/// 2026-11-25T09:00:00Z, at one hour east, and some minutes later.
inline base::WallClock clockAt(int minutes) { return {1'795'597'200'000 + minutes * 60'000LL, 60}; }

inline Draft draft(const std::string& kind, base::Json body = base::Json::Object{})
{
    return {.kind = kind, .body = std::move(body), .privates = {}, .contents = {}, .photographs = {}};
}

inline Draft note(int number) { return draft("note", base::Json::Object{{"number", number}}); }

/// A folder of its own for each test, with a machine key in it.
class Workshop {
public:
    std::filesystem::path path(const char* name) const
    {
        return std::filesystem::path(m_folder.path().toStdString()) / name;
    }

    std::shared_ptr<const SigningKey> key(const char* name = "keys") const
    {
        auto key = openMachineKey(path(name));
        return key ? *key : nullptr;
    }

    /// A closed job of one chain: a start and `notes` notes, a minute apart.
    std::filesystem::path job(int notes, const char* name = "job.walk") const
    {
        auto journal = Journal::create(path(name), key());
        if (!journal || !journal->append({draft("start")}, clockAt(0))) return {};
        for (int i = 1; i <= notes; ++i)
            if (!journal->append({note(i)}, clockAt(i))) return {};
        return path(name);
    }

private:
    QTemporaryDir m_folder;
};

/// The code and the place of an error, as a test prints it.
inline QString told(const Error& error)
{
    QString text = QString::fromStdString(error.code + " at " + error.where);
    for (const auto& [name, value] : error.arguments)
        text += QString::fromStdString(" " + name + "=")
              + (value.index() == 0 ? QString::fromStdString(std::get<0>(value)) : QString::number(std::get<1>(value)));
    return text;
}

template <class T>
QString told(const Result<T>& result)
{
    return result ? QStringLiteral("well") : told(result.error());
}

template <class T>
std::string codeOf(const Result<T>& result)
{
    return result ? "well" : result.error().code;
}

} // namespace proofwalk::journal

/// Stops the test with the error's own words.
#define VERIFY_GOOD(expression)                                                                                        \
    do {                                                                                                               \
        const auto& outcome = (expression);                                                                            \
        QVERIFY2(outcome.has_value(), qPrintable(proofwalk::journal::told(outcome)));                                  \
    } while (false)
