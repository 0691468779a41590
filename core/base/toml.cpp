// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/toml.h"

#include <algorithm>
#include <cctype>
#include <optional>
#include <toml++/toml.h>

#include "core/base/utf8.h"

#if !defined(TAUTWEB_FUZZ) && (TOML_HEADER_ONLY || !TOML_SHARED_LIB)
#error "the header-only parser aborts on some broken files: link the shared library"
#endif

namespace taut {

namespace {

constexpr std::size_t kLargest = std::size_t{1} << 20U;
constexpr int kMostDots = 32;

std::string at(std::string_view file, std::size_t line, std::size_t column)
{
    return std::string(file) + ':' + std::to_string(line) + ':' + std::to_string(column);
}

/// Walks the text outside strings and comments: the parser is not to be trusted with characters that cannot stand
/// there, nor with keys of endless parts (it nests a table for each).
class Outside {
public:
    Outside(std::string_view text, std::string_view file) : m_text(text), m_file(file) {}

    [[nodiscard]] std::optional<Finding> firstWrong()
    {
        int dots = 0;
        while (m_at < m_text.size()) {
            const char c = m_text[m_at];
            if (c == '#') {
                while (m_at < m_text.size() && m_text[m_at] != '\n') step();
            } else if (c == '"' || c == '\'') {
                // No library need guess what stands in a text that begins nowhere.
                const char before = m_at == 0 ? '\n' : m_text[m_at - 1];
                if (std::isalnum(static_cast<unsigned char>(before)) != 0 || before == '_' || before == '-')
                    return refuse("toml.syntax", at(m_file, m_line, m_column),
                                  "A quotation mark stands right behind a word or a number.",
                                  "Put the whole of it between quotes, or take the mark out.");
                skipString(c);
            } else if (static_cast<unsigned char>(c) >= 0x80U) {
                const std::string letter(m_text.substr(m_at, utf8Step(m_text.substr(m_at))));
                return refuse("toml.syntax", at(m_file, m_line, m_column),
                              {"\"%1\" may stand only between quotes or in a comment.", {letter}},
                              "Put the word between quotes, or take the character out.");
            } else {
                if (std::string_view("=,[]{}\n").find(c) != std::string_view::npos) dots = 0;
                if (c == '.' && ++dots > kMostDots)
                    return refuse("toml.syntax", at(m_file, m_line, m_column), "This key has too many parts.",
                                  "Write a key of a few parts, joined by dots.");
                step();
            }
        }
        return std::nullopt;
    }

private:
    void step()
    {
        if (m_text[m_at] == '\n') {
            ++m_line;
            m_column = 1;
        } else if ((static_cast<unsigned char>(m_text[m_at]) & 0xC0U) != 0x80U) {
            ++m_column;
        }
        ++m_at;
    }
    void skip(std::size_t n)
    {
        for (; n > 0 && m_at < m_text.size(); --n) step();
    }
    void skipString(char quote)
    {
        const std::string three(3, quote);
        const bool many = m_text.substr(m_at, 3) == three;
        skip(many ? 3 : 1);
        while (m_at < m_text.size()) {
            if (m_text[m_at] == '\\' && quote == '"') {
                skip(2);
            } else if (!many && (m_text[m_at] == quote || m_text[m_at] == '\n')) {
                return step();  // a line end cannot stand in such a string: the parser will say so
            } else if (many && m_text.substr(m_at, 3) == three) {
                skip(3);
                // one or two quotes may stand just before the closing three
                while (m_at < m_text.size() && m_text[m_at] == quote) step();
                return;
            } else {
                step();
            }
        }
    }

    std::string_view m_text;
    std::string_view m_file;
    std::size_t m_at = 0;
    std::size_t m_line = 1;
    std::size_t m_column = 1;
};

/// Turns the library's tree into ours; `found` gets the first thing that we do not take.
class Reader {
public:
    explicit Reader(std::string_view file) : m_file(file) {}

    Toml read(const toml::node& node)
    {
        const toml::source_position begin = node.source().begin;
        Toml out;
        out.line = static_cast<int>(begin.line);
        out.column = static_cast<int>(begin.column);
        if (const auto* table = node.as_table())
            out.value = readTable(*table);
        else if (const auto* array = node.as_array())
            out.value = readArray(*array);
        else if (const auto* text = node.as_string())
            out.value = text->get();
        else if (const auto* whole = node.as_integer())
            out.value = whole->get();
        else if (const auto* number = node.as_floating_point())
            out.value = number->get();
        else if (const auto* yes = node.as_boolean())
            out.value = yes->get();
        else if (!m_found)
            m_found = refuse("toml.date", at(m_file, begin.line, begin.column), "A bare date or time is not read here.",
                             "Write it as text in quotes.");
        return out;
    }
    [[nodiscard]] const std::optional<Finding>& found() const { return m_found; }

private:
    Toml::Table readTable(const toml::table& table)
    {
        struct Entry {
            toml::source_position place;
            const toml::key* key;
            const toml::node* node;
        };
        std::vector<Entry> entries;
        for (auto it = table.cbegin(); it != table.cend(); ++it)
            entries.push_back({it->first.source().begin, &it->first, &it->second});
        std::stable_sort(entries.begin(), entries.end(),
                         [](const Entry& a, const Entry& b) { return a.place < b.place; });
        Toml::Table out;
        for (const Entry& entry : entries) {
            Toml member = read(*entry.node);
            // A table, and what a dotted key implies, stands where its key does.
            if (entry.node->is_table() || entry.node->is_array_of_tables() || member.line == 0) {
                member.line = static_cast<int>(entry.place.line);
                member.column = static_cast<int>(entry.place.column);
            }
            out.emplace_back(std::string(entry.key->str()), std::move(member));
        }
        return out;
    }
    Toml::Array readArray(const toml::array& array)
    {
        Toml::Array out;
        for (const toml::node& item : array) out.push_back(read(item));
        return out;
    }

    std::string_view m_file;
    std::optional<Finding> m_found;
};

}  // namespace

const Toml* Toml::find(std::string_view key) const
{
    const Table* members = table();
    if (members == nullptr) return nullptr;
    const auto it = std::find_if(members->begin(), members->end(), [&](const auto& m) { return m.first == key; });
    return it == members->end() ? nullptr : &it->second;
}

const char* Toml::typeName() const
{
    switch (value.index()) {
    case 1: return "true or false";
    case 2: return "a whole number";
    case 3: return "a number";
    case 4: return "a text";
    case 5: return "a list";
    case 6: return "a table";
    default: return "nothing";
    }
}

namespace {

/// Line and column of a byte, both from 1.
std::string placeOf(std::string_view file, std::string_view text, std::size_t byte)
{
    const std::string_view before = text.substr(0, byte);
    const auto line = static_cast<std::size_t>(std::count(before.begin(), before.end(), '\n')) + 1;
    return at(file, line, byte - (before.rfind('\n') + 1) + 1);
}

/// Characters that TOML allows nowhere, and behind which the library loses its way.
bool isControl(char c)
{
    const auto byte = static_cast<unsigned char>(c);
    return (byte < 0x20U && c != '\t' && c != '\n' && c != '\r') || byte == 0x7FU;
}

}  // namespace

Result<Toml> readToml(std::string_view text, std::string_view file)
{
    const std::string name(file);
    if (text.size() > kLargest)
        return refuse("toml.too_large", name, {"The file %1 is larger than 1 MiB, the most that is read here.", {name}},
                      "Check that it is the right file.");
    if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);  // some editors put a byte order mark there
    if (const std::size_t bad = firstBadUtf8(text); bad != std::string_view::npos)
        return refuse("toml.not_utf8", placeOf(file, text, bad), "This place is not UTF-8 text.",
                      "Open the file in a text editor and save it again as UTF-8.");
    if (const auto bad = std::find_if(text.begin(), text.end(), isControl); bad != text.end())
        return refuse("toml.control_character", placeOf(file, text, static_cast<std::size_t>(bad - text.begin())),
                      "A control character stands here, which no text editor shows and no such file may hold.",
                      "Take it out: delete from the letter before it to the letter behind it, and type both anew.");
    if (std::optional<Finding> wrong = Outside(text, file).firstWrong()) return *wrong;
    try {
        const toml::table root = toml::parse(text, name);
        Reader reader(file);
        Toml out = reader.read(root);
        if (reader.found()) return *reader.found();
        out.line = 1;
        out.column = 1;
        return out;
    } catch (const toml::parse_error& error) {
        const toml::source_position place = error.source().begin;
        return refuse("toml.syntax", at(file, place.line, place.column),
                      {"The file cannot be read on from here: %1.", {std::string(error.description())}},
                      "Mend this line; text stands between quotes, a table's name between brackets.");
    }
}

std::string tomlQuoted(std::string_view text)
{
    constexpr std::string_view kDigits = "0123456789ABCDEF";
    std::string out = "\"";
    for (const char c : cleanUtf8(text)) {
        const auto byte = static_cast<unsigned char>(c);
        switch (c) {
        case '"': out += "\\\""; break;
        case '\\': out += "\\\\"; break;
        case '\b': out += "\\b"; break;
        case '\t': out += "\\t"; break;
        case '\n': out += "\\n"; break;
        case '\f': out += "\\f"; break;
        case '\r': out += "\\r"; break;
        default:
            if (byte < 0x20U || byte == 0x7FU) {
                out += "\\u00";
                out += kDigits[byte >> 4U];
                out += kDigits[byte & 0x0FU];
            } else {
                out += c;
            }
        }
    }
    return out + '"';
}

}  // namespace taut
