// SPDX-License-Identifier: GPL-3.0-or-later
// A run that is read in another language than its procedure's: what was read is what stays.
#include <catch2/catch.hpp>

#include "core/base/crypto.h"
#include "core/report/report.h"
#include "core/seal/document.h"
#include "core/units/plain.h"
#include "tests/core/seal/walk.h"

using namespace taut;
using namespace taut::run;
using mini::Walk;

namespace {

constexpr const char* kSpanish = R"toml(format = 1
[translation]
procedure = "mini"
edition = 1
language = "es"
title = "Mínimo"
purpose = "Tan corto que se recorre muchas veces"
[[stage]]
id = "safety"
title = "Seguridad"
[[stage]]
id = "set"
title = "Ajuste"
[[place]]
id = "safety.walk"
title = "Dar la vuelta"
[[place]]
id = "set.lift"
title = "En el elevador"
[[step]]
id = "safety.walk.clear"
say = "Todos están fuera y ningún paro está enclavado"
why = "Un nip atrapa una mano."
[[step]]
id = "safety.walk.guard"
say = "{guard} está cerrado"
why = "Un nip atrapa una mano."
[[step]]
id = "safety.walk.done"
say = "Recorrido"
[[step]]
id = "set.lift.pressure"
say = "Ajustar {control} a {target}"
[[step]]
id = "set.lift.setting"
say = "{zone}: ajustar {control} a {target}"
[[step]]
id = "set.lift.seen"
say = "¿Cómo se ve la banda?"
choices = [{ word = "good", say = "Bien" }, { word = "bad", say = "Mal", remedy = "Arreglarla" }]
[[step]]
id = "set.lift.done"
say = "Ajustado"
)toml";

Walk spanish()
{
    Walk walk;
    Sources sources = mini::sources();
    sources.translation = sourceOf("es", 0, kSpanish);
    const auto basis = basisFor(sources, {});
    if (!basis) FAIL(sentence(basis.error()));
    const auto event =
        begin(*basis, {"north-2025-11-25-01", "pc-1", false, {}, nullptr}, walk.stamp(walk.inka), walk.inka);
    REQUIRE(event);
    walk.run = Run::fold(std::span(&*event, 1));
    return walk;
}

std::string titleOf(const Run& run) { return plain(run.plan().stages.front().title); }

}  // namespace

TEST_CASE("a run begun in another language is read in it, also when it is taken up again and its roll is changed")
{
    Walk walk = spanish();
    CHECK(titleOf(*walk.run) == "Seguridad");
    const auto stored = eventFrom(walk.run->events().front().json());
    REQUIRE(stored);
    walk.run = Run::fold(std::span(&*stored, 1));
    CHECK(walk.run->sources().translation.id == "es");
    CHECK(walk.run->sources().translation.text == kSpanish);
    walk.answerAll();
    walk.must(ChangeRoll{mini::otherRoll("R0999", "420 mm"), {}});
    CHECK(titleOf(*walk.run) == "Seguridad");
    CHECK(walk.run->sources().translation.id == "es");
}

TEST_CASE("the sealed document names the language in which the steps were read, and its events come back")
{
    Walk walk = spanish();
    walk.answerAll();
    walk.must(SignOff{""});
    const seal::Document document = seal::documentOf(*walk.run);
    CHECK(document.body["language"].text() == "es");
    CHECK(document.body["procedure"]["language"].text() == "es");
    CHECK(document.body["procedure"]["language_sha256"].text() == hex(sha256(kSpanish)));
    CHECK(document.body.dump().find("language_text") == std::string::npos);
    const auto events = seal::eventsOf(document, {});
    REQUIRE(events);
    const Run again = Run::fold(*events);
    CHECK(again.plan() == walk.run->plan());
    CHECK(again.sources().translation.id == "es");
    CHECK(again.sources().translation.sha256 == walk.run->sources().translation.sha256);
    CHECK(again.sources().translation.text.empty());
    CHECK(seal::documentOf(again).body["language"].text() == "es");

    Walk own;
    own.answerAll();
    own.must(SignOff{""});
    const seal::Document english = seal::documentOf(*own.run);
    CHECK(english.body["language"].text() == "en");
    CHECK(english.body["procedure"]["language_sha256"].isNull());
    CHECK_FALSE(english.body["events"].items().front()["procedure"].has("language"));
}

TEST_CASE("a run is not begun with a translation of another edition, or one that lost a placeholder")
{
    Sources sources = mini::sources();
    std::string text = kSpanish;
    text.replace(text.find("edition = 1"), 11, "edition = 2");
    sources.translation = sourceOf("es", 0, text);
    auto basis = basisFor(sources, {});
    REQUIRE_FALSE(basis);
    CHECK(basis.error().code == "translation.other_procedure");
    text = kSpanish;
    text.replace(text.find("{guard} está"), 7, "Todo");
    sources.translation = sourceOf("es", 0, text);
    basis = basisFor(sources, {});
    REQUIRE_FALSE(basis);
    CHECK(basis.error().code == "translation.placeholder");
}
