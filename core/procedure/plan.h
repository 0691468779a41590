// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/json.h"
#include "core/inputs/inputs.h"
#include "core/procedure/procedure.h"
#include "core/targets/target.h"

namespace taut::procedure {

/// A step of this press and these inputs: repeated, labelled, ready to be asked.
struct Step {
    StepId id;
    std::size_t place = 0;  ///< index into Plan::places
    StepKind kind{};
    bool vital = false, hands = false, waivable = true, external = false;
    std::string target;   ///< id, "" = none
    std::string control;  ///< role, "" = none
    std::string item;     ///< id of the repeated item, "" = none
    std::string at;       ///< where to stand or reach: a roller id or press lift splice_table panel disconnect
    std::vector<std::string> needs, gives, ends, uses, fills;
    ValidFor validFor{};
    std::vector<Choice> choices;
    SignalWord signal{};
    Text say, why, caution;
    Text see;  ///< whose rule it is and where it stands: "press manual, its lift"
    std::vector<Text> tries;
    Text done;  ///< what was seen of a movement that went as it should; empty = it moved as expected
    double waitSeconds = 0;
    bool lastOfItems = true;  ///< a repeated step gives its conditions when every item is answered
    friend bool operator==(const Step&, const Step&) = default;
};
struct PlanPlace {
    std::size_t stage = 0;
    std::string id;            ///< "walk_round"; of a place shown in parts "walk_round/1", "walk_round/2"
    Text title;                ///< "Walk round the press (1 of 2)"
    std::string at, holdStop;  ///< the maintained stop within reach there, "" = none named
    bool doConfirm = false;
    std::size_t first = 0, count = 0;  ///< into Plan::steps
    friend bool operator==(const PlanPlace&, const PlanPlace&) = default;
};
struct PlanStage {
    std::string id;
    Text title;
    std::size_t first = 0, count = 0;  ///< into Plan::places
    friend bool operator==(const PlanStage&, const PlanStage&) = default;
};
struct Plan {
    std::string kind;  ///< full next_roll re_web restart
    std::vector<PlanStage> stages;
    std::vector<PlanPlace> places;
    std::vector<Step> steps;
    [[nodiscard]] const Step* find(const StepId& id) const;
    [[nodiscard]] std::size_t stageOf(const Step& step) const { return places[step.place].stage; }
    friend bool operator==(const Plan&, const Plan&) = default;
};

/// for_each unrolled in web order, facts applied, this press's labels filled in, places split at nine. `facts` are
/// inputs::factsOf. A call that would stand alone at its place joins the place before it. A reading whose target this
/// press does not have is left out; one whose target is ready, needs or cannot stays. A need that no step of this plan
/// gives is left out as well (no air, no air to be on; a next roll finds the power on), but never people_clear,
/// guards_closed and stops_released of a motion step. Lint sees to it that what protects people is given again in every
/// kind of run.
[[nodiscard]] Plan planFor(const Procedure& procedure, const inputs::Inputs& inputs, const targets::Targets& targets,
                           std::span<const std::string> facts, std::string_view kind);

/// As the `began` and `inputs_changed` events carry it: a fold reads the plan, it never plans.
[[nodiscard]] Json planJson(const Plan& plan);
[[nodiscard]] Result<Plan> planFrom(const Json& json);

}  // namespace taut::procedure
