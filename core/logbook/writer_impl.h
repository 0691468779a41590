// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <mutex>
#include <thread>

#include "core/logbook/database.h"
#include "core/logbook/logbook.h"
#include "core/logbook/mirror_keeper.h"
#include "core/logbook/pen.h"
#include "core/seal/signature.h"

namespace taut::logbook {

/// Inside this folder only: what the one writer of a logbook holds.
struct Writer::Impl {
    std::filesystem::path file;
    const Clock* clock;
    Options options;
    Pen pen;
    std::unique_ptr<SQLite::Database> db;
    std::unique_ptr<records::Reader> reader;
    std::string workplace;
    mutable std::mutex mutex;  ///< signing in and sealing run off the window's thread
    Findings notes;
    std::shared_ptr<MirrorKeeper> keeper;  ///< last: it ends before the pen is put down

    /// One transaction: `change` gets the database and returns a Result; a Finding, or an engine error, leaves the
    /// logbook as it was. What is returned as a value is on disk.
    template <class F>
    auto write(F&& change) -> std::invoke_result_t<F, SQLite::Database&>
    {
        using Answer = std::invoke_result_t<F, SQLite::Database&>;
        const std::lock_guard lock(mutex);
        return guarded(file, [&]() -> Answer {
            SQLite::Transaction transaction(*db, SQLite::TransactionBehavior::IMMEDIATE);
            Answer answer = change(*db);
            if (!answer) return answer;
            transaction.commit();
            if (options.syncDelayMs > 0) std::this_thread::sleep_for(std::chrono::milliseconds(options.syncDelayMs));
            if (keeper != nullptr) keeper->tell(*db, *clock);
            return answer;
        });
    }
    /// A question to the writer's own connection.
    template <class F>
    auto read(F&& question) const -> std::invoke_result_t<F, SQLite::Database&>
    {
        const std::lock_guard lock(mutex);
        return guarded(file, [&] { return question(*db); });
    }
};

/// Appends a document to the chain and its answers to the indexes; inside a transaction. by: who seals it.
struct Sealer {
    std::string id, name;
    const people::Signer* signer = nullptr;  ///< whose signature goes with it; nullptr = it carries none
};
[[nodiscard]] seal::Seal appendSeal(SQLite::Database& db, seal::Document document, const Sealer& by, Instant at);
/// Writes a seal as it is, with its signatures and what its document answers; nullptr: nobody can read it.
void putSeal(SQLite::Database& db, const seal::Seal& seal, const seal::Document* document,
             std::span<const seal::SealSignature> signatures);
[[nodiscard]] inline Sealer sealer(const people::Actor& actor) { return {actor.id().value, actor.name()}; }
[[nodiscard]] inline Sealer sealer(const people::Signer& signer)
{
    return {signer.actor().id().value, signer.actor().name(), &signer};
}

/// A definition in the edition in which its text stands; a text that stands in none is sealed as the next one.
[[nodiscard]] run::Source sealedOnce(SQLite::Database& db, const std::string& what, run::Source source,
                                     const Sealer& by, Instant at);
/// The texts of this logbook's definitions; good while its connection is.
[[nodiscard]] seal::TextBySha textsIn(SQLite::Database& db);

/// Where the index tables say something else than the documents; subject "run_rows north-2026-11-25-01".
[[nodiscard]] Findings indexDifferences(SQLite::Database& db);

/// A person as the tables keep them; nullopt when unknown.
[[nodiscard]] std::optional<people::PersonRecord> findPerson(SQLite::Database& db, std::string_view id);
/// The same by their name, which nobody else ever has.
[[nodiscard]] std::optional<people::PersonRecord> findPersonNamed(SQLite::Database& db, std::string_view name);
/// Seals that belong to a chain: signatures of one.
[[nodiscard]] std::vector<seal::SealSignature> signaturesOf(SQLite::Database& db, std::uint64_t seq);
/// The seals of a sealed run: its own and those about it, oldest first. run.unknown, run.not_sealed.
[[nodiscard]] Result<std::vector<seal::Seal>> sealsOf(SQLite::Database& db, std::string_view runId);
/// Where a correction says that something stood which its run does not say: correction.misquoted.
[[nodiscard]] std::optional<Finding> misquoted(SQLite::Database& db, const seal::Seal& correction);
/// The withdrawal under which a press stands; nullopt when it is in use.
[[nodiscard]] std::optional<records::Withdrawal> findWithdrawal(SQLite::Database& db, std::string_view press);
[[nodiscard]] std::unique_ptr<records::Reader> readerOn(std::unique_ptr<SQLite::Database> db,
                                                        const std::filesystem::path& file);

}  // namespace taut::logbook
