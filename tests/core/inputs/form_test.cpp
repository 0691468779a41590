// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/form.h"

#include <algorithm>

#include <catch2/catch.hpp>

#include "core/base/file.h"
#include "core/inputs/inputs.h"
#include "core/inputs/key_meaning.h"
#include "core/inputs/path_pieces.h"

using namespace taut;
using namespace taut::inputs;

namespace {

std::string north() { return *readFile(std::string(TAUTWEB_SOURCE_DIR) + "/resources/presses/north.toml"); }

const FormGroup& group(const Form& form, const std::string& name)
{
    const auto it =
        std::find_if(form.groups.begin(), form.groups.end(), [&](const FormGroup& g) { return g.name == name; });
    if (it == form.groups.end()) FAIL("no group " << name);
    return *it;
}
const FormCell& cell(const Form& form, const std::string& name, std::size_t item, const std::string& key)
{
    const FormGroup& g = group(form, name);
    const auto at = std::find(g.keys.begin(), g.keys.end(), key);
    if (at == g.keys.end() || item >= g.items.size()) FAIL("no " << name << ' ' << item << ' ' << key);
    return g.items[item][static_cast<std::size_t>(at - g.keys.begin())];
}
std::string must(const Result<std::string>& edited)
{
    if (!edited) FAIL(edited.error().code << ' ' << edited.error().subject);
    return *edited;
}

}  // namespace

TEST_CASE("a press is a form of tables and rows, with what stands in each", "[form]")
{
    const Form form = formOf("press", north());
    CHECK(form.readable);
    CHECK(form.findings.empty());
    CHECK(group(form, "web.roller").items.size() == 14);
    CHECK_FALSE(group(form, "web.roller").nested);
    CHECK(group(form, "zone").nested);
    CHECK(cell(form, "web.roller", 1, "at[0]").said == "760 mm");
    CHECK(cell(form, "web.roller", 1, "at[1]").said == "220 mm");
    CHECK(cell(form, "zone", 0, "setting.least").said == "0.3 bar");
    CHECK(cell(form, "unwind", 0, "lift.bore").said == "80 mm");
    CHECK(cell(form, "unwind", 0, "feeds").said == "over, under");
    CHECK(cell(form, "press", 0, "web_width.most").said == "340 mm");
    CHECK(cell(form, "press", 0, "air").said == "true");
    CHECK_FALSE(cell(form, "zone", 0, "overspeed").stands);
    CHECK(group(form, "lengths").items.empty());
    CHECK(group(form, "rewind").items.size() == 1);
}

TEST_CASE("every cell of every demo file takes what it says, and the text stays as it is", "[form]")
{
    const std::string root = std::string(TAUTWEB_SOURCE_DIR) + "/resources/";
    const std::pair<const char*, std::string> all[] = {{"press", "presses/north.toml"},
                                                       {"press", "presses/south.toml"},
                                                       {"job", "demo/jobs/cold-brew.toml"},
                                                       {"substrate", "substrates.toml"}};
    for (const auto& [what, file] : all) {
        const std::string text = *readFile(root + file);
        const Form form = formOf(what, text);
        for (const FormGroup& g : form.groups)
            for (const auto& item : g.items)
                for (const FormCell& c : item) {
                    if (!c.known || !c.stands || c.sort == KeyAsked::Sort::Table) continue;
                    INFO(file << ' ' << pathText(c.path) << " = " << c.said);
                    // 0.20 and 0.2 are one number in two spellings; lists may be set with other blanks.
                    const std::string back = must(typedInto(text, c, c.said));
                    CHECK(back == text);
                }
    }
}

TEST_CASE("what is typed goes into its key, and nothing typed takes it out", "[form]")
{
    const std::string text = "format = 1\n[press]\nid = \"n\" # ours\n[[zone]]\nid = \"u\"\ncontrol = \"open_loop\"\n";
    const Form form = formOf("press", text);
    CHECK(must(typedInto(text, cell(form, "press", 0, "name"), " North ")) ==
          "format = 1\n[press]\nid = \"n\" # ours\nname = \"North\"\n[[zone]]\nid = \"u\"\ncontrol = \"open_loop\"\n");
    const std::string with = must(typedInto(text, cell(form, "zone", 0, "torque_per_setting"), "12 N m/bar"));
    CHECK(with == text + "torque_per_setting = \"12 N m/bar\"\n");
    CHECK(must(typedInto(with, cell(formOf("press", with), "zone", 0, "torque_per_setting"), "")) == text);
    CHECK(must(typedInto(text, cell(form, "press", 0, "air"), "true")).find("\nair = true\n") != std::string::npos);
    // A sentence that could be taken for more than a value is one value.
    const std::string odd = must(typedInto(text, cell(form, "press", 0, "name"), "a\" # \nid = \"b"));
    Findings notes;
    CHECK(readPress(odd, "n", notes)->name == "a\" # \nid = \"b");
    CHECK(notes.empty());
}

TEST_CASE("a finding stands at the cell that it is about", "[form]")
{
    const std::string text =
        "format = 1\n[press]\nid = \"n\"\n[web]\nroller = [{ id = \"a\", at = [\"1 mm\", \"2 kg\"] "
        "}, { id = \"b\", kind = \"idle\" }]\n";
    const Form form = formOf("press", text);
    REQUIRE(form.findings.size() == 2);
    CHECK(cell(form, "web.roller", 0, "at[1]").findings == std::vector<std::size_t>{0});
    CHECK(cell(form, "web.roller", 0, "at[0]").findings.empty());
    CHECK(cell(form, "web.roller", 1, "kind").findings == std::vector<std::size_t>{1});
    CHECK(cell(form, "web.roller", 1, "kind").words.size() == 15);
    const Form broken = formOf("press", "[press\n");
    CHECK_FALSE(broken.readable);
    CHECK(broken.findings.size() == 1);
    CHECK(broken.groups.empty());
}

TEST_CASE("rows and tables are added with a name that is free", "[form]")
{
    const std::string text = north();
    const Form form = formOf("press", text);
    Findings notes;
    const std::string roller = must(addedTo(text, group(form, "web.roller"), 2));
    CHECK(formOf("press", roller).groups.size() == form.groups.size());
    CHECK(cell(formOf("press", roller), "web.roller", 2, "id").said == "new_15");
    CHECK(cell(formOf("press", roller), "web.roller", 3, "id").said == "table exit");
    const std::string station = must(addedTo(text, group(form, "printing.station"), 2));
    CHECK(cell(formOf("press", station), "printing.station", 2, "number").said == "3");
    const std::string zone = must(addedTo(text, group(form, "zone"), 3));
    CHECK(cell(formOf("press", zone), "zone", 3, "id").said == "new_4");
    const std::string lengths = must(addedTo(text, group(form, "lengths"), 0));
    CHECK(group(formOf("press", lengths), "lengths").items.size() == 1);
    const std::string bare = "format = 1\n[press]\nid = \"n\"\n[web]\n";
    const std::string first = must(addedTo(bare, group(formOf("press", bare), "web.roller"), 0));
    CHECK(readPress(first, "n", notes)->rollers.size() == 1);
    const std::string half = must(typedInto(first, cell(formOf("press", first), "web.roller", 0, "at[0]"), "5 mm"));
    CHECK(cell(formOf("press", half), "web.roller", 0, "at[0]").said == "5 mm");
    CHECK_FALSE(cell(formOf("press", half), "web.roller", 0, "at[1]").findings.empty());
}

TEST_CASE("of a path that cannot be, its rollers and the other stretches are drawn, and the roller is named", "[form]")
{
    Findings notes;
    Press press = *readPress(north(), "n", notes);
    const auto good = pathPieces(press, Length::si(1.0), Feed::Over);
    CHECK(good.wrong.empty());
    CHECK(good.paths.size() == 1);
    for (Roller& roller : press.rollers)
        if (roller.id == "turn up") roller.x = press.roller("guide exit")->x, roller.y = press.roller("guide exit")->y;
    const auto bad = pathPieces(press, Length::si(1.0), Feed::Over);
    REQUIRE(bad.wrong.size() == 1);
    CHECK(bad.wrong[0].code == "path.rollers_touch");
    CHECK((bad.at[0] == "guide exit" || bad.at[0] == "turn up"));
    std::size_t spans = 0, rollers = 0;
    for (const NamedPath& path : bad.paths) {
        spans += path.path.spans.size();
        rollers += path.path.rollers.size() - path.path.spans.size();
    }
    CHECK(rollers == 14);
    CHECK(spans == 12);
    for (Roller& roller : press.rollers)
        if (roller.id == "infeed") roller.x.reset();
    const auto missing = pathPieces(press, Length::si(1.0), Feed::Over);
    REQUIRE(missing.wrong.size() == 1);
    CHECK(missing.at[0] == "infeed");
}

TEST_CASE("every key that a form offers says what it means", "[form]")
{
    const std::string root = std::string(TAUTWEB_SOURCE_DIR) + "/resources/";
    std::string all = *readFile(root + "presses/south.toml");
    // Whatever tables the demo press has no need of.
    for (const char* more : {"\n[lengths]\nwhole = \"12 m\"\n"}) all += more;
    const std::pair<const char*, std::string> files[] = {{"press", all},
                                                         {"press", north()},
                                                         {"job", *readFile(root + "demo/jobs/cold-brew.toml")},
                                                         {"substrate", *readFile(root + "substrates.toml")}};
    for (const auto& [what, text] : files)
        for (const FormGroup& g : formOf(what, text).groups)
            for (const auto& item : g.items)
                for (std::size_t k = 0; k < item.size(); ++k) {
                    if (!item[k].known || item[k].sort == KeyAsked::Sort::Table) continue;
                    INFO(g.name << ' ' << g.keys[k]);
                    CHECK_FALSE(keyMeaning(g.name, g.keys[k]).empty());
                }
    CHECK(keyMeaning("web.roller", "at[0]").source.str().find("along") != std::string::npos);
    CHECK(keyMeaning("substrate[0].layers", "caliper").source.str() == "Its thickness.");
    CHECK(keyMeaning("substrate", "splice_tape.strength").source.str().find("tape") != std::string::npos);
    CHECK(keyMeaning("attic", "ghost").empty());
}
