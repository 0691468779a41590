// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/base/text.h"

namespace taut {

/// Note: worth knowing. Warn: think before going on. Stop: this cannot work as it stands.
enum class Severity : std::uint8_t { Note, Warn, Stop };

/// One shape for a wrong key, a lint, a closed gate, a broken seal.
struct Finding {
    std::string code;  ///< stable, dotted, lower case: programs branch on it ("quantity.unknown_unit")
    Severity severity{Severity::Stop};
    std::string subject;  ///< what it is about: "north.toml:41:1 zone[0].setting.least", a step id, "seal 17"
    Text text;            ///< what is wrong
    Text remedy;          ///< what to do
    friend bool operator==(const Finding&, const Finding&) = default;
};
using Findings = std::vector<Finding>;

/// A finding of severity Stop.
[[nodiscard]] inline Finding refuse(std::string code, std::string subject, Text text, Text remedy = {})
{
    return Finding{std::move(code), Severity::Stop, std::move(subject), std::move(text), std::move(remedy)};
}
/// True when one of them is a Stop.
[[nodiscard]] inline bool stops(const Findings& findings)
{
    for (const Finding& f : findings)
        if (f.severity == Severity::Stop) return true;
    return false;
}

}  // namespace taut
