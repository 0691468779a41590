// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include <QString>

#include "app/sessions/session.h"

namespace taut::app {

/// What people call a definition, as its text says, and by which key; "" where it has no name.
[[nodiscard]] QString nameIn(const std::string& what, const std::string& text, std::string* key = nullptr);

/// What stands in files that are being taken in, and what came of each: an edition more, or nothing, as it was there.
class TakingIn {
public:
    /// Looks what the files hold and how far the logbook knows it, before they are taken in.
    void begin(const Session& session, const std::vector<std::filesystem::path>& files);
    /// Begun, and not told yet.
    [[nodiscard]] bool isOn() const { return m_on; }
    /// A line for each thing in the files that the logbook has now.
    [[nodiscard]] QString told(const Session& session);
    /// What was refused, with the file and the key that it is about.
    [[nodiscard]] QString refused(const Finding& finding);

private:
    struct One {
        std::string what, id, text;
        int before = 0;  ///< its newest edition; 0 = none
    };
    std::vector<One> m_all;
    std::vector<std::string> m_files;  ///< their names
    bool m_on = false;
};

}  // namespace taut::app
