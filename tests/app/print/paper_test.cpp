// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <set>

#include <QBuffer>
#include <QImage>
#include <QPdfWriter>
#include <QPrinter>

#include "app/print/sections.h"
#include "app/text/words.h"
#include "core/units/plain.h"
#include "tests/app/print/printed_support.h"

// What a person sees who picks the sheet up: is it a set-up or a run that was given up, can the web be followed through
// the press, is each row another one. Looked at from outside, through the tools of poppler.

using namespace taut;
using namespace taut::app;
using namespace taut::app::test;

namespace {

constexpr double kPoint = 25.4 / 72;  // mm
constexpr print::Paper kPapers[] = {print::Paper::A4, print::Paper::Letter};

std::vector<Word> named(const std::vector<Word>& words, const QString& text)
{
    std::vector<Word> all;
    for (const Word& word : words)
        if (word.text == text) all.push_back(word);
    return all;
}

/// How high the press stands on the first page, from what is above it to the last line of its caption, in mm.
double drawingHeight(const std::vector<Word>& page)
{
    std::vector<Word> caption;  // "From the operator's side, the web runs ..."
    for (std::size_t i = 0; i + 1 < page.size(); ++i)
        if (page[i].text.startsWith(QStringLiteral("operator")) && page[i + 1].text == QStringLiteral("side,"))
            caption.push_back(page[i]);
    REQUIRE(caption.size() == 1);
    double above = 0;
    for (const Word& word : page)
        // The numbers of the stations stand inside the drawing.
        if (word.box.bottom() < caption[0].box.top() && word.text.size() > 1)
            above = std::max(above, word.box.bottom());
    return (caption[0].box.bottom() - above) * kPoint;
}

const report::Table& stepsOf(const report::Report& report)
{
    for (const report::Section& section : report.sections)
        if (const auto* table = std::get_if<report::Table>(&section))
            if (plain(table->caption).find("Every step") == 0) return *table;
    FAIL("no steps");
    throw 0;
}

}  // namespace

TEST_CASE("a run that was given up says so in a black band at the head of every page")
{
    for (const print::Paper paper : kPapers) {
        const Pdf pdf(sheetOf("abandoned").report, paper);
        CHECK(pdf.printed.overflow.empty());
        const auto pages = wordsByPage(pdf.file);
        REQUIRE(pages.size() > 3);
        for (std::size_t i = 0; i < pages.size(); ++i) {
            INFO("page " << i + 1);
            const auto said = named(pages[i], QStringLiteral("ABANDONED:"));
            REQUIRE(said.size() == 1);
            CHECK(said[0].box.height() > 15);  // points: larger than every other word
            for (const Word& word : pages[i]) {
                CHECK(word.box.height() <= said[0].box.height() + 0.1);
                CHECK(word.box.bottom() >= said[0].box.top());
            }
            // In grey, as a printer without colour shows it: most of the band is black, right across the page.
            const std::string n = std::to_string(i + 1), image = pdf.folder / "grey";
            REQUIRE(runTool("pdftoppm", {"-r", "72", "-gray", "-singlefile", "-f", n, "-l", n, pdf.file, image}).exit ==
                    0);
            const QImage grey(QString::fromStdString(image + ".pgm"));
            REQUIRE_FALSE(grey.isNull());
            const int y = qRound(said[0].box.top() + 2);
            int black = 0, across = 0;
            for (int x = 42; x < grey.width() - 36; ++x, ++across) black += qGray(grey.pixel(x, y)) < 40 ? 1 : 0;
            CHECK(black > across * 3 / 4);
        }
        QString first;
        for (const Word& word : pages.front()) first += word.text + QLatin1Char(' ');
        CHECK(first.contains(QStringLiteral("Why it was abandoned")));
        CHECK(first.contains(QStringLiteral("Abandoned by")));
        CHECK_FALSE(first.contains(QStringLiteral("What the next person must know")));
    }
    const Pdf whole(sheetOf("south").report, print::Paper::Letter);
    CHECK(runTool("pdftotext", {whole.file, "-"}).out.find("ABANDONED") == std::string::npos);
}

TEST_CASE("the press is drawn high enough to follow the web, on both presses and papers, and the set-up keeps its page")
{
    for (const char* answers : {"north", "south", "abandoned"})
        for (const print::Paper paper : kPapers)
            for (const report::Report& report : {sheetOf(answers).report, sheetOf(answers).blank}) {
                const Pdf pdf(report, paper);
                const auto pages = wordsByPage(pdf.file);
                INFO(answers << (paper == print::Paper::A4 ? " A4 " : " Letter ") << plain(report.subtitle));
                // The north press is long and low: over the whole width it is 33 mm high, and cannot be higher.
                CHECK(drawingHeight(pages.front()) > (std::string(answers) == "north" ? 30 : 43));
                CHECK(named(pages.front(), QStringLiteral("Taken")).size() == 1);  // "Taken over by the next shift"
            }
}

TEST_CASE("however short room is, a drawing of a press is not made lower than 45 mm unless it is as wide as the page")
{
    QBuffer buffer;
    REQUIRE(buffer.open(QIODevice::WriteOnly));
    QPdfWriter device(&buffer);
    print::choosePaper(device, print::Paper::Letter);
    print::Type type(device, UnitSystem::Us);
    for (const double tightness : {0.0, 0.5, 1.0})
        for (const report::Section& section : sheetOf("south").report.sections)
            if (const auto* elevation = std::get_if<report::Elevation>(&section)) {
                type.setTightness(tightness);
                CHECK(print::strips(type, *elevation, device.width()).front().height >= type.mm(45) - 1);
                // A quarter of the width cannot hold so high a drawing.
                CHECK(print::strips(type, *elevation, device.width() / 4.0).front().height < type.mm(45));
            }
}

TEST_CASE("the steps of a whole run are each another row, and the paper holds their whole sentences")
{
    for (const char* answers : {"north", "south"}) {
        const Sheet& sheet = sheetOf(answers);
        std::set<std::string> rows;
        std::string place;
        std::size_t steps = 0;
        for (const auto& row : stepsOf(sheet.report).rows) {
            const auto said = [&](std::size_t i) { return plain(std::get<Text>(row[i].value)); };
            if (row.size() == 1) {
                place = said(0);
                continue;
            }
            INFO(place << " | " << said(1));
            CHECK(rows.insert(place + '|' + said(1)).second);
            ++steps;
        }
        CHECK(steps == sheet.run.plan().steps.size());
        const Pdf pdf(sheet.report, print::Paper::A4);
        QString text = QString::fromStdString(runTool("pdftotext", {"-raw", pdf.file, "-"}).out);
        text.remove(QLatin1Char('\n')).remove(QLatin1Char(' '));
        for (const procedure::Step& step : sheet.run.plan().steps) {
            QString whole = words(step.say, sheet.run.began().units);
            whole.remove(QLatin1Char(' ')).remove(QChar::Nbsp);
            INFO(whole.toStdString());
            // A page may end inside a sentence only between two rows, so the last row of a page is whole as well.
            CHECK(text.contains(whole));
        }
    }
}

TEST_CASE("a printer gets the paper that was chosen in its dialog, with the sheet's own margins")
{
    const struct {
        QPageSize::PageSizeId id;
        const char* size;
        double width, height;
    } kChosen[] = {{QPageSize::Letter, "612 x 792", 612, 792}, {QPageSize::A4, "595 x 842", 595, 842}};
    for (const auto& chosen : kChosen)
        for (const char* answers : {"north", "south"}) {
            INFO(answers << " " << chosen.size);
            const Folder folder;
            const std::string file = folder / "printed.pdf";
            QPrinter printer(QPrinter::HighResolution);
            printer.setOutputFormat(QPrinter::PdfFormat);
            printer.setOutputFileName(QString::fromStdString(file));
            printer.setPageSize(QPageSize(chosen.id));
            printer.setPageMargins(QMarginsF(3, 3, 3, 3), QPageLayout::Millimeter);  // the least this printer can
            const auto printed = print::paintReport(printer, sheetOf(answers).report);
            REQUIRE(printed);
            for (const std::string& what : printed->overflow) FAIL_CHECK(what);
            CHECK(runTool("pdfinfo", {file}).out.find(chosen.size) != std::string::npos);
            const auto pages = wordsByPage(file);
            REQUIRE(pages.size() == static_cast<std::size_t>(printed->pages));
            const QRectF inner(36, 24, chosen.width - 36 - 30, chosen.height - 24 - 22);
            for (const auto& page : pages)
                for (const Word& word : page) {
                    INFO(word.text.toStdString());
                    CHECK(inner.contains(word.box));
                }
            CHECK(named(pages.front(), QStringLiteral("Taken")).size() == 1);
        }
}
