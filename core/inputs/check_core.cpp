// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <numbers>

#include "core/inputs/cross_check.h"
#include "core/inputs/fits.h"
#include "core/inputs/sane.h"
#include "core/inputs/usual_cores.h"
#include "core/units/format.h"

namespace taut::inputs {

namespace {

/// So near to a usual core a measured one comes.
constexpr double kSameCore = 0.001;
/// A circumference gives itself away when the diameter it stands for fits the length this well (policy).
constexpr double kCircumferenceFit = 0.03;
/// A roll only gets smaller: this much above what its file says, and one of the two is not this roll's (policy).
constexpr double kGrown = 0.05;
/// A length this much off what the diameters give is no matter of caliper any more (policy).
constexpr double kLengthOff = 0.15;

Magnitude like(const Quantity& model, double si) { return {si, model.kind(), model.unit()}; }

const Quantity* wallOf(const Inputs& inputs)
{
    if (inputs.roll->coreWall) return &inputs.roll->coreWall->quantity();
    if (inputs.press && inputs.press->unwind && inputs.press->unwind->coreWall)
        return &inputs.press->unwind->coreWall->quantity();
    return nullptr;
}

const UsualCore* usualNear(double inside)
{
    for (const UsualCore& usual : kUsualCores)
        if (std::abs(usual.inside - inside) <= kSameCore) return &usual;
    return nullptr;
}

/// The usual core that goes by this whole number of millimetres.
const UsualCore* usualNamed(double core)
{
    for (const UsualCore& usual : kUsualCores)
        for (const double name : usual.names)
            if (std::abs(core - name) < 1e-6) return &usual;
    return nullptr;
}

void checkNominal(const Roll& roll, Findings& out)
{
    const UsualCore* usual = usualNamed(roll.core->si());
    if (usual == nullptr) return;
    out.push_back(note("input.core_nominal", "roll.core",
                       {"%1 is the name of a core rather than its size; such cores measure %2 inside.",
                        // Its name stays what it is called, whatever the units.
                        {roundedDecimal(roll.core->si() * 1000, 0, Rounding::Nearest) + " mm",
                         Magnitude{usual->inside, Kind::Length, "mm"}}},
                       {"Measure the hole once; enter %1 if that is what it measures.",
                        {Magnitude{usual->inside, Kind::Length, "mm"}}}));
}

/// True when the core was said to be what its outside measures.
bool looksLikeOutside(const Inputs& inputs, Findings& out)
{
    const Quantity* wall = wallOf(inputs);
    if (wall == nullptr) return false;
    const Roll& roll = *inputs.roll;
    const double inside = roll.core->si() - 2 * wall->si();
    const UsualCore* usual = usualNear(inside);
    if (usual == nullptr || usualNear(roll.core->si()) != nullptr || usualNamed(roll.core->si()) != nullptr)
        return false;
    out.push_back(
        refuse("input.core_looks_like_outside", "roll.core",
               {"%1 is not a usual inside diameter, but a core of %2 with a wall of %3 measures that outside.",
                {arg(roll.core), like(roll.core->quantity(), usual->inside), wall->magnitude()}},
               {"Measure the hole, the part that goes on the shaft; enter %1 if that is it.",
                {like(roll.core->quantity(), usual->inside)}}));
    return true;
}

void checkFit(const Inputs& inputs, Findings& out)
{
    const Roll& roll = *inputs.roll;
    const CoreFit fit = fitOf(*inputs.press, roll);
    if (fit == CoreFit::Unknown || fit == CoreFit::Held) return;
    const Mandrel& mandrel = inputs.press->unwind->mandrel;
    const std::vector<TextArg> sizes{arg(roll.core), arg(mandrel.gripsLeast), arg(mandrel.gripsMost)};
    const Text text{"The core measures %1 inside; the mandrel holds %2 to %3.", sizes};
    if (fit == CoreFit::TooSmall)
        out.push_back(refuse("input.core_not_held", "roll.core", text,
                             "It does not go on this mandrel: take a roll on another core."));
    else if (fit == CoreFit::Adapter)
        out.push_back(
            note("input.adapter_needed", "roll.core", text, "Have the adapter for this core ready, both ends of it."));
    else if (inputs.press->unwind->adapters.empty())
        out.push_back(refuse("input.core_not_held", "roll.core", text,
                             "Take a roll on a core that the mandrel holds; this press has no adapters."));
    else
        out.push_back(
            refuse("input.adapter_missing", "roll.core", text,
                   "There is no adapter for this core at the press. Get one, or take a roll on another core."));
}

/// Outer diameter that this length of web makes on this core; nullopt when something is not known.
std::optional<double> diameterFromLength(const Inputs& inputs, double coreOutside)
{
    const Roll& roll = *inputs.roll;
    const Maybe<Kind::Length> stated = statedLength(roll);
    if (!stated || roll.opened || !inputs.substrate || !inputs.substrate->caliper) return std::nullopt;
    return std::sqrt(coreOutside * coreOutside + 4 * inputs.substrate->caliper->si() * stated->si() / std::numbers::pi);
}

/// True when the roll's girth was typed where its diameter belongs.
bool looksLikeCircumference(const Inputs& inputs, double coreOutside, Findings& out)
{
    const Roll& roll = *inputs.roll;
    const std::optional<double> fits = diameterFromLength(inputs, coreOutside);
    const double diameter = roll.outerDiameter->si() / std::numbers::pi;
    if (!fits || diameter <= coreOutside || std::abs(diameter / *fits - 1) > kCircumferenceFit) return false;
    const Quantity& typed = roll.outerDiameter->quantity();
    out.push_back(
        refuse("input.diameter_looks_like_circumference", "roll.outer_diameter",
               {"A roll %1 across would hold far more than the %2 stated, but a roll %1 round holds just that.",
                {typed.magnitude(), arg(statedLength(roll))}},
               {"Measure straight across the roll's face. If %1 is the way round, the diameter is %2.",
                {typed.magnitude(), like(typed, diameter)}}));
    return true;
}

/// What the roll would hold at this diameter.
double lengthAt(double outer, double coreOutside, const Substrate& substrate)
{
    return std::numbers::pi * (outer * outer - coreOutside * coreOutside) / (4 * substrate.caliper->si());
}

/// True when a roll that something was taken off would hold more than it did when it was full.
bool holdsMoreThanFull(const Inputs& inputs, const Quantity& across, double coreOutside, Findings& out)
{
    const Maybe<Kind::Length> full = statedLength(*inputs.roll);
    if (!full || !inputs.substrate || !inputs.substrate->caliper || across.si() <= coreOutside) return false;
    const double holds = lengthAt(across.si(), coreOutside, *inputs.substrate);
    if (holds <= (1 + kLengthOff) * full->si()) return false;
    out.push_back(refuse("input.diameter_above_full", "roll.outer_diameter",
                         {"At %1 across this part-used roll would hold %2; full it held %3.",
                          {across.magnitude(), like(full->quantity(), holds), arg(full)}},
                         "Measure straight across the roll's face, not round it. If that is right, look whether label "
                         "and material are this roll's."));
    return true;
}

void checkLength(const Inputs& inputs, double coreOutside, Findings& out)
{
    const Roll& roll = *inputs.roll;
    const Maybe<Kind::Length> stated = statedLength(roll);
    if (!inputs.substrate || !inputs.substrate->caliper || !stated) return;
    const double length = lengthAt(roll.outerDiameter->si(), coreOutside, *inputs.substrate);
    const double off = stated->si() / length - 1;
    const Text text{"%1 is stated; the diameters give %2.", {arg(stated), like(stated->quantity(), length)}};
    if (off > kLengthOff)
        out.push_back(warn("input.tag_from_full_roll", "roll.length", text,
                           "The length seems to be that of the roll when it was full. Say that it was opened: then the "
                           "diameters count."));
    else if (off < -kLengthOff)
        out.push_back(warn("input.length_differs", "roll.length", text,
                           "Measure the diameter again, and check core, wall and material."));
}

/// No core is heavier than if it were of steel all through its wall, nor than its roll.
void checkCoreMass(const Inputs& inputs, Findings& out)
{
    constexpr double kSteel = 7850;
    const Roll& roll = *inputs.roll;
    if (!roll.coreMass) return;
    if (roll.mass && roll.coreMass->si() >= roll.mass->si()) {
        out.push_back(refuse("input.core_mass", "roll.core_mass",
                             {"The core is said to weigh %1, the whole roll %2.", {arg(roll.coreMass), arg(roll.mass)}},
                             "Weigh an empty core, or leave it out."));
        return;
    }
    const Quantity* wall = wallOf(inputs);
    if (wall == nullptr || !roll.core || !roll.width) return;
    const double outside = roll.core->si() + 2 * wall->si(), inside = roll.core->si();
    const double most = kSteel * std::numbers::pi / 4 * (outside * outside - inside * inside) * roll.width->si();
    if (roll.coreMass->si() > most)
        out.push_back(refuse("input.core_mass", "roll.core_mass",
                             {"The core is said to weigh %1; of solid steel it would weigh %2.",
                              {arg(roll.coreMass), like(roll.coreMass->quantity(), most)}},
                             "Weigh an empty core, or leave it out."));
}

}  // namespace

void checkCore(const Inputs& inputs, Findings& out)
{
    if (!inputs.roll || !inputs.roll->core) return;
    checkNominal(*inputs.roll, out);
    checkCoreMass(inputs, out);
    // A core that the press holds is believed: it was tried on the shaft before.
    const bool held = inputs.press && fitOf(*inputs.press, *inputs.roll) == CoreFit::Held;
    if (!held && looksLikeOutside(inputs, out)) return;
    if (inputs.press) checkFit(inputs, out);
}

void checkDiameter(const Inputs& inputs, Findings& out)
{
    if (!inputs.roll || !inputs.roll->outerDiameter) return;
    const Roll& roll = *inputs.roll;
    const Quantity* wall = roll.core ? wallOf(inputs) : nullptr;
    if (roll.core) {
        const double outside = roll.core->si() + (wall == nullptr ? 0 : 2 * wall->si());
        if (roll.outerDiameter->si() <= outside) {
            out.push_back(refuse("input.diameter_below_core", "roll.outer_diameter",
                                 {"The roll is said to be %1 across, no more than its core, %2 outside.",
                                  {arg(roll.outerDiameter), like(roll.core->quantity(), outside)}},
                                 "Measure the roll and its core again."));
            return;
        }
        if (wall != nullptr) {
            if (looksLikeCircumference(inputs, outside, out)) return;
            const Maybe<Kind::Length> stated = statedLength(roll);
            if (roll.opened && holdsMoreThanFull(inputs, roll.outerDiameter->quantity(), outside, out)) return;
            if (roll.opened && stated)
                out.push_back(note("input.tag_from_full_roll", "roll.length",
                                   {"The roll was opened before; the %1 stated is of the full roll.", {arg(stated)}},
                                   "The diameters count. Measure the roll's diameter as it is now."));
            else if (!roll.opened)
                checkLength(inputs, outside, out);
        }
    }
    if (inputs.press && inputs.press->unwind && inputs.press->unwind->largestDiameter &&
        roll.outerDiameter->si() > inputs.press->unwind->largestDiameter->si())
        out.push_back(refuse("input.roll_too_large", "roll.outer_diameter",
                             {"The roll is %1 across; the unwind takes %2 at most.",
                              {arg(roll.outerDiameter), arg(inputs.press->unwind->largestDiameter)}},
                             "Take a smaller roll, or have this one rewound into two."));
}

bool isRollDiameter(Length diameter) noexcept
{
    return diameter.si() >= sane::kRollDiameter.least && diameter.si() <= sane::kRollDiameter.most;
}

void checkMeasured(const Inputs& inputs, Length present, Findings& out)
{
    const Roll& roll = *inputs.roll;
    const SharedString unit = roll.outerDiameter ? roll.outerDiameter->quantity().unit() : SharedString();
    // A slip of many digits is said in metres.
    const auto spoken = [&](double si) { return Magnitude{si, Kind::Length, std::abs(si) > 100 ? "m" : unit}; };
    if (!isRollDiameter(present)) {
        out.push_back(
            refuse("input.diameter_absurd", "roll.outer_diameter",
                   {"A roll cannot measure %1 across: between %2 and %3 can be believed.",
                    {spoken(present.si()), spoken(sane::kRollDiameter.least), spoken(sane::kRollDiameter.most)}},
                   "Measure straight across the roll's face, and type the figure with its unit."));
        return;
    }
    const double across = present.si() / std::numbers::pi;
    if (roll.outerDiameter && std::abs(across / roll.outerDiameter->si() - 1) <= kCircumferenceFit) {
        out.push_back(refuse("input.diameter_looks_like_circumference", "roll.outer_diameter",
                             {"%1 is what this roll measures round: its file says %2 across.",
                              {spoken(present.si()), roll.outerDiameter->quantity().magnitude()}},
                             {"Measure straight across the roll's face. If %1 is the way round, the diameter is %2.",
                              {spoken(present.si()), spoken(across)}}));
        return;
    }
    if (roll.outerDiameter && present.si() > (1 + kGrown) * roll.outerDiameter->si()) {
        out.push_back(refuse("input.diameter_above_full", "roll.outer_diameter",
                             {"%1 was measured across; the roll's file says %2, and a roll only gets smaller.",
                              {spoken(present.si()), roll.outerDiameter->quantity().magnitude()}},
                             {"Measure straight across the roll's face: if %1 is the way round, the diameter is %2. If "
                              "%1 is right, correct the roll's file.",
                              {spoken(present.si()), spoken(across)}}));
        return;
    }
    const Quantity* wall = roll.core ? wallOf(inputs) : nullptr;
    if (!roll.outerDiameter && wall != nullptr)
        (void)holdsMoreThanFull(inputs, Quantity(present, Kind::Length, unit), roll.core->si() + 2 * wall->si(), out);
}

void checkStripped(const Inputs& inputs, std::optional<Length> present, Findings& out)
{
    const Roll& roll = *inputs.roll;
    if (!roll.strippedDiameter) return;
    const double left = roll.strippedDiameter->si();
    const double whole = present ? present->si() : roll.outerDiameter ? roll.outerDiameter->si() : 0;
    const Quantity* wall = roll.core ? wallOf(inputs) : nullptr;
    const double core = roll.core ? roll.core->si() + (wall == nullptr ? 0 : 2 * wall->si()) : 0;
    const Magnitude& said = arg(roll.strippedDiameter);
    if (whole > 0 && !present && left > (1 + kGrown) * whole)
        out.push_back(refuse("input.stripped_larger", "roll.stripped_diameter",
                             {"%1 is said to be left of a roll that was %2 across: a roll only gets smaller.",
                              {said, like(roll.strippedDiameter->quantity(), whole)}},
                             "Measure straight across the roll, not round it, and enter both anew."));
    else if (left <= core)
        out.push_back(refuse("input.stripped_below_core", "roll.stripped_diameter",
                             {"%1 is said to be left of the roll, no more than its core, %2 outside.",
                              {said, like(roll.strippedDiameter->quantity(), core)}},
                             "Measure straight across what is left. Where nothing is, take another roll."));
    else if (whole == 0 && inputs.press && inputs.press->unwind && inputs.press->unwind->largestDiameter &&
             left > inputs.press->unwind->largestDiameter->si())
        out.push_back(refuse(
            "input.roll_too_large", "roll.stripped_diameter",
            {"The roll is %1 across; the unwind takes %2 at most.", {said, arg(inputs.press->unwind->largestDiameter)}},
            "Take a smaller roll, or have this one rewound into two."));
}

bool blamesDiameter(const Finding& finding)
{
    return finding.code == "input.diameter_below_core" || finding.code == "input.diameter_above_full" ||
           finding.code == "input.diameter_looks_like_circumference";
}

bool blamesStripped(const Finding& finding) { return finding.code == "input.stripped_below_core"; }

}  // namespace taut::inputs
