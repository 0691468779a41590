// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/made/maker.h"

namespace taut::app::made {

Result<std::unique_ptr<Maker>> varied(const Shop& shop, const Story& story) { return playedOut(shop, story); }

}  // namespace taut::app::made
