// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/logbook/run_fixture.h"

namespace taut::logbook::test {

inline constexpr const char* kUnwindStep = "set.lift.setting/unwind";

/// A shop with two supervisors (p-1, p-3), an operator, a trainee, and a run that the operator p-2 sealed as number 11,
/// after its words.
struct SealedShop : Press {
    std::string run;
    seal::Seal own;
    SealedShop()
    {
        using people::Role;
        const auto first = signer("p-1");
        REQUIRE(writer->addPerson(people::test::member("p-3", "Ada Sund", Role::Supervisor).enrolled, *first));
        REQUIRE(writer->addPerson(people::test::member("p-4", "Tove Lind", Role::Trainee).enrolled, *first));
        own = sealRun();
        run = own.id;
        REQUIRE(own.seq == 11);
    }
    /// One more run of the operator's, from beginning to seal.
    seal::Seal sealRun()
    {
        OpenRun open = begin();
        const people::Actor inka = actor("p-2");
        while (open.run().next() != run::StepId{kUnwindStep}) REQUIRE(answerNext(open, inka));
        must(open, run::Answer{{kUnwindStep}, "1.40 bar", {}}, inka);
        answerAll(open, inka);
        must(open, run::SignOff{""}, inka);
        auto sealed = open.seal(*signer("p-2"));
        REQUIRE(sealed);
        return *std::move(sealed);
    }
    seal::Seal abandonRun()
    {
        OpenRun open = begin();
        must(open, run::Abandon{"the order was cancelled"}, actor("p-2"));
        return open.seal(*signer("p-2")).value();
    }
    [[nodiscard]] static seal::Correction correction(const char* stood = "1.40 bar", const char* should = "1.45 bar")
    {
        return {{{kUnwindStep, stood, should, {}, {}, {}}}, {}, "read from the side"};
    }
    [[nodiscard]] records::RunRow row(const std::string& id) const
    {
        records::RunQuery query;
        query.text = id;
        const auto page = writer->reader().runs(query, "");
        REQUIRE(page);
        REQUIRE(page->rows.size() == 1);
        return page->rows.front();
    }
    [[nodiscard]] std::string present(const std::string& id) const
    {
        return sqlite(file(), "SELECT present FROM sealed_runs WHERE run_id = '" + id + "'").out;
    }
    [[nodiscard]] fs::path copy() const
    {
        fs::path beside = folder / "copy.logbook";
        fs::copy_file(file(), beside, fs::copy_options::overwrite_existing);
        return beside;
    }
};

}  // namespace taut::logbook::test
