// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/key_asked.h"

#include <algorithm>
#include <filesystem>

#include <catch2/catch.hpp>

#include "core/base/file.h"
#include "core/inputs/toml_edit.h"

using namespace taut;
using namespace taut::inputs;

namespace {

const KeyAsked* asked(const Looked& looked, const std::string& path)
{
    const auto it =
        std::find_if(looked.asked.begin(), looked.asked.end(), [&](const KeyAsked& key) { return key.path() == path; });
    return it == looked.asked.end() ? nullptr : &*it;
}

}  // namespace

TEST_CASE("a reader tells every key that it knows, whether the file has it or not", "[key_asked]")
{
    const Looked looked = lookAt("press", "format = 1\n[press]\nid = \"n\"\n[[zone]]\nid = \"unwind\"\ncontrol = "
                                          "\"open_loop\"\nactuator = \"pneumatic\"\n");
    CHECK(looked.findings.empty());
    const KeyAsked* torque = asked(looked, "zone[0].torque_per_setting");
    REQUIRE(torque);
    CHECK(torque->sort == KeyAsked::Sort::Quantity);
    CHECK(torque->kinds == std::vector<Kind>{Kind::TorquePerPressure});
    CHECK_FALSE(torque->stands);
    const KeyAsked* control = asked(looked, "zone[0].control");
    REQUIRE(control);
    CHECK(control->sort == KeyAsked::Sort::Word);
    CHECK(control->words == std::vector<std::string>{"open_loop", "dancer", "load_cell", "draw"});
    CHECK(control->stands);
    CHECK(asked(looked, "press.wakes_stopped")->sort == KeyAsked::Sort::Flag);
    CHECK(asked(looked, "unwind")->sort == KeyAsked::Sort::Table);
    CHECK(asked(looked, "rewind")->sort == KeyAsked::Sort::Tables);
    CHECK(asked(looked, "unwind.lift") == nullptr);  // its table is not there
}

TEST_CASE("what may be referred to is told by name", "[key_asked]")
{
    const Looked looked = lookAt(
        "press", "format = 1\n[press]\nid = \"n\"\n[unwind]\n[web]\nroller = [{ id = \"a b\" }, { id = \"c\" }]\n");
    CHECK(asked(looked, "unwind.roller")->words == std::vector<std::string>{"a b", "c"});
    CHECK(asked(looked, "web.roller[1].at")->sort == KeyAsked::Sort::Point);
}

TEST_CASE("every key of every file that comes with the program is one that its reader asked for", "[key_asked]")
{
    const std::filesystem::path resources = std::filesystem::path(TAUTWEB_SOURCE_DIR) / "resources";
    const std::pair<const char*, std::filesystem::path> all[] = {
        {"press", resources / "presses" / "north.toml"},
        {"press", resources / "presses" / "south.toml"},
        {"job", resources / "demo" / "jobs" / "cold-brew.toml"},
        {"substrate", resources / "substrates.toml"}};
    for (const auto& [what, file] : all) {
        const auto text = readFile(file);
        REQUIRE(text);
        const Looked looked = lookAt(what, *text);
        const auto pieces = tomlPieces(*text, "t");
        REQUIRE(pieces);
        for (const TomlPiece& piece : *pieces) {
            if (!std::holds_alternative<std::string>(piece.path.back())) continue;
            INFO(file << ' ' << pathText(piece.path));
            const KeyAsked* key = asked(looked, pathText(piece.path));
            REQUIRE(key);
            CHECK(key->stands);
        }
    }
}

TEST_CASE("a finding names the key and the line that it is about", "[key_asked]")
{
    const Looked looked = lookAt("press", "format = 1\n[press]\nid = \"n\"\n[[zone]]\nid = \"u\"\ncontrol = "
                                          "\"draw\"\nsetting = { least = \"1 bar\" }\n");
    REQUIRE(looked.findings.size() == 1);
    CHECK(foundAt(looked.findings[0]).path == "zone[0].setting.least");
    CHECK(foundAt(looked.findings[0]).line == 7);
    const Looked broken = lookAt("job", "format = 1\n[job\n");
    REQUIRE(broken.findings.size() == 1);
    CHECK(foundAt(broken.findings[0]).line == 2);
    CHECK(foundAt(broken.findings[0]).path.empty());
}
