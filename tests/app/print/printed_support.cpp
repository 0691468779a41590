// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/print/printed_support.h"

#include <catch2/catch.hpp>
#include <map>

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

Pdf::Pdf(const report::Report& report, print::Paper paper) : file(folder / "sheet.pdf")
{
    auto done = print::writePdf(report, file, paper);
    if (!done) FAIL(sentence(done.error()));
    printed = std::move(*done);
}

}  // namespace taut::app::test
