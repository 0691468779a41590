// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <span>
#include <string_view>

// Every id that this program can compute, and what is so of it by its name alone.
namespace taut::targets {

/// What limits in a press's own profile may do to the window of a target: take its place; or only narrow it, since it
/// protects people, press, web or joint, or follows from a plate or a measured stop; or nothing, because it comes from
/// the tension per width, and through it from job, material and tables, or because the target is never judged.
enum class OwnLimits : std::uint8_t { Replace, OnlyNarrow, ByTension, NotJudged };
/// What a target's value is: what follows from the inputs and is as it is; or what somebody sets, makes or waits for by
/// it, so that it can be aimed elsewhere; or of these a fault, best not there at all: how much of it there is, and
/// never to which side. What follows from an aim follows from it as this press's own limits leave it (Book::settled).
enum class Figure : std::uint8_t { Fact, Aim, Fault };
/// The pattern of an id that this program can compute.
struct KnownId {
    std::string_view pattern;
    OwnLimits limits = OwnLimits::Replace;
    Figure figure = Figure::Fact;
};
[[nodiscard]] std::span<const KnownId> knownIds();
/// Whether an id fits a pattern like "tension.{zone}.total".
[[nodiscard]] bool fitsPattern(std::string_view pattern, std::string_view id);
/// Of the patterns that an id fits, the strictest.
[[nodiscard]] OwnLimits ownLimitsOf(std::string_view id);
/// Whether a target's value is one to aim at.
[[nodiscard]] bool isAim(std::string_view id);
/// Whether a target is how much of a fault there is: less than nothing of it is no reading.
[[nodiscard]] bool hasNoSign(std::string_view id);

}  // namespace taut::targets
