// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/widgets/answer.h"

namespace taut::app {

/// A tag that is scanned, whatever has the keyboard, or typed: what it says is shown before anybody enters it.
[[nodiscard]] AnswerArea* makeScanArea(const StepContent& content, QWidget* parent);

}  // namespace taut::app
