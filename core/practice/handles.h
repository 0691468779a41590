// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string_view>
#include <vector>

#include "core/practice/world.h"

namespace taut::practice {

/// Where somebody stands at a practice press.
enum class At : std::uint8_t { Panel, Unwind, Table, Stations, Guide, Rewind };
inline constexpr At kEverywhere[] = {At::Panel, At::Unwind, At::Table, At::Guide, At::Stations, At::Rewind};

/// What somebody can put a hand to: a control or a work of hands, as data. Whoever shows it performs `deed`, with `on`,
/// `item` or `to` as was chosen.
struct Handle {
    enum class Sort : std::uint8_t {
        Switch,  ///< on or off
        Push,    ///< done
        Value,   ///< set to a quantity
        Either,  ///< done in one of two ways
        Motion   ///< the web moves: asked twice
    };
    At at{};
    Sort sort{};
    Deed deed;
    Text name;                             ///< as this shop calls it, else what it is
    Text what;                             ///< what it is, where the shop calls it something else; else empty
    Text does;                             ///< the words of doing it, of switching it on, of the first way
    Text undoes;                           ///< of switching it off or of the second way; empty: it cannot be
    std::array<std::string, 2> ways = {};  ///< Either: the deed's item, of the first way and of the second
    Text stands;                           ///< how it stands once it is done or on
    Text rests;                            ///< and how before or off; empty: nothing is to be seen of it
    std::vector<Kind> kinds = {};          ///< of what it can be set to; empty = to nothing
};
/// Everything that this press has, a row each, by where one stands and there in the order in which it is wanted.
[[nodiscard]] std::vector<Handle> handlesOf(const inputs::Press& press);
/// Whether it is on, closed, latched or done; nullopt where nothing of that is to be seen.
[[nodiscard]] std::optional<bool> stands(const World& world, const Handle& handle);
/// What it was set to last.
[[nodiscard]] std::optional<Quantity> setTo(const World& world, const Handle& handle);
/// What a control of this name may be set to; empty for a switch or a work of hands.
[[nodiscard]] std::vector<Kind> kindsOf(std::string_view what, const inputs::Press& press);

}  // namespace taut::practice
