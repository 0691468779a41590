// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/history/refit.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/history/names.h"
#include "core/inputs/spoken.h"
#include "core/records/sheet.h"
#include "core/report/parts.h"

namespace taut::history {

namespace {

using report::cell;
using report::data;
using report::whole;

/// A reading of this run, by its target; nullopt when there is none or it does not stand.
std::optional<Quantity> readIn(const run::Run& run, const std::string& target)
{
    for (const procedure::Step& step : run.plan().steps) {
        if (step.target != target) continue;
        const run::StepStanding standing = run.standing(step.id);
        if (standing.answer && standing.answer->value && !run::isOpen(standing.state)) return standing.answer->value;
    }
    return std::nullopt;
}

/// The diameter with which the run's targets reckoned the torque of this zone.
std::optional<Quantity> diameterIn(const run::Run& run, const std::string& zone)
{
    const targets::Target* target = run.targets().find("tension." + zone + ".torque");
    const targets::Ready* ready = target == nullptr ? nullptr : target->ready();
    if (ready == nullptr) return std::nullopt;
    for (const targets::Given& given : ready->because.given)
        if (given.symbol.str() == "D")
            if (const auto* value = std::get_if<Quantity>(&given.value)) return *value;
    return std::nullopt;
}

std::optional<RunPull> pullOf(const run::Run& run, const std::string& zone)
{
    const auto setting = readIn(run, "tension." + zone + ".setting");
    const auto tension = readIn(run, "tension." + zone + ".total");
    const auto diameter = diameterIn(run, zone);
    if (!setting || !tension || !diameter || !(tension->si() > 0)) return std::nullopt;
    return RunPull{run.id(),  run.events().front().stamp().utcMs, *setting, *tension,
                   *diameter, tension->si() * diameter->si() / 2};
}

Result<std::vector<RunPull>> pullsOf(const records::Reader& reader, const std::string& press, const std::string& zone,
                                     std::size_t most)
{
    // Which runs read a tension there is asked of the readings: the others need not be folded.
    records::SeriesQuery query;
    query.press = press;
    query.target = "tension." + zone + ".total";
    query.limit = most;
    const auto page = reader.readings(query, "");
    if (!page) return page.error();
    std::vector<RunPull> pulls;
    std::string last;
    for (const records::Reading& reading : page->rows) {
        if (reading.run == last) continue;
        last = reading.run;
        const auto run = records::runOf(reader, reading.run);
        if (!run) return run.error();
        if (auto pull = pullOf(*run, zone)) pulls.push_back(*std::move(pull));
    }
    std::reverse(pulls.begin(), pulls.end());
    return pulls;
}

/// The torque made a force at one metre, so that the same line is laid as through the pulls of a spring scale.
std::vector<inputs::Pull> atOneMetre(const std::vector<RunPull>& pulls)
{
    std::vector<inputs::Pull> all;
    for (const RunPull& pull : pulls) all.push_back({pull.setting, Quantity(pull.torque, Kind::Force, "N")});
    return all;
}

}  // namespace

std::vector<std::string> refittable(const inputs::Press& press)
{
    std::vector<std::string> zones;
    for (const inputs::Zone& zone : press.zones)
        if (zone.control == inputs::Control::OpenLoop && zone.torquePerSetting) zones.push_back(zone.id);
    return zones;
}

Result<Refit> refitOf(const records::Reader& reader, const inputs::Press& press, const std::string& zone,
                      std::size_t most)
{
    auto pulls = pullsOf(reader, press.id, zone, most);
    if (!pulls) return pulls.error();
    return refitFrom(*std::move(pulls), press, zone);
}

Result<Refit> refitFrom(std::vector<RunPull> pulls, const inputs::Press& press, const std::string& zoneId)
{
    const inputs::Zone* zone = press.zone(zoneId);
    if (zone == nullptr || zone->control != inputs::Control::OpenLoop || !zone->torquePerSetting)
        return refuse("refit.no_zone", zoneId, {"%1 has no zone %2 whose setting makes a torque.", {press.id, zoneId}},
                      "Choose a zone with a torque per setting.");
    if (pulls.size() < kFewestPulls)
        return refuse("refit.too_few", zoneId,
                      {"Only %1 signed runs read both the setting and the tension of this zone; %2 are the least.",
                       {whole(pulls.size()), whole(kFewestPulls)}},
                      "Wait for more runs, or find the constant with a spring scale.");
    const auto [low, high] = std::minmax_element(
        pulls.begin(), pulls.end(), [](const RunPull& a, const RunPull& b) { return a.setting.si() < b.setting.si(); });
    if (high->setting.si() < kLeastSpread * low->setting.si())
        return refuse("refit.no_spread", zoneId,
                      "The settings of these runs lie too near together to tell a line from.",
                      "Wait for runs with other rolls or materials, or find the constant with a spring scale.");
    std::vector<physics::Pair> pairs;
    for (const RunPull& pull : pulls) pairs.push_back({pull.setting.si(), pull.torque});
    const auto fit = physics::fitLine(pairs);
    if (!fit) return fit.error();
    // What one reading may be off by stands in the scatter of so many runs.
    const auto now = inputs::constantOf(Length::si(2), atOneMetre(pulls), {Quantity(0, Kind::Force), {}, {}, {}});
    if (!now) return now.error();
    Refit refit{press.id,
                zoneId,
                press.name.empty() ? press.id : press.name,
                inputs::spokenName(*zone),
                std::move(pulls),
                *fit,
                *now,
                zone->torquePerSetting->si(),
                false};
    const physics::Interval interval = fit->coefficients[1].interval;
    refit.drifted = refit.profileSlope < interval.low || refit.profileSlope > interval.high;
    return refit;
}

report::Report refitReport(const Refit& refit, UnitSystem units, int offsetMinutes)
{
    report::Report report;
    report.title = Text("What the setting of %1 makes now", {refit.zoneName});
    report.subtitle = Text("%1, by its signed runs", {refit.pressName});
    report.foot = "Told from sealed runs";
    report.units = units;
    const Quantity& slope = refit.now.torquePerSetting;
    const auto asSlope = [&](double si) { return Quantity(si, slope.kind(), slope.unit()); };
    const physics::Interval interval = refit.fit.coefficients[1].interval;
    report::Facts facts;
    facts.pairs = {{"Torque per setting, profile", cell(asSlope(refit.profileSlope))},
                   {"Torque per setting, these runs", cell(slope)},
                   {"Between, with 95 %",
                    cell(Text("%1 and %2", {asSlope(interval.low).magnitude(), asSlope(interval.high).magnitude()}))},
                   {"Begins to hold at", cell(refit.now.zeroSetting)},
                   {"Runs", cell(Text("%1", {whole(refit.pulls.size())}))},
                   {"Days", cell(data(dayText(refit.pulls.front().atMs, offsetMinutes) + " \u2026 " +
                                      dayText(refit.pulls.back().atMs, offsetMinutes)))}};
    report.sections.emplace_back(std::move(facts));
    report.sections.emplace_back(report::Paragraph{
        refit.drifted ? Text("The constant of the profile is not the one that these runs measured.")
                      : Text("The constant of the profile still fits: these runs give no reason to change it."),
        true});
    if (refit.drifted)
        report.sections.emplace_back(
            report::Caution{procedure::SignalWord::Notice,
                            "Look at brake, lining, air and gauge first: a worn brake is mended, not entered."});

    report::Chart chart;
    chart.caption = "Torque against setting";
    chart.xName = "Setting";
    chart.yName = "Torque";
    const auto at = [&](double setting) {
        return std::pair(Quantity(setting, refit.pulls.front().setting.kind(), refit.pulls.front().setting.unit()),
                         Quantity(refit.fit.at(setting), Kind::Torque, "N m"));
    };
    const auto [low, high] =
        std::minmax_element(refit.pulls.begin(), refit.pulls.end(),
                            [](const RunPull& a, const RunPull& b) { return a.setting.si() < b.setting.si(); });
    report::Chart::Line line;
    line.name = "these runs";
    line.points = {at(low->setting.si()), at(high->setting.si())};
    chart.lines.push_back(std::move(line));
    for (std::size_t i = 0; i < refit.pulls.size(); ++i) {
        const RunPull& pull = refit.pulls[i];
        const bool off = std::find(refit.fit.outliers.begin(), refit.fit.outliers.end(), i) != refit.fit.outliers.end();
        chart.spots.push_back({off ? report::Chart::What::Leaves : report::Chart::What::Change, pull.setting,
                               Quantity(pull.torque, Kind::Torque, "N m"),
                               off ? Text("does not belong") : Text("a run")});
    }
    chart.summary = {Text("%1 more torque for each unit of the setting, from %2 runs.",
                          {slope.magnitude(), whole(refit.pulls.size())})};
    report.sections.emplace_back(std::move(chart));

    report::Table table;
    table.caption = "The runs";
    table.size = report::Size::Small;
    table.columns = {{"Run", report::Align::Left, 4},       {"Day", report::Align::Left, 3},
                     {"Setting", report::Align::Right, 2},  {"Tension", report::Align::Right, 2},
                     {"Diameter", report::Align::Right, 2}, {"Off the line by", report::Align::Right, 3},
                     {"", report::Align::Left, 3}};
    for (std::size_t i = 0; i < refit.pulls.size(); ++i) {
        const RunPull& pull = refit.pulls[i];
        const bool off = std::find(refit.fit.outliers.begin(), refit.fit.outliers.end(), i) != refit.fit.outliers.end();
        table.rows.push_back({cell(data(pull.run)), cell(data(dayText(pull.atMs, offsetMinutes))), cell(pull.setting),
                              cell(pull.tension), cell(pull.diameter),
                              cell(Quantity(refit.fit.residuals[i], Kind::Torque, "N m")),
                              cell(off ? Text("does not belong") : Text())});
    }
    report.sections.emplace_back(std::move(table));
    return report;
}

Result<std::string> refitted(std::string_view pressToml, const Refit& refit)
{
    std::string source = std::to_string(refit.pulls.size()) + " runs:";
    for (const RunPull& pull : refit.pulls) source += ' ' + pull.run;
    return inputs::withConstant(pressToml, refit.zone, refit.now, source);
}

}  // namespace taut::history
