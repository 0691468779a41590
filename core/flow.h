// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The story of Tautweb on one page. Each line is a room; what is left of an arrow is a value, never a pointer into
// something alive. A newcomer reads these headers in this order and has read the program.
//
//  press ─┐
//  job ───┼─> targets ─> plan ─> verdict ─> run ─────> document ─> report
//  stock ─┤   value,     stages, each       events     sealed,     screen,
//  roll ──┘   window,    places, answer     of who,    chained     paper, PDF
//             because    steps   judged     when

// clang-format off
#include "core/base/result.h"          // expected failure is a Finding: code, subject, text, remedy
#include "core/units/quantity.h"       // Measure while compiling, Quantity while running, Entry where the kind is fixed
#include "core/physics/formula.h"      // published relations under stable ids
#include "core/physics/path.h"         // the one geometry of the web
#include "core/people/person.h"        // who one is and what a role may do; an Actor can only be had by signing in
#include "core/inputs/inputs.h"        // press, job, substrate, roll: facts from TOML
#include "core/targets/target.h"       // computeTargets: what each setting should be here, and why
#include "core/procedure/procedure.h"  // stages, places, steps as a file says them
#include "core/procedure/plan.h"       // planFor: the same for this press
#include "core/verdict/verdict.h"      // judge: inside, near, outside
#include "core/run/command.h"          // everything that can be done to a run: one list
#include "core/run/decide.h"           // the gates: a command becomes an event, or a sentence says why not
#include "core/run/run.h"              // a run is the fold of its events
#include "core/run/pace.h"             // what the times of its answers tell
#include "core/seal/document.h"        // a run as a document
#include "core/seal/chain.h"           // documents in one chain, anchored on paper
#include "core/report/report.h"        // all that is ever shown of a run, as data
#include "core/records/records.h"      // what any store can be asked
#include "core/logbook/open_run.h"     // the one door: decide, write and sync, fold
