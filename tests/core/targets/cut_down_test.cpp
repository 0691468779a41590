// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include <set>
#include <sstream>

#include "core/targets/target.h"
#include "tests/core/targets/demo_inputs.h"

using namespace taut;
using targets::Targets;

namespace {

std::vector<std::string> linesOf(const std::string& text)
{
    std::vector<std::string> lines;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);) lines.push_back(line);
    return lines;
}
std::string without(const std::vector<std::string>& lines, std::size_t skip)
{
    std::string text;
    for (std::size_t i = 0; i < lines.size(); ++i)
        if (i != skip) text += lines[i] + "\n";
    return text;
}
/// The key of a one-line assignment, "" for headers, comments and pieces of longer values.
std::string keyOf(const std::string& line)
{
    const auto eq = line.find(" = ");
    if (eq == std::string::npos || line[0] == '[' || line[0] == ' ' || line[0] == '#' || line[0] == '"') return "";
    if (line.find('[', eq) != std::string::npos && line.find(']', eq) == std::string::npos) return "";
    return line.substr(0, eq);
}
std::set<std::string> keysNeeded(const targets::Target& t)
{
    const auto* needs = std::get_if<targets::Needs>(&t.state);
    return needs ? std::set<std::string>(needs->keys.begin(), needs->keys.end()) : std::set<std::string>();
}

}  // namespace

TEST_CASE("a profile cut down key by key never fails, and each missing key is named by the targets that need it")
{
    for (const char* which : {"north", "south"}) {
        const bool north = std::string(which) == "north";
        auto in = north ? demo::inputs("north", "quince-jelly", "R0041") : demo::inputs("south", "cold-brew", "R0048");
        const Targets whole = targets::computeTargets(in);
        const std::vector<std::string> lines = linesOf(demo::text(std::string("presses/") + which + ".toml"));
        std::size_t named = 0;
        for (std::size_t i = 0; i < lines.size(); ++i) {
            const std::string key = keyOf(lines[i]);
            if (key.empty() || key == "format" || key == "id") continue;
            Findings notes;
            Result<inputs::Press> cut = inputs::readPress(without(lines, i), "cut.toml", notes);
            if (!cut) continue;  // a press without its name is refused, which is an answer too
            in.press = std::make_shared<const inputs::Press>(std::move(*cut));
            const Targets less = targets::computeTargets(in);
            for (const targets::Target& t : less.all) {
                const targets::Target* was = whole.find(t.id);
                if (was == nullptr || was->ready() == nullptr) continue;
                INFO(which << ": without line " << i + 1 << " '" << lines[i] << "', target " << t.id);
                if (t.ready() != nullptr) continue;
                const std::set<std::string> needs = keysNeeded(t);
                // A zone that does not say how it is controlled is left out: the draw behind it then has none before.
                if (const auto* no = std::get_if<targets::Cannot>(&t.state);
                    no != nullptr && key == "control" && no->why.code == "tension.print.draw_first")
                    continue;
                // Not ready any more: it must say so by key, and the key must be one that this line spoke of.
                CHECK_FALSE(std::holds_alternative<targets::Cannot>(t.state));
                bool speaks = false;
                for (const std::string& k : needs)
                    speaks = speaks || k.find(key) != std::string::npos || key == "roller" || key == "from" ||
                             key == "to" || key == "control" || key == "actuator" || key == "load" || key == "arm" ||
                             key == "after" || key == "takes" || key == "roller" || key == "set_in" ||
                             key == "rollers" || key == "station";
                CHECK(speaks);
                ++named;
            }
        }
        CHECK(named > 40);
    }
}

// A zone that does not say where it ends pulls at no rewind, one that does not say where it begins at no unwind.
TEST_CASE("each target is stated once, whatever a profile says of ends that are not known")
{
    const auto changed = [](std::string text, const std::string& from, const std::string& to) {
        for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
            text.replace(at, from.size(), to);
        return text;
    };
    const std::string north = demo::text("presses/north.toml");
    struct Row {
        std::string from, to;
    };
    for (const Row& row : std::vector<Row>{{"id = \"outfeed\"", "id = \"out\""},
                                           {"id = \"rewind\"", "id = \"end\""},
                                           {"roller = \"rewind\"", "roller = \"gone\""},
                                           {"id = \"rewind\"", "id = \"unwind\""},
                                           {"to = \"outfeed\"", "to = \"rewind\""},
                                           {"to = \"", "to = \"no "},
                                           {"from = \"", "from = \"no "}}) {
        CAPTURE(row.from, row.to);
        auto in = demo::inputs("north", "quince-jelly", "R0041");
        in.press = demo::pressOf(
            changed(changed(north, row.from, row.to), "roller = \"rewind\"\ntakes", "roller = \"gone\"\ntakes"));
        std::set<std::string> ids;
        for (const targets::Target& target : targets::computeTargets(in).all) CHECK(ids.insert(target.id).second);
        if (row.from == "from = \"")
            for (const inputs::Zone& zone : in.press->zones) CHECK(zone.from.empty());
    }
}
