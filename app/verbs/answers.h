// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"

namespace taut::app::verbs {

/// One [[answer]] of an answers file, in the order in which it is given. `act` says what is done: "answer" (the step is
/// answered), "skip" (not applicable), or correct, deviation, give_up_stop, hold_stop, change_roll, diameter,
/// repeat_stage, interrupt, resume, kill, hand_over, note, attach, helped.
struct AnswerEntry {
    int line = 0;
    std::string act = "answer";
    std::string step, entered, by;
    std::vector<std::string> stated;
    bool again = false;                   ///< answer: the step was answered before and came out outside
    std::string at;                       ///< change_roll, repeat_stage, interrupt, hand_over: the step that was next
    std::string reason, supervisor;       ///< skip, deviation, correct, interrupt
    std::string roll, diameter;           ///< change_roll, diameter
    std::string stage, cause;             ///< repeat_stage
    std::string to, holder, where, text;  ///< hand_over, give_up_stop, hold_stop, note, helped
    std::string file;                     ///< attach: of resources/demo/pictures
    std::string remedy;                   ///< helped: which of the step's, counted from 1; "" = `text` says it
    int seconds = 20;                     ///< how long it took, for the clock of the told story
};
/// What an answers file tells: which run, everything done in it, and how it ends.
struct Answers {
    std::string file;
    std::string title;
    std::string press, job, substrate, roll, procedure = "cold_start", kind = "full", by;
    std::string diameter;
    bool webInPress = true;
    std::string after;            ///< an answers file whose run this one continues, told first
    std::string ends = "signed";  ///< signed or abandoned
    std::string reason, remarks;  ///< of the end
    std::vector<AnswerEntry> entries;
};

/// Reads an answers file. The Result fails when it is none; everything else that is wrong stands in `notes` as a Stop
/// (codes answers.*, subject "file:line:column key").
[[nodiscard]] Result<Answers> readAnswers(std::string_view toml, std::string_view file, Findings& notes);

}  // namespace taut::app::verbs
