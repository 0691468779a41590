// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/key_reader.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/base/json.h"
#include "core/units/parse.h"

namespace taut::inputs {

namespace {

constexpr const char* kCheckUnit = "Check the unit and the decimal mark.";

/// The bare number of a TOML value; nullopt when it is none.
std::optional<double> bareNumber(const Toml& value)
{
    if (const auto* whole = std::get_if<std::int64_t>(&value.value)) return static_cast<double>(*whole);
    if (const auto* real = std::get_if<double>(&value.value)) return *real;
    return std::nullopt;
}

bool isLowerSnake(std::string_view word)
{
    return std::all_of(word.begin(), word.end(),
                       [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_'; });
}

/// More than this many bytes no label carries.
constexpr std::size_t kLongestId = 100;

/// Without tabs, line ends and other characters that a list or a sheet cannot show.
bool isPrintable(std::string_view word)
{
    return std::none_of(word.begin(), word.end(),
                        [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; });
}

/// The unit that was typed, or a finer one where the limit would be said as nought in it: a gram typed in kilograms.
SharedString sayableUnit(const Quantity& typed, double si)
{
    constexpr double kLeast = 0.01, kMost = 1000;
    const Unit* unit = findUnit(typed.kind(), typed.unit());
    if (unit == nullptr || si == 0 || std::abs(si / unit->toSi) >= kLeast) return typed.unit();
    for (const Unit& finer : unitsOf(typed.kind()))
        if (const double value = std::abs(si / finer.toSi); value >= kLeast && value <= kMost)
            return SharedString::ofTable(finer.symbol);
    return typed.unit();
}

}  // namespace

KeyReader::KeyReader(FileNotes& notes, const Toml& table, std::string path)
    : m_notes(&notes),
      m_table(&table),
      m_path(std::move(path))
{}

std::string KeyReader::dotted(std::string_view key) const
{
    if (m_path.empty()) return std::string(key);
    return key.empty() ? m_path : m_path + '.' + std::string(key);
}

void KeyReader::complain(std::string_view key, Finding finding)
{
    const Toml* value = m_table->find(key);
    const Toml& at = value != nullptr ? *value : *m_table;
    m_notes->add(at.line, at.column, dotted(key), std::move(finding));
}

void KeyReader::wrongType(std::string_view key, const Toml& found, Text expected)
{
    m_notes->add(found.line, found.column, dotted(key),
                 refuse("input.wrong_type", {},
                        {"Here stands %1, which cannot be read as this key.", {found.typeName()}},
                        std::move(expected)));
}

std::string KeyReader::text(std::string_view key)
{
    const Toml* value = ask(key, KeyAsked::Sort::Text);
    if (value == nullptr) return {};
    if (const std::string* found = value->text()) return *found;
    wrongType(key, *value, "Write a text between quotes.");
    return {};
}

std::string KeyReader::word(std::string_view key, std::span<const std::string_view> allowed)
{
    std::string found = text(key);
    narrow(KeyAsked::Sort::Word, {allowed.begin(), allowed.end()});
    if (found.empty() || std::find(allowed.begin(), allowed.end(), found) != allowed.end()) return found;
    const std::vector<std::string> words(allowed.begin(), allowed.end());
    complain(key, refuse("input.unknown_word", {}, {"\"%1\" is not a word that can stand here.", {found}},
                         {"Write one of: %1.", {listedWords(words)}}));
    return {};
}

std::string KeyReader::id(std::string_view key, bool lower)
{
    std::string found = text(key);
    narrow(KeyAsked::Sort::Id);
    if (!has(key)) {
        complain(key,
                 refuse("input.missing_key", {},
                        {"The key %1 is missing, and nothing else can stand for it.", {std::string(key)}},
                        {"Write %1 = \"...\"; what stands beside it is left out until then.", {std::string(key)}}));
        return {};
    }
    const bool fits = !found.empty() && found.size() <= kLongestId && found.find('.') == std::string::npos &&
                      isPrintable(found) && (!lower || isLowerSnake(found));
    if (fits) return found;
    if (m_table->find(key)->text() != nullptr)
        complain(key, refuse("input.bad_id", {}, {"\"%1\" cannot be used as a name that others refer to.", {found}},
                             lower ? Text("Use lower case letters, digits and _ only.")
                                   : Text("Use a short text on one line that is not empty and has no dot in it.")));
    return {};
}

bool KeyReader::isKnown(std::string_view key, const std::string& id, std::span<const std::string> known)
{
    if (known.empty() || std::find(known.begin(), known.end(), id) != known.end()) return true;
    const std::string near = nearest(id, known);
    complain(key,
             refuse("input.unknown_reference", {}, {"Nothing in this file is called \"%1\".", {id}},
                    near.empty() ? Text{"Known here: %1.", {listedWords(known)}} : Text{"Was \"%1\" meant?", {near}}));
    return false;
}

std::string KeyReader::reference(std::string_view key, std::span<const std::string> known)
{
    std::string id = text(key);
    narrow(KeyAsked::Sort::Reference, {known.begin(), known.end()});
    return id.empty() || isKnown(key, id, known) ? id : std::string();
}

std::vector<std::string> KeyReader::references(std::string_view key, std::span<const std::string> known)
{
    std::vector<std::string> out, all = texts(key);
    narrow(KeyAsked::Sort::Texts, {known.begin(), known.end()});
    for (std::string& id : all)
        if (isKnown(key, id, known)) out.push_back(std::move(id));
    return out;
}

std::optional<bool> KeyReader::flag(std::string_view key)
{
    const Toml* value = ask(key, KeyAsked::Sort::Flag);
    if (value == nullptr) return std::nullopt;
    if (const bool* found = std::get_if<bool>(&value->value)) return *found;
    wrongType(key, *value, "Write true or false, without quotes.");
    return std::nullopt;
}

std::optional<int> KeyReader::whole(std::string_view key, int least, int most)
{
    const Toml* value = ask(key, KeyAsked::Sort::Whole);
    if (value == nullptr) return std::nullopt;
    const auto* found = std::get_if<std::int64_t>(&value->value);
    if (found == nullptr) {
        wrongType(key, *value, "Write a whole number, without quotes and without a unit.");
        return std::nullopt;
    }
    if (*found >= least && *found <= most) return static_cast<int>(*found);
    complain(key, refuse(*found < 0 ? "input.negative" : "input.absurd", {},
                         {"%1 cannot be right here; a whole number from %2 to %3 is expected.",
                          {*found, std::int64_t{least}, std::int64_t{most}}},
                         "Check the number."));
    return std::nullopt;
}

std::optional<double> KeyReader::number(std::string_view key, Sane sane)
{
    const Toml* value = ask(key, KeyAsked::Sort::Number);
    if (value == nullptr) return std::nullopt;
    const std::optional<double> found = bareNumber(*value);
    if (!found) {
        wrongType(key, *value, "Write a number, without quotes and without a unit.");
        return std::nullopt;
    }
    const Quantity q(*found, Kind::Count, {}, shortest(*found));
    return believable(q, *value, key, sane) ? found : std::nullopt;
}

std::optional<double> KeyReader::share(std::string_view key, Sane sane)
{
    const std::array<Kind, 1> kinds{Kind::Share};
    const std::optional<Quantity> q = quantity(key, kinds, sane);
    return q ? std::optional<double>(q->si()) : std::nullopt;
}

std::optional<Quantity> KeyReader::quantity(std::string_view key, std::span<const Kind> kinds, std::optional<Sane> sane)
{
    const Toml* value = ask(key, KeyAsked::Sort::Quantity, kinds);
    return value == nullptr ? std::nullopt : read(*value, key, kinds, sane);
}

std::optional<Quantity> KeyReader::factor(std::string_view key, Sane sane)
{
    constexpr std::array kEither{Kind::Count, Kind::Share};
    std::optional<Quantity> q = quantity(key, kEither, sane);
    if (q && q->kind() == Kind::Share) q = Quantity(q->si(), Kind::Count, {}, q->entered());
    return q;
}

std::optional<Quantity> KeyReader::read(const Toml& value, std::string_view key, std::span<const Kind> kinds,
                                        std::optional<Sane> sane)
{
    std::string written;
    const std::optional<double> bare = bareNumber(value);
    if (const std::string* text = value.text()) {
        written = *text;
    } else if (bare) {
        written = shortest(*bare);
    } else if (kinds.front() == Kind::Count) {
        wrongType(key, value,
                  kinds.size() > 1 ? "Write a number, or a share like \"500 %\"." : "Write a number, without a unit.");
        return std::nullopt;
    } else {
        wrongType(key, value,
                  {"Write %1 as a text with its unit, like \"%2\".",
                   {std::vector<Text>{kindName(kinds.front())},
                    "12 " + std::string(usualUnit(kinds.front(), UnitSystem::Metric, 1).symbol)}});
        return std::nullopt;
    }
    // A number alone is a share only where nothing else can be meant.
    const bool alone = kinds.size() == 1 && kinds.front() == Kind::Share;
    std::optional<Finding> why;
    for (const Kind kind : kinds) {
        const Bare may = alone || kind == Kind::Count ? Bare::Accept : Bare::Refuse;
        const Result<Quantity> q = parseQuantity(written, kind, may);
        if (q) return believable(*q, value, key, sane.value_or(saneSetting(kind))) ? std::optional(*q) : std::nullopt;
        if (!why || (why->code == "quantity.wrong_kind" && q.error().code != "quantity.wrong_kind")) why = q.error();
    }
    if (why->code == "quantity.wrong_kind" && kinds.size() > 1) {
        std::vector<Text> expected;
        for (const Kind kind : kinds) expected.emplace_back(kindName(kind));
        why->text = {"\"%1\" is not of a kind that can stand here; expected is one of: %2.", {written, expected}};
    }
    if (kinds.size() > 2 && (why->code == "quantity.no_unit" || why->code == "quantity.unknown_unit")) {
        why->text = {"\"%1\" has no unit that is read here.", {written}};
        why->remedy = "Write the number with its unit.";
    }
    if (why->remedy.empty()) why->remedy = kCheckUnit;
    m_notes->add(value.line, value.column, dotted(key), std::move(*why));
    return std::nullopt;
}

bool KeyReader::believable(const Quantity& q, const Toml& at, std::string_view key, Sane sane)
{
    const double si = q.si();
    const bool tooSmall = si < sane.least || (si == 0 && !sane.zero);
    if (std::isfinite(si) && !tooSmall && si <= sane.most) return true;
    const auto limit = [&](double end) { return Magnitude{end, q.kind(), sayableUnit(q, end)}; };
    if (si < 0 && sane.least >= 0)
        m_notes->add(at.line, at.column, dotted(key),
                     refuse("input.negative", {},
                            {"\"%1\" is below nought, which cannot be here.", {q.entered().str()}},
                            "Take the minus sign out, or measure from the other side."));
    else
        m_notes->add(at.line, at.column, dotted(key),
                     refuse("input.absurd", {},
                            {"\"%1\" cannot be right here: between %2 and %3 can be believed.",
                             {q.entered().str(), limit(sane.least), limit(sane.most)}},
                            kCheckUnit));
    return false;
}

std::vector<std::string> KeyReader::texts(std::string_view key)
{
    const Toml* value = ask(key, KeyAsked::Sort::Texts);
    std::vector<std::string> out;
    if (value == nullptr) return out;
    if (value->array() == nullptr) {
        wrongType(key, *value, "Write a list of texts, like [\"one\", \"two\"].");
        return out;
    }
    for (const Toml& item : *value->array()) {
        if (const std::string* found = item.text())
            out.push_back(*found);
        else
            wrongType(std::string(key) + '[' + std::to_string(&item - value->array()->data()) + ']', item,
                      "Write a text between quotes.");
    }
    return out;
}

std::pair<Maybe<Kind::Length>, Maybe<Kind::Length>> KeyReader::point(std::string_view key, Sane sane)
{
    std::pair<Maybe<Kind::Length>, Maybe<Kind::Length>> out;
    const Toml* value = ask(key, KeyAsked::Sort::Point);
    if (value == nullptr) return out;
    if (value->array() == nullptr || value->array()->size() != 2) {
        wrongType(key, *value, "Write two lengths, along and up, like [\"650 mm\", \"400 mm\"].");
        return out;
    }
    const std::array<Kind, 1> kinds{Kind::Length};
    const Toml::Array& both = *value->array();
    if (const auto x = read(both[0], std::string(key) + "[0]", kinds, sane)) out.first = Entry<Kind::Length>(*x);
    if (const auto y = read(both[1], std::string(key) + "[1]", kinds, sane)) out.second = Entry<Kind::Length>(*y);
    return out;
}

std::optional<KeyReader> KeyReader::table(std::string_view key)
{
    const Toml* value = ask(key, KeyAsked::Sort::Table);
    if (value == nullptr) return std::nullopt;
    if (value->table() != nullptr) return KeyReader(*m_notes, *value, dotted(key));
    wrongType(key, *value, {"Write a table: [%1] with its keys below, or %1 = { key = value }.", {dotted(key)}});
    return std::nullopt;
}

std::vector<KeyReader> KeyReader::tables(std::string_view key)
{
    std::vector<KeyReader> out;
    const Toml* value = ask(key, KeyAsked::Sort::Tables);
    if (value == nullptr) return out;
    if (value->array() == nullptr) {
        wrongType(key, *value, {"Write a list of tables: [[%1]] with its keys below, once for each.", {dotted(key)}});
        return out;
    }
    std::size_t n = 0;
    for (const Toml& item : *value->array()) {
        const std::string name = std::string(key) + '[' + std::to_string(n++) + ']';
        if (item.table() != nullptr)
            out.emplace_back(*m_notes, item, dotted(name));
        else
            wrongType(name, item, "Write a table: { key = value }.");
    }
    return out;
}

std::vector<std::string> KeyReader::keys() const
{
    std::vector<std::string> out;
    for (const auto& member : *m_table->table()) out.push_back(member.first);
    return out;
}

void checkOrder(KeyReader& keys, std::string_view lowKey, std::optional<Quantity>& low, std::optional<Quantity>& high)
{
    if (!low || !high || (low->kind() == high->kind() && low->si() <= high->si())) return;
    const bool kinds = low->kind() != high->kind();
    keys.complain(
        lowKey,
        refuse("input.order", {},
               kinds ? Text{"\"%1\" and \"%2\" are not of one kind.", {low->entered().str(), high->entered().str()}}
                     : Text{"The lower end, %1, lies above the upper end, %2.", {low->magnitude(), high->magnitude()}},
               "Check both ends; neither is used until then."));
    low.reset();
    high.reset();
}

}  // namespace taut::inputs
