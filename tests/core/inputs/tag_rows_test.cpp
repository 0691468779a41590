// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <map>

#include "core/inputs/tag_rows.h"
#include "core/inputs/tag_scan.h"
#include "tests/core/inputs/demo.h"
#include "tests/core/inputs/tag_text.h"

using namespace taut;
using namespace taut::inputs;

namespace {

const std::string kTag = scanned("]C10199521000001018800103300250007603<GS>10LOT7A<GS>21R0042");
constexpr TagDate kToday{2026, 11, 27, false};

Inputs northWith(Roll roll)
{
    return {std::make_shared<const Press>(demoPress("north")), std::make_shared<const Job>(demoJob("quince-jelly")),
            std::make_shared<const Substrate>(demoSubstrate("paper-label-80")),
            std::make_shared<const Roll>(std::move(roll))};
}

TagRows rowsOf(const std::string& text, Roll roll = {})
{
    const Result<RollTag> tag = readRollTag(text, {kToday.year, true});
    REQUIRE(tag);
    return tagRows(northWith(std::move(roll)), *tag, text, kToday);
}

const TagRow& rowOf(const TagRows& all, const std::string& id, int part = 0)
{
    for (const TagRow& row : all.rows)
        if (row.field.id == id && row.field.part == part) return row;
    throw std::runtime_error(id);
}

std::string codesOf(const TagRow& row)
{
    std::string out;
    for (const Finding& finding : row.findings) {
        CHECK_FALSE(finding.remedy.empty());
        out += (out.empty() ? "" : " ") + finding.code;
    }
    return out;
}

std::string against(const TagRow& row)
{
    std::string out;
    for (const Text& one : row.against) out += (out.empty() ? "" : "; ") + plain(one, UnitSystem::Metric);
    return out;
}

}  // namespace

// The strings are composed by hand from GS1 General Specifications (AI 8001, 10, 21, 310n) and MH10.8.2 (1T, S, Q, 1P).
TEST_CASE("each line of a tag says what it fills and what it is compared with")
{
    const TagRows all = rowsOf(kTag);
    REQUIRE(all.rows.size() == 8);
    CHECK(all.fills());
    CHECK(rowOf(all, "01").use == TagUse::Shown);
    CHECK(against(rowOf(all, "01")) == "the material of this job, paper-label-80");
    CHECK(rowOf(all, "8001").use == TagUse::Fills);
    CHECK(plain(rowOf(all, "8001").entry, UnitSystem::Metric) == "width");
    CHECK(against(rowOf(all, "8001")) == "the job's width, 330 mm; what the press takes, 100 mm to 340 mm");
    CHECK(against(rowOf(all, "8001", 1)) == "the outer diameter, once it is entered");
    CHECK(against(rowOf(all, "8001", 2)) == "what the unwind holds, 75 mm to 78 mm");
    CHECK(against(rowOf(all, "8001", 3)) == "how this press has its rolls, face out");
    CHECK(rowOf(all, "8001", 4).use == TagUse::Fills);
    CHECK(rowOf(all, "10").use == TagUse::Shown);
    CHECK(rowOf(all, "21").use == TagUse::Fills);
    // The tag's core of 76 mm is the name of one.
    CHECK(codesOf(rowOf(all, "8001", 2)) == "input.core_nominal");
    CHECK(codesOf(rowOf(all, "8001")).empty());
}

TEST_CASE("what a tag says is taken over where nobody has said it, and nowhere else")
{
    Roll typed;
    typed.width = Entry<Kind::Length>(Quantity(0.320, Kind::Length, "mm"));
    typed.splices = 3;
    const TagRows all = rowsOf(kTag, typed);
    CHECK(rowOf(all, "8001").use == TagUse::Differs);
    CHECK(codesOf(rowOf(all, "8001")).find("input.tag_differs") != std::string::npos);
    CHECK(rowOf(all, "8001", 1).use == TagUse::Fills);
    CHECK(rowOf(all, "8001", 4).use == TagUse::Agrees);
    const Roll taken = takenOver(typed, *readRollTag(kTag), kTag);
    CHECK(taken.id == "R0042");
    CHECK(taken.tag == kTag);
    CHECK(taken.width->si() == Approx(0.320));
    CHECK(taken.length->si() == Approx(2500));
    CHECK(taken.core->si() == Approx(0.076));
    CHECK(taken.winding == Winding::FaceOut);
    // Everything that was taken over is entered then.
    const TagRows again = rowsOf(kTag, taken);
    CHECK_FALSE(again.fills());
    CHECK(rowOf(again, "21").use == TagUse::Agrees);
    CHECK(rowOf(again, "8001").use == TagUse::Differs);
}

TEST_CASE("the tag of another roll changes nothing, and its number says so")
{
    Roll typed;
    typed.id = "R0043";
    const TagRows all = rowsOf(kTag, typed);
    CHECK_FALSE(all.fills());
    CHECK(rowOf(all, "21").use == TagUse::Differs);
    CHECK(codesOf(rowOf(all, "21")) == "input.tag_of_another_roll");
    CHECK(takenOver(typed, *readRollTag(kTag), kTag) == typed);
}

TEST_CASE("what does not fit job, press, core or material stands beside its line")
{
    const std::string narrow = scanned("]C10199521000001018800103000250004012<GS>21R1");
    const TagRows all = rowsOf(narrow);
    CHECK(codesOf(rowOf(all, "8001")) == "input.width_differs_from_job");
    CHECK(codesOf(rowOf(all, "8001", 2)).find("input.") == 0);  // a core of 40 mm
    CHECK(rowOf(all, "8001", 2).findings.front().severity == Severity::Stop);
    CHECK(codesOf(rowOf(all, "8001", 3)) == "input.winding_differs");
    // 5000 m of 80 g/m2 and more do not weigh 20 kg.
    const TagRows light = rowsOf("01995210000010183110005000312300033031010002008001033005000076"
                                 "03");
    CHECK(codesOf(rowOf(light, "3101")) == "input.tag_of_other_material");
    Roll thin;
    thin.outerDiameter = Entry<Kind::Length>(Quantity(0.300, Kind::Length, "mm"));
    thin.core = Entry<Kind::Length>(Quantity(0.0762, Kind::Length, "mm"));
    const TagRows long_ = rowsOf(kTag, thin);
    CHECK(codesOf(rowOf(long_, "8001", 1)).find("input.tag_from_full_roll") != std::string::npos);
    CHECK(against(rowOf(long_, "8001", 1)) == "what the outer diameter of 300 mm gives");
}

// GS1 General Specifications: AI 15 best before, 17 expiration; day 00 is the whole month.
TEST_CASE("a day that is past is told where it stands, today is not past")
{
    const TagRows all = rowsOf("010952100000101515261126172611271126112"
                               "6");
    CHECK(codesOf(rowOf(all, "15")) == "input.tag_expired");
    CHECK(codesOf(rowOf(all, "17")).empty());
    CHECK(codesOf(rowOf(all, "11")).empty());
    CHECK(codesOf(rowOf(rowsOf("010952100000101517261100"), "17")).empty());
    CHECK(codesOf(rowOf(rowsOf("010952100000101517261000"), "17")) == "input.tag_expired");
    CHECK(codesOf(rowOf(rowsOf(scanned("[)><RS>06<GS>14D20250101<RS><EOT>")), "14D")) == "input.tag_expired");
    CHECK(dayOf({1795737600000 - 1800000, 60}) == TagDate{2026, 11, 27, false});  // 23:30 UTC, half past midnight here
}

TEST_CASE("what a scanner sends in place of GS is taken for it only where nothing else can be meant")
{
    const std::string gs = kTag.substr(kTag.find('\x1d'), 1);
    const auto with = [&](const std::string& sign) {
        std::string text = kTag;
        for (std::size_t at = text.find(gs); at != std::string::npos; at = text.find(gs)) text.replace(at, 1, sign);
        return text;
    };
    for (const char* sign : {"|", "~", "^", "<GS>", "{GS}", "[GS]", "\xe2\x90\x9d"}) {
        CAPTURE(sign);
        CHECK(withSeparators(with(sign)) == kTag);
    }
    CHECK(withSeparators(kTag) == kTag);
    // A sign that GS1 does not know stays an error of that sign.
    CHECK(withSeparators("]C1010952100000101510LOT^7") == "]C1010952100000101510LOT^7");
    CHECK(withSeparators("1TLOT|7", {{}, true}) == "1TLOT|7");
    CHECK(withSeparators("R|0042") == "R|0042");
    CHECK(withSeparators("[)>{RS}06{GS}1TLOT7A{RS}{EOT}") == scanned("[)><RS>06<GS>1TLOT7A<RS><EOT>"));
}

TEST_CASE("two bar codes of one label complete each other, one that contradicts takes the other's place")
{
    const TagOptions options{2026, true};
    // 8001 says nothing without its item, whichever is scanned first.
    CHECK_FALSE(readScanned("", "]C1800103300250007603", options));
    for (const bool itemFirst : {true, false}) {
        const std::string item = "]C10199521000001018", size = "]C1800103300250007603";
        const auto both = readScanned(itemFirst ? item : size, itemFirst ? size : item, options);
        REQUIRE(both);
        CHECK(both->second == SecondTag::Completes);
        CHECK(both->added == (itemFirst ? 5 : 1));
        CHECK(both->tag.item == "99521000001018");
        CHECK(both->tag.length->si() == 2500);
        // What is kept reads the same without anybody who scanned it.
        CHECK(readRollTag(both->text)->fields.size() == 6);
    }
    const auto same = readScanned(kTag, "]C10199521000001018", options);
    REQUIRE(same);
    CHECK(same->second == SecondTag::Same);
    CHECK(same->text == kTag);
    const auto other = readScanned(kTag, scanned("]C1019952100000101810LOT7A<GS>21R0043"), options);
    REQUIRE(other);
    CHECK(other->second == SecondTag::Replaces);
    CHECK(other->tag.serial == "R0043");
    CHECK_FALSE(other->tag.width);
    // What was read before stands when the next cannot be read; the place is that in what was scanned.
    const auto bad = readScanned(kTag, "]C10109521000", options);
    REQUIRE_FALSE(bad);
    CHECK(tagPlace(bad.error()) == 14);
}

TEST_CASE("bar codes with one data identifier each come together in an envelope")
{
    const TagOptions options{2026, true};
    const auto first = readScanned("", "1TLOT7A", options);
    REQUIRE(first);
    CHECK(first->text == scanned("[)><RS>06<GS>1TLOT7A<RS><EOT>"));
    const auto second = readScanned(first->text, "SR0042", options);
    REQUIRE(second);
    CHECK(second->text == scanned("[)><RS>06<GS>1TLOT7A<GS>SR0042<RS><EOT>"));
    const auto third = readScanned(second->text, "]C10199521000001018", options);
    REQUIRE(third);
    CHECK(third->text == scanned("[)><RS>05<GS>0199521000001018<RS>06<GS>1TLOT7A<GS>SR0042<RS><EOT>"));
    const auto kept = readRollTag(third->text);
    REQUIRE(kept);
    CHECK(kept->lot == "LOT7A");
    CHECK(kept->serial == "R0042");
    // Whole messages are kept as they were scanned.
    const std::string message = scanned("[)><RS>06<GS>Q2500<GS>1TLOT7A<GS>1PSUB-60<GS>SR0042<RS><EOT>");
    CHECK(readScanned("", message, options)->text == message);
}
