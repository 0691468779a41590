// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/verbs/history_verb.h"

#include <array>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <ostream>

#include "app/made/history.h"
#include "app/seams/resources.h"
#include "core/units/parse.h"

namespace taut::app::verbs {

namespace {

constexpr std::array kOnlyWithHistory{"--runs", "--short", "--seed",  "--drift",
                                      "--lot",  "--shift", "--until", "--logbook"};
constexpr std::array kNeverWithHistory{"--out", "--press", "--answers"};
constexpr int kMostYears = 30;

Finding wrongValue(const char* option, const std::string& value, Text remedy)
{
    return refuse("option.wrong_value", option, {"%1 cannot be %2.", {std::string(option), value}}, std::move(remedy));
}

/// What was said, or `otherwise`.
Result<std::uint64_t> wholeOf(const Options& options, const char* name, std::uint64_t otherwise)
{
    if (!options.has(name)) return otherwise;
    const std::string value = options.value(name);
    char* end = nullptr;
    const unsigned long long whole = std::strtoull(value.c_str(), &end, 10);
    if (value.empty() || *end != '\0' || value.front() < '0' || value.front() > '9')
        return wrongValue(name, value, "Write a whole number.");
    return whole;
}

Result<double> strengthOf(const Options& options, const char* name)
{
    if (!options.has(name)) return 1.0;
    const auto number = parseNumber(options.value(name));
    if (!number) return wrongValue(name, options.value(name), "Write a number from 0 (not there) to 5; 1 is as usual.");
    return *number;
}

Result<int> yearsOf(const std::string& value)
{
    char* end = nullptr;
    const long years = std::strtol(value.c_str(), &end, 10);
    const std::string_view unit(end);
    if (years < 1 || years > kMostYears || (unit != "y" && !unit.empty()))
        return wrongValue("--history", value, {"Write years: 2y, at most %1.", {std::int64_t{kMostYears}}});
    return static_cast<int>(years);
}

Result<made::Wish> wishOf(const Options& options)
{
    made::Wish wish;
    const auto years = yearsOf(options.value("--history"));
    if (!years) return years.error();
    wish.years = *years;
    wish.brief = options.has("--short");
    const auto seed = wholeOf(options, "--seed", wish.seed), runs = wholeOf(options, "--runs", wish.runs);
    for (const auto* one : {&seed, &runs})
        if (!*one) return one->error();
    wish.seed = *seed;
    wish.runs = static_cast<std::size_t>(*runs);
    for (const auto& [name, member] :
         {std::pair{"--drift", &wish.drift}, std::pair{"--lot", &wish.lot}, std::pair{"--shift", &wish.shift}}) {
        const auto strength = strengthOf(options, name);
        if (!strength) return strength.error();
        *member = *strength;
    }
    if (options.has("--until")) {
        const auto until = made::dayFrom(options.value("--until"));
        if (!until) return wrongValue("--until", options.value("--until"), "Write a day as 2026-11-27.");
        wish.until = *until;
    }
    return wish;
}

}  // namespace

std::optional<Finding> historyMisused(const Options& options)
{
    if (options.has("--history")) {
        for (const char* name : kNeverWithHistory)
            if (options.has(name))
                return refuse("option.not_together", name,
                              {"%1 and --history do not go together.", {std::string(name)}},
                              "Leave one of them out; where a history is written --logbook says.");
        if (!options.has("--logbook"))
            return refuse("option.missing", "--logbook", "It was not said where the history is to be written.",
                          "Name a file that is not there yet: --logbook FILE.");
        return std::nullopt;
    }
    for (const char* name : kOnlyWithHistory)
        if (options.has(name))
            return refuse("option.not_together", name, {"%1 belongs to a history.", {std::string(name)}},
                          "Add --history 2y, or leave it out.");
    return std::nullopt;
}

Exit makeHistory(const Options& options, const Console& console)
{
    const bool json = options.json();
    const auto wish = wishOf(options);
    if (!wish) return refused(console, json, wish.error());
    const auto resources = resourcesFolder();
    if (!resources) return refused(console, json, resources.error());
    const std::filesystem::path file = options.value("--logbook");
    const SystemClock clock;
    const std::int64_t start = clock.steadyMs();
    constexpr std::int64_t kTellMs = 2000;
    std::int64_t told = start;
    const auto tell = [&](const made::Progress& progress) {
        if (progress.day.empty() || clock.steadyMs() - told < kTellMs) return;
        told = clock.steadyMs();
        console.err << "  " << progress.runs << " of " << progress.of << " runs, up to " << progress.day << std::endl;
    };
    const auto made = made::makeHistory(*wish, *resources, file, tell);
    if (!made) return refused(console, json, made.error());
    const double seconds = static_cast<double>(clock.steadyMs() - start) / 1000;
    std::error_code error;
    const auto bytes = static_cast<std::int64_t>(std::filesystem::file_size(file, error));
    if (json) {
        print(console, answer()
                           .set("logbook", file.string())
                           .set("runs", static_cast<std::int64_t>(made->runs))
                           .set("seals", static_cast<std::int64_t>(made->seals))
                           .set("bytes", bytes)
                           .set("from", utcText(made->beganMs))
                           .set("to", utcText(made->endedMs)));
        return Exit::Done;
    }
    console.out << "Made " << made->runs << " runs and what was said of them, " << made->seals << " seals in all, from "
                << utcText(made->beganMs).substr(0, 10) << " to " << utcText(made->endedMs).substr(0, 10) << ", in "
                << std::llround(seconds) << " s.\nThe shop, its people and their keys are a demo's: what they signed "
                << "proves nothing.\n\nlogbook  " << file.string() << '\n';
    return Exit::Done;
}

}  // namespace taut::app::verbs
