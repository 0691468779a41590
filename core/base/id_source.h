// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace taut {

/// The only way to random ids; tests bring their own.
class IdSource {
public:
    virtual ~IdSource() = default;
    /// 32 lower-case hex digits.
    [[nodiscard]] virtual std::string next() = 0;
};

/// 128 random bits from the operating system.
class RandomIds final : public IdSource {
public:
    [[nodiscard]] std::string next() override;
};

/// 000...1, 000...2: for demos and tests that must repeat.
class CountedIds final : public IdSource {
public:
    [[nodiscard]] std::string next() override;

private:
    unsigned long long m_n = 0;
};

}  // namespace taut
