// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/tag_scan.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/inputs/tag_text.h"

namespace taut::inputs {

namespace {

constexpr std::string_view kGs = "\x1d", kRs = "\x1e", kEot = "\x04";
constexpr std::array<std::pair<std::string_view, std::string_view>, 12> kNamed{{{"\xe2\x90\x9d", kGs},
                                                                                {"\xe2\x90\x9e", kRs},
                                                                                {"\xe2\x90\x84", kEot},
                                                                                {"<GS>", kGs},
                                                                                {"<RS>", kRs},
                                                                                {"<EOT>", kEot},
                                                                                {"{GS}", kGs},
                                                                                {"{RS}", kRs},
                                                                                {"{EOT}", kEot},
                                                                                {"[GS]", kGs},
                                                                                {"[RS]", kRs},
                                                                                {"[EOT]", kEot}}};
constexpr std::string_view kInPlaceOfGs = "|~^";

std::string replaced(std::string text, std::string_view what, std::string_view by)
{
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + by.size()))
        text.replace(at, what.size(), by);
    return text;
}

/// The fields of a text, whatever they say together.
std::optional<std::vector<TagField>> fieldsOf(std::string_view scanned, const TagOptions& options)
{
    TagReader reader(scanned, options);
    if (reader.readAll()) return std::nullopt;
    return std::move(reader.fields());
}

bool isSame(const TagField& a, const TagField& b)
{
    return a.system == b.system && a.id == b.id && a.part == b.part && a.text == b.text;
}

std::string elementsOf(const std::vector<TagField>& fields, TagSystem system)
{
    std::string out;
    for (const TagField& field : fields) {
        if (field.system != system) continue;
        if (field.part == 0) out += (out.empty() ? "" : std::string(kGs)) + field.id;
        out += field.text;
    }
    return out;
}

/// The fields as one text that reads the same wherever it is read: element strings, or the envelope where data
/// identifiers are among them.
std::string textOf(const std::vector<TagField>& fields)
{
    const std::string application = elementsOf(fields, TagSystem::Application);
    const std::string data = elementsOf(fields, TagSystem::Data);
    if (data.empty()) return "]C1" + application;
    std::string out = "[)>";
    out += kRs;
    if (!application.empty()) out.append("05").append(kGs).append(application).append(kRs);
    return out.append("06").append(kGs).append(data).append(kRs).append(kEot);
}

}  // namespace

std::string withSeparators(std::string_view scanned, const TagOptions& options)
{
    std::string text(scanned);
    for (const auto& [name, sign] : kNamed) text = replaced(std::move(text), name, sign);
    if (text.find(kGs) != std::string::npos || fieldsOf(text, options)) return text;
    for (const char sign : kInPlaceOfGs) {
        std::string parted = replaced(text, {&sign, 1}, kGs);
        if (parted != text && fieldsOf(parted, options)) return parted;
    }
    return text;
}

Result<ScannedTag> readScanned(std::string_view before, std::string_view scanned, const TagOptions& options)
{
    const auto said = fieldsOf(scanned, options);
    std::vector<TagField> all = fieldsOf(before, options).value_or(std::vector<TagField>());
    if (said && !all.empty()) {
        std::size_t added = 0;
        for (const TagField& field : *said)
            if (std::none_of(all.begin(), all.end(), [&](const TagField& f) { return isSame(f, field); })) {
                all.push_back(field);
                ++added;
            }
        std::string text = added == 0 ? std::string(before) : textOf(all);
        if (auto both = readRollTag(text, options))
            return ScannedTag{std::move(text), *std::move(both), added == 0 ? SecondTag::Same : SecondTag::Completes,
                              added};
    }
    auto alone = readRollTag(scanned, options);
    if (!alone) return alone.error();
    TagOptions whole = options;
    whole.singleField = false;
    const bool readsAgain = readTag(scanned, whole).operator bool();
    std::string text = readsAgain ? std::string(scanned) : textOf(alone->fields);
    const std::size_t added = alone->fields.size();
    return ScannedTag{std::move(text), *std::move(alone), SecondTag::Replaces, added};
}

}  // namespace taut::inputs
