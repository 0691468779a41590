// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/made/history_support.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>

#include "core/base/clock.h"
#include "core/logbook/logbook.h"
#include "core/seal/document.h"
#include "core/units/plain.h"

namespace taut::app::test {

namespace fs = std::filesystem;

fs::path resources() { return fs::path(TAUTWEB_SOURCE_DIR) / "resources"; }

made::Wish brief(std::size_t runs, double strength)
{
    made::Wish wish;
    wish.brief = true;
    wish.runs = runs;
    wish.years = 1;
    wish.drift = wish.lot = wish.shift = strength;
    return wish;
}

History::History(const made::Wish& wish)
{
    std::string name = (fs::temp_directory_path() / "tautweb-test-XXXXXX").string();
    REQUIRE(::mkdtemp(name.data()) != nullptr);
    folder = name;
    file = folder / "made.logbook";
    auto done = made::makeHistory(wish, resources(), file);
    if (!done) FAIL(sentence(done.error()));
    made = *std::move(done);
    auto opened = logbook::openReader(file);
    if (!opened) FAIL(sentence(opened.error()));
    reader = *std::move(opened);
}

History::~History()
{
    reader.reset();
    std::error_code error;
    fs::remove_all(folder, error);
}

std::vector<Json> History::runs() const
{
    std::vector<Json> all;
    const auto anchor = reader->anchor();
    REQUIRE(anchor);
    for (std::uint64_t seq = 1; seq <= anchor->count; ++seq) {
        const auto seal = reader->seal(seq);
        REQUIRE(seal);
        if (seal->kind != seal::Kind::Run) continue;
        auto document = seal::read(seal->document);
        REQUIRE(document);
        all.push_back(std::move(document->body));
    }
    return all;
}

const History& usual()
{
    static const History kUsual(brief(900));
    return kUsual;
}

const History& nothingToFind()
{
    static const History kNothing(brief(900, 0));
    return kNothing;
}

const History& whole()
{
    static const History kWhole([] {
        made::Wish wish;
        wish.runs = 16;
        return wish;
    }());
    return kWhole;
}

std::vector<Fact> factsOf(const History& history)
{
    std::vector<Fact> facts;
    for (const Json& body : history.runs()) {
        Fact fact;
        const Json& inputs = body["inputs"];
        fact.north = inputs["press"]["id"].text() == "north";
        fact.paper = inputs["substrate"]["id"].text() == made::kBadSubstrate;
        fact.badLot = inputs["roll"]["text"].text().find("10" + std::string(made::kBadLot)) != std::string::npos;
        fact.begunMs = *readUtc(body["begun"].text());
        const std::int64_t local = fact.begunMs + *readOffset(body["offset"].text()) * made::kMinuteMs;
        const auto hour = local % made::kDayMs / (60 * made::kMinuteMs);
        fact.night = hour >= 22 || hour < 6;
        bool between = body["state"].text() != "completed";
        std::int64_t before = fact.begunMs;
        for (const Json& event : body["events"].items()) {
            const std::string what = event["what"].text(), step = event["step"].text();
            const std::int64_t at = *readUtc(event["at"].text());
            if (what == "answered" && event["verdict"].text() == "outside" && step != "tension.set.unwind")
                ++fact.outside;
            if (what == "answered" && step.starts_with("tension."))
                fact.tensionSeconds += static_cast<double>(at - before) / 1000;
            before = at;
            between = between || what == "interrupted" || what == "repeated" || what == "handed_over" ||
                      what == "deviated" || event["verdict"].text() == "outside";
            if (what == "answered" && step == "tension.set.unwind" && event["verdict"].text() != "outside")
                fact.setting = event["value"].number() / ((event["low"].number() + event["high"].number()) / 2);
        }
        if (between) fact.tensionSeconds = 0;
        facts.push_back(fact);
    }
    return facts;
}

Slope slopeOf(const std::vector<double>& x, const std::vector<double>& y)
{
    const auto n = static_cast<double>(x.size());
    double mx = 0, my = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        mx += x[i] / n;
        my += y[i] / n;
    }
    double xx = 0, xy = 0, yy = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        xx += (x[i] - mx) * (x[i] - mx);
        xy += (x[i] - mx) * (y[i] - my);
        yy += (y[i] - my) * (y[i] - my);
    }
    const double slope = xy / xx;
    return {slope, std::sqrt((yy - slope * xy) / (n - 2) / xx)};
}

}  // namespace taut::app::test
