// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/inputs/job.h"
#include "core/inputs/press.h"
#include "core/inputs/roll.h"
#include "core/inputs/substrate.h"

namespace taut::inputs {

/// The four things that everything follows from.
struct Inputs {
    std::shared_ptr<const Press> press;
    std::shared_ptr<const Job> job;
    std::shared_ptr<const Substrate> substrate;
    std::shared_ptr<const Roll> roll;
};

/// Reading: one wrong key never takes the rest down. A file that cannot be used at all is the Result's error; every key
/// that is wrong is left out and stands in `notes` as a Stop with subject "file:line:column key", what was found, what
/// is expected and what to do. Unknown keys are refused the same way in a file of our own format number, ignored with a
/// note in a newer one.
[[nodiscard]] Result<Press> readPress(std::string_view toml, std::string_view file, Findings& notes);
[[nodiscard]] Result<Job> readJob(std::string_view toml, std::string_view file, Findings& notes);
[[nodiscard]] Result<std::vector<Substrate>> readSubstrates(std::string_view toml, std::string_view file,
                                                            Findings& notes);
[[nodiscard]] Result<Roll> readRoll(std::string_view toml, std::string_view file, Findings& notes);

/// Writing: TOML that reads back to an equal value, entered texts kept.
[[nodiscard]] std::string writeRoll(const Roll& roll);

/// What any of these files is: "press", "job", "substrates", "roll", "procedure", "answers", or "" when it is none.
[[nodiscard]] std::string whatIs(std::string_view toml);

/// How this roll must be hung so that the right face meets the plates: the press's print side, flipped when the roll is
/// wound the other way. nullopt when one of them is not known.
[[nodiscard]] std::optional<Feed> feedFor(const Press& press, const Roll& roll);

/// What does not fit together before anybody lifts a roll: roll wider than the press, roll of another substrate, width
/// against job, core against mandrel and adapters, diameter and mass against the unwind, winding unknown, tag against
/// geometry, circumference typed as diameter, core typed by its outside or nominally, condition, missing adapter.
/// presentDiameter: the roll as it was measured now; it takes the place of the diameter in its file.
[[nodiscard]] Findings crossCheck(const Inputs& inputs, std::optional<Length> presentDiameter = {});
/// Whether a roll may measure this across at all; what lies beyond is a slip, and nothing is computed from it.
[[nodiscard]] bool isRollDiameter(Length diameter) noexcept;

/// The fixed list of facts (formats §4) that hold for these inputs; those of an item in a repetition are itemFacts.
[[nodiscard]] std::vector<std::string> factsOf(const Inputs& inputs, bool webInPress);
/// "zone", "station", "guard", "emergency_stop", "guide", "sensor", "rewind", "clamp"
struct Item {
    std::string id, name, place;  ///< place: id of a place of the press, or of a roller; "" = not said
    std::vector<std::string> facts;
};
[[nodiscard]] std::vector<Item> itemsOf(const Press& press, std::string_view repetition);
/// Every fact and repetition word that a procedure may use.
[[nodiscard]] const std::vector<std::string>& allFacts();
[[nodiscard]] const std::vector<std::string>& allRepetitions();

}  // namespace taut::inputs
