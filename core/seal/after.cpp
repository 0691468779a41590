// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/after.h"

#include <algorithm>
#include <array>

#include "core/run/parts.h"

namespace taut::seal {

namespace {

constexpr std::array<const char*, 5> kPresent{"sealed", "reviewed", "sent_back", "corrected", "void"};

bool holds(const std::vector<std::string>& list, const std::string& id)
{
    return std::find(list.begin(), list.end(), id) != list.end();
}

void addOnce(std::vector<std::string>& list, const std::string& id)
{
    if (!id.empty() && !holds(list, id)) list.push_back(id);
}

people::Act actOf(const Sequel& sequel)
{
    if (std::holds_alternative<Review>(sequel)) return people::Act::Review;
    return std::holds_alternative<Correction>(sequel) ? people::Act::CorrectRecord : people::Act::VoidRecord;
}

std::optional<Finding> ownGate(const SealedRun& run, const Sequel& sequel, const people::PersonRecord& by)
{
    // A correction may be one's own: it is looked at by somebody else before it counts.
    if (std::holds_alternative<Correction>(sequel)) return std::nullopt;
    if (holds(run.hands, by.id.value))
        return refuse("gate.own_run", run.id, {"%1 had run %2 in hand or sealed it.", {by.name, run.id}},
                      "Have a supervisor do it who had no part in this run.");
    if (std::holds_alternative<Review>(sequel) && holds(run.correctors, by.id.value))
        return refuse("gate.own_correction", run.id, {"%1 has corrected run %2 themselves.", {by.name, run.id}},
                      "Have another supervisor review it.");
    return std::nullopt;
}

std::optional<Finding> orderGate(const SealedRun& run, const Sequel& sequel)
{
    const Present now = run.state.present;
    if (now == Present::Void)
        return refuse("run.void", run.id, {"Run %1 is void: nothing can be added to it.", {run.id}},
                      "Begin a new run if the press is to be set up again.");
    const auto* review = std::get_if<Review>(&sequel);
    if (review == nullptr) return std::nullopt;
    if (now == Present::SentBack)
        return refuse("run.sent_back", run.id, {"Run %1 was sent back and has not been corrected since.", {run.id}},
                      "Have it corrected first; where nothing was wrong, a correction by a remark says so.");
    if (now == Present::Reviewed && review->accepted)
        return refuse("run.reviewed", run.id,
                      {"Run %1 was reviewed by %2, and nothing was added since.", {run.id, run.state.reviewedBy}},
                      "Nothing has to be done; send it back if you found something wrong.");
    return std::nullopt;
}

Finding noReason(const std::string& subject, const char* english)
{
    return refuse("gate.no_reason", subject, english, "Say it in a few words.");
}

std::optional<Finding> tooLittle(const Correction& correction, const std::string& subject)
{
    if (correction.steps.empty() && !run::saysSomething(correction.remark))
        return refuse("correction.empty", subject, "This correction names no step and remarks nothing.",
                      "Name a step and what it should be, or write what is to be put right.");
    if (!run::saysSomething(correction.reason)) return noReason(subject, "A correction needs a reason.");
    std::vector<std::string> named;
    for (const CorrectedStep& one : correction.steps) {
        if (run::trimmed(one.shouldBe).empty())
            return refuse("correction.empty", one.step, "It was not said what this step should be.",
                          "Say what it should be; where no answer can be given, write a remark instead.");
        if (run::trimmed(one.shouldBe) == one.stood)
            return refuse("correction.same", one.step, {"This step says so already: %1.", {one.stood}},
                          "Leave the step out, or say what it should be.");
        if (holds(named, one.step))
            return refuse("correction.twice", one.step, "This correction names the same step more than once.",
                          "Say once what the step should be.");
        named.push_back(one.step);
    }
    return std::nullopt;
}

}  // namespace

Kind kindOf(const Sequel& sequel) noexcept
{
    if (std::holds_alternative<Review>(sequel)) return Kind::Review;
    return std::holds_alternative<Correction>(sequel) ? Kind::Correction : Kind::Void;
}

const std::string& wordsOf(const Sequel& sequel) noexcept
{
    if (const auto* review = std::get_if<Review>(&sequel)) return review->note;
    if (const auto* correction = std::get_if<Correction>(&sequel)) return correction->reason;
    return std::get_if<Voiding>(&sequel)->reason;
}

const char* presentWord(Present present) noexcept { return kPresent[static_cast<std::size_t>(present)]; }

std::optional<Present> presentFrom(std::string_view word) noexcept
{
    for (std::size_t i = 0; i < kPresent.size(); ++i)
        if (kPresent[i] == word) return static_cast<Present>(i);
    return std::nullopt;
}

bool wantsReview(Present present) noexcept { return present == Present::Sealed || present == Present::Corrected; }

State stateAfter(const State& state, const Sequel& sequel, std::string_view byName)
{
    if (state.present == Present::Void) return state;
    if (const auto* review = std::get_if<Review>(&sequel))
        return review->accepted ? State{Present::Reviewed, std::string(byName)} : State{Present::SentBack, {}};
    return {std::holds_alternative<Correction>(sequel) ? Present::Corrected : Present::Void, {}};
}

SealedRun sealedRun(const Seal& seal, const Document& document)
{
    const Json& body = document.body;
    SealedRun run;
    run.id = body["id"].text();
    run.subject = hex(seal.link);
    run.press = body["inputs"]["press"]["id"].text();
    addOnce(run.hands, body["operator"].text());
    addOnce(run.hands, seal.person);
    for (const Json& event : body["events"].items()) {
        const std::string what = event["what"].text();
        if (what == "began" || what == "resumed") addOnce(run.hands, event["by"].text());
        if (what == "handed_over") addOnce(run.hands, event["to"].text());
    }
    return run;
}

SealedRun after(SealedRun run, const Sequel& sequel, const std::string& byId, std::string_view byName)
{
    if (std::holds_alternative<Correction>(sequel)) addOnce(run.correctors, byId);
    run.state = stateAfter(run.state, sequel, byName);
    if (run.state.present == Present::Reviewed) run.correctors.clear();
    return run;
}

std::optional<Finding> saysTooLittle(const Sequel& sequel, const std::string& subject)
{
    if (const auto* correction = std::get_if<Correction>(&sequel)) return tooLittle(*correction, subject);
    const auto* review = std::get_if<Review>(&sequel);
    if (review != nullptr && review->accepted) return std::nullopt;
    if (run::saysSomething(wordsOf(sequel))) return std::nullopt;
    return noReason(subject,
                    review != nullptr ? "Sending a run back needs a reason." : "Voiding a run needs a reason.");
}

std::optional<Finding> whyNot(const SealedRun& run, const Sequel& sequel, const people::PersonRecord& by)
{
    if (!by.active)
        return refuse("gate.role", run.id, {"%1 is out of service and signs nothing.", {by.name}},
                      "Let somebody do it who is in service.");
    if (!people::may(by.role, actOf(sequel)))
        return refuse(
            "gate.role", run.id,
            {"%1 is enrolled as %2, which does not allow this.", {by.name, std::string(people::roleWord(by.role))}},
            "Let somebody do it whose role allows it.");
    if (auto gate = ownGate(run, sequel, by)) return gate;
    if (auto gate = orderGate(run, sequel)) return gate;
    return saysTooLittle(sequel, run.id);
}

}  // namespace taut::seal
