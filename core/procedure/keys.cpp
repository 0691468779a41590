// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/procedure/keys.h"

#include <algorithm>
#include <numeric>

namespace taut::procedure {
namespace {

/// Letters to change, add or leave out to get from one word to the other.
std::size_t distance(std::string_view a, std::string_view b)
{
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 0; i < a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i + 1;
        for (std::size_t j = 0; j < b.size(); ++j) {
            const std::size_t change = diagonal + (a[i] == b[j] ? 0U : 1U);
            diagonal = row[j + 1];
            row[j + 1] = std::min({change, row[j] + 1, row[j + 1] + 1});
        }
    }
    return row.back();
}

std::string joined(const std::vector<std::string>& words)
{
    std::string all;
    for (const std::string& w : words) all += (all.empty() ? "" : ", ") + w;
    return all;
}

bool isText(const Toml& v) { return v.text() != nullptr; }
bool isFlag(const Toml& v) { return std::holds_alternative<bool>(v.value); }
bool isWhole(const Toml& v) { return std::holds_alternative<std::int64_t>(v.value); }
bool isTable(const Toml& v) { return v.table() != nullptr; }
bool isTextList(const Toml& v)
{
    const auto* list = v.array();
    return list != nullptr && std::all_of(list->begin(), list->end(), isText);
}
bool isTableList(const Toml& v)
{
    const auto* list = v.array();
    return list != nullptr && std::all_of(list->begin(), list->end(), isTable);
}

}  // namespace

std::string nearest(std::string_view word, const std::vector<std::string>& known)
{
    std::string best;
    std::size_t least = word.size() / 3 + 2;  // farther away than that it is another word
    for (const std::string& k : known) {
        const std::size_t d = distance(word, k);
        if (d >= least) continue;
        least = d;
        best = k;
    }
    return best;
}

Keys::Keys(const Toml& table, std::string_view file, std::string what, bool newerFormat, Findings& lint)
    : m_table(table),
      m_file(file),
      m_what(std::move(what)),
      m_line(table.line),
      m_newer(newerFormat),
      m_lint(lint)
{}

std::string Keys::subject() const { return m_file + ':' + std::to_string(m_line) + ' ' + m_what; }

void Keys::wrong(std::string code, Text text, Text remedy)
{
    m_lint.push_back(refuse(std::move(code), subject(), std::move(text), std::move(remedy)));
}

const Toml* Keys::find(std::string_view key)
{
    m_asked.emplace_back(key);
    return m_table.find(key);
}

const Toml* Keys::typed(std::string_view key, bool required, const char* expected, bool (*isIt)(const Toml&))
{
    const Toml* found = find(key);
    if (found == nullptr) {
        if (required)
            wrong("lint.missing_key", {"The key %1 is missing here.", {std::string(key)}},
                  {"Write %1 = with %2.", {std::string(key), std::string(expected)}});
        return nullptr;
    }
    if (isIt(*found)) return found;
    wrong("lint.wrong_type",
          {"%1 is %2; expected is %3.", {std::string(key), std::string(found->typeName()), std::string(expected)}},
          {"Write %1 = with %2.", {std::string(key), std::string(expected)}});
    return nullptr;
}

std::string Keys::text(std::string_view key, bool required)
{
    const Toml* found = typed(key, required, "a text between quotes", isText);
    if (found == nullptr) return {};
    if (required && found->text()->empty())
        wrong("lint.missing_key", {"The text of %1 is empty.", {std::string(key)}},
              {"Write %1 = with %2.", {std::string(key), std::string("a text between quotes")}});
    return *found->text();
}

bool Keys::flag(std::string_view key, bool fallback)
{
    const Toml* found = typed(key, false, "true or false", isFlag);
    return found == nullptr ? fallback : std::get<bool>(found->value);
}

std::optional<std::int64_t> Keys::whole(std::string_view key, bool required)
{
    const Toml* found = typed(key, required, "a whole number", isWhole);
    if (found == nullptr) return std::nullopt;
    return std::get<std::int64_t>(found->value);
}

std::vector<std::string> Keys::words(std::string_view key)
{
    std::vector<std::string> all;
    const Toml* found = typed(key, false, "a list of texts", isTextList);
    if (found != nullptr)
        for (const Toml& w : *found->array()) all.push_back(*w.text());
    return all;
}

std::vector<const Toml*> Keys::tables(std::string_view key)
{
    std::vector<const Toml*> all;
    const Toml* found = typed(key, false, "a list of tables", isTableList);
    if (found != nullptr)
        for (const Toml& t : *found->array()) all.push_back(&t);
    return all;
}

const Toml* Keys::table(std::string_view key) { return typed(key, false, "a table", isTable); }

std::string Keys::oneOf(std::string_view key, const std::vector<std::string>& allowed, std::string fallback,
                        bool required)
{
    std::string word = text(key, required);
    if (word.empty()) return fallback;
    if (std::find(allowed.begin(), allowed.end(), word) != allowed.end()) return word;
    wrong("lint.unknown_word", {"%1 = \"%2\" is not a word that is known here.", {std::string(key), word}},
          {"Use one of: %1.", {joined(allowed)}});
    return fallback;
}

void Keys::finish()
{
    for (const auto& [key, value] : *m_table.table()) {
        if (std::find(m_asked.begin(), m_asked.end(), key) != m_asked.end()) continue;
        const std::string near = nearest(key, m_asked);
        Finding f = refuse("lint.unknown_key", m_file + ':' + std::to_string(value.line) + ' ' + m_what,
                           {"The key %1 is not known here.", {key}},
                           near.empty() ? Text("Take it out, or look up what it is called.")
                                        : Text{"Did you mean %1? Else take it out.", {near}});
        if (m_newer) f.severity = Severity::Note;
        m_lint.push_back(std::move(f));
    }
}

}  // namespace taut::procedure
