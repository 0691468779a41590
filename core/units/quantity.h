// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <optional>
#include <string>
#include <utility>

#include "core/base/kind.h"
#include "core/base/result.h"

namespace taut {

/// A measure of one dimension, known while compiling: what formulas are written in. Holds SI; adds only to its like,
/// multiplies and divides into the right dimension. A plain number is never a Measure by accident.
template <int L, int M, int T, int I = 0>
class Measure {
public:
    static constexpr Dimension kDimension{L, M, T, I};
    constexpr Measure() = default;
    [[nodiscard]] static constexpr Measure si(double value) noexcept { return Measure(value); }
    [[nodiscard]] constexpr double si() const noexcept { return m_si; }

    // NOLINTNEXTLINE(modernize-use-nullptr): what the compiler makes of it compares with zero
    friend constexpr auto operator<=>(const Measure&, const Measure&) = default;
    friend constexpr Measure operator+(Measure a, Measure b) noexcept { return Measure(a.m_si + b.m_si); }
    friend constexpr Measure operator-(Measure a, Measure b) noexcept { return Measure(a.m_si - b.m_si); }
    constexpr Measure operator-() const noexcept { return Measure(-m_si); }
    friend constexpr Measure operator*(Measure a, double f) noexcept { return Measure(a.m_si * f); }
    friend constexpr Measure operator*(double f, Measure a) noexcept { return Measure(a.m_si * f); }
    friend constexpr Measure operator/(Measure a, double f) noexcept { return Measure(a.m_si / f); }

private:
    explicit constexpr Measure(double v) noexcept : m_si(v) {}
    double m_si = 0;
};
template <int L1, int M1, int T1, int I1, int L2, int M2, int T2, int I2>
[[nodiscard]] constexpr auto operator*(Measure<L1, M1, T1, I1> a, Measure<L2, M2, T2, I2> b) noexcept
{
    return Measure<L1 + L2, M1 + M2, T1 + T2, I1 + I2>::si(a.si() * b.si());
}
template <int L1, int M1, int T1, int I1, int L2, int M2, int T2, int I2>
[[nodiscard]] constexpr auto operator/(Measure<L1, M1, T1, I1> a, Measure<L2, M2, T2, I2> b) noexcept
{
    return Measure<L1 - L2, M1 - M2, T1 - T2, I1 - I2>::si(a.si() / b.si());
}

using Ratio = Measure<0, 0, 0>;
using Length = Measure<1, 0, 0>;
using Area = Measure<2, 0, 0>;
using Mass = Measure<0, 1, 0>;
using Grammage = Measure<-2, 1, 0>;
using Density = Measure<-3, 1, 0>;
using AreaPerMass = Measure<2, -1, 0>;
using Force = Measure<1, 1, -2>;
using ForcePerWidth = Measure<0, 1, -2>;
using Pressure = Measure<-1, 1, -2>;
using Torque = Measure<2, 1, -2>;
using TorquePerPressure = Measure<3, 0, 0>;
using TorquePerCurrent = Measure<2, 1, -2, -1>;
using Speed = Measure<1, 0, -1>;
using Acceleration = Measure<1, 0, -2>;
using Time = Measure<0, 0, 1>;
using Frequency = Measure<0, 0, -1>;
using Inertia = Measure<2, 1, 0>;
using CountPerLength = Measure<-1, 0, 0>;
using Power = Measure<2, 1, -3>;
using Current = Measure<0, 0, 0, 1>;
using Viscosity = Measure<-1, 1, -1>;

/// The Measure that a kind is of.
template <Kind K>
using MeasureOf = Measure<dimensionOf(K).length, dimensionOf(K).mass, dimensionOf(K).time, dimensionOf(K).current>;

/// A quantity of any kind, known while running: what is entered, stored, shown and carried. Remembers the unit in which
/// people of this press speak of it, and, when somebody typed it, the text as typed ("13 1/4 in").
class Quantity {
public:
    Quantity() = default;
    Quantity(double si, Kind kind, SharedString unit = {}, SharedString entered = {})
        : m_si(si),
          m_kind(kind),
          m_unit(std::move(unit)),
          m_entered(std::move(entered))
    {}
    /// From a measure; the kind must have its dimension.
    template <int L, int M, int T, int I>
    Quantity(Measure<L, M, T, I> m, Kind kind, SharedString unit = {}) : Quantity(m.si(), kind, std::move(unit))
    {
        assert((dimensionOf(kind) == Dimension{L, M, T, I}));
    }

    [[nodiscard]] double si() const noexcept { return m_si; }
    [[nodiscard]] Kind kind() const noexcept { return m_kind; }
    [[nodiscard]] const SharedString& unit() const noexcept { return m_unit; }        ///< symbol, "" = no preference
    [[nodiscard]] const SharedString& entered() const noexcept { return m_entered; }  ///< "" = computed
    [[nodiscard]] Magnitude magnitude() const noexcept { return {m_si, m_kind, m_unit}; }
    /// The same quantity spoken of in another unit of its kind.
    [[nodiscard]] Quantity in(SharedString unit) const { return {m_si, m_kind, std::move(unit), {}}; }

    /// As a Measure; the kind's dimension must be this one (asserted: kinds are checked where quantities are read).
    template <Kind K>
    [[nodiscard]] MeasureOf<K> as() const
    {
        assert(dimensionOf(m_kind) == dimensionOf(K));
        return MeasureOf<K>::si(m_si);
    }
    friend bool operator==(const Quantity& a, const Quantity& b) { return a.m_si == b.m_si && a.m_kind == b.m_kind; }

private:
    double m_si = 0;
    Kind m_kind = Kind::Count;
    SharedString m_unit;
    SharedString m_entered;
};

/// A quantity whose kind is fixed by where it stands (the width of a press is a length): checked while compiling.
template <Kind K>
class Entry {
public:
    Entry() = default;
    explicit Entry(MeasureOf<K> m, SharedString unit = {}) : m_quantity(m.si(), K, std::move(unit)) {}
    explicit Entry(Quantity q) : m_quantity(std::move(q)) { assert(m_quantity.kind() == K); }
    [[nodiscard]] MeasureOf<K> measure() const { return MeasureOf<K>::si(m_quantity.si()); }
    [[nodiscard]] double si() const noexcept { return m_quantity.si(); }
    [[nodiscard]] const Quantity& quantity() const noexcept { return m_quantity; }
    friend bool operator==(const Entry&, const Entry&) = default;

private:
    Quantity m_quantity{0, K};
};

}  // namespace taut
