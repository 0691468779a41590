// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/inputs/tag_identifiers.h"

// How fields come out of the text that a scanner sends.
namespace taut::inputs {

/// One field as its carrier sets it apart, not yet judged; views into the scanned text.
struct TagPiece {
    TagSystem system{};
    std::string_view id, text;
    bool escaped = false;  ///< %2F stands for a character, as in a web address
};

/// Takes the pieces of one scanned text and judges each against the table of identifiers.
class TagReader {
public:
    TagReader(std::string_view scanned, const TagOptions& options) : m_scanned(scanned), m_options(options) {}

    /// Everything that the text carries; the fault that stands first in it, if any.
    [[nodiscard]] std::optional<Finding> readAll();
    [[nodiscard]] std::vector<TagField>& fields() { return m_fields; }

private:
    std::optional<Finding> take(const TagPiece& piece, std::span<const TagIdentifier> parts);
    std::optional<Finding> elements(std::string_view rest);
    std::optional<Finding> dataField(std::string_view text);
    std::optional<Finding> dataFields(std::string_view rest);
    std::optional<Finding> envelope(std::string_view rest);
    std::optional<Finding> link(std::string_view rest);
    std::optional<Finding> linkPath(std::string_view path);
    std::optional<Finding> linkQuery(std::string_view query);

    [[nodiscard]] std::size_t placeOf(const char* at) const;
    [[nodiscard]] Finding fault(const char* code, const char* what, const char* at,
                                std::vector<TextArg> with = {}) const;

    std::string_view m_scanned;
    TagOptions m_options;
    std::vector<TagField> m_fields;
};

/// A finding about a tag: `place` is the first argument of its text, `with` are those behind it.
[[nodiscard]] Finding tagFinding(const char* code, const char* what, std::size_t place, std::vector<TextArg> with);

/// What fields say together: several that disagree or exclude each other refuse the tag; what needs another, or is odd,
/// is noted.
[[nodiscard]] std::optional<Finding> checkTogether(const std::vector<TagField>& fields, Findings& notes);

}  // namespace taut::inputs
