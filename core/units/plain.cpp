// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/plain.h"

#include <array>

#include "core/units/format.h"
#include "core/units/unit_json.h"

namespace taut {

namespace {

constexpr std::array<const char*, kKindCount> kKindWords{"count",
                                                         "share",
                                                         "angle",
                                                         "length",
                                                         "volume_per_area",
                                                         "area",
                                                         "mass",
                                                         "grammage",
                                                         "density",
                                                         "area_per_mass",
                                                         "force",
                                                         "force_per_width",
                                                         "pressure",
                                                         "torque",
                                                         "torque_per_pressure",
                                                         "torque_per_current",
                                                         "torque_per_share",
                                                         "speed",
                                                         "acceleration",
                                                         "time",
                                                         "frequency",
                                                         "inertia",
                                                         "count_per_length",
                                                         "power",
                                                         "current",
                                                         "viscosity"};

constexpr std::array<const char*, 3> kSeverityWords{"note", "warn", "stop"};

std::string argText(const TextArg& arg, UnitSystem system)
{
    if (const auto* words = std::get_if<std::string>(&arg)) return *words;
    if (const auto* whole = std::get_if<std::int64_t>(&arg)) return std::to_string(*whole);
    if (const auto* texts = std::get_if<std::vector<Text>>(&arg)) {
        std::string all;
        for (const Text& text : *texts) all += (all.empty() ? "" : ", ") + plain(text, system);
        return all;
    }
    const auto& magnitude = std::get<Magnitude>(arg);
    return format(Quantity(magnitude.si, magnitude.kind, magnitude.unit), system);
}

Json argJson(const TextArg& arg)
{
    if (const auto* words = std::get_if<std::string>(&arg)) return *words;
    if (const auto* whole = std::get_if<std::int64_t>(&arg)) return *whole;
    if (const auto* texts = std::get_if<std::vector<Text>>(&arg)) {
        Json all = Json::array();
        for (const Text& text : *texts) all.add(textJson(text));
        return all;
    }
    const auto& magnitude = std::get<Magnitude>(arg);
    Json object = Json::object();
    object.set("si", magnitude.si).set("kind", kindWord(magnitude.kind));
    setUnit(object, "unit", magnitude.unit);
    return object;
}

TextArg argFrom(const Json& json)
{
    if (json.isString()) return json.text();
    if (json.isNumber()) return json.integer();
    if (json.isArray()) {
        std::vector<Text> texts;
        for (const Json& text : json.items()) texts.push_back(textFrom(text));
        return texts;
    }
    Magnitude magnitude{json["si"].number(), Kind::Count, unitFrom(json, "unit")};
    static_cast<void>(kindFromWord(json["kind"].text(), magnitude.kind));
    return magnitude;
}

/// What may stand behind a full stop: ) ] " ' and the closing marks of print.
constexpr std::array<std::string_view, 8> kClosing{")", "]", "\"", "'", "\u201d", "\u2019", "\u00bb", "\u27e7"};
constexpr std::array<std::string_view, 5> kStops{".", "!", "?", ":", "\u2026"};

template <std::size_t N>
std::size_t endingIn(std::string_view words, const std::array<std::string_view, N>& marks)
{
    for (const std::string_view mark : marks)
        if (words.ends_with(mark)) return mark.size();
    return 0;
}

}  // namespace

std::string plain(const Text& text, UnitSystem system)
{
    std::string out;
    for (std::size_t i = 0; i < text.source.size(); ++i) {
        const char next = i + 1 < text.source.size() ? text.source[i + 1] : '\0';
        const bool names = text.source[i] == '%' && next >= '1' && next <= '9';
        const auto n = names ? static_cast<std::size_t>(next - '1') : text.args.size();
        // A text read from outside may name an argument that it does not have: it is said as it stands.
        if (n >= text.args.size()) {
            out += text.source[i];
            continue;
        }
        out += argText(text.args[n], system);
        ++i;
    }
    return out;
}

std::string closedSentence(std::string words)
{
    while (words.ends_with(' ')) words.pop_back();
    std::string_view said = words;
    while (const std::size_t mark = endingIn(said, kClosing)) said.remove_suffix(mark);
    if (!said.empty() && endingIn(said, kStops) == 0) words += '.';
    return words;
}

std::string joinedSentences(std::string first, std::string_view second)
{
    if (second.empty()) return first;
    std::string all = closedSentence(std::move(first));
    if (!all.empty()) all += ' ';
    return all.append(second);
}

std::string sentence(const Finding& finding, UnitSystem system)
{
    const std::string said = joinedSentences(plain(finding.text, system), plain(finding.remedy, system));
    return finding.subject.empty() ? said : joinedSentences(finding.subject + ':', said);
}

Json findingJson(const Finding& finding, UnitSystem system)
{
    Json json = Json::object();
    json.set("code", finding.code);
    json.set("severity", kSeverityWords[static_cast<std::size_t>(finding.severity)]);
    json.set("subject", finding.subject);
    json.set("text", plain(finding.text, system));
    json.set("remedy", plain(finding.remedy, system));
    json.set("say", textJson(finding.text));
    json.set("do", textJson(finding.remedy));
    return json;
}

Finding findingFrom(const Json& json)
{
    Finding finding;
    finding.code = json["code"].text();
    for (std::size_t i = 0; i < kSeverityWords.size(); ++i)
        if (json["severity"].text() == kSeverityWords[i]) finding.severity = static_cast<Severity>(i);
    finding.subject = json["subject"].text();
    // Another program may have written the sentences alone.
    finding.text = json.has("say") ? textFrom(json["say"]) : Text{json["text"].text()};
    finding.remedy = json.has("do") ? textFrom(json["do"]) : Text{json["remedy"].text()};
    return finding;
}

Json textJson(const Text& text)
{
    Json args = Json::array();
    for (const TextArg& arg : text.args) args.add(argJson(arg));
    return Json::object().set("source", text.source).set("args", std::move(args));
}

Text textFrom(const Json& json)
{
    if (json.isString()) return Text{json.text()};
    Text text{json["source"].text()};
    for (const Json& arg : json["args"].items()) text.args.push_back(argFrom(arg));
    return text;
}

const char* kindWord(Kind kind) noexcept { return kKindWords[static_cast<std::size_t>(kind)]; }

bool kindFromWord(std::string_view word, Kind& out) noexcept
{
    for (std::size_t i = 0; i < kKindWords.size(); ++i) {
        if (word != kKindWords[i]) continue;
        out = static_cast<Kind>(i);
        return true;
    }
    return false;
}

}  // namespace taut
