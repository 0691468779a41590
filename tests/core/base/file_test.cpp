// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/file.h"

#include <sys/resource.h>
#include <sys/stat.h>

#include <catch2/catch.hpp>
#include <cerrno>
#include <csignal>

#include "tests/core/base/folder.h"

using namespace taut;
using taut::test::Folder;
namespace fs = std::filesystem;

TEST_CASE("what is written is read back byte by byte and leaves nothing beside it")
{
    const Folder folder;
    const fs::path file = folder.path / "größe.bin";
    std::string bytes;
    for (int i = 0; i < 300'000; ++i) bytes += static_cast<char>(i * 31 % 256);
    REQUIRE(writeFile(file, bytes));
    auto read = readFile(file);
    REQUIRE(read);
    CHECK(*read == bytes);
    REQUIRE(writeFile(file, "short"));
    CHECK(*readFile(file) == "short");
    REQUIRE(writeFile(file, ""));
    CHECK(readFile(file)->empty());
    CHECK(folder.count() == 1);
}

TEST_CASE("a missing file and a folder are refused by name")
{
    const Folder folder;
    const auto missing = readFile(folder.path / "no such file");
    REQUIRE_FALSE(missing);
    CHECK(missing.error().code == "file.missing");
    CHECK(missing.error().subject == (folder.path / "no such file").string());
    CHECK_FALSE(missing.error().remedy.empty());
    const auto notFile = readFile(folder.path);
    REQUIRE_FALSE(notFile);
    CHECK(notFile.error().code == "file.unreadable");
    CHECK(readFile(folder.path / "a" / "b").error().code == "file.missing");
}

TEST_CASE("a pipe is neither waited for nor replaced, a device neither read nor replaced")
{
    const Folder folder;
    const fs::path pipe = folder.path / "pipe";
    REQUIRE(::mkfifo(pipe.c_str(), 0600) == 0);
    for (const fs::path& file : {pipe, fs::path("/dev/zero")}) {
        const auto read = readFile(file);
        REQUIRE_FALSE(read);
        CHECK(read.error().code == "file.unreadable");
        CHECK_FALSE(read.error().remedy.empty());
    }
    const auto written = writeFile(pipe, "x");
    REQUIRE_FALSE(written);
    CHECK(written.error().code == "file.unwritable");
    CHECK(fs::is_fifo(pipe));
    CHECK(folder.count() == 1);
}

TEST_CASE("a file larger than the caller wants is refused, one just as large is read")
{
    const Folder folder;
    const fs::path file = folder.path / "ten";
    REQUIRE(writeFile(file, "0123456789"));
    CHECK(*readFile(file, 10) == "0123456789");
    const auto large = readFile(file, 9);
    REQUIRE_FALSE(large);
    CHECK(large.error().code == "file.too_large");
}

TEST_CASE("a folder that does not exist or is a file cannot be written into")
{
    const Folder folder;
    for (const fs::path& file : {folder.path / "none" / "x", folder.path}) {
        const auto written = writeFile(file, "x");
        REQUIRE_FALSE(written);
        CHECK(written.error().code == "file.unwritable");
        CHECK_FALSE(written.error().remedy.empty());
    }
    REQUIRE(writeFile(folder.path / "plain", "x"));
    CHECK_FALSE(writeFile(folder.path / "plain" / "y", "x"));
    CHECK(folder.count() == 1);
}

TEST_CASE("a write that breaks off leaves the old file whole and nothing beside it")
{
    const Folder folder;
    const fs::path file = folder.path / "kept";
    REQUIRE(writeFile(file, "old"));
    // The size limit of this process stands in for a full disk: the write begins and cannot end.
    rlimit before{};
    REQUIRE(::getrlimit(RLIMIT_FSIZE, &before) == 0);
    const auto handler = std::signal(SIGXFSZ, SIG_IGN);
    const rlimit small{1000, before.rlim_max};
    REQUIRE(::setrlimit(RLIMIT_FSIZE, &small) == 0);
    const auto written = writeFile(file, std::string(5000, 'n'));
    REQUIRE(::setrlimit(RLIMIT_FSIZE, &before) == 0);
    std::signal(SIGXFSZ, handler);
    REQUIRE_FALSE(written);
    CHECK(written.error().code == "file.unwritable");
    CHECK(*readFile(file) == "old");
    CHECK(folder.count() == 1);
}

TEST_CASE("a replaced file keeps its permissions and a link stays a link")
{
    const Folder folder;
    const fs::path file = folder.path / "secret";
    REQUIRE(writeFile(file, "one"));
    REQUIRE(::chmod(file.c_str(), 0640) == 0);
    fs::create_symlink(file, folder.path / "link");
    REQUIRE(writeFile(folder.path / "link", "two"));
    CHECK(fs::is_symlink(folder.path / "link"));
    CHECK(*readFile(file) == "two");
    struct stat now {};
    REQUIRE(::stat(file.c_str(), &now) == 0);
    CHECK((now.st_mode & 0777U) == 0640U);
}

TEST_CASE("a folder that is there and takes no files is told as that")
{
    // Linux: the folder of the kernel's own files (proc(5)), in which nobody makes one.
    if (!fs::is_directory("/proc/self")) {
        WARN("there is no /proc here: a folder that takes no files is not tried");
        return;
    }
    const auto written = writeFile("/proc/x.pdf", "x");
    REQUIRE_FALSE(written);
    CHECK(written.error().text.source.find("takes no files") != std::string::npos);
    CHECK(writeFile("/no/such/folder/x", "x").error().text.source.find("does not exist") != std::string::npos);
}

TEST_CASE("a link is written through even where its file is yet to be made, and told by the folder that it leads to")
{
    const Folder folder;
    fs::create_symlink("new.txt", folder.path / "link");
    REQUIRE(writeFile(folder.path / "link", "one"));
    CHECK(fs::is_symlink(folder.path / "link"));
    CHECK(readFile(folder.path / "new.txt").value() == "one");
    fs::create_symlink(folder.path / "gone" / "x.txt", folder.path / "dangling");
    fs::create_symlink("dangling", folder.path / "over");
    for (const char* name : {"dangling", "over"}) {
        const fs::path link = folder.path / name;
        const auto written = writeFile(link, "x");
        REQUIRE_FALSE(written);
        // And of whoever opens it without us, who has no more than what the system said.
        for (const Finding& why : {written.error(), whyUnwritable(link, ENOENT)}) {
            CHECK(why.subject == link.string());
            CHECK(why.text.source.find("does not exist") != std::string::npos);
            CHECK(std::get<std::string>(why.text.args.at(1)) == (folder.path / "gone").string());
        }
        CHECK(fs::is_symlink(link));
    }
    // Links that lead to each other are no reason to look for ever.
    fs::create_symlink("b", folder.path / "a");
    fs::create_symlink("a", folder.path / "b");
    CHECK_FALSE(writeFile(folder.path / "a", "x"));
    CHECK(fs::is_symlink(folder.path / "a"));
}

TEST_CASE("why a file cannot be written says what helps against it")
{
    const auto remedy = [](int error) { return whyUnwritable("/tmp/some.pdf", error).remedy.source; };
    CHECK(remedy(ENOSPC).find("Free some room") == 0);
    CHECK(remedy(EACCES).find("may write in") != std::string::npos);
    CHECK(remedy(EIO).find("Check the disk") == 0);
}
