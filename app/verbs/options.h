// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/base/result.h"

namespace taut::app::verbs {

/// One option of a verb: "--press P"; `value` names what it takes, "" for a switch.
struct OptionSpec {
    std::string_view name;
    std::string_view value;
    std::string_view help;
    bool often = false;  ///< may be given more than once
};
/// How a verb is called.
struct VerbSpec {
    std::string_view name;
    std::string_view arguments;  ///< "ID name=VALUE..."
    std::string_view summary;
    std::vector<OptionSpec> options;
    std::size_t least = 0, most = 0;  ///< words that are no options
};

/// What was said on the command line, checked against the verb's own list.
class Options {
public:
    /// Whether an option was given.
    [[nodiscard]] bool has(std::string_view name) const;
    /// The last value given for an option, "" when it was not given.
    [[nodiscard]] std::string value(std::string_view name) const;
    /// All values given for an option, in order.
    [[nodiscard]] std::vector<std::string> values(std::string_view name) const;
    /// What is no option, in order.
    [[nodiscard]] const std::vector<std::string>& words() const { return m_words; }
    /// Whether a program reads the answer.
    [[nodiscard]] bool json() const { return has("--json"); }

private:
    friend Result<Options> readOptions(const VerbSpec&, std::span<const std::string>);
    std::vector<std::pair<std::string, std::string>> m_given;
    std::vector<std::string> m_words;
};

/// Reads the words after a verb. "--name value" and "--name=value" are the same; after "--" everything is a word.
/// Codes: option.unknown (names the nearest), option.no_value, option.unwanted_value, option.too_many_words,
/// option.too_few_words. --json and --help belong to every verb.
[[nodiscard]] Result<Options> readOptions(const VerbSpec& spec, std::span<const std::string> args);

/// The one of `known` that is the fewest letters away from `word` (insert, delete, replace, swap neighbours), "" when
/// none is near.
[[nodiscard]] std::string nearest(std::string_view word, std::span<const std::string> known);

/// The help of one verb, lines ending in a line feed.
[[nodiscard]] std::string helpFor(const VerbSpec& spec);

}  // namespace taut::app::verbs
