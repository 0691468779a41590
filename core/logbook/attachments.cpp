// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/attachments.h"

namespace taut::logbook {

namespace {

/// The view that any layout since the first with attachments has; readers of newer ones may count on it too.
bool hasAny(SQLite::Database& db)
{
    return numberOf(db, "SELECT count(*) FROM sqlite_schema WHERE type = 'view' AND name = 'attachments'") == 1;
}

bool isNamedByOpenRun(SQLite::Database& db, const std::string& sha256)
{
    SQLite::Statement query(db, "SELECT 1 FROM open_events WHERE instr(event, ?) > 0 LIMIT 1");
    query.bind(1, sha256);
    return query.executeStep();
}

Finding unnamed(const std::string& sha256)
{
    return refuse("attachment.unnamed", "attachment " + sha256.substr(0, 16),
                  {"A picture or file (SHA-256 %1...) is kept that no run names: it was added from outside, or the run "
                   "that named it was changed.",
                   {sha256.substr(0, 16)}},
                  "Do not go by it. Restore the logbook from a copy.");
}

}  // namespace

void keepAttachment(SQLite::Database& db, std::string_view sha256, std::string_view bytes)
{
    SQLite::Statement put(db, "INSERT INTO attachment_rows (sha256, content) SELECT ?1, ?2 "
                              "WHERE NOT EXISTS (SELECT 1 FROM attachment_rows WHERE sha256 = ?1)");
    put.bind(1, std::string(sha256));
    bindBlob(put, 2, bytes);
    put.exec();
}

std::optional<std::string> attachmentIn(SQLite::Database& db, std::string_view sha256)
{
    if (!hasAny(db)) return std::nullopt;
    SQLite::Statement query(db, "SELECT content FROM attachments WHERE sha256 = ?");
    query.bind(1, std::string(sha256));
    if (!query.executeStep()) return std::nullopt;
    return blobText(query.getColumn(0));
}

void copyAttachments(SQLite::Database& from, SQLite::Database& to, const seal::Document& document)
{
    for (const seal::NamedFile& file : seal::filesOf(document)) {
        const auto bytes = attachmentIn(from, file.sha256);
        if (bytes && hex(sha256(*bytes)) == file.sha256) keepAttachment(to, file.sha256, *bytes);
    }
}

void AttachmentCheck::next(const seal::Seal& seal)
{
    // Few documents name any: only those are read.
    if (seal.document.find("\"attached\"") == std::string::npos) return;
    const auto document = seal::read(seal.document);
    if (!document) return;
    for (seal::NamedFile& file : seal::filesOf(*document)) m_named.push_back({std::move(file), seal.seq});
}

Findings AttachmentCheck::finish(SQLite::Database& db)
{
    Findings findings;
    std::map<std::string, bool> kept;  // whether the bytes are of that hash
    if (hasAny(db)) {
        SQLite::Statement query(db, "SELECT sha256, content FROM attachments ORDER BY sha256");
        while (query.executeStep()) {
            const SQLite::Column content = query.getColumn(1);
            const auto* bytes = static_cast<const std::uint8_t*>(content.getBlob());
            const std::span<const std::uint8_t> all(bytes, static_cast<std::size_t>(content.getBytes()));
            const std::string name = query.getColumn(0).getString();
            kept[name] = hex(sha256(all)) == name;
        }
    }
    std::map<std::string, bool> alone = kept;
    for (const Naming& naming : m_named) {
        alone.erase(naming.file.sha256);
        const auto found = kept.find(naming.file.sha256);
        if (found == kept.end())
            findings.push_back(seal::fileMissing(naming.file, naming.seq));
        else if (!found->second)
            findings.push_back(seal::fileChanged(naming.file, naming.seq));
    }
    for (const auto& [name, whole] : alone)
        if (!whole || !isNamedByOpenRun(db, name)) findings.push_back(unnamed(name));
    return findings;
}

}  // namespace taut::logbook
