// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace taut::app {

/// Opens the window: --logbook FILE, --demo (the demo shop in a logbook of its own), --dark, --text-size PERCENT,
/// --language en, es or de, --pseudo (wraps every translated word, for testers). Returns the program's exit code.
int startWindow(int argc, char** argv);

}  // namespace taut::app
