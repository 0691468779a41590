// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <algorithm>

#include "core/inputs/inputs.h"
#include "core/targets/book.h"
#include "core/targets/target.h"
#include "tests/core/targets/demo_inputs.h"
#include "tests/core/targets/stated.h"

// What a splice holds, who says so, and what helps where it is too little.
using namespace taut;
using namespace demo::stated;
using targets::Targets;

namespace {

using Changing = void (*)(inputs::SpliceTape&);
Targets taped(const char* press, const char* job, const char* roll, Changing change)
{
    inputs::Inputs in = demo::inputs(press, job, roll);
    inputs::Substrate s = *in.substrate;
    change(*s.spliceTape);
    in.substrate = std::make_shared<const inputs::Substrate>(std::move(s));
    return targets::computeTargets(in);
}
inputs::Maybe<Kind::ForcePerWidth> newtons(double perMillimetre)
{
    return Entry<Kind::ForcePerWidth>(Quantity(perMillimetre * 1000, Kind::ForcePerWidth, "N/mm"));
}

}  // namespace

TEST_CASE("a splice is judged at the top of the tension's window")
{
    // Tape of 0.40 N/mm on both faces against the job's 0.22 N/mm, which is 3.64 times; in the middle it would be 4.44.
    const Targets t = taped("north", "quince-jelly", "R0041", [](inputs::SpliceTape& s) { s.strength = newtons(0.4); });
    CHECK(si(t, "splice.margin") == Approx(0.8 / 0.22));
    CHECK(finding(t, "splice.weak").severity == Severity::Warn);
    // In a stop the taper and the roll's inertia count on top of that: harder than running, never less.
    CHECK(si(t, "splice.transient_margin") <= si(t, "splice.margin"));
}

TEST_CASE("a splice that holds less than the tension stops, once, and an overlap is not offered where the tape breaks")
{
    const Targets t = taped("south", "cold-brew", "R0048", [](inputs::SpliceTape& s) { s.strength = newtons(0.05); });
    CHECK(std::count_if(t.findings.begin(), t.findings.end(),
                        [](const Finding& f) { return f.code.rfind("splice.", 0) == 0; }) == 1);
    const Finding& why = finding(t, "splice.parts");
    CHECK(why.severity == Severity::Stop);
    CHECK_FALSE(contains(why.remedy, "or a longer overlap"));
    CHECK(contains(why.remedy, "stronger tape"));
    for (const char* id : {"splice.margin", "splice.transient_margin"}) {
        CHECK_FALSE(cannot(t, id).never());
    }
    // Where the bond gives way an overlap does help.
    const Targets bond = taped("south", "cold-brew", "R0048", [](inputs::SpliceTape& s) { s.shear = newtons(0.2); });
    CHECK(contains(finding(bond, "splice.weak").remedy, "longer overlap"));
}

TEST_CASE("a laminate's splice on one face is refused aloud, and asked about where nobody said it")
{
    const Targets one = taped("north", "quince-jelly", "R0041", [](inputs::SpliceTape& s) { s.bothFaces = false; });
    CHECK(finding(one, "splice.one_face").severity == Severity::Stop);
    const Targets open = taped("north", "quince-jelly", "R0041", [](inputs::SpliceTape& s) { s.bothFaces.reset(); });
    CHECK_FALSE(noted(open, "splice.one_face"));
    const auto* needs = std::get_if<targets::Needs>(&open.find("splice.margin")->state);
    REQUIRE(needs != nullptr);
    CHECK(needs->keys == std::vector<std::string>{"substrate.splice_tape.both_faces"});
    // A single ply hangs together by itself: one tape is counted on.
    const Targets film = taped("south", "cold-brew", "R0048", [](inputs::SpliceTape& s) { s.bothFaces.reset(); });
    CHECK(si(film, "splice.margin") ==
          si(demo::withPress("south", "cold-brew", "R0048", [](inputs::Press&) {}), "splice.margin"));
}

TEST_CASE("a tension that cannot be for another reason than a missing lane is not left out of the splice's margin")
{
    const inputs::Inputs in = demo::inputs("north", "quince-jelly", "R0041");
    // The other zones as they are; the unwind's pull is unknowable, and why is only a note.
    const Targets all = targets::computeTargets(in);
    const Finding note{"tension.unwind.some_note", Severity::Note, "press.zone.unwind", "It never comes to it.", ""};
    const auto margin = [&](bool unknowable) {
        targets::Book book(in, std::nullopt);
        for (const inputs::Zone& zone : in.press->zones) {
            const std::string id = "tension." + zone.id + ".per_width";
            const targets::Target* own = all.find(id);
            if (own == nullptr || own->quantity() == nullptr) continue;
            const bool here = unknowable && zone.id == "unwind";
            book.value(id, own->name, "stated",
                       here ? targets::impossible(note) : targets::known(*own->quantity(), "test"), "test");
        }
        targets::stateSplice(book);
        return std::move(book).finish();
    };
    CHECK(si(margin(false), "splice.margin") > 1);
    CHECK(cannot(margin(true), "splice.margin").why == note);
}
