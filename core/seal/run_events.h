// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/json.h"
#include "core/run/run.h"

namespace taut::seal {

/// The events of a run as its document tells them, with the target sets and plans that they name by place.
struct Told {
    Json targetSets, plans, events;
};
/// `people` is the document's list: an event states a name or a role only where that list has another; `inputs` are the
/// document's, of which the first event states only what was other then.
[[nodiscard]] Told told(const run::Run& run, const Json& people, const Json& inputs);

}  // namespace taut::seal
