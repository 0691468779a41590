// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"

namespace taut::app {

/// The folder that holds presses, substrates, procedures and the demo shop: $TAUTWEB_RESOURCES, else ../share/tautweb
/// beside the program, else the source tree it was built from. Code resources.missing names the places looked at.
[[nodiscard]] Result<std::filesystem::path> resourcesFolder();

/// Where this user's logbook and settings are kept: $XDG_DATA_HOME/tautweb, else ~/.local/share/tautweb.
[[nodiscard]] std::filesystem::path dataFolder();
/// Where logs of the program itself lie (crash_log.h): $XDG_STATE_HOME/tautweb, else ~/.local/state/tautweb.
[[nodiscard]] std::filesystem::path stateFolder();
/// dataFolder()/shop.logbook
[[nodiscard]] std::filesystem::path usualLogbook();

/// A file's text and the name to call it by in messages.
struct InputFile {
    std::string id;    ///< of the press, job, substrate, roll or procedure inside
    std::string text;  ///< TOML of exactly that one
    std::string file;  ///< for messages
};

/// A substrate by itself, cut out of a file that holds several ("" when it holds none of that id): so that each has an
/// edition of its own.
[[nodiscard]] std::string substrateAlone(std::string_view toml, std::string_view id);

/// Every definition of a kind ("press", "job", "substrate", "roll", "procedure") under the resources folder, sorted by
/// id. A file that cannot be read as TOML is left out: `check` names what is wrong with it.
[[nodiscard]] std::vector<InputFile> shopFiles(const std::filesystem::path& resources, std::string_view what);
/// The definitions of a kind in one file's text: several only for substrates.
[[nodiscard]] std::vector<InputFile> definitionsIn(std::string_view what, std::string_view text, std::string_view file);

}  // namespace taut::app
