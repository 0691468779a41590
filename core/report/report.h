// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "core/inputs/path_of.h"
#include "core/seal/after.h"
#include "core/seal/chain.h"
#include "core/verdict/verdict.h"

namespace taut::report {

/// A mark that tells a row's state by shape and word; whoever draws it chooses the shape, never colour alone.
enum class Mark : std::uint8_t { None, Inside, Near, Outside, Open, Deviation, NotApplicable, Recorded };
/// A limit: rounded inward when it is shown.
struct Limit {
    Quantity value;
    bool lower = true;
    friend bool operator==(const Limit&, const Limit&) = default;
};
/// From low to high, each rounded inward; an end left out is open.
struct Limits {
    std::optional<Quantity> low, high;
    friend bool operator==(const Limits&, const Limits&) = default;
};
/// Room to write by hand.
struct Ruled {
    friend bool operator==(const Ruled&, const Ruled&) = default;
};
/// What stands in a cell: nothing, words, a quantity (shown in the press's units), a limit or both, or a rule to write
/// on.
using CellValue = std::variant<std::monostate, Text, Quantity, Limit, Limits, Ruled>;
struct Cell {
    CellValue value;
    Mark mark = Mark::None;
    bool strong = false;
};
enum class Align : std::uint8_t { Left, Right };
struct Column {
    Text head;
    Align align = Align::Left;
    int weight = 1;  ///< share of the width
};
struct Paragraph {
    Text text;
    bool strong = false;
};
struct Caution {
    procedure::SignalWord word{};
    Text text;
};
/// Large: what is read from where one stands; Small: what is looked up.
enum class Size : std::uint8_t { Normal, Large, Small };
struct Table {
    Text caption;
    std::vector<Column> columns;
    std::vector<std::vector<Cell>> rows;  ///< a row of one cell is a heading across the table
    Size size = Size::Normal;
};
/// Pairs of name and value in two or three columns: the head of the sheet.
struct Facts {
    std::vector<std::pair<Text, Cell>> pairs;
};
/// The press drawn from its profile: paths, what stands on them, and where one stands now ("" = nowhere).
struct Elevation {
    std::vector<inputs::NamedPath> paths;
    std::vector<std::pair<std::string, std::string>> kinds;
    std::string lit;
};
/// One thing against a running variable, as data: no pixel, no font, no colour. Whoever draws it tells lines apart by
/// dash and name, spots by shape and name.
struct Chart {
    Text caption, xName, yName;
    struct Line {
        Text name;  ///< empty when the caption says it
        std::vector<std::pair<Quantity, Quantity>> points;
    };
    std::vector<Line> lines;
    /// A limit across the whole chart.
    struct Level {
        Quantity at;
        Text name;
    };
    std::vector<Level> levels;
    /// What is allowed, from low to high.
    struct Band {
        Quantity low, high;
        Text name;
    };
    std::optional<Band> band;
    /// Now: where one stands. Change: here it must be set again. Leaves: here it leaves what can be set.
    enum class What : std::uint8_t { Now, Change, Leaves };
    struct Spot {
        What what{};
        Quantity x, y;
        Text name;
    };
    std::vector<Spot> spots;
    std::vector<Text> summary;  ///< the chart in sentences, for whoever does not see it
};
/// Values in the order in which they came, not in their time, phase by phase: each with its centre, its control limits
/// three sigma off and its zones.
struct ControlFigure {
    Text caption, yName;
    struct Dot {
        Quantity y;
        bool signal = false;   ///< it belongs to a pattern that chance seldom makes
        bool outside = false;  ///< outside its window when it was first entered
        std::string day;       ///< written below some of them
    };
    std::vector<Dot> dots;
    struct Phase {
        std::size_t begin{}, end{};  ///< of the dots
        std::optional<Quantity> centre, sigma, low, high;
        bool provisional = false;
        Text name;
    };
    std::vector<Phase> phases;
    std::optional<std::size_t> since;  ///< the dot from which on the values moved away
    std::vector<Text> summary;         ///< in sentences, for whoever does not see it
};
/// One bar a row, all on one scale that begins at nought: how much, or from a lower to an upper quartile with the
/// median between.
struct Bars {
    Text caption;
    struct Row {
        Text name;
        double from{}, to{};
        std::optional<double> mark;
        Text said;  ///< what stands beside the bar: "12 of 40, 30 %"
        bool strong = false;
    };
    std::vector<Row> rows;
};
/// Places for names, meaning, time; filled when signed, ruled when blank.
struct SignatureBlock {
    struct Entry {
        Text meaning;
        std::string name;
        std::string at;
    };
    std::vector<Entry> entries;
    Text notice;
};
struct QrText {
    std::string content;
    Text caption;
};
struct PageBreak {};
struct Heading {
    Text text;
};
/// Sections up to the next mark stand beside each other where there is room; a narrow screen shows them one below the
/// other. `share` is the width of what follows, in hundredths; End goes back to the full width.
struct Beside {
    enum class What : std::uint8_t { Begin, Next, End };
    What what = What::Begin;
    int share = 50;
};
using Section = std::variant<Heading, Paragraph, Caution, Facts, Table, Elevation, Chart, ControlFigure, Bars,
                             SignatureBlock, QrText, PageBreak, Beside>;

/// Everything that is shown of a run, as data: screen, printer and PDF render this same value.
struct Report {
    Text title, subtitle;
    Text draft;         ///< what every page says when this is no record yet; empty on a sealed run's and a blank sheet
    Text banner;        ///< what every page says largest of all: that the run was abandoned, that the press is out of
                        ///< use; empty when nothing of the kind happened
    Text practice;      ///< what every page says before anything else when it was at the practice press; else empty
    std::string runId;  ///< "" on a blank sheet, and on what is told of several runs
    Text foot;          ///< at the foot of what is told of several runs; empty on the sheet of one
    UnitSystem units{};
    std::vector<Section> sections;
    std::optional<seal::Anchor> anchor;
};

/// Of a press, job, substrate or procedure that is not to be had, what would be told from it is left out.
using seal::TextBySha;
/// The setup sheet of a run, live or sealed: one page for the set-up, then readings, steps and history. Codes:
/// report.not_a_run, document.broken, document.words. records/texts.h makes `texts` from any store. `sealings`: the
/// run's own seal and those that follow it, oldest first; reviewed, corrected or void, the sheet says so.
[[nodiscard]] Result<Report> reportOf(const seal::Document& document, const std::optional<seal::Anchor>& anchor,
                                      const TextBySha& texts, std::span<const seal::Sealing> sealings = {});
/// What is set by hand, and web tension with its taper, each against the diameter of its roll, in web order. Made from
/// the target set as it stands; without the press only what its schedules hold.
[[nodiscard]] std::vector<Chart> chartsOf(const inputs::Inputs& inputs, const targets::Targets& targets);
/// The blank sheet: targets filled, readings empty, for when the PC is down.
[[nodiscard]] Report blankSheet(const run::Basis& basis);

}  // namespace taut::report
