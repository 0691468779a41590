// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/clock.h"
#include "core/base/id_source.h"
#include "core/logbook/medium.h"
#include "core/logbook/mirror.h"
#include "core/people/door.h"
#include "core/records/records.h"
#include "core/run/decide.h"
#include "core/seal/after.h"
#include "core/seal/competence.h"
#include "core/seal/training.h"

namespace taut::practice {
struct Attempt;
}  // namespace taut::practice

namespace taut::logbook {

inline constexpr int kSchema = 7;
inline constexpr int kOldestSchema = 5;  ///< read as it is, and brought up before it is written on (migrate.h)
inline constexpr std::uint32_t kApplicationId = 0x54415554;          ///< "TAUT"
inline constexpr std::uint32_t kPracticeApplicationId = 0x54415550;  ///< "TAUP"

/// Opens a logbook for reading; any number may read while one writes. Refuses by name: logbook.missing, .not_a_logbook
/// (foreign, text, zero bytes), .broken, .newer_schema, .older_schema (from before the first release), .practice (wrong
/// kind), .not_practice, .unreadable. practice: the file must be a practice logbook. One of a newer layout is read
/// through the views that readers from outside may count on, as it stands now and without what is still open: `notes`
/// says so (logbook.newer_schema, a Note); refused is one whose views are others.
[[nodiscard]] Result<std::unique_ptr<records::Reader>> openReader(const std::filesystem::path& file,
                                                                  bool practice = false, Findings* notes = nullptr);

/// What a run is begun from: a definition kept in the logbook.
struct Definition {
    std::string what;  ///< press job substrate procedure
    run::Source source;
};

/// How somebody's door stands, for whoever looks after people; what opens it is not in it.
struct DoorState {
    people::PersonId person;
    people::Door door;
    bool chosen = false, invited = false, badge = false;
};

/// What a supervisor says of somebody at a press: the SHA-256 of their training record, the runs at this press that
/// they did while somebody watched, and until when it holds.
struct Qualifying {
    std::string personId, press, trainingRecord;
    std::vector<std::string> observed;  ///< ids of runs
    std::int64_t validUntilMs = 0;
};
struct CompetenceStanding {
    seal::Competence said;
    Instant at;
    std::string byName;
    std::optional<Finding> notNow;  ///< why it does not hold; nothing: it does
};

/// Holds the pen: one process a logbook (an OS lock taken at open), append-only. Every call that changes something is
/// on disk (synced) when it returns.
class Writer {
public:
    struct Options {
        bool practice = false;
        std::string holder;               ///< shown to whoever is refused the pen
        int syncDelayMs = 0;              ///< tests: how long a sync takes
        bool create = true;               ///< false: a file that is not there is refused (logbook.missing)
        std::optional<Medium> lies = {};  ///< tests: taken for what the file lies on
    };
    /// Creates the file, and its folder, when missing. logbook.pen_held names the holder; logbook.folder_read_only;
    /// logbook.read_only; logbook.no_locks; logbook.mirror (one opens for reading only); what asHomeOfLogbook refuses;
    /// of one of an older layout what bringUp refuses (migrate.h); else as openReader.
    [[nodiscard]] static Result<std::unique_ptr<Writer>> open(const std::filesystem::path& file, const Clock& clock,
                                                              IdSource& ids, Options options);
    ~Writer();
    /// What was found at opening and does not stand in the way: logbook.on_removable, logbook.brought_up.
    [[nodiscard]] const Findings& notes() const;
    /// From now on, until the writer ends, every seal goes into a mirror in this folder as well (mirror.h), behind
    /// the back of whoever seals: a folder that cannot be reached holds up nothing, and what is lacking follows when
    /// it can be reached again. "" = no longer. Where it is kept is a setting of this PC, not of the logbook.
    void keepMirror(const std::filesystem::path& folder);
    /// How the mirror stands, waiting up to `most` for what is under way; nullopt when none is kept.
    [[nodiscard]] std::optional<MirrorState> mirror(std::chrono::milliseconds most = {}) const;

    [[nodiscard]] const records::Reader& reader() const;
    [[nodiscard]] const std::filesystem::path& file() const;
    [[nodiscard]] const Clock& clock() const;
    [[nodiscard]] const std::string& workplace() const;  ///< id of this PC, made once

    /// The first person of a logbook, a supervisor, by a Person seal that they sign themselves. person.not_first,
    /// person.first_is_supervisor.
    [[nodiscard]] Result<Done> addFirst(const people::Enrolled& person, const people::Signer& self);
    /// Enrols somebody who has chosen already (the demo shop, and people at the supervisor's own side). gate.role,
    /// person.id_taken.
    [[nodiscard]] Result<Done> addPerson(const people::Enrolled& person, const people::Signer& supervisor);
    /// Enrols somebody who has chosen nothing yet, or has lost what they chose: gives back a code, to be shown once,
    /// with which they themselves choose. Nobody invites themselves (person.own_invitation).
    [[nodiscard]] Result<std::string> invite(const people::PersonRecord& person, const people::Signer& supervisor);
    /// First use: the code, and what the person chooses. The code is good once. sign_in.refused, person.weak_*.
    [[nodiscard]] Result<Done> choose(std::string_view personId, std::string_view code, const people::Chosen& chosen,
                                      PinCost cost = PinCost::Shop);
    /// Whoever still knows what they chose chooses anew, by themselves: a PIN, a passphrase or both ("" = as it was). A
    /// new PIN is sealed as a change of the person's own; a new passphrase comes with a new key, put by the old one,
    /// and a badge of before opens nothing any more; of both each is sealed. old.passphrase may be a badge and its PIN.
    /// sign_in.*, person.weak_* of what is new, person.nothing_chosen, person.same_secret, person.changed_meanwhile.
    [[nodiscard]] Result<Done> chooseAgain(std::string_view personId, const people::Chosen& old,
                                           const people::Chosen& anew, PinCost cost = PinCost::Shop);
    /// Another role, or in or out of service; the id and the name are for ever. person.unknown, gate.role,
    /// person.last_supervisor.
    [[nodiscard]] Result<Done> changePerson(const people::PersonRecord& person, const people::Signer& supervisor);
    /// A badge for the signer: their key once more, under its code and a PIN of six digits.
    [[nodiscard]] Result<Done> giveBadge(const people::Signer& self, std::string_view code, std::string_view pin,
                                         PinCost cost = PinCost::Shop);
    /// By PIN: enough to answer steps here. After several wrong tries sign_in.wait, then sign_in.shut (people/door.h).
    [[nodiscard]] Result<people::Actor> signIn(std::string_view personId, std::string_view pin);
    /// By passphrase, or by badge and PIN (people::badgeSecret): to sign.
    [[nodiscard]] Result<people::Signer> unlock(std::string_view personId, std::string_view secret);
    /// How everybody's door stands, sorted by id.
    [[nodiscard]] Result<std::vector<DoorState>> doors() const;

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

    /// A supervisor's countersignature of a sealed run, or that it is sent back. These three: a further seal that names
    /// the run's, signed, in one transaction; the run's own document stays as it is. run.unknown, run.not_sealed,
    /// gate.role (also when the key that signs stands no more), and what seal::whyNot and seal::readCorrection refuse.
    [[nodiscard]] Result<seal::Seal> review(std::string_view runId, seal::Review review, const people::Signer& by);
    /// `stood` of each step as it was shown: refused when it stands otherwise by now.
    [[nodiscard]] Result<seal::Seal> correct(std::string_view runId, seal::Correction correction,
                                             const people::Signer& by);
    [[nodiscard]] Result<seal::Seal> voidRun(std::string_view runId, std::string_view reason, const people::Signer& by);

    /// Of a practice logbook alone (practice.not_here): an attempt, sealed under the name of whoever practised; it gets
    /// its id here. practice.nobody.
    [[nodiscard]] Result<seal::Seal> keepAttempt(const practice::Attempt& attempt);
    /// What a trainer says of an attempt, by its seal's number, signed with the key that they have in the shop's
    /// logbook. training.no_attempt, and what seal::whyNot refuses.
    [[nodiscard]] Result<seal::Seal> observe(std::uint64_t attempt, const seal::Observation& observation,
                                             const people::Signer& by);

    /// That somebody may set a press up alone, or may not any more (competence.h). Never in a practice logbook.
    [[nodiscard]] Result<seal::Seal> qualify(const Qualifying& who, const people::Signer& by);
    [[nodiscard]] Result<seal::Seal> endCompetence(std::string_view personId, std::string_view press,
                                                   std::string_view reason, const people::Signer& by);
    /// The newest that was said of each person at each press, and whether it holds now.
    [[nodiscard]] Result<std::vector<CompetenceStanding>> competences() const;

    struct Impl;  ///< SQL stays behind writer.cpp
    Impl& impl();
    const Impl& impl() const;

private:
    Writer();
    [[nodiscard]] Result<seal::Seal> follow(std::string_view runId, seal::Sequel sequel, const people::Signer& by);
    template <class Open>
    [[nodiscard]] auto atDoor(std::string_view personId, const Open& open) -> decltype(open(nullptr));
    std::unique_ptr<Impl> m_impl;
};

/// Verifies a whole logbook file of either kind: application id, schema, integrity, sequence, every document hash and
/// link, every signature, every row's columns against its document, what corrections quote, anchors, layout. A file
/// that is no logbook of this schema at all is the Result's error; a damaged one is a finding.
struct Verification {
    seal::Anchor end;
    std::vector<seal::AnchorVerdict> anchors;  ///< those asked about, in that order
    Findings findings;                         ///< empty = in order; the first is the first thing wrong
};
/// Deep: every table that answers for the documents is made anew from them and compared (index.differs).
enum class Depth : std::uint8_t { Seals, Deep };
[[nodiscard]] Result<Verification> verify(const std::filesystem::path& file,
                                          const std::vector<seal::PartialAnchor>& anchors, Depth depth = Depth::Seals);

}  // namespace taut::logbook
