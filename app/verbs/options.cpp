// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/verbs/options.h"

#include <algorithm>

namespace taut::app::verbs {

namespace {

constexpr OptionSpec kJson{"--json", "", "one JSON object on standard output"};
constexpr OptionSpec kHelp{"--help", "", "this text"};

const OptionSpec* find(const VerbSpec& spec, std::string_view name)
{
    if (name == kJson.name) return &kJson;
    if (name == kHelp.name) return &kHelp;
    for (const OptionSpec& option : spec.options)
        if (option.name == name) return &option;
    return nullptr;
}

Finding unknown(const VerbSpec& spec, const std::string& name)
{
    std::vector<std::string> known{std::string(kJson.name), std::string(kHelp.name)};
    for (const OptionSpec& option : spec.options) known.emplace_back(option.name);
    const std::string verb(spec.name);
    const std::string near = nearest(name, known);
    return refuse("option.unknown", name, {"tautweb %1 has no option %2.", {verb, name}},
                  near.empty() ? Text("tautweb %1 --help lists its options.", {verb})
                               : Text("Did you mean %2? tautweb %1 --help lists them all.", {verb, near}));
}

/// Edits between two words (Damerau-Levenshtein, optimal string alignment).
std::size_t distance(std::string_view a, std::string_view b)
{
    std::vector<std::vector<std::size_t>> d(a.size() + 1, std::vector<std::size_t>(b.size() + 1));
    for (std::size_t i = 0; i <= a.size(); ++i) d[i][0] = i;
    for (std::size_t j = 0; j <= b.size(); ++j) d[0][j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i)
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t same = a[i - 1] == b[j - 1] ? 0 : 1;
            d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + same});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
        }
    return d[a.size()][b.size()];
}

}  // namespace

bool Options::has(std::string_view name) const
{
    return std::any_of(m_given.begin(), m_given.end(), [&](const auto& one) { return one.first == name; });
}

std::string Options::value(std::string_view name) const
{
    const auto all = values(name);
    return all.empty() ? std::string() : all.back();
}

std::vector<std::string> Options::values(std::string_view name) const
{
    std::vector<std::string> all;
    for (const auto& [given, value] : m_given)
        if (given == name) all.push_back(value);
    return all;
}

Result<Options> readOptions(const VerbSpec& spec, std::span<const std::string> args)
{
    Options options;
    bool onlyWords = false;
    for (std::size_t i = 0; i < args.size(); ++i) {
        const std::string& arg = args[i];
        if (onlyWords || arg.size() < 2 || arg[0] != '-') {
            options.m_words.push_back(arg);
            continue;
        }
        if (arg == "--") {
            onlyWords = true;
            continue;
        }
        const std::size_t equals = arg.find('=');
        const std::string name = arg.substr(0, equals);
        const OptionSpec* option = find(spec, name == "-h" ? "--help" : name);
        if (option == nullptr) return unknown(spec, name);
        std::string value;
        if (option->value.empty()) {
            if (equals != std::string::npos)
                return refuse("option.unwanted_value", name, {"%1 takes no value.", {name}},
                              {"Write %1 alone.", {name}});
        } else if (equals != std::string::npos) {
            value = arg.substr(equals + 1);
        } else if (i + 1 < args.size() && args[i + 1].rfind("--", 0) != 0) {
            value = args[++i];
        }
        if (!option->value.empty() && value.empty())
            return refuse("option.no_value", name, {"%1 needs a value: %2.", {name, std::string(option->value)}},
                          {"Write %1 and the value after it.", {name}});
        if (!option->value.empty() && !option->often && options.has(option->name) &&
            options.value(option->name) != value)
            return refuse("option.given_twice", name,
                          {"%1 is given twice: %2 and %3.", {name, options.value(option->name), value}},
                          {"Write %1 once.", {name}});
        options.m_given.emplace_back(option->name, value);
    }
    if (options.has("--help")) return options;
    const std::string verb(spec.name), wanted(spec.arguments);
    if (options.m_words.size() > spec.most)
        return refuse("option.too_many_words", options.m_words[spec.most],
                      {"tautweb %1 does not know what to do with this word.", {verb}},
                      {"Put quotes round a value with spaces, or see tautweb %1 --help.", {verb}});
    if (options.m_words.size() < spec.least)
        return refuse("option.too_few_words", verb, {"tautweb %1 needs %2.", {verb, wanted}},
                      {"See tautweb %1 --help.", {verb}});
    return options;
}

std::string nearest(std::string_view word, std::span<const std::string> known)
{
    std::string best;
    std::size_t least = std::max<std::size_t>(2, word.size() / 3) + 1;
    for (const std::string& one : known) {
        const bool begins = word.size() > 3 && one.rfind(word, 0) == 0;
        const std::size_t away = begins ? 0 : distance(word, one);
        if (away < least) {
            least = away;
            best = one;
        }
    }
    return best;
}

std::string helpFor(const VerbSpec& spec)
{
    std::string text = "tautweb " + std::string(spec.name);
    if (!spec.arguments.empty()) text += ' ' + std::string(spec.arguments);
    text += "\n\n  " + std::string(spec.summary) + "\n\n";
    std::vector<OptionSpec> all = spec.options;
    all.push_back(kJson);
    all.push_back(kHelp);
    std::size_t widest = 0;
    for (const OptionSpec& option : all) widest = std::max(widest, option.name.size() + option.value.size() + 1);
    for (const OptionSpec& option : all) {
        std::string left(option.name);
        if (!option.value.empty()) left += ' ' + std::string(option.value);
        text += "  " + left + std::string(widest + 2 - left.size(), ' ') + std::string(option.help) + '\n';
    }
    return text;
}

}  // namespace taut::app::verbs
