// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cassert>
#include <utility>
#include <vector>

#include "core/physics/domain.h"
#include "core/physics/formula.h"

// How a typed function becomes an entry of the formula catalogue: the entry calls the function, so that no relation
// stands in the program twice.
namespace taut::physics::catalogue {

template <class T>
[[nodiscard]] constexpr T fromSi(double value) noexcept
{
    if constexpr (std::is_same_v<T, double>)
        return value;
    else
        return T::si(value);
}
template <class T>
[[nodiscard]] constexpr Dimension dimension() noexcept
{
    if constexpr (std::is_same_v<T, double>)
        return {};
    else
        return T::kDimension;
}

template <auto Function>
struct Typed;
template <class R, class... A, R (*Function)(A...) noexcept>
struct Typed<Function> {
    static constexpr std::array<Dimension, sizeof...(A)> kArguments{dimension<A>()...};
    static constexpr Dimension kResult = dimension<R>();
    static double call(std::span<const double> si) { return spread(si, std::index_sequence_for<A...>{}); }

private:
    template <std::size_t... I>
    static double spread(std::span<const double> si, std::index_sequence<I...>)
    {
        return siOf(Function(fromSi<A>(si[I])...));
    }
};

/// One argument of one kind.
[[nodiscard]] inline Argument argument(std::string_view symbol, std::string_view name, Kind kind)
{
    return {symbol, name, {kind}};
}

// What many formulas ask.
[[nodiscard]] inline Argument span() { return argument("L", "length of the span", Kind::Length); }
[[nodiscard]] inline Argument width() { return argument("w", "web width", Kind::Length); }
[[nodiscard]] inline Argument speed() { return argument("v", "web speed", Kind::Speed); }
[[nodiscard]] inline Argument time() { return argument("t", "time", Kind::Time); }

/// An entry whose arguments and result must have the dimensions of the typed function.
template <auto Function>
[[nodiscard]] Formula entry(std::string_view id, std::string_view symbols, std::vector<Argument> arguments,
                            std::vector<Kind> results, std::string_view valid, std::string_view source)
{
    using F = Typed<Function>;
    assert(arguments.size() == F::kArguments.size());
    for (std::size_t i = 0; i < arguments.size(); ++i) assert(dimensionOf(arguments[i].kinds[0]) == F::kArguments[i]);
    assert(dimensionOf(results[0]) == F::kResult);
    return {id, symbols, std::move(arguments), std::move(results), valid, source, &F::call};
}

[[nodiscard]] std::vector<Formula> rollFormulas();     ///< R, W
[[nodiscard]] std::vector<Formula> tensionFormulas();  ///< T, B
[[nodiscard]] std::vector<Formula> spanFormulas();     ///< D, C, P
[[nodiscard]] std::vector<Formula> guideFormulas();    ///< G, N
[[nodiscard]] std::vector<Formula> printFormulas();    ///< F
[[nodiscard]] std::vector<Formula> motionFormulas();   ///< V

}  // namespace taut::physics::catalogue
