// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/run/parts.h"

#include <algorithm>
#include <cctype>
#include <utility>

#include "core/base/utf8.h"
#include "core/run/run.h"
#include "core/run/words.h"

namespace taut::run {

std::string trimmed(std::string_view text)
{
    constexpr std::string_view kBlank = " \t\r\n";
    const std::size_t first = text.find_first_not_of(kBlank);
    if (first == std::string_view::npos) return {};
    return cleanUtf8(text.substr(first, text.find_last_not_of(kBlank) - first + 1));
}

bool saysSomething(std::string_view text)
{
    constexpr int kLeast = 3;
    int signs = 0;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        const bool beginsOther = byte >= 0xC0;  // of a character beyond ASCII only the first byte counts
        signs += beginsOther || (byte < 0x80 && std::isalnum(byte) != 0) ? 1 : 0;
    }
    return signs >= kLeast;
}

std::optional<Finding> whyNoName(std::string_view text, std::string subject)
{
    constexpr const char* kRemedy = "Touch or type the name of the person who holds the stop, as the crew knows it.";
    if (!saysSomething(text))
        return refuse("answer.no_holder", std::move(subject), "A held stop belongs to somebody, and no name was given.",
                      kRemedy);
    if (std::any_of(text.begin(), text.end(), [](unsigned char c) { return c < 0x80 && std::isdigit(c) != 0; }))
        return refuse("answer.no_holder", std::move(subject),
                      Text("\"%1\" has figures in it: a roll, a tag or a reading holds no stop.", {std::string(text)}),
                      kRemedy);
    return std::nullopt;
}

std::string_view baseOf(const procedure::StepId& id)
{
    const std::string_view whole = id.value;
    return whole.substr(0, whole.find('/'));
}

std::string placeOfStop(const procedure::Plan& plan, const procedure::Step& step)
{
    const procedure::PlanPlace& place = plan.places[step.place];
    return place.holdStop.empty() ? std::string(kPlace) + place.id : place.holdStop;
}

std::vector<Text> holdersOf(const Run& run)
{
    std::vector<Text> all;
    for (const HeldStop& held : run.heldStops()) all.push_back(holderSaid(run.plan(), held.holder, held.where));
    return all;
}

std::vector<Text> wordsOf(const procedure::Step& step) { return {step.say}; }

const targets::Target* targetOf(const targets::Targets& targets, const procedure::Step& step)
{
    return step.target.empty() ? nullptr : targets.find(step.target);
}

const Finding* cannotOf(const targets::Targets& targets, const procedure::Step& step)
{
    const targets::Target* target = targetOf(targets, step);
    const auto* cannot = target == nullptr ? nullptr : std::get_if<targets::Cannot>(&target->state);
    // What this roll merely never comes to keeps nobody from anything.
    return cannot == nullptr || cannot->never() ? nullptr : &cannot->why;
}

}  // namespace taut::run
