// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <charconv>
#include <cmath>

#include "core/base/json.h"
#include "core/base/utf8.h"

namespace taut {

namespace {

constexpr double kPlain = 1e16;  ///< from here on with an exponent, which reads back as no whole number

void writeString(std::string& out, std::string_view text)
{
    constexpr std::string_view kDigits = "0123456789abcdef";
    out += '"';
    for (const char c : cleanUtf8(text)) {
        const auto byte = static_cast<unsigned char>(c);
        switch (c) {
        case '"': out += "\\\""; break;
        case '\\': out += "\\\\"; break;
        case '\b': out += "\\b"; break;
        case '\f': out += "\\f"; break;
        case '\n': out += "\\n"; break;
        case '\r': out += "\\r"; break;
        case '\t': out += "\\t"; break;
        default:
            if (byte < 0x20U) {
                out += "\\u00";
                out += kDigits[byte >> 4U];
                out += kDigits[byte & 0x0FU];
            } else {
                out += c;
            }
        }
    }
    out += '"';
}

void write(std::string& out, const Json& json)
{
    char between = 0;
    const auto separate = [&] {
        if (between != 0) out += between;
        between = ',';
    };
    if (json.isObject()) {
        out += '{';
        for (const Json::Member& member : json.members()) {
            separate();
            writeString(out, member.first);
            out += ':';
            write(out, member.second);
        }
        out += '}';
    } else if (json.isArray()) {
        out += '[';
        for (const Json& item : json.items()) {
            separate();
            write(out, item);
        }
        out += ']';
    } else if (json.isString()) {
        writeString(out, json.text());
    } else if (json.isBool()) {
        out += json.boolean() ? "true" : "false";
    } else if (json.isWhole()) {
        out += std::to_string(json.integer());
    } else if (json.isNumber() && std::isfinite(json.number())) {
        out += shortest(json.number());
    } else {
        out += "null";  // RFC 8259 has no NaN and no infinity
    }
}

}  // namespace

Json::Json(double d) : m_value(d)
{
    if (std::fabs(d) < kPlain && std::trunc(d) == d) m_value = static_cast<std::int64_t>(d);
}

std::string Json::dump() const
{
    std::string out;
    write(out, *this);
    return out;
}

std::string shortest(double value)
{
    if (value == 0) return "0";
    // Plain notation while a person can still read it; the longest such text has 22 characters.
    const double size = std::fabs(value);
    const bool plain = size >= 1e-4 && size < kPlain;
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value,
                                   plain ? std::chars_format::fixed : std::chars_format::scientific);
    return {text.data(), end.ptr};
}

}  // namespace taut
