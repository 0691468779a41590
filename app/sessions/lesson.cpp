// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/sessions/lesson.h"

#include <algorithm>

#include "app/seams/resources.h"
#include "app/seams/translations.h"
#include "app/text/language.h"
#include "core/base/file.h"

namespace taut::app {

namespace {

namespace fs = std::filesystem;

Result<run::Source> sourceFor(const char* what, const std::string& id, const Session& shop)
{
    for (const logbook::Definition& one : shop.definitions(what))
        if (one.source.id == id) return one.source;
    for (const InputFile& file : shopFiles(shop.options().resources, what))
        if (file.id == id) return run::sourceOf(file.id, 0, file.text);
    return refuse("practice.unknown", id,
                  {"The scenario wants the %1 %2, which is known neither here nor among what comes with the program.",
                   {std::vector<Text>{what}, id}},
                  "Take it in behind the door Shop, or choose another scenario.");
}

}  // namespace

Result<LessonFile> lessonFrom(const fs::path& file)
{
    const auto text = readFile(file);
    if (!text) return text.error();
    LessonFile lesson{file, {}, {}, *text};
    auto scenario = practice::readScenario(*text, file.string(), lesson.notes);
    if (!scenario) return scenario.error();
    if (stops(lesson.notes)) return lesson.notes.front();
    lesson.scenario = *std::move(scenario);
    return lesson;
}

std::vector<LessonFile> lessonsIn(const fs::path& resources)
{
    std::vector<fs::path> files;
    std::error_code error;
    for (const auto& entry : fs::directory_iterator(resources / "demo" / "scenarios", error))
        if (entry.path().extension() == ".toml") files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    std::vector<LessonFile> all;
    for (const fs::path& file : files)
        if (auto lesson = lessonFrom(file)) all.push_back(*std::move(lesson));
    return all;
}

Result<Lesson> lessonOf(const practice::Scenario& scenario, std::string text, const Session& shop)
{
    Lesson lesson{scenario, run::sourceOf(scenario.id, 0, std::move(text)), {}, {}, {}};
    const auto fetch = [&](const char* what, const std::string& id, run::Source& into) -> Result<Done> {
        auto source = sourceFor(what, id, shop);
        if (!source) return source.error();
        into = *std::move(source);
        return Done{};
    };
    if (auto done = fetch("press", scenario.press, lesson.sources.press); !done) return done.error();
    if (auto done = fetch("job", scenario.job, lesson.sources.job); !done) return done.error();
    if (auto done = fetch("roll", scenario.roll, lesson.sources.roll); !done) return done.error();
    if (auto done = fetch("procedure", scenario.procedure, lesson.sources.procedure); !done) return done.error();
    Findings notes;
    const auto job = inputs::readJob(lesson.sources.job.text, lesson.sources.job.id, notes);
    if (!job) return job.error();
    if (auto done = fetch("substrate", job->substrate, lesson.sources.substrate); !done) return done.error();
    lesson.sources.translation =
        translationFor(shop.options().resources, lesson.sources.procedure, language().toStdString());
    auto basis = run::basisFor(lesson.sources, {});
    if (!basis) return basis.error();
    lesson.inputs = std::move(basis->inputs);
    lesson.targets = std::move(basis->targets);
    return lesson;
}

}  // namespace taut::app
