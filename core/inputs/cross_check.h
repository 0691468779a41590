// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/inputs/inputs.h"

namespace taut::inputs {

// The parts of crossCheck; each looks at the inputs that it needs and is silent when one of them is missing. Subjects
// are dotted keys of the input files.

/// Width, substrate, winding, condition of the roll against job and press.
void checkRoll(const Inputs& inputs, Findings& out);
/// Core and diameter: as typed, and against the unwind.
void checkCore(const Inputs& inputs, Findings& out);
void checkDiameter(const Inputs& inputs, Findings& out);
/// The diameter measured now, in place of the one in the roll's file: whether it can be, and the girth typed for it.
void checkMeasured(const Inputs& inputs, Length present, Findings& out);
/// What was left when the outer wraps had come off, against the whole roll and its core.
void checkStripped(const Inputs& inputs, std::optional<Length> present, Findings& out);
/// Whether a finding says that the roll's diameter cannot be: nothing that follows from it is worth stating.
[[nodiscard]] bool blamesDiameter(const Finding& finding);
/// The same of what is said to be left of it. One that is said to have grown goes by its own diameter until it is
/// mended.
[[nodiscard]] bool blamesStripped(const Finding& finding);
/// What the press file says of frame, unwind and zones, against itself.
void checkFrame(const Inputs& inputs, Findings& out);
/// The roll's tag against what was entered.
void checkTag(const Inputs& inputs, Findings& out);
/// What the job asks of the press: width, speed, stations, rewinds.
void checkJob(const Inputs& inputs, Findings& out);
/// Whether the press can be threaded as drawn.
void checkWeb(const Inputs& inputs, Findings& out);

/// The roll's length as its file says it, else as its tag does; what it was when it was full.
[[nodiscard]] Maybe<Kind::Length> statedLength(const Roll& roll);

[[nodiscard]] inline Finding warn(std::string code, std::string subject, Text text, Text remedy)
{
    return {std::move(code), Severity::Warn, std::move(subject), std::move(text), std::move(remedy)};
}
[[nodiscard]] inline Finding note(std::string code, std::string subject, Text text, Text remedy)
{
    return {std::move(code), Severity::Note, std::move(subject), std::move(text), std::move(remedy)};
}
/// A quantity as an argument of a Text.
template <Kind K>
[[nodiscard]] Magnitude arg(const Maybe<K>& value)
{
    return value->quantity().magnitude();
}

}  // namespace taut::inputs
