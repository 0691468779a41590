// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

#include "core/base/kind.h"
#include "core/base/shared_string.h"

namespace taut {

struct Text;
/// An argument of a Text: words (never translated: a name, a file, a key), a whole number, a quantity, or other Texts,
/// which are said in turn, set off by commas.
using TextArg = std::variant<std::string, std::int64_t, Magnitude, std::vector<Text>>;

/// What core says: an English source with %1, %2 ... and its arguments. The program's text room turns it into a
/// sentence of a person's language and units; units/plain.h into English for files. Programs branch on codes, not on
/// this.
struct Text {
    SharedString source;
    std::vector<TextArg> args;

    Text() = default;
    /// A literal is a Text; a Text is no SharedString, so this is never taken for the copy.
    template <class English>
    // NOLINTNEXTLINE(bugprone-forwarding-reference-overload): the check knows enable_if and not yet requires
    requires std::is_convertible_v<English, SharedString> Text(English&& english)
        : source(std::forward<English>(english))
    {}
    Text(SharedString english, std::vector<TextArg> with) : source(std::move(english)), args(std::move(with)) {}

    [[nodiscard]] bool empty() const noexcept { return source.empty(); }
    friend bool operator==(const Text&, const Text&) = default;
};

}  // namespace taut
