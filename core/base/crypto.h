// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace taut {

using Bytes = std::vector<std::uint8_t>;
using Digest = std::array<std::uint8_t, 32>;

/// SHA-256 (FIPS 180-4) of a ‖ b.
[[nodiscard]] Digest sha256(std::span<const std::uint8_t> a, std::span<const std::uint8_t> b = {});
[[nodiscard]] Digest sha256(std::string_view text);
/// The same of bytes that come one after the other.
class RunningSha256 {
public:
    RunningSha256();
    void add(std::string_view bytes);
    /// Of everything so far; more may follow.
    [[nodiscard]] Digest digest() const;

private:
    static constexpr std::size_t kRoom = 128;
    alignas(8) std::array<unsigned char, kRoom> m_state{};  ///< of the library, which stays behind crypto.cpp
};
/// Lower-case hex, two digits a byte.
[[nodiscard]] std::string hex(std::span<const std::uint8_t> bytes);
/// Base64 (RFC 4648, section 4, with padding) of some bytes, and back; nullopt: it is none.
[[nodiscard]] std::string base64(std::string_view bytes);
[[nodiscard]] std::optional<std::string> fromBase64(std::string_view text);
/// The bytes of UTF-8 text.
[[nodiscard]] inline std::span<const std::uint8_t> bytesOf(std::string_view text)
{
    return {reinterpret_cast<const std::uint8_t*>(text.data()), text.size()};
}

/// How much work a PIN costs to try: Shop for real use (Argon2id, t=3, 64 MiB, about 0.1 s), Least for tests and demo
/// data.
enum class PinCost : std::uint8_t { Shop, Least };
/// Argon2id (RFC 9106) in PHC string form, salt inside.
[[nodiscard]] std::string hashPin(std::string_view pin, PinCost cost);
[[nodiscard]] bool pinMatches(std::string_view phc, std::string_view pin);
/// Spends what one failed Shop try costs, so that an unknown person cannot be told from a wrong PIN by the clock.
void spendPinTry();
/// n bytes from the operating system.
[[nodiscard]] Bytes randomBytes(std::size_t n);

}  // namespace taut
