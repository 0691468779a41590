// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/made/shop.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <sstream>

#include "app/seams/resources.h"
#include "core/inputs/toml_edit.h"
#include "core/units/format.h"

namespace taut::app::made {

namespace {

constexpr std::array<MadeJob, 16> kJobs{{
    {"north", "J-2101", "J-2101", "Quince jelly, front", "PL-31-4", "42000", "paper-label-80", "R0041"},
    {"north", "J-2111", "J-2101", "Quince jelly, back", "PL-31-5", "42000", "paper-label-80", "R0047"},
    {"north", "J-2112", "J-2101", "Damson cheese, round", "PL-40-1", "36000", "paper-label-80", "R0041"},
    {"north", "J-2113", "J-2101", "Heather honey, 340 g", "HB 340", "30000", "paper-label-80", "R0041"},
    {"north", "J-2114", "J-2101", "M\u00fcsli, roasted oats", "OAT-7 R2", "39000", "paper-label-80", "R0047"},
    {"north", "J-2102", "J-2102", "Parcel tag, grey frame", "ROUTE-7", "30000", "thermal-75", "R0050"},
    {"north", "J-2121", "J-2102", "Parcel tag, red frame", "ROUTE-9", "28000", "thermal-75", "R0050"},
    {"north", "J-2122", "J-2102", "Shelf tag, blank", "SHELF 62", "26000", "thermal-75", "R0050"},
    {"north", "J-2123", "J-2102", "Cold store tag", "FROST-2", "24000", "thermal-75", "R0050"},
    {"south", "J-2103", "J-2103", "Cold brew, wrap", "CB 12 oz", "30000", "bopp-50", "R0048"},
    {"south", "J-2131", "J-2103", "Cold brew, oat, wrap", "CB 12 OAT", "28000", "bopp-50", "R0048"},
    {"south", "J-2132", "J-2103", "Ginger tonic, wrap", "GT 8 oz", "26000", "bopp-50", "R0048"},
    {"south", "J-2133", "J-2103", "Caf\u00e9 glac\u00e9, wrap", "CG 10", "24000", "bopp-50", "R0048"},
    {"south", "J-2134", "J-2103", "Apple spritz, wrap", "AS 12 oz", "30000", "bopp-50", "R0048"},
    {"south", "J-2135", "J-2103", "Lens cloth, band", "OPT/44-a", "22000", "bopp-50", "R0048"},
    {"south", "J-2136", "J-2103", "Tonic, dry, wrap", "DT 8 oz", "25000", "bopp-50", "R0048"},
}};

constexpr std::array<MadePerson, 6> kOperators{{{"p-2", "Inka Thorsby"},
                                                {"p-3", "Jorun Adeleke-Vane"},
                                                {"p-6", "Tove Marchbank"},
                                                {"p-7", "Benno Larkhill"},
                                                {"p-8", "Suri Applegarth"},
                                                {"p-9", "Davit Mornay"}}};

constexpr std::string_view kBrief =
    R"(# Six steps of a start, for histories of very many runs.
format = 1

[procedure]
id = "short_start"
title = "Short start"
edition = 1
revised = "2026-11-27"
language = "en"
purpose = "Look round, set the tension, see it run"

[[stage]]
id = "safety"
title = "Safety"
  [[stage.place]]
  id = "round"
  title = "Round the press"
  at = "press"
  style = "read_do"
    [[stage.place.step]]
    id = "look"
    in = ["full", "next_roll", "re_web", "restart"]
    kind = "confirm"
    vital = true
    waivable = false
    gives = ["guards_closed", "people_clear", "stops_released"]
    say = "Walk once round: covers closed, no emergency stop latched, everybody seen and out of reach"
    why = "A press that has run for hours looks familiar."
    [[stage.place.step]]
    id = "done"
    in = ["full", "next_roll", "re_web", "restart"]
    kind = "call"
    say = "The walk round is done and said"

[[stage]]
id = "tension"
title = "Tension"
  [[stage.place]]
  id = "set"
  title = "Set and run"
  at = "panel"
  style = "read_do"
    [[stage.place.step]]
    id = "unwind"
    in = ["full", "next_roll", "re_web", "restart"]
    kind = "reading"
    vital = true
    target = "tension.unwind.setting"
    say = "Bring the unwind up from below and read its setting back"
    why = "The right tension is the least that still controls the web."
    tries = ["Go well below and come up to it again", "Is the instrument at rest on zero?"]
    [[stage.place.step]]
    id = "run"
    in = ["full", "next_roll", "re_web", "restart"]
    kind = "motion"
    vital = true
    waivable = false
    late = "The web moves when its tensions are set."
    needs = ["guards_closed", "stops_released", "people_clear"]
    say = "Call out, look along the press, then run at idle"
    why = "This screen moves nothing and stops nothing."
    [[stage.place.step]]
    id = "rest"
    in = ["full", "next_roll", "re_web", "restart"]
    kind = "reading"
    target = "guide.web.rest"
    say = "How far from the middle of its stroke does the guide rest?"
    why = "A guide near its end has nothing left for the next error."
    tries = ["Is the roll in the middle of its shaft?", "Is a sensor dirty or loose?"]
    [[stage.place.step]]
    id = "done"
    in = ["full", "next_roll", "re_web", "restart"]
    kind = "call"
    say = "It runs, and was seen to run"
)";

/// What a roll's file says that no step of the short procedure rests on: in histories of very many runs every word
/// counts.
constexpr std::array<std::string_view, 8> kNotAsked{"substrate", "core_wall", "core_mass",  "length",
                                                    "winding",   "splices",   "off_centre", "condition"};

/// Demo keys: whoever knows the seed has them.
SigningKey keyOf(std::uint64_t seed, const std::string& person)
{
    return SigningKey::fromSeed(sha256("tautweb demo history " + std::to_string(seed) + " " + person));
}

Result<std::shared_ptr<const people::Signer>> enrol(logbook::Writer& writer, const DemoPerson& person,
                                                    std::uint64_t seed, const people::Signer* supervisor)
{
    const SigningKey key = keyOf(seed, person.id.value);
    people::Enrolled enrolled{
        {person.id, person.name, person.role, true, key.publicKey()},
        {hashPin(person.chosen.pin, PinCost::Least), key.sealUnder(person.chosen.passphrase, PinCost::Least), {}}};
    auto signer = people::unlock(&enrolled, person.chosen.passphrase);
    if (!signer) return signer.error();
    const auto added =
        supervisor != nullptr ? writer.addPerson(enrolled, *supervisor) : writer.addFirst(enrolled, *signer);
    if (!added) return added.error();
    return std::make_shared<const people::Signer>(*std::move(signer));
}

Result<std::string> changed(std::string text, const std::vector<std::pair<inputs::TomlPath, std::string>>& changes)
{
    for (const auto& [path, written] : changes) {
        auto next = inputs::setToml(text, path, written);
        if (!next) return next.error();
        text = *std::move(next);
    }
    return text;
}

std::string inQuotes(std::string_view text) { return '"' + std::string(text) + '"'; }

/// What a supervisor changes in a profile under way: what was measured again, and a display of the unwind's tension
/// that was fitted, by which its brake can be learned anew.
Result<std::string> secondEdition(const std::string& press, const std::string& text)
{
    if (press == "north") {
        const auto cell = [](const char* key) {
            return inputs::TomlPath{std::string("zone"), std::size_t{0}, std::string("load_cell"), std::string(key)};
        };
        return changed(
            text,
            {{{std::string("speeds"), std::string("stop_time"), std::string("value")}, inQuotes("2.9 s")},
             {{std::string("web"), std::string("roller"), std::size_t{5}, std::string("kind")}, inQuotes("load_cell")},
             {cell("roller"), inQuotes("turn up")},
             {cell("range"), inQuotes("200 N")},
             {cell("set_in"), inQuotes("N")}});
    }
    return changed(text, {{{std::string("unwind"), std::string("lift"), std::string("efficiency")}, "0.78"}});
}

std::string withDigits(double value, int places)
{
    std::string text = roundedDecimal(value, 0, Rounding::Nearest);
    const auto width = static_cast<std::size_t>(places);
    return text.size() < width ? std::string(width - text.size(), '0') + text : text;
}

}  // namespace

std::span<const MadeJob> madeJobs() { return kJobs; }

std::vector<Index> jobsOf(std::string_view press)
{
    std::vector<Index> all;
    for (Index i = 0; i < kJobs.size(); ++i)
        if (kJobs[i].press == press) all.push_back(i);
    return all;
}

std::span<const MadePerson> madeOperators() { return kOperators; }

Index operatorAt(int press, Day day, int shift)
{
    constexpr int kWeek = 7;
    const int crew = (shift + day / kWeek) % kShifts;
    const int place = crew * 2 + press;
    return static_cast<Index>(place);
}

std::string_view briefProcedure() { return kBrief; }

Result<Shop> Shop::fill(logbook::Writer& writer, const std::filesystem::path& resources, const Wish& wish)
{
    auto everybody = demoPeople(resources);
    if (!everybody) return everybody.error();
    for (const MadePerson& one : kOperators)
        if (std::none_of(everybody->begin(), everybody->end(), [&](const auto& p) { return p.id.value == one.id; }))
            everybody->push_back(
                {{std::string(one.id)},
                 std::string(one.name),
                 people::Role::Operator,
                 {"58" + std::string(one.id.substr(2)) + "3", "made key of " + std::string(one.name)}});
    Shop shop;
    shop.m_seed = wish.seed;
    shop.m_operators.resize(kOperators.size());
    for (const DemoPerson& person : *everybody) {
        const people::Signer* first = shop.m_supervisors.empty() ? nullptr : shop.m_supervisors.front().get();
        auto signer = enrol(writer, person, wish.seed, first);
        if (!signer) return signer.error();
        if (person.role == people::Role::Supervisor) shop.m_supervisors.push_back(*signer);
        for (Index i = 0; i < kOperators.size(); ++i)
            if (kOperators[i].id == person.id.value) shop.m_operators[i] = *signer;
    }
    if (const auto demo = fillWithDemoShop(writer, resources); !demo) return demo.error();

    const people::Actor& keeper = shop.m_supervisors.front()->actor();
    const auto jobs = writer.definitions("job");
    if (!jobs) return jobs.error();
    for (const MadeJob& made : kJobs) {
        const auto master =
            std::find_if(jobs->begin(), jobs->end(), [&](const auto& d) { return d.source.id == made.of; });
        if (master == jobs->end())
            return refuse("input.unknown", std::string(made.of), "No job of this id is among the resources.");
        std::string text = master->source.text;
        if (made.id != made.of) {
            const auto key = [](const char* name) { return inputs::TomlPath{std::string("job"), std::string(name)}; };
            auto own = changed(std::move(text), {{key("id"), inQuotes(made.id)},
                                                 {key("title"), inQuotes(made.title)},
                                                 {key("customer_reference"), inQuotes(made.reference)},
                                                 {key("quantity"), std::string(made.quantity)}});
            if (!own) return own.error();
            text = *std::move(own);
        }
        auto kept = writer.keepDefinition("job", made.id, text, keeper);
        if (!kept) return kept.error();
        shop.m_jobs.emplace(made.id, *std::move(kept));
    }
    const auto presses = writer.definitions("press"), substrates = writer.definitions("substrate");
    if (!presses) return presses.error();
    if (!substrates) return substrates.error();
    for (const logbook::Definition& one : *presses) {
        auto second = secondEdition(one.source.id, one.source.text);
        if (!second) return second.error();
        shop.m_presses[one.source.id] = {one.source, run::sourceOf(one.source.id, 2, *std::move(second))};
    }
    for (const logbook::Definition& one : *substrates) shop.m_substrates.emplace(one.source.id, one.source);
    for (const InputFile& file : shopFiles(resources, "roll")) shop.m_rolls.emplace(file.id, file.text);
    if (wish.brief) {
        auto kept = writer.keepDefinition("procedure", kBriefId, kBrief, keeper);
        if (!kept) return kept.error();
        shop.m_procedure = *std::move(kept);
    } else {
        const auto procedures = writer.definitions("procedure");
        if (!procedures) return procedures.error();
        for (const logbook::Definition& one : *procedures)
            if (one.source.id == "cold_start") shop.m_procedure = one.source;
    }
    shop.m_workplace = writer.workplace();
    return shop;
}

const people::Signer* Shop::named(std::string_view name) const
{
    for (const auto* list : {&m_operators, &m_supervisors})
        for (const auto& one : *list)
            if (one->actor().name() == name) return one.get();
    return nullptr;
}

std::string Shop::rollText(const MadeJob& job, const MadeRoll& made) const
{
    const std::string& master = m_rolls.find(job.roll)->second;
    Findings notes;
    const auto read = inputs::readRoll(master, std::string(job.roll), notes);
    const inputs::Roll& roll = *read;
    // In the unit in which the master says it, as a person would have measured: whole millimetres, twentieths of an
    // inch.
    const Quantity& across = roll.outerDiameter->quantity();
    const bool inch = across.unit() == "in";
    const double unit = inch ? 0.0254 : 0.001, step = inch ? 0.05 : 1;
    const double diameter = std::round(across.si() * made.larger / unit / step) * step * unit;
    const double core = roll.core->si() + 2 * (roll.coreWall ? roll.coreWall->si() : 0);
    const double webs = (diameter * diameter - core * core) / (across.si() * across.si() - core * core);
    std::ostringstream text;
    std::istringstream lines(master);
    for (std::string line; std::getline(lines, line);) {
        const std::string key = line.substr(0, line.find(" ="));
        const auto scaled = [&](const Quantity& q, int decimals) {
            const Unit* of = findUnit(q.kind(), q.unit());
            return key + " = \"" + roundedDecimal(fromSi(q.si() * webs, *of), decimals, Rounding::Nearest) + ' ' +
                   std::string(of->symbol) + '"';
        };
        if (line.empty() || line.front() == '#') continue;
        if (isBrief() && std::find(kNotAsked.begin(), kNotAsked.end(), key) != kNotAsked.end()) continue;
        if (key == "id") line = "id = " + inQuotes(made.id);
        if (key == "outer_diameter")
            line = "outer_diameter = \"" + roundedDecimal(diameter / unit, inch ? 2 : 0, Rounding::Nearest) +
                   (inch ? " in\"" : " mm\"");
        if (key == "length") line = scaled(roll.length->quantity(), 0);
        if (key == "mass") line = scaled(roll.mass->quantity(), 1);
        // "01", 14 digits; "8001", width 4, length 5, core 3, winding 1, splices 1; lot; serial.
        if (key == "tag") {
            constexpr std::size_t kLength = 3 + 16 + 4 + 4, kLot = kLength + 10;
            std::string tag = roll.tag.substr(0, kLot);
            tag.replace(kLength, 5, withDigits(std::stod(tag.substr(kLength, 5)) * webs, 5));
            // Of a short run's only the lot and the serial, behind what names the symbology.
            constexpr std::size_t kSymbology = 3;
            const std::string before = isBrief() ? tag.substr(0, kSymbology) : tag + "\\u001D";
            line = "tag = " + inQuotes(before + "10" + made.lot + "\\u001D21" + made.id);
        }
        text << line << '\n';
    }
    return text.str();
}

run::Sources Shop::sources(const Tale& tale) const
{
    const MadeJob& job = kJobs[tale.job];
    return {press(tale.press, tale.edition),
            m_jobs.find(job.id)->second,
            m_substrates.find(job.substrate)->second,
            run::sourceOf(tale.roll.id, 0, rollText(job, tale.roll)),
            m_procedure,
            {}};
}

}  // namespace taut::app::made
