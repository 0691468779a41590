// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/procedure/placeholders.h"

#include <algorithm>

#include "core/units/parse.h"

namespace taut::procedure {

std::vector<Piece> piecesOf(std::string_view text)
{
    std::vector<Piece> pieces;
    while (!text.empty()) {
        const std::size_t open = text.find('{');
        const std::size_t close = open == std::string_view::npos ? open : text.find('}', open);
        if (close == std::string_view::npos) {
            pieces.push_back({false, std::string(text)});
            break;
        }
        if (open > 0) pieces.push_back({false, std::string(text.substr(0, open))});
        pieces.push_back({true, std::string(text.substr(open + 1, close - open - 1))});
        text.remove_prefix(close + 1);
    }
    return pieces;
}

std::optional<Quantity> quantityOf(const Piece& piece, UnitSystem system)
{
    if (!piece.placeholder || !piece.text.starts_with('=')) return std::nullopt;
    const std::string_view both = std::string_view(piece.text).substr(1);
    const std::size_t bar = both.find('|');
    const bool second = bar != std::string_view::npos && system == UnitSystem::Us;
    const std::string_view typed = second ? both.substr(bar + 1) : both.substr(0, bar);
    for (std::size_t kind = 0; kind < kKindCount; ++kind)
        if (auto read = parseQuantity(typed, static_cast<Kind>(kind)); read && !read->unit().empty())
            return Quantity(read->si(), read->kind(), read->unit());
    return std::nullopt;
}

Text filled(std::string_view text, const Filling& filling, UnitSystem system)
{
    Text out;
    std::string source;
    std::vector<std::string> used;
    for (const Piece& piece : piecesOf(text)) {
        if (!piece.placeholder) {
            source += piece.text;
            continue;
        }
        auto at = std::find(used.begin(), used.end(), piece.text);
        if (at == used.end()) {
            const auto with =
                std::find_if(filling.begin(), filling.end(), [&](const auto& f) { return f.first == piece.text; });
            if (const auto quantity = quantityOf(piece, system))
                out.args.emplace_back(quantity->magnitude());
            else
                out.args.push_back(with == filling.end() ? TextArg(piece.text) : with->second);
            used.push_back(piece.text);
            at = used.end() - 1;
        }
        source += '%' + std::to_string(at - used.begin() + 1);
    }
    out.source = source;
    return out;
}

std::string withItem(std::string_view pattern, std::string_view repetition, std::string_view id)
{
    std::string out;
    for (const Piece& piece : piecesOf(pattern)) {
        if (!piece.placeholder)
            out += piece.text;
        else if (piece.text == repetition)
            out += id;
        else
            out += '{' + piece.text + '}';
    }
    return out;
}

}  // namespace taut::procedure
