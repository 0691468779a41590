// SPDX-License-Identifier: GPL-3.0-or-later
// No value without where it comes from: what formulas, targets and their inputs name is listed in README.md or stands
// in a file that a shop can open.
#include "tests/published/sources.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <regex>
#include <set>

#include "core/inputs/policy.h"
#include "core/physics/formula.h"
#include "core/targets/target.h"
#include "tests/core/targets/demo_inputs.h"

using namespace taut;

namespace {

std::vector<std::string> idsIn(const std::string& text)
{
    static const std::regex id("\\bS[0-9]+[a-z]?\\b");
    std::vector<std::string> all;
    for (std::sregex_iterator i(text.begin(), text.end(), id), end; i != end; ++i) all.push_back(i->str());
    return all;
}

std::vector<std::string> namesIn(const char* folder)
{
    std::vector<std::string> all;
    for (const auto& entry :
         std::filesystem::directory_iterator(TAUTWEB_SOURCE_DIR "/resources/" + std::string(folder)))
        if (entry.path().extension() == ".toml") all.push_back(entry.path().stem().string());
    std::sort(all.begin(), all.end());
    REQUIRE_FALSE(all.empty());
    return all;
}

/// Says where it comes from: a listed source, a formula of ours (which names its own), one of the words of the README.
bool accounted(const std::string& said)
{
    static const auto listed = sources::list();
    static const std::vector<std::string> words = sources::words();
    static const std::regex formula("\\b[A-Z][0-9]+(\\.[a-z_]+)?\\b");
    for (const std::string& id : idsIn(said))
        if (listed.count(id) == 0) return false;
    if (!idsIn(said).empty()) return true;
    for (std::sregex_iterator i(said.begin(), said.end(), formula), end; i != end; ++i)
        for (const physics::Formula& f : physics::formulas())
            if (f.id == i->str() || f.id.substr(0, f.id.find('.')) == i->str()) return true;
    return std::any_of(words.begin(), words.end(),
                       [&said](const std::string& w) { return said.find(w) != std::string::npos; });
}
/// As entered with a tension range.
bool entered(const inputs::Inputs& in, const std::string& said)
{
    return (in.job->tension && in.job->tension->source == said) ||
           (in.substrate->tension && in.substrate->tension->source == said);
}

/// Every press with every job and every roll of the demo shop, also those that do not belong together.
template <class See>
void eachTarget(const See& see)
{
    for (const std::string& press : namesIn("presses"))
        for (const std::string& job : namesIn("demo/jobs"))
            for (const std::string& roll : namesIn("demo/rolls")) {
                const inputs::Inputs in = demo::inputs(press, job, roll);
                const targets::Targets all = targets::computeTargets(in);
                REQUIRE(all.all.size() > 40);
                CAPTURE(press, job, roll);
                for (const targets::Target& target : all.all)
                    if (const targets::Ready* ready = target.ready()) see(in, target, *ready);
            }
}

}  // namespace

TEST_CASE("every source that is listed has a title, an edition or a dash, and a place or a dash", "[sources]")
{
    const auto listed = sources::list();
    CHECK(listed.size() > 80);
    for (const auto& [id, entry] : listed) {
        CAPTURE(id);
        CHECK(entry.title.size() > 3);
        CHECK_FALSE(entry.edition.empty());
        CHECK_FALSE(entry.place.empty());
    }
}

TEST_CASE("every source that a formula names is listed with its title", "[sources]")
{
    const auto listed = sources::list();
    std::size_t named = 0;
    for (const physics::Formula& formula : physics::formulas()) {
        CAPTURE(formula.id, formula.source);
        CHECK(accounted(std::string(formula.source)));
        for (const std::string& id : idsIn(std::string(formula.source))) {
            CAPTURE(id);
            CHECK(listed.count(id) == 1);
            ++named;
        }
    }
    CHECK(named > 60);
}

TEST_CASE("every policy row names a listed source or says that it has none", "[sources]")
{
    for (const inputs::PolicyRow& row : inputs::policyRows()) {
        CAPTURE(row.name, row.source);
        CHECK(accounted(std::string(row.source)));
    }
}

TEST_CASE("words that name nothing do not count as a source", "[sources]")
{
    CHECK(accounted("S24"));
    CHECK(accounted("policy"));
    CHECK_FALSE(accounted(""));
    CHECK_FALSE(accounted("a colleague"));
    CHECK_FALSE(accounted("S24, S999"));
    CHECK_FALSE(accounted("Z9, somewhere"));
}

TEST_CASE("every target of every demo input says its formula, its source and where each input comes from", "[sources]")
{
    const auto listed = sources::list();
    std::size_t ready = 0;
    eachTarget([&](const inputs::Inputs& in, const targets::Target& target, const targets::Ready& is) {
        CAPTURE(target.id);
        const targets::Because& because = is.because;
        const std::set<std::string> words{"stated", "rule", "lookup"};
        CHECK((words.count(because.formula.str()) == 1 || physics::findFormula(because.formula) != nullptr));
        CAPTURE(because.source);
        // Else: name a source of the README, or add the words to its table.
        CHECK((accounted(because.source.str()) || entered(in, because.source.str())));
        for (const targets::Given& given : because.given) {
            CAPTURE(given.symbol);
            CHECK_FALSE(given.from.empty());
        }
        if (is.window.low || is.window.high) {
            CHECK(is.window.rule != targets::Rule::None);
            CHECK_FALSE(is.window.source.source.empty());
            for (const std::string& id : idsIn(is.window.source.source.str())) CHECK(listed.count(id) == 1);
        }
        ++ready;
    });
    CHECK(ready > 3000);
}

TEST_CASE("what is missing or cannot be names the source of what would give it", "[sources]")
{
    std::size_t open = 0;
    const auto check = [&open](const inputs::Inputs& in) {
        for (const targets::Target& target : targets::computeTargets(in).all) {
            const auto* needs = std::get_if<targets::Needs>(&target.state);
            const auto* cannot = std::get_if<targets::Cannot>(&target.state);
            if (needs == nullptr && cannot == nullptr) continue;
            const std::string source = (needs != nullptr ? needs->source : cannot->source).str();
            CAPTURE(target.id, source);
            CHECK(accounted(source));
            CHECK_FALSE((needs != nullptr ? needs->advice : cannot->advice).empty());
            ++open;
        }
    };
    for (const demo::Case& c : demo::cases()) check(demo::inputs(c.press, c.job, c.roll));
    check(inputs::Inputs{});
    CHECK(open > 50);
}

TEST_CASE("an input that names another target names one that there is", "[sources]")
{
    for (const demo::Case& c : demo::cases()) {
        const targets::Targets all = targets::computeTargets(demo::inputs(c.press, c.job, c.roll));
        for (const targets::Target& target : all.all) {
            if (target.ready() == nullptr) continue;
            for (const targets::Given& given : target.ready()->because.given) {
                if (!given.from.starts_with("target:")) continue;
                CAPTURE(target.id, given.from);
                // A roller's name may hold a space, and words may follow the id.
                const std::string named = given.from.str().substr(7) + ' ';
                CHECK(std::any_of(all.all.begin(), all.all.end(),
                                  [&](const targets::Target& t) { return named.rfind(t.id + ' ', 0) == 0; }));
            }
        }
    }
}

TEST_CASE("a target computed by a formula gives every argument of it", "[sources]")
{
    eachTarget([](const inputs::Inputs&, const targets::Target& target, const targets::Ready& is) {
        const physics::Formula* formula = physics::findFormula(is.because.formula);
        if (formula == nullptr) return;
        CAPTURE(target.id, formula->id);
        CHECK(is.because.given.size() == formula->arguments.size());
        CHECK(is.because.symbols == formula->symbols);
    });
}
