// SPDX-License-Identifier: GPL-3.0-or-later
#include <ostream>

#include "app/seams/demo_shop.h"
#include "app/verbs/answers.h"
#include "app/verbs/verbs.h"
#include "core/base/file.h"
#include "core/base/toml.h"
#include "core/inputs/inputs.h"
#include "core/practice/scenario.h"
#include "core/procedure/procedure.h"
#include "core/procedure/translation.h"
#include "core/targets/limits.h"
#include "core/units/plain.h"

namespace taut::app::verbs {

namespace {

/// What a file is, and everything that is wrong with it.
struct Checked {
    std::string file, is;
    Findings findings;
};

/// Reads with any reader of the family (text, file, notes) and keeps only what it said.
template <class Reader>
void noteAll(Reader reader, const std::string& text, const std::string& file, Findings& notes)
{
    if (const auto read = reader(text, file, notes); !read) notes.push_back(read.error());
}

/// What does not fit together within one file: a path that cannot be threaded, a roll no larger than its core.
template <class T>
void crossCheckAlone(const Result<T>& read, std::shared_ptr<const T> inputs::Inputs::*member, const std::string& file,
                     Findings& notes)
{
    if (!read) {
        notes.push_back(read.error());
        return;
    }
    inputs::Inputs alone;
    alone.*member = std::make_shared<const T>(*read);
    for (Finding& finding : inputs::crossCheck(alone)) {
        if (finding.severity == Severity::Note) continue;
        finding.subject = file + ' ' + finding.subject;
        notes.push_back(std::move(finding));
    }
}

/// A translation is held against its procedure, which lies beside it under its id.
void checkTranslation(const procedure::TranslationHead& head, const std::string& text, const std::string& file,
                      Findings& notes)
{
    const std::filesystem::path beside = std::filesystem::path(file).parent_path() / (head.procedure + ".toml");
    const auto original = readFile(beside);
    Findings unsaid;
    const auto procedure = original ? procedure::readProcedure(*original, beside.string(), unsaid)
                                    : Result<procedure::Procedure>(original.error());
    if (!procedure)
        notes.push_back(procedure.error());
    else if (const auto read = procedure::translated(*procedure, text, file, notes); !read)
        notes.push_back(read.error());
}

Result<Checked> checked(const std::string& file)
{
    const auto text = readFile(file);
    if (!text) return text.error();
    Checked all{file, inputs::whatIs(*text), {}};
    if (all.is.empty()) all.is = isPeopleFile(*text) ? "people" : "";
    const auto translation = procedure::translationHead(*text);
    if (all.is.empty() && translation) all.is = "translation";
    if (all.is == "press") {
        const auto press = inputs::readPress(*text, file, all.findings);
        crossCheckAlone(press, &inputs::Inputs::press, file, all.findings);
        if (press)
            for (Finding& finding : targets::checkLimits(*press)) {
                finding.subject = file + ' ' + finding.subject;
                all.findings.push_back(std::move(finding));
            }
    } else if (all.is == "job")
        noteAll(inputs::readJob, *text, file, all.findings);
    else if (all.is == "substrates")
        noteAll(inputs::readSubstrates, *text, file, all.findings);
    else if (all.is == "roll")
        crossCheckAlone(inputs::readRoll(*text, file, all.findings), &inputs::Inputs::roll, file, all.findings);
    else if (all.is == "procedure")
        noteAll(procedure::readProcedure, *text, file, all.findings);
    else if (all.is == "translation")
        checkTranslation(*translation, *text, file, all.findings);
    else if (all.is == "answers")
        noteAll(readAnswers, *text, file, all.findings);
    else if (all.is == "scenario")
        noteAll(practice::readScenario, *text, file, all.findings);
    else if (all.is == "actions")
        all.findings.push_back({"check.with_press",
                                Severity::Note,
                                file,
                                "What is done at a press is read with that press: tautweb practice does.",
                                {}});
    else if (all.is == "people")
        noteAll(readPeople, *text, file, all.findings);
    else if (const auto root = readToml(*text, file); !root)
        all.findings.push_back(root.error());
    else
        all.findings.push_back(
            refuse("check.not_ours", file,
                   "This is none of the files that tautweb reads: it has no [press], [job], "
                   "[[substrate]], [roll], [procedure], [translation], [[answer]], [scenario], [[action]] or "
                   "[[person]].",
                   "Check that this is the file you meant."));
    return all;
}

Exit run(const Options& options, const Console& console)
{
    const bool json = options.json();
    Json files = Json::array();
    bool inOrder = true;
    for (const std::string& file : options.words()) {
        const auto one = checked(file);
        if (!one) return refused(console, json, one.error());
        if (stops(one->findings)) inOrder = false;
        files.add(Json::object().set("file", file).set("is", one->is).set("findings", findingsJson(one->findings)));
        if (json) continue;
        for (const Finding& finding : one->findings)
            console.out << (finding.severity == Severity::Stop   ? "wrong  "
                            : finding.severity == Severity::Warn ? "think  "
                                                                 : "note   ")
                        << sentence(finding) << '\n';
        if (!stops(one->findings)) console.out << file << ": in order (" << one->is << ")\n";
    }
    if (json) print(console, answer().set("in_order", inOrder).set("files", std::move(files)));
    return inOrder ? Exit::Done : Exit::NotInOrder;
}

}  // namespace

Verb checkVerb()
{
    return {{"check", "FILE...", "reads input and procedure files and says what is wrong with them", {}, 1, 10000},
            run};
}

}  // namespace taut::app::verbs
