// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <iterator>

#include "core/base/crypto.h"

namespace taut::test {

/// A folder of one test's own, gone with it, also when the test took the right to write in it away.
struct Folder {
    std::filesystem::path path = std::filesystem::temp_directory_path() / ("taut-test-" + hex(randomBytes(8)));
    Folder() { std::filesystem::create_directories(path); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder()
    {
        std::error_code none;
        std::filesystem::permissions(path, std::filesystem::perms::owner_all, none);
        std::filesystem::remove_all(path, none);
    }
    [[nodiscard]] std::size_t count() const
    {
        using Each = std::filesystem::directory_iterator;
        return static_cast<std::size_t>(std::distance(Each(path), Each()));
    }
};

}  // namespace taut::test
