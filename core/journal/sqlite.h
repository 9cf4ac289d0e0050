// SPDX-License-Identifier: GPL-3.0-or-later
// SQLite behind the smallest wrapper that will do: a connection, a statement, and the result code as it is. What a code
// means to the job file is said in store.h.
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

struct sqlite3;
struct sqlite3_stmt;

namespace proofwalk::journal {

/// A prepared statement. Values are bound from 1, columns read from 0, as SQLite counts them.
class Statement {
public:
    Statement() = default;

    void bind(int index, std::int64_t value);
    void bind(int index, std::string_view text);
    /// For bytes that are no text.
    void bindBytes(int index, std::string_view bytes);

    /// SQLITE_ROW, SQLITE_DONE or what went wrong.
    int step();
    /// Makes it ready to run again; what is bound stays.
    void reset();

    std::int64_t integer(int column) const;
    /// Text or bytes as stored; empty for NULL.
    std::string text(int column) const;

private:
    friend class Database;
    struct Finalize {
        void operator()(sqlite3_stmt* statement) const;
    };
    std::unique_ptr<sqlite3_stmt, Finalize> m_statement;
    int m_code = 0; ///< of preparing: told at the first step
};

/// A connection, closed at the end.
class Database {
public:
    enum class Access { readWrite, readOnly, immutable };

    Database() = default;
    /// Opens an existing file. The code tells whether it worked; problem() says more.
    int open(const std::filesystem::path& file, Access access);
    /// An empty database in memory.
    int openMemory();
    void close();
    bool isOpen() const { return m_connection != nullptr; }

    /// Runs statements that give no rows, or whose rows are of no interest.
    int run(const char* sql);
    Statement prepare(std::string_view sql);
    /// The one integer or text a statement gives; the code is SQLITE_ROW if it gave one.
    int value(std::string_view sql, std::int64_t& integer);
    int value(std::string_view sql, std::string& text);

    /// The library's own words for what went wrong last.
    std::string problem() const;
    /// What the operating system said to the last input or output (errno), 0 if nothing.
    int systemError() const;
    bool isReadOnly() const;
    bool inTransaction() const;
    sqlite3* connection() const { return m_connection.get(); }

private:
    struct Close {
        void operator()(sqlite3* connection) const;
    };
    std::unique_ptr<sqlite3, Close> m_connection;
};

} // namespace proofwalk::journal
