// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <atomic>
#include <thread>

#include "core/logbook/copy.h"
#include "core/units/plain.h"
#include "tests/core/logbook/run_fixture.h"

namespace taut::logbook::test {

/// A shop with a folder elsewhere for mirrors and copies.
struct Keeping : Press {
    Folder elsewhere;
    std::optional<people::Actor> inka = actor("p-2");

    /// A whole run, sealed; gives its id.
    std::string sealRun()
    {
        OpenRun open = begin();
        must(open, run::Abandon{"The roll is used up"}, *inka);
        const auto sealed = open.seal(*signer("p-2"));
        if (!sealed) FAIL(sentence(sealed.error()));
        return open.run().id();
    }
    /// A further seal that costs little.
    void sealMore(int n = 1)
    {
        const people::Actor matteo = actor("p-1");
        for (int i = 0; i < n; ++i)
            REQUIRE(writer->keepDefinition("press", "other", "a = " + std::to_string(++m_editions) + "\n", matteo));
    }
    [[nodiscard]] seal::Anchor end() const { return writer->reader().anchor().value(); }
    /// The same shop as a PC of its own has it: every test PC is else given the same id.
    void asAnotherPc(const std::string& id = "pc-other")
    {
        writer.reset();
        tamper(file(), "UPDATE file_facts SET value = '" + id + "' WHERE name = 'workplace'");
        reopen();
    }
    /// How the mirror stands once it has come to rest.
    [[nodiscard]] MirrorState mirrored() const { return writer->mirror(std::chrono::seconds(20)).value(); }
    [[nodiscard]] Copied copied(const CopyPlan& plan = {})
    {
        auto done = copyTo(file(), elsewhere.path, clock.now(), plan);
        if (!done) FAIL(sentence(done.error()));
        return *std::move(done);
    }

private:
    int m_editions = 0;
};

/// The codes of those findings that are more than notes.
inline std::vector<std::string> warnings(const Findings& findings)
{
    std::vector<std::string> codes;
    for (const Finding& finding : findings) {
        UNSCOPED_INFO(sentence(finding));
        if (finding.severity != Severity::Note) codes.push_back(finding.code);
    }
    return codes;
}
inline bool has(const Findings& findings, const char* code)
{
    for (const Finding& finding : findings)
        if (finding.code == code) return true;
    return false;
}
/// Deep, against an anchor; fails with the first thing wrong.
inline void isInOrder(const fs::path& file, const seal::Anchor& anchor)
{
    const auto verified = verify(file, {{anchor.count, hex(anchor.link)}}, Depth::Deep);
    if (!verified) FAIL(sentence(verified.error()));
    for (const Finding& finding : verified->findings) FAIL_CHECK(sentence(finding));
    CHECK(verified->anchors.front().holds);
}
inline void put(const fs::path& file, std::string_view text) { REQUIRE(writeFile(file, text)); }
inline std::vector<std::string> namesIn(const fs::path& folder)
{
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator(folder)) names.push_back(entry.path().filename().string());
    std::sort(names.begin(), names.end());
    return names;
}

}  // namespace taut::logbook::test
