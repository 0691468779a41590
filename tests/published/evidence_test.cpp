// SPDX-License-Identifier: GPL-3.0-or-later
// The table of checks: printed by this program when TAUTWEB_EVIDENCE names a file, compared with README.md by running
// the program once more.
#define CATCH_CONFIG_EXTERNAL_INTERFACES
#include "tests/published/evidence.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <sstream>

#include "core/physics/formula.h"
#include "tests/published/evidence.h"
#include "tests/published/outside.h"
#include "tests/published/sources.h"

namespace fs = std::filesystem;

namespace {

const char* const kHead =
    "| topic | formula | source | section | edition, date | kind | what is asked | value | tolerance "
    "| our result |\n|---|---|---|---|---|---|---|---|---|---|\n";

/// The editions of "S18a, S20" as the list of sources has them.
std::string editions(const std::string& ids, const std::map<std::string, sources::Entry>& listed)
{
    std::string all;
    for (const std::string& id : sources::ids(ids)) {
        const auto at = listed.find(id);
        all += (all.empty() ? "" : "; ") + (at == listed.end() ? std::string("NOT LISTED") : at->second.edition);
    }
    return all;
}

std::string table()
{
    const std::map<std::string, sources::Entry> listed = sources::list();
    const std::set<evidence::Row> sorted(evidence::rows().begin(), evidence::rows().end());
    std::string text = kHead;
    for (const evidence::Row& row : sorted) {
        const std::string cells[] = {
            row.topic, row.formula, row.source, row.section,   editions(row.source, listed),
            row.kind,  row.asked,   row.value,  row.tolerance, row.ours + (row.good ? "" : " (outside)")};
        text += "|";
        for (const std::string& cell : cells) text += " " + cell + " |";
        text += "\n";
    }
    return text;
}

struct Printer : Catch::TestEventListenerBase {
    using TestEventListenerBase::TestEventListenerBase;
    void testRunEnded(const Catch::TestRunStats&) override
    {
        if (const char* file = std::getenv("TAUTWEB_EVIDENCE")) std::ofstream(file) << table();
    }
};

/// What all the other cases of this program print, from a run of their own.
const std::string& printedNow()
{
    static const std::string text = [] {
        const fs::path file = fs::temp_directory_path() / ("tautweb-evidence-" + std::to_string(getpid()));
        const std::string self = fs::read_symlink("/proc/self/exe").string();
        (void)outside::output("TAUTWEB_EVIDENCE='" + file.string() + "' '" + self + "' '~[table]' 2>&1");
        std::string said = sources::textOf(file);
        fs::remove(file);
        return said;
    }();
    return text;
}

/// The cells of each line of the table.
std::vector<std::vector<std::string>> lines(const std::string& text)
{
    std::vector<std::vector<std::string>> all;
    std::istringstream in(text.substr(std::string(kHead).size()));
    for (std::string line; std::getline(in, line);) all.push_back(sources::cells(line));
    return all;
}

}  // namespace

CATCH_REGISTER_LISTENER(Printer)

TEST_CASE("the table of checks in the README is the one that the tests print", "[table]")
{
    const std::string readme = sources::textOf(sources::readme());
    const std::string from = "<!-- checks: printed by the tests, rewritten by approve.sh -->\n\n";
    const auto start = readme.find(from);
    const auto end = readme.find("\n<!-- end of checks -->");
    REQUIRE(start != std::string::npos);
    REQUIRE(end != std::string::npos);
    const std::string kept = readme.substr(start + from.size(), end - start - from.size());
    if (kept == printedNow()) return;
    const fs::path a = fs::temp_directory_path() / ("tautweb-kept-" + std::to_string(getpid()));
    const fs::path b = fs::temp_directory_path() / ("tautweb-printed-" + std::to_string(getpid()));
    std::ofstream(a) << kept;
    std::ofstream(b) << printedNow();
    const std::string difference =
        outside::output("diff -U0 --label README.md --label printed '" + a.string() + "' '" + b.string() + "' || true");
    fs::remove(a);
    fs::remove(b);
    FAIL(difference << "\nIf the change is meant: bash '" << TAUTWEB_SOURCE_DIR << "/tests/published/approve.sh' '"
                    << fs::read_symlink("/proc/self/exe").string() << "'");
}

TEST_CASE("at least 70 checks from at least 25 sources stand outside of definitions", "[table]")
{
    int checks = 0;
    std::set<std::string> from;
    for (const auto& cells : lines(printedNow())) {
        REQUIRE(cells.size() == 10);
        const std::string& kind = cells[5];
        CAPTURE(cells);
        if (kind == "definition") continue;
        CHECK((kind == "printed" || kind == "form" || kind == "referee" || kind == "from memory"));
        ++checks;
        for (const std::string& id : sources::ids(cells[2])) from.insert(id);
    }
    CHECK(checks >= 70);
    CHECK(from.size() >= 25);
}

TEST_CASE("every check names a source that is listed and a formula that there is", "[table]")
{
    const std::map<std::string, sources::Entry> listed = sources::list();
    std::set<std::string> checked;
    for (const auto& cells : lines(printedNow())) {
        CAPTURE(cells);
        REQUIRE(cells.size() == 10);
        for (const std::string& cell : cells) CHECK_FALSE(cell.empty());
        for (const std::string& id : sources::ids(cells[2])) CHECK(listed.count(id) == 1);
        CHECK((cells[1] == "–" || taut::physics::findFormula(cells[1]) != nullptr));
        checked.insert(cells[1]);
    }
    for (const taut::physics::Formula& formula : taut::physics::formulas()) {
        CAPTURE(formula.id);
        CHECK(checked.count(std::string(formula.id)) == 1);
    }
}
