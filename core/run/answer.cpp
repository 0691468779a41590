// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/answer.h"

#include <algorithm>
#include <cctype>

#include "core/inputs/inputs.h"
#include "core/inputs/roll_tag.h"
#include "core/run/parts.h"
#include "core/run/words.h"
#include "core/units/format.h"
#include "core/units/parse.h"
#include "core/verdict/plausible.h"

namespace taut::run {

namespace {

using procedure::Step;
using procedure::StepKind;
using verdict::Verdict;

bool contains(const std::vector<std::string>& list, std::string_view word)
{
    return std::find(list.begin(), list.end(), word) != list.end();
}

std::string joined(const std::vector<std::string>& words)
{
    std::string all;
    for (const std::string& word : words) all += (all.empty() ? "" : ", ") + word;
    return all;
}

bool isYes(std::string_view text) { return text == "yes"; }

/// What was said of the machine for this movement; only statements, each once.
std::vector<std::string> statementsIn(const std::vector<std::string>& stated)
{
    std::vector<std::string> all;
    for (const std::string& word : stated)
        if (procedure::isMachineState(word) && !contains(all, word)) all.push_back(word);
    return all;
}

Result<Answered> moved(const Step& step, Answered answer)
{
    if (answer.entered != "done")
        return refuse("answer.not_done", step.id.value, "A movement is answered when it is done.",
                      "Answer done after the press has moved and stands again, or leave the step open.");
    std::vector<Text> missing;
    for (const std::string& need : step.needs)
        if (procedure::isMachineState(need) && !contains(answer.stated, need)) missing.push_back(conditionSaid(need));
    if (!missing.empty())
        return refuse("answer.not_stated", step.id.value, Text("Not said for this movement: %1.", {missing}),
                      "Look at each of these now, at the press, and say it before anything moves.");
    return answer;
}

Result<Answered> held(const Step& step, Answered answer)
{
    if (auto why = whyNoName(answer.entered, step.id.value)) return *why;
    return answer;
}

Result<Answered> chosen(const Against& against, const Step& step, Answered answer)
{
    const auto found = std::find_if(step.choices.begin(), step.choices.end(),
                                    [&](const procedure::Choice& c) { return c.word == answer.entered; });
    if (found == step.choices.end()) {
        std::vector<std::string> words;
        for (const procedure::Choice& c : step.choices) words.push_back(c.word);
        return refuse("answer.not_a_choice", step.id.value,
                      Text("\"%1\" is not one of the answers to this step.", {answer.entered}),
                      Text("Choose one of: %1.", {joined(words)}));
    }
    if (found->stops) answer.judgement = {Verdict::Outside, false};
    // Where the target is one of the words, another word contradicts it: the web hung the wrong way round.
    const auto* ready = against.target == nullptr ? nullptr : against.target->ready();
    const auto* word = ready == nullptr ? nullptr : std::get_if<std::string>(&ready->value);
    const bool known = word != nullptr && std::any_of(step.choices.begin(), step.choices.end(),
                                                      [&](const procedure::Choice& c) { return c.word == *word; });
    if (known && answer.entered != *word) answer.judgement = {Verdict::Outside, false};
    return answer;
}

std::string upper(std::string text)
{
    std::transform(text.begin(), text.end(), text.begin(),
                   [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    return text;
}

Result<Answered> scanned(const Against& against, const Step& step, Answered answer)
{
    const std::string tag = comparableTag(answer.entered);
    if (tag.empty())
        return refuse("answer.nothing_scanned", step.id.value, "Nothing was scanned or typed.",
                      "Scan the roll's tag, or type what it says.");
    Findings notes;
    const Source& source = *against.roll;
    const auto roll = inputs::readRoll(source.text, source.id, notes);
    const bool isTag = roll && !roll->tag.empty() && tag == comparableTag(roll->tag);
    const bool isId = upper(tag) == upper(comparableTag(source.id));
    // A roll whose file has no tag yet is known by the number that its tag carries.
    const auto read =
        roll && roll->tag.empty() ? inputs::readRollTag(answer.entered) : Result<inputs::RollTag>(Finding{});
    const bool isSerial = read && upper(read->serial) == upper(source.id);
    if (!isTag && !isId && !isSerial) answer.judgement = {Verdict::Outside, false};
    return answer;
}

/// A value whose kind no target tells: the kind is that of the unit typed.
Result<Quantity> parseAny(const std::string& entered)
{
    std::optional<Finding> refusal;
    for (std::size_t i = 0; i < kKindCount; ++i) {
        auto parsed = parseQuantity(entered, static_cast<Kind>(i));
        if (parsed) return parsed;
        // A unit of another kind is not the fault of the unit.
        if (!refusal || refusal->code == "quantity.wrong_kind") refusal = parsed.error();
    }
    return *refusal;
}

Result<Answered> read(const Against& against, const Step& step, Answered answer)
{
    const targets::Target* target = against.target;
    const Quantity* wanted = target == nullptr ? nullptr : target->quantity();
    // Wraps are counted: "3" says all there is to say.
    const Bare bare = wanted != nullptr && wanted->kind() == Kind::Count ? Bare::Accept : Bare::Refuse;
    auto parsed = wanted == nullptr ? parseAny(answer.entered) : parseQuantity(answer.entered, wanted->kind(), bare);
    if (!parsed) {
        Finding refusal = parsed.error();
        refusal.subject = step.id.value;
        return refusal;
    }
    // What a panel shows in a unit of its own is said back in that unit.
    const bool panels = wanted != nullptr && mannerOf(wanted->unit()).symbol == parsed->unit();
    answer.value = Quantity(parsed->si(), parsed->kind(), panels ? wanted->unit() : parsed->unit(), answer.entered);
    if (auto never = verdict::implausible(*answer.value, target)) {
        never->subject = step.id.value;
        return *std::move(never);
    }
    if (wanted == nullptr) return answer;
    answer.window = target->ready()->window;
    answer.uncertainty = verdict::uncertaintyOf(*answer.value, target->ready()->instrument);
    answer.judgement = verdict::judge(*answer.value, answer.uncertainty, answer.window);
    return answer;
}

}  // namespace

const targets::Target* judgedBy(const Run& run, const Step& step)
{
    if (step.fills.empty()) return targetOf(run.targets(), step);
    const targets::Targets* before = nullptr;  // the first own answer that filled something
    const targets::Targets* now = nullptr;
    for (const Event& event : run.events()) {
        const Happening& h = event.happening();
        const InputsChanged* filled = nullptr;
        const StepId* by = nullptr;
        if (const auto* began = std::get_if<Began>(&h)) now = &began->targets;
        if (const auto* changed = std::get_if<InputsChanged>(&h)) {
            now = &changed->targets;
            before = nullptr;
        }
        if (const auto* answered = std::get_if<Answered>(&h)) {
            filled = answered->filled.get();
            by = &answered->step;
        }
        if (const auto* deviated = std::get_if<Deviated>(&h)) {
            filled = deviated->filled.get();
            by = &deviated->step;
        }
        if (filled == nullptr) continue;
        if (before == nullptr && *by == step.id) before = now;
        now = &filled->targets;
    }
    return targetOf(before == nullptr ? run.targets() : *before, step);
}

Result<Answered> answerTo(const Run& run, const Step& step, std::string_view entered,
                          const std::vector<std::string>& stated)
{
    const targets::Target* target =
        step.kind == StepKind::Reading ? judgedBy(run, step) : targetOf(run.targets(), step);
    return answerAgainst({target, &run.sources().roll}, step, entered, stated);
}

Result<Answered> answerAgainst(const Against& against, const Step& step, std::string_view entered,
                               const std::vector<std::string>& stated)
{
    Answered answer;
    answer.step = step.id;
    answer.entered = trimmed(entered);
    answer.judgement = {Verdict::Recorded, false};
    answer.stated = statementsIn(stated);
    switch (step.kind) {
    case StepKind::Confirm:
    case StepKind::Call:
        if (isYes(answer.entered)) return answer;
        return refuse("answer.not_yes", step.id.value, "This step is answered with yes, and only when it is so.",
                      "Leave it open and put it right, note what you found, or withdraw the press.");
    case StepKind::Motion: return moved(step, std::move(answer));
    case StepKind::Hold: return held(step, std::move(answer));
    case StepKind::Choice: return chosen(against, step, std::move(answer));
    case StepKind::Scan: return scanned(against, step, std::move(answer));
    case StepKind::Reading: return read(against, step, std::move(answer));
    }
    return answer;
}

std::string comparableTag(std::string_view tag)
{
    std::string all = trimmed(tag);
    if (all.size() >= 3 && all[0] == ']') all.erase(0, 3);
    for (std::size_t at = all.find("<GS>"); at != std::string::npos; at = all.find("<GS>")) all.erase(at, 4);
    std::erase_if(all, [](char c) {
        return c == ' ' || c == '(' || c == ')' || (static_cast<unsigned char>(c) < 0x20U) || c == 0x7f;
    });
    return all;
}

}  // namespace taut::run
