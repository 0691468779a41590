// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/seal/chain.h"
#include "core/seal/words.h"
#include "tests/core/seal/walk.h"

using namespace taut;
using namespace taut::run;

namespace {

/// The texts of these words, as a logbook has them.
seal::TextBySha textsOf(const std::vector<seal::Parted::Words>& words)
{
    return [words](std::string_view what, const std::string& sha256) {
        for (const auto& [kind, source] : words)
            if (kind == what && source.sha256 == sha256) return source.text;
        return std::string();
    };
}

/// A run with everything that makes another target set or plan.
Run walked(const char* roll = "420 mm")
{
    mini::Walk walk;
    walk.answerUpTo("set.lift.setting/unwind");
    walk.must(ChangeRoll{mini::otherRoll("R0999", roll), Length::si(0.41)});
    walk.answerAll();
    walk.must(SignOff{""});
    return *walk.run;
}

seal::Seal sealOf(std::uint64_t seq, const seal::Document& document)
{
    seal::Seal seal;
    seal.seq = seq;
    seal.kind = document.kind;
    return seal;
}

std::vector<std::string> shasOf(const seal::Parted& parted)
{
    std::vector<std::string> all;
    for (const auto& [what, source] : parted.words) all.push_back(source.sha256);
    return all;
}

}  // namespace

TEST_CASE("a document without its words gives with them every event that it gave before")
{
    const Run run = walked();
    const seal::Document whole = seal::documentOf(run);
    const seal::Parted parted = seal::partWords(whole);
    REQUIRE(parted.words.size() == 2);
    CHECK(parted.words[0].what == "target_words");
    CHECK(parted.words[0].source.id == run.sources().press.id);
    CHECK(parted.words[1].what == "plan_words");
    CHECK(parted.words[1].source.id == run.sources().procedure.id);
    const auto read = seal::read(seal::write(parted.document));
    REQUIRE(read);
    CHECK(seal::write(parted.document).size() * 2 < seal::write(whole).size());
    const auto before = seal::eventsOf(whole);
    const auto after = seal::eventsOf(*read, textsOf(parted.words));
    REQUIRE(before);
    REQUIRE(after);
    REQUIRE(after->size() == before->size());
    for (std::size_t i = 0; i < before->size(); ++i) CHECK((*after)[i].json() == (*before)[i].json());
    CHECK(Run::fold(*after).targets() == run.targets());
    CHECK(Run::fold(*after).plan() == run.plan());
}

TEST_CASE("words hold no figure of a run, and the document keeps each beside the name of its target")
{
    const seal::Document whole = seal::documentOf(walked());
    const seal::Parted parted = seal::partWords(whole);
    const Json words = Json::parse(parted.words[0].source.text).value();
    const Json& told = parted.document.body["target_sets"].items()[0];
    CHECK(told["since"]["what"].text() == "target_words");
    CHECK(told["since"]["sha256"].text() == hex(sha256(parted.words[0].source.text)));
    CHECK(words["from"].isNull());
    CHECK(words["findings"].items().empty());
    const Json::Array& targets = whole.body["target_sets"].items()[0]["targets"].items();
    REQUIRE(words["targets"].items().size() == targets.size());
    std::size_t figures = 0;
    for (std::size_t i = 0; i < targets.size(); ++i) {
        const Json& target = words["targets"].items()[i];
        INFO(target["id"].text());
        if (!target["name"].isNull()) CHECK(target["name"] == targets[i]["name"]);
        CHECK(target["value"].isNull());
        CHECK(target["text"].isNull());
        CHECK(target["window"]["low"].isNull());
        for (const Json& term : target["because"].items()) CHECK_FALSE(term["value"].isNumber());
        for (const Json& one : told["targets"].items()) {
            if (one["id"] != target["id"]) continue;
            CHECK(one["value"] == targets[i]["value"]);
            CHECK(one["text"] == targets[i]["text"]);
            CHECK(one["window"]["high"] == targets[i]["window"]["high"]);
            ++figures;
        }
    }
    CHECK(figures * 10 > targets.size() * 9);
    CHECK(parted.words[0].source.text.find("\"si\":") == std::string::npos);
    CHECK(parted.words[1].source.text.find("\"si\":") == std::string::npos);
}

TEST_CASE("words hold no name of a roll, a job or a substrate: they are sealed for other runs too")
{
    const auto stated = [](const Json& value, const std::string& name, const auto& self) -> bool {
        if (value.isString() && value.text().find(name) != std::string::npos) return true;
        const auto& items = value.items();
        const auto& members = value.members();
        return std::any_of(items.begin(), items.end(), [&](const Json& item) { return self(item, name, self); }) ||
               std::any_of(members.begin(), members.end(), [&](const auto& m) { return self(m.second, name, self); });
    };
    seal::Document whole = seal::documentOf(walked());
    // As where something is said of what a run was made with, by its name.
    Json::Array sets = whole.body["target_sets"].items();
    Json::Array targets = sets[0]["targets"].items();
    std::size_t at = 0;
    for (const char* input : {"roll", "job", "substrate"}) {
        const std::string name = whole.body["inputs"][input]["id"].text();
        REQUIRE(name.size() > 3);
        const Json say = Json::object().set("source", "%1 is bowed").set("args", Json::array().add(name));
        Json finding = Json::object();
        finding.set("code", "bowed").set("subject", std::string(input) + "." + name);
        finding.set("text", name + " is bowed").set("text_say", say);
        targets.at(at).set("cannot", finding).set("advice", name + " is bowed").set("advice_say", say);
        ++at;
    }
    sets[0].set("targets", Json(targets));
    whole.body.set("target_sets", Json(sets));
    const seal::Parted parted = seal::partWords(whole);
    REQUIRE(parted.words.size() == 2);
    for (const char* input : {"roll", "job", "substrate"})
        for (const auto& [what, source] : parted.words) {
            INFO(input << " in " << what);
            const Json words = Json::parse(source.text).value();
            CHECK_FALSE(stated(words, whole.body["inputs"][input]["id"].text(), stated));
        }
    // The sentence itself is everybody's.
    CHECK(parted.words[0].source.text.find("%1 is bowed") != std::string::npos);
    const auto again = seal::withWords(parted.document.body["target_sets"].items(), textsOf(parted.words));
    REQUIRE(again);
    CHECK(again->front() == sets[0]);
}

TEST_CASE("runs of one press name the same words, also where sentences go by their figures, and others their own")
{
    mini::Walk one;
    one.must(Abandon{"enough seen"});
    const seal::Parted first = seal::partWords(seal::documentOf(*one.run));
    const auto documentWith = [&](std::string roll) {
        Sources sources = mini::sources();
        sources.roll = sourceOf("R0999", 0, std::move(roll));
        mini::Walk walk;
        walk.run.reset();
        const auto began = begin(basisFor(sources, {}).value(), {"north-2025-11-25-02", "pc-1", false, {}, nullptr},
                                 walk.stamp(walk.inka), walk.inka);
        REQUIRE(began);
        return seal::documentOf(Run::fold(std::span(&*began, 1)));
    };
    // Another diameter is another figure, and no other word.
    std::string wider = mini::sources().roll.text;
    const std::size_t at = wider.find("\"500 mm\"");
    REQUIRE(at != std::string::npos);
    wider.replace(at, 8, "\"499 mm\"");
    CHECK(shasOf(seal::partWords(documentWith(wider))) == shasOf(first));
    // A roll of unknown length has other sentences: words of its own, unless there are some that nearly do.
    const seal::Document other = documentWith(mini::otherRoll("R0999", "420 mm"));
    const seal::Parted own = seal::partWords(other);
    CHECK(own.words[0].source.sha256 != first.words[0].source.sha256);
    const auto known = [&](std::string_view what, const std::string& id) {
        std::vector<std::string> texts;
        for (const auto& [kind, source] : first.words)
            if (kind == what && source.id == id) texts = {"{}", source.text, "[]", "no JSON"};
        return texts;
    };
    const seal::Parted shared = seal::partWords(other, known);
    CHECK(shasOf(shared) == shasOf(first));
    const std::size_t size = seal::write(shared.document).size(), least = seal::write(own.document).size();
    CHECK(size > least);
    CHECK(size < least + seal::kWorth);
    const auto events = seal::eventsOf(shared.document, textsOf(shared.words));
    REQUIRE(events);
    CHECK(events->front().json() == seal::eventsOf(other)->front().json());
    // Words of which nothing serves are not taken.
    const seal::Parted fresh = seal::partWords(other, [](auto, const auto&) { return std::vector<std::string>{"{}"}; });
    CHECK(shasOf(fresh)[0] == shasOf(own)[0]);
    // And an already parted document has nothing left to part.
    CHECK(seal::partWords(first.document).words.empty());
    CHECK(seal::write(seal::partWords(first.document).document) == seal::write(first.document));
}

TEST_CASE("words that are not to be had, are others or are none end in a sentence, never in half a run")
{
    const seal::Parted parted = seal::partWords(seal::documentOf(walked()));
    const auto codeOf = [&](const seal::TextBySha& texts) {
        const auto events = seal::eventsOf(parted.document, texts);
        return events ? std::string() : events.error().code;
    };
    CHECK(codeOf(textsOf(parted.words)).empty());
    CHECK(codeOf({}) == "document.words");
    CHECK(codeOf(textsOf({parted.words[0]})) == "document.words");
    CHECK(codeOf([&](std::string_view what, const std::string& sha) {
              return textsOf(parted.words)(what, sha) + " ";
          }) == "document.words");
    // A hash that holds, of words that this document was not told by.
    const auto other = [&](const std::string& text) {
        seal::Document document = parted.document;
        Json::Array sets = document.body["target_sets"].items();
        sets[0].set("since", Json::object().set("what", "target_words").set("sha256", hex(sha256(text))));
        document.body.set("target_sets", Json(sets));
        const auto events = seal::eventsOf(document, [&](std::string_view what, const std::string& sha) {
            return what == "target_words" ? text : textsOf(parted.words)(what, sha);
        });
        return events ? std::string() : events.error().code;
    };
    CHECK(other("{}") == "document.broken");
    CHECK(other("no JSON") == "json.broken");
    CHECK(other("[]") == "document.broken");
    CHECK(other(R"({"from":null,"targets":[],"schedules":[],"findings":[]})") == "document.broken");
}

TEST_CASE("a chain in which a run names words that nobody stated before it is told so")
{
    const seal::Parted parted = seal::partWords(seal::documentOf(walked()));
    const auto definition = [&](std::size_t i) {
        return seal::definitionOf(parted.words[i].what, parted.words[i].source);
    };
    seal::WordsCheck inOrder;
    CHECK_FALSE(inOrder.next(sealOf(1, definition(0)), definition(0)));
    CHECK_FALSE(inOrder.next(sealOf(2, definition(1)), definition(1)));
    CHECK_FALSE(inOrder.next(sealOf(3, parted.document), parted.document));

    seal::WordsCheck lacking;
    CHECK_FALSE(lacking.next(sealOf(1, definition(1)), definition(1)));
    const auto missing = lacking.next(sealOf(2, parted.document), parted.document);
    REQUIRE(missing);
    CHECK(missing->code == "document.words");
    CHECK(missing->subject == "seal 2");

    // The hash that a definition states is not taken at its word.
    seal::WordsCheck forged;
    seal::Document other = definition(0);
    other.body.set("text", "{}");
    CHECK_FALSE(forged.next(sealOf(1, other), other));
    CHECK_FALSE(forged.next(sealOf(2, definition(1)), definition(1)));
    CHECK(forged.next(sealOf(3, parted.document), parted.document));
    // And so says whoever checks a whole chain.
    seal::Seal alone = sealOf(1, parted.document);
    alone.document = seal::write(parted.document);
    alone.link = seal::linkAfter(alone.previous, alone.document);
    seal::ChainCheck chain;
    chain.next(alone, {});
    const Findings findings = chain.finish();
    CHECK(std::any_of(findings.begin(), findings.end(), [](const Finding& f) { return f.code == "document.words"; }));
    // As words of another kind they are others.
    seal::WordsCheck confused;
    other = definition(0);
    other.body.set("what", "job");
    CHECK_FALSE(confused.next(sealOf(1, other), other));
    CHECK_FALSE(confused.next(sealOf(2, definition(1)), definition(1)));
    CHECK(confused.next(sealOf(3, parted.document), parted.document));
}

TEST_CASE("a step names the event of its answer and is given whole again")
{
    mini::Walk walk;
    walk.answerUpTo("set.lift.setting/unwind");
    walk.must(Answer{{"set.lift.setting/unwind"}, "5.9 bar", {}});
    walk.must(AcceptDeviation{{"set.lift.setting/unwind"}, "gauge is being calibrated", walk.accepts});
    const seal::Document document = seal::documentOf(*walk.run);
    const Json::Array& told = document.body["steps"].items();
    const Json::Array whole = seal::stepsOf(document.body);
    REQUIRE(whole.size() == told.size());
    bool read = false, open = false, deviated = false;
    for (std::size_t i = 0; i < told.size(); ++i) {
        const StepStanding standing = walk.run->standing({whole[i]["step"].text()});
        CHECK_FALSE(whole[i].has("event"));
        // Who read a value that was accepted, and when, does not stand in the event that accepted it.
        const bool said = standing.n > 0 && standing.state != StepState::Deviated;
        deviated = deviated || standing.state == StepState::Deviated;
        CHECK(told[i].has("event") == said);
        CHECK(told[i].has("entered") == (standing.state == StepState::Deviated));
        if (standing.n > 0) {
            CHECK(whole[i]["at"].text() == utcText(standing.at));
            CHECK(whole[i]["by"].text() == standing.by);
        }
        open = open || standing.n == 0;
        if (!standing.answer) continue;
        CHECK(whole[i]["entered"].text() == standing.answer->entered);
        CHECK(whole[i]["verdict"].text() == verdict::verdictWord(standing.answer->judgement.verdict));
        CHECK(whole[i]["doubtful"] == Json(standing.answer->judgement.doubtful));
        if (!standing.answer->value) continue;
        read = true;
        CHECK(whole[i]["value"].number() == standing.answer->value->si());
        const auto& high = standing.answer->window.high;
        CHECK(whole[i]["high"] == (high ? Json(high->si()) : Json()));
        CHECK(whole[i]["uncertainty"].number() == standing.answer->uncertainty);
    }
    CHECK(read);
    CHECK(open);
    CHECK(deviated);
    // An event that is not there is not read.
    Json body = Json::object();
    body.set("events", Json::array()).set("steps", Json::array().add(Json::object().set("step", "a").set("event", 9)));
    CHECK(seal::stepsOf(body).front()["event"].integer() == 9);
}
