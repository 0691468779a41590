// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/inputs/cross_check.h"
#include "core/inputs/words.h"

namespace taut::inputs {

namespace {

/// Slitting leaves a roll half a millimetre off (common practice, no source); nothing is said up to there.
constexpr double kSlitTolerance = 0.0005;
/// Narrower than the job by more than this and the outer lane runs off the web (policy).
constexpr double kTooNarrow = 0.002;

void checkWidth(const Inputs& inputs, const Roll& roll, Findings& out)
{
    if (!roll.width) return;
    const double width = roll.width->si();
    if (inputs.press && inputs.press->webMost && width > inputs.press->webMost->si()) {
        out.push_back(
            refuse("input.roll_wider_than_press", "roll.width",
                   {"The roll is %1 wide; this press takes %2 at most.", {arg(roll.width), arg(inputs.press->webMost)}},
                   "Take another roll or another press. If the figure is a slip, correct it."));
        return;
    }
    if (inputs.press && inputs.press->webLeast && width < inputs.press->webLeast->si())
        out.push_back(warn("input.roll_narrower_than_press", "roll.width",
                           {"The roll is %1 wide; this press is made for %2 and more.",
                            {arg(roll.width), arg(inputs.press->webLeast)}},
                           "Check the figure, and that guides and nips hold so narrow a web."));
    if (!inputs.job || !inputs.job->webWidth) return;
    const double over = width - inputs.job->webWidth->si();
    if (std::abs(over) <= kSlitTolerance + 1e-9) return;
    const Text text{"The roll is %1 wide; the job is made for %2.", {arg(roll.width), arg(inputs.job->webWidth)}};
    if (over < -kTooNarrow)
        out.push_back(refuse("input.width_differs_from_job", "roll.width", text,
                             "Take a roll of the job's width: on this one the outer lanes run off the web."));
    else
        out.push_back(warn("input.width_differs_from_job", "roll.width", text,
                           "Measure the roll. If the figure is right, place guides and sensors by the roll's width."));
}

void checkSubstrate(const Inputs& inputs, const Roll& roll, Findings& out)
{
    const std::string* wanted = nullptr;
    if (inputs.job && !inputs.job->substrate.empty()) wanted = &inputs.job->substrate;
    if (inputs.substrate && wanted != nullptr && inputs.substrate->id != *wanted)
        out.push_back(refuse("input.wrong_substrate", "substrate.id",
                             {"The job is for %1; chosen is %2.", {*wanted, inputs.substrate->id}},
                             "Choose the job's material, or the job that belongs to this one."));
    if (wanted == nullptr && inputs.substrate) wanted = &inputs.substrate->id;
    if (wanted == nullptr || roll.substrate.empty() || roll.substrate == *wanted) return;
    out.push_back(refuse("input.wrong_substrate", "roll.substrate",
                         {"The roll is %1; the job is for %2.", {roll.substrate, *wanted}},
                         "Take a roll of the job's material. Every tension would be wrong on this one."));
}

void checkWinding(const Inputs& inputs, const Roll& roll, Findings& out)
{
    if (!inputs.press || !inputs.press->printFeed || !inputs.press->printWinding) return;
    if (roll.winding == Winding::Unknown) {
        out.push_back(warn("input.winding_unknown", "roll.winding",
                           "It is not said which way the roll is wound, so the feed cannot be told.",
                           "Look which side of the web lies outside on the roll, and enter it."));
        return;
    }
    const std::optional<Feed> feed = feedFor(*inputs.press, roll);
    if (!inputs.press->unwind || inputs.press->unwind->feeds.empty() || roll.winding == *inputs.press->printWinding)
        return;
    const std::vector<Feed>& feeds = inputs.press->unwind->feeds;
    const TextArg word = std::vector<Text>{SharedString::ofTable(wordFor<Feed>(kFeedWords, *feed))};
    if (std::find(feeds.begin(), feeds.end(), *feed) == feeds.end())
        out.push_back(refuse("input.winding_differs", "roll.winding",
                             {"So wound, the roll must be fed %1 to show its face to the plates, and this press cannot "
                              "feed it so.",
                              {word}},
                             "Take a roll wound the other way, or have this one rewound."));
    else
        out.push_back(note("input.winding_differs", "roll.winding",
                           {"The roll is wound the other way than usual on this press: feed it %1.", {word}},
                           "Hang it as the feed direction says, and look at the face before joining."));
}

void checkCondition(const Roll& roll, Findings& out)
{
    if (roll.condition == "crushed")
        out.push_back(
            warn("input.roll_condition", "roll.condition", "The roll or its core is crushed.",
                 "Look whether the core still goes on the shaft and the roll runs round; else take another."));
    else if (roll.condition == "nicked")
        out.push_back(warn("input.roll_condition", "roll.condition",
                           "The roll's edge is nicked: the web may tear there under tension.",
                           "Strip outer wraps until the edge is whole, and say how many."));
    else if (roll.condition == "cold")
        out.push_back(
            warn("input.roll_condition", "roll.condition",
                 "The roll is colder or damper than this room: it changes its length and its tension while it runs.",
                 "Let it lie in the press room as long as the sheet says. If it has to run, watch tension and "
                 "register, and set them again when it is warm."));
    else if (roll.condition == "dusty")
        out.push_back(note("input.roll_condition", "roll.condition", "The roll is dusty.",
                           "Strip outer wraps until the web is clean."));
}

}  // namespace

void checkRoll(const Inputs& inputs, Findings& out)
{
    if (!inputs.roll) return;
    checkWidth(inputs, *inputs.roll, out);
    checkSubstrate(inputs, *inputs.roll, out);
    checkWinding(inputs, *inputs.roll, out);
    checkCondition(*inputs.roll, out);
}

}  // namespace taut::inputs
