// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/base/crypto.h"

namespace taut {

using PublicKey = std::array<std::uint8_t, 32>;
using Signature = std::array<std::uint8_t, 64>;

/// An Ed25519 key pair (RFC 8032). The private half is wiped when the object ends and leaves it only sealed.
class SigningKey {
public:
    [[nodiscard]] static SigningKey make();
    /// From the 32 bytes that RFC 8032 calls the private key.
    [[nodiscard]] static SigningKey fromSeed(std::span<const std::uint8_t, 32> seed);
    SigningKey(SigningKey&& other) noexcept;
    SigningKey& operator=(SigningKey&& other) noexcept;
    SigningKey(const SigningKey&) = delete;
    SigningKey& operator=(const SigningKey&) = delete;
    ~SigningKey();

    [[nodiscard]] const PublicKey& publicKey() const noexcept { return m_public; }
    /// Over purpose ‖ 00 ‖ what: a signature given for one purpose is none for another.
    [[nodiscard]] Signature sign(std::string_view purpose, std::span<const std::uint8_t> what) const;

    /// The private half under a secret, as one line of text: Argon2id (RFC 9106) makes a key of the secret, and
    /// XChaCha20-Poly1305 seals the private half with it; the public key is bound to it, so that no other person's may
    /// be put in its place.
    [[nodiscard]] std::string sealUnder(std::string_view secret, PinCost cost) const;
    /// nullopt: the secret is another, the text was changed, or it belongs to another public key. Costs the same.
    [[nodiscard]] static std::optional<SigningKey> open(std::string_view sealedText, std::string_view secret,
                                                        const PublicKey& expected);

private:
    SigningKey() = default;
    std::array<std::uint8_t, 64> m_secret{};
    PublicKey m_public{};
};

/// True when that key signed exactly this for this purpose.
[[nodiscard]] bool signatureHolds(const PublicKey& key, std::string_view purpose, std::span<const std::uint8_t> what,
                                  const Signature& signature);

/// From hex as a document writes it; nullopt unless it is exactly that many bytes of lower-case hex.
[[nodiscard]] std::optional<PublicKey> publicKeyFrom(std::string_view hexText);
[[nodiscard]] std::optional<Signature> signatureFrom(std::string_view hexText);

}  // namespace taut
