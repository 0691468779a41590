// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/inputs/key_reader.h"

namespace taut::inputs {

namespace {

std::size_t distance(std::string_view a, std::string_view b)
{
    std::vector<std::size_t> row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j) row[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t above = row[j];
            row[j] = std::min({above + 1, row[j - 1] + 1, diagonal + (a[i - 1] == b[j - 1] ? 0U : 1U)});
            diagonal = above;
        }
    }
    return row[b.size()];
}

}  // namespace

void FileNotes::add(int line, int column, std::string_view key, Finding finding)
{
    finding.subject = m_file + ':' + std::to_string(line) + ':' + std::to_string(column);
    if (!key.empty()) finding.subject += ' ' + std::string(key);
    m_all.push_back({line, column, std::move(finding)});
}

void FileNotes::moveTo(Findings& notes)
{
    std::stable_sort(m_all.begin(), m_all.end(), [](const Placed& a, const Placed& b) {
        return a.line != b.line ? a.line < b.line : a.column < b.column;
    });
    for (Placed& p : m_all) notes.push_back(std::move(p.finding));
    m_all.clear();
}

std::string listedWords(std::span<const std::string> words)
{
    std::string out;
    for (const std::string& w : words) out += (out.empty() ? "" : ", ") + w;
    return out;
}

std::string nearest(std::string_view word, std::span<const std::string> known)
{
    std::string best;
    std::size_t least = std::max<std::size_t>(2, word.size() / 3) + 1;
    for (const std::string& k : known) {
        const std::size_t d = distance(word, k);
        if (d < least && d < k.size()) {
            least = d;
            best = k;
        }
    }
    return best;
}

const Toml* KeyReader::ask(std::string_view key, KeyAsked::Sort sort, std::span<const Kind> kinds)
{
    m_asked.emplace_back(key);
    const Toml* value = m_table->find(key);
    if (m_notes->asked != nullptr)
        m_notes->asked->push_back({m_path, std::string(key), sort, {}, {kinds.begin(), kinds.end()}, value != nullptr});
    return value;
}

void KeyReader::narrow(KeyAsked::Sort sort, std::vector<std::string> words)
{
    if (m_notes->asked == nullptr) return;
    m_notes->asked->back().sort = sort;
    m_notes->asked->back().words = std::move(words);
}

void KeyReader::done()
{
    // A file that names a hundred unknown keys is not the file that was meant: the rest is one sentence.
    constexpr std::size_t kMostNamed = 100;
    if (m_ignoreRest) return;
    std::size_t unknown = 0;
    for (const auto& [key, value] : *m_table->table()) {
        if (std::find(m_asked.begin(), m_asked.end(), key) != m_asked.end()) continue;
        if (++unknown > kMostNamed) {
            m_notes->add(value.line, value.column, dotted(key),
                         {"input.unknown_key",
                          m_notes->newer ? Severity::Note : Severity::Stop,
                          {},
                          "Here and below stand more keys that are not known.",
                          "Check that this is the file you meant."});
            break;
        }
        if (m_notes->newer) {
            m_notes->add(value.line, value.column, dotted(key),
                         {"input.unknown_key",
                          Severity::Note,
                          {},
                          {"The key %1 is not known to this version.", {key}},
                          "It is ignored."});
            continue;
        }
        const std::string near = nearest(key, m_asked);
        m_notes->add(value.line, value.column, dotted(key),
                     refuse("input.unknown_key", {}, {"The key %1 is not known here.", {key}},
                            near.empty() ? Text{"Take it out. Known here: %1.", {listedWords(m_asked)}}
                                         : Text{"Was %1 meant? Else take it out.", {near}}));
    }
}

}  // namespace taut::inputs
