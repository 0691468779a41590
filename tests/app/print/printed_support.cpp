// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/print/printed_support.h"

#include <catch2/catch.hpp>
#include <map>

#include <QRegularExpression>

#include "app/text/words.h"
#include "core/records/texts.h"
#include "core/units/plain.h"

// The demo's stage is that of the verbs' tests.
#include "tests/app/verbs/verbs_support.cpp"  // NOLINT

namespace taut::app::print::test {

std::string typeset(const std::string& value)
{
    const std::size_t space = value.find(' ');
    if (space == std::string::npos) return value;
    return value.substr(0, space + 1) + unitText(value.substr(space + 1)).toStdString();
}

}  // namespace taut::app::print::test

namespace taut::app::test {

namespace {

Sheet make(const std::string& press)
{
    Stage stage;
    auto told = stage.tell(answersOf(press));
    if (!told) FAIL(sentence(told.error()));
    const records::Reader& reader = stage.writer->reader();
    const auto document = seal::read(told->seal.document);
    auto report = report::reportOf(*document, *reader.anchor(), records::textsOf(reader));
    if (!report) FAIL(sentence(report.error()));
    const auto basis = run::basisFor(told->run.sources(), {});
    if (!basis) FAIL(sentence(basis.error()));
    return {told->run, std::move(*report), report::blankSheet(*basis)};
}

}  // namespace

const Sheet& sheetOf(const std::string& press)
{
    static std::map<std::string, Sheet> all;
    const auto known = all.find(press);
    return known != all.end() ? known->second : all.emplace(press, make(press)).first->second;
}

std::vector<std::vector<Word>> wordsByPage(const std::string& pdf)
{
    std::vector<std::vector<Word>> pages;
    const QString xml = QString::fromStdString(runTool("pdftotext", {"-bbox", pdf, "-"}).out);
    static const QRegularExpression kWord(QStringLiteral(
        "<page |<word xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" yMax=\"([-0-9.]+)\">([^<]*)<"));
    for (auto all = kWord.globalMatch(xml); all.hasNext();) {
        const auto match = all.next();
        if (match.captured(0).startsWith(QStringLiteral("<page"))) {
            pages.emplace_back();
            continue;
        }
        const double x = match.captured(1).toDouble(), y = match.captured(2).toDouble();
        pages.back().push_back(
            {QRectF(QPointF(x, y), QPointF(match.captured(3).toDouble(), match.captured(4).toDouble())),
             match.captured(5)});
    }
    return pages;
}

Pdf::Pdf(const report::Report& report, print::Paper paper) : file(folder / "sheet.pdf")
{
    auto done = print::writePdf(report, file, paper);
    if (!done) FAIL(sentence(done.error()));
    printed = std::move(*done);
}

}  // namespace taut::app::test
