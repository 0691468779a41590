// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/inputs/path_of.h"
#include "core/seal/chain.h"
#include "core/verdict/verdict.h"

namespace taut::report {

/// A mark that tells a row's state by shape and word; whoever draws it chooses the shape, never colour alone.
enum class Mark : std::uint8_t { None, Inside, Near, Outside, Open, Deviation, NotApplicable, Recorded };
/// What stands in a cell: words, a quantity (shown in the press's units), a limit (rounded inward), or nothing.
struct Limit {
    Quantity value;
    bool lower = true;
};
using CellValue = std::variant<std::monostate, Text, Quantity, Limit>;
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
struct Table {
    Text caption;
    std::vector<Column> columns;
    std::vector<std::vector<Cell>> rows;
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
/// Settings against a running variable: lines of one unit, with limits and where we are now.
struct Chart {
    Text caption, xName, yName;
    struct Line {
        Text name;
        std::vector<std::pair<Quantity, Quantity>> points;
    };
    std::vector<Line> lines;
    std::vector<Quantity> limits;
    std::optional<std::pair<Quantity, Quantity>> now;
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
using Section =
    std::variant<Heading, Paragraph, Caution, Facts, Table, Elevation, Chart, SignatureBlock, QrText, PageBreak>;

/// Everything that is shown of a run, as data: screen, printer and PDF render this same value.
struct Report {
    Text title, subtitle;
    std::string runId;
    UnitSystem units{};
    std::vector<Section> sections;
    std::optional<seal::Anchor> anchor;
};

/// The setup sheet of a run, live or sealed.
[[nodiscard]] Result<Report> reportOf(const seal::Document& document, const std::optional<seal::Anchor>& anchor);
/// The blank sheet: targets filled, readings empty, for when the PC is down.
[[nodiscard]] Report blankSheet(const run::Basis& basis);

}  // namespace taut::report
