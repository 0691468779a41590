// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>
#include <sstream>

#include <QRegularExpression>

#include "app/print/print.h"
#include "app/print/qr.h"
#include "app/print/type.h"
#include "app/text/pseudo.h"
#include "core/report/report.h"
#include "core/targets/aim.h"
#include "core/units/format.h"
#include "core/units/plain.h"
#include "tests/app/print/printed_support.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::test;

namespace {

struct Size {
    print::Paper paper;
    const char* name;
    double width, height;  ///< points
};
constexpr Size kSizes[] = {{print::Paper::A4, "A4", 595, 842}, {print::Paper::Letter, "Letter", 612, 792}};

/// A text that is 1.6 times as long: what another language may need.
void stretch(Text& text)
{
    if (text.source.empty() || text.source == "%1") return;
    const std::size_t more = text.source.size() * 6 / 10;
    std::string words;
    while (words.size() < more) words += " lengthy";
    text.source = text.source + words.substr(0, more);
}
void stretch(report::Cell& cell)
{
    if (auto* text = std::get_if<Text>(&cell.value)) stretch(*text);
}
report::Report stretched(report::Report report)
{
    stretch(report.title);
    stretch(report.subtitle);
    for (report::Section& section : report.sections) {
        if (auto* one = std::get_if<report::Heading>(&section)) stretch(one->text);
        if (auto* one = std::get_if<report::Paragraph>(&section)) stretch(one->text);
        if (auto* one = std::get_if<report::Caution>(&section)) stretch(one->text);
        if (auto* one = std::get_if<report::QrText>(&section)) stretch(one->caption);
        if (auto* one = std::get_if<report::Chart>(&section)) stretch(one->caption);
        if (auto* one = std::get_if<report::Facts>(&section))
            for (auto& [name, cell] : one->pairs) {
                stretch(name);
                stretch(cell);
            }
        if (auto* one = std::get_if<report::SignatureBlock>(&section)) {
            stretch(one->notice);
            for (auto& entry : one->entries) stretch(entry.meaning);
        }
        if (auto* one = std::get_if<report::Table>(&section)) {
            stretch(one->caption);
            for (report::Column& column : one->columns) stretch(column.head);
            for (auto& row : one->rows)
                for (report::Cell& cell : row) stretch(cell);
        }
    }
    return report;
}

std::string textOf(const std::string& pdf, int page = 0)
{
    std::vector<std::string> args{"-layout"};
    if (page > 0) {
        const std::string number = std::to_string(page);
        args.insert(args.end(), {"-f", number, "-l", number});
    }
    args.insert(args.end(), {pdf, "-"});
    return runTool("pdftotext", args).out;
}

}  // namespace

TEST_CASE("the font that is measured is the one that is found")
{
    CHECK(print::checkFont());
    const auto missing = print::checkFont("No Such Family");
    REQUIRE_FALSE(missing);
    CHECK(missing.error().code == "font.missing");
    CHECK(sentence(missing.error()).find("fonts-dejavu-core") != std::string::npos);
}

TEST_CASE("a sheet's text reads back job, roll, every target, every reading and the number of its page")
{
    for (const char* press : {"north", "south"})
        for (const Size& size : kSizes) {
            const Sheet& sheet = sheetOf(press);
            const Pdf pdf(sheet.report, size.paper);
            INFO(press << " " << size.name);
            const std::string first = textOf(pdf.file, 1), all = textOf(pdf.file);
            for (const std::string& words :
                 {sheet.run.began().sources.job.id, sheet.run.sources().roll.id, sheet.run.id()})
                CHECK(first.find(words) != std::string::npos);
            const UnitSystem system = sheet.run.began().units;
            for (const procedure::Step& step : sheet.run.plan().steps) {
                if (step.kind != procedure::StepKind::Reading) continue;
                INFO(step.id.value);
                const targets::Target* target = sheet.run.targets().find(step.target);
                if (target != nullptr && target->quantity() != nullptr) {
                    const auto aim = std::get<Quantity>(targets::aimOf(*target->ready(), system));
                    CHECK(all.find(print::test::typeset(format(aim, system))) != std::string::npos);
                }
                CHECK(all.find(sheet.run.standing(step.id).answer->entered) != std::string::npos);
            }
            for (int page = 1; page <= pdf.printed.pages; ++page) {
                const std::string foot = "page " + std::to_string(page) + " of " + std::to_string(pdf.printed.pages);
                const std::string words = textOf(pdf.file, page);
                CHECK(words.find(foot) != std::string::npos);
                CHECK(words.find(seal::anchorText(*sheet.report.anchor)) != std::string::npos);
                CHECK(words.find(sheet.run.id()) != std::string::npos);
            }
        }
}

TEST_CASE("the set-up takes one page and what follows begins the next")
{
    for (const char* press : {"north", "south"})
        for (const Size& size : kSizes) {
            INFO(press << " " << size.name);
            const Pdf pdf(sheetOf(press).report, size.paper);
            const std::string first = textOf(pdf.file, 1);
            for (const char* words : {"Settings of this job and roll", "Stations", "Deviations",
                                      "Operator: this is what", "What the next person must know", "finds this run"})
                CHECK(first.find(words) != std::string::npos);
            CHECK(first.find("What happened under way") == std::string::npos);
            CHECK(textOf(pdf.file, 2).find("What happened under way") != std::string::npos);
            const Pdf blank(sheetOf(press).blank, size.paper);
            CHECK(textOf(blank.file, 1).find("Taken over by the next shift") != std::string::npos);
        }
}

TEST_CASE("nothing is cut, overlaps or leaves the page, also with texts 1.6 times as long")
{
    for (const char* press : {"north", "south"})
        for (const Size& size : kSizes)
            for (const report::Report& report :
                 {sheetOf(press).report, stretched(sheetOf(press).report), stretched(sheetOf(press).blank)}) {
                INFO(press << " " << size.name << " " << plain(report.title));
                const Pdf pdf(report, size.paper);
                std::string tooLarge;
                for (const std::string& what : pdf.printed.overflow) tooLarge += what + '\n';
                INFO(tooLarge);
                CHECK(pdf.printed.overflow.empty());
                const auto pages = wordsByPage(pdf.file);
                REQUIRE(pages.size() == static_cast<std::size_t>(pdf.printed.pages));
                std::size_t outside = 0, overlaps = 0, words = 0;
                std::string where;
                for (const auto& page : pages) {
                    const QRectF inner(36, 24, size.width - 36 - 30, size.height - 24 - 22);
                    for (std::size_t i = 0; i < page.size(); ++i) {
                        ++words;
                        if (!inner.contains(page[i].box)) {
                            ++outside;
                            where += page[i].text.toStdString() + ' ';
                        }
                        for (std::size_t j = i + 1; j < page.size(); ++j) {
                            // Boxes of neighbouring lines touch by their leading: only real overlap counts.
                            const QRectF both = page[i].box.intersected(page[j].box);
                            if (both.width() > 1.5 &&
                                both.height() > 0.5 * std::min(page[i].box.height(), page[j].box.height())) {
                                ++overlaps;
                                where += page[i].text.toStdString() + '/' + page[j].text.toStdString() + ' ';
                            }
                        }
                    }
                }
                INFO(where);
                CHECK(words > 200);
                CHECK(outside == 0);
                CHECK(overlaps == 0);
            }
}

TEST_CASE("every font is embedded and maps to text, and the file is sound")
{
    const Pdf pdf(sheetOf("north").report, print::Paper::A4);
    std::istringstream fonts(runTool("pdffonts", {pdf.file}).out);
    std::string line;
    int count = 0;
    for (int n = 0; std::getline(fonts, line); ++n) {
        if (n < 2) continue;
        ++count;
        INFO(line);
        CHECK(line.find("DejaVuSans") == 0);
        CHECK(QRegularExpression(QStringLiteral(" yes +\\S+ +yes "))
                  .match(QString::fromStdString(line))
                  .hasMatch());  // embedded, and with a map to Unicode
    }
    CHECK(count >= 2);
    const std::string text = textOf(pdf.file);
    CHECK(text.find("\xEF\xAC") == std::string::npos);  // no ligature signs: "office" must be found
    CHECK(text.find("\xC2\xA0") == std::string::npos);  // no hard spaces: "1.39 bar" must be found
}

TEST_CASE("the code on the printed page leads back to the run and its anchor")
{
    for (const Size& size : kSizes) {
        const Sheet& sheet = sheetOf("north");
        const Pdf pdf(sheet.report, size.paper);
        const std::string image = pdf.folder / "page";
        REQUIRE(runTool("pdftoppm", {"-r", "150", "-f", "1", "-l", "1", "-singlefile", "-png", pdf.file, image}).exit ==
                0);
        const Ran read = runTool("zbarimg", {"-q", "--raw", image + ".png"});
        const auto uri = seal::readAnchorUri(read.out.substr(0, read.out.find('\n')));
        INFO(read.out << read.err);
        REQUIRE(uri);
        CHECK(uri->run == sheet.run.id());
        CHECK(uri->anchor == *sheet.report.anchor);
    }
}

TEST_CASE("a code too long for the standard is said to be so and a short one has its finder marks")
{
    CHECK(print::qrModules(std::string(5000, 'x')).side == 0);
    const print::QrModules code = print::qrModules("tautweb");
    // ISO/IEC 18004: a finder pattern, seven modules wide, in three corners.
    REQUIRE(code.side >= 21);
    for (std::size_t i = 0; i < 7; ++i) {
        CHECK(code.at(i, 0));
        CHECK(code.at(0, i));
        CHECK(code.at(code.side - 1 - i, 0));
        CHECK(code.at(i, code.side - 1));
    }
    CHECK_FALSE(code.at(1, 1));
}

TEST_CASE("a sheet in the pseudo language shows no word outside its brackets")
{
    setPseudo(true);
    const Pdf pdf(sheetOf("north").report, print::Paper::A4);
    const Pdf blank(sheetOf("south").blank, print::Paper::Letter);
    setPseudo(false);
    for (const std::string& file : {pdf.file, blank.file}) {
        QString text = QString::fromStdString(runTool("pdftotext", {"-raw", file, "-"}).out);
        text.replace(QLatin1Char('\n'), QLatin1Char(' '));
        const QString outside = outsideBrackets(text).simplified();
        INFO(outside.left(400).toStdString());
        CHECK(outside.isEmpty());
    }
}

TEST_CASE("a folder that is not there is refused with the system's reason and nothing is written")
{
    const auto written = print::writePdf(sheetOf("north").report, "/proc/none/sheet.pdf", print::Paper::A4);
    REQUIRE_FALSE(written);
    CHECK(written.error().code == "file.unwritable");
    CHECK(written.error().subject == "/proc/none/sheet.pdf");
}
