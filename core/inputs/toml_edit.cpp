// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/inputs/toml_edit.h"

#include <algorithm>
#include <cctype>

#include "core/base/toml.h"
#include "core/inputs/toml_layout.h"

namespace taut::inputs {

namespace {

using Sort = TomlPiece::Sort;
using Room = TomlNode::Room;

std::string newLineOf(std::string_view text) { return text.find("\r\n") == std::string_view::npos ? "\n" : "\r\n"; }

std::string replaced(std::string_view text, ByteSpan span, std::string_view with)
{
    return std::string(text.substr(0, span.begin)) + std::string(with) + std::string(text.substr(span.end));
}

/// A line of its own may have to end the one before it first: the last of a file often has no line end.
std::string withLine(std::string_view text, std::size_t at, const std::string& line)
{
    const std::string end = newLineOf(text);
    const bool open = at > 0 && text[at - 1] != '\n' && text.substr(0, at) != "\xEF\xBB\xBF";
    return replaced(text, {at, at}, (open ? end : "") + line + end);
}

Finding noPlace(const TomlPath& path)
{
    return refuse("toml_edit.no_place", pathText(path),
                  {"There is no place for %1: what stands above it is no table and no list.", {pathText(path)}},
                  "Look at it in the text of the file.");
}

Finding notThere(const TomlPath& path)
{
    return refuse("toml_edit.not_there", pathText(path), {"%1 does not stand in this file.", {pathText(path)}},
                  "Choose something that does.");
}

const TomlNode* step(const TomlNode& node, const TomlStep& to)
{
    if (const auto* key = std::get_if<std::string>(&to)) return node.isTable() ? node.member(*key) : nullptr;
    const std::size_t at = std::get<std::size_t>(to);
    return node.isList() && at < node.items.size() ? &node.items[at] : nullptr;
}

const TomlNode* find(const TomlNode& root, const TomlPath& path)
{
    const TomlNode* node = &root;
    for (const TomlStep& to : path)
        if (node = step(*node, to); node == nullptr) return nullptr;
    return node;
}

/// The text is read again: an edit never leaves behind what no program can read.
Result<std::string> checked(std::string text)
{
    if (const auto read = readToml(text, ""); !read) return read.error();
    return text;
}

std::string braced(const TomlRow& row)
{
    std::string out;
    for (const auto& [key, written] : row) {
        if (!out.empty()) out += ", ";
        out += writtenKey(key).append(" = ").append(written);
    }
    return row.empty() ? "{}" : "{ " + out + " }";
}

std::string lined(const std::string& header, const TomlRow& row, const std::string& end)
{
    std::string out = header;
    for (const auto& [key, written] : row) out.append(end).append(writtenKey(key)).append(" = ").append(written);
    return out;
}

/// One more key in a table that is there.
Result<std::string> addKey(std::string_view text, const TomlNode& table, const std::string& key,
                           std::string_view written)
{
    const std::string said = table.prefix + writtenKey(key) + " = " + std::string(written);
    switch (table.room) {
    case Room::Line: return withLine(text, table.at, said);
    case Room::Comma: return replaced(text, {table.at, table.at}, ", " + said);
    case Room::Braces: return replaced(text, table.value, "{ " + said + " }");
    case Room::Header: break;
    }
    const std::string end = newLineOf(text);
    return withLine(text, table.at, '[' + table.header + ']' + end + said);
}

/// A table or list of tables at the end of the file.
std::string withSection(std::string_view text, const std::string& section)
{
    const std::string end = newLineOf(text);
    std::string out(text);
    if (!out.empty() && out.back() != '\n') out += end;
    return out + (out.empty() ? "" : end) + section + end;
}

void gather(const TomlNode& node, std::vector<ByteSpan>& spans)
{
    spans.insert(spans.end(), node.sections.begin(), node.sections.end());
    if (node.sort == Sort::Value || node.sort == Sort::List || node.sort == Sort::Inline) {
        spans.push_back(node.whole);
        return;
    }
    for (const auto& member : node.members) gather(member.node, spans);
    for (const TomlNode& item : node.items) gather(item, spans);
}

/// The bytes of a table with all that is its, joined where they touch, in the order of the file.
std::vector<ByteSpan> spansOf(const TomlNode& node)
{
    std::vector<ByteSpan> all, out;
    gather(node, all);
    std::sort(all.begin(), all.end(), [](ByteSpan a, ByteSpan b) { return a.begin < b.begin; });
    for (const ByteSpan span : all) {
        if (!out.empty() && span.begin <= out.back().end)
            out.back().end = std::max(out.back().end, span.end);
        else
            out.push_back(span);
    }
    return out;
}

std::string without(std::string_view text, const std::vector<ByteSpan>& spans)
{
    std::string out(text);
    for (auto span = spans.rbegin(); span != spans.rend(); ++span) out.erase(span->begin, span->end - span->begin);
    return out;
}

/// A key of an inline table goes with a comma: with the one behind it, and the last with the one before it.
ByteSpan withComma(std::string_view text, ByteSpan span)
{
    const std::size_t behind = text.find_first_not_of(" \t", span.end);
    if (behind != std::string_view::npos && text[behind] == ',')
        return {span.begin, std::min(text.find_first_not_of(" \t", behind + 1), text.size())};
    const std::size_t before = span.begin == 0 ? std::string_view::npos : text.find_last_not_of(" \t", span.begin - 1);
    if (before != std::string_view::npos && text[before] == ',') return {before, span.end};
    return span;
}

/// An item of a list goes with its comma, and with its line where it has one for itself.
ByteSpan itemAlone(std::string_view text, const TomlNode& list, std::size_t at)
{
    const TomlNode& item = list.items[at];
    ByteSpan span = item.whole;
    const std::size_t lineEnd = text.rfind('\n', span.begin == 0 ? 0 : span.begin - 1);
    const std::size_t start = lineEnd == std::string_view::npos ? 0 : lineEnd + 1;
    const bool alone = text.find_first_not_of(" \t", start) == span.begin && item.endsLine;
    if (alone) return {start, std::min(text.find('\n', item.tail.end), text.size() - 1) + 1};
    const bool last = at + 1 == list.items.size();
    if (last && at > 0 && text[span.end - 1] != ',') return {list.items[at - 1].value.end, span.end};
    while (span.end < text.size() && (text[span.end] == ' ' || text[span.end] == '\t')) ++span.end;
    return span;
}

bool hasLinesOfItsOwn(std::string_view text, const TomlNode& item)
{
    const std::size_t before =
        item.value.begin == 0 ? std::string_view::npos : text.find_last_not_of(" \t", item.value.begin - 1);
    return before != std::string_view::npos && text[before] == '\n';
}

std::string blanksBefore(std::string_view text, const TomlNode& item)
{
    const std::size_t start = text.rfind('\n', item.value.begin) + 1;
    return std::string(text.substr(start, item.value.begin - start));
}

std::string intoList(std::string_view text, const TomlNode& list, std::size_t at, const std::string& item)
{
    if (list.items.empty()) return replaced(text, list.value, '[' + item + ']');
    if (at < list.items.size()) {
        const TomlNode& next = list.items[at];
        const bool lines = hasLinesOfItsOwn(text, next);
        const std::string behind = lines ? newLineOf(text) + blanksBefore(text, next) : " ";
        return replaced(text, {next.value.begin, next.value.begin}, item + ',' + behind);
    }
    const TomlNode& last = list.items.back();
    const bool comma = text[last.whole.end - 1] == ',' && last.whole.end > last.value.end;
    if (!hasLinesOfItsOwn(text, last))
        return replaced(text, {last.whole.end, last.whole.end}, (comma ? " " : ", ") + item);
    const std::string line = newLineOf(text) + blanksBefore(text, last) + item + (comma ? "," : "");
    const std::string put = replaced(text, {last.tail.end, last.tail.end}, line);
    return comma ? put : replaced(put, {last.value.end, last.value.end}, ",");
}

Result<std::string> setAt(std::string_view text, const TomlPath& path, std::string_view written)
{
    const TomlNode root = layoutOf(text);
    const TomlNode* node = &root;
    std::size_t depth = 0;
    for (; depth < path.size(); ++depth) {
        const TomlNode* next = step(*node, path[depth]);
        if (next == nullptr) break;
        node = next;
    }
    if (depth == path.size()) {
        if (node->sort == Sort::Table || node->sort == Sort::Tables) return noPlace(path);
        return replaced(text, node->value, written);
    }
    const auto* key = std::get_if<std::string>(&path[depth]);
    if (key == nullptr || !node->isTable()) {
        const auto* at = std::get_if<std::size_t>(&path[depth]);
        if (at != nullptr && node->sort == Sort::List && depth + 1 == path.size() && *at == node->items.size())
            return intoList(text, *node, *at, std::string(written));
        return noPlace(path);
    }
    // What is missing between comes as tables in braces, or at the end of the file as a table with a header.
    std::string value(written);
    const std::size_t kept = depth == 0 && path.size() > 1 ? 2 : depth + 1;
    for (std::size_t i = path.size(); i-- > kept;) {
        const auto* inner = std::get_if<std::string>(&path[i]);
        if (inner == nullptr) return noPlace(path);
        value = braced({{*inner, value}});
    }
    if (kept == 2 && depth == 0) {
        const auto* inner = std::get_if<std::string>(&path[1]);
        if (inner == nullptr) return noPlace(path);
        return withSection(text, lined('[' + writtenKey(*key) + ']', {{*inner, value}}, newLineOf(text)));
    }
    return addKey(text, *node, *key, value);
}

void collect(const TomlNode& node, const TomlPath& path, std::string_view text, std::vector<TomlPiece>& out)
{
    const auto add = [&](const TomlNode& part, TomlStep step) {
        TomlPath here = path;
        here.push_back(std::move(step));
        out.push_back({here, part.sort, std::string(text.substr(part.value.begin, part.value.end - part.value.begin))});
        collect(part, here, text, out);
    };
    for (const auto& [key, member] : node.members) add(member, key);
    for (std::size_t i = 0; i < node.items.size(); ++i) add(node.items[i], i);
}

}  // namespace

std::string pathText(const TomlPath& path)
{
    std::string out;
    for (const TomlStep& to : path) {
        if (const auto* key = std::get_if<std::string>(&to))
            out += (out.empty() ? "" : ".") + *key;
        else
            out += '[' + std::to_string(std::get<std::size_t>(to)) + ']';
    }
    return out;
}

Result<std::vector<TomlPiece>> tomlPieces(std::string_view text, std::string_view file)
{
    if (const auto read = readToml(text, file); !read) return read.error();
    std::vector<TomlPiece> out;
    collect(layoutOf(text), {}, text, out);
    return out;
}

Result<std::string> setToml(std::string_view text, const TomlPath& path, std::string_view written)
{
    if (const auto read = readToml(text, ""); !read) return read.error();
    const auto alone = readToml("v = " + std::string(written) + "\n", "");
    if (written.empty() || !alone || alone->table()->size() != 1 || endOfTomlValue(written) != written.size())
        return refuse("toml_edit.not_a_value", pathText(path),
                      {"\"%1\" is not one value as a file writes it.", {std::string(written)}},
                      "Write a text between quotes, a number, true or false, or a list between brackets.");
    if (path.empty()) return noPlace(path);
    Result<std::string> out = setAt(text, path, written);
    return out ? checked(*std::move(out)) : out;
}

Result<std::string> makeTomlTable(std::string_view text, const TomlPath& path)
{
    if (path.size() != 1) return setToml(text, path, "{}");
    if (const auto read = readToml(text, ""); !read) return read.error();
    const auto* key = std::get_if<std::string>(&path.front());
    const TomlNode root = layoutOf(text);
    if (key == nullptr || root.member(*key) != nullptr) return noPlace(path);
    return checked(withSection(text, '[' + writtenKey(*key) + ']'));
}

Result<std::string> removeToml(std::string_view text, const TomlPath& path)
{
    if (const auto read = readToml(text, ""); !read) return read.error();
    const TomlNode root = layoutOf(text);
    const TomlNode* node = path.empty() ? nullptr : find(root, path);
    if (node == nullptr) return notThere(path);
    const TomlNode* above = find(root, {path.begin(), path.end() - 1});
    if (above->sort == Sort::List)
        return checked(without(text, {itemAlone(text, *above, std::get<std::size_t>(path.back()))}));
    if (above->sort == Sort::Tables || node->sort == Sort::Table || node->sort == Sort::Tables) {
        std::vector<ByteSpan> spans = spansOf(*node);
        if (node->room == Room::Comma)
            for (auto span = spans.rbegin(); span != spans.rend(); ++span) *span = withComma(text, *span);
        return checked(without(text, spans));
    }
    const bool inLine = above->sort == Sort::Inline || above->room == Room::Comma;
    return checked(without(text, {inLine ? withComma(text, node->whole) : node->whole}));
}

Result<std::string> insertToml(std::string_view text, const TomlPath& list, std::size_t at, const TomlRow& row)
{
    if (const auto read = readToml(text, ""); !read) return read.error();
    const TomlNode root = layoutOf(text);
    const TomlNode* node = find(root, list);
    const std::string end = newLineOf(text);
    if (node == nullptr) {
        const auto* key = list.empty() ? nullptr : std::get_if<std::string>(&list.back());
        if (key == nullptr || at != 0) return noPlace(list);
        if (list.size() == 1) return checked(withSection(text, lined("[[" + writtenKey(*key) + "]]", row, end)));
        Result<std::string> out = setAt(text, list, '[' + end + "  " + braced(row) + ',' + end + ']');
        return out ? checked(*std::move(out)) : out;
    }
    if (!node->isList() || at > node->items.size()) return noPlace(list);
    if (node->sort == Sort::List) return checked(intoList(text, *node, at, braced(row)));
    const std::string section = lined("[[" + node->items.front().header + "]]", row, end);
    if (at < node->items.size()) return checked(withLine(text, node->items[at].sections.front().begin, section));
    const std::size_t behind = spansOf(node->items.back()).back().end;
    const bool blank = behind > 2 * end.size() && text.substr(behind - 2 * end.size(), 2 * end.size()) == end + end;
    return checked(withLine(text, behind, section + (blank ? end : "")));
}

Result<std::string> swapToml(std::string_view text, const TomlPath& list, std::size_t first)
{
    if (const auto read = readToml(text, ""); !read) return read.error();
    const TomlNode root = layoutOf(text);
    const TomlNode* node = find(root, list);
    if (node == nullptr || !node->isList() || first + 1 >= node->items.size()) return notThere(list);
    const TomlNode &a = node->items[first], &b = node->items[first + 1];
    const auto written = [&](ByteSpan span) { return std::string(text.substr(span.begin, span.end - span.begin)); };
    if (node->sort == Sort::List) {
        const bool tails = a.endsLine && b.endsLine;
        std::string out(text);
        if (tails) out = replaced(out, b.tail, written(a.tail));
        out = replaced(out, b.value, written(a.value));
        if (tails) out = replaced(out, a.tail, written(b.tail));
        return checked(replaced(out, a.value, written(b.value)));
    }
    const std::vector<ByteSpan> one = spansOf(a), two = spansOf(b);
    if (one.size() != 1 || two.size() != 1 || one[0].end != two[0].begin)
        return refuse("toml_edit.scattered", pathText(list), "Between these two stand other tables.",
                      "Let them change places in the text of the file.");
    std::string upper = written(two[0]), lower = written(one[0]);
    if (upper.back() != '\n') {
        upper += newLineOf(text);
        lower.erase(lower.find_last_not_of("\r\n") + 1);
    }
    return checked(replaced(text, {one[0].begin, two[0].end}, upper + lower));
}

std::string tomlWritten(std::string_view typed)
{
    const std::size_t from = typed.find_first_not_of(" \t"), to = typed.find_last_not_of(" \t");
    if (from == std::string_view::npos) return "\"\"";
    const std::string_view word = typed.substr(from, to - from + 1);
    const auto read = readToml("v = " + std::string(word), "");
    const bool one = read && read->table()->size() == 1 && endOfTomlValue(word) == word.size();
    return one ? std::string(word) : tomlQuoted(word);
}

}  // namespace taut::inputs
