// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/toml_layout.h"

#include <algorithm>
#include <cctype>

#include "core/base/toml.h"

namespace taut::inputs {

namespace {

using Sort = TomlPiece::Sort;
using Room = TomlNode::Room;

bool isBare(char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_' || c == '-'; }

/// Walks a text that the reader has accepted; in any other it finds its end all the same.
class Scanner {
public:
    explicit Scanner(std::string_view text) : m_text(text) {}

    std::size_t at = 0;

    [[nodiscard]] bool ends() const { return at >= m_text.size(); }
    [[nodiscard]] char here() const { return ends() ? '\0' : m_text[at]; }
    [[nodiscard]] bool begins(std::string_view with) const { return m_text.substr(at, with.size()) == with; }
    void blanks()
    {
        while (here() == ' ' || here() == '\t') ++at;
    }
    /// To the end of the line, its line end not counted.
    void restOfLine()
    {
        while (!ends() && here() != '\n') ++at;
    }
    /// Over the line end.
    void nextLine()
    {
        restOfLine();
        if (!ends()) ++at;
    }
    /// Over blanks, line ends and comments.
    void between()
    {
        while (!ends()) {
            if (here() == '#')
                restOfLine();
            else if (std::isspace(static_cast<unsigned char>(here())) != 0)
                ++at;
            else
                return;
        }
    }
    std::vector<std::string> key()
    {
        std::vector<std::string> parts;
        do {
            blanks();
            const std::size_t from = at;
            if (here() == '"' || here() == '\'') {
                text();
                const auto read = readToml(std::string(m_text.substr(from, at - from)) + " = 0", "");
                parts.push_back(read && read->table()->size() == 1 ? read->table()->front().first : std::string());
            } else {
                while (isBare(here())) ++at;
                parts.emplace_back(m_text.substr(from, at - from));
            }
            blanks();
        } while (here() == '.' && ++at > 0);
        return parts;
    }
    void text()
    {
        const char quote = here();
        const std::string three(3, quote);
        const bool many = begins(three);
        at += many ? 3 : 1;
        while (!ends()) {
            if (here() == '\\' && quote == '"') {
                at += 2;
            } else if (many && begins(three)) {
                at += 3;
                while (here() == quote) ++at;  // one or two may stand just before the closing three
                break;
            } else if (!many && (here() == quote || here() == '\n')) {
                if (here() == quote) ++at;
                break;
            } else {
                ++at;
            }
        }
        at = std::min(at, m_text.size());
    }

private:
    std::string_view m_text;
};

class Layout {
public:
    explicit Layout(std::string_view text) : m_text(text), m_scan(text) {}

    TomlNode read()
    {
        m_root.sort = Sort::Table;
        if (m_text.substr(0, 3) == "\xEF\xBB\xBF") m_scan.at = 3;
        m_root.at = m_scan.at;
        TomlNode* table = &m_root;
        TomlNode* section = nullptr;
        while (true) {
            m_scan.between();
            if (m_scan.ends()) break;
            const std::size_t before = m_scan.at;
            if (m_scan.here() == '[') {
                const std::size_t start = withComment(m_scan.at);
                if (section != nullptr) section->sections.back().end = start;
                section = table = header(start);
            } else {
                line(*table);
            }
            if (m_scan.at == before) ++m_scan.at;  // a text that nobody accepted
        }
        if (section != nullptr) section->sections.back().end = m_text.size();
        return std::move(m_root);
    }
    TomlNode value()
    {
        TomlNode node;
        node.value.begin = m_scan.at;
        if (m_scan.here() == '[')
            list(node);
        else if (m_scan.here() == '{')
            braces(node);
        else if (m_scan.here() == '"' || m_scan.here() == '\'')
            m_scan.text();
        else
            while (!m_scan.ends() && std::string_view(",]}#\n").find(m_scan.here()) == std::string_view::npos)
                ++m_scan.at;
        while (m_scan.at > node.value.begin && std::isspace(static_cast<unsigned char>(m_text[m_scan.at - 1])) != 0)
            --m_scan.at;
        node.value.end = m_scan.at;
        return node;
    }

private:
    [[nodiscard]] std::size_t lineStart(std::size_t at) const
    {
        const std::size_t end = at == 0 ? std::string_view::npos : m_text.rfind('\n', at - 1);
        return end == std::string_view::npos ? 0 : end + 1;
    }
    /// A comment on the lines right above a header speaks of it.
    [[nodiscard]] std::size_t withComment(std::size_t at) const
    {
        std::size_t start = lineStart(at);
        while (start > 0) {
            const std::size_t above = lineStart(start - 1);
            const std::size_t first = m_text.find_first_not_of(" \t", above);
            if (first == std::string_view::npos || first >= start || m_text[first] != '#') break;
            start = above;
        }
        return start;
    }
    [[nodiscard]] std::size_t endOfLine(std::size_t at) const
    {
        const std::size_t end = m_text.find('\n', at);
        return end == std::string_view::npos ? m_text.size() : end + 1;
    }

    TomlNode* header(std::size_t start)
    {
        const bool many = m_scan.begins("[[");
        m_scan.at += many ? 2 : 1;
        const std::size_t from = m_scan.at;
        const std::vector<std::string> parts = m_scan.key();
        const std::string name(m_text.substr(from, m_scan.at - from));
        m_scan.nextLine();
        TomlNode* table = &m_root;
        std::string path;
        for (std::size_t i = 0; i + 1 < parts.size(); ++i) {
            path += (path.empty() ? "" : ".") + writtenKey(parts[i]);
            TomlNode* next = table->member(parts[i]);
            if (next == nullptr) {
                next = &table->add(parts[i], {});
                next->sort = Sort::Table;
                next->room = Room::Header;
                next->at = start;
                next->header = path;
            }
            table = next->sort == Sort::Tables && !next->items.empty() ? &next->items.back() : next;
        }
        TomlNode* made = table->member(parts.back());
        if (made == nullptr) made = &table->add(parts.back(), {});
        made->sort = many ? Sort::Tables : Sort::Table;
        if (many) made = &made->items.emplace_back();
        made->sort = Sort::Table;
        made->room = Room::Line;
        made->at = m_scan.at;
        made->header = name;
        made->sections.push_back({start, m_text.size()});
        return made;
    }

    /// The table in which a dotted key ends up; `room` and `at` are where the next key beside it would go.
    static TomlNode& dottedInto(TomlNode& table, const std::vector<std::string>& parts, Room room, std::size_t at)
    {
        TomlNode* into = &table;
        for (std::size_t i = 0; i + 1 < parts.size(); ++i) {
            const std::string prefix = into->prefix + writtenKey(parts[i]) + '.';
            TomlNode* next = into->member(parts[i]);
            if (next == nullptr) {
                next = &into->add(parts[i], {});
                next->sort = Sort::Table;
                next->prefix = prefix;
            }
            next->room = room;
            next->at = at;
            into = next;
        }
        return *into;
    }

    void line(TomlNode& table)
    {
        const std::size_t start = lineStart(m_scan.at);
        const std::vector<std::string> parts = m_scan.key();
        if (m_scan.here() == '=') ++m_scan.at;
        m_scan.blanks();
        TomlNode node = value();
        m_scan.nextLine();
        node.whole = {start, m_scan.at};
        table.at = m_scan.at;
        dottedInto(table, parts, Room::Line, m_scan.at).add(parts.back(), std::move(node));
    }

    void braces(TomlNode& node)
    {
        node.sort = Sort::Inline;
        node.room = Room::Braces;
        ++m_scan.at;
        while (!m_scan.ends()) {
            m_scan.between();
            if (m_scan.here() == '}') break;
            if (m_scan.here() == ',') {
                ++m_scan.at;
                continue;
            }
            const std::size_t start = m_scan.at;
            const std::vector<std::string> parts = m_scan.key();
            if (m_scan.here() == '=') ++m_scan.at;
            m_scan.blanks();
            TomlNode member = value();
            member.whole = {start, m_scan.at};
            node.room = Room::Comma;
            node.at = m_scan.at;
            dottedInto(node, parts, Room::Comma, m_scan.at).add(parts.back(), std::move(member));
            if (m_scan.at == start) ++m_scan.at;
        }
        if (!m_scan.ends()) ++m_scan.at;
    }

    void list(TomlNode& node)
    {
        node.sort = Sort::List;
        ++m_scan.at;
        while (!m_scan.ends()) {
            m_scan.between();
            if (m_scan.here() == ']') break;
            if (m_scan.here() == ',') {
                ++m_scan.at;
                continue;
            }
            const std::size_t start = m_scan.at;
            TomlNode item = value();
            const std::size_t behind = m_scan.at;
            item.whole = item.value;
            m_scan.between();
            if (m_scan.here() == ',')
                ++m_scan.at;
            else
                m_scan.at = behind;
            item.whole.end = m_scan.at;  // with its comma
            Scanner tail = m_scan;
            tail.blanks();
            if (tail.here() == '#') tail.restOfLine();
            item.endsLine = tail.ends() || tail.here() == '\n' || tail.begins("\r\n");
            item.tail = {m_scan.at, item.endsLine ? tail.at : m_scan.at};
            node.items.push_back(std::move(item));
            if (m_scan.at == start) ++m_scan.at;
        }
        if (!m_scan.ends()) ++m_scan.at;
    }

    std::string_view m_text;
    Scanner m_scan;
    TomlNode m_root;
};

}  // namespace

TomlNode* TomlNode::member(std::string_view key)
{
    const auto it = std::find_if(members.begin(), members.end(), [&](const auto& m) { return m.key == key; });
    return it == members.end() ? nullptr : &it->node;
}

const TomlNode* TomlNode::member(std::string_view key) const
{
    const auto it = std::find_if(members.begin(), members.end(), [&](const auto& m) { return m.key == key; });
    return it == members.end() ? nullptr : &it->node;
}

TomlNode& TomlNode::add(const std::string& key, TomlNode node)
{
    members.push_back({key, std::move(node)});
    return members.back().node;
}

TomlNode layoutOf(std::string_view text) { return Layout(text).read(); }

std::size_t endOfTomlValue(std::string_view text) { return Layout(text).value().value.end; }

std::string writtenKey(std::string_view key)
{
    return !key.empty() && std::all_of(key.begin(), key.end(), isBare) ? std::string(key) : tomlQuoted(key);
}

}  // namespace taut::inputs
