// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/base/finding.h"
#include "core/base/toml.h"
#include "core/inputs/key_asked.h"
#include "core/inputs/press.h"
#include "core/inputs/sane.h"

namespace taut::inputs {

/// What all tables of one file share while it is read: its name, and what was found wrong, in the file's order.
class FileNotes {
public:
    explicit FileNotes(std::string_view file) : m_file(file) {}
    [[nodiscard]] const std::string& file() const noexcept { return m_file; }
    bool newer = false;  ///< of a later format than ours: keys that we do not know are noted, not refused
    std::vector<KeyAsked>* asked = nullptr;  ///< where the readers say which keys they know; nullptr = nobody wants it

    /// Adds a finding about this place; its subject becomes "file:line:column key".
    void add(int line, int column, std::string_view key, Finding finding);
    /// Appends all findings, sorted by their place in the file.
    void moveTo(Findings& notes);

private:
    struct Placed {
        int line, column;
        Finding finding;
    };
    std::string m_file;
    std::vector<Placed> m_all;
};

/// Reads the keys of one TOML table. A key that is wrong (type, quantity, size, word) is reported with its place and
/// comes back as missing; `done` reports the keys that nobody asked for, with the nearest one that is known here.
class KeyReader {
public:
    KeyReader(FileNotes& notes, const Toml& table, std::string path);

    [[nodiscard]] bool has(std::string_view key) const { return m_table->find(key) != nullptr; }
    [[nodiscard]] const std::string& path() const noexcept { return m_path; }
    [[nodiscard]] FileNotes& notes() noexcept { return *m_notes; }

    /// "" when the key is missing or wrong.
    [[nodiscard]] std::string text(std::string_view key);
    /// One of these words, else "".
    [[nodiscard]] std::string word(std::string_view key, std::span<const std::string_view> allowed);
    template <class E>
    [[nodiscard]] std::optional<E> oneOf(std::string_view key, std::span<const std::pair<std::string_view, E>> words)
    {
        std::vector<std::string_view> allowed;
        for (const auto& w : words) allowed.push_back(w.first);
        const std::string found = word(key, allowed);
        for (const auto& w : words)
            if (w.first == found) return w.second;
        return std::nullopt;
    }
    /// Names things that others refer to: no dot, not empty; with `lower` only lower case letters, digits and '_'.
    /// Missing is a Stop (input.missing_key).
    [[nodiscard]] std::string id(std::string_view key, bool lower);
    /// The id of something else in the file; one that is not among `known` is refused (input.unknown_reference) unless
    /// nothing is known at all.
    [[nodiscard]] std::string reference(std::string_view key, std::span<const std::string> known);
    [[nodiscard]] std::vector<std::string> references(std::string_view key, std::span<const std::string> known);
    [[nodiscard]] std::optional<bool> flag(std::string_view key);
    [[nodiscard]] std::optional<int> whole(std::string_view key, int least, int most);
    /// A number without a unit.
    [[nodiscard]] std::optional<double> number(std::string_view key, Sane sane);
    /// A share: a number without a unit, or a text like "8 %".
    [[nodiscard]] std::optional<double> share(std::string_view key, Sane sane);
    template <Kind K>
    [[nodiscard]] Maybe<K> get(std::string_view key, Sane sane)
    {
        const Kind kinds[] = {K};
        const std::optional<Quantity> q = quantity(key, kinds, sane);
        return q ? Maybe<K>(Entry<K>(*q)) : std::nullopt;
    }
    /// A quantity of one of these kinds; which one the unit tells.
    [[nodiscard]] std::optional<Quantity> quantity(std::string_view key, std::span<const Kind> kinds,
                                                   std::optional<Sane> sane);
    /// Something counted, or so many times something else: a number, or a share of one ("150 %" is 1.5). Nothing else
    /// can be meant, so it may stand between quotes as well.
    [[nodiscard]] std::optional<Quantity> factor(std::string_view key, Sane sane);
    [[nodiscard]] std::vector<std::string> texts(std::string_view key);
    /// A point: a list of two lengths; either may come back missing.
    [[nodiscard]] std::pair<Maybe<Kind::Length>, Maybe<Kind::Length>> point(std::string_view key, Sane sane);
    [[nodiscard]] std::optional<KeyReader> table(std::string_view key);
    [[nodiscard]] std::vector<KeyReader> tables(std::string_view key);
    /// Members that are texts, whatever their keys (labels), and tables, whatever their keys (limits).
    [[nodiscard]] std::vector<std::string> keys() const;

    /// Reports something about this key, or about the table when it does not have the key.
    void complain(std::string_view key, Finding finding);
    /// The table is of no use: its other keys are not looked at.
    void ignoreRest() noexcept { m_ignoreRest = true; }
    /// Reports keys that nobody asked for.
    void done();

private:
    const Toml* ask(std::string_view key, KeyAsked::Sort sort, std::span<const Kind> kinds = {});
    /// Says more of the key that was asked for last.
    void narrow(KeyAsked::Sort sort, std::vector<std::string> words = {});
    [[nodiscard]] std::string dotted(std::string_view key) const;
    void wrongType(std::string_view key, const Toml& found, Text expected);
    [[nodiscard]] std::optional<Quantity> read(const Toml& value, std::string_view key, std::span<const Kind> kinds,
                                               std::optional<Sane> sane);
    [[nodiscard]] bool isKnown(std::string_view key, const std::string& id, std::span<const std::string> known);
    [[nodiscard]] bool believable(const Quantity& q, const Toml& at, std::string_view key, Sane sane);

    FileNotes* m_notes;
    const Toml* m_table;
    std::string m_path;
    std::vector<std::string> m_asked;
    bool m_ignoreRest = false;
};

/// Takes both ends out and says so when low is above high (input.order).
void checkOrder(KeyReader& keys, std::string_view lowKey, std::optional<Quantity>& low, std::optional<Quantity>& high);
template <Kind K>
void checkOrder(KeyReader& keys, std::string_view lowKey, Maybe<K>& low, Maybe<K>& high)
{
    if (!low || !high) return;
    std::optional<Quantity> l = low->quantity(), h = high->quantity();
    checkOrder(keys, lowKey, l, h);
    if (!l) low.reset();
    if (!h) high.reset();
}
/// All of them, with commas between.
[[nodiscard]] std::string listedWords(std::span<const std::string> words);
/// The word of `known` that is nearest to this one, "" when none is near.
[[nodiscard]] std::string nearest(std::string_view word, std::span<const std::string> known);

}  // namespace taut::inputs
