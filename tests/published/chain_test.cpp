// SPDX-License-Identifier: GPL-3.0-or-later
// The hash chain against the outside. SHA-256: FIPS 180-4, Secure Hash Standard, 2015, with the message digests of the
// examples that the institute publishes beside it (one block "abc", two blocks "abcdbcde...", a million "a").
// The command openssl is the second implementation.
#include <array>
#include <catch2/catch.hpp>
#include <cstdio>
#include <memory>

#include "core/seal/chain.h"

using namespace taut;

namespace {

/// What a shell command prints, without the last line feed.
std::string shell(const std::string& command)
{
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(::popen(command.c_str(), "r"), ::pclose);
    REQUIRE(pipe);
    std::string out;
    std::array<char, 4096> buffer{};
    for (std::size_t n = 0; (n = std::fread(buffer.data(), 1, buffer.size(), pipe.get())) > 0;)
        out.append(buffer.data(), n);
    if (!out.empty() && out.back() == '\n') out.pop_back();
    return out;
}

}  // namespace

TEST_CASE("SHA-256 gives the published example digests")
{
    // FIPS 180-4 examples; the last is the digest of no bytes at all.
    CHECK(hex(sha256("abc")) == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    CHECK(hex(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq")) ==
          "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    CHECK(hex(sha256(std::string(1'000'000, 'a'))) ==
          "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
    CHECK(hex(sha256("")) == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

TEST_CASE("a link is the digest of the previous link and the document as openssl computes it")
{
    const std::array<std::string, 3> documents{"{\"format\":1}", "", std::string(200, 'x') + "é"};
    seal::Link link{};
    std::string byShell(64, '0');
    for (const std::string& document : documents) {
        link = seal::linkAfter(link, document);
        byShell = shell("printf '%s%s' " + byShell + " " + hex(bytesOf(document)) +
                        " | xxd -r -p | openssl dgst -sha256 -r | cut -c1-64");
        CHECK(hex(link) == byShell);
    }
}
