// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <initializer_list>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/physics/formula.h"
#include "core/targets/target.h"

// What formulas are fed with, private to this folder: values that know where they came from and how well they are
// known, and what stands in their place where they are missing or cannot be.
namespace taut::targets {

/// What a call is handed: a list that stands somewhere, or one that is written where it is called. It is good for the
/// length of that call, and copies nothing.
template <class T>
class ListOf {
public:
    ListOf() noexcept = default;
    ListOf(std::initializer_list<T> list) noexcept : m_items(std::data(list), list.size()) {}  // NOLINT
    ListOf(const std::vector<T>& list) noexcept : m_items(list) {}                             // NOLINT
    [[nodiscard]] auto begin() const noexcept { return m_items.begin(); }
    [[nodiscard]] auto end() const noexcept { return m_items.end(); }
    [[nodiscard]] bool empty() const noexcept { return m_items.empty(); }
    [[nodiscard]] std::size_t size() const noexcept { return m_items.size(); }
    [[nodiscard]] const T& operator[](std::size_t at) const { return m_items[at]; }

private:
    std::span<const T> m_items;
};

/// How well something is known: by source of doubt (the caliper, the diameter, a brake's torque), what that source does
/// to the value, expanded (k = 2), SI, with its sign. Sources are independent; what one source does twice adds up.
class Doubt {
public:
    struct Part {
        SharedString source;
        double value{};
    };
    [[nodiscard]] bool empty() const noexcept { return m_parts == nullptr; }
    [[nodiscard]] const Part* begin() const noexcept { return m_parts ? m_parts->data() : nullptr; }
    [[nodiscard]] const Part* end() const noexcept { return m_parts ? m_parts->data() + m_parts->size() : nullptr; }
    void clear() noexcept { m_parts.reset(); }
    /// What this source does, nothing so far.
    [[nodiscard]] double& of(const SharedString& source);

private:
    /// By source, so that a sum is always made in the same order. Shared by copies until one of them is written to.
    std::shared_ptr<std::vector<Part>> m_parts;
};

/// Something a formula is fed with: a quantity and where it came from, or the keys that are missing, or why it cannot
/// be.
struct Term {
    SharedString from;
    std::optional<Quantity> value;
    std::vector<std::string> missing;
    std::shared_ptr<const Finding> cannot;
    Doubt doubt{};
    Text name{};  ///< what it is, where no formula tells: among the givens of a value; empty = what the value is
    [[nodiscard]] bool known() const { return value.has_value(); }
};
[[nodiscard]] Term known(Quantity value, SharedString from);
[[nodiscard]] Term missing(const SharedString& key);
[[nodiscard]] Term impossible(Finding why);
template <Kind K>
[[nodiscard]] Term term(const inputs::Maybe<K>& entry, SharedString key)
{
    return entry ? known(entry->quantity(), std::move(key)) : missing(key);
}
[[nodiscard]] Term term(const std::optional<Quantity>& quantity, SharedString key);
[[nodiscard]] Term number(const std::optional<double>& value, SharedString key, Kind kind);
[[nodiscard]] Term number(const std::optional<int>& value, SharedString key);
/// The same, known only to plus or minus `expanded` (SI, k = 2) by this source.
[[nodiscard]] Term doubted(Term term, double expanded, const SharedString& source);
/// All sources together: root of the sum of squares.
[[nodiscard]] double expandedOf(const Doubt& doubt);
/// The same under a name of its own.
[[nodiscard]] Term called(Term term, Text name);
/// The same quantity under another provenance, when all are known; else what they lack together.
[[nodiscard]] Term combine(ListOf<Term> parts, SharedString from, double (*value)(const std::vector<double>& si),
                           Kind kind);
/// All that a list of terms lacks.
[[nodiscard]] Term lack(ListOf<Term> parts);

using Argument = std::pair<SharedString, Term>;
using Arguments = std::vector<Argument>;

/// Evaluates a catalogue formula on terms; what they lack travels on.
[[nodiscard]] Term evaluated(std::string_view formulaId, ListOf<Argument> arguments, SharedString from);
[[nodiscard]] Term evaluated(const physics::Formula& formula, ListOf<Argument> arguments, SharedString from);
[[nodiscard]] Given given(SharedString symbol, Text name, TargetValue value, SharedString from);

}  // namespace taut::targets
