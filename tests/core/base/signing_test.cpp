// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/signing.h"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <filesystem>

#include "core/base/file.h"
#include "tests/core/base/folder.h"

using namespace taut;
using taut::test::Folder;

namespace {

void keep(const std::filesystem::path& file, std::span<const std::uint8_t> bytes)
{
    REQUIRE(writeFile(file, std::string(bytes.begin(), bytes.end())));
}

SigningKey keyOfSeed(std::uint8_t first)
{
    std::array<std::uint8_t, 32> seed{};
    seed[0] = first;
    return SigningKey::fromSeed(seed);
}

}  // namespace

// RFC 8032, Edwards-Curve Digital Signature Algorithm, 2017, section 7.1, TEST 1 to 3: private key and public key (from
// memory; a mistake in one digit would give another public key).
TEST_CASE("the public key of a private key is the published one")
{
    const std::pair<const char*, const char*> rows[] = {
        {"9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
         "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a"},
        {"4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
         "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c"},
        {"c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
         "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025"},
    };
    for (const auto& [secret, open] : rows) {
        const auto seed = publicKeyFrom(secret);  // 32 bytes of hex, as a seed is
        REQUIRE(seed);
        CHECK(hex(SigningKey::fromSeed(*seed).publicKey()) == open);
    }
}

// The second implementation is the command openssl (pkeyutl -verify -rawin), with the public key put into the DER
// frame of RFC 8410, section 4.
TEST_CASE("a signature is what openssl verifies over purpose, a zero byte and what is signed")
{
    const Folder folder;
    const SigningKey key = SigningKey::make();
    const Digest link = sha256("a sealed document");
    const Signature signature = key.sign("tautweb-seal-1", link);
    Bytes message;
    for (const char c : std::string_view("tautweb-seal-1")) message.push_back(static_cast<std::uint8_t>(c));
    message.push_back(0);
    message.insert(message.end(), link.begin(), link.end());
    keep(folder.path / "message", message);
    keep(folder.path / "signature", signature);
    Bytes der{0x30, 0x2a, 0x30, 0x05, 0x06, 0x03, 0x2b, 0x65, 0x70, 0x03, 0x21, 0x00};
    der.insert(der.end(), key.publicKey().begin(), key.publicKey().end());
    keep(folder.path / "key.der", der);
    const std::string verify = "cd '" + folder.path.string() +
                               "' && openssl pkeyutl -verify -pubin -keyform DER -inkey key.der -rawin -in message "
                               "-sigfile signature >/dev/null 2>&1";
    CHECK(std::system(verify.c_str()) == 0);
    message.back() ^= 1U;
    keep(folder.path / "message", message);
    CHECK(std::system(verify.c_str()) != 0);
}

TEST_CASE("a signature holds for its key, its purpose and its bytes alone")
{
    const SigningKey key = keyOfSeed(1), other = keyOfSeed(2);
    const auto what = bytesOf("link");
    const Signature signature = key.sign("seal", what);
    CHECK(signatureHolds(key.publicKey(), "seal", what, signature));
    CHECK_FALSE(signatureHolds(other.publicKey(), "seal", what, signature));
    CHECK_FALSE(signatureHolds(key.publicKey(), "deviation", what, signature));
    CHECK_FALSE(signatureHolds(key.publicKey(), "seal", bytesOf("lino"), signature));
    for (std::size_t i = 0; i < signature.size(); ++i) {
        Signature bent = signature;
        bent[i] ^= 0x20U;
        INFO(i);
        CHECK_FALSE(signatureHolds(key.publicKey(), "seal", what, bent));
    }
}

TEST_CASE("a key under a secret opens with that secret and signs as before")
{
    const SigningKey key = SigningKey::make();
    const std::string sealedText = key.sealUnder("a quince is not a pear", PinCost::Least);
    CHECK(sealedText.rfind("tautweb-key-1:1:8192:", 0) == 0);
    auto opened = SigningKey::open(sealedText, "a quince is not a pear", key.publicKey());
    REQUIRE(opened);
    CHECK(opened->publicKey() == key.publicKey());
    CHECK(opened->sign("seal", bytesOf("x")) == key.sign("seal", bytesOf("x")));
    CHECK_FALSE(SigningKey::open(sealedText, "a quince is not a plum", key.publicKey()));
    CHECK_FALSE(SigningKey::open(sealedText, "", key.publicKey()));
    CHECK(key.sealUnder("a quince is not a pear", PinCost::Least) != sealedText);  // salt and nonce differ
}

TEST_CASE("a sealed key does not stand in for another person's")
{
    const SigningKey mine = keyOfSeed(1), yours = keyOfSeed(2);
    CHECK_FALSE(SigningKey::open(mine.sealUnder("secret", PinCost::Least), "secret", yours.publicKey()));
}

TEST_CASE("a sealed key that was changed anywhere opens no more")
{
    const SigningKey key = keyOfSeed(7);
    const std::string whole = key.sealUnder("secret", PinCost::Least);
    for (std::size_t i = 0; i < whole.size(); ++i) {
        std::string bent = whole;
        bent[i] = bent[i] == '0' ? '1' : '0';
        INFO(bent);
        CHECK_FALSE(SigningKey::open(bent, "secret", key.publicKey()));
    }
    for (const char* foreign : {"", ":::::", "tautweb-key-1:1:8192", "tautweb-key-2:1:8192:00:00:00"})
        CHECK_FALSE(SigningKey::open(foreign, "secret", key.publicKey()));
    CHECK_FALSE(SigningKey::open(whole.substr(0, whole.size() - 2), "secret", key.publicKey()));
    CHECK_FALSE(SigningKey::open(whole + "00", "secret", key.publicKey()));
}

TEST_CASE("a sealed key that asks for absurd work is refused before any is done")
{
    const SigningKey key = keyOfSeed(7);
    std::string text = key.sealUnder("secret", PinCost::Least);
    text.replace(text.find(":1:8192:"), 8, ":999999999:999999999999:");
    CHECK_FALSE(SigningKey::open(text, "secret", key.publicKey()));
}

TEST_CASE("keys and signatures are read from exactly their number of lower-case hex digits")
{
    const SigningKey key = keyOfSeed(3);
    const std::string text = hex(key.publicKey());
    CHECK(publicKeyFrom(text) == key.publicKey());
    CHECK_FALSE(publicKeyFrom(text.substr(2)));
    CHECK_FALSE(publicKeyFrom(text + "00"));
    CHECK_FALSE(publicKeyFrom("G" + text.substr(1)));
    CHECK_FALSE(publicKeyFrom("A" + text.substr(1)));
    const Signature signature = key.sign("seal", bytesOf("x"));
    CHECK(signatureFrom(hex(signature)) == signature);
    CHECK_FALSE(signatureFrom(text));
}
