// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/clock.h"
#include "core/base/json.h"
#include "core/run/run.h"

namespace taut::seal {

/// What a sealed document is about. Everything that must be trusted later is one of these, in one chain.
enum class Kind : std::uint8_t {
    Run,
    Review,
    Correction,
    Void,
    Definition,
    Person,
    Competence,
    Withdrawal,
    Attempt,      ///< of a practice logbook alone
    Observation,  ///< of a practice logbook alone
};
inline constexpr std::array kAllKinds{Kind::Run,        Kind::Review,     Kind::Correction, Kind::Void,
                                      Kind::Definition, Kind::Person,     Kind::Competence, Kind::Withdrawal,
                                      Kind::Attempt,    Kind::Observation};
[[nodiscard]] const char* kindWord(Kind kind) noexcept;

/// A document: the JSON of formats §9. A live run gives one too; only sealing gives it bytes that never change again.
struct Document {
    Kind kind{};
    Json body;
};

/// document.broken: what was sealed cannot be read as a document of its kind.
[[nodiscard]] Finding broken(Text text);

/// A run as its document (formats §9): inputs, procedure, people, target sets, plans, events, the standing of every
/// step, deviations. The kind of run is "run_kind" (full next_roll re_web restart), the run it continues "parent", who
/// has it in hand "operator"; events name a target set and a plan by their place in "target_sets" and "plans"; texts of
/// definitions are left out, the roll's stays. A run that has not ended has state "open" and no "ended"; an abandoned
/// one has its "reason".
/// The document says a thing once, and all of it:
/// - The first target set is whole, in the shape that `targets --json` prints; so is the first plan, whose texts
///   without arguments are bare. Sealed, both are told by their words (seal/words.h). A later one has "since", the
///   place of the one before it, and states what changed since then, as seal/difference.h tells. One that cannot be
///   told like that has no "since" and is whole.
/// - An event leaves out "offset" where it is the document's, "name" and "role" where they are those of "people",
///   "doubtful" where a judged answer is not, "stated" where nothing was; its "limits_from" is {"target": id} where the
///   window of that target, in the set that stood before the event, says so. One with a "target_set" leaves out
///   "present_diameter", "procedure", "facts" and of "inputs" each that is as in the event with a target set before it;
///   the first leaves out of "inputs" each that is the document's.
/// - A step names the "event" of its answer and leaves out what that says; one whose value was accepted outside its
///   window is whole. stepsOf has all of them whole.
[[nodiscard]] Document documentOf(const run::Run& run);
/// The steps of a run's document, each with what stands in it: "entered", "value", "unit", "low", "high",
/// "uncertainty", "verdict", "doubtful", "by", "at" as far as there is an answer.
[[nodiscard]] Json::Array stepsOf(const Json& body);
/// A press, substrate, job or procedure in an edition: {"what","id","edition","sha256","text"}.
[[nodiscard]] Document definitionOf(std::string_view what, const run::Source& source);
/// A person's enrolment or change; no PIN material.
[[nodiscard]] Document personOf(const people::PersonRecord& person, std::string_view change);
/// A press withdrawn from use, or returned to it: {"press","what","reason","by","at"}.
[[nodiscard]] Document withdrawalOf(std::string_view press, bool withdrawn, std::string_view reason,
                                    const people::Actor& by, Instant at);

/// Who seals it and when, written into the document, so that the columns of its row can be checked against it.
struct Head {
    std::string kind, id, subject;
    std::int64_t sealedAtMs{};
    std::string person;
    friend bool operator==(const Head&, const Head&) = default;
};
[[nodiscard]] Document sealedBy(Document document, std::string_view personId, std::string_view name, Instant at);
/// The same of a document that is written already.
[[nodiscard]] std::string sealedBy(std::string written, std::string_view personId, std::string_view name, Instant at);
/// What a row of the chain says of its document, read from the document.
[[nodiscard]] Head headOf(const Document& document);

/// The bytes that are hashed and kept; and back (code document.broken).
[[nodiscard]] std::string write(const Document& document);
[[nodiscard]] Result<Document> read(std::string_view bytes);
/// Of a document of this kind what a chain is checked by (seal/chain.h), so that a whole logbook is gone over in little
/// more than the time that hashing it takes. Of a run: its head, state, press and operator, what its target sets and
/// plans are told since, and of its events who had it in hand and what was accepted outside its window. One that turns
/// out to be of another kind is whole, as any other is. All of the bytes are judged: what read() refuses is refused.
[[nodiscard]] Result<Document> gistOf(std::string_view bytes, Kind kind);
/// The text of a definition by the hash of it: a document names them, and does not hold them. "" = not to be had.
using TextBySha = std::function<std::string(std::string_view what, const std::string& sha256)>;
/// The events inside a run's document, so that a sealed run folds like a live one: same standings, targets, plans and
/// conditions; only the texts of press, job, substrate and procedure are empty. `texts` has the words that the document
/// names; one that was not sealed yet names none. Codes document.broken, document.words, event.broken.
[[nodiscard]] Result<std::vector<run::Event>> eventsOf(const Document& document, const TextBySha& texts = {});

}  // namespace taut::seal
