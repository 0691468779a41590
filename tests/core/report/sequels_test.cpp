// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/units/format.h"
#include "tests/core/report/report_walk.h"

using namespace taut;
using namespace taut::report;
using namespace taut::report::test;

namespace {

constexpr const char* kUnwind = "set.lift.setting/unwind";
constexpr const char* kStory = "How this record came to stand as it does";
constexpr const char* kCorrected = "Corrected after it was sealed";
constexpr std::int64_t kNoon = 1'764'068'400'000;  // 2025-11-25 12:00 at +01:00

/// A signed-off run with one reading, and the seals that follow it, one a minute from noon.
struct Followed : Walk {
    std::vector<seal::Sealing> sealings;
    Followed()
    {
        answerUpTo(kUnwind);
        must(run::Answer{{kUnwind}, "1.40 bar", {}});
        answerUpTo();
        must(run::SignOff{"all quiet"});
        sealings.push_back({7, seal::Kind::Run, "performed", "p-2", "Inka Thorsby", kNoon, 60, {}});
    }
    void add(const seal::Sequel& sequel, const char* byName)
    {
        const seal::Kind kind = seal::kindOf(sequel);
        sealings.push_back({sealings.back().seq + 1, kind, seal::meaningOf({kind, {}}), "p", byName,
                            sealings.back().atMs + 60'000, 60, sequel});
    }
    [[nodiscard]] Report sheetNow() const
    {
        const auto report = reportOf(seal::read(seal::write(seal::documentOf(*run))).value(),
                                     seal::Anchor{12, sha256("anything")}, {}, sealings);
        REQUIRE(report);
        return *report;
    }
    [[nodiscard]] std::string record() const
    {
        const Report report = sheetNow();
        for (const Facts& facts : allOf<Facts>(report))
            for (const auto& [name, value] : facts.pairs)
                if (plain(name) == "Record") return wordsOf(value);
        return {};
    }
};

seal::Correction correction()
{
    return {{{kUnwind, "1.40 bar", "1.60 bar", 160000.0, "Pa", "near"},
             {"set.lift.seen", "good", "bad", {}, {}, "outside"}},
            "the roll was R0042",
            "read from the side"};
}

std::size_t placeOf(const Report& report, const std::string& caption)
{
    for (std::size_t i = 0; i < report.sections.size(); ++i)
        if (const auto* table = std::get_if<Table>(&report.sections[i]))
            if (plain(table->caption) == caption) return i;
    return report.sections.size();
}

}  // namespace

TEST_CASE("a sealed run without later seals has the sheet that it had")
{
    const Followed walk;
    const Report alone = walk.sheetNow();
    const auto without = reportOf(seal::read(seal::write(seal::documentOf(*walk.run))).value(),
                                  seal::Anchor{12, sha256("anything")}, {});
    REQUIRE(without);
    CHECK(everyWord(alone) == everyWord(*without));
    CHECK_FALSE(hasTable(alone, kStory));
    CHECK(walk.record().empty());
}

TEST_CASE("a sheet tells who reviewed, corrected and voided its run, when, as what and why")
{
    Followed walk;
    walk.add(seal::Review{false, "the brake cannot be right"}, "Matteo Quill");
    CHECK(walk.record() == "sent back by Matteo Quill, to be corrected");
    CHECK(everyWord(walk.sheetNow()).find("Sent back by Matteo Quill, 2025-11-25 12:01: the brake cannot be right") !=
          std::string::npos);
    walk.add(correction(), "Inka Thorsby");
    CHECK(walk.record() == "corrected by Inka Thorsby, to be reviewed");
    walk.add(seal::Review{true, "seen the gauge"}, "Ada Sund");
    CHECK(walk.record() == "reviewed by Ada Sund");
    const Table story = tableOf(walk.sheetNow(), kStory);
    const std::vector<std::vector<std::string>> want{
        {"7", "2025-11-25 12:00", "sealed", "performed", "Inka Thorsby", ""},
        {"8", "2025-11-25 12:01", "reviewed and sent back", "reviewed", "Matteo Quill", "the brake cannot be right"},
        {"9", "2025-11-25 12:02", "corrected", "corrected", "Inka Thorsby",
         "read from the side; remark: the roll was R0042"},
        {"10", "2025-11-25 12:03", "reviewed and accepted", "reviewed", "Ada Sund", "seen the gauge"},
    };
    REQUIRE(story.rows.size() == want.size());
    REQUIRE(story.columns.size() == want[0].size());
    for (std::size_t i = 0; i < want.size(); ++i)
        for (std::size_t j = 0; j < want[i].size(); ++j) CHECK(wordsOf(story.rows[i].at(j)) == want[i][j]);
    const auto block = allOf<SignatureBlock>(walk.sheetNow()).at(0);
    CHECK(std::any_of(block.entries.begin(), block.entries.end(), [](const SignatureBlock::Entry& entry) {
        return plain(entry.meaning) == "Supervisor: I have reviewed this record" && entry.name == "Ada Sund" &&
               entry.at == "2025-11-25 12:03";
    }));
}

TEST_CASE("what stood and what it should be stand beside each other on the first page, and what was sealed stays")
{
    Followed walk;
    walk.add(correction(), "Inka Thorsby");
    const Report report = walk.sheetNow();
    const Table table = tableOf(report, kCorrected);
    REQUIRE(table.rows.size() == 3);
    const auto pressure = rowOf(table, "1.60 bar");
    CHECK(wordsOf(pressure[0]).find("BRAKE") != std::string::npos);
    CHECK(wordsOf(pressure[1]) == "1.40 bar");
    CHECK(wordsOf(pressure[3]) == "near");
    CHECK(pressure[3].mark == Mark::Near);
    CHECK(wordsOf(pressure[4]) == "read from the side");
    CHECK(wordsOf(pressure[5]) == "Inka Thorsby");
    CHECK(wordsOf(pressure[6]) == "2025-11-25 12:01");
    const auto seen = rowOf(table, "How does the web");
    CHECK(wordsOf(seen[1]) == "Good");  // in the words of its button
    CHECK(wordsOf(seen[2]) == "Bad");
    CHECK(wordsOf(rowOf(table, "remark")[2]) == "the roll was R0042");
    CHECK(wordsOf(rowOf(tableOf(report, "Settings of this job and roll"), "BRAKE")[3]) == "1.40 bar");
    CHECK(everyWord(report).find("Corrected since it was sealed") != std::string::npos);
    std::size_t page = 0;
    while (!std::holds_alternative<PageBreak>(report.sections[page])) ++page;
    CHECK(placeOf(report, kCorrected) < page);
    CHECK(placeOf(report, kStory) > page);
    // Accepted or not, what was corrected stays to be seen.
    walk.add(seal::Review{true, {}}, "Ada Sund");
    CHECK(hasTable(walk.sheetNow(), kCorrected));
    CHECK(everyWord(walk.sheetNow()).find("Corrected since it was sealed") != std::string::npos);
}

TEST_CASE("the sheet of a void run says so on every page, and keeps its anchor")
{
    Followed walk;
    walk.add(seal::Review{true, {}}, "Matteo Quill");
    walk.add(seal::Voiding{"set up on the wrong press"}, "Ada Sund");
    const Report report = walk.sheetNow();
    CHECK(plain(report.title).starts_with("VOID: "));  // the title stands on every page
    CHECK(plain(report.title).find("R0041") != std::string::npos);
    CHECK(everyWord(report).find("Ada Sund has voided this run, 2025-11-25 12:02: set up on the wrong press.") !=
          std::string::npos);
    CHECK(walk.record() == "void, by Ada Sund");
    CHECK(report.draft.empty());
    CHECK(report.anchor == seal::Anchor{12, sha256("anything")});
    const auto block = allOf<SignatureBlock>(report).at(0);
    for (const auto& entry : block.entries)
        CHECK(plain(entry.meaning) != "Supervisor: I have reviewed this record");  // it counts no more
    CHECK(rowOf(tableOf(report, kStory), "reviewed and accepted").size() == 6);    // and is not hidden
}
