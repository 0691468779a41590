// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/crypto.h"

#include <sodium.h>

#include <cstring>
#include <new>
#include <stdexcept>
#include <type_traits>

#include "core/base/sodium_work.h"

namespace taut {

void beginSodium()
{
    static const bool kReady = sodium_init() >= 0;
    if (!kReady) throw std::runtime_error("the system gives no random bytes");
}

SecretWork workOf(PinCost cost)
{
    if (cost == PinCost::Shop) return {3, std::size_t{64} << 20U};
    return {crypto_pwhash_argon2id_OPSLIMIT_MIN, crypto_pwhash_argon2id_MEMLIMIT_MIN};
}

static_assert(crypto_hash_sha256_BYTES == std::tuple_size_v<Digest>);

Digest sha256(std::span<const std::uint8_t> a, std::span<const std::uint8_t> b)
{
    beginSodium();
    crypto_hash_sha256_state state;
    Digest digest{};
    crypto_hash_sha256_init(&state);
    crypto_hash_sha256_update(&state, a.data(), a.size());
    crypto_hash_sha256_update(&state, b.data(), b.size());
    crypto_hash_sha256_final(&state, digest.data());
    return digest;
}

namespace {

using Running = crypto_hash_sha256_state;
static_assert(std::is_trivially_copyable_v<Running>);

}  // namespace

RunningSha256::RunningSha256()
{
    static_assert(sizeof(Running) <= kRoom && alignof(Running) <= 8);
    beginSodium();
    Running state;
    crypto_hash_sha256_init(&state);
    std::memcpy(m_state.data(), &state, sizeof state);
}

void RunningSha256::add(std::string_view bytes)
{
    Running state;
    std::memcpy(&state, m_state.data(), sizeof state);
    crypto_hash_sha256_update(&state, bytesOf(bytes).data(), bytes.size());
    std::memcpy(m_state.data(), &state, sizeof state);
}

Digest RunningSha256::digest() const
{
    Running state;
    std::memcpy(&state, m_state.data(), sizeof state);
    Digest digest{};
    crypto_hash_sha256_final(&state, digest.data());
    return digest;
}

Digest sha256(std::string_view text) { return sha256(bytesOf(text)); }

std::string base64(std::string_view bytes)
{
    std::string text(sodium_base64_encoded_len(bytes.size(), sodium_base64_VARIANT_ORIGINAL), '\0');
    sodium_bin2base64(text.data(), text.size(), bytesOf(bytes).data(), bytes.size(), sodium_base64_VARIANT_ORIGINAL);
    text.pop_back();  // the library ends it with a zero
    return text;
}

std::optional<std::string> fromBase64(std::string_view text)
{
    std::string bytes(text.size() / 4 * 3 + 3, '\0');
    std::size_t length = 0;
    const char* end = nullptr;
    const int wrong = sodium_base642bin(reinterpret_cast<unsigned char*>(bytes.data()), bytes.size(), text.data(),
                                        text.size(), nullptr, &length, &end, sodium_base64_VARIANT_ORIGINAL);
    if (wrong != 0 || end != text.data() + text.size()) return std::nullopt;
    bytes.resize(length);
    return bytes;
}

std::string hex(std::span<const std::uint8_t> bytes)
{
    constexpr std::string_view kDigits = "0123456789abcdef";
    std::string text;
    text.reserve(bytes.size() * 2);
    for (const std::uint8_t byte : bytes) {
        text += kDigits[byte >> 4U];
        text += kDigits[byte & 0x0FU];
    }
    return text;
}

std::string hashPin(std::string_view pin, PinCost cost)
{
    beginSodium();
    const SecretWork work = workOf(cost);
    std::array<char, crypto_pwhash_STRBYTES> phc{};
    if (crypto_pwhash_str_alg(phc.data(), pin.data(), pin.size(), work.passes, work.memory,
                              crypto_pwhash_ALG_ARGON2ID13) != 0)
        throw std::bad_alloc();
    return phc.data();
}

bool pinMatches(std::string_view phc, std::string_view pin)
{
    beginSodium();
    // The library reads a fixed-size field that ends in zeros.
    std::array<char, crypto_pwhash_STRBYTES> field{};
    if (phc.size() >= field.size()) return false;
    phc.copy(field.data(), phc.size());
    return crypto_pwhash_str_verify(field.data(), pin.data(), pin.size()) == 0;
}

void spendPinTry()
{
    beginSodium();
    const SecretWork work = workOf(PinCost::Shop);
    constexpr std::array<std::uint8_t, crypto_pwhash_SALTBYTES> kSalt{};
    std::array<std::uint8_t, 32> unused{};
    if (crypto_pwhash(unused.data(), unused.size(), "0000", 4, kSalt.data(), work.passes, work.memory,
                      crypto_pwhash_ALG_ARGON2ID13) != 0)
        throw std::bad_alloc();
}

Bytes randomBytes(std::size_t n)
{
    beginSodium();
    Bytes bytes(n);
    randombytes_buf(bytes.data(), bytes.size());
    return bytes;
}

}  // namespace taut
