// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <catch2/catch.hpp>
#include <cmath>
#include <cstdio>
#include <string>
#include <utility>
#include <vector>

// One call both checks a figure from outside and writes it down. The rows of a whole run are the table of checks in
// README.md (evidence_test.cpp prints and compares it), so that it cannot say anything that no test says.
namespace evidence {

/// How far our result may lie from the value: a share of the value, or so much in the value's unit.
struct Tolerance {
    double share = 0;
    double margin = 0;
    [[nodiscard]] bool holds(double ours, double value) const
    {
        return std::abs(ours - value) <= std::fmax(margin, share * std::abs(value));
    }
};
[[nodiscard]] constexpr Tolerance share(double s) { return {s, 0}; }
[[nodiscard]] constexpr Tolerance within(double margin) { return {0, margin}; }
inline constexpr Tolerance kExact{};

/// Seven significant digits, whole numbers from ten million on. Ties, which another compiler might round the other way,
/// are pushed upwards first.
[[nodiscard]] inline std::string figure(double value, int digits = 7)
{
    char text[64];
    const double pushed = value * (1 + 1e-13);
    if (std::abs(value) >= 1e7)
        std::snprintf(text, sizeof text, "%.0f", pushed);
    else
        std::snprintf(text, sizeof text, "%.*g", digits, pushed);
    std::string said = text;
    if (const auto e = said.find('e'); e != std::string::npos) {  // 1e-09 is written 1e-9
        const bool minus = said[e + 1] == '-';
        said = said.substr(0, e + 1) + (minus ? "-" : "") + std::to_string(std::abs(std::stoi(said.substr(e + 1))));
    }
    return said;
}
[[nodiscard]] inline std::string withUnit(const std::string& number, const std::string& unit)
{
    return unit.empty() ? number : number + (unit == "%" ? " %" : " " + unit);
}

/// A line of the table. The edition is not here: it stands once, beside the source in the README.
struct Row {
    std::string topic, formula, source, section, kind, asked, value, tolerance, ours;
    bool good = true;
    friend auto operator<=>(const Row&, const Row&) = default;
};
/// All rows of this run.
[[nodiscard]] inline std::vector<Row>& rows()
{
    static std::vector<Row> all;
    return all;
}

/// Where a group of checks comes from: source ids as the README lists them ("S18a, S20") and the place in them.
class Page {
public:
    Page(std::string topic, std::string source, std::string section, std::string kind)
        : m_from{std::move(topic), {}, std::move(source), std::move(section), std::move(kind), {}, {}, {}, {}, true}
    {}

    /// `formula` is an id of the catalogue, or "–". `asked` says the case; value, margin and ours are in `unit`.
    void check(const std::string& formula, const std::string& asked, double ours, double value, const std::string& unit,
               Tolerance tolerance) const
    {
        std::string allowed = "exact";
        if (tolerance.margin > 0)
            allowed = withUnit(figure(tolerance.margin, 3), unit);
        else if (tolerance.share >= 1e-4)
            allowed = figure(100 * tolerance.share, 3) + " %";
        else if (tolerance.share > 0)
            allowed = figure(tolerance.share, 3) + " relative";
        add({m_from.topic, formula, m_from.source, m_from.section, m_from.kind, asked, withUnit(figure(value), unit),
             allowed, withUnit(figure(ours), unit), tolerance.holds(ours, value)});
    }
    /// Ours must lie between two printed figures.
    void between(const std::string& formula, const std::string& asked, double ours, double low, double high,
                 const std::string& unit) const
    {
        add({m_from.topic, formula, m_from.source, m_from.section, m_from.kind, asked,
             withUnit(figure(low) + " to " + figure(high), unit), "the range", withUnit(figure(ours), unit),
             ours >= low && ours <= high});
    }
    /// A text that must be the same to the letter; a long one is shown by its beginning.
    void says(const std::string& formula, const std::string& asked, const std::string& ours,
              const std::string& value) const
    {
        const auto shown = [](const std::string& t) { return t.size() > 24 ? t.substr(0, 16) + "..." : t; };
        INFO("ours " << ours << ", outside " << value);
        add({m_from.topic, formula, m_from.source, m_from.section, m_from.kind, asked, shown(value), "exact",
             shown(ours), ours == value});
    }

private:
    static void add(Row row)
    {
        rows().push_back(row);
        INFO(row.source << ", " << row.section << ": " << row.formula << ", " << row.asked << " is " << row.value
                        << " (tolerance " << row.tolerance << "); ours is " << row.ours);
        CHECK(row.good);
    }
    Row m_from;
};

/// The figure stands in the source.
[[nodiscard]] inline Page printed(std::string topic, std::string source, std::string section)
{
    return {std::move(topic), std::move(source), std::move(section), "printed"};
}
/// The source prints the formula or the rule; the value is exact arithmetic of it.
[[nodiscard]] inline Page form(std::string topic, std::string source, std::string section)
{
    return {std::move(topic), std::move(source), std::move(section), "form"};
}
/// Computed while testing by a program of another origin.
[[nodiscard]] inline Page referee(std::string topic, std::string source, std::string section)
{
    return {std::move(topic), std::move(source), std::move(section), "referee"};
}
/// Recalled; the publication was not seen.
[[nodiscard]] inline Page fromMemory(std::string topic, std::string source, std::string section)
{
    return {std::move(topic), std::move(source), std::move(section), "from memory"};
}
/// Exact arithmetic of a definition: kept, but it is no evidence.
[[nodiscard]] inline Page definition(std::string topic, std::string section)
{
    return {std::move(topic), "definition", std::move(section), "definition"};
}

/// Counts how many of many like questions came out right, for tables too long to print line by line.
class Tally {
public:
    void note(bool good)
    {
        ++m_asked;
        if (good) ++m_good;
    }
    void check(const Page& page, const std::string& formula, const std::string& asked) const
    {
        page.check(formula, asked, m_good, m_asked, "right", kExact);
    }

private:
    int m_asked = 0;
    int m_good = 0;
};

}  // namespace evidence
