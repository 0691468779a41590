// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/targets/tension_table.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace taut::targets {

namespace {

constexpr double kPli = 175.1268352464764;                               // N/m
constexpr double kPliPerMil = 6894757.293168361;                         // 1 lbf/in on 1 mil is 1000 psi, Pa
constexpr double kMil = 25.4e-6;                                         // m
constexpr double kPoundPer3000 = 0.45359237 / (3000 * 0.3048 * 0.3048);  // kg/m2; the ream is assumed

/// T2: two public tables of starting values for films and foil, PLI per mil of thickness.
struct FilmRow {
    const char* family;
    double low, high;
};
constexpr std::array<FilmRow, 9> kFilms{{{"foil", 1.0, 1.0},
                                         {"polystyrene", 1.0, 1.0},
                                         {"pet", 0.75, 0.75},
                                         {"cellophane", 0.5, 0.75},
                                         {"acetate", 0.5, 0.5},
                                         {"pe", 0.25, 0.30},
                                         {"bopp", 0.25, 0.30},
                                         {"nylon", 0.25, 0.30},
                                         {"vinyl", 0.10, 0.15}}};
/// T3: lb a ream of 3000 ft2 against PLI (S18a), g/m2 against PLI for book and text (S20), points of board against PLI.
using Point = std::pair<double, double>;
constexpr std::array<Point, 6> kPaperByPound{{{15, 0.50}, {20, 0.75}, {30, 1.0}, {40, 1.5}, {60, 2.0}, {80, 2.5}}};
constexpr std::array<Point, 5> kPaperByGram{{{75, 1.25}, {90, 1.5}, {105, 2.0}, {120, 3.0}, {150, 3.5}}};
constexpr std::array<Point, 6> kBoardS18a{{{8, 3}, {12, 4}, {15, 5}, {20, 7}, {25, 9}, {30, 11}}};
constexpr std::array<Point, 6> kBoardS20{{{8, 3}, {12, 4}, {15, 4.5}, {20, 5.5}, {25, 6.5}, {30, 8}}};

/// Straight between the rows; below the first as from nothing, beyond the last as at the last.
double between(std::span<const Point> rows, double x)
{
    if (x <= rows.front().first) return rows.front().second * x / rows.front().first;
    for (std::size_t i = 1; i < rows.size(); ++i)
        if (x <= rows[i].first) {
            const auto [x0, y0] = rows[i - 1];
            const auto [x1, y1] = rows[i];
            return y0 + (y1 - y0) * (x - x0) / (x1 - x0);
        }
    return rows.back().second;
}

/// Each table only where it has rows: S20's begins at 75 g/m2, S18a's ends at 80 lb.
std::pair<double, double> paperTensions(double kgPerSquareMetre)
{
    const double pounds = kgPerSquareMetre / kPoundPer3000, grams = kgPerSquareMetre * 1000;
    const double byPound = between(kPaperByPound, pounds), byGram = between(kPaperByGram, grams);
    constexpr double kTouch = 1 + 1e-9;  // the last row itself is of the table, however it was converted
    if (grams * kTouch < kPaperByGram.front().first) return {byPound, byPound};
    if (pounds > kPaperByPound.back().first * kTouch) return {byGram, byGram};
    return std::minmax(byPound, byGram);
}

std::pair<double, double> boardTensions(double caliper)
{
    const double points = caliper / kMil;
    return std::minmax(between(kBoardS18a, points), between(kBoardS20, points));
}

Term perWidth(const Book& book, double si, const std::string& from)
{
    return known(Quantity(si, Kind::ForcePerWidth, book.press().units == UnitSystem::Us ? "lbf/in" : "N/mm"), from);
}

}  // namespace

std::optional<TableRange> tableRange(const Book& book, const std::string& family, const Term& caliper,
                                     const Term& grammage)
{
    const Term spreadRow = book.row("table_spread");
    const Limit own = book.limit("table_spread");
    const double spread = own.si();
    TableRange range;
    if (family == "paper" || family == "thermal" || family == "board") {
        const bool board = family == "board";
        const Term& of = board ? caliper : grammage;
        range.source = board ? Text("public tension tables for board, T3, at least the policy row table_spread either "
                                    "way of their middle")
                             : Text("public tension tables for paper, T3, at least the policy row table_spread either "
                                    "way of their middle");
        range.sourceId = board ? "S18a, S20, T3, thickness in points" : "S18a, S20, T3, ream of 3000 ft2 assumed";
        if (!of.known()) {
            range.low = range.high = lack({of});
            return range;
        }
        const auto [low, high] = board ? boardTensions(of.value->si()) : paperTensions(of.value->si());
        const double middle = (low + high) / 2, apart = (high - low) / 2;
        const double half = std::max(apart, spread * middle);
        if (half > apart) range.rule = own.rule;
        const std::string from = half > apart ? spreadRow.from + " of table:T3" : "table:T3";
        range.low = perWidth(book, (middle - half) * kPli, from);
        range.high = perWidth(book, (middle + half) * kPli, from);
        return range;
    }
    const std::string film = family == "pp" ? "bopp" : family;
    const auto* const row =
        std::find_if(kFilms.begin(), kFilms.end(), [&](const FilmRow& r) { return film == r.family; });
    if (row == kFilms.end()) return std::nullopt;
    // Where the two tables agree to the digit, a fifth either way stands for how far starting values are meant.
    const double low = row->low == row->high ? row->low * (1 - spread) : row->low;
    const double high = row->low == row->high ? row->high * (1 + spread) : row->high;
    range.how = "T2";
    const bool spreads = row->low == row->high;
    if (spreads) range.rule = own.rule;
    const std::string from = spreads ? spreadRow.from + " of table:T2" : "table:T2";
    range.source = spreads ? Text("public tension tables, T2, the policy row table_spread either way")
                           : Text("public tension tables, T2");
    range.sourceId = "S18a, S20";
    range.stress = known(Quantity((low + high) / 2 * kPliPerMil, Kind::Pressure, ""), "table:T2");
    if (!caliper.known()) {
        range.low = range.high = lack({caliper});
    } else {
        range.low = perWidth(book, low * kPliPerMil * caliper.value->si(), from);
        range.high = perWidth(book, high * kPliPerMil * caliper.value->si(), from);
    }
    return range;
}

Term summedPlies(const Book& book, Arguments& used)
{
    constexpr double kLaminate = 0.1 * kPli;
    double sum = kLaminate;
    std::vector<Term> lacks;
    for (const inputs::Layer& layer : book.substrate().layers) {
        if (layer.family.empty()) continue;
        const std::string key = "substrate.layers." + layer.name + ".";
        const auto range = tableRange(book, layer.family, term(layer.caliper, key + "caliper"),
                                      term(layer.grammage, key + "grammage"));
        if (!range) {
            lacks.push_back(missing(key + "family"));
            continue;
        }
        const Term middle = combine(
            {range->low, range->high}, range->low.from + ", " + key + "family",
            [](const std::vector<double>& v) { return (v[0] + v[1]) / 2; }, Kind::ForcePerWidth);
        if (middle.known()) sum += middle.value->si();
        lacks.push_back(middle);
        used.emplace_back("T" + std::to_string(used.size() + 1), called(middle, Text("%1", {layer.name})));
    }
    if (lacks.size() < 2) return missing("substrate.layers.family");
    Term all = lack(lacks);
    if (all.cannot || !all.missing.empty()) return all;
    used.emplace_back("a", called(perWidth(book, kLaminate, "table:S20"), "what a laminate wants besides"));
    return perWidth(book, sum, "table:T2, T3");
}

}  // namespace taut::targets
