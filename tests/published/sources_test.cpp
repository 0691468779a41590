// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>

#include "core/physics/formula.h"

TEST_CASE("every source that a formula names is listed with its title")
{
    std::ifstream file(TAUTWEB_SOURCE_DIR "/tests/published/README.md");
    std::stringstream text;
    text << file.rdbuf();
    const std::string readme = text.str();
    const auto heading = readme.find("## Sources");
    REQUIRE(heading != std::string::npos);

    const std::regex id("S[0-9]+[a-z]?");
    std::set<std::string> listed;
    std::istringstream lines(readme.substr(heading));
    for (std::string line; std::getline(lines, line);) {
        const std::string first = line.substr(0, line.find('|', 1));
        for (std::sregex_iterator i(first.begin(), first.end(), id), end; i != end; ++i) listed.insert(i->str());
    }
    CHECK(listed.size() > 50);
    std::size_t named = 0;
    for (const taut::physics::Formula& formula : taut::physics::formulas()) {
        const std::string source(formula.source);
        for (std::sregex_iterator i(source.begin(), source.end(), id), end; i != end; ++i) {
            CAPTURE(formula.id, i->str());
            CHECK(listed.count(i->str()) == 1);
            ++named;
        }
    }
    CHECK(named > 60);
}
