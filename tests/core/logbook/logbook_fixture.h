// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <catch2/catch.hpp>
#include <cstdio>
#include <filesystem>
#include <memory>
#include <string>

#include "core/base/file.h"
#include "core/logbook/logbook.h"
#include "tests/core/base/folder.h"
#include "tests/core/people/crew.h"

namespace taut::logbook::test {

namespace fs = std::filesystem;

using taut::test::Folder;
inline fs::path operator/(const Folder& folder, const std::string& name) { return folder.path / name; }

struct Said {
    int code = 0;
    std::string out;
};
/// Runs a shell command and gives what it said on both outputs.
inline Said shell(const std::string& command)
{
    FILE* pipe = ::popen(("exec 2>&1; " + command).c_str(), "r");
    REQUIRE(pipe != nullptr);
    Said said;
    std::array<char, 4096> buffer{};
    for (std::size_t n = 0; (n = std::fread(buffer.data(), 1, buffer.size(), pipe)) > 0;)
        said.out.append(buffer.data(), n);
    const int status = ::pclose(pipe);
    said.code = WIFEXITED(status) ? WEXITSTATUS(status) : 255;
    if (!said.out.empty() && said.out.back() == '\n') said.out.pop_back();
    return said;
}
/// The sqlite3 command line program on a file.
inline Said sqlite(const fs::path& file, const std::string& sql)
{
    // By a file: a document in hex is longer than a command line may be.
    const fs::path script = file.string() + ".sql";
    REQUIRE(writeFile(script, sql));
    const Said said = shell("sqlite3 -batch '" + file.string() + "' < '" + script.string() + "'");
    fs::remove(script);
    return said;
}
/// Changes rows as somebody would who knows the guards: takes all of them away, acts, and puts them back.
inline void tamper(const fs::path& file, const std::string& sql)
{
    const std::string guards = sqlite(file, "SELECT sql || ';' FROM sqlite_schema WHERE type = 'trigger'").out;
    const std::string drop =
        sqlite(file, "SELECT 'DROP TRIGGER ' || name || ';' FROM sqlite_schema WHERE type = 'trigger'").out;
    const Said done = sqlite(file, ".bail on\nPRAGMA foreign_keys = OFF;\nBEGIN;\n" + drop + "\n" + sql + ";\n" +
                                       guards + "\nCOMMIT;\n");
    INFO(done.out);
    REQUIRE(done.code == 0);
}

/// A logbook with, once enrolled, a supervisor p-1 and an operator p-2, both with PIN 4821.
struct Shop {
    Folder folder;
    SteppedClock clock{{1'764'052'863'120, 60}, 1000};
    CountedIds ids;
    std::unique_ptr<Writer> writer;
    Shop() { reopen(); }
    [[nodiscard]] fs::path file() const { return folder / "shop.logbook"; }
    void reopen(bool practice = false, int syncDelayMs = 0)
    {
        writer.reset();
        auto opened = Writer::open(file(), clock, ids, {practice, "the test", syncDelayMs});
        if (!opened) FAIL(opened.error().code << ": " << opened.error().text.source);
        writer = std::move(*opened);
    }
    void enrol()
    {
        using people::Role;
        const people::test::Member first = people::test::member("p-1", "Matteo Quill", Role::Supervisor);
        REQUIRE(writer->addFirst(first.enrolled, *first.signer));
        REQUIRE(writer->addPerson(people::test::member("p-2", "Inka Thorsby", Role::Operator).enrolled, *first.signer));
    }
    [[nodiscard]] people::Actor actor(const char* id) const
    {
        auto signedIn = writer->signIn(id, "4821");
        REQUIRE(signedIn);
        return *signedIn;
    }
    [[nodiscard]] std::shared_ptr<const people::Signer> signer(const char* id) const
    {
        auto unlocked = writer->unlock(id, people::test::kChosen.passphrase);
        REQUIRE(unlocked);
        return std::make_shared<const people::Signer>(*std::move(unlocked));
    }
};

}  // namespace taut::logbook::test
