// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <string_view>

#include "core/targets/book.h"
#include "core/targets/known_ids.h"

namespace taut::targets {

namespace {

/// What a target says where its family said nothing more particular, ready or in want of keys.
struct Words {
    std::string_view pattern, symbols, advice;
};
constexpr std::array kWords{
    Words{"align.centre", "", "Measure to the middle of the roll."},
    Words{"align.drive_edge", "", "Measure to the web's edge; both edges together prove the centre."},
    Words{"align.mark", "x = w / 2", ""},
    Words{"align.operator_edge", "", "Measure to the web's edge; both edges together prove the centre."},
    Words{"core.adapter", "yes when c is outside a to b and an adapter fits", ""},
    Words{"guide.{guide}.spacing", "x = w", "From the middle of one sensor's window to the middle of the other's."},
    Words{"guide.{guide}.stroke_needed", "x = |y|", "What the guide must make good for this roll, to one side."},
    Words{"ink.{station}.plate_stretch", "",
          "The plate is made this much shorter, and stretches to length on its cylinder."},
    Words{"job.covered", "yes when U >= N", ""},
    Words{"job.repeat", "", "One turn of the plate cylinder prints so much web."},
    Words{"job.rolls", "n = (N - w) / (U - w), rounded up, at least 1",
          "Have them lying ready before the first one is hung."},
    Words{"job.splices", "x = n (1 + s) - 1", ""},
    Words{"lift.load", "m = roll + adapter + carriage", "All that the lift has to raise."},
    Words{"motion.crawl_class", "by the published limits of v", ""},
    Words{"motion.inch_class", "by the published limits of i", ""},
    Words{"roll.feed", "winding and side equal: over, else under", ""},
    Words{"roll.inertia", "", "The heavier and larger the roll, the more it wants to run on."},
    Words{"roll.lengths_apart", "x = (longest - shortest) / longest", ""},
    Words{"roll.mass", "m = the largest of web + core, label + core and stated", ""},
    Words{"roll.usable", "U = L - s - r", ""},
    Words{"roll.web_mass", "", "What the web alone weighs, without its core."},
    Words{"roll.wraps", "", "Turns of web on the core."},
    Words{"splice.margin", "", "How much stronger the joint is than the pull on it."},
    Words{"splice.transient_margin", "", "How much stronger the joint is than the hardest pull."},
    Words{"strip.diameter", "", "The diameter to work with once the outer wraps are off."},
    Words{"tension.{zone}.finished", "T = T0", "No taper is set: the tension stays as it began."},
    Words{"tension.{zone}.per_width", "Tw = (low + high) / 2", ""},
    Words{"thread.crawl_time", "", "Held down all the way; let go and it stops."},
    Words{"thread.pull", "L = s", "So much web passes before the splice reaches the rewind."},
    Words{"thread.{path}.length", "L = sum of s and b", "So much web lies in the press when it is threaded."},
    Words{"thread.{rewind}.winding", "by winding, side and the way from unwind to rewind", ""},
    Words{"thread.{rewind}.wraps", "", "Turned by hand with the stop held."},
    Words{"traction.first_to_slip", "the roller of the least r", ""},
};

}  // namespace

void explain(Target& target)
{
    if (auto* needs = std::get_if<Needs>(&target.state)) {
        for (const Words& words : kWords)
            if (needs->advice.empty() && fitsPattern(words.pattern, target.id))
                needs->advice = SharedString::ofTable(words.advice);
        if (needs->advice.empty())
            needs->advice = "It is computed as soon as what is missing has been entered; until then do not guess it.";
        return;
    }
    if (auto* no = std::get_if<Cannot>(&target.state)) {
        no->advice = no->why.remedy;
        return;
    }
    auto* ready = std::get_if<Ready>(&target.state);
    for (const Words& words : kWords) {
        if (!ready->because.symbols.empty() && !ready->advice.empty()) break;
        if (!fitsPattern(words.pattern, target.id)) continue;
        if (ready->because.symbols.empty()) ready->because.symbols = SharedString::ofTable(words.symbols);
        if (ready->advice.empty()) ready->advice = SharedString::ofTable(words.advice);
    }
    if (ready->because.symbols.empty())
        ready->because.symbols = ready->because.formula == "lookup" ? "(low + high) / 2, from the table" : "as entered";
    if (!ready->window.low && !ready->window.high && ready->window.source.empty())
        ready->window.source = "no limits: a figure to know, not to meet";
}

}  // namespace taut::targets
