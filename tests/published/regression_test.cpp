// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/regression.h"

#include <cmath>

#include "tests/published/evidence.h"

// NIST StRD: Statistical Reference Datasets, Linear Regression, NIST Information Technology Laboratory (data sets with
// values certified to 15 digits): Norris (lower difficulty), Pontius (lower, a load cell's calibration), Wampler 1 to 5
// (higher). Anscombe: Graphs in Statistical Analysis, The American Statistician 27 (1973), 17.
using namespace taut::physics;
using namespace evidence;

namespace {

// How many digits of the certified value are right.
double digits(double found, double certified)
{
    if (found == certified) return 15;
    const double off = certified == 0 ? std::abs(found) : std::abs(found - certified) / std::abs(certified);
    return std::min(15.0, -std::log10(off));
}

std::vector<Pair> withX(const std::vector<double>& y, double first, double step)
{
    std::vector<Pair> pairs;
    for (std::size_t i = 0; i < y.size(); ++i) pairs.push_back({first + step * static_cast<double>(i), y[i]});
    return pairs;
}

const std::vector<Pair> kNorris = {
    {0.2, 0.1},     {337.4, 338.8}, {118.2, 118.1}, {884.6, 888.0}, {10.1, 9.2},    {226.5, 228.1},
    {666.3, 668.5}, {996.3, 998.5}, {448.6, 449.1}, {777.0, 778.9}, {558.2, 559.2}, {0.4, 0.3},
    {0.6, 0.1},     {775.5, 778.1}, {666.9, 668.8}, {338.0, 339.3}, {447.5, 448.9}, {11.6, 10.8},
    {556.0, 557.7}, {228.1, 228.3}, {995.8, 998.0}, {887.6, 888.8}, {120.2, 119.6}, {0.3, 0.3},
    {0.3, 0.6},     {556.8, 557.6}, {339.1, 339.3}, {887.2, 888.0}, {999.0, 998.5}, {779.0, 778.9},
    {11.1, 10.2},   {118.3, 117.6}, {229.2, 228.9}, {669.1, 668.4}, {448.9, 449.2}, {0.5, 0.2}};

std::vector<Pair> pontius()
{
    std::vector<Pair> pairs =
        withX({.11019,  .21956,  .32949,  .43899,  .54803,  .65694,  .76562,  .87487,  .98292,  1.09146,
               1.20001, 1.30822, 1.41599, 1.52399, 1.63194, 1.73947, 1.84646, 1.95392, 2.06128, 2.16844},
              150000, 150000);
    const std::vector<Pair> again =
        withX({.11052,  .22018,  .32939,  .43886,  .54798,  .65739,  .76596,  .87474,  .98300,  1.09150,
               1.20004, 1.30818, 1.41613, 1.52408, 1.63159, 1.73965, 1.84696, 1.95445, 2.06177, 2.16829},
              150000, 150000);
    pairs.insert(pairs.end(), again.begin(), again.end());
    return pairs;
}

}  // namespace

TEST_CASE("a straight line through Norris has the certified coefficients, errors and scatter")
{
    const auto fit = fitLine(kNorris);
    REQUIRE(fit);
    const Page page = printed("regression", "StRD", "Norris, certified values");
    const auto toDigits = [](double digits) { return share(std::pow(10, -digits)); };
    page.check("–", "intercept", fit->coefficients[0].value, -0.262323073774029, "", toDigits(12.5));
    page.check("–", "slope", fit->coefficients[1].value, 1.00211681802045, "", toDigits(14));
    page.check("–", "error of the intercept", fit->coefficients[0].standardError, 0.232818234301152, "", toDigits(13));
    page.check("–", "error of the slope", fit->coefficients[1].standardError, 0.429796848199937E-03, "", toDigits(13));
    page.check("–", "standard deviation of the scatter", fit->residualSd, 0.884796396144373, "", toDigits(13));
    page.check("–", "share explained", fit->rSquared, 0.999993745883712, "", toDigits(14));
    page.check("–", "degrees of freedom", fit->freedom, 34, "", kExact);
}

TEST_CASE("a load cell's calibration, Pontius, has the certified curve")
{
    const auto fit = fitPolynomial(pontius(), 2);
    REQUIRE(fit);
    const Page page = printed("regression", "StRD", "Pontius, a load cell's calibration, certified values");
    const double value[] = {0.673565789473684E-03, 0.732059160401003E-06, -0.316081871345029E-14};
    const double error[] = {0.107938612033077E-03, 0.157817399981659E-09, 0.486652849992036E-16};
    for (std::size_t j = 0; j < 3; ++j) {
        const std::string which = "b" + std::to_string(j);
        page.check("–", which, fit->coefficients[j].value, value[j], "", share(1e-11));
        page.check("–", "error of " + which, fit->coefficients[j].standardError, error[j], "", share(1e-12));
    }
}

TEST_CASE("the five sets of Wampler, made to break least squares, have their certified coefficients")
{
    // x = 0..20; y = 1 + x + ... + x^5 in sets 1, 3, 4, 5, with ever larger scatter; set 2 has 0.1^j.
    struct Set {
        std::vector<double> y;
        double base;
        std::vector<double> error;
        double least;  // digits that double precision leaves of the coefficients
    };
    const std::vector<Set> sets = {
        {{1,      6,      63,     364,    1365,   3906,    9331,    19608,   37449,   66430,  111111,
          177156, 271453, 402234, 579195, 813616, 1118481, 1508598, 2000719, 2613660, 3368421},
         1,
         {},
         9},
        {{1.00000, 1.11111, 1.24992,  1.42753,  1.65984,  1.96875,  2.38336,  2.94117,  3.68928,  4.68559, 6.00000,
          7.71561, 9.92992, 12.75603, 16.32384, 20.78125, 26.29536, 33.05367, 41.26528, 51.16209, 63.00000},
         0.1,
         {},
         9},
        {{760,    -2042,  2111,   -1684,  3888,   1858,    11379,   17560,   39287,   64382,  113159,
          175108, 273291, 400186, 581243, 811568, 1121004, 1506550, 2002767, 2611612, 3369180},
         1,
         {2152.32624678170, 2363.55173469681, 779.343524331583, 101.475507550350, 5.64566512170752, 0.112324854679312},
         9},
        {{75901,  -204794, 204863, -204436, 253665, -200894, 214131,  -185192, 221249,  -138370, 315911,
          -27644, 455253,  197434, 783995,  608816, 1370781, 1303798, 2205519, 2408860, 3444321},
         1,
         {215232.624678170, 236355.173469681, 77934.3524331583, 10147.5507550350, 564.566512170752, 11.2324854679312},
         8},
        {{7590001,   -20479994, 20480063,  -20479636, 25231365,  -20476094, 20489331,
          -20460392, 18417449,  -20413570, 20591111,  -20302844, 18651453,  -20077766,
          21059195,  -19666384, 26348481,  -18971402, 22480719,  -17866340, 10958421},
         1,
         {21523262.4678170, 23635517.3469681, 7793435.24331583, 1014755.07550350, 56456.6512170752, 1123.24854679312},
         6}};
    for (const Set& set : sets) {
        const auto fit = fitPolynomial(withX(set.y, 0, 1), 5);
        REQUIRE(fit);
        Tally coefficients;
        Tally errors;
        for (std::size_t j = 0; j <= 5; ++j) {
            CAPTURE(set.y[0], j, fit->coefficients[j].value);
            CHECK(digits(fit->coefficients[j].value, std::pow(set.base, j)) >= set.least);
            coefficients.note(digits(fit->coefficients[j].value, std::pow(set.base, j)) >= set.least);
            const double error = fit->coefficients[j].standardError;
            const bool good = set.error.empty() ? error < 1e-6 : digits(error, set.error[j]) >= 12;
            CHECK(good);
            errors.note(good);
        }
        const Page page =
            printed("regression", "StRD", "Wampler" + std::to_string(&set - sets.data() + 1) + ", certified values");
        coefficients.check(page, "–", "coefficients to " + figure(set.least) + " digits");
        errors.check(page, "–", set.error.empty() ? "errors below 1e-6" : "errors to 12 digits");
    }
}

TEST_CASE("the four sets of Anscombe have one line, and only the third has a pair that does not belong")
{
    // Printed to two or three figures: intercept 3.0, slope 0.5, its standard error 0.118, r squared 0.667, residual
    // sum of squares 13.75 with 9 degrees of freedom. The pairs are from memory.
    const std::vector<double> x = {10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5};
    const std::vector<double> fourth = {8, 8, 8, 8, 8, 8, 8, 19, 8, 8, 8};
    const std::vector<std::vector<double>> y = {{8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68},
                                                {9.14, 8.14, 8.74, 8.77, 9.26, 8.10, 6.13, 3.10, 9.13, 7.26, 4.74},
                                                {7.46, 6.77, 12.74, 7.11, 7.81, 8.84, 6.08, 5.39, 8.15, 6.42, 5.73},
                                                {6.58, 5.76, 7.71, 8.84, 8.47, 7.04, 5.25, 12.50, 5.56, 7.91, 6.89}};
    for (std::size_t set = 0; set < 4; ++set) {
        CAPTURE(set);
        std::vector<Pair> pairs;
        for (std::size_t i = 0; i < x.size(); ++i) pairs.push_back({set == 3 ? fourth[i] : x[i], y[set][i]});
        const auto fit = fitLine(pairs);
        REQUIRE(fit);
        const Page page = fromMemory("regression", "Anscombe", "set " + std::to_string(set + 1));
        page.check("–", "intercept", fit->coefficients[0].value, 3.0, "", within(0.005));
        page.check("–", "slope", fit->coefficients[1].value, 0.5, "", within(0.0005));
        page.check("–", "error of the slope", fit->coefficients[1].standardError, 0.118, "", within(0.0005));
        page.check("–", "share explained", fit->rSquared, 0.667, "", within(0.001));
        page.check("–", "residual sum of squares", fit->residualSd * fit->residualSd * fit->freedom, 13.75, "",
                   within(0.03));
        page.check("–", "pairs that do not belong", static_cast<double>(fit->outliers.size()), set == 2 ? 1 : 0, "",
                   kExact);
        CHECK(fit->outliers == (set == 2 ? std::vector<std::size_t>{2} : std::vector<std::size_t>{}));
    }
}

TEST_CASE("half an interval is Student's t as the tables print it")
{
    // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, critical values of Student's t (from memory).
    const Page page = fromMemory("regression", "e-Handbook", "1.3.6.7.2, critical values of Student's t");
    const struct {
        double confidence;
        int freedom;
        double factor;
    } rows[] = {{0.95, 1, 12.706}, {0.95, 10, 2.228}, {0.95, 34, 2.032}, {0.99, 5, 4.032}};
    for (const auto& row : rows)
        page.check("–", figure(100 * row.confidence) + " %, " + std::to_string(row.freedom) + " degrees of freedom",
                   studentFactor(row.confidence, row.freedom), row.factor, "", within(0.0005));
    const auto fit = fitLine(kNorris);
    REQUIRE(fit);
    const Coefficient& slope = fit->coefficients[1];
    page.check("–", "half the interval of the slope of Norris over its error",
               (slope.interval.high - slope.value) / slope.standardError, 2.032, "", within(0.0005));
}
