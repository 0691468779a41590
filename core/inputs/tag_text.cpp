// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/tag_text.h"

#include <algorithm>
#include <array>

#include "core/base/utf8.h"
#include "core/units/number_text.h"

namespace taut::inputs {

namespace {

constexpr char kGs = '\x1d', kRs = '\x1e', kEot = '\x04';
constexpr auto kNowhere = std::string_view::npos;
/// What a scanner sets before the text to say that it follows GS1 (ISO/IEC 15424).
constexpr std::array<std::string_view, 4> kGs1Carriers{"]C1", "]e0", "]d2", "]Q3"};
constexpr std::string_view kEnvelope = "[)>";

/// What stands at the front, as a message may carry it: whole characters, up to so many bytes.
std::string firstSigns(std::string_view text, std::size_t most)
{
    std::size_t end = 0;
    while (end < text.size()) {
        const std::size_t step = std::max<std::size_t>(utf8Step(text.substr(end)), 1);
        if (end + step > most) break;
        end += step;
    }
    return quoted(text.substr(0, end));
}

/// The part of a text up to a mark, which is taken off with it; all of it where the mark is missing.
std::string_view cutAt(std::string_view& rest, char mark)
{
    const std::size_t end = std::min(rest.find(mark), rest.size());
    const std::string_view out = rest.substr(0, end);
    rest.remove_prefix(std::min(end + 1, rest.size()));
    return out;
}

int hexOf(char c)
{
    if (c >= '0' && c <= '9') return c - '0';
    const char small = static_cast<char>(c | 0x20);
    return small >= 'a' && small <= 'f' ? small - 'a' + 10 : -1;
}

/// A text without its escapes, and where each of its characters stands in it.
struct Plain {
    std::string text;
    std::vector<std::size_t> at;
    std::optional<std::size_t> fault;  ///< where a % begins no escape
};
Plain withoutEscapes(const TagPiece& piece)
{
    Plain out;
    for (std::size_t i = 0; i < piece.text.size(); ++i) {
        out.at.push_back(i);
        if (!piece.escaped || piece.text[i] != '%') {
            out.text += piece.text[i];
            continue;
        }
        const int high = i + 2 < piece.text.size() ? hexOf(piece.text[i + 1]) : -1;
        const int low = high < 0 ? -1 : hexOf(piece.text[i + 2]);
        if (low < 0) {
            out.fault = i;
            break;
        }
        out.text += static_cast<char>(high * 16 + low);
        i += 2;
    }
    out.at.push_back(piece.text.size());
    return out;
}

bool beginsAddress(std::string_view text)
{
    for (const std::string_view scheme : {"https://", "http://"})
        if (text.size() >= scheme.size() && std::equal(scheme.begin(), scheme.end(), text.begin(), [](char a, char b) {
                return a == (b >= 'A' && b <= 'Z' ? b | 0x20 : b);
            }))
            return true;
    return false;
}

}  // namespace

Finding tagFinding(const char* code, const char* what, std::size_t place, std::vector<TextArg> with)
{
    with.insert(with.begin(), static_cast<std::int64_t>(place));
    return refuse(code, "roll.tag", {what, std::move(with)},
                  "Scan it again. If it stays so, type in what the tag says in plain figures.");
}

std::size_t TagReader::placeOf(const char* at) const
{
    return charactersIn(m_scanned.substr(0, static_cast<std::size_t>(at - m_scanned.data()))) + 1;
}

Finding TagReader::fault(const char* code, const char* what, const char* at, std::vector<TextArg> with) const
{
    return tagFinding(code, what, placeOf(at), std::move(with));
}

std::optional<Finding> TagReader::take(const TagPiece& piece, std::span<const TagIdentifier> parts)
{
    const Plain plain = withoutEscapes(piece);
    const auto at = [&](std::size_t index) { return piece.text.data() + plain.at[index]; };
    const std::string id(piece.id), whole = quoted(plain.text);
    if (plain.fault)
        return fault("tag.bad_value", "Character %1: field %2 of the tag has a % without its two figures: \"%3\".",
                     piece.text.data() + *plain.fault, {id, quoted(piece.text)});
    std::size_t least = 0, most = 0;
    for (const TagIdentifier& part : parts) least += part.least, most += part.most;
    if (plain.text.size() < least)
        return fault("tag.too_short", "Character %1: field %2 of the tag is cut off: \"%3\".", at(plain.text.size()),
                     {id, whole});
    if (plain.text.size() > most)
        return fault("tag.bad_value", "Character %1: field %2 of the tag is too long: \"%3\".", at(most), {id, whole});
    std::size_t from = 0;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const std::size_t size = parts.size() == 1 ? plain.text.size() : parts[i].most;
        const std::string text = plain.text.substr(from, size);
        const auto outcome = tagValue(parts[i], id, text, m_options);
        if (const auto* wrong = std::get_if<TagFault>(&outcome))
            return fault(wrong->code, wrong->what, at(from + wrong->at),
                         {id, quoted(text), wrong->found, wrong->wanted});
        const char* begin = i == 0 ? piece.id.data() : at(from);
        const std::size_t first = placeOf(begin);
        m_fields.push_back({piece.system, id, static_cast<int>(i), parts[i].name, text, std::get<TagValue>(outcome),
                            parts[i].gives, first, placeOf(at(from + size)) - first});
        from += size;
    }
    return std::nullopt;
}

/// Application identifiers one after the other.
std::optional<Finding> TagReader::elements(std::string_view rest)
{
    while (!rest.empty()) {
        if (rest.front() == kGs) {
            rest.remove_prefix(1);
            continue;
        }
        const auto parts = identifierAt(TagSystem::Application, rest);
        if (parts.empty())
            return fault("tag.unknown_field", "Character %1: the tag has a field that is not known: \"%2\".",
                         rest.data(), {firstSigns(rest, 4)});
        const std::string_view id = rest.substr(0, parts.front().id.size());
        rest.remove_prefix(id.size());
        std::size_t size = std::min(rest.find(kGs), rest.size());
        if (parts.front().least == parts.front().most) {
            std::size_t exact = 0;
            for (const TagIdentifier& part : parts) exact += part.most;
            size = std::min(size, exact);
        }
        if (auto wrong = take({TagSystem::Application, id, rest.substr(0, size)}, parts)) return wrong;
        rest.remove_prefix(size);
        if (!parts.front().predefined && !rest.empty() && rest.front() != kGs)
            return fault("tag.separator_missing", "Character %1: the separator after field %2 of the tag is missing.",
                         rest.data(), {std::string(id)});
    }
    return std::nullopt;
}

std::optional<Finding> TagReader::dataField(std::string_view text)
{
    const std::size_t size = dataIdentifierSize(text);
    if (size == 0)
        return fault("tag.unknown_field", "Character %1: the tag has a field that is not known: \"%2\".", text.data(),
                     {firstSigns(text, 4)});
    const auto known = identifierAt(TagSystem::Data, text);
    return take({TagSystem::Data, text.substr(0, size), text.substr(size)},
                known.empty() ? otherDataIdentifier() : known);
}

/// Data identifiers with a separator between them.
std::optional<Finding> TagReader::dataFields(std::string_view rest)
{
    while (!rest.empty()) {
        const std::string_view text = cutAt(rest, kGs);
        if (text.empty()) continue;
        if (auto wrong = dataField(text)) return wrong;
    }
    return std::nullopt;
}

/// ISO/IEC 15434: header, formats that each end with RS, EOT.
std::optional<Finding> TagReader::envelope(std::string_view rest)
{
    rest.remove_prefix(kEnvelope.size());
    const auto cutOff = [&](const char* at) {
        return fault("tag.too_short",
                     "Character %1: the message on the tag is cut off: a separator or its end is missing.", at);
    };
    if (rest.empty() || rest.front() != kRs) return cutOff(rest.data());
    rest.remove_prefix(1);
    while (!rest.empty() && rest.front() != kEot) {
        const std::size_t end = rest.find(kRs);
        std::string_view format = rest.substr(0, end);
        const std::string_view kind = cutAt(format, kGs);
        if (kind != "05" && kind != "06")
            return fault("tag.unknown_format",
                         "Character %1: the message on the tag has a form that is not known: \"%2\".", rest.data(),
                         {firstSigns(kind, 4)});
        if (auto wrong = kind == "05" ? elements(format) : dataFields(format)) return wrong;
        if (end == kNowhere) return cutOff(rest.data() + rest.size());
        rest.remove_prefix(end + 1);
    }
    if (rest.empty()) return cutOff(rest.data());
    if (rest.size() == 1) return std::nullopt;
    return fault("tag.unknown_format", "Character %1: something stands behind the end of the message: \"%2\".",
                 rest.data() + 1, {firstSigns(rest.substr(1), 4)});
}

/// GS1 Digital Link: a web address of any host with the item in its path.
std::optional<Finding> TagReader::link(std::string_view rest)
{
    rest = rest.substr(0, rest.find('#'));
    std::string_view query = rest;
    std::string_view path = cutAt(query, '?');
    path.remove_prefix(path.find("//") + 2);
    const std::size_t host = std::min(path.find('/'), path.size());
    path.remove_prefix(host);
    if (auto wrong = linkPath(path)) return wrong;
    return linkQuery(query);
}

std::optional<Finding> TagReader::linkPath(std::string_view path)
{
    const std::size_t key = path.find("/01/");
    if (key == kNowhere)
        return fault("tag.not_gs1", "Character %1: this is a web address that names no item.",
                     m_scanned.data() + (m_scanned.front() == ']' ? 3 : 0));
    path.remove_prefix(key + 1);
    int before = 0;
    while (!path.empty()) {
        const std::string_view id = cutAt(path, '/');
        const auto parts = identifierAt(TagSystem::Application, id);
        if (parts.empty() || parts.front().id.size() != id.size())
            return fault("tag.unknown_field", "Character %1: the tag has a field that is not known: \"%2\".", id.data(),
                         {firstSigns(id, 4)});
        if (parts.front().path <= before)
            return fault("tag.order",
                         "Character %1: field %2 cannot stand here in the address: item, lot and serial "
                         "number follow each other, the rest comes behind the question mark.",
                         id.data(), {std::string(id)});
        before = parts.front().path;
        // An address that ends behind an identifier has lost its text: nothing then, at the end.
        const std::string_view text = cutAt(path, '/');
        if (auto wrong = take({TagSystem::Application, id, text, true}, parts)) return wrong;
    }
    return std::nullopt;
}

/// Keys in figures are identifiers; any other is the address's own affair.
std::optional<Finding> TagReader::linkQuery(std::string_view query)
{
    while (!query.empty()) {
        std::string_view text = cutAt(query, '&');
        const std::string_view id = cutAt(text, '=');
        if (id.empty() || !std::all_of(id.begin(), id.end(), [](char c) { return c >= '0' && c <= '9'; })) continue;
        const auto parts = identifierAt(TagSystem::Application, id);
        if (parts.empty() || parts.front().id.size() != id.size())
            return fault("tag.unknown_field", "Character %1: the tag has a field that is not known: \"%2\".", id.data(),
                         {firstSigns(id, 4)});
        if (parts.front().path > 0)
            return fault("tag.order",
                         "Character %1: field %2 belongs into the path of the address, before the question "
                         "mark.",
                         id.data(), {std::string(id)});
        if (auto wrong = take({TagSystem::Application, id, text, true}, parts)) return wrong;
    }
    return std::nullopt;
}

std::optional<Finding> TagReader::readAll()
{
    std::string_view rest = m_scanned;
    const bool named = !rest.empty() && rest.front() == ']';
    const std::string_view carrier = named ? rest.substr(0, 3) : std::string_view();
    rest.remove_prefix(carrier.size());
    if (rest.substr(0, kEnvelope.size()) == kEnvelope) return envelope(rest);
    if (beginsAddress(rest)) return link(rest);
    const bool isGs1 = std::find(kGs1Carriers.begin(), kGs1Carriers.end(), carrier) != kGs1Carriers.end();
    const bool isSingle = m_options.singleField && !isGs1 && !identifierAt(TagSystem::Data, rest).empty();
    if (isSingle) return dataField(rest);
    if (named && !isGs1)
        return fault("tag.not_gs1", "Character %1: the scanner says that this is another kind of code: \"%2\".",
                     m_scanned.data(), {firstSigns(carrier, 3)});
    return elements(rest);
}

Result<Tag> readTag(std::string_view scanned, const TagOptions& options)
{
    TagReader reader(scanned, options);
    if (auto wrong = reader.readAll()) return *wrong;
    Tag out{std::move(reader.fields()), {}};
    if (out.fields.empty())
        return tagFinding("tag.empty", "Character %1: nothing stands on the tag.", charactersIn(scanned) + 1, {});
    if (auto wrong = checkTogether(out.fields, out.notes)) return *wrong;
    return out;
}

std::optional<std::size_t> tagPlace(const Finding& finding)
{
    if (finding.code.rfind("tag.", 0) != 0 || finding.text.args.empty()) return std::nullopt;
    const auto* place = std::get_if<std::int64_t>(&finding.text.args.front());
    return place == nullptr ? std::nullopt : std::optional(static_cast<std::size_t>(*place));
}

}  // namespace taut::inputs
