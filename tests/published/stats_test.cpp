// SPDX-License-Identifier: GPL-3.0-or-later
// Charts, run rules, capability, percentiles and rates against the outside. NIST/SEMATECH e-Handbook of Statistical
// Methods, 2012 (the year from memory; itl.nist.gov/div898/handbook): 1.3.6.7 (tables), 6.1.6 (capability), 6.3.2,
// 6.3.2.2 and 6.3.2.3 (charts), 7.2.4.1 (proportions), 7.2.6.2 (percentiles). Its figures here were seen quoted, or are
// from memory where the row says so; the pages themselves were not at hand.
#include <cmath>
#include <numbers>
#include <random>

#include "core/stats/capability.h"
#include "core/stats/control_chart.h"
#include "core/stats/cusum.h"
#include "core/stats/quantile.h"
#include "core/stats/run_rules.h"
#include "core/stats/summary.h"
#include "tests/published/evidence.h"
#include "tests/published/outside.h"

using namespace taut::stats;
using namespace evidence;

namespace {

const std::vector<double> kBatches = {49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1};

/// Normal values, the same with every compiler.
std::vector<double> normals(std::mt19937_64& dice, std::size_t count)
{
    std::vector<double> values;
    for (std::size_t i = 0; i < count; ++i)
        values.push_back(normalQuantile((static_cast<double>(dice() >> 11U) + 0.5) / 9007199254740992.0));
    return values;
}

/// The same by Box and Muller's transform: quicker where there are millions, the same but for a last bit.
std::vector<double> manyNormals(std::mt19937_64& dice, std::size_t count)
{
    const auto share = [&dice] { return (static_cast<double>(dice() >> 11U) + 0.5) / 9007199254740992.0; };
    std::vector<double> values;
    while (values.size() < count) {
        const double far = std::sqrt(-2 * std::log(share())), angle = 2 * std::numbers::pi * share();
        values.push_back(far * std::cos(angle));
        values.push_back(far * std::sin(angle));
    }
    return values;
}

}  // namespace

TEST_CASE("quantiles are those that quadrature of the densities finds")
{
    // The referee never asks for a distribution: it integrates gsl_ran's densities and seeks where the share is
    // reached.
    const Page page = referee("statistics", "GSL", "integration of the density, Brent's search");
    const auto right = [](double ours, const std::string& key) {
        const double found = outside::gsl(key);
        CAPTURE(key, ours, found);
        const bool good = evidence::Tolerance{1e-9, 1e-12}.holds(ours, found);
        CHECK(good);
        return good;
    };
    Tally normal, chi, t, f, beta;
    for (const char* p : {"0.001", "0.025", "0.5", "0.975", "0.999"}) {
        const double at = std::stod(p);
        normal.note(right(normalQuantile(at), std::string("normal_") + p));
        for (const char* freedom : {"3", "19", "61.3", "1000"}) {
            const double nu = std::stod(freedom);
            const std::string key = std::string("_") + freedom + "_" + p;
            chi.note(right(chiSquareQuantile(at, nu), "chisq" + key));
            t.note(right(studentQuantile(at, nu), "t" + key));
            f.note(right(fQuantile(at, nu, 7), "f" + key));
            beta.note(right(betaQuantile(at, nu, 7), "beta" + key));
        }
    }
    const std::string how = ", from 0.001 to 0.999, to one part in 10^9";
    normal.check(page, "–", "normal" + how);
    chi.check(page, "–", "chi-square of 3 to 1000 degrees" + how);
    t.check(page, "–", "t of 3 to 1000 degrees" + how);
    f.check(page, "–", "F of 3 to 1000 and 7 degrees" + how);
    beta.check(page, "–", "beta of 3 to 1000 and 7" + how);
}

TEST_CASE("quantiles are those of the printed tables")
{
    const Page normal = fromMemory("statistics", "e-Handbook", "1.3.6.7.1, normal distribution");
    normal.check("–", "z below which 97.5 % lie", normalQuantile(0.975), 1.96, "", within(0.0005));
    normal.check("–", "share from 0 to 1", normalBelow(1) - 0.5, 0.34134, "", within(0.000005));
    const Page chi = fromMemory("statistics", "e-Handbook", "1.3.6.7.4, critical values of chi-square");
    chi.check("–", "10 degrees, 5 % above", chiSquareQuantile(0.95, 10), 18.307, "", within(0.0005));
    chi.check("–", "19 degrees, 2.5 % above", chiSquareQuantile(0.975, 19), 32.852, "", within(0.0005));
    chi.check("–", "19 degrees, 2.5 % below", chiSquareQuantile(0.025, 19), 8.907, "", within(0.0005));
    const Page f = fromMemory("statistics", "e-Handbook", "1.3.6.7.3, critical values of F");
    f.check("–", "1 and 1 degrees, 5 % above", fQuantile(0.95, 1, 1), 161.448, "", within(0.0005));
    f.check("–", "5 and 10 degrees, 5 % above", fQuantile(0.95, 5, 10), 3.326, "", within(0.0005));
    f.check("–", "10 and 10 degrees, 5 % above", fQuantile(0.95, 10, 10), 2.978, "", within(0.0005));
    const Page t = fromMemory("statistics", "e-Handbook", "1.3.6.7.2, critical values of Student's t");
    t.check("–", "10 degrees, 2.5 % above", studentQuantile(0.975, 10), 2.228, "", within(0.0005));
    t.check("–", "30 degrees, 5 % above", studentQuantile(0.95, 30), 1.697, "", within(0.0005));
}

TEST_CASE("the individuals chart of the handbook has its centre, limits and zones, and no point is out")
{
    // The ten values are from memory; centre, mean range and limits were seen quoted and are reckoned to four figures.
    const auto chart = chartOf(kBatches, [] {
        ChartRules all;
        all.rules = kNelsonAll;
        return all;
    }());
    REQUIRE(chart);
    REQUIRE(chart->phases.size() == 1);
    REQUIRE(chart->phases[0].limits);
    const Limits& limits = *chart->phases[0].limits;
    const Page page = fromMemory("statistics", "e-Handbook", "6.3.2.2, individuals control charts, example");
    page.check("–", "centre", limits.centre, 50.81, "", within(0.00005));
    page.check("–", "mean moving range", limits.meanRange, 1.8778, "", within(0.00005));
    page.check("–", "upper control limit", limits.line(3), 55.8041, "", within(0.00005));
    page.check("–", "lower control limit", limits.line(-3), 45.8159, "", within(0.00005));
    page.check("–", "signals, by all eight rules", static_cast<double>(chart->patterns.size()), 0, "", kExact);
    const double ranges[] = {2.0, 2.3, 1.4, 3.5, 3.4, 1.4, 0.2, 1.2, 1.5};
    Tally moving;
    for (std::size_t i = 0; i < 9; ++i) {
        REQUIRE(chart->ranges[i + 1]);
        moving.note(std::abs(*chart->ranges[i + 1] - ranges[i]) < 1e-9);
    }
    moving.check(page, "–", "moving ranges");
    CHECK(limits.provisional);
    CHECK(chart->widened.empty());
    const Page lines = form("statistics", "e-Handbook", "6.3.2.2, centre and multiples of mean range / 1.128");
    lines.check("–", "line of 1 sigma", limits.line(1), 52.4747, "", within(0.00005));
    lines.check("–", "line of -1 sigma", limits.line(-1), 49.1453, "", within(0.00005));
    lines.check("–", "line of 2 sigma", limits.line(2), 54.1394, "", within(0.00005));
    lines.check("–", "line of -2 sigma", limits.line(-2), 47.4806, "", within(0.00005));
    lines.check("–", "upper limit of ranges", limits.rangeLimit(), 6.1347, "", within(0.00005));
}

TEST_CASE("the cumulative sums of the handbook's example are its sums, and it signals where the handbook does")
{
    // The twenty group means, k and h are from memory; the sums are recomputed from them and are those remembered.
    const std::vector<double> groups = {324.925, 324.675, 324.725, 324.350, 325.350, 325.225, 324.125,
                                        324.525, 325.225, 324.600, 324.625, 325.150, 328.325, 327.250,
                                        327.825, 328.500, 326.675, 327.775, 326.875, 328.350};
    const double upper[] = {0, 0, 0,      0,    0.0325, 0,     0,       0,      0,       0,
                            0, 0, 3.0075, 4.94, 7.4475, 10.63, 11.9875, 14.445, 16.0025, 19.035};
    const double lower[] = {0,      0.0075, 0, 0.3325, 0, 0, 0.5575, 0.715, 0.1725, 0.255,
                            0.3125, 0,      0, 0,      0, 0, 0,      0,     0,      0};
    // k and h are those of the example in its own unit: sigma is 1.
    const auto sums = cusumOf(groups, 325, 1, {0.3175, 4.1959});
    REQUIRE(sums);
    const Page page = fromMemory("statistics", "e-Handbook", "6.3.2.3, CUSUM control charts, example, recomputed");
    Tally above, below;
    for (std::size_t i = 0; i < groups.size(); ++i) {
        CAPTURE(i, sums->up[i], sums->down[i]);
        CHECK(std::abs(sums->up[i] - upper[i]) < 1e-9);
        above.note(std::abs(sums->up[i] - upper[i]) < 1e-9);
        below.note(std::abs(sums->down[i] - lower[i]) < 1e-9);
    }
    above.check(page, "–", "upper sums");
    below.check(page, "–", "lower sums");
    REQUIRE(sums->moves.size() == 1);
    page.check("–", "group of the signal", static_cast<double>(sums->moves[0].found + 1), 14, "", kExact);
    CHECK(sums->moves[0].side == 1);
    CHECK(sums->moves[0].since == 12);
    CHECK(sums->moves[0].stands);
}

TEST_CASE("cumulative sums find a shift, and nothing, after as many points as is published")
{
    // k = 0.5, h = 5, normal values, 2000 series each. A run length scatters by about itself: the mean of so many by
    // 21 where it is 930, by 10 where it is 465. Tolerances are three times that.
    std::mt19937_64 dice(63);
    const auto firsts = [&dice](double shift, std::size_t block) {
        std::vector<double> values;
        double any = 0;
        while (true) {
            for (const double z : manyNormals(dice, block)) values.push_back(z + shift);
            const auto sums = cusumOf(values, 0, 1);
            REQUIRE(sums);
            if (any == 0 && !sums->moves.empty()) any = static_cast<double>(sums->moves.front().found + 1);
            for (const Move& move : sums->moves)
                if (move.side > 0) return std::pair(static_cast<double>(move.found + 1), any);
        }
    };
    const int series = 2000;
    double up = 0, any = 0, one = 0, two = 0;
    for (int i = 0; i < series; ++i) {
        const auto [above, either] = firsts(0, 500);
        up += above / series;
        any += either / series;
        one += firsts(1, 20).first / series;
        two += firsts(2, 10).first / series;
    }
    const Page page = fromMemory("statistics", "e-Handbook", "6.3.2.3, average run lengths, k 0.5, h 5, by simulation");
    page.check("–", "no shift, one side", up, 930, "points", within(65));
    page.check("–", "no shift, two sides", any, 465, "points", within(32));
    page.check("–", "shift of 1 sigma", one, 10.4, "points", within(0.4));
    page.check("–", "shift of 2 sigma", two, 4.01, "points", within(0.1));
}

TEST_CASE("the constants of ranges of two are those of the normal distribution")
{
    using std::numbers::pi;
    const double d2 = 2 / std::sqrt(pi);
    const double d3 = std::sqrt(2 - 4 / pi);
    const Page page = definition("statistics", "mean and deviation of the range of two normal values");
    page.check("–", "d2 of two, printed to three figures", kRangeOfTwo, d2, "", within(0.0005));
    page.check("–", "D4 of two, 1 + 3 d3 / d2", kRangeLimit, 1 + 3 * d3 / d2, "", within(0.0005));
}

TEST_CASE("a chart of two hundred readings has the centre, limits and performance that a library finds")
{
    std::vector<double> values;
    for (int i = 0; i < 200; ++i)
        values.push_back(1.4 + 0.05 * std::sin(12.9898 * i) + 0.02 * std::cos(78.233 * i * i));
    const auto chart = chartOf(values);
    REQUIRE(chart);
    const Limits& limits = chart->phases.at(0).limits.value();
    const Page page = referee("statistics", "GSL", "gsl_stats of the readings and of their moving ranges");
    page.check("–", "centre of 200 readings", limits.centre, outside::gsl("chart_mean"), "", share(1e-12));
    page.check("–", "mean moving range", limits.meanRange, outside::gsl("chart_range"), "", share(1e-12));
    // The handbook's printed d2 has four figures and the quadrature's all of them.
    page.check("–", "upper control limit", limits.line(3), outside::gsl("chart_upper"), "", share(5e-5));
    page.check("–", "lower control limit", limits.line(-3), outside::gsl("chart_lower"), "", share(5e-5));
    page.check("–", "limit of ranges", limits.rangeLimit(), outside::gsl("chart_d4") * outside::gsl("chart_range"), "",
               share(5e-4));
    const auto all = capabilityOf(*chart, chart->phases[0], {1.15, 1.75});
    REQUIRE(all);
    REQUIRE(all->performance);
    page.check("–", "s", all->performance->of.sigma, outside::gsl("chart_s"), "", share(1e-12));
    page.check("–", "Pp from 1.15 to 1.75", all->performance->both->value, outside::gsl("chart_pp"), "", share(1e-12));
    page.check("–", "Ppk from 1.15 to 1.75", all->performance->least->value, outside::gsl("chart_ppk"), "",
               share(1e-12));
}

TEST_CASE("run rules give false alarms as often as is published")
{
    const Page alone = printed("statistics", "e-Handbook", "6.3.2, points to a false alarm");
    alone.check("–", "3 sigma alone", 1 / (2 * normalAbove(3)), 370, "points", within(0.5));
    // In 10,000 charts of normal values, how many points until one of the four fires: the scatter of the mean is 0.9.
    std::mt19937_64 dice(1956);
    double points = 0;
    for (int i = 0; i < 10000; ++i) {
        const std::vector<double> z = normals(dice, 1500);
        // Most fire soon.
        std::vector<Signal> found = signalsIn(std::span(z).first(150), 0, 1, kWesternElectric);
        if (found.empty()) found = signalsIn(z, 0, 1, kWesternElectric);
        points += found.empty() ? 1500.0 : static_cast<double>(found.front().fired.front() + 1);
    }
    const Page four = printed("statistics", "e-Handbook, Champ", "6.3.2; exact by a Markov chain; ours by simulation");
    four.check("–", "the four of Western Electric together", points / 10000, 91.75, "points", within(2.5));
}

TEST_CASE("Nelson's tests signal falsely as seldom as he says")
{
    // His figures as a manual of statistics quotes them: each test fewer than five in a thousand points, the first four
    // together less than one in a hundred, with the fifth and sixth two in a hundred. A million points of one chart.
    std::mt19937_64 dice(1984);
    const std::vector<double> z = normals(dice, 1000000);
    const double percent = static_cast<double>(z.size()) / 100;
    const Page page = printed("statistics", "Nelson", "1985, chance of a false signal, as others quote it");
    for (const Rule rule : kNelsonAll) {
        const Rule alone[] = {rule};
        std::size_t fired = 0;
        for (const Signal& signal : signalsIn(z, 0, 1, alone)) fired += signal.fired.size();
        page.between("–", "points at which " + std::string(idOf(rule)) + " holds", static_cast<double>(fired) / percent,
                     0, 0.5, "%");
    }
    const auto begins = [&](std::span<const Rule> rules) {
        return static_cast<double>(signalsIn(z, 0, 1, rules).size()) / percent;
    };
    page.between("–", "points at which a signal begins, tests 1 to 4", begins(kNelsonUsual), 0, 1, "%");
    page.between("–", "points at which a signal begins, tests 1 to 6", begins(kNelsonEarly), 1, 2, "%");
}

TEST_CASE("the capability example of the handbook has its indices, and the share outside follows")
{
    // Limits 8 and 20, mean 16, s 2; many values, so that nothing is refused.
    const Spread spread{16, 2, 1000, 999};
    const taut::stats::Tolerance tolerance{8, 20};
    const auto indices = indicesOf(spread, tolerance);
    REQUIRE(indices);
    const Page page = printed("statistics", "e-Handbook", "6.1.6, what is process capability, example");
    page.check("–", "Cp", indices->both->value, 1.0, "", within(0.00005));
    page.check("–", "Cpu", indices->upper->value, 0.6667, "", within(0.00005));
    page.check("–", "Cpl", indices->lower->value, 1.3333, "", within(0.00005));
    page.check("–", "Cpk", indices->least->value, 0.6667, "", within(0.00005));
    const Fallout out = falloutOf(spread, tolerance);
    const Page normal = form("statistics", "e-Handbook", "6.1.6, shares of a normal distribution");
    normal.check("–", "share above", 100 * out.above, 2.275, "%", within(0.0005));
    normal.check("–", "share below", 100 * out.below, 0.0032, "%", within(0.00005));
    const struct {
        double cp, ppm, margin;
    } rows[] = {{1, 2700, 0.5}, {1.33, 66, 0.5}, {1.66, 0.64, 0.005}, {2, 0.002, 0.0005}};
    for (const auto& row : rows) {
        const Fallout both = falloutOf({0, 1, 100, 99}, {-3 * row.cp, 3 * row.cp});
        normal.check("–", "outside with Cp " + figure(row.cp) + ", centred", 1e6 * (both.below + both.above), row.ppm,
                     "ppm", within(row.margin));
    }
}

TEST_CASE("the handbook's off-centre is the distance from the middle over half the tolerance")
{
    // A phase whose mean is 16 and that has a spread, between 8 and 20.
    std::vector<double> values;
    for (const double step : {0.4, -0.3, 0.1, 0.5, -0.6, -0.1}) values.push_back(16 + step);
    const auto chart = chartOf(values);
    REQUIRE(chart);
    const auto all = capabilityOf(*chart, chart->phases[0], {8, 20});
    REQUIRE(all);
    REQUIRE(all->offCentre);
    printed("statistics", "e-Handbook", "6.1.6, what is process capability, example")
        .check("–", "k", *all->offCentre, 0.3333, "", within(0.00005));
}

TEST_CASE("intervals of capability are those of the handbook's formulas")
{
    const Page chi = form("statistics", "e-Handbook", "6.1.6, interval of Cp by chi-square, freedom 19");
    const struct {
        double cp, low, high;
    } rows[] = {{1, 0.6847, 1.3149}, {1.33, 0.9106, 1.7489}, {2, 1.3693, 2.6299}};
    for (const auto& row : rows) {
        const auto indices = indicesOf({0, 1, 20, 19}, {-3 * row.cp, 3 * row.cp});
        REQUIRE(indices);
        chi.check("–", "Cp " + figure(row.cp) + ", lower end", indices->both->interval.low, row.low, "",
                  within(0.00005));
        chi.check("–", "Cp " + figure(row.cp) + ", upper end", indices->both->interval.high, row.high, "",
                  within(0.00005));
    }
    const Page normal = form("statistics", "e-Handbook", "6.1.6, interval of Cpk, normal approximation");
    const struct {
        std::size_t count;
        double low, high;
    } spreads[] = {{30, 0.968, 1.692}, {50, 1.051, 1.609}};
    for (const auto& row : spreads) {
        const auto indices =
            indicesOf({0, 1, row.count, static_cast<double>(row.count - 1)}, {-3 * 1.33, std::nullopt});
        REQUIRE(indices);
        const std::string of = "Cpk 1.33 of " + std::to_string(row.count) + " values, ";
        normal.check("–", of + "lower end", indices->least->interval.low, row.low, "", within(0.0005));
        normal.check("–", of + "upper end", indices->least->interval.high, row.high, "", within(0.0005));
    }
}

TEST_CASE("many moving ranges know sigma as well as is published")
{
    // The variance of mean range over sigma is 0.8264 / n for many: 1 / 2 freedom = 0.8264 / n.
    const Page page = fromMemory("statistics", "Cryer", "variance of the mean moving range over d2, many values");
    page.check("–", "times n, of 100,000 ranges", 100000 / (2 * freedomOfRanges(100000)), 0.8264, "", within(0.0002));
}

TEST_CASE("a percentile of the handbook stands where it has it")
{
    const std::vector<double> gauge = {95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.0610,
                                       95.1591, 95.1195, 95.1065, 95.0925, 95.1990, 95.1682};
    const auto ninety = percentileOf(gauge, 0.9);
    REQUIRE(ninety);
    fromMemory("statistics", "e-Handbook", "7.2.6.2, percentiles, twelve resistivities")
        .check("–", "90th percentile", *ninety, 95.1981, "", within(0.00005));
}

TEST_CASE("a first-pass rate has Wilson's interval")
{
    const auto rate = proportionOf(47, 50);
    REQUIRE(rate);
    const Page page = form("statistics", "e-Handbook, Wilson", "7.2.4.1, interval of a proportion");
    page.check("–", "47 of 50", 100 * rate->share, 94.0, "%", within(0.05));
    page.check("–", "47 of 50, lower end", 100 * rate->interval.low, 83.8, "%", within(0.05));
    page.check("–", "47 of 50, upper end", 100 * rate->interval.high, 97.9, "%", within(0.05));
    // It is where the score test just does not refuse the share: (p - p0) / sqrt(p0 (1 - p0) / n) = z.
    const Page score = definition("statistics", "Wilson's ends put back into the score test");
    for (const double end : {rate->interval.low, rate->interval.high})
        score.check("–", "score of " + figure(100 * end, 3) + " %",
                    std::abs(0.94 - end) / std::sqrt(end * (1 - end) / 50), normalQuantile(0.975), "", share(1e-9));
}

TEST_CASE("a Pareto table has its order and its cumulative shares")
{
    const auto rows = paretoOf({{"other", 8, true},
                                {"guard open", 6},
                                {"threading path", 9},
                                {"splice tape missed", 31},
                                {"web guide offset", 14},
                                {"tension out of band", 22}});
    REQUIRE(rows);
    REQUIRE(rows->size() == 6);
    const double cumulative[] = {34.44, 58.89, 74.44, 84.44, 91.11, 100};
    const Page page = definition("statistics", "running sums over the total, largest first, the rest last");
    for (std::size_t i = 0; i < 6; ++i)
        page.check("–", "cumulative to " + (*rows)[i].cause.name, 100 * (*rows)[i].cumulative, cumulative[i], "%",
                   within(0.005));
    CHECK(rows->back().cause.name == "other");
}
