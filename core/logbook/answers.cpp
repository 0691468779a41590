// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/logbook/answers.h"

#include <algorithm>

#include "core/base/clock.h"
#include "core/inputs/inputs.h"
#include "core/logbook/search.h"
#include "core/seal/document.h"

namespace taut::logbook {

namespace {

std::int64_t msOf(const Json& at)
{
    const auto ms = readUtc(at.text());
    return ms ? *ms : 0;
}

std::string nameIn(const Json& people, const std::string& id)
{
    for (const Json& person : people.items())
        if (person["id"].text() == id) return person["name"].text();
    return {};
}

std::optional<double> numberIn(const Json& value)
{
    return value.isNumber() ? std::optional(value.number()) : std::nullopt;
}

bool isReading(const Json& step) { return step["value"].isNumber() && !step["target"].text().empty(); }

ReadingAnswer readingOf(const Json& step, const seal::Course& course)
{
    ReadingAnswer reading{step["step"].text(),
                          step["target"].text(),
                          step["unit"].text(),
                          step["entered"].text(),
                          step["verdict"].text(),
                          step["verdict"].text(),
                          step["by"].text(),
                          msOf(step["at"]),
                          step["value"].number(),
                          numberIn(step["low"]),
                          numberIn(step["high"]),
                          numberIn(step["uncertainty"]),
                          {}};
    if (const auto answer = course.answers.find(reading.step); answer != course.answers.end()) {
        reading.first = answer->second.first;
        reading.aimed = answer->second.aimed;
    }
    return reading;
}

}  // namespace

JobWords jobWords(std::string_view toml)
{
    Findings notes;
    const auto job = inputs::readJob(toml, "job", notes);
    return job ? JobWords{job->title, job->customerReference} : JobWords{};
}

RunAnswers answersOf(const Json& body, seal::Course course, const JobWords& job)
{
    const Json& inputs = body["inputs"];
    RunAnswers answers;
    answers.run = body["id"].text();
    answers.press = inputs["press"]["id"].text();
    answers.job = inputs["job"]["id"].text();
    answers.substrate = inputs["substrate"]["id"].text();
    answers.roll = inputs["roll"]["id"].text();
    answers.person = body["operator"].text();
    answers.personName = nameIn(body["people"], answers.person);
    answers.state = body["state"].text();
    answers.verdict = body["verdict"].text();
    answers.kind = body["run_kind"].text();
    answers.pressSha = inputs["press"]["sha256"].text();
    answers.begunMs = msOf(body["begun"]);
    answers.endedMs = msOf(body["ended"]);
    answers.pressEdition = inputs["press"]["edition"].integer();
    answers.deviations = static_cast<std::int64_t>(body["deviations"].items().size());
    answers.offsetMinutes = readOffset(body["offset"].text()).value_or(0);
    for (const Json& step : seal::stepsOf(body))
        if (isReading(step)) answers.readings.push_back(readingOf(step, course));
    std::sort(answers.readings.begin(), answers.readings.end(),
              [](const ReadingAnswer& a, const ReadingAnswer& b) { return a.step < b.step; });
    answers.course = std::move(course);
    answers.words = wordsOf(body, job, answers.personName);
    return answers;
}

}  // namespace taut::logbook
