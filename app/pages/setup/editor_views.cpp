// SPDX-License-Identifier: GPL-3.0-or-later
// What the editor shows of a text: its tables, what its reader finds, the press as drawn, the steps.
#include <algorithm>

#include <QTextBlock>

#include "app/pages/setup/cell_names.h"
#include "app/pages/setup/changed_targets.h"
#include "app/pages/setup/definition_editor.h"
#include "app/pages/setup/key_table.h"
#include "app/seams/resources.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/drawn.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"
#include "core/inputs/key_meaning.h"
#include "core/inputs/path_pieces.h"
#include "core/procedure/procedure.h"

namespace taut::app {

namespace {

MarkShape markOf(Severity severity)
{
    if (severity == Severity::Stop) return MarkShape::Octagon;
    return severity == Severity::Warn ? MarkShape::HalfDiamond : MarkShape::Dot;
}

/// The press as far as it can be drawn, every path threaded, with the roller that is to blame.
ElevationView draftOf(const inputs::Press& press, Findings& wrong)
{
    std::optional<Length> diameter;
    if (press.unwind && press.unwind->largestDiameter) diameter = press.unwind->largestDiameter->measure();
    const inputs::Feed feed = press.printFeed.value_or(inputs::Feed::Over);
    inputs::PathPieces pieces = inputs::pathPieces(press, diameter, feed);
    ElevationView view = elevationOf(press, diameter, feed);
    view.paths = std::move(pieces.paths);
    view.threaded = {{"", ""}};
    view.sidePathsThreaded = true;
    for (const std::string& roller : pieces.at)
        if (view.lit.empty()) view.lit = roller;
    wrong = std::move(pieces.wrong);
    return view;
}

}  // namespace

inputs::Form DefinitionEditor::formOf(const std::string& text) const
{
    return inputs::formOf(m_opened.what, text, around());
}

void DefinitionEditor::read()
{
    m_form = m_opened.what == "procedure" ? inputs::Form() : formOf(m_text);
    if (m_opened.what == "procedure") {
        const auto procedure = procedure::readProcedure(m_text, "", m_form.findings);
        if (!procedure) m_form.findings = {procedure.error()};
        for (Finding& finding : inputs::findingsAround(m_opened.what, m_text, "", around()))
            m_form.findings.push_back(std::move(finding));
        m_outline->clear();
        if (procedure)
            for (const procedure::StageSpec& stage : procedure->stages) {
                m_outline->add({{}, dataText(stage.title), {}, {}, MarkShape::None});
                for (const procedure::PlaceSpec& place : stage.places)
                    for (const procedure::StepSpec& step : place.steps)
                        m_outline->add({QString::number(step.line), dataText(step.say),
                                        dataText(step.target.empty() ? step.id : step.target), dataText(place.title),
                                        MarkShape::None});
            }
    } else if (!m_form.readable && !asText()) {
        const QSignalBlocker quiet(m_textView);
        m_textView->setChecked(true);  // what cannot be read can be mended in the text alone
    }
    m_left->setCurrentIndex(asText() ? 1 : 0);
    if (m_plain->toPlainText().toStdString() != m_text) {
        const QSignalBlocker quiet(m_plain);
        const QTextCursor before = m_plain->textCursor();
        const int line = before.blockNumber();
        m_plain->setPlainText(QString::fromStdString(m_text));
        m_plain->setTextCursor(QTextCursor(m_plain->document()->findBlockByNumber(line)));
    }
    showGroups();
    preview(m_text);
    if (m_compare->isChecked()) m_targets->show(m_opened.what, m_opened.against, m_text);
    settle();
}

void DefinitionEditor::preview(const std::string& text)
{
    inputs::Form typed;
    if (text != m_text) typed = formOf(text);
    const inputs::Form& form = text == m_text ? m_form : typed;
    showFindings(form);
    if (m_opened.what == "press") showDrawing(text, form);
}

void DefinitionEditor::showGroups()
{
    const QString before = m_groups->chosen();
    {
        const QSignalBlocker quiet(m_groups);
        m_groups->clear();
        for (const inputs::FormGroup& one : m_form.groups) {
            std::size_t wrong = 0;
            for (const auto& item : one.items)
                for (const inputs::FormCell& cell : item) wrong += cell.findings.size();
            // A table that only holds others has nothing to say itself.
            if (!one.list && one.keys.empty() && !one.items.empty()) continue;
            const QString rows = one.list            ? tr("rows: %1").arg(one.items.size())
                                 : one.items.empty() ? tr("not said")
                                                     : QString();
            m_groups->add({QString::fromStdString(one.name),
                           dataText(one.name),
                           {},
                           rows,
                           wrong == 0 ? MarkShape::None : MarkShape::Octagon});
        }
        // No name is cut: the list is as wide as the longest, its mark and the bar beside it.
        int widest = 0;
        for (const inputs::FormGroup& one : m_form.groups)
            widest = std::max(widest, m_groups->fontMetrics().horizontalAdvance(dataText(one.name)));
        m_groups->setMinimumWidth(widest + 4 * m_groups->fontMetrics().height());
        if (!m_groups->choose(before)) m_groups->choose(m_groups->first());
    }
    showGroup();
}

void DefinitionEditor::showGroup()
{
    if (const inputs::FormGroup* g = group())
        m_table->show(
            m_form, *g, [this](const Finding& finding) { return said(finding); }, mayWrite());
    else
        m_table->showNothing();
    settle();
    markRow();
}

void DefinitionEditor::showFindings(const inputs::Form& form)
{
    const QSignalBlocker quiet(m_found);
    m_found->clear();
    if (form.findings.empty()) m_found->add({{}, tr("Nothing is wrong with it."), {}, {}, MarkShape::None});
    for (std::size_t i = 0; i < form.findings.size(); ++i) {
        const Finding& finding = form.findings[i];
        const inputs::FoundAt at = inputs::foundAt(finding);
        const bool byLine = at.line > 0 && (asText() || at.path.empty());
        m_found->add({QString::number(i), words(finding.text, UnitSystem::Metric),
                      byLine ? tr("line %1").arg(at.line) : placeName(form, at.path),
                      words(finding.remedy, UnitSystem::Metric), markOf(finding.severity)});
    }
    QList<QTextEdit::ExtraSelection> lines;
    for (const Finding& finding : form.findings) {
        const int line = inputs::foundAt(finding).line;
        if (line < 1) continue;
        QTextEdit::ExtraSelection shown;
        shown.cursor = QTextCursor(m_plain->document()->findBlockByNumber(line - 1));
        shown.format.setProperty(QTextFormat::FullWidthSelection, true);
        shown.format.setBackground(currentLook().palette.wash);
        lines << shown;
    }
    m_plain->setExtraSelections(lines);
}

void DefinitionEditor::showDrawing(const std::string& text, const inputs::Form& form)
{
    Findings notes, wrong;
    const auto press = inputs::readPress(text, "", notes);
    if (!press) return;
    ElevationView view = draftOf(*press, wrong);
    m_blamed = view.lit;
    m_drawing->setView(std::move(view));
    markRow();
    // What merely is not known yet stands here; what cannot be is among the findings.
    QStringList sentences;
    for (const Finding& finding : wrong)
        if (std::none_of(form.findings.begin(), form.findings.end(),
                         [&](const Finding& one) { return one.text == finding.text; }))
            sentences << said(finding);
    m_pathWrong->setText(sentences.join(QLatin1Char('\n')));
    m_pathWrong->setVisible(!sentences.isEmpty());
}

/// The roller that is to blame has the bracket, else the one whose row is chosen.
void DefinitionEditor::markRow()
{
    if (m_opened.what != "press") return;
    ElevationView view = m_drawing->view();
    view.lit = m_blamed;
    const inputs::FormGroup* g = group();
    if (view.lit.empty() && g != nullptr && g->name == "web.roller" && m_table->focused() < g->items.size()) {
        const auto id = std::find(g->keys.begin(), g->keys.end(), "id") - g->keys.begin();
        const auto& row = g->items[m_table->focused()];
        if (static_cast<std::size_t>(id) < row.size()) view.lit = row[static_cast<std::size_t>(id)].said;
    }
    view.nobodyThere = view.lit.empty();
    m_drawing->setView(std::move(view));
}

void DefinitionEditor::goTo(int finding)
{
    if (finding < 0 || static_cast<std::size_t>(finding) >= m_form.findings.size()) return;
    const auto index = static_cast<std::size_t>(finding);
    if (asText()) {
        const int line = inputs::foundAt(m_form.findings[index]).line;
        m_plain->setTextCursor(QTextCursor(m_plain->document()->findBlockByNumber(line - 1)));
        m_plain->centerCursor();
        m_plain->setFocus();
        return;
    }
    for (const inputs::FormGroup& one : m_form.groups)
        for (std::size_t i = 0; i < one.items.size(); ++i)
            for (std::size_t k = 0; k < one.items[i].size(); ++k) {
                const auto& about = one.items[i][k].findings;
                if (std::find(about.begin(), about.end(), index) == about.end()) continue;
                m_groups->choose(QString::fromStdString(one.name));
                m_table->goTo(i, one.keys[k]);
                return;
            }
}

void DefinitionEditor::settle()
{
    const auto found = definitionsIn(m_opened.what, m_text, "");
    const std::string id = found.empty() ? std::string() : found.front().id;
    int edition = 0;
    bool same = false;
    const bool taken = std::any_of(m_form.findings.begin(), m_form.findings.end(),
                                   [](const Finding& one) { return one.code == "input.id_taken"; });
    for (const logbook::Definition& one : m_session->definitions(m_opened.what.c_str()))
        if (one.source.id == id && !taken) {
            edition = one.source.edition;
            same = one.source.text == m_text;
        }
    const bool earlier = m_opened.edition > 0 && m_text == m_opened.text;
    m_title->say(earlier ? tr("%1, edition %2 of %3").arg(dataText(id)).arg(m_opened.edition).arg(edition)
                 : same  ? tr("%1, edition %2").arg(dataText(id)).arg(edition)
                         : tr("%1, not sealed").arg(id.empty() ? tr("no name yet") : dataText(id)));
    m_save->setText(edition == 0 ? tr("&Seal as a new one") : tr("&Seal as edition %1").arg(edition + 1));
    m_save->setAccessibleName(m_save->text().remove(QLatin1Char('&')));
    const bool stopped = stops(m_form.findings);
    m_save->setEnabled(mayWrite() && !m_session->busy() && !same && !id.empty() && !stopped);
    m_save->setToolTip(!mayWrite() ? tr("A supervisor seals editions.")
                       : stopped   ? tr("First mend what the reader finds.")
                                   : QString());
    m_undoButton->setEnabled(!m_undo.empty() && mayWrite());
    m_plain->setReadOnly(!mayWrite());
    const inputs::FormGroup* g = group();
    const std::string key = g == nullptr ? std::string() : m_table->focusedKey();
    const QString meaning =
        g == nullptr || key.empty() ? QString() : words(inputs::keyMeaning(g->name, key), UnitSystem::Metric);
    m_meaning->setText(meaning.isEmpty() ? dataText(key) : dataText(key) + QStringLiteral(": ") + meaning);
    const bool list = g != nullptr && g->list;
    const std::size_t items = g == nullptr ? 0 : g->items.size(), at = m_table->focused();
    m_add->setText(list ? tr("Add a row") : tr("Add this table"));
    m_add->setAccessibleName(m_add->text());
    m_add->setEnabled(mayWrite() && g != nullptr && (list || items == 0));
    m_remove->setText(list ? tr("Take the row out") : tr("Take the table out"));
    m_remove->setAccessibleName(m_remove->text());
    m_remove->setEnabled(mayWrite() && g != nullptr && at < items && g->name != m_opened.what);
    m_up->setEnabled(mayWrite() && list && at > 0 && at < items);
    m_down->setEnabled(mayWrite() && list && at + 1 < items);
}

}  // namespace taut::app
