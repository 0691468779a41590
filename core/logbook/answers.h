// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/base/json.h"
#include "core/seal/course.h"

namespace taut::logbook {

/// What a job is called and whose it is, as its definition says.
struct JobWords {
    std::string title, customer;
};
/// Of a definition's text; empty where it cannot be read.
[[nodiscard]] JobWords jobWords(std::string_view toml);

/// Words by which a run is found.
struct Words {
    std::string run, job, title, customer, substrate, rolls, person, remarks;
    friend bool operator==(const Words&, const Words&) = default;
};

/// A reading as a run's document states it last, and how its step came to it.
struct ReadingAnswer {
    std::string step, target, unit, entered, verdict, first;  ///< first: verdict when it was first entered
    std::string person;
    std::int64_t atMs{};
    double value{};
    std::optional<double> low, high, uncertainty, aimed;
};

/// What a run's document answers: everything that stands of it in the tables beside the chain.
struct RunAnswers {
    std::string run, press, job, substrate, roll, person, personName, state, verdict, kind, pressSha;
    std::int64_t begunMs{}, endedMs{}, pressEdition{}, deviations{};
    int offsetMinutes{};
    std::vector<ReadingAnswer> readings;  ///< in the order of their steps' ids
    seal::Course course;
    Words words;
};
/// Of a run's document, whose course was read and whose job is called so.
[[nodiscard]] RunAnswers answersOf(const Json& body, seal::Course course, const JobWords& job);

}  // namespace taut::logbook
