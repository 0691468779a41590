// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <catch2/catch.hpp>
#include <cstdio>
#include <map>
#include <sstream>
#include <string>

// Programs that know nothing of ours, asked for a number.
namespace outside {

/// Standard output of a shell command; a failing command fails the test.
[[nodiscard]] inline std::string output(const std::string& command)
{
    std::FILE* pipe = popen(command.c_str(), "r");
    REQUIRE(pipe != nullptr);
    std::string text;
    char buffer[4096];
    while (const std::size_t n = std::fread(buffer, 1, sizeof buffer, pipe)) text.append(buffer, n);
    const int status = pclose(pipe);
    CAPTURE(command, text);
    REQUIRE(status == 0);
    return text;
}

/// GNU units: how many `to` make `from`. It knows the definitions of the 1959 yard and pound and of the SI.
[[nodiscard]] inline double units(const std::string& from, const std::string& to)
{
    return std::stod(output("LC_ALL=C units --terse --digits 15 '" + from + "' '" + to + "'"));
}

/// A number that the GNU Scientific Library found (referee/gsl_referee.cpp says how).
[[nodiscard]] inline double gsl(const std::string& name)
{
    static const std::map<std::string, double> all = [] {
        std::map<std::string, double> found;
        std::istringstream lines(output("'" TAUTWEB_GSL_REFEREE "'"));
        std::string key;
        double value = 0;
        while (lines >> key >> value) found[key] = value;
        return found;
    }();
    CAPTURE(name);
    const auto at = all.find(name);
    REQUIRE(at != all.end());
    return at->second;
}

}  // namespace outside
