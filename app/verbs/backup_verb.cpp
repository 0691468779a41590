// SPDX-License-Identifier: GPL-3.0-or-later
#include <charconv>
#include <ostream>

#include "app/seams/resources.h"
#include "app/verbs/verbs.h"
#include "core/logbook/copy.h"
#include "core/logbook/mirror.h"
#include "core/units/plain.h"

namespace taut::app::verbs {

namespace {

namespace fs = std::filesystem;

Finding missing(const char* option, const char* english)
{
    return refuse("option.missing", option, english, {"Write %1 and the name after it.", {std::string(option)}});
}

Result<logbook::CopyPlan> planOf(const Options& options)
{
    logbook::CopyPlan plan;
    if (!options.has("--keep")) return plan;
    const std::string said = options.value("--keep");
    const auto [end, error] = std::from_chars(said.data(), said.data() + said.size(), plan.keep);
    if (error != std::errc{} || end != said.data() + said.size() || plan.keep < 2 || plan.keep > 1000)
        return refuse("option.no_value", "--keep", {"%1 is not a number of copies.", {said}},
                      "Write a whole number from 2 to 1000.");
    return plan;
}

Exit mirror(const fs::path& logbook, const fs::path& folder, const Options& options, const Console& console)
{
    const logbook::MirrorState state = logbook::mirrorTo(logbook, folder, SystemClock().now());
    // A logbook that cannot be read at all is no matter of the mirror.
    if (state.file.empty() && state.findings.size() == 1 && state.findings.front().code.rfind("logbook.", 0) == 0)
        return refused(console, options.json(), state.findings.front());
    if (options.json()) {
        print(console, answer()
                           .set("mirror", state.file.empty() ? Json() : Json(state.file.string()))
                           .set("count", state.count)
                           .set("behind", state.behind)
                           .set("findings", findingsJson(state.findings)));
    } else {
        noted(console, state.findings);
        if (state.holdsAll())
            console.out << state.file.string() << ": " << state.count << " seals, all that the logbook has\n";
    }
    return worst(state.findings, state.holdsAll() ? Exit::Done : Exit::NotInOrder);
}

Exit run(const Options& options, const Console& console)
{
    const bool json = options.json();
    if (!options.has("--to"))
        return refused(console, json, missing("--to", "It was not said in which folder the copy is to be kept."));
    const fs::path logbook = logbookOf(options), folder = options.value("--to");
    if (options.has("--mirror")) return mirror(logbook, folder, options, console);
    const auto plan = planOf(options);
    if (!plan) return refused(console, json, plan.error());
    const Instant now = SystemClock().now();
    Result<std::optional<logbook::Copied>> made = std::optional<logbook::Copied>();
    if (options.has("--if-due"))
        made = logbook::copyIfDue(logbook, folder, now, *plan);
    else if (auto copied = logbook::copyTo(logbook, folder, now, *plan))
        made = std::optional(*std::move(copied));
    else
        made = copied.error();
    if (!made) {
        const Exit exit = refused(console, json, made.error());
        // That the logbook is not in order is an answer, not a wrong question.
        return made.error().code == "copy.not_in_order" ? Exit::NotInOrder : exit;
    }
    if (!*made) {
        if (json)
            print(console, answer().set("copy", Json()).set("findings", Json::array()));
        else
            console.out << "No copy is due: the newest of this logbook in " << folder.string() << " is less than "
                        << plan->everyMs / kDayMs << " days old.\n";
        return Exit::Done;
    }
    const std::optional<logbook::Copied>& copied = *made;
    if (json) {
        Json removed = Json::array();
        for (const fs::path& file : copied->removed) removed.add(file.string());
        print(console, answer()
                           .set("copy", copied->file.string())
                           .set("count", copied->end.count)
                           .set("link", hex(copied->end.link))
                           .set("removed", std::move(removed))
                           .set("findings", findingsJson(copied->findings)));
    } else {
        noted(console, copied->findings);
        console.out << copied->file.string() << ": read again and in order, " << copied->end.count << " seals\n";
        for (const fs::path& file : copied->removed) console.out << "removed " << file.string() << '\n';
    }
    return worst(copied->findings, Exit::Done);
}

Exit restoreRun(const Options& options, const Console& console)
{
    const bool json = options.json();
    if (!options.has("--from"))
        return refused(console, json, missing("--from", "It was not said which copy is to be restored."));
    if (!options.has("--to"))
        return refused(console, json, missing("--to", "It was not said under which name it is to be restored."));
    logbook::RestorePlan plan;
    auto anchors = anchorsIn(options);
    if (!anchors) return refused(console, json, anchors.error());
    plan.anchors = *std::move(anchors);
    plan.peopleFrom = options.value("--people-from");
    const auto restored =
        logbook::restoreFrom(options.value("--from"), options.value("--to"), SystemClock().now(), plan);
    if (!restored) return refused(console, json, restored.error());
    if (json) {
        print(console, answer()
                           .set("logbook", restored->file.string())
                           .set("count", restored->end.count)
                           .set("link", hex(restored->end.link))
                           .set("set_aside", restored->setAside.empty() ? Json() : Json(restored->setAside.string()))
                           .set("aside_count", restored->asideEnd ? Json(restored->asideEnd->count) : Json())
                           .set("people", restored->people)
                           .set("can_sign_in", restored->withDoors)
                           .set("findings", findingsJson(restored->findings)));
    } else {
        noted(console, restored->findings);
        console.out << restored->file.string() << ": restored and in order, " << restored->end.count << " seals\n";
        if (!restored->setAside.empty()) {
            console.out << "What lay there before is kept as " << restored->setAside.string();
            if (restored->asideEnd) console.out << ", " << restored->asideEnd->count << " seals";
            console.out << ".\n";
        }
        console.out << restored->withDoors << " of " << restored->people << " people can sign in.\n";
    }
    return worst(restored->findings, Exit::Done);
}

}  // namespace

Verb backupVerb()
{
    return {
        {"backup",
         "--to FOLDER",
         "makes a whole copy of a logbook, reads it again, and keeps the newest of them",
         {{"--to", "FOLDER", "where copies are kept; it must be there"},
          {"--logbook", "FILE", "the logbook; else the usual one of this user"},
          {"--keep", "N", "so many copies (8)"},
          {"--if-due", "", "only when the newest copy is a week old"},
          {"--mirror", "", "instead brings the mirror in that folder up to date: every seal, no PINs, no open run"}},
         0,
         0},
        run};
}

Verb restoreVerb()
{
    return {{"restore",
             "--from COPY --to FILE",
             "makes a logbook of a copy or a mirror; what lay there before is kept beside it",
             {{"--from", "COPY", "a copy, or a mirror"},
              {"--to", "FILE", "the logbook's name"},
              {"--people-from", "COPY", "for a mirror: from where PINs and keys are taken; else from what lay there"},
              {"--anchor", "COUNT:LINK", "of a printed sheet, which must be held; may be repeated", true}},
             0,
             0},
            restoreRun};
}

}  // namespace taut::app::verbs
