// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/texts.h"

namespace taut::records {

report::TextBySha textsOf(const Reader& reader)
{
    return [&reader](std::string_view what, const std::string& sha256) {
        const auto found = reader.definition(what, sha256);
        return found && *found ? (*found)->text : std::string();
    };
}

}  // namespace taut::records
