// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/logbook/database.h"
#include "core/seal/files.h"
#include "core/seal/seal.h"

// Inside this folder only: the bytes of pictures and files, each once, under the hash that runs name them by. What they
// are called, and where they belong, is told by the events.
namespace taut::logbook {

/// Keeps the bytes of an event that was just decided; inside its transaction. The same bytes again are kept once.
void keepAttachment(SQLite::Database& db, std::string_view sha256, std::string_view bytes);
/// As they stand, whatever their hash is now; nullopt: none of this hash is kept.
[[nodiscard]] std::optional<std::string> attachmentIn(SQLite::Database& db, std::string_view sha256);
/// What a document names, from one logbook into another, as far as it is there and still what it was.
void copyAttachments(SQLite::Database& from, SQLite::Database& to, const seal::Document& document);

/// Holds the bytes that are kept against what the chain names, one seal after the other.
class AttachmentCheck {
public:
    void next(const seal::Seal& seal);
    /// attachment.missing, attachment.changed of what seals name; attachment.unnamed of what nothing names.
    [[nodiscard]] Findings finish(SQLite::Database& db);

private:
    struct Naming {
        seal::NamedFile file;
        std::uint64_t seq{};
    };
    std::vector<Naming> m_named;
};

}  // namespace taut::logbook
