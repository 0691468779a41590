// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/verbs/inputs_from.h"

#include <system_error>

#include "core/base/file.h"
#include "core/base/toml.h"
#include "core/inputs/fill.h"
#include "core/logbook/logbook.h"
#include "core/units/parse.h"

namespace taut::app::verbs {

namespace {

namespace fs = std::filesystem;

bool isFile(const fs::path& path)
{
    std::error_code error;
    return fs::is_regular_file(path, error);
}

std::string named(std::string_view what) { return std::string(what); }

/// Where definitions may be known from besides a file that is named.
struct Known {
    std::optional<fs::path> resources;
    fs::path logbook;  ///< "" = none was named
};

/// The newest edition of each definition of a kind in a logbook.
Result<std::vector<InputFile>> keptIn(const fs::path& logbook, std::string_view what)
{
    const auto reader = logbook::openReader(logbook);
    if (!reader) return reader.error();
    auto all = (*reader)->definitions(what);
    if (!all) return all.error();
    std::vector<InputFile> kept;
    for (run::Source& one : *all) kept.push_back({one.id, std::move(one.text), logbook.filename().string()});
    return kept;
}

Result<std::vector<InputFile>> knownOf(const Known& known, std::string_view what)
{
    std::vector<InputFile> all;
    if (!known.logbook.empty() && what != "roll") {
        auto kept = keptIn(known.logbook, what);
        if (!kept) return kept.error();
        all = std::move(*kept);
    }
    if (known.resources)
        for (InputFile& one : shopFiles(*known.resources, what)) all.push_back(std::move(one));
    return all;
}

Result<InputFile> chosen(std::vector<InputFile> found, std::string_view what, const std::string& id,
                         const std::string& where)
{
    for (InputFile& one : found)
        if (id.empty() ? found.size() == 1 : one.id == id) return std::move(one);
    std::vector<std::string> ids;
    std::string list;
    for (const InputFile& one : found) {
        ids.push_back(one.id);
        list += (list.empty() ? "" : ", ") + one.id;
    }
    if (found.empty())
        return refuse("input.not_in_file", where, {"There is no %1 in this file.", {named(what)}},
                      {"tautweb check %1 says what is in it and what is wrong.", {where}});
    if (id.empty())
        return refuse("input.which", where, {"This file holds more than one %1: %2.", {named(what), list}},
                      {"Say which one: %1#%2.", {where, ids.front()}});
    const std::string near = nearest(id, ids);
    return refuse("input.unknown", id, {"No %1 of this id is known in %2.", {named(what), where}},
                  near.empty() ? Text("Known are: %1. A file of your own may be named too.", {list})
                               : Text("Did you mean %1? A file of your own may be named too.", {near}));
}

Result<InputFile> fromFile(const fs::path& path, std::string_view what, const std::string& id)
{
    auto text = readFile(path);
    if (!text) return text.error();
    if (auto root = readToml(*text, path.string()); !root) return root.error();
    return chosen(definitionsIn(what, *text, path.string()), what, id, path.string());
}

Result<InputFile> find(const Known& known, std::string_view what, const std::string& said)
{
    if (isFile(said)) return fromFile(said, what, {});
    const std::size_t hash = said.rfind('#');
    if (hash != std::string::npos && hash > 0) return fromFile(said.substr(0, hash), what, said.substr(hash + 1));
    // What looks like a path was meant as one: then a missing file is the message that helps.
    if (said.find('/') != std::string::npos || said.ends_with(".toml")) return fromFile(said, what, {});
    auto all = knownOf(known, what);
    if (!all) return all.error();
    return chosen(std::move(*all), what, said, known.logbook.empty() ? "the resources" : known.logbook.string());
}

/// The substrate that the job names: from a file beside the job, one folder up, or wherever definitions are known.
Result<InputFile> substrateOfJob(const Known& known, const InputFile& job)
{
    std::string id;
    if (const auto root = readToml(job.text, job.file))
        if (const Toml* table = root->find("job"))
            if (const Toml* named = table->find("substrate"); named != nullptr && named->text() != nullptr)
                id = *named->text();
    if (id.empty())
        return refuse("input.missing_option", "--substrate", "The job names no substrate, and none was said.",
                      "Add --substrate, or substrate = \"...\" to the job.");
    const fs::path folder = fs::path(job.file).parent_path();
    for (const fs::path& place : {folder / "substrates.toml", folder / ".." / "substrates.toml"})
        if (isFile(place))
            if (auto found = fromFile(place, "substrate", id)) return found;
    return find(known, "substrate", id);
}

}  // namespace

std::vector<OptionSpec> inputOptions()
{
    return {{"--press", "P", "the press: a file, or an id"},
            {"--job", "J", "the job: a file, or an id"},
            {"--roll", "R", "the roll: a file, or an id"},
            {"--substrate", "S", "the substrate: a file, FILE#id, or an id; else the one that the job names"},
            {"--logbook", "FILE", "also look for ids in this logbook"},
            {"--diameter", "Q", "the roll's diameter now, when it is no longer what its file says"},
            {"--web-in-press", "yes|no", "whether a web is still threaded (yes when not said)"}};
}

Result<InputFiles> inputFiles(const Options& options)
{
    return inputFiles(InputNames{options.value("--press"), options.value("--job"), options.value("--roll"),
                                 options.value("--substrate"), options.value("--logbook")});
}

Result<InputFiles> inputFiles(const InputNames& names)
{
    Known known;
    known.logbook = names.logbook;
    const auto resources = resourcesFolder();
    if (resources) known.resources = *resources;
    InputFiles files;
    struct Wanted {
        const char* option;
        const char* what;
        const std::string& said;
        InputFile InputFiles::*member;
    };
    for (const Wanted& wanted : {Wanted{"--press", "press", names.press, &InputFiles::press},
                                 Wanted{"--job", "job", names.job, &InputFiles::job},
                                 Wanted{"--roll", "roll", names.roll, &InputFiles::roll}}) {
        if (wanted.said.empty())
            return refuse("input.missing_option", wanted.option, {"The %1 is not said.", {named(wanted.what)}},
                          {"Add %1 with a file or an id.", {std::string(wanted.option)}});
        auto file = find(known, wanted.what, wanted.said);
        if (!file) return file.error();
        files.*wanted.member = std::move(*file);
    }
    auto substrate =
        names.substrate.empty() ? substrateOfJob(known, files.job) : find(known, "substrate", names.substrate);
    if (!substrate) return substrate.error();
    files.substrate = std::move(*substrate);
    return files;
}

Result<inputs::Inputs> readInputs(const InputFiles& files, Findings& notes)
{
    inputs::Inputs all;
    auto press = inputs::readPress(files.press.text, files.press.file, notes);
    if (!press) return press.error();
    all.press = std::make_shared<const inputs::Press>(std::move(*press));
    auto job = inputs::readJob(files.job.text, files.job.file, notes);
    if (!job) return job.error();
    all.job = std::make_shared<const inputs::Job>(std::move(*job));
    auto substrates = inputs::readSubstrates(files.substrate.text, files.substrate.file, notes);
    if (!substrates) return substrates.error();
    for (inputs::Substrate& one : *substrates)
        if (one.id == files.substrate.id) all.substrate = std::make_shared<const inputs::Substrate>(std::move(one));
    if (all.substrate == nullptr)
        return refuse("input.not_in_file", files.substrate.file,
                      {"The substrate %1 cannot be read from this file.", {files.substrate.id}},
                      {"tautweb check %1 says what is wrong.", {files.substrate.file}});
    auto roll = inputs::readRoll(files.roll.text, files.roll.file, notes);
    if (!roll) return roll.error();
    all.roll = std::make_shared<const inputs::Roll>(inputs::filledFromTag(std::move(*roll)));
    return all;
}

Result<Circumstances> circumstances(const Options& options)
{
    Circumstances all;
    if (const std::string said = options.value("--diameter"); !said.empty()) {
        auto diameter = parseQuantity(said, Kind::Length);
        if (!diameter) {
            Finding finding = diameter.error();
            finding.subject = "--diameter";
            return finding;
        }
        if (!inputs::isRollDiameter(diameter->as<Kind::Length>()))
            return refuse("input.out_of_range", "--diameter", {"A roll cannot measure %1 across.", {said}},
                          "Measure straight across the roll's face, and give the figure with its unit.");
        all.presentDiameter = diameter->as<Kind::Length>();
    }
    if (const std::string said = options.value("--web-in-press"); !said.empty()) {
        if (said != "yes" && said != "no")
            return refuse("option.no_value", "--web-in-press", {"%1 is neither yes nor no.", {said}},
                          "Write --web-in-press yes or --web-in-press no.");
        all.webInPress = said == "yes";
    }
    return all;
}

Result<run::Sources> sourcesOf(const InputFiles& files, std::string_view procedure)
{
    const auto resources = resourcesFolder();
    if (!resources) return resources.error();
    for (const InputFile& one : shopFiles(*resources, "procedure")) {
        if (one.id != procedure) continue;
        return run::Sources{run::sourceOf(files.press.id, 1, files.press.text),
                            run::sourceOf(files.job.id, 1, files.job.text),
                            run::sourceOf(files.substrate.id, 1, files.substrate.text),
                            run::sourceOf(files.roll.id, 0, files.roll.text), run::sourceOf(one.id, 1, one.text)};
    }
    return refuse("resources.missing", std::string(procedure),
                  {"The procedure %1 is not among the resources in %2.", {std::string(procedure), resources->string()}},
                  "Install the program again, or set TAUTWEB_RESOURCES to a folder that has it.");
}

}  // namespace taut::app::verbs
