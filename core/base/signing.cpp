// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/signing.h"

#include <sodium.h>

#include <algorithm>
#include <charconv>
#include <new>
#include <vector>

#include "core/base/sodium_work.h"

namespace taut {

namespace {

// "tautweb-key-1:PASSES:MEMORY:SALT:NONCE:BOX", numbers in decimal, bytes in hex.
constexpr std::string_view kMark = "tautweb-key-1";
constexpr std::size_t kSalt = crypto_pwhash_SALTBYTES;
constexpr std::size_t kNonce = crypto_aead_xchacha20poly1305_ietf_NPUBBYTES;
constexpr std::size_t kTag = crypto_aead_xchacha20poly1305_ietf_ABYTES;
constexpr std::size_t kSeed = crypto_sign_SEEDBYTES;
// A changed text must not make the machine work for minutes or take all its memory.
constexpr unsigned long long kMostPasses = 16;
constexpr unsigned long long kMostMemory = 1ULL << 30U;

static_assert(std::tuple_size_v<PublicKey> == crypto_sign_PUBLICKEYBYTES);
static_assert(std::tuple_size_v<Signature> == crypto_sign_BYTES);

/// The key that a secret makes; wiped when it ends.
class SecretKey {
public:
    SecretKey(std::string_view secret, std::span<const std::uint8_t> salt, const SecretWork& work)
    {
        if (crypto_pwhash(m_bytes.data(), m_bytes.size(), secret.data(), secret.size(), salt.data(), work.passes,
                          work.memory, crypto_pwhash_ALG_ARGON2ID13) != 0)
            throw std::bad_alloc();
    }
    SecretKey(const SecretKey&) = delete;
    SecretKey& operator=(const SecretKey&) = delete;
    ~SecretKey() { sodium_memzero(m_bytes.data(), m_bytes.size()); }
    [[nodiscard]] const std::uint8_t* data() const { return m_bytes.data(); }

private:
    std::array<std::uint8_t, crypto_aead_xchacha20poly1305_ietf_KEYBYTES> m_bytes{};
};

/// Only what `hex` writes.
std::optional<Bytes> fromHex(std::string_view text)
{
    if (text.empty()) return Bytes();  // of which there is no address to give
    Bytes bytes(text.size() / 2);
    std::size_t size = 0;
    if (sodium_hex2bin(bytes.data(), bytes.size(), text.data(), text.size(), nullptr, &size, nullptr) != 0 ||
        size != bytes.size() || hex(bytes) != text)
        return std::nullopt;
    return bytes;
}

template <std::size_t N>
std::optional<std::array<std::uint8_t, N>> exactly(std::string_view hexText)
{
    const auto bytes = fromHex(hexText);
    if (!bytes || bytes->size() != N) return std::nullopt;
    std::array<std::uint8_t, N> result{};
    std::copy(bytes->begin(), bytes->end(), result.begin());
    return result;
}

std::optional<unsigned long long> wholeNumber(std::string_view text)
{
    unsigned long long value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
    return value;
}

/// The parts of a sealed key; nullopt when it is none.
struct Sealed {
    SecretWork work;
    Bytes salt, nonce, box;
};
std::optional<Sealed> readSealed(std::string_view text)
{
    std::vector<std::string_view> parts;
    while (true) {
        const std::size_t colon = text.find(':');
        parts.push_back(text.substr(0, colon));
        if (colon == std::string_view::npos) break;
        text.remove_prefix(colon + 1);
    }
    if (parts.size() != 6 || parts[0] != kMark) return std::nullopt;
    const auto passes = wholeNumber(parts[1]), memory = wholeNumber(parts[2]);
    auto salt = fromHex(parts[3]), nonce = fromHex(parts[4]), box = fromHex(parts[5]);
    const bool whole = passes && memory && salt && nonce && box && salt->size() == kSalt && nonce->size() == kNonce &&
                       box->size() == kSeed + kTag;
    if (!whole || *passes < crypto_pwhash_argon2id_OPSLIMIT_MIN || *passes > kMostPasses ||
        *memory < crypto_pwhash_argon2id_MEMLIMIT_MIN || *memory > kMostMemory)
        return std::nullopt;
    return Sealed{{*passes, static_cast<std::size_t>(*memory)}, std::move(*salt), std::move(*nonce), std::move(*box)};
}

Bytes message(std::string_view purpose, std::span<const std::uint8_t> what)
{
    const auto words = bytesOf(purpose);
    Bytes all(words.begin(), words.end());
    all.push_back(0);
    all.insert(all.end(), what.begin(), what.end());
    return all;
}

}  // namespace

SigningKey SigningKey::make()
{
    beginSodium();
    SigningKey key;
    crypto_sign_keypair(key.m_public.data(), key.m_secret.data());
    return key;
}

SigningKey SigningKey::fromSeed(std::span<const std::uint8_t, 32> seed)
{
    beginSodium();
    SigningKey key;
    crypto_sign_seed_keypair(key.m_public.data(), key.m_secret.data(), seed.data());
    return key;
}

SigningKey::SigningKey(SigningKey&& other) noexcept : m_secret(other.m_secret), m_public(other.m_public)
{
    sodium_memzero(other.m_secret.data(), other.m_secret.size());
}

SigningKey& SigningKey::operator=(SigningKey&& other) noexcept
{
    if (this != &other) {
        m_secret = other.m_secret;
        m_public = other.m_public;
        sodium_memzero(other.m_secret.data(), other.m_secret.size());
    }
    return *this;
}

SigningKey::~SigningKey() { sodium_memzero(m_secret.data(), m_secret.size()); }

Signature SigningKey::sign(std::string_view purpose, std::span<const std::uint8_t> what) const
{
    const Bytes bytes = message(purpose, what);
    Signature signature{};
    crypto_sign_detached(signature.data(), nullptr, bytes.data(), bytes.size(), m_secret.data());
    return signature;
}

std::string SigningKey::sealUnder(std::string_view secret, PinCost cost) const
{
    const SecretWork work = workOf(cost);
    const Bytes salt = randomBytes(kSalt), nonce = randomBytes(kNonce);
    const SecretKey key(secret, salt, work);
    Bytes box(kSeed + kTag);
    // The library's private half is the seed and the public key after it.
    crypto_aead_xchacha20poly1305_ietf_encrypt(box.data(), nullptr, m_secret.data(), kSeed, m_public.data(),
                                               m_public.size(), nullptr, nonce.data(), key.data());
    return std::string(kMark) + ':' + std::to_string(work.passes) + ':' + std::to_string(work.memory) + ':' +
           hex(salt) + ':' + hex(nonce) + ':' + hex(box);
}

std::optional<SigningKey> SigningKey::open(std::string_view sealedText, std::string_view secret,
                                           const PublicKey& expected)
{
    beginSodium();
    const auto sealed = readSealed(sealedText);
    if (!sealed) {
        spendPinTry();
        return std::nullopt;
    }
    const SecretKey key(secret, sealed->salt, sealed->work);
    std::array<std::uint8_t, kSeed> seed{};
    const bool opened = crypto_aead_xchacha20poly1305_ietf_decrypt(seed.data(), nullptr, nullptr, sealed->box.data(),
                                                                   sealed->box.size(), expected.data(), expected.size(),
                                                                   sealed->nonce.data(), key.data()) == 0;
    std::optional<SigningKey> result;
    if (opened) result.emplace(fromSeed(seed));
    sodium_memzero(seed.data(), seed.size());
    if (result && result->publicKey() != expected) return std::nullopt;
    return result;
}

bool signatureHolds(const PublicKey& key, std::string_view purpose, std::span<const std::uint8_t> what,
                    const Signature& signature)
{
    beginSodium();
    const Bytes bytes = message(purpose, what);
    return crypto_sign_verify_detached(signature.data(), bytes.data(), bytes.size(), key.data()) == 0;
}

std::optional<PublicKey> publicKeyFrom(std::string_view hexText) { return exactly<32>(hexText); }
std::optional<Signature> signatureFrom(std::string_view hexText) { return exactly<64>(hexText); }

}  // namespace taut
