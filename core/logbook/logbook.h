// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/clock.h"
#include "core/base/id_source.h"
#include "core/records/records.h"
#include "core/run/decide.h"

namespace taut::logbook {

inline constexpr int kSchema = 2;
inline constexpr std::uint32_t kApplicationId = 0x54415554;          ///< "TAUT"
inline constexpr std::uint32_t kPracticeApplicationId = 0x54415550;  ///< "TAUP"

/// Opens a logbook for reading; any number may read while one writes. Refuses by name: logbook.missing, .not_a_logbook
/// (foreign, text, zero bytes), .broken, .newer_schema, .older_schema (a development logbook), .practice (wrong kind),
/// .not_practice, .unreadable. practice: the file must be a practice logbook.
[[nodiscard]] Result<std::unique_ptr<records::Reader>> openReader(const std::filesystem::path& file,
                                                                  bool practice = false);

/// What a run is begun from: a definition kept in the logbook.
struct Definition {
    std::string what;  ///< press job substrate procedure
    run::Source source;
};

/// Holds the pen: one process a logbook (an OS lock taken at open), append-only. Every call that changes something is
/// on disk (synced) when it returns.
class Writer {
public:
    struct Options {
        bool practice = false;
        std::string holder;   ///< shown to whoever is refused the pen
        int syncDelayMs = 0;  ///< tests: how long a sync takes
    };
    /// Creates the file, and its folder, when missing. logbook.pen_held names the holder; logbook.folder_read_only;
    /// logbook.read_only; logbook.no_locks; else as openReader.
    [[nodiscard]] static Result<std::unique_ptr<Writer>> open(const std::filesystem::path& file, const Clock& clock,
                                                              IdSource& ids, Options options);
    ~Writer();
    [[nodiscard]] const records::Reader& reader() const;
    [[nodiscard]] const std::filesystem::path& file() const;
    [[nodiscard]] const Clock& clock() const;
    [[nodiscard]] const std::string& workplace() const;  ///< id of this PC, made once

    /// Adds a person (a Person seal). by: a supervisor; nullptr only while the logbook has no person yet.
    [[nodiscard]] Result<Done> addPerson(const people::PersonRecord& person, const people::Actor* by);
    [[nodiscard]] Result<people::Actor> signIn(std::string_view personId, std::string_view pin);

    /// Keeps a definition: the same text again gives the edition it has, a new text the next edition (a Definition
    /// seal).
    [[nodiscard]] Result<run::Source> keepDefinition(std::string_view what, std::string_view id, std::string_view toml,
                                                     const people::Actor& by);
    /// Newest edition of each, sorted by id.
    [[nodiscard]] Result<std::vector<Definition>> definitions(std::string_view what) const;

    /// Withdraws a press from use: a Withdrawal seal and a `withdrawn` event in each of its open runs, in one
    /// transaction. With returned = true the way back (a supervisor, not the reporter).
    [[nodiscard]] Result<Done> withdraw(std::string_view press, std::string_view reason, const people::Actor& by);
    [[nodiscard]] Result<Done> giveBack(std::string_view press, std::string_view done, const people::Actor& by);

    struct Impl;  ///< SQL stays behind writer.cpp
    Impl& impl();
    const Impl& impl() const;

private:
    Writer();
    std::unique_ptr<Impl> m_impl;
};

/// Verifies a whole logbook file of either kind: application id, schema, integrity, sequence, every document hash and
/// link, every row's columns against its document, anchors, layout. A file that is no logbook of this schema at all is
/// the Result's error; a damaged one is a finding.
struct Verification {
    seal::Anchor end;
    std::vector<seal::AnchorVerdict> anchors;  ///< those asked about, in that order
    Findings findings;                         ///< empty = in order; the first is the first thing wrong
};
[[nodiscard]] Result<Verification> verify(const std::filesystem::path& file,
                                          const std::vector<seal::PartialAnchor>& anchors);

}  // namespace taut::logbook
