// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/base/json.h"
#include "core/base/toml.h"

// TOML as a tree that a test can cut, and back to text.

inline std::string tomlText(const taut::Toml& v)
{
    using taut::Toml;
    std::string out;
    if (const auto* b = std::get_if<bool>(&v.value)) return *b ? "true" : "false";
    if (const auto* i = std::get_if<std::int64_t>(&v.value)) return std::to_string(*i);
    if (const auto* d = std::get_if<double>(&v.value)) {
        out = taut::shortest(*d);
        return out.find_first_of(".e") == std::string::npos ? out + ".0" : out;
    }
    if (v.text() != nullptr) return taut::tomlQuoted(*v.text());
    if (v.array() != nullptr) {
        for (const Toml& item : *v.array()) out += (out.empty() ? "" : ", ") + tomlText(item);
        return '[' + out + ']';
    }
    for (const auto& [key, value] : *v.table())
        out += (out.empty() ? "" : ", ") + taut::tomlQuoted(key) + " = " + tomlText(value);
    return '{' + out + '}';
}

inline std::string tomlFile(const taut::Toml& root)
{
    std::string out;
    for (const auto& [key, value] : *root.table()) out += taut::tomlQuoted(key) + " = " + tomlText(value) + '\n';
    return out;
}

/// Every key of a tree by its dotted path, tables and list items included.
inline void eachKey(const taut::Toml& v, const std::string& path,
                    const std::function<void(const std::string& path, const taut::Toml& value)>& seen)
{
    if (v.table() != nullptr) {
        for (const auto& [key, value] : *v.table()) {
            const std::string here = path.empty() ? key : path + '.' + key;
            seen(here, value);
            eachKey(value, here, seen);
        }
    } else if (v.array() != nullptr) {
        for (std::size_t i = 0; i < v.array()->size(); ++i)
            eachKey((*v.array())[i], path + '[' + std::to_string(i) + ']', seen);
    }
}

/// The tree without one key; `wanted` is a path that eachKey has given.
inline taut::Toml without(const taut::Toml& v, const std::string& path, const std::string& wanted)
{
    taut::Toml out = v;
    if (v.table() != nullptr) {
        taut::Toml::Table kept;
        for (const auto& [key, value] : *v.table()) {
            const std::string here = path.empty() ? key : path + '.' + key;
            if (here != wanted) kept.emplace_back(key, without(value, here, wanted));
        }
        out.value = kept;
    } else if (v.array() != nullptr) {
        taut::Toml::Array kept;
        for (std::size_t i = 0; i < v.array()->size(); ++i)
            kept.push_back(without((*v.array())[i], path + '[' + std::to_string(i) + ']', wanted));
        out.value = kept;
    }
    return out;
}

/// A file's text with the value at this place (from 1) replaced; the value there is a text in quotes.
inline std::string withValueAt(const std::string& text, int line, int column, const std::string& instead)
{
    std::size_t at = 0;
    for (int n = 1; n < line; ++n) at = text.find('\n', at) + 1;
    at += static_cast<std::size_t>(column - 1);
    return text.substr(0, at) + instead + text.substr(text.find('"', at + 1) + 1);
}
