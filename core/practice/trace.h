// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/base/crypto.h"
#include "core/practice/world.h"

namespace taut::practice {

/// What a tenth of a second of practice looked like, a line each (CSV, RFC 4180): time, speed, the two rolls, tension
/// in every span, where the web lies at every roller. Seven figures: what two machines' libraries may round otherwise
/// stands behind them.
class Trace {
public:
    /// `keeps`: the text itself is wanted, not only its hash.
    explicit Trace(const World& world, bool keeps = false);
    void add(const World& world);
    [[nodiscard]] const std::string& text() const { return m_text; }
    [[nodiscard]] std::string sha256() const { return hex(m_hash.digest()); }

private:
    void say(std::string_view line);
    bool m_keeps;
    std::string m_text;
    RunningSha256 m_hash;
};

}  // namespace taut::practice
