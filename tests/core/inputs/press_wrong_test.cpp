// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <algorithm>
#include <cctype>

#include "tests/core/inputs/demo.h"
#include "tests/core/inputs/dump.h"
#include "tests/core/inputs/toml_text.h"

using namespace taut;
using namespace taut::inputs;

namespace {

struct Value {
    std::string key, text;
    int line, column;
};

/// Every quantity of a press file, with its place: the texts that begin with a digit or a sign.
std::vector<Value> quantitiesOf(const std::string& file)
{
    const Result<Toml> root = readToml(file, "");
    std::vector<Value> out;
    const auto add = [&](const std::string& key, const Toml& v) {
        const std::string* text = v.text();
        if (text == nullptr || text->empty() || key.find("source") != std::string::npos) return;
        if (std::isdigit(static_cast<unsigned char>((*text)[0])) || (*text)[0] == '-')
            out.push_back({key, *text, v.line, v.column});
    };
    eachKey(*root, "", [&](const std::string& key, const Toml& v) {
        add(key, v);
        if (v.array() != nullptr)
            for (std::size_t i = 0; i < v.array()->size(); ++i)
                add(key + '[' + std::to_string(i) + ']', (*v.array())[i]);
    });
    return out;
}

/// Reads a press whose one value is replaced; gives the finding about it, after checking that it stands at its place,
/// says what to do, and that only this key is lost.
std::string refusal(const std::string& name, const Value& v, const std::string& instead)
{
    const std::string file = name + ".toml";
    const std::string text = demoText("resources/presses/" + file);
    Findings notes;
    const Result<Press> press = readPress(withValueAt(text, v.line, v.column, instead), file, notes);
    REQUIRE(press);
    const std::string place = file + ':' + std::to_string(v.line) + ':' + std::to_string(v.column) + ' ' + v.key;
    for (const Finding& f : notes) UNSCOPED_INFO(sentence(f));
    REQUIRE(notes.size() == 1);
    CHECK(notes[0].subject == place);
    CHECK(notes[0].severity == Severity::Stop);
    CHECK_FALSE(notes[0].text.empty());
    CHECK_FALSE(notes[0].remedy.empty());
    CHECK(PressDump::of(*press).count(v.key) == 0);
    return notes[0].code;
}

Findings notesOf(const std::string& toml)
{
    Findings notes;
    const Result<Press> press = readPress(toml, "p.toml", notes);
    if (!press) notes.push_back(press.error());
    return notes;
}

const std::string kHead = "format = 1\n[press]\nid = \"p\"\n";

}  // namespace

TEST_CASE("a quantity of the wrong kind is refused with its place and key, and only it is lost")
{
    for (const char* name : {"north", "south"}) {
        const auto all = quantitiesOf(demoText(std::string("resources/presses/") + name + ".toml"));
        REQUIRE(all.size() > 80);
        for (const Value& v : all) {
            if (v.key.rfind("limits", 0) == 0) continue;  // any kind may stand there, but both ends must agree
            CAPTURE(name, v.key, v.text);
            CHECK(refusal(name, v, "\"3 m2/kg\"") == "quantity.wrong_kind");
        }
    }
}

TEST_CASE("an unknown unit, a missing unit, a group separator and a word are refused in place")
{
    for (const char* name : {"north", "south"}) {
        const auto all = quantitiesOf(demoText(std::string("resources/presses/") + name + ".toml"));
        for (std::size_t i = 0; i < all.size(); i += 7) {
            const Value& v = all[i];
            CAPTURE(name, v.key, v.text);
            CHECK(refusal(name, v, "\"12 florps\"") == "quantity.unknown_unit");
            CHECK(refusal(name, v, "\"1,234.5 " + v.text.substr(v.text.rfind(' ') + 1) + '"') ==
                  "quantity.group_separator");
            CHECK(refusal(name, v, "\"soon\"") == "quantity.not_a_number");
            CHECK(refusal(name, v, "[1, 2]") == "input.wrong_type");
            CHECK(refusal(name, v, "true") == "input.wrong_type");
            if (v.text.back() != '%') CHECK(refusal(name, v, "12") == "quantity.no_unit");
        }
    }
}

TEST_CASE("sizes that cannot be are refused: far too large, and below nought")
{
    for (const char* name : {"north", "south"}) {
        for (const Value& v : quantitiesOf(demoText(std::string("resources/presses/") + name + ".toml"))) {
            if (v.key.rfind("limits", 0) == 0 || v.text[0] == '0') continue;
            CAPTURE(name, v.key, v.text);
            const std::string unit = v.text.substr(v.text.find_first_not_of("-0123456789./ "));
            CHECK(refusal(name, v, "\"99000000 " + unit + '"') == "input.absurd");
            const bool signedKey = v.key.find(".at[") != std::string::npos || unit == "%";
            if (!signedKey) CHECK(refusal(name, v, "\"-" + v.text + '"') == "input.negative");
        }
    }
}

TEST_CASE("bounds of belief: a slip of the unit is caught, a press of another size is not")
{
    struct Row {
        std::string toml, code;
    };
    const std::vector<Row> rows{
        {"web_width = { most = \"4.9 m\" }", ""},
        {"web_width = { most = \"340 m\" }", "input.absurd"},
        {"web_width = { least = \"340 mm\", most = \"100 mm\" }", "input.order"},
        {"web_width = { least = \"0 mm\" }", "input.absurd"},
        {"centreline = \"0 mm\"", ""},
        {"centreline = \"-5 in\"", "input.negative"},
        {"centreline = \"20 psi\"", "quantity.wrong_kind"},
        {"[unwind]\nlargest_diameter = \"2.9 m\"", ""},
        {"[unwind]\nlargest_diameter = \"1000 cm\"", "input.absurd"},
        {"[unwind]\nlargest_mass = \"9 t\"", "quantity.unknown_unit"},
        {"[unwind]\nlargest_mass = \"12000 kg\"", "input.absurd"},
        {"[unwind.lift]\npressure = { most = \"20 bar\" }", "input.absurd"},  // psi read as bar
        {"[unwind.lift]\npressure = { most = \"20 psi\" }", ""},
        {"[unwind.lift]\npistons = 0", "input.absurd"},
        {"[unwind.lift]\npistons = -1", "input.negative"},
        {"[unwind.lift]\npistons = 1.5", "input.wrong_type"},
        {"[unwind.lift]\nefficiency = 1.2", "input.absurd"},
        {"[unwind.lift]\nefficiency = \"85 %\"", ""},
        {"[unwind.lift]\nratio = nan", "input.absurd"},
        {"[speeds]\nlargest = { value = \"1999 m/min\" }", ""},
        {"[speeds]\nlargest = { value = \"150 m/s\" }", "input.absurd"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.toml);
        const Findings notes = notesOf(kHead + row.toml);
        CHECK((notes.empty() ? "" : notes[0].code) == row.code);
        CHECK(notes.size() <= 1);
    }
}

TEST_CASE("a check names stage, place and step, and is due within ten years")
{
    const auto check = [](const std::string& keys) { return kHead + "[[check]]\nid = \"stops\"\n" + keys; };
    CHECK(notesOf(check("every = \"30 d\"\nstep = \"power_up.tests.stop_test\"")).empty());
    CHECK(notesOf(check("every = \"720 h\"")).empty());
    for (const char* step : {"stop_test", "power_up.tests", "power_up..stop_test", ".tests.stop_test", "a.b.",
                             "a.b.c.d", "tests.stop_test/unwind", "a.b.c d"}) {
        CAPTURE(step);
        const Findings notes = notesOf(check(std::string("step = \"") + step + '"'));
        REQUIRE(notes.size() == 1);
        CHECK(notes[0].code == "input.step_path");
        CHECK(notes[0].subject == "p.toml:6:8 check[0].step");
    }
    for (const auto& [every, code] :
         {std::pair("30", "quantity.no_unit"), std::pair("5 min", "input.absurd"), std::pair("4000 d", "input.absurd"),
          std::pair("-1 d", "input.negative"), std::pair("3 months", "quantity.unknown_unit"),
          std::pair("2 m", "quantity.wrong_kind")}) {
        CAPTURE(every);
        const Findings notes = notesOf(check(std::string("every = \"") + every + '"'));
        REQUIRE(notes.size() == 1);
        CHECK(notes[0].code == code);
    }
    const Findings twice = notesOf(check("[[check]]\nid = \"stops\""));
    REQUIRE(twice.size() == 1);
    CHECK(twice[0].code == "input.duplicate_id");
}

TEST_CASE("a zone is set in what its control and its actuator make of it")
{
    struct Row {
        std::string zone, good, bad;
    };
    const std::vector<Row> rows{
        {"control = \"open_loop\"\nactuator = \"pneumatic\"", "2 bar", "20 %"},
        {"control = \"open_loop\"\nactuator = \"particle\"", "0.5 A", "2 bar"},
        {"control = \"open_loop\"\nactuator = \"particle\"", "40 %", "2 N"},
        {"control = \"open_loop\"\nactuator = \"servo\"", "40 %", "0.5 A"},
        {"control = \"dancer\"\nactuator = \"particle\"\ndancer = { load = \"pneumatic\" }", "30 psi", "30 %"},
        {"control = \"dancer\"\nactuator = \"pneumatic\"\ndancer = { load = \"weight\" }", "4 kg", "2 bar"},
        {"control = \"dancer\"\nactuator = \"servo\"\ndancer = { load = \"spring\" }", "50 %", "4 kg"},
        {"control = \"load_cell\"\nactuator = \"servo\"\nload_cell = { set_in = \"N\" }", "80 N", "40 %"},
        {"control = \"load_cell\"\nactuator = \"pneumatic\"\nload_cell = { set_in = \"%\" }", "40 %", "80 N"},
        {"control = \"draw\"", "0.5 %", "5 N"},
        {"control = \"draw\"", "-0.2 %", "2 bar"},
    };
    for (const Row& row : rows) {
        const std::string zone = kHead + "[[zone]]\nid = \"z\"\n" + row.zone + "\nsetting = { most = \"";
        CAPTURE(row.zone);
        CHECK(notesOf(zone + row.good + "\" }").empty());
        const Findings notes = notesOf(zone + row.bad + "\" }");
        REQUIRE(notes.size() == 1);
        CHECK(notes[0].code == "quantity.wrong_kind");
        CHECK(notes[0].subject.find("zone[0].setting.most") != std::string::npos);
    }
    const auto torque = [&](const std::string& actuator, const std::string& per, const std::string& zero) {
        return notesOf(kHead + "[[zone]]\nid = \"z\"\ncontrol = \"open_loop\"\nactuator = \"" + actuator +
                       "\"\ntorque_per_setting = \"" + per + "\"\nzero_setting = \"" + zero + "\"");
    };
    CHECK(torque("pneumatic", "12 N m/bar", "0.1 bar").empty());
    CHECK(torque("particle", "3 N m/A", "0.1 A").empty());
    CHECK(torque("particle", "0.3 N m/%", "3 %").empty());
    CHECK(torque("servo", "0.3 N m/%", "3 %").empty());
    REQUIRE(torque("pneumatic", "0.3 N m/%", "0.1 bar").size() == 1);
    CHECK(torque("pneumatic", "0.3 N m/%", "0.1 bar")[0].code == "quantity.wrong_kind");
    REQUIRE(torque("particle", "3 N m/A", "3 %").size() == 1);
    CHECK(torque("particle", "3 N m/A", "3 %")[0].code == "input.settings_differ");
}

TEST_CASE("unknown keys are refused in place, and the nearest known one is offered")
{
    struct Row {
        std::string toml, subject, near;
    };
    const std::vector<Row> rows{
        {"centerline = \"215 mm\"", "p.toml:4:14 press.centerline", "centreline"},
        {"[unwind]\ncorewall = \"13 mm\"", "p.toml:5:12 unwind.corewall", "core_wall"},
        {"[unwnd]\nroller = \"u\"", "p.toml:4:1 unwnd", "unwind"},
        {"[[zone]]\nid = \"z\"\ncontrol = \"draw\"\nseting = { least = \"0 %\" }", "p.toml:7:10 zone[0].seting",
         "setting"},
        {"[[guide]]\nid = \"g\"\nflavour = 1", "p.toml:6:11 guide[0].flavour", ""},
        {"[web]\nroller = [{ id = \"a\", diametre = \"80 mm\" }]", "p.toml:5:35 web.roller[0].diametre", "diameter"},
    };
    for (const Row& row : rows) {
        const Findings notes = notesOf(kHead + row.toml);
        for (const Finding& f : notes) UNSCOPED_INFO(sentence(f));
        REQUIRE(notes.size() == 1);
        CHECK(notes[0].code == "input.unknown_key");
        CHECK(notes[0].severity == Severity::Stop);
        CHECK(notes[0].subject.substr(notes[0].subject.find(' ')) == row.subject.substr(row.subject.find(' ')));
        CHECK(notes[0].subject.substr(0, 8) == row.subject.substr(0, 8));
        CHECK(plain(notes[0].remedy).find(row.near.empty() ? "stroke" : row.near) != std::string::npos);
    }
}

TEST_CASE("names must be free of dots, unlike each other, and known where they are used")
{
    struct Row {
        std::string toml, code, says;
    };
    const std::string web = "[web]\nroller = [{ id = \"infeed\" }, { id = \"outfeed\" }]\n";
    const std::vector<Row> rows{
        {"[[zone]]\nid = \"un.wind\"\ncontrol = \"draw\"", "input.bad_id", "lower case"},
        {"[[zone]]\nid = \"Unwind\"\ncontrol = \"draw\"", "input.bad_id", "lower case"},
        {"[[rewind]]\nid = \"a\"\n[[rewind]]\nid = \"a\"", "input.duplicate_id", "another name"},
        {"[[rewind]]\nid = \"unwind\"", "input.bad_id", "another name"},
        {web + "[[rewind]]\nid = \"a\"\nroller = \"outfeed\"\n[[zone]]\nid = \"y\"\ncontrol = \"draw\"\nto = "
               "\"outfeed\"\n"
               "[[zone]]\nid = \"z\"\ncontrol = \"draw\"\nto = \"outfeed\"",
         "input.rewind_taken", "left out"},
        {"[web]\nroller = [{ id = \"a.b\" }]", "input.bad_id", "no dot"},
        {"[web]\nroller = [{ id = \"a\" }, { id = \"a\" }]", "input.duplicate_id", "another name"},
        {"[printing]\nstation = [{ number = 1 }, { number = 1 }]", "input.duplicate_id", "another number"},
        {web + "[[zone]]\nid = \"z\"\ncontrol = \"draw\"\nfrom = \"infed\"\nto = \"outfeed\"",
         "input.unknown_reference", "\"infeed\""},
        {web + "[safety]\nguard = [{ id = \"g\", by = \"sun\" }]", "input.unknown_reference", "infeed, outfeed"},
        {web + "[[guide]]\nid = \"g\"\nrollers = [\"infeed\", \"outfed\"]", "input.unknown_reference", "\"outfeed\""},
        {"[[guide]]\nid = \"g\"\nkind = \"sterring\"", "input.unknown_word", "steering"},
        {"[[zone]]\nid = \"z\"\ncontrol = \"guess\"", "input.unknown_word", "open_loop"},
        {"[[zone]]\nid = \"z\"", "input.missing_key", "open_loop"},
        {"[[zone]]\nid = \"z\"\ncontrol = \"load_cell\"\nload_cell = { set_in = \"bar\" }", "input.unknown_word",
         "lbf"},
        {"[unwind]\nfeeds = [\"over\", \"sideways\"]", "input.unknown_word", "over, under"},
        {"[unwind]\nadapters = { core = \"6 in\" }", "input.wrong_type", "[[unwind.adapters]]"},
        {"[limits]\n\"tension.unwind.setting\" = { low = \"5 bar\", high = \"7 mm\" }", "input.order", "both ends"},
        {"[limits]\n\"air.supply\" = { low = \"5 bar\", high = \"7 mm\" }", "quantity.wrong_kind",
         "one of these units"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.toml);
        const Findings notes = notesOf(kHead + row.toml);
        for (const Finding& f : notes) UNSCOPED_INFO(sentence(f));
        REQUIRE(notes.size() == 1);
        CHECK(notes[0].code == row.code);
        CHECK(plain(notes[0].remedy).find(row.says) != std::string::npos);
    }
}

TEST_CASE("a newer format is read as far as it is known, an unreadable one is refused")
{
    const std::string known = demoText("resources/presses/north.toml");
    std::string newer = known;
    newer.replace(newer.find("format = 1"), 10, "format = 9");
    newer += "\n[weather]\nrain = true\n";
    Findings notes;
    const Result<Press> press = readPress(newer, "north.toml", notes);
    REQUIRE(press);
    CHECK_FALSE(stops(notes));
    REQUIRE(notes.size() == 2);
    CHECK(notes[0].code == "input.newer_format");
    CHECK(notes[1].code == "input.unknown_key");
    CHECK(PressDump::of(*press) == PressDump::of(demoPress("north")));

    for (const char* format : {"0", "-1", "\"1\"", "1.0", "true"}) {
        CAPTURE(format);
        std::string odd = known;
        odd.replace(odd.find("format = 1"), 10, std::string("format = ") + format);
        Findings none;
        const Result<Press> read = readPress(odd, "north.toml", none);
        REQUIRE_FALSE(read);
        CHECK(read.error().code == "input.bad_format");
        CHECK(read.error().subject == "north.toml:2:10 format");
    }
}

TEST_CASE("a file that is no press is refused with what it is")
{
    Findings notes;
    const auto code = [&](const std::string& text) {
        const Result<Press> press = readPress(text, "x.toml", notes);
        return press ? std::string("read") : press.error().code;
    };
    CHECK(code(demoText("resources/substrates.toml")) == "input.not_this");
    CHECK(code(demoText("resources/demo/rolls/R0041.toml")) == "input.not_this");
    CHECK(code("") == "input.not_this");
    CHECK(code("press = 3") == "input.not_this");
    CHECK(code("[press\nid = 1") == "toml.syntax");
    CHECK(code("[press]\nid = \"a\"\nid = \"b\"") == "toml.syntax");
    CHECK(code("[press]\nid = \"\xff\"") == "toml.not_utf8");
    CHECK(notes.empty());
    const Result<Press> broken = readPress("format = 1\n[press]\nid = north\n", "north.toml", notes);
    REQUIRE_FALSE(broken);
    CHECK(broken.error().subject.find("north.toml:3:") == 0);
    CHECK(plain(Text(readPress(demoText("resources/demo/rolls/R0041.toml"), "x", notes).error().text)).find("roll") !=
          std::string::npos);
}

TEST_CASE("a brake whose torque begins beyond what can be set is refused where it is written")
{
    const std::string zone = kHead + "[[zone]]\nid = \"z\"\ncontrol = \"open_loop\"\nactuator = \"pneumatic\"\n"
                                     "torque_per_setting = \"12 N m/bar\"\nzero_setting = \"";
    const std::string range = "\"\nsetting = { least = \"0.3 bar\", most = \"6 bar\" }\n";
    const auto begins = [&](const char* at) {
        const Findings notes = notesOf(zone + at + range);
        return std::any_of(notes.begin(), notes.end(),
                           [](const Finding& f) { return f.code == "input.torque_never_begins"; });
    };
    CHECK(begins("7 bar"));
    CHECK(begins("6 bar"));
    CHECK_FALSE(begins("0.15 bar"));
}

TEST_CASE("a friction between web and core that no core has is asked about")
{
    const auto refused = [&](const char* friction) {
        const Findings notes =
            notesOf(kHead + "[[rewind]]\nid = \"r\"\nroller = \"r\"\ncore_friction = " + friction + "\n");
        return std::any_of(notes.begin(), notes.end(),
                           [](const Finding& f) { return f.subject.find("core_friction") != std::string::npos; });
    };
    CHECK(refused("3"));
    CHECK_FALSE(refused("0.2"));
}

TEST_CASE("a taper to nothing and a core that would hold everything are refused where they are entered")
{
    const auto codes = [](const Findings& notes, const char* code) {
        return std::count_if(notes.begin(), notes.end(), [&](const Finding& f) { return f.code == code; });
    };
    const auto taper = [](const char* shape, const char* fraction) {
        return notesOf(kHead +
                       "[[zone]]\nid = \"z\"\ncontrol = \"open_loop\"\nactuator = \"pneumatic\"\ntaper = { shape = \"" +
                       shape + "\", fraction = " + fraction + " }\n");
    };
    CHECK(codes(taper("linear", "1"), "input.taper_to_nothing") == 1);
    CHECK(codes(taper("linear", "0.9"), "input.taper_to_nothing") == 0);
    CHECK(codes(taper("hyperbolic", "1"), "input.taper_to_nothing") == 0);  // constant torque
    const auto wraps = [](const char* count) {
        return notesOf(kHead + "[[rewind]]\nid = \"r\"\nroller = \"r\"\ncore_friction = 0.2\ncore_wraps = " + count +
                       "\n");
    };
    CHECK(codes(wraps("20"), "input.core_hold") == 1);
    CHECK(codes(wraps("3"), "input.core_hold") == 0);
}
