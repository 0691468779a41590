// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <cstddef>
#include <cstring>
#include <iosfwd>
#include <new>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>

namespace taut {

/// A text that never changes once it is made. A literal is referred to and never copied, anything else is kept once
/// for all its copies: for the many words of a target set, most of them literals, that are handed on again and again.
/// Copies may be used in several threads at once.
class SharedString {
public:
    SharedString() noexcept = default;
    /// A literal: it stands in the program for as long as it runs.
    template <std::size_t N>
    SharedString(const char (&literal)[N]) noexcept : m_view(literal, N - 1)  // NOLINT: a literal is one
    {}
    template <std::size_t N>
    SharedString(char (&buffer)[N]) = delete;                                        ///< a buffer changes
    SharedString(const std::string& text) : SharedString(std::string_view(text)) {}  // NOLINT: a text is one
    explicit SharedString(std::string_view text)
    {
        if (!text.empty()) keep(text);
    }
    /// Text of a pointer is copied: nobody can tell how long it lives.
    template <class Pointer>
    requires std::is_same_v<Pointer, const char*> || std::is_same_v<Pointer, char*> SharedString(const Pointer& text)
        : SharedString(std::string_view(text))  // NOLINT
    {}
    /// Of a table that stands in the program for as long as it runs; not copied, and ends with a zero.
    [[nodiscard]] static SharedString ofTable(std::string_view text) noexcept
    {
        SharedString s;
        s.m_view = text;
        return s;
    }

    SharedString(const SharedString& other) noexcept : m_view(other.m_view), m_own(other.m_own) { hold(); }
    SharedString(SharedString&& other) noexcept
        : m_view(std::exchange(other.m_view, {})),
          m_own(std::exchange(other.m_own, nullptr))
    {}
    SharedString& operator=(SharedString other) noexcept
    {
        std::swap(m_view, other.m_view);
        std::swap(m_own, other.m_own);
        return *this;
    }
    ~SharedString()
    {
        if (m_own != nullptr) release();
    }

    [[nodiscard]] constexpr operator std::string_view() const noexcept { return m_view; }  // NOLINT: reads as one
    [[nodiscard]] constexpr std::string_view view() const noexcept { return m_view; }
    explicit operator std::string() const { return std::string(m_view); }
    [[nodiscard]] const char* c_str() const noexcept { return m_view.empty() ? "" : m_view.data(); }
    [[nodiscard]] std::string str() const { return std::string(m_view); }
    [[nodiscard]] constexpr bool empty() const noexcept { return m_view.empty(); }
    [[nodiscard]] constexpr std::size_t size() const noexcept { return m_view.size(); }
    [[nodiscard]] constexpr char operator[](std::size_t at) const noexcept { return m_view[at]; }
    [[nodiscard]] constexpr std::size_t find(std::string_view part, std::size_t from = 0) const noexcept
    {
        return m_view.find(part, from);
    }
    [[nodiscard]] constexpr bool starts_with(std::string_view part) const noexcept { return m_view.starts_with(part); }

    friend constexpr bool operator==(const SharedString& a, const SharedString& b) noexcept
    {
        return a.m_view == b.m_view;
    }
    template <class Other>
    requires std::is_convertible_v<const Other&, std::string_view>
    friend constexpr bool operator==(const SharedString& a, const Other& b) noexcept
    {
        return a.m_view == std::string_view(b);
    }

    template <class Other>
    requires std::is_convertible_v<const Other&, std::string_view>
    friend std::string operator+(const SharedString& a, const Other& b) { return a.str().append(std::string_view(b)); }
    template <class Other>
    requires(std::is_convertible_v<const Other&, std::string_view> &&
             !std::is_same_v<Other, SharedString>) friend std::string
    operator+(const Other& a, const SharedString& b)
    {
        return std::string(std::string_view(a)).append(b.view());
    }

    friend std::ostream& operator<<(std::ostream& out, const SharedString& text);

private:
    /// Counts who holds the text that lies right behind it, in the same piece of memory.
    struct Kept {
        std::atomic<unsigned> holders{1};
    };
    void keep(std::string_view text)
    {
        void* const memory = ::operator new(sizeof(Kept) + text.size() + 1);
        m_own = new (memory) Kept;
        char* const behind = static_cast<char*>(memory) + sizeof(Kept);
        std::memcpy(behind, text.data(), text.size());
        behind[text.size()] = '\0';
        m_view = {behind, text.size()};
    }
    void hold() const noexcept
    {
        if (m_own != nullptr) m_own->holders.fetch_add(1, std::memory_order_relaxed);
    }
    void release() noexcept
    {
        if (m_own->holders.fetch_sub(1, std::memory_order_acq_rel) == 1) ::operator delete(m_own);
    }
    std::string_view m_view;  ///< always ends with a zero
    Kept* m_own = nullptr;
};

}  // namespace taut
