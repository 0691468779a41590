// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "core/base/result.h"

namespace taut {

/// Which members of an object are wanted, each narrowed in turn; none: all of them. The items of a list are narrowed as
/// the list is.
struct JsonMask {
    std::string_view key;
    std::vector<JsonMask> members;
    /// nullptr: not wanted.
    [[nodiscard]] const JsonMask* find(std::string_view name) const noexcept;
};

/// A JSON value (RFC 8259) whose objects keep the order in which keys were set. Whole numbers stay whole; other
/// numbers are written as the shortest text that reads back to the same double. A value is equal to what its own text
/// reads back as. The parser libraries stay behind
/// json.cpp and json_quick.cpp.
class Json {
public:
    using Array = std::vector<Json>;
    using Member = std::pair<std::string, Json>;
    using Object = std::vector<Member>;

    Json() = default;                                                 ///< null
    Json(std::nullptr_t) {}                                           // NOLINT
    Json(bool b) : m_value(b) {}                                      // NOLINT
    Json(int n) : m_value(static_cast<std::int64_t>(n)) {}            // NOLINT
    Json(std::int64_t n) : m_value(n) {}                              // NOLINT
    Json(std::uint64_t n) : m_value(static_cast<std::int64_t>(n)) {}  // NOLINT
    Json(double d);                                                   // NOLINT: whole where its text would be
    Json(const char* s) : m_value(std::string(s)) {}                  // NOLINT
    Json(std::string s) : m_value(std::move(s)) {}                    // NOLINT
    Json(std::string_view s) : m_value(std::string(s)) {}             // NOLINT
    Json(const SharedString& s) : m_value(s.str()) {}                 // NOLINT
    Json(Array a) : m_value(std::move(a)) {}                          // NOLINT
    Json(Object o) : m_value(std::move(o)) {}                         // NOLINT
    [[nodiscard]] static Json array() { return Json(Array{}); }
    [[nodiscard]] static Json object() { return Json(Object{}); }

    [[nodiscard]] bool isNull() const noexcept { return std::holds_alternative<std::monostate>(m_value); }
    [[nodiscard]] bool isWhole() const noexcept { return std::holds_alternative<std::int64_t>(m_value); }
    [[nodiscard]] bool isString() const noexcept { return std::holds_alternative<std::string>(m_value); }
    [[nodiscard]] bool isNumber() const noexcept;
    [[nodiscard]] bool isBool() const noexcept { return std::holds_alternative<bool>(m_value); }
    [[nodiscard]] bool isArray() const noexcept { return std::holds_alternative<Array>(m_value); }
    [[nodiscard]] bool isObject() const noexcept { return std::holds_alternative<Object>(m_value); }

    /// The value, or the fallback when it is of another type.
    [[nodiscard]] std::string text(std::string fallback = {}) const;
    [[nodiscard]] double number(double fallback = 0) const;
    [[nodiscard]] std::int64_t integer(std::int64_t fallback = 0) const;
    [[nodiscard]] bool boolean(bool fallback = false) const;
    [[nodiscard]] const Array& items() const;     ///< empty when not an array
    [[nodiscard]] const Object& members() const;  ///< empty when not an object

    /// Member by key; null when absent.
    [[nodiscard]] const Json& operator[](std::string_view key) const;
    [[nodiscard]] bool has(std::string_view key) const;
    /// Sets or replaces a member (turns null into an object). Returns *this for chaining.
    Json& set(std::string key, Json value);
    /// Appends to an array (turns null into an array).
    Json& add(Json value);

    [[nodiscard]] std::string dump() const;                          ///< compact, one line, UTF-8
    [[nodiscard]] static Result<Json> parse(std::string_view text);  ///< code json.broken, says where
    /// Values are made of what is wanted alone, which takes a fraction of the time; all of the text is read and judged.
    [[nodiscard]] static Result<Json> parse(std::string_view text, const JsonMask& wanted);
    /// As a text of it would be parsed with that mask.
    [[nodiscard]] Json narrowed(const JsonMask& wanted) const;
    friend bool operator==(const Json&, const Json&) = default;

private:
    std::variant<std::monostate, bool, std::int64_t, double, std::string, Array, Object> m_value;
};

/// The shortest text that reads back to the same double; "0" for zero of either sign.
[[nodiscard]] std::string shortest(double value);

}  // namespace taut
