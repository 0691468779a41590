// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/made/gapped.h"

#include <charconv>

namespace taut::app::made {

namespace {

/// No text of a document has this sign in it; JSON writes it as six others.
constexpr char kSign = '\x01';
constexpr std::string_view kWritten = "\"\\u0001";

}  // namespace

Json Gapped::mark(std::size_t gap) { return Json(kSign + std::to_string(gap)); }

Gapped::Gapped(std::string_view text)
{
    while (true) {
        const std::size_t at = text.find(kWritten);
        m_text.append(text.substr(0, at));
        if (at == std::string_view::npos) return;
        text.remove_prefix(at + kWritten.size());
        std::size_t gap = 0;
        const char* const end = std::from_chars(text.data(), text.data() + text.size(), gap).ptr;
        text.remove_prefix(static_cast<std::size_t>(end - text.data()) + 1);  // and the quote
        m_pieces.push_back({m_text.size(), gap});
    }
}

std::string Gapped::filled(std::span<const std::string> fills) const
{
    std::size_t size = m_text.size();
    for (const Piece& piece : m_pieces) size += fills[piece.gap].size();
    std::string text;
    text.reserve(size);
    std::size_t from = 0;
    for (const Piece& piece : m_pieces) {
        text.append(m_text, from, piece.end - from).append(fills[piece.gap]);
        from = piece.end;
    }
    return text.append(m_text, from);
}

std::string inJson(std::string_view text) { return Json(text).dump(); }

}  // namespace taut::app::made
