// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/inputs/tag.h"

// Tags as tests write them.

/// "<GS>", "<RS>" and "<EOT>" stand for the characters that a scanner sends.
inline std::string scanned(std::string text)
{
    const std::pair<const char*, char> signs[] = {{"<GS>", '\x1d'}, {"<RS>", '\x1e'}, {"<EOT>", '\x04'}};
    for (const auto& [word, sign] : signs)
        for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word))
            text.replace(at, std::string(word).size(), 1, sign);
    return text;
}

/// The tag's refusal, or "".
inline std::string codeOf(const std::string& text, const taut::inputs::TagOptions& options = {})
{
    const auto tag = taut::inputs::readTag(scanned(text), options);
    return tag ? "" : tag.error().code;
}

/// "id text, ..." of all that was read; parts of one identifier with a stroke between.
inline std::string listed(const taut::inputs::Tag& tag)
{
    std::string out;
    for (const taut::inputs::TagField& field : tag.fields) {
        if (field.part > 0)
            out += '|';
        else
            out += (out.empty() ? "" : ", ") + field.id + ' ';
        out += field.text;
    }
    return out;
}

/// Application identifiers as one element string; a separator where a field is of free length or of no length that
/// every reader knows.
inline std::string written(const std::vector<taut::inputs::TagField>& fields)
{
    std::string out;
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (fields[i].part == 0) out += fields[i].id;
        out += fields[i].text;
        const bool partFollows = i + 1 < fields.size() && fields[i + 1].part > 0;
        const std::string two = fields[i].id.substr(0, 2);
        const bool known = two <= "04" || (two >= "11" && two <= "20") || (two >= "31" && two <= "36") || two == "41";
        if (!partFollows && !known && i + 1 < fields.size()) out += '\x1d';
    }
    return out;
}
