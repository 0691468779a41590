// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/inputs.h"
#include "core/procedure/lint.h"
#include "core/targets/target.h"

namespace taut::procedure {

Result<Procedure> readProcedure(std::string_view toml, std::string_view file, Findings& lint)
{
    const Known known{&targets::isKnownTarget, inputs::allFacts(), inputs::allRepetitions()};
    return readProcedure(toml, file, known, lint);
}

}  // namespace taut::procedure
