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

}  // namespace taut::inputs
