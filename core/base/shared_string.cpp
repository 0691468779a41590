// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/shared_string.h"

#include <ostream>

namespace taut {

std::ostream& operator<<(std::ostream& out, const SharedString& text) { return out << text.view(); }

}  // namespace taut
