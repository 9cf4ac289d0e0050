// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/networktext.h"

#include "core/measure/inputs.h"

#include <charconv>
#include <string>
#include <utility>

namespace proofwalk::measure {
namespace {

bool isLetter(char sign) { return (sign >= 'a' && sign <= 'z') || (sign >= 'A' && sign <= 'Z'); }
bool isDigit(char sign) { return sign >= '0' && sign <= '9'; }

/// Reads from left to right; each part is appended after the parts it is made of.
class Reader {
public:
    Reader(std::string_view text, double tolerance_pct, std::optional<CableOhm> cable)
        : m_text(text), m_tolerance_pct(tolerance_pct), m_cable(cable)
    {
    }

    Result<std::vector<Part>> all()
    {
        if (auto read = branches(0); !read) return passOn(read);
        if (!atEnd()) return wanted("+, | or the end");
        return std::move(m_parts);
    }

private:
    static constexpr int deepest = 64; // a network has no more parts than that

    Result<void> branches(int depth)
    {
        if (depth > deepest) return wanted("fewer brackets");
        return list('|', PartKind::parallel, [&] { return chain(depth); });
    }
    Result<void> chain(int depth)
    {
        return list('+', PartKind::series, [&] { return item(depth); });
    }
    template <class Read>
    Result<void> list(char between, PartKind kind, Read read)
    {
        std::size_t members = 0;
        do {
            if (auto done = read(); !done) return done;
            ++members;
        } while (take(between));
        if (members > 1) m_parts.push_back(group(kind, members));
        return {};
    }
    Result<void> item(int depth)
    {
        if (take('(')) {
            if (auto done = branches(depth + 1); !done) return done;
            if (!take(')')) return wanted(")");
            return {};
        }
        std::string name;
        skip();
        while (m_at < m_text.size() && (isLetter(m_text[m_at]) || (!name.empty() && isNameSign(m_text[m_at]))))
            name += m_text[m_at++];
        if (name.empty()) return wanted("a name or (");
        if (take(':')) return contactOf(std::move(name));
        const bool isCable = name.starts_with("cable");
        if (!take('=')) {
            if (!isCable || !m_cable) return wanted("= or :");
            m_parts.push_back(cable(std::move(name), m_cable->least_ohm, m_cable->most_ohm));
            return {};
        }
        return isCable ? cableOf(std::move(name)) : resistorOf(std::move(name));
    }
    Result<void> contactOf(std::string name)
    {
        const std::string_view rest = m_text.substr(m_at);
        const bool closed = rest.starts_with("nc");
        if (!closed && !rest.starts_with("no")) return wanted("nc or no");
        m_at += 2;
        m_parts.push_back(contact(std::move(name), closed));
        return {};
    }
    Result<void> resistorOf(std::string name)
    {
        auto ohm = number();
        if (!ohm) return passOn(ohm);
        double tolerance_pct = m_tolerance_pct;
        if (skip(); m_at < m_text.size() && isDigit(m_text[m_at])) {
            auto own = number();
            if (!own) return passOn(own);
            if (!take('%')) return wanted("%");
            tolerance_pct = *own;
        }
        m_parts.push_back(resistor(std::move(name), *ohm, tolerance_pct));
        return {};
    }
    Result<void> cableOf(std::string name)
    {
        auto most = number();
        if (!most) return passOn(most);
        double least = 0;
        if (m_text.substr(m_at).starts_with("..")) {
            m_at += 2;
            least = *most;
            most = number();
            if (!most) return passOn(most);
        }
        m_parts.push_back(cable(std::move(name), least, *most));
        return {};
    }
    /// Digits, with a full stop and more digits if need be; "0..40" is two numbers.
    Result<double> number()
    {
        skip();
        std::size_t end = m_at;
        while (end < m_text.size() && isDigit(m_text[end])) ++end;
        if (end == m_at) return wanted("a number of ohms");
        if (end + 1 < m_text.size() && m_text[end] == '.' && isDigit(m_text[end + 1]))
            for (++end; end < m_text.size() && isDigit(m_text[end]);) ++end;
        double value = 0;
        const auto read = std::from_chars(m_text.data() + m_at, m_text.data() + end, value);
        if (read.ec != std::errc{}) return wanted("a number of ohms");
        m_at = end;
        return value;
    }
    static bool isNameSign(char sign) { return isLetter(sign) || isDigit(sign) || sign == '-'; }
    void skip()
    {
        while (m_at < m_text.size() && (m_text[m_at] == ' ' || m_text[m_at] == '\t')) ++m_at;
    }
    bool atEnd()
    {
        skip();
        return m_at == m_text.size();
    }
    bool take(char sign)
    {
        if (atEnd() || m_text[m_at] != sign) return false;
        ++m_at;
        return true;
    }
    std::unexpected<Error> wanted(const char* what) const
    {
        return failure("measure.network-text", "",
                       {{"found", std::string(m_text.substr(m_at))},
                        {"at", static_cast<std::int64_t>(m_at + 1)},
                        {"wanted", std::string(what)}});
    }

    std::string_view m_text;
    double m_tolerance_pct;
    std::optional<CableOhm> m_cable;
    std::size_t m_at = 0;
    std::vector<Part> m_parts;
};

} // namespace

Result<Network> readNetwork(std::string_view text, double tolerance_pct, std::optional<CableOhm> cable)
{
    if (!(tolerance_pct >= 0 && tolerance_pct < 100))
        return outOfRange("tolerance_pct", tolerance_pct, "0 to below 100");
    auto parts = Reader(text, tolerance_pct, cable).all();
    if (!parts) return passOn(parts);
    return Network::of(std::move(*parts));
}

} // namespace proofwalk::measure
