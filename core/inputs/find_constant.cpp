// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/find_constant.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "core/inputs/toml_edit.h"
#include "core/inputs/words.h"
#include "core/physics/regression.h"
#include "core/units/unit.h"

namespace taut::inputs {

namespace {

Kind torqueKindOf(Kind setting)
{
    if (setting == Kind::Pressure) return Kind::TorquePerPressure;
    return setting == Kind::Current ? Kind::TorquePerCurrent : Kind::TorquePerShare;
}

/// "N m/psi" for what is set in psi; else the usual unit.
std::string torqueUnit(Kind torque, std::string_view setting)
{
    std::string unit = "N m/" + std::string(setting);
    if (findUnit(torque, unit) != nullptr) return unit;
    return std::string(usualUnit(torque, UnitSystem::Metric, 1).symbol);
}

struct Line {
    double slope = 0, zero = 0;  ///< where it meets nought
    double meanX = 0, squaresX = 0;
    double slopeDoubt = 0, zeroDoubt = 0;
    bool byScatter = false;
};

/// The straight line through the pulls, and through nought where that is wanted.
Line lineOf(std::span<const physics::Pair> pairs, bool throughNought)
{
    Line line;
    const auto n = static_cast<double>(pairs.size());
    double meanY = 0;
    for (const physics::Pair& p : pairs) {
        line.meanX += p.x / n;
        meanY += p.y / n;
    }
    if (throughNought) line.meanX = meanY = 0;
    double products = 0;
    for (const physics::Pair& p : pairs) {
        line.squaresX += (p.x - line.meanX) * (p.x - line.meanX);
        products += (p.x - line.meanX) * (p.y - meanY);
    }
    line.slope = products / line.squaresX;
    line.zero = throughNought ? 0 : line.meanX - meanY / line.slope;
    return line;
}

/// What one reading's doubt, in torque, does to the line; where three pulls or more scatter by more, that counts.
void addDoubt(Line& line, std::span<const physics::Pair> pairs, double force, double setting, bool throughNought)
{
    double one = std::hypot(force, line.slope * setting);
    if (pairs.size() > 2) {
        double squares = 0;
        for (const physics::Pair& p : pairs) {
            const double left = p.y - line.slope * (p.x - line.zero);
            squares += left * left;
        }
        const int freedom = static_cast<int>(pairs.size()) - (throughNought ? 1 : 2);
        const double scatter = physics::studentFactor(0.95, freedom) * std::sqrt(squares / freedom);
        line.byScatter = scatter > one;
        one = std::max(one, scatter);
    }
    line.slopeDoubt = one / std::sqrt(line.squaresX);
    const double off = line.zero - line.meanX;
    line.zeroDoubt = throughNought ? one / line.slope
                                   : one / std::abs(line.slope) *
                                         std::sqrt(1 / static_cast<double>(pairs.size()) + off * off / line.squaresX);
}

std::string significant(double value, int digits)
{
    std::array<char, 40> out{};
    const auto end = std::to_chars(out.data(), out.data() + out.size(), value, std::chars_format::general, digits);
    return {out.data(), end.ptr};
}

std::string quoted(const Quantity& q, const std::string& symbol, int digits)
{
    const Unit* unit = findUnit(q.kind(), symbol);
    const Unit& in = unit == nullptr ? siUnit(q.kind()) : *unit;
    return '"' + significant(fromSi(q.si(), in), digits) + ' ' + std::string(in.symbol) + '"';
}

/// A slip of the decimal mark, or of the row: nobody has set the control to that.
std::optional<Finding> whyNotSet(const Quantity& setting, const PullInstruments& instruments)
{
    for (const auto& end : {instruments.least, instruments.most})
        if (end && end->kind() != setting.kind())
            return refuse("constant.settings_differ", "pulls", "The settings are not of the kind that is set here.",
                          "Enter them as the panel shows them, all in one kind of unit.");
    const bool above = instruments.most && setting.si() > instruments.most->si();
    if (!above && (!instruments.least || setting.si() >= instruments.least->si())) return std::nullopt;
    const Quantity& end = above ? *instruments.most : *instruments.least;
    return refuse("constant.beyond_control", "pulls",
                  {above ? "Nobody can have set %1: this control goes up to %2."
                         : "Nobody can have set %1: this control begins at %2.",
                   {setting.magnitude(), end.magnitude()}},
                  "Enter what its gauge or panel showed, or mend the range in the press profile first.");
}

std::optional<Finding> whyNot(Length diameter, std::span<const Pull> pulls, const PullInstruments& instruments)
{
    for (const Pull& pull : pulls)
        if (auto why = whyNotSet(pull.setting, instruments)) return why;
    if (pulls.size() < 2)
        return refuse("constant.too_few", "pulls", "A line needs two pulls or more, at settings well apart.",
                      "Pull at another setting and enter both.");
    const Kind kind = pulls.front().setting.kind();
    for (const Pull& pull : pulls) {
        if (pull.setting.kind() != kind)
            return refuse("constant.settings_differ", "pulls", "The settings are not all of one kind.",
                          "Enter them as the panel shows them, all in one kind of unit.");
        if (!(diameter.si() > 0) || !(pull.force.si() > 0) || !std::isfinite(pull.setting.si()))
            return refuse("constant.not_a_pull", "pulls", "A pull needs a force and a diameter above nought.",
                          "Leave out a setting at which nothing held, and measure the roll where the web leaves it.");
    }
    const auto [low, high] = std::minmax_element(
        pulls.begin(), pulls.end(), [](const Pull& a, const Pull& b) { return a.setting.si() < b.setting.si(); });
    if (low->setting.si() == high->setting.si())
        return refuse("constant.no_spread", "pulls", "All pulls were at one setting, which tells no line.",
                      "Pull at another setting, well apart from the first.");
    return std::nullopt;
}

}  // namespace

Result<Constant> constantOf(Length diameter, std::span<const Pull> pulls, const PullInstruments& instruments)
{
    if (auto why = whyNot(diameter, pulls, instruments)) return *std::move(why);
    const double radius = diameter.si() / 2;
    std::vector<physics::Pair> pairs;
    for (const Pull& pull : pulls) pairs.push_back({pull.setting.si(), pull.force.si() * radius});
    const double force = std::abs(instruments.force.si()) * radius;
    const double setting = instruments.setting ? std::abs(instruments.setting->si()) : 0;

    bool throughNought = false;
    Line line = lineOf(pairs, throughNought);
    if (!(line.slope > 0))
        return refuse("constant.no_torque", "pulls", "The torque does not rise with the setting.",
                      "Look whether settings and forces stand in the right rows, and whether the brake is worn, "
                      "oiled or stuck.");
    addDoubt(line, pairs, force, setting, throughNought);
    if (line.zero < 0) {
        if (line.zero + line.zeroDoubt < 0)
            return refuse("constant.pulls_unset", "pulls",
                          "By these pulls the roll would hold back with nothing set at all.",
                          "Look for a brake that drags or a gauge that does not stand at nought, and pull again.");
        throughNought = true;
        line = lineOf(pairs, throughNought);
        addDoubt(line, pairs, force, setting, throughNought);
    }
    const double share = line.slopeDoubt / line.slope;
    if (!(share <= 0.5))
        return refuse("constant.scatter", "pulls", "By these pulls the torque is known worse than by half.",
                      "Pull at settings further apart, or more often, and read the scale while the roll just turns.");
    const Quantity& shown = pulls.front().setting;
    const Kind torque = torqueKindOf(shown.kind());
    return Constant{Quantity(line.slope, torque, torqueUnit(torque, shown.unit().str())),
                    Quantity(line.zero, shown.kind(), shown.unit()), share,
                    Quantity(line.zeroDoubt, shown.kind(), shown.unit()), line.byScatter};
}

Result<std::string> withConstant(std::string_view pressToml, std::string_view zone, const Constant& constant,
                                 std::string_view source)
{
    const auto pieces = tomlPieces(pressToml, "press");
    if (!pieces) return pieces.error();
    const std::string id = tomlWritten(zone);
    TomlPath place;
    for (const TomlPiece& piece : *pieces)
        if (piece.path.size() == 3 && piece.path[0] == TomlStep("zone") && piece.path[2] == TomlStep("id") &&
            (piece.written == id || piece.written == '\'' + std::string(zone) + '\''))
            place = {piece.path[0], piece.path[1]};
    if (place.empty())
        return refuse("constant.no_zone", std::string(zone), {"This press has no zone %1.", {std::string(zone)}},
                      "Choose a zone of this press.");
    // No better than to a tenth of a percent: nobody knows a brake so well, and no reader believes it.
    const double percent = std::max(std::ceil(constant.torqueUncertainty * 1000) / 10, 0.1);
    std::vector<std::pair<const char*, std::string>> keys{
        {"torque_per_setting", quoted(constant.torquePerSetting, constant.torquePerSetting.unit().str(), 4)},
        {"zero_setting", quoted(constant.zeroSetting, constant.zeroSetting.unit().str(), 3)},
        {"torque_uncertainty", '"' + significant(percent, 4) + " %\""}};
    // Said of the constant before, it would be said of this one as well.
    const bool had = std::any_of(pieces->begin(), pieces->end(), [&](const TomlPiece& piece) {
        return piece.path.size() == 3 && piece.path[0] == place[0] && piece.path[1] == place[1] &&
               piece.path[2] == TomlStep("torque_source");
    });
    if (!source.empty() || had) keys.emplace_back("torque_source", tomlWritten(source));
    Result<std::string> text = std::string(pressToml);
    for (const auto& [key, written] : keys) {
        TomlPath path = place;
        path.emplace_back(key);
        text = setToml(*text, path, written);
        if (!text) return text;
    }
    return text;
}

}  // namespace taut::inputs
