// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/sqlite.h"

#include <sqlite3.h>

#include <system_error>

namespace proofwalk::journal {
namespace {

/// The file as a URI: "immutable" can be said in no other way. What a URI would take for its own is escaped.
std::string uriOf(const std::filesystem::path& file, bool immutable)
{
    std::string uri = "file:";
    std::error_code unknown; // an empty path then, which does not open
    const std::string path = std::filesystem::absolute(file, unknown).string();
    for (const char c : path) {
        if (c == '%') uri += "%25";
        else if (c == '?') uri += "%3f";
        else if (c == '#') uri += "%23";
        else uri += c;
    }
    return immutable ? uri + "?immutable=1" : uri;
}

} // namespace

void Statement::Finalize::operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }
void Database::Close::operator()(sqlite3* connection) const { sqlite3_close_v2(connection); }

void Statement::bind(int index, std::int64_t value) { sqlite3_bind_int64(m_statement.get(), index, value); }

void Statement::bind(int index, std::string_view text)
{
    sqlite3_bind_text64(m_statement.get(), index, text.data(), text.size(), SQLITE_TRANSIENT, SQLITE_UTF8);
}

void Statement::bindBytes(int index, std::string_view bytes)
{
    sqlite3_bind_blob64(m_statement.get(), index, bytes.data(), bytes.size(), SQLITE_TRANSIENT);
}

int Statement::step() { return m_statement == nullptr ? m_code : sqlite3_step(m_statement.get()); }

void Statement::reset() { sqlite3_reset(m_statement.get()); }

std::int64_t Statement::integer(int column) const { return sqlite3_column_int64(m_statement.get(), column); }

std::string Statement::text(int column) const
{
    const auto* bytes = static_cast<const char*>(sqlite3_column_blob(m_statement.get(), column));
    const int size = sqlite3_column_bytes(m_statement.get(), column);
    return bytes == nullptr ? std::string() : std::string(bytes, static_cast<std::size_t>(size));
}

int Database::open(const std::filesystem::path& file, Access access)
{
    const int how = access == Access::readWrite ? SQLITE_OPEN_READWRITE : SQLITE_OPEN_READONLY;
    sqlite3* connection = nullptr;
    const int code = sqlite3_open_v2(uriOf(file, access == Access::immutable).c_str(), &connection,
                                     how | SQLITE_OPEN_URI | SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_EXRESCODE, nullptr);
    m_connection.reset(connection);
    return code;
}

int Database::openMemory()
{
    sqlite3* connection = nullptr;
    const int code = sqlite3_open_v2(":memory:", &connection, SQLITE_OPEN_READWRITE | SQLITE_OPEN_MEMORY, nullptr);
    m_connection.reset(connection);
    return code;
}

void Database::close() { m_connection.reset(); }

int Database::run(const char* sql) { return sqlite3_exec(m_connection.get(), sql, nullptr, nullptr, nullptr); }

Statement Database::prepare(std::string_view sql)
{
    sqlite3_stmt* made = nullptr;
    Statement statement;
    statement.m_code = sqlite3_prepare_v3(m_connection.get(), sql.data(), static_cast<int>(sql.size()),
                                          SQLITE_PREPARE_PERSISTENT, &made, nullptr);
    statement.m_statement.reset(made);
    return statement;
}

int Database::value(std::string_view sql, std::int64_t& integer)
{
    Statement statement = prepare(sql);
    const int code = statement.step();
    if (code == SQLITE_ROW) integer = statement.integer(0);
    return code;
}

int Database::value(std::string_view sql, std::string& text)
{
    Statement statement = prepare(sql);
    const int code = statement.step();
    if (code == SQLITE_ROW) text = statement.text(0);
    return code;
}

std::string Database::problem() const { return sqlite3_errmsg(m_connection.get()); }
int Database::systemError() const { return sqlite3_system_errno(m_connection.get()); }
bool Database::isReadOnly() const { return sqlite3_db_readonly(m_connection.get(), "main") == 1; }
bool Database::inTransaction() const { return sqlite3_get_autocommit(m_connection.get()) == 0; }

} // namespace proofwalk::journal
