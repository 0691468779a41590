// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/toml_edit.h"

#include <filesystem>
#include <map>
#include <random>

#include <catch2/catch.hpp>

#include "core/base/file.h"
#include "core/base/toml.h"

using namespace taut;
using namespace taut::inputs;

namespace {

TomlPath path(std::initializer_list<TomlStep> steps) { return steps; }

/// What a file says, by path: the language's own reading of it, so that no edit is judged by itself.
using Said = std::map<std::string, std::string>;
void say(const Toml& node, const std::string& at, Said& out)
{
    if (const auto* table = node.table()) {
        out[at] = "{}";
        for (const auto& [key, member] : *table) say(member, at + "/" + key, out);
    } else if (const auto* list = node.array()) {
        out[at] = "[]";
        for (std::size_t i = 0; i < list->size(); ++i) say((*list)[i], at + "/" + std::to_string(i), out);
    } else if (const auto* text = node.text()) {
        out[at] = '"' + *text;
    } else if (const auto* whole = std::get_if<std::int64_t>(&node.value)) {
        out[at] = std::to_string(*whole);
    } else if (const auto* number = std::get_if<double>(&node.value)) {
        out[at] = std::to_string(*number);
    } else {
        out[at] = std::get<bool>(node.value) ? "true" : "false";
    }
}
Said saidBy(const std::string& text)
{
    const auto root = readToml(text, "t");
    if (!root) FAIL(text << root.error().subject << ' ' << root.error().code);
    Said out;
    say(*root, "", out);
    return out;
}
std::string slashed(const TomlPath& path)
{
    std::string out;
    for (const TomlStep& to : path)
        out += "/" + (std::holds_alternative<std::string>(to) ? std::get<std::string>(to)
                                                              : std::to_string(std::get<std::size_t>(to)));
    return out;
}
std::string must(const Result<std::string>& edited)
{
    if (!edited) FAIL(edited.error().code << ' ' << edited.error().subject << ' ' << edited.error().code);
    return *edited;
}

/// Everything that TOML allows and a person may have written.
const char* const kOdd = R"(# a file of all sorts
format = 1 # first
title = "one # no comment"
lit = 'C:\no' # literal
multi = """
two = "lines"
[not.a.table]
"""
web.least = "1 mm"   # dotted
web.most = "2 mm"
"a.b".c = 3
list = [1, 2, # two
  3,
  4 ]
empty = []
none = {}

# of the press
[press]
id = "x"
grips = { least = "75 mm", most = "78 mm" } # both
inner.one = true
flags = [ "over",
  "under" ]

[deep.down.here]
v = 1
[deep]
w = 2

[[zone]]
id = "a"
setting = { least = "1 bar" }
# about b
[[zone]]
id = "b"
[zone.dancer]
load = "weight"
[[zone]]
id = "c"

[web2]
roller = [
  { id = "one", at = ["0 mm", "1 mm"] }, # first
  { id = "two" },
  # before three
  { id = "three" }
]
[limits]
"splice.margin" = { low = 5 }
[ spaced . out ]
z = 0x10)";

std::vector<std::string> texts()
{
    std::vector<std::string> all{kOdd, std::string(kOdd) + "\n", ""};
    std::string crlf;
    for (const char c : std::string(kOdd)) crlf += c == '\n' ? "\r\n" : std::string(1, c);
    all.push_back(crlf);
    all.push_back("\xEF\xBB\xBF" + std::string(kOdd));
    const std::filesystem::path resources = std::filesystem::path(TAUTWEB_SOURCE_DIR) / "resources";
    for (const auto& entry : std::filesystem::recursive_directory_iterator(resources))
        if (entry.path().extension() == ".toml") all.push_back(*readFile(entry.path()));
    return all;
}

}  // namespace

TEST_CASE("the pieces of a file are what the language reads in it", "[toml_edit]")
{
    for (const std::string& text : texts()) {
        const auto pieces = tomlPieces(text, "t");
        REQUIRE(pieces);
        Said said = saidBy(text);
        for (const TomlPiece& piece : *pieces) {
            INFO(pathText(piece.path) << " written " << piece.written);
            REQUIRE(said.count(slashed(piece.path)) == 1);
            if (piece.sort == TomlPiece::Sort::Value)
                CHECK(saidBy("v = " + piece.written)["/v"] == said[slashed(piece.path)]);
        }
        CHECK(pieces->size() + 1 == said.size());
    }
}

TEST_CASE("a value that is set and set back leaves the file byte for byte", "[toml_edit]")
{
    std::mt19937 random(7);
    for (const std::string& text : texts()) {
        const auto pieces = tomlPieces(text, "t");
        const Said said = saidBy(text);
        for (const TomlPiece& piece : *pieces) {
            if (piece.written.empty() || random() % (text.size() > 20000 ? 40 : 1) != 0) continue;
            INFO(pathText(piece.path));
            const std::string edited = must(setToml(text, piece.path, "\"neu\\\"\""));
            Said expected = said;
            for (auto it = expected.begin(); it != expected.end();)
                it = it->first.rfind(slashed(piece.path) + "/", 0) == 0 ? expected.erase(it) : std::next(it);
            expected[slashed(piece.path)] = "\"neu\"";
            CHECK(saidBy(edited) == expected);
            CHECK(must(setToml(edited, piece.path, piece.written)) == text);
        }
    }
}

TEST_CASE("a key that is added to a table and taken out again leaves the file byte for byte", "[toml_edit]")
{
    std::mt19937 random(8);
    for (const std::string& text : texts()) {
        const auto pieces = tomlPieces(text, "t");
        for (const TomlPiece& piece : *pieces) {
            if (piece.sort != TomlPiece::Sort::Table && piece.sort != TomlPiece::Sort::Inline) continue;
            if (random() % (text.size() > 20000 ? 40 : 1) != 0) continue;
            TomlPath added = piece.path;
            added.emplace_back("a new.key");
            INFO(pathText(added) << " in\n" << text);
            const std::string edited = must(setToml(text, added, "2.5"));
            Said expected = saidBy(text);
            expected[slashed(added)] = saidBy("v = 2.5")["/v"];
            CHECK(saidBy(edited) == expected);
            const std::string back = must(removeToml(edited, added));
            CHECK(saidBy(back) == saidBy(text));
            // A header that had to be made, a line end that was missing and the look of empty braces stay.
            if (piece.written != "{}" && !text.empty() && text.back() == '\n' && piece.path != path({"deep", "down"}) &&
                piece.path != path({"spaced"}))
                CHECK(back == text);
        }
    }
}

TEST_CASE("what is taken out is gone, and nothing else", "[toml_edit]")
{
    std::mt19937 random(9);
    for (const std::string& text : texts()) {
        const auto pieces = tomlPieces(text, "t");
        for (const TomlPiece& piece : *pieces) {
            if (random() % (text.size() > 20000 ? 40 : 1) != 0) continue;
            if (std::holds_alternative<std::size_t>(piece.path.back())) continue;  // the others of a list move up
            INFO(pathText(piece.path));
            Said expected = saidBy(text);
            for (auto it = expected.begin(); it != expected.end();)
                it = it->first == slashed(piece.path) || it->first.rfind(slashed(piece.path) + "/", 0) == 0
                         ? expected.erase(it)
                         : std::next(it);
            Said left = saidBy(must(removeToml(text, piece.path)));
            // A table that stood there only for what was in it goes with it.
            for (auto it = expected.begin(); it != expected.end();)
                it = it->second == "{}" && left.count(it->first) == 0 ? expected.erase(it) : std::next(it);
            CHECK(left == expected);
        }
    }
}

TEST_CASE("a row that is put in stands where it was put, and taken out leaves the file as it was", "[toml_edit]")
{
    for (const std::string& text : texts()) {
        const auto pieces = tomlPieces(text, "t");
        for (const TomlPiece& piece : *pieces) {
            const bool list = piece.sort == TomlPiece::Sort::List || piece.sort == TomlPiece::Sort::Tables;
            const Said said = saidBy(text);
            const auto first = said.find(slashed(piece.path) + "/0");
            if (!list || text.size() > 20000 || (first != said.end() && first->second != "{}")) continue;
            std::size_t rows = 0;
            while (said.count(slashed(piece.path) + "/" + std::to_string(rows)) == 1) ++rows;
            for (std::size_t at = 0; at <= rows; ++at) {
                INFO(pathText(piece.path) << ' ' << at << " in\n" << text);
                const std::string edited = must(insertToml(text, piece.path, at, {{"id", "\"new\""}, {"n", "1"}}));
                Said now = saidBy(edited);
                CHECK(now[slashed(piece.path) + "/" + std::to_string(at) + "/id"] == "\"new");
                CHECK(now.size() == said.size() + 3);
                TomlPath put = piece.path;
                put.emplace_back(at);
                const std::string back = must(removeToml(edited, put));
                CHECK(saidBy(back) == said);
                if (!text.empty() && text.back() == '\n' && piece.written != "[]")
                    CHECK(back.size() <= text.size() + 2);
            }
        }
    }
}

TEST_CASE("rows change places with their comments, and back", "[toml_edit]")
{
    const std::string text = kOdd + std::string("\n");
    const std::string swapped = must(swapToml(text, path({"web2", "roller"}), 0));
    CHECK(swapped.find("  { id = \"two\" },\n  { id = \"one\", at = [\"0 mm\", \"1 mm\"] }, # first\n") !=
          std::string::npos);
    CHECK(must(swapToml(swapped, path({"web2", "roller"}), 0)) == text);
    const std::string zones = must(swapToml(text, path({"zone"}), 0));
    CHECK(zones.find("# about b\n[[zone]]\nid = \"b\"\n[zone.dancer]\nload = \"weight\"\n[[zone]]\nid = \"a\"") !=
          std::string::npos);
    CHECK(must(swapToml(zones, path({"zone"}), 0)) == text);
    CHECK(swapToml(text, path({"zone"}), 2).error().code == "toml_edit.not_there");
    CHECK(swapToml("[[a]]\nx=1\n[b]\n[[a]]\nx=2\n", path({"a"}), 0).error().code == "toml_edit.scattered");
}

TEST_CASE("a new key stands among its own, and what is missing above it is made", "[toml_edit]")
{
    CHECK(must(setToml("[press]\nid = \"n\"  # name\n\n[unwind]\n", path({"press", "name"}), "\"N\"")) ==
          "[press]\nid = \"n\"  # name\nname = \"N\"\n\n[unwind]\n");
    CHECK(must(setToml("format = 1\n\n[press]\n", path({"speeds", "inch", "value"}), "\"24 mm\"")) ==
          "format = 1\n\n[press]\n\n[speeds]\ninch = { value = \"24 mm\" }\n");
    CHECK(must(setToml("[[zone]]\nid = \"a\"\n", path({"zone", std::size_t{0}, "setting", "least"}), "\"1 bar\"")) ==
          "[[zone]]\nid = \"a\"\nsetting = { least = \"1 bar\" }\n");
    CHECK(must(insertToml("format = 1\n", path({"zone"}), 0, {{"id", "\"a\""}})) ==
          "format = 1\n\n[[zone]]\nid = \"a\"\n");
    CHECK(must(insertToml("format = 1\n", path({"web", "roller"}), 0, {{"id", "\"a\""}})) ==
          "format = 1\n\n[web]\nroller = [\n  { id = \"a\" },\n]\n");
    CHECK(must(insertToml("a = [\n  { x = 1 }, # one\n]\n", path({"a"}), 1, {{"x", "2"}})) ==
          "a = [\n  { x = 1 }, # one\n  { x = 2 },\n]\n");
    CHECK(must(makeTomlTable("format = 1\n", path({"lengths"}))) == "format = 1\n\n[lengths]\n");
    CHECK(must(makeTomlTable("[unwind]\n", path({"unwind", "lift"}))) == "[unwind]\nlift = {}\n");
    CHECK(makeTomlTable("[unwind]\n", path({"unwind"})).error().code == "toml_edit.no_place");
    CHECK(must(removeToml("a = { x = 1, y = 2 }\n", path({"a", "y"}))) == "a = { x = 1 }\n");
    CHECK(must(removeToml("a = { x = 1, y = 2 }\n", path({"a", "x"}))) == "a = { y = 2 }\n");
}

TEST_CASE("nothing is written that could not be read, nor more than one value", "[toml_edit]")
{
    const std::string text = "[a]\nx = 1\n";
    for (const char* bad : {"", "1\ny = 2", "\"open", "1 # hidden", "[1", "{ a = 1", "word", "1, y = 2", "1 "})
        CHECK(setToml(text, path({"a", "x"}), bad).error().code == "toml_edit.not_a_value");
    CHECK(setToml(text, path({"a"}), "1").error().code == "toml_edit.no_place");
    CHECK(setToml(text, path({"a", "x", "y"}), "1").error().code == "toml_edit.no_place");
    CHECK(setToml(text, path({"a", std::size_t{3}}), "1").error().code == "toml_edit.no_place");
    CHECK(insertToml(text, path({"a", "x"}), 0, {}).error().code == "toml_edit.no_place");
    CHECK(removeToml(text, path({"b"})).error().code == "toml_edit.not_there");
    CHECK(setToml("[a\n", path({"a"}), "1").error().code == "toml.syntax");
}

TEST_CASE("what a person types is written as the language wants it", "[toml_edit]")
{
    CHECK(tomlWritten("12 N m/bar") == "\"12 N m/bar\"");
    CHECK(tomlWritten(" 0.25 ") == "0.25");
    CHECK(tomlWritten("true") == "true");
    CHECK(tomlWritten("[\"over\", \"under\"]") == "[\"over\", \"under\"]");
    CHECK(tomlWritten("\"3\"") == "\"3\"");
    CHECK(tomlWritten("say \"no\"") == "\"say \\\"no\\\"\"");
    CHECK(tomlWritten("8 # of them") == "\"8 # of them\"");
    CHECK(tomlWritten("") == "\"\"");
    CHECK(tomlWritten("[open") == "\"[open\"");
}
