// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/toml.h"
#include "core/inputs/form.h"
#include "core/inputs/inputs.h"
#include "core/inputs/toml_edit.h"
#include "core/procedure/procedure.h"
#include "core/procedure/translation.h"
#include "tests/core/inputs/dump.h"
#include "tests/core/procedure/small.h"
#include "tests/fuzz/property.h"

// A file of press, job, substrates, roll, procedure or the translation of one: what it is decides who reads it.

using namespace taut;
using namespace taut::fuzz;

namespace {

constexpr const char* kFile = "input.toml";

/// Place and value of everything in the tree; texts are UTF-8, places are places of the file.
void checkTree(const Toml& value, int lines, bool root, std::string& out)
{
    require(value.line >= 1 && value.line <= lines && value.column >= 1, "every value stands somewhere in the file");
    out += std::string(value.typeName()) + '@' + std::to_string(value.line) + ':' + std::to_string(value.column) + ' ';
    if (const std::string* text = value.text()) {
        require(isUtf8(*text), "a text is UTF-8", *text);
        const auto back = readToml("t = " + tomlQuoted(*text), kFile);
        require(back && back->find("t") != nullptr && back->find("t")->text() != nullptr &&
                    *back->find("t")->text() == *text,
                "a written text reads back the same", *text);
        out += *text;
    }
    if (const auto* items = value.array())
        for (const Toml& item : *items) checkTree(item, lines, false, out);
    if (const auto* members = value.table())
        for (const auto& [key, member] : *members) {
            require(isUtf8(key), "a key is UTF-8", key);
            require(value.find(key) == &member, "a key stands once in its table", key);
            out += key + '=';
            checkTree(member, lines, false, out);
        }
    require(!root || value.table() != nullptr, "a file is a table");
}

/// Reads twice, the second time as an editor with a byte order mark would have saved it: same value, same notes.
template <class Read, class Same>
void checkReader(std::string_view text, const Read& read, const Same& same)
{
    Findings notes, notesAgain;
    const auto value = read(text, notes);
    checkFindings(notes);
    if (!value) checkFinding(value.error());
    if (text.substr(0, 3) == "\xEF\xBB\xBF") return;
    const auto again = read("\xEF\xBB\xBF" + std::string(text), notesAgain);
    require(static_cast<bool>(again) == static_cast<bool>(value), "a byte order mark changes nothing");
    require(notesAgain == notes, "a byte order mark changes no note");
    if (value) require(same(*value, *again), "a byte order mark changes no value");
}

void checkRoll(std::string_view text)
{
    Findings notes;
    const auto roll = inputs::readRoll(text, kFile, notes);
    if (!roll) return;
    const std::string written = inputs::writeRoll(*roll);
    Findings none;
    const auto again = inputs::readRoll(written, kFile, none);
    require(again && *again == *roll, "a written roll reads back the same", written);
    // What was wrong was left out; only the id has no way to be said by leaving it out.
    for (const Finding& note : none) require(note.code == "input.missing_key", "a written roll has no faults", written);
}

std::size_t partsOf(const Toml& value)
{
    std::size_t parts = 1;
    if (const auto* items = value.array())
        for (const Toml& item : *items) parts += partsOf(item);
    if (const auto* members = value.table())
        for (const auto& [key, member] : *members) parts += partsOf(member);
    return parts;
}

/// An editor of the text finds what the reader finds, and what it sets and sets back leaves every byte.
void checkEdits(std::string_view text, const Toml& tree)
{
    const auto pieces = inputs::tomlPieces(text, kFile);
    require(pieces && pieces->size() + 1 == partsOf(tree), "every part of a file is a piece of its text");
    std::size_t tried = 0;
    for (const inputs::TomlPiece& piece : *pieces) {
        if (piece.written.empty() || ++tried > 5) continue;
        const auto edited = inputs::setToml(text, piece.path, "[\"x\"]");
        require(static_cast<bool>(edited), "what stands can be set", inputs::pathText(piece.path));
        const auto back = inputs::setToml(*edited, piece.path, piece.written);
        require(back && *back == text, "what is set back leaves every byte", inputs::pathText(piece.path));
        const auto without = inputs::removeToml(text, piece.path);
        require(static_cast<bool>(without), "what stands can be taken out", inputs::pathText(piece.path));
    }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text = textOf(data, size);
    const auto tree = readToml(text, kFile);
    if (!tree) {
        checkFinding(tree.error());
    } else {
        int lines = 1;
        for (const char c : text) lines += c == '\n' ? 1 : 0;
        std::string told;
        checkTree(*tree, lines, true, told);
        checkEdits(text, *tree);
    }

    const std::string what = inputs::whatIs(text);
    for (const char* form : {"press", "job", "substrate"}) checkFindings(inputs::formOf(form, text).findings);
    if (what == "press") {
        checkReader(
            text, [](std::string_view t, Findings& n) { return inputs::readPress(t, kFile, n); },
            [](const auto& a, const auto& b) { return PressDump::of(a) == PressDump::of(b); });
    } else if (what == "job") {
        checkReader(
            text, [](std::string_view t, Findings& n) { return inputs::readJob(t, kFile, n); },
            [](const auto& a, const auto& b) { return a.id == b.id && a.substrate == b.substrate; });
    } else if (what == "substrates") {
        checkReader(
            text, [](std::string_view t, Findings& n) { return inputs::readSubstrates(t, kFile, n); },
            [](const auto& a, const auto& b) { return a.size() == b.size(); });
    } else if (what == "procedure") {
        checkReader(
            text, [](std::string_view t, Findings& n) { return procedure::readProcedure(t, kFile, n); },
            [](const auto& a, const auto& b) { return a.id == b.id && a.stages.size() == b.stages.size(); });
    } else if (procedure::translationHead(text)) {
        static const procedure::Procedure english = [] {
            Findings none;
            return procedure::readProcedure(procedure::small::kProcedure, kFile, none).value();
        }();
        checkReader(
            text, [](std::string_view t, Findings& n) { return procedure::translated(english, t, kFile, n); },
            [](const auto& a, const auto& b) { return a.language == b.language && a.title == b.title; });
    } else {
        checkReader(
            text, [](std::string_view t, Findings& n) { return inputs::readRoll(t, kFile, n); },
            [](const auto& a, const auto& b) { return a == b; });
        checkRoll(text);
    }
    return 0;
}
