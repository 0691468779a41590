// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/form.h"

#include <algorithm>
#include <map>

#include "core/base/toml.h"

namespace taut::inputs {

namespace {

using Sort = KeyAsked::Sort;

/// A value without its quotes; a list of texts with commas.
std::string saidBy(const Toml& value, std::string_view written)
{
    if (const std::string* text = value.text()) return *text;
    if (const Toml::Array* list = value.array()) {
        std::string out;
        for (const Toml& item : *list) {
            if (item.text() == nullptr) return std::string(written);
            out += (out.empty() ? "" : ", ") + *item.text();
        }
        return out;
    }
    return std::string(written);
}

/// Whose row a key is in: the innermost row of a list above it, else the table of the file.
struct Owner {
    std::string group, key;
    TomlPath path;  ///< of the group
    std::size_t item = 0;
    bool list = false;
};

class Maker {
public:
    Maker(Form& form, std::string_view toml) : m_form(&form)
    {
        const auto pieces = tomlPieces(toml, "");
        if (!pieces) return;
        form.readable = true;
        for (const TomlPiece& piece : *pieces) m_pieces.emplace(pathText(piece.path), piece);
    }

    void add(const KeyAsked& asked)
    {
        if (asked.table.empty() && (asked.sort == Sort::Table || asked.sort == Sort::Tables)) {
            open(group(asked.key, {asked.key}, asked.sort == Sort::Tables), asked.stands);
            return;
        }
        if (asked.sort == Sort::Tables) {
            TomlPath path = exact(asked.table);
            path.emplace_back(asked.key);
            (void)group(asked.path(), path, true);
            return;
        }
        const Owner owner = ownerOf(asked);
        if (owner.group.empty()) return;  // "format" is no matter of a form
        FormGroup& to = group(owner.group, owner.path, owner.list);
        if (to.items.size() <= owner.item) to.items.resize(owner.item + 1);
        if (asked.sort == Sort::Table && asked.stands) {
            to.nested = true;
            return;
        }
        if (asked.sort == Sort::Table) to.nested = true;
        if (asked.sort == Sort::Point) {
            for (const char* part : {"[0]", "[1]"}) put(to, owner, asked, part);
            return;
        }
        put(to, owner, asked, "");
    }
    /// Rows are as long as the keys of all of them together.
    void finish()
    {
        for (FormGroup& one : m_form->groups)
            for (auto& item : one.items) item.resize(one.keys.size());
        for (std::size_t i = 0; i < m_form->findings.size(); ++i) {
            const std::string path = foundAt(m_form->findings[i]).path;
            if (FormCell* cell = path.empty() ? nullptr : named(path)) cell->findings.push_back(i);
        }
    }

private:
    static void open(FormGroup& one, bool stands)
    {
        if (stands && !one.list && one.items.empty()) one.items.emplace_back();
    }
    FormGroup& group(const std::string& name, const TomlPath& path, bool list)
    {
        const auto it = std::find_if(m_form->groups.begin(), m_form->groups.end(),
                                     [&](const FormGroup& one) { return one.name == name; });
        if (it != m_form->groups.end()) return *it;
        return m_form->groups.emplace_back(FormGroup{name, path, list, false, {}, {}});
    }
    /// Where a table stands that a reader is in.
    [[nodiscard]] TomlPath exact(const std::string& table) const
    {
        const auto it = m_pieces.find(table);
        return it == m_pieces.end() ? TomlPath() : it->second.path;
    }
    [[nodiscard]] Owner ownerOf(const KeyAsked& key) const
    {
        const TomlPath table = exact(key.table);
        Owner owner;
        if (table.empty()) return owner;
        std::size_t end = table.size();
        while (end > 0 && !std::holds_alternative<std::size_t>(table[end - 1])) --end;
        owner.list = end > 0;
        if (end > 0) owner.item = std::get<std::size_t>(table[end - 1]);
        owner.path = {table.begin(), table.begin() + static_cast<std::ptrdiff_t>(end > 0 ? end - 1 : 1)};
        owner.group = pathText(owner.path);
        TomlPath rest(table.begin() + static_cast<std::ptrdiff_t>(end > 0 ? end : 1), table.end());
        rest.emplace_back(key.key);
        owner.key = pathText(rest);
        return owner;
    }
    void put(FormGroup& to, const Owner& owner, const KeyAsked& asked, const std::string& part)
    {
        const std::string key = owner.key + part;
        auto at = static_cast<std::size_t>(std::find(to.keys.begin(), to.keys.end(), key) - to.keys.begin());
        if (at == to.keys.size()) to.keys.push_back(key);
        auto& item = to.items[owner.item];
        if (item.size() < to.keys.size()) item.resize(to.keys.size());
        FormCell& cell = item[at];
        cell.sort = asked.sort;
        cell.words = asked.words;
        cell.kinds = asked.kinds;
        cell.known = true;
        cell.path = exact(asked.table);
        cell.path.emplace_back(asked.key);
        if (!part.empty()) cell.path.emplace_back(static_cast<std::size_t>(part == "[0]" ? 0 : 1));
        const auto piece = m_pieces.find(asked.path() + part);
        cell.stands = piece != m_pieces.end();
        if (!cell.stands) return;
        const auto read = readToml("v = " + piece->second.written, "");
        if (read && read->find("v") != nullptr) cell.said = saidBy(*read->find("v"), piece->second.written);
    }
    /// The cell that a finding names: its key, or the one that has its place in a list of texts; of a whole row its
    /// first.
    FormCell* named(const std::string& path)
    {
        FormCell* best = nullptr;
        std::size_t length = 0;
        for (FormGroup& one : m_form->groups)
            for (auto& item : one.items)
                for (FormCell& cell : item) {
                    const std::string own = pathText(cell.path);
                    const bool fits =
                        cell.known && path.rfind(own, 0) == 0 && (path.size() == own.size() || path[own.size()] == '[');
                    if (!fits || own.size() < length) continue;
                    best = &cell;
                    length = own.size();
                }
        if (best != nullptr) return best;
        for (FormGroup& one : m_form->groups)
            for (std::size_t i = 0; one.list && i < one.items.size(); ++i)
                if (path == pathText(one.path) + '[' + std::to_string(i) + ']' && !one.items[i].empty())
                    return &one.items[i].front();
        return nullptr;
    }

    Form* m_form;
    std::map<std::string, TomlPiece> m_pieces;
};

std::string joinedTexts(std::string_view typed)
{
    std::string out;
    while (!typed.empty()) {
        const std::size_t comma = typed.find(',');
        std::string_view word = typed.substr(0, comma);
        typed = comma == std::string_view::npos ? std::string_view() : typed.substr(comma + 1);
        const std::size_t from = word.find_first_not_of(" \t"), to = word.find_last_not_of(" \t");
        if (from == std::string_view::npos) continue;
        out += (out.empty() ? "" : ", ") + tomlQuoted(word.substr(from, to - from + 1));
    }
    return '[' + out + ']';
}

std::string writtenAs(Sort sort, std::string_view typed)
{
    switch (sort) {
    case Sort::Flag:
    case Sort::Whole:
    case Sort::Number:
    case Sort::Quantity: return tomlWritten(typed);
    case Sort::Texts: return joinedTexts(typed);
    default: return tomlQuoted(typed);
    }
}

}  // namespace

Form formOf(std::string_view what, std::string_view toml, const Around& around)
{
    Form form;
    Looked looked = lookAt(what, toml);
    form.findings = std::move(looked.findings);
    for (Finding& finding : findingsAround(what, toml, "", around)) form.findings.push_back(std::move(finding));
    Maker maker(form, toml);
    if (!form.readable) return form;
    for (KeyAsked& asked : looked.asked) {
        if (asked.path() == "job.substrate" && !around.substrates.empty()) {
            asked.sort = Sort::Reference;
            asked.words = around.substrates;
        }
        maker.add(asked);
    }
    maker.finish();
    return form;
}

Result<std::string> typedInto(std::string_view toml, const FormCell& cell, std::string_view typed)
{
    const std::size_t from = typed.find_first_not_of(" \t\r\n"), to = typed.find_last_not_of(" \t\r\n");
    const std::string_view word =
        from == std::string_view::npos ? std::string_view() : typed.substr(from, to - from + 1);
    const bool half = cell.sort == Sort::Point;
    if (word.empty() && !half) return cell.stands ? removeToml(toml, cell.path) : std::string(toml);
    if (cell.sort == Sort::Table) return makeTomlTable(toml, cell.path);
    const std::string written = half ? tomlQuoted(word) : writtenAs(cell.sort, word);
    if (!half || cell.stands) return setToml(toml, cell.path, written);
    // Half of a point that is not there yet: the other half is still to be said, and the reader says so.
    TomlPath whole = cell.path;
    const bool first = std::get<std::size_t>(whole.back()) == 0;
    whole.pop_back();
    return setToml(toml, whole, first ? '[' + written + ", \"\"]" : "[\"\", " + written + ']');
}

Result<std::string> addedTo(std::string_view toml, const FormGroup& group, std::size_t at)
{
    if (!group.list) return makeTomlTable(toml, group.path);
    const auto column = [&](std::string_view key) {
        return static_cast<std::size_t>(std::find(group.keys.begin(), group.keys.end(), key) - group.keys.begin());
    };
    TomlRow row;
    // A row that has a number or a name gets the next that is free (a roller has both a name and, at times, a station);
    // a first row is named, for others to refer to it.
    constexpr std::string_view kNamed[] = {"number", "id", "station"};
    const auto named = std::find_if(std::begin(kNamed), std::end(kNamed),
                                    [&](std::string_view key) { return column(key) < group.keys.size(); });
    const std::string_view key = named != std::end(kNamed) ? *named : group.items.empty() ? "id" : "";
    const std::size_t here = column(key);
    for (std::size_t n = group.items.size() + 1; !key.empty(); ++n) {
        const std::string said = key == "id" ? "new_" + std::to_string(n) : std::to_string(n);
        const bool taken = here < group.keys.size() && std::any_of(group.items.begin(), group.items.end(),
                                                                   [&](const auto& i) { return i[here].said == said; });
        if (taken) continue;
        row.emplace_back(key, tomlWritten(said));
        break;
    }
    return insertToml(toml, group.path, at, row);
}

}  // namespace taut::inputs
