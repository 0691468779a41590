// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cassert>
#include <utility>
#include <variant>

#include "core/base/finding.h"

namespace taut {

/// A value, or the Finding that says why there is none. Expected failure travels as this; exceptions are for bugs.
template <class T>
class [[nodiscard]] Result {
public:
    Result(T value) : m_state(std::in_place_index<0>, std::move(value)) {}        // NOLINT: a value is a result
    Result(Finding error) : m_state(std::in_place_index<1>, std::move(error)) {}  // NOLINT

    explicit operator bool() const noexcept { return m_state.index() == 0; }
    [[nodiscard]] const T& value() const&
    {
        assert(*this);
        return std::get<0>(m_state);
    }
    [[nodiscard]] T& value() &
    {
        assert(*this);
        return std::get<0>(m_state);
    }
    [[nodiscard]] T&& value() &&
    {
        assert(*this);
        return std::get<0>(std::move(m_state));
    }
    [[nodiscard]] const Finding& error() const
    {
        assert(!*this);
        return std::get<1>(m_state);
    }

    const T& operator*() const& { return value(); }
    T& operator*() & { return value(); }
    T&& operator*() && { return std::move(*this).value(); }
    const T* operator->() const { return &value(); }
    T* operator->() { return &value(); }

private:
    std::variant<T, Finding> m_state;
};

/// A Result with nothing to give but success.
struct Done {};

}  // namespace taut
