// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdio>
#include <cstdlib>
#include <string>

// What a program that measures hands on to whoever draws the one table (tests/bench/bench.sh): lines of fields parted
// by tabs, in the file that $TAUTWEB_TOLD names. Without that nothing is handed on.
namespace taut::bench {

/// How ours is held against its floor or a fixed figure.
enum class Held : unsigned char {
    AtMostTimes,  ///< ours over the floor
    AtMostMore,   ///< ours less the floor
    AtMost,       ///< ours, of a fixed figure
    AtLeast,
};

struct Measured {
    std::string what;
    double ours = 0, floor = 0;  ///< in `unit`; without a floor 0
    double limit = 0;            ///< times, or in `unit`
    Held held = Held::AtMostTimes;
    const char* unit = "ms";

    [[nodiscard]] bool kept() const
    {
        switch (held) {
        case Held::AtMostTimes: return ours <= floor * limit;
        case Held::AtMostMore: return ours - floor <= limit;
        case Held::AtMost: return ours <= limit;
        case Held::AtLeast: return ours >= limit;
        }
        return false;
    }
};

inline void hand(const std::string& line)
{
    const char* name = std::getenv("TAUTWEB_TOLD");
    if (name == nullptr || *name == '\0') return;
    std::FILE* file = std::fopen(name, "a");
    if (file == nullptr || std::fputs((line + "\n").c_str(), file) < 0 || std::fclose(file) != 0) {
        std::fprintf(stderr, "%s cannot be written\n", name);
        std::exit(4);
    }
}

inline std::string figure(double value)
{
    char text[32];
    std::snprintf(text, sizeof text, "%.6g", value);
    return text;
}

/// A row of the table, here and for whoever draws it; false: its limit is not kept.
inline bool tell(const Measured& m)
{
    static constexpr const char* kHeld[] = {"times", "more", "most", "least"};
    const bool kept = m.kept();
    hand("row\t" + m.what + "\t" + figure(m.ours) + "\t" + figure(m.floor) + "\t" + figure(m.limit) + "\t" +
         kHeld[static_cast<unsigned char>(m.held)] + "\t" + m.unit + "\t" + (kept ? "yes" : "NO"));
    std::printf("%-52s %10.3f %-4s", m.what.c_str(), m.ours, m.unit);
    if (m.floor > 0) std::printf(" floor %10.3f %-4s %6.2f times", m.floor, m.unit, m.ours / m.floor);
    std::printf("%s\n", kept ? "" : "  NOT KEPT");
    std::fflush(stdout);
    return kept;
}

/// A point of what grows with a store: drawn, held against nothing.
inline void tellGrowth(const std::string& what, long long runs, double ours, double floor, const char* unit = "ms")
{
    hand("growth\t" + what + "\t" + std::to_string(runs) + "\t" + figure(ours) + "\t" + figure(floor) + "\t" + unit);
}

}  // namespace taut::bench
