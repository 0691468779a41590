// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "app/sessions/session.h"

namespace taut::app {

/// How somebody stands: whether they can sign, and what keeps them out.
[[nodiscard]] QString standingOf(const people::PersonRecord& person, const logbook::DoorState* door);
/// How their door stands; nullptr = they have none.
[[nodiscard]] const logbook::DoorState* doorOf(const Session& session, const people::PersonId& id);

}  // namespace taut::app
