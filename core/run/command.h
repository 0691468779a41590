// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/people/person.h"
#include "core/procedure/procedure.h"
#include "core/run/basis.h"

namespace taut::run {

// Everything somebody can do to a run: the one list. Screens, the demo, tests and the practice press send these.
/// 1. Answering. entered: "yes" for confirm and call, "done" for motion, the holder's name for hold, a choice's word,
/// the tag, or a value with its unit. stated: machine states said anew, for a motion step all that it needs.
struct Answer {
    procedure::StepId step;
    std::string entered;
    std::vector<std::string> stated;
};
struct Correct {
    procedure::StepId step;
    std::string entered, reason;
};
struct SkipStep {
    procedure::StepId step;
    std::string reason;
    std::optional<people::Actor> supervisor;
};
struct AcceptDeviation {
    procedure::StepId step;
    std::string reason;
    std::shared_ptr<const people::Signer> supervisor;  ///< who signs it; a PIN alone does not
};
struct Note {
    procedure::StepId step;
    std::string text;
};
/// A picture or file that belongs to a step, or to the run (attachment.h): what it is called, and its bytes.
struct Attach {
    procedure::StepId step;
    std::string name;
    std::shared_ptr<const std::string> bytes;
};
/// What brought a reading that had come out outside back within its window: one of its step's remedies, counted from 1,
/// or 0 and words.
struct SayHelped {
    procedure::StepId step;
    int remedy = 0;
    std::string words;
};
/// 2. Held stops.
struct HoldStop {
    std::string holder, where;
};
/// A stop that somebody enrolled holds takes that person's own word, or a supervisor's who looked (held.h).
struct GiveUpStop {
    std::string holder;
    std::string reason = {};  ///< why it is not the holder who says it
    std::optional<people::Actor> saidBy =
        {};  ///< the holder, or the supervisor; whoever has the run need not say it twice
};
/// 3. What changes under way.
struct ChangeRoll {
    std::string rollToml;
    std::optional<Length> presentDiameter;
};
struct MeasuredDiameter {
    Length diameter;
};
struct RepeatStage {
    std::string stage, cause;
};
struct Interrupt {
    std::string reason;
};
struct Resume {
    std::vector<std::string> stated;  ///< all of kMakeSafe
    bool afterLong = false;
    bool takesOver = false;  ///< said by somebody other than who had the run: it is theirs from now on
};
/// Given by whoever hands the run over, or by the person who takes it: `to` has signed in.
struct HandOver {
    people::Actor to;
};
/// 4. How it ends. Withdraw and Return also reach the press itself: logbook/writer.h sends them to all its open runs.
struct Withdraw {
    std::string reason;
};
struct Return {
    std::string done;
};
/// supervisor: who countersigns where whoever signs may not sign alone at this press (the logbook asks it).
struct SignOff {
    std::string remarks;
    std::optional<people::Actor> supervisor = {};
};
struct Abandon {
    std::string reason;
};

using Command =
    std::variant<Answer, Correct, SkipStep, AcceptDeviation, Note, Attach, SayHelped, HoldStop, GiveUpStop, ChangeRoll,
                 MeasuredDiameter, RepeatStage, Interrupt, Resume, HandOver, Withdraw, Return, SignOff, Abandon>;

/// What must be said before a run goes on after an interruption: make safe first.
inline constexpr const char* kMakeSafe[] = {"nobody_in", "roll_supported", "web_secured", "lamps_parked"};

}  // namespace taut::run
