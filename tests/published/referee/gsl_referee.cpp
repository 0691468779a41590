// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers that the GNU Scientific Library finds by quadrature and by integrating differential equations, with none of
// our formulas: one "name value" a line.
#include <gsl/gsl_blas.h>
#include <gsl/gsl_errno.h>
#include <gsl/gsl_integration.h>
#include <gsl/gsl_interp.h>
#include <gsl/gsl_odeiv2.h>
#include <gsl/gsl_randist.h>
#include <gsl/gsl_roots.h>
#include <gsl/gsl_sf_gamma.h>
#include <gsl/gsl_statistics_double.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <functional>
#include <string>
#include <vector>

namespace {

using State = std::vector<double>;
using Slope = std::function<State(double, const State&)>;

void say(const std::string& name, double value) { std::printf("%s %.17g\n", name.c_str(), value); }

int slopeOf(double t, const double y[], double dydt[], void* params)
{
    const auto& [slope, size] = *static_cast<std::pair<Slope, std::size_t>*>(params);
    const State d = slope(t, State(y, y + size));
    std::copy(d.begin(), d.end(), dydt);
    return GSL_SUCCESS;
}

/// Runge-Kutta-Prince-Dormand (8, 9) from `from` to `to`.
State integrate(const Slope& slope, State y, double from, double to)
{
    std::pair<Slope, std::size_t> params{slope, y.size()};
    gsl_odeiv2_system system{slopeOf, nullptr, y.size(), &params};
    gsl_odeiv2_driver* driver = gsl_odeiv2_driver_alloc_y_new(&system, gsl_odeiv2_step_rk8pd, 1e-6, 1e-13, 1e-13);
    double t = from;
    if (gsl_odeiv2_driver_apply(driver, &t, to, y.data()) != GSL_SUCCESS) std::exit(1);
    gsl_odeiv2_driver_free(driver);
    return y;
}

double spiral(double r, void* caliper)
{
    const double slope = 2 * M_PI * r / *static_cast<double*>(caliper);
    return std::sqrt(1 + slope * slope);
}

void rolls()
{
    gsl_integration_workspace* space = gsl_integration_workspace_alloc(1000);
    const std::array<std::array<double, 3>, 2> rows{{{0.1, 2, 3}, {0.06, 18, 60}}};
    for (std::size_t i = 0; i < rows.size(); ++i) {
        double caliper = rows[i][0];
        gsl_function f{spiral, &caliper};
        double length = 0;
        double error = 0;
        gsl_integration_qags(&f, rows[i][1] / 2, rows[i][2] / 2, 0, 1e-12, 1000, space, &length, &error);
        say("spiral_" + std::to_string(i + 1), length);
    }
    // The second's outermost hundred turns: r = t phi / (2 pi), integrated inwards, is where they end.
    double caliper = 0.06;
    const double perTurn = 2 * M_PI;
    const Slope inwards = [=](double, const State&) { return State{-caliper / perTurn}; };
    const double inner = integrate(inwards, {30}, 0, 100 * perTurn)[0];
    say("spiral_inner", 2 * inner);
    gsl_function f{spiral, &caliper};
    double length = 0;
    double error = 0;
    gsl_integration_qags(&f, inner, 30, 0, 1e-12, 1000, space, &length, &error);
    say("spiral_100", length);
    // Its turns between the radii 9 and 30: dphi/dr = 2 pi / t.
    const Slope turning = [=](double, const State&) { return State{perTurn / caliper}; };
    say("spiral_turns", integrate(turning, {0}, 9, 30)[0] / perTurn);
    gsl_integration_workspace_free(space);
}

/// The span equation dT2/dt = (K / L)(v2 - v1) + (v1 T1 - v2 T2) / L: K 74250 N, L 1.5 m, v1 1, v2 1.0002 m/s, slack.
void span()
{
    const Slope slope = [](double, const State& y) { return State{74250 / 1.5 * 0.0002 - 1.0002 * y[0] / 1.5}; };
    for (const char* time : {"1.5", "3", "4.5", "6", "60"})
        say(std::string("span_") + time, integrate(slope, {0}, 0, std::stod(time))[0]);
}

/// d/dt [L / (1 + e2)] = v1 / (1 + e1) - v2 / (1 + e2), e1 0.05 %, L 1.5 m, v1 1 and v2 1.002 m/s, until it rests.
void strain()
{
    const Slope slope = [](double, const State& y) {
        const double stretched = 1 + y[0];
        return State{-stretched * stretched / 1.5 * (1 / 1.0005 - 1.002 / stretched)};
    };
    say("strain_rest", integrate(slope, {0}, 0, 120)[0]);
}

/// A web that runs on at 2.5 m/s for 0.2 s and then slows by 1 m/s2: its way until it stands.
void stop()
{
    const State running = integrate([](double, const State& y) { return State{y[1], 0}; }, {0, 2.5}, 0, 0.2);
    say("stop_distance", integrate([](double, const State& y) { return State{y[1], -1}; }, running, 0, 2.5)[0]);
}

/// The pull of a web around half a turn at a friction of 0.3.
void capstan()
{
    say("capstan", integrate([](double, const State& y) { return State{0.3 * y[0]}; }, {1}, 0, M_PI)[0]);
}

/// A stress of 1 along the web, seen on a cut that leans by so many degrees: Q S Q'.
void tensor()
{
    for (const char* degrees : {"0", "15", "45"}) {
        const double lean = std::stod(degrees) * M_PI / 180;
        double turn[] = {std::cos(lean), std::sin(lean), -std::sin(lean), std::cos(lean)};
        double stress[] = {1, 0, 0, 0};
        double half[4];
        double turned[4];
        gsl_matrix_view q = gsl_matrix_view_array(turn, 2, 2);
        gsl_matrix_view s = gsl_matrix_view_array(stress, 2, 2);
        gsl_matrix_view h = gsl_matrix_view_array(half, 2, 2);
        gsl_matrix_view r = gsl_matrix_view_array(turned, 2, 2);
        gsl_blas_dgemm(CblasNoTrans, CblasNoTrans, 1, &q.matrix, &s.matrix, 0, &h.matrix);
        gsl_blas_dgemm(CblasNoTrans, CblasTrans, 1, &h.matrix, &q.matrix, 0, &r.matrix);
        say(std::string("tensor_normal_") + degrees, turned[0]);
        say(std::string("tensor_shear_") + degrees, std::abs(turned[1]));
    }
}

double edge(double, void* slope)
{
    const double s = *static_cast<double*>(slope);
    return std::sqrt(1 + s * s);
}
/// How much longer the edge of a web is that is twisted by 5 degrees over so many widths, and all of it in the mean.
void twist()
{
    gsl_integration_workspace* space = gsl_integration_workspace_alloc(100);
    for (const char* widths : {"0.5", "1", "2"}) {
        double slope = 5 * M_PI / 180 / (2 * std::stod(widths));
        gsl_function f{edge, &slope};
        double length = 0;
        double error = 0;
        gsl_integration_qags(&f, 0, 1, 0, 1e-13, 100, space, &length, &error);
        say(std::string("twist_") + widths, length - 1);
        // The mean over the width: each line of it has a slope of its own, from none in the middle to the edge's.
        struct Inner {
            gsl_integration_workspace* space;
            double slope;
        } inner{gsl_integration_workspace_alloc(100), slope};
        gsl_function mean{[](double share, void* of) {
                              const auto* in = static_cast<Inner*>(of);
                              double here = in->slope * share, along = 0, off = 0;
                              gsl_function f2{edge, &here};
                              gsl_integration_qags(&f2, 0, 1, 0, 1e-13, 100, in->space, &along, &off);
                              return along;
                          },
                          &inner};
        double all = 0;
        gsl_integration_qags(&mean, 0, 1, 0, 1e-12, 100, space, &all, &error);
        say(std::string("twist_mean_") + widths, all - 1);
        gsl_integration_workspace_free(inner.space);
    }
    gsl_integration_workspace_free(space);
}

/// Where between two readings a third stands, by linear interpolation.
void sensor()
{
    const double readings[] = {1.2, 6.2};
    const double places[] = {0, 10};
    gsl_interp* line = gsl_interp_alloc(gsl_interp_linear, 2);
    gsl_interp_init(line, readings, places, 2);
    say("sensor", gsl_interp_eval(line, readings, places, 3.3, nullptr));
    gsl_interp_free(line);
}

void cascade()
{
    const std::array<std::array<int, 2>, 8> rows{{{1, 1}, {2, 2}, {3, 3}, {4, 4}, {3, 6}, {4, 8}, {6, 12}, {20, 9}}};
    for (const auto& row : rows)
        say("gamma_" + std::to_string(row[0]) + "_" + std::to_string(row[1]), gsl_sf_gamma_inc_P(row[0], row[1]));
    // The same by integrating n lags in a row.
    const Slope lags = [](double, const State& y) { return State{1 - y[0], y[0] - y[1], y[1] - y[2]}; };
    say("lags_3_3", integrate(lags, {0, 0, 0}, 0, 3)[2]);
}

/// H''' = (H - 1) / H^3, leaving the uniform film H = 1 along its growing solution e^x; H'' far away.
void film()
{
    const Slope slope = [](double, const State& y) { return State{y[1], y[2], (y[0] - 1) / (y[0] * y[0] * y[0])}; };
    say("film", integrate(slope, {1 + 1e-7, 1e-7, 1e-7}, 0, 2000)[2]);
}

struct Beam {
    double f, f1, f2, f3;
    double entry;  ///< bending at the left end when the roller is turned by 1
};
/// The web as a beam under tension, y'''' = x^2 y'' on [0, 1], shot from its left end.
Beam beam(double x)
{
    const Slope slope = [x](double, const State& y) { return State{y[1], y[2], y[3], x * x * y[2]}; };
    const State a = integrate(slope, {0, 0, 1, 0}, 0, 1);
    const State b = integrate(slope, {0, 0, 0, 1}, 0, 1);
    const State tilt = integrate(slope, {0, 1, 0, 0}, 0, 1);
    // y(1) = place and y'(1) = angle by p a + q b + s tilt; what is asked is y''(1).
    const auto bend = [&](double place, double angle, double entry) {
        const double want0 = place - entry * tilt[0];
        const double want1 = angle - entry * tilt[1];
        const double det = a[0] * b[1] - a[1] * b[0];
        const double p = (want0 * b[1] - want1 * b[0]) / det;
        const double q = (a[0] * want1 - a[1] * want0) / det;
        return p * a[2] + q * b[2] + entry * tilt[2];
    };
    // Free of moment at the roller and square to it: y''(1) = 0, y'(1) = 1 gives the static shift.
    const double det = a[1] * b[2] - a[2] * b[1];
    const double p = b[2] / det;
    const double q = -a[2] / det;
    return {p * a[0] + q * b[0], -bend(1, 0, 0), bend(0, 1, 0), bend(0, 0, 1), p};
}

void lateral()
{
    for (const char* name : {"0", "0.5", "1", "2", "5", "10"}) {
        const Beam k = beam(std::stod(name));
        say(std::string("beam_f_") + name, k.f);
        say(std::string("beam_f1_") + name, k.f1);
        say(std::string("beam_f2_") + name, k.f2);
        say(std::string("beam_f3_") + name, k.f3);
        say(std::string("beam_entry_") + name, k.entry);
        const Slope step = [k](double, const State& y) { return State{y[1], k.f1 * (1 - y[0]) - k.f2 * y[1]}; };
        say(std::string("lateral_step_") + name, integrate(step, {0, 0}, 0, 1)[0]);
    }
}

/// A density, and the share of it that lies below `start`. Where it reaches p is sought by integrating it, never by
/// asking for a distribution.
struct Density {
    std::function<double(double)> at;
    double start, already;
    double p = 0;
    gsl_integration_workspace* space;
};
double share(double x, const Density& of)
{
    gsl_function f{[](double at, void* density) { return static_cast<Density*>(density)->at(at); },
                   const_cast<Density*>(&of)};
    double found = 0;
    double error = 0;
    if (x != of.start) gsl_integration_qags(&f, of.start, x, 1e-15, 1e-12, 2000, of.space, &found, &error);
    return of.already + found;
}
void quantile(const std::string& name, Density of, double p, double low, double high)
{
    of.p = p;
    of.space = gsl_integration_workspace_alloc(2000);
    gsl_function f{[](double x, void* density) {
                       const auto& d = *static_cast<Density*>(density);
                       return share(x, d) - d.p;
                   },
                   &of};
    gsl_root_fsolver* solver = gsl_root_fsolver_alloc(gsl_root_fsolver_brent);
    gsl_root_fsolver_set(solver, &f, low, high);
    for (int i = 0; i < 200; ++i) {
        gsl_root_fsolver_iterate(solver);
        const double from = gsl_root_fsolver_x_lower(solver);
        const double to = gsl_root_fsolver_x_upper(solver);
        if (gsl_root_test_interval(from, to, 0, 1e-13) == GSL_SUCCESS) break;
    }
    say(name, gsl_root_fsolver_root(solver));
    gsl_root_fsolver_free(solver);
    gsl_integration_workspace_free(of.space);
}
void quantiles()
{
    gsl_set_error_handler_off();  // near the last place a quadrature complains of rounding
    for (const char* p : {"0.001", "0.025", "0.5", "0.975", "0.999"}) {
        const double at = std::stod(p);
        quantile(std::string("normal_") + p, {gsl_ran_ugaussian_pdf, 0, 0.5, 0, nullptr}, at, -5, 5.5);
        for (const char* freedom : {"3", "19", "61.3", "1000"}) {
            const double nu = std::stod(freedom);
            const std::string key = std::string("_") + freedom + "_" + p;
            const double wide = 8 * std::sqrt(2 * nu);
            quantile("chisq" + key, {[nu](double x) { return gsl_ran_chisq_pdf(x, nu); }, 0, 0, 0, nullptr}, at, 1e-9,
                     nu + wide);
            quantile("t" + key, {[nu](double x) { return gsl_ran_tdist_pdf(x, nu); }, 0, 0.5, 0, nullptr}, at, -15, 16);
            quantile("f" + key, {[nu](double x) { return gsl_ran_fdist_pdf(x, nu, 7); }, 0, 0, 0, nullptr}, at, 1e-9,
                     50);
            quantile("beta" + key, {[nu](double x) { return gsl_ran_beta_pdf(x, nu, 7); }, 0, 0, 0, nullptr}, at, 1e-9,
                     1);
        }
    }
}

/// Two hundred readings that anybody can make again, and what the library's own statistics say of them: the moving
/// ranges are differences of neighbours, their mean over d2 found by quadrature is sigma.
void chart()
{
    std::vector<double> values(200);
    std::vector<double> ranges(199);
    for (std::size_t i = 0; i < values.size(); ++i) {
        const auto n = static_cast<double>(i);
        values[i] = 1.4 + 0.05 * std::sin(12.9898 * n) + 0.02 * std::cos(78.233 * n * n);
        if (i > 0) ranges[i - 1] = std::abs(values[i] - values[i - 1]);
    }
    gsl_integration_workspace* space = gsl_integration_workspace_alloc(1000);
    gsl_function f{[](double x, void*) { return 2 * x * gsl_ran_gaussian_pdf(x, M_SQRT2); }, nullptr};
    double d2 = 0;
    double error = 0;
    gsl_integration_qagiu(&f, 0, 0, 1e-12, 1000, space, &d2, &error);
    gsl_integration_workspace_free(space);
    const double mean = gsl_stats_mean(values.data(), 1, values.size());
    const double range = gsl_stats_mean(ranges.data(), 1, ranges.size());
    say("chart_mean", mean);
    say("chart_range", range);
    say("chart_d2", d2);
    say("chart_upper", mean + 3 * range / d2);
    say("chart_lower", mean - 3 * range / d2);
    // Ranges of two have the spread sqrt(2 - d2^2) sigma.
    say("chart_d4", 1 + 3 * std::sqrt(2 - d2 * d2) / d2);
    const double s = gsl_stats_sd(values.data(), 1, values.size());
    say("chart_s", s);
    say("chart_pp", 0.6 / (6 * s));
    say("chart_ppk", std::min(1.75 - mean, mean - 1.15) / (3 * s));
}

/// Web between two drives, over two free rollers with drag: K 161000 N, spans 0.6, 0.45 and 0.8 m, J / R^2 2.5 kg each,
/// 0.3 N of drag, 0.3 ms of loss; taut with 50 N at 1 m/s when the second drive goes to 1.0003 m/s. Web at rest in each
/// span is what is counted.
void line()
{
    const double stiffness = 161000, mass = 2.5, drag = 0.3, loss = 3e-4;
    const std::array<double, 3> spans{0.6, 0.45, 0.8};
    const Slope slope = [=](double, const State& y) {
        const std::array<double, 4> speeds{1, y[3], y[4], 1.0003};
        std::array<double, 4> passes{1};
        std::array<double, 3> pulls{};
        for (std::size_t s = 0; s < 3; ++s) passes[s + 1] = speeds[s + 1] * y[s] / spans[s];
        State rate(5);
        for (std::size_t s = 0; s < 3; ++s) {
            rate[s] = passes[s] - passes[s + 1];
            pulls[s] = stiffness * (spans[s] / y[s] - 1 - loss * spans[s] / (y[s] * y[s]) * rate[s]);
        }
        for (std::size_t i = 0; i < 2; ++i) rate[3 + i] = (pulls[i + 1] - pulls[i] - drag) / mass;
        return rate;
    };
    const double strain = 50 / stiffness;
    const State begin{spans[0] / (1 + strain), spans[1] / (1 + strain), spans[2] / (1 + strain), 1, 1};
    for (const char* time : {"0.01", "0.1", "0.5"}) {
        const State y = integrate(slope, begin, 0, std::stod(time));
        for (std::size_t s = 0; s < 3; ++s)
            say(std::string("line_") + std::to_string(s) + "_" + time, stiffness * (spans[s] / y[s] - 1));
        say(std::string("line_speed_") + time, y[3]);
    }
}

}  // namespace

int main()
{
    rolls();
    span();
    strain();
    stop();
    capstan();
    tensor();
    twist();
    sensor();
    cascade();
    film();
    lateral();
    quantiles();
    chart();
    line();
    return 0;
}
