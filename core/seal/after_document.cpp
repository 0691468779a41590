// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/answer.h"
#include "core/run/parts.h"
#include "core/seal/after.h"
#include "core/seal/signature.h"
#include "core/units/unit.h"

namespace taut::seal {

namespace {

Json stepsJson(const Correction& correction)
{
    Json steps = Json::array();
    for (const CorrectedStep& one : correction.steps) {
        Json step = Json::object();
        step.set("step", one.step).set("stood", one.stood).set("should_be", run::trimmed(one.shouldBe));
        if (one.value) step.set("value", *one.value).set("unit", one.unit);
        if (!one.verdict.empty()) step.set("verdict", one.verdict);
        steps.add(std::move(step));
    }
    return steps;
}

Correction correctionIn(const Json& body)
{
    Correction correction{{}, body["remark"].text(), body["reason"].text()};
    for (const Json& item : body["steps"].items()) {
        CorrectedStep one{item["step"].text(), item["stood"].text(), item["should_be"].text(), {}, {}, {}};
        if (item["value"].isNumber()) one.value = item["value"].number();
        one.unit = item["unit"].text();
        one.verdict = item["verdict"].text();
        correction.steps.push_back(std::move(one));
    }
    return correction;
}

std::optional<Sequel> bodyOf(const Document& document)
{
    const Json& body = document.body;
    if (document.kind == Kind::Correction) return correctionIn(body);
    if (document.kind == Kind::Void) return Voiding{body["reason"].text()};
    const std::string verdict = body["verdict"].text();
    if (document.kind != Kind::Review || (verdict != "accepted" && verdict != "sent_back")) return std::nullopt;
    return Review{verdict == "accepted", body["note"].text()};
}

}  // namespace

Document sequelOf(const Sequel& sequel, const SealedRun& run, const people::PersonRecord& by, Instant at)
{
    Document document{kindOf(sequel), Json::object()};
    Json& body = document.body;
    body.set("format", 1).set("kind", kindWord(document.kind)).set("id", run.id).set("subject", run.subject);
    if (const auto* review = std::get_if<Review>(&sequel))
        body.set("verdict", review->accepted ? "accepted" : "sent_back").set("note", run::trimmed(review->note));
    if (const auto* correction = std::get_if<Correction>(&sequel))
        body.set("steps", stepsJson(*correction)).set("remark", run::trimmed(correction->remark));
    if (document.kind != Kind::Review) body.set("reason", run::trimmed(wordsOf(sequel)));
    Json who = Json::object();
    who.set("id", by.id.value).set("name", by.name).set("role", people::roleWord(by.role));
    body.set("by", std::move(who)).set("at", utcText(at.utcMs)).set("offset", offsetText(at.offsetMinutes));
    return document;
}

Result<Sequel> sequelIn(const Document& document)
{
    const Json& body = document.body;
    auto sequel = bodyOf(document);
    if (!sequel) return broken("This document is no review, correction or void of a run.");
    if (body.has("sealed_by") && body["by"]["id"] != body["sealed_by"]["id"])
        return broken("This document names another person than the one who sealed it.");
    if (const auto why = saysTooLittle(*sequel, body["id"].text())) return broken(why->text);
    return *std::move(sequel);
}

Result<Sealing> sealingOf(const Seal& seal)
{
    const auto document = read(seal.document);
    if (!document) return document.error();
    const Json& body = document->body;
    Sealing sealing{seal.seq,
                    document->kind,
                    meaningOf(*document),
                    seal.person,
                    body["sealed_by"]["name"].text(),
                    seal.sealedAtMs,
                    readOffset(body["sealed_offset"].text()).value_or(0),
                    {}};
    if (document->kind == Kind::Run) return sealing;
    auto sequel = sequelIn(*document);
    if (!sequel) return sequel.error();
    sealing.sequel = *std::move(sequel);
    return sealing;
}

State stateOf(std::span<const Sealing> sealings)
{
    State state;
    for (const Sealing& sealing : sealings)
        if (sealing.sequel) state = stateAfter(state, *sealing.sequel, sealing.byName);
    return state;
}

std::string saidNow(const run::Run& run, std::span<const Sealing> sealings, std::string_view step)
{
    const auto standing = run.standing({std::string(step)});
    std::string said = standing.answer ? standing.answer->entered : std::string();
    for (const Sealing& sealing : sealings) {
        const auto* correction = sealing.sequel ? std::get_if<Correction>(&*sealing.sequel) : nullptr;
        if (correction == nullptr) continue;
        for (const CorrectedStep& one : correction->steps)
            if (one.step == step) said = one.shouldBe;
    }
    return said;
}

std::optional<Finding> misquoted(const Seal& correction, const Document& run, std::span<const Sealing> before,
                                 const TextBySha& texts)
{
    const auto sealing = sealingOf(correction);
    if (!sealing || !sealing->sequel) return std::nullopt;
    const auto* said = std::get_if<Correction>(&*sealing->sequel);
    if (said == nullptr) return std::nullopt;
    const auto events = eventsOf(run, texts);
    if (!events) return std::nullopt;
    const run::Run sealed = run::Run::fold(*events);
    for (const CorrectedStep& one : said->steps)
        if (sealed.plan().find({one.step}) == nullptr || saidNow(sealed, before, one.step) != one.stood)
            return refuse("correction.misquoted", "seal " + std::to_string(correction.seq),
                          {"Seal %1 corrects the step %2 from \"%3\", and the run does not say that.",
                           {static_cast<std::int64_t>(correction.seq), one.step, one.stood}},
                          "Trust the run's own document; ask whoever signed the correction.");
    return std::nullopt;
}

Result<Correction> readCorrection(const run::Run& run, std::span<const Sealing> sealings, Correction correction)
{
    using procedure::StepKind;
    for (CorrectedStep& one : correction.steps) {
        const procedure::Step* step = run.plan().find({one.step});
        if (step == nullptr)
            return refuse("gate.no_step", one.step, "This run has no such step.", "Choose a step of this run's plan.");
        if (step->kind == StepKind::Motion || step->kind == StepKind::Hold)
            return refuse("gate.not_correctable", one.step,
                          "A movement or a held stop happened as it happened: it cannot be corrected.",
                          "Write what is to be put right as a remark.");
        if (const std::string now = saidNow(run, sealings, one.step); now != one.stood)
            return refuse("correction.stale", one.step,
                          {"This step says %1, and the correction was written for %2.", {now, one.stood}},
                          "Look at the run again, and say what the step should be.");
        one.value.reset();
        one.unit.clear();
        one.verdict.clear();
        // Any other answer is words: what was said as done may turn out not to have been so.
        if (step->kind != StepKind::Reading && step->kind != StepKind::Choice) continue;
        const auto answer = run::answerTo(run, *step, one.shouldBe, {});
        if (!answer) return answer.error();
        one.verdict = verdict::verdictWord(answer->judgement.verdict);
        if (!answer->value) continue;
        one.value = answer->value->si();
        one.unit = siUnit(answer->value->kind()).symbol;
    }
    return correction;
}

}  // namespace taut::seal
