// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/crypto.h"

#include <catch2/catch.hpp>
#include <set>

#include "core/base/id_source.h"

using namespace taut;

// FIPS 180-4 names the algorithm; the four messages and digests are the SHA-256 examples that NIST publishes with it
// (from memory, and recomputed with openssl dgst -sha256).
TEST_CASE("SHA-256 gives the published digests")
{
    struct Row {
        std::string message;
        const char* digest;
    };
    const std::vector<Row> rows{
        {"", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"},
        {"abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"},
        {"abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
         "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"},
        {std::string(1'000'000, 'a'), "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"},
    };
    for (const Row& row : rows) {
        INFO(row.message.substr(0, 60));
        CHECK(hex(sha256(row.message)) == row.digest);
    }
}

TEST_CASE("two parts are hashed as if they were one")
{
    const std::string whole = "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq";
    for (std::size_t cut = 0; cut <= whole.size(); ++cut)
        REQUIRE(sha256(bytesOf(whole.substr(0, cut)), bytesOf(whole.substr(cut))) == sha256(whole));
}

TEST_CASE("hex writes two lower-case digits a byte")
{
    CHECK(hex(Bytes{}).empty());
    CHECK(hex(Bytes{0x00, 0x0f, 0xa0, 0xff}) == "000fa0ff");
}

TEST_CASE("a PIN is known again and a wrong one is not")
{
    const std::string phc = hashPin("4711", PinCost::Least);
    CHECK(phc.rfind("$argon2id$v=19$m=8,t=1,p=1$", 0) == 0);
    CHECK(pinMatches(phc, "4711"));
    for (const char* wrong : {"", "4712", "471", "47110", " 4711"}) {
        INFO(wrong);
        CHECK_FALSE(pinMatches(phc, wrong));
    }
    CHECK(hashPin("4711", PinCost::Least) != phc);  // the salt differs
}

TEST_CASE("a broken PIN record matches nothing")
{
    const std::string phc = hashPin("4711", PinCost::Least);
    CHECK_FALSE(pinMatches("", "4711"));
    CHECK_FALSE(pinMatches("4711", "4711"));
    CHECK_FALSE(pinMatches(phc.substr(0, phc.size() - 1), "4711"));
    CHECK_FALSE(pinMatches(phc + "A", "4711"));
    CHECK_FALSE(pinMatches(std::string(4000, '$'), "4711"));
}

TEST_CASE("the shop's PIN record asks for three passes over 64 MiB")
{
    const std::string phc = hashPin("0815", PinCost::Shop);
    CHECK(phc.rfind("$argon2id$v=19$m=65536,t=3,p=1$", 0) == 0);
    CHECK(pinMatches(phc, "0815"));
    CHECK_NOTHROW(spendPinTry());
}

TEST_CASE("random ids are 32 hex digits and differ")
{
    RandomIds ids;
    std::set<std::string> seen;
    for (int i = 0; i < 1000; ++i) {
        const std::string id = ids.next();
        REQUIRE(id.size() == 32);
        REQUIRE(id.find_first_not_of("0123456789abcdef") == std::string::npos);
        seen.insert(id);
    }
    CHECK(seen.size() == 1000);
}

TEST_CASE("counted ids count from one and start again with each source")
{
    CountedIds ids;
    CHECK(ids.next() == "00000000000000000000000000000001");
    for (int i = 2; i < 255; ++i) static_cast<void>(ids.next());
    CHECK(ids.next() == "000000000000000000000000000000ff");
    CHECK(CountedIds().next() == "00000000000000000000000000000001");
}

// RFC 4648 (2006), section 10, test vectors.
TEST_CASE("base64 gives the published texts and takes back nothing else")
{
    const std::vector<std::pair<std::string, std::string>> rows{{"", ""},
                                                                {"f", "Zg=="},
                                                                {"fo", "Zm8="},
                                                                {"foo", "Zm9v"},
                                                                {"foob", "Zm9vYg=="},
                                                                {"fooba", "Zm9vYmE="},
                                                                {"foobar", "Zm9vYmFy"}};
    for (const auto& [bytes, text] : rows) {
        CHECK(base64(bytes) == text);
        CHECK(fromBase64(text) == bytes);
    }
    const std::string all = [] {
        std::string every;
        for (int i = 0; i < 256; ++i) every += static_cast<char>(i);
        return every;
    }();
    CHECK(fromBase64(base64(all)) == all);
    for (const char* wrong : {"Zg", "Zg=", "Zg==x", "Z*==", "Zm9v\n", " Zm9v", "Zm8=Zm8="}) {
        INFO(wrong);
        CHECK_FALSE(fromBase64(wrong));
    }
}

TEST_CASE("a hash over bytes that come one after the other is that of all of them")
{
    // FIPS 180-4 example: SHA-256 of "abc".
    RunningSha256 running;
    CHECK(running.digest() == sha256(""));
    running.add("a");
    CHECK(running.digest() == sha256("a"));
    running.add("bc");
    CHECK(hex(running.digest()) == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    RunningSha256 other = running;
    other.add(std::string(1000, 'x'));
    CHECK(other.digest() == sha256("abc" + std::string(1000, 'x')));
    CHECK(running.digest() == sha256("abc"));
}
