// SPDX-License-Identifier: GPL-3.0-or-later
// A procedure's words in another language: what is laid over it, and what is found wrong with it.
#include <catch2/catch.hpp>

#include <algorithm>

#include "core/procedure/translation.h"
#include "tests/core/procedure/shop.h"

using namespace taut;
using namespace taut::procedure;

namespace {

constexpr const char* kEnglish = R"toml(format = 1
[procedure]
id = "tiny"
title = "Tiny"
edition = 3
revised = "2026-11-25"
language = "en"
purpose = "To be said in another language"
[[stage]]
id = "set"
title = "Set"
  [[stage.place]]
  id = "lift"
  title = "At the lift"
  at = "lift"
  style = "read_do"
    [[stage.place.step]]
    id = "pressure"
    kind = "reading"
    waivable = false
    target = "lift.pressure"
    control = "lift_pressure"
    say = "Set {control} to {target}, no more than {= 0.1 bar} off."
    why = "Too much throws the roll."
    caution = { word = "caution", text = "A roll falls" }
    tries = ["Is the valve open?", "Call for help"]
    [[stage.place.step]]
    id = "seen"
    kind = "choice"
    say = "How does it hang?"
    choices = [{ word = "good", say = "Level" }, { word = "bad", say = "Aslant", stops = true, remedy = "Lower it" }]
    [[stage.place.step]]
    id = "done"
    kind = "call"
    say = "Set, and said so"
)toml";

constexpr const char* kSpanish = R"toml(format = 1
[translation]
procedure = "tiny"
edition = 3
language = "es"
title = "Mínimo"
purpose = "Para decirlo en otro idioma"
[[stage]]
id = "set"
title = "Ajuste"
[[place]]
id = "set.lift"
title = "En el elevador"
[[step]]
id = "set.lift.pressure"
say = "Ajustar {control} a {target}, con {= 0.1 bar} de diferencia como máximo."
why = "Demasiada lanza la bobina."
caution = "Una bobina cae"
tries = ["¿Está abierta la válvula?", "Pedir ayuda"]
[[step]]
id = "set.lift.seen"
say = "¿Cómo cuelga?"
choices = [{ word = "good", say = "A nivel" }, { word = "bad", say = "Torcida", remedy = "Bajarla" }]
[[step]]
id = "set.lift.done"
say = "Ajustado, y así dicho"
)toml";

Procedure english()
{
    Findings lint;
    const auto read = readProcedure(kEnglish, "tiny.toml", lint);
    REQUIRE(read);
    return *read;
}

std::string with(std::string text, const std::string& before, const std::string& after)
{
    const std::size_t at = text.find(before);
    REQUIRE(at != std::string::npos);
    return text.replace(at, before.size(), after);
}

/// The codes of what is wrong, each once.
std::vector<std::string> codesOf(const std::string& toml)
{
    Findings lint;
    const auto said = translated(english(), toml, "tiny.es.toml", lint);
    if (!said) return {said.error().code};
    std::vector<std::string> codes;
    for (const Finding& finding : lint) codes.push_back(finding.code);
    std::sort(codes.begin(), codes.end());
    codes.erase(std::unique(codes.begin(), codes.end()), codes.end());
    return codes;
}

using Codes = std::vector<std::string>;

}  // namespace

TEST_CASE("a translation changes the words of a procedure and nothing else")
{
    Findings lint;
    const auto said = translated(english(), kSpanish, "tiny.es.toml", lint);
    REQUIRE(said);
    for (const Finding& finding : lint) FAIL(sentence(finding));
    CHECK(said->language == "es");
    CHECK(said->title == "Mínimo");
    const PlaceSpec& place = said->stages[0].places[0];
    CHECK(place.title == "En el elevador");
    CHECK(place.steps[0].say == "Ajustar {control} a {target}, con {= 0.1 bar} de diferencia como máximo.");
    CHECK(place.steps[0].caution->text == "Una bobina cae");
    CHECK(place.steps[0].caution->word == SignalWord::Caution);
    CHECK(place.steps[0].tries[1] == "Pedir ayuda");
    // What is stored stays the word that everybody stores.
    CHECK(place.steps[1].choices[1] == Choice{"bad", "Torcida", true, "Bajarla"});
    CHECK(place.steps[0].target == "lift.pressure");
    CHECK(said->edition == 3);
    CHECK(said->text == english().text);
    const auto head = translationHead(kSpanish);
    REQUIRE(head);
    CHECK(head->procedure == "tiny");
    CHECK(head->edition == 3);
    CHECK_FALSE(translationHead(kEnglish));
}

TEST_CASE("what is wrong with a translation is said")
{
    CHECK(codesOf(kSpanish).empty());
    CHECK(codesOf(with(kSpanish, "why = \"Demasiada lanza la bobina.\"\n", "")) == Codes{"lint.missing_key"});
    CHECK(codesOf(with(kSpanish, "id = \"set.lift.done\"", "id = \"set.lift.gone\"")) ==
          Codes{"translation.missing", "translation.unknown_id"});
    CHECK(codesOf(with(kSpanish, "a {target}", "a lo dicho")) == Codes{"translation.placeholder"});
    CHECK(codesOf(with(kSpanish, "{= 0.1 bar}", "{= 0,1 bar}")) == Codes{"translation.placeholder"});
    CHECK(codesOf(with(kSpanish, "Una bobina cae", "Cae %1 bobina")) == Codes{"translation.placeholder"});
    CHECK(codesOf(with(kSpanish, ", \"Pedir ayuda\"", "")) == Codes{"translation.missing"});
    CHECK(codesOf(with(kSpanish, "word = \"bad\"", "word = \"mal\"")) ==
          Codes{"translation.missing", "translation.unknown_id"});
    CHECK(codesOf(with(kSpanish, ", remedy = \"Bajarla\"", "")) == Codes{"lint.missing_key"});
    CHECK(codesOf(with(kSpanish, "title = \"Ajuste\"", "title = \"Ajuste\"\nat = \"lift\"")) ==
          Codes{"lint.unknown_key"});
    CHECK(codesOf(with(kSpanish, "edition = 3", "edition = 2")) == Codes{"translation.other_procedure"});
    CHECK(codesOf(with(kSpanish, "procedure = \"tiny\"", "procedure = \"other\"")) ==
          Codes{"translation.other_procedure"});
    CHECK(codesOf(with(kSpanish, "format = 1", "format = 9")) == Codes{"translation.not_a_translation"});
    CHECK(codesOf(kEnglish) == Codes{"translation.not_a_translation"});
    CHECK(codesOf("title = ") == Codes{"toml.syntax"});
}

TEST_CASE("what reads badly in a translation is a warning, and nothing worse")
{
    const auto warned = [](const std::string& toml) {
        Findings lint;
        REQUIRE(translated(english(), toml, "tiny.es.toml", lint));
        REQUIRE(lint.size() == 1);
        CHECK(lint.front().severity == Severity::Warn);
        return lint.front().code;
    };
    CHECK(warned(with(kSpanish, "\"En el elevador\"", "\"At the lift\"")) == "translation.same");
    CHECK(warned(with(kSpanish, "¿Cómo cuelga?", "¿Cómo cuelga")) == "translation.ending");
    CHECK(warned(with(kSpanish, "Una bobina cae", "Una  bobina cae")) == "translation.spacing");
    CHECK(warned(with(kSpanish, "Una bobina cae", "Una bobina cae sobre quien está debajo")) == "translation.too_long");
    // Counted are characters, not bytes: as many accented letters are no longer.
    const std::string most(longestTranslation(std::string("A roll falls").size()), 'a');
    std::string accented;
    for (std::size_t i = 0; i < most.size(); ++i) accented += "é";
    CHECK(codesOf(with(kSpanish, "Una bobina cae", accented)).empty());
    CHECK(codesOf(with(kSpanish, "Una bobina cae", accented + "é")) == Codes{"translation.too_long"});
}

namespace {

/// The translation, each of its tables saying which words it was made of.
std::string stamped()
{
    // Each stamp is what its own finding asks for.
    std::string toml = with(kSpanish, "language = \"es\"\n", "language = \"es\"\nof = \"?\"\n");
    for (const char* id : {"set", "set.lift", "set.lift.pressure", "set.lift.seen", "set.lift.done"}) {
        const std::string line = std::string("id = \"") + id + "\"\n";
        toml = with(toml, line, line + "of = \"?\"\n");
    }
    Findings lint;
    REQUIRE(translated(english(), toml, "tiny.es.toml", lint));
    REQUIRE(lint.size() == 6);
    for (const Finding& finding : lint) {
        CHECK(finding.code == "translation.stale");
        REQUIRE(finding.remedy.args.size() == 1);
        toml = with(toml, "of = \"?\"", "of = \"" + std::get<std::string>(finding.remedy.args[0]) + '"');
    }
    CHECK(codesOf(toml).empty());
    return toml;
}

Procedure after(const std::string& before, const std::string& words)
{
    Findings lint;
    const auto read = readProcedure(with(kEnglish, before, words), "tiny.toml", lint);
    REQUIRE(read);
    return *read;
}

}  // namespace

TEST_CASE("words that were made of others than now stand in the procedure are not laid over it")
{
    const std::string toml = stamped();
    const Procedure changed = after("A roll falls", "A roll falls: two people");
    Findings lint;
    const auto said = translated(changed, toml, "tiny.es.toml", lint);
    REQUIRE(said);
    REQUIRE(lint.size() == 1);
    CHECK(lint[0].code == "translation.stale");
    CHECK(lint[0].severity == Severity::Warn);
    CHECK(lint[0].subject.find("set.lift.pressure") != std::string::npos);
    const PlaceSpec& place = said->stages[0].places[0];
    CHECK(place.steps[0].caution->text == "A roll falls: two people");
    CHECK(place.steps[0].say == changed.stages[0].places[0].steps[0].say);
    CHECK(place.steps[1].say == "¿Cómo cuelga?");
    CHECK(said->language == "es");
}

TEST_CASE("a translation that says what it was made of fits an edition that has a step more, or less")
{
    const std::string toml = stamped();
    Procedure changed = after("edition = 3", "edition = 4");
    Findings none;
    CHECK(translated(changed, toml, "tiny.es.toml", none));
    CHECK(none.empty());
    StepSpec more = changed.stages[0].places[0].steps[2];
    more.id = "more";
    more.say = "One more";
    changed.stages[0].places[0].steps.push_back(more);
    changed.stages[0].places[0].steps.erase(changed.stages[0].places[0].steps.begin() + 1);
    Findings lint;
    const auto said = translated(changed, toml, "tiny.es.toml", lint);
    REQUIRE(said);
    CHECK_FALSE(stops(lint));
    REQUIRE(lint.size() == 2);
    CHECK(lint[0].code == "translation.missing");
    CHECK(lint[1].code == "translation.unknown_id");
    CHECK(said->stages[0].places[0].steps[2].say == "One more");
    // A table that does not say what it was made of is not trusted among those that do.
    Findings unsaid;
    const std::string line = "id = \"set.lift.done\"\n";
    const std::size_t at = toml.find(line) + line.size();
    std::string without = toml;
    without.erase(at, without.find('\n', at) + 1 - at);
    REQUIRE(translated(english(), without, "tiny.es.toml", unsaid));
    CHECK(stops(unsaid));
}
