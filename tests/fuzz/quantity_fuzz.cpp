// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/inputs/words.h"
#include "core/units/format.h"
#include "core/units/parse.h"
#include "tests/fuzz/property.h"

// A quantity as somebody types it. The first letter says what is wanted: A to Z one kind each, in the order of the
// kinds; a to z the same where a bare number may stand; anything else a plain number.

using namespace taut;
using namespace taut::fuzz;

namespace {

constexpr std::size_t kLongestTyped = 200;

/// What a screen or a sheet shows of it can be typed in again, and is then shown the same.
void checkShown(const Quantity& q, UnitSystem system)
{
    const Shown shown = show(q, system);
    if (shown.text().size() > kLongestTyped) return;
    const Result<Quantity> again = parseQuantity(shown.text(), q.kind(), Bare::Accept);
    require(static_cast<bool>(again), "what is shown can be typed", shown.text());
    // A value too small for its unit's decimals is shown as nought, with more noughts than nought itself.
    const bool nought = shown.number.find_first_of("123456789") == std::string::npos;
    require(nought ? again->si() == 0 : format(*again, system) == shown.text(), "what was typed off is shown the same",
            shown.text());
    const Result<Quantity> down = parseQuantity(format(q, system, Rounding::Down), q.kind(), Bare::Accept);
    const Result<Quantity> up = parseQuantity(format(q, system, Rounding::Up), q.kind(), Bare::Accept);
    require(down && up, "a rounded limit can be typed", shown.text());
    constexpr double kNoise = 1e-12;
    require(down->si() <= q.si() + kNoise * std::abs(q.si()), "rounded down is not above", shown.text());
    require(up->si() >= q.si() - kNoise * std::abs(q.si()), "rounded up is not below", shown.text());
}

void checkQuantity(std::string_view text, Kind kind, Bare bare)
{
    const Result<Quantity> read = parseQuantity(text, kind, bare);
    if (!read) return checkFinding(read.error());
    const Quantity& q = *read;
    require(q.kind() == kind, "the kind is the one wanted", text);
    require(std::isfinite(q.si()), "a quantity is finite", text);
    require(isUtf8(q.entered()), "what was typed is kept as UTF-8", text);
    require(q.unit().empty() || findUnit(kind, q.unit()) != nullptr, "its unit is known", text);
    const Result<Quantity> again = parseQuantity(q.entered(), kind, bare);
    require(again && *again == q && again->unit() == q.unit(), "what was kept reads back the same", text);
    const Result<Quantity> written = parseQuantity(inputs::asWritten(q), kind);
    require(written && *written == q, "what is written to a file reads back the same", text);
    // Without what was typed the writer must find a text of its own.
    const Quantity bareValue = q.in(q.unit());
    const Result<Quantity> computed = parseQuantity(inputs::asWritten(bareValue), kind);
    require(computed && *computed == q, "a computed value reads back the same", inputs::asWritten(bareValue));
    // Far beyond all that can stand on a press the digits of a fixed-point number say nothing.
    constexpr double kLeast = 1e-30, kMost = 1e30;
    if (q.si() != 0 && (std::abs(q.si()) < kLeast || std::abs(q.si()) > kMost)) return;
    checkShown(q, UnitSystem::Metric);
    checkShown(q, UnitSystem::Us);
}

void checkNumber(std::string_view text)
{
    const Result<double> read = parseNumber(text);
    if (!read) return checkFinding(read.error());
    require(std::isfinite(*read), "a number is finite", text);
    const Result<double> again = parseNumber(shortest(*read));
    require(again && *again == *read, "the shortest text reads back the same", shortest(*read));
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    if (size == 0) return 0;
    const char first = static_cast<char>(data[0]);
    const std::string_view text = textOf(data + 1, size - 1);
    if (first >= 'A' && first <= 'Z')
        checkQuantity(text, static_cast<Kind>(first - 'A'), Bare::Refuse);
    else if (first >= 'a' && first <= 'z')
        checkQuantity(text, static_cast<Kind>(first - 'a'), Bare::Accept);
    else
        checkNumber(text);
    return 0;
}
