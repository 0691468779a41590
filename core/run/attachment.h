// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/run/command.h"
#include "core/run/run.h"

namespace taut::run {

/// Pictures and files that belong to a run. Its events name each by the SHA-256 of its bytes, which stand beside them
/// in the logbook; so what was sealed tells whether a picture is still the one that was taken.
inline constexpr std::size_t kMostAttachmentBytes = 10'000'000;
inline constexpr std::size_t kMostAttachments = 20;  ///< of one run

/// What the bytes are by how they begin, not by what the file is called: image/jpeg, image/png, image/webp,
/// application/pdf, text/plain (UTF-8 without control characters), else application/octet-stream.
[[nodiscard]] std::string attachmentType(std::string_view bytes);
/// Whether such bytes can be shown as a picture.
[[nodiscard]] bool isPicture(std::string_view type) noexcept;
/// A type in words: "picture", "PDF", "text", "file".
[[nodiscard]] Text typeSaid(std::string_view type);

/// What attaching it makes happen, or why not: gate.no_step, attachment.empty, .too_large, .no_name, .too_many, .there
/// (the step has the same bytes already).
[[nodiscard]] Result<Attached> attachedBy(const Run& run, const Attach& command);

/// One attachment with its event.
struct Attachment {
    Attached what;
    Stamp stamp;
};
/// Of a run, in the order in which they were attached.
[[nodiscard]] std::vector<Attachment> attachmentsOf(const Run& run);

}  // namespace taut::run
