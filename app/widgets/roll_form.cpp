// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/roll_form.h"

#include <utility>

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStandardItemModel>
#include <QTimer>
#include <QVBoxLayout>

#include "app/text/tag_words.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/finding_strip.h"
#include "app/widgets/room.h"
#include "app/widgets/tag_panel.h"
#include "app/widgets/theme.h"
#include "core/inputs/inputs.h"
#include "core/units/format.h"
#include "core/units/parse.h"
#include "core/units/unit.h"

namespace taut::app {

namespace {

/// What stands in the list beside the rolls, whose data are their places in the list of rolls.
constexpr int kTyped = -1, kHeading = -2;

/// Reads one field into the roll when something stands in it; the first that cannot be read is the refusal.
template <Kind K>
void readInto(const QLineEdit* field, inputs::Maybe<K>& into, std::optional<Finding>& refusal)
{
    const QString text = field->text().trimmed();
    if (text.isEmpty()) return;
    auto parsed = parseQuantity(text.toStdString(), K);
    if (parsed) {
        into = Entry<K>(Quantity(parsed->si(), parsed->kind(), parsed->unit(), text.toStdString()));
    } else if (!refusal) {
        refusal = parsed.error();
        refusal->subject = field->accessibleName().toStdString();
    }
}

/// As its file says; what cannot be read is a roll of which nothing is known.
inputs::Roll rollOf(const RollAtHand& roll)
{
    Findings notes;
    auto read = inputs::readRoll(roll.toml, "roll", notes);
    return read ? *std::move(read) : inputs::Roll();
}

/// A length as somebody would type it, without the noise of its conversion.
QString asTyped(const inputs::Maybe<Kind::Length>& length)
{
    if (!length) return {};
    const std::string unit(mannerOf(length->quantity().unit()).symbol);
    return QStringLiteral("%1 %2").arg(QString::number(length->si() / findUnit(Kind::Length, unit)->toSi, 'g', 12),
                                       QString::fromStdString(unit));
}

}  // namespace

RollForm::RollForm(QWidget* parent) : QWidget(parent)
{
    m_title = wrapped({}, "head", this);
    m_text = wrapped({}, "", this);
    auto* body = new QWidget;
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(0, 0, 0, 0);
    m_atHand = new PickList(body);
    m_atHand->setObjectName(QStringLiteral("atHand"));
    named(m_atHand, tr("A roll at hand"));
    m_tag = new TagPanel(TagPanel::Manner::Takes, body);
    column->addWidget(m_tag);
    auto* handLabel = new QLabel(tr("A roll at &hand"), body);
    handLabel->setBuddy(m_atHand);
    column->addWidget(handLabel);
    column->addWidget(m_atHand);
    m_effect = wrapped({}, "strong", body);
    m_effect->setObjectName(QStringLiteral("effect"));
    column->addWidget(m_effect);
    m_typed = new QWidget(body);
    auto* grid = new QGridLayout(m_typed);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(sizes().gap);
    grid->setVerticalSpacing(2);
    m_id = addLine(grid, 0, tr("Number on its label"), {});
    m_substrate = addLine(grid, 1, tr("Material"), {});
    m_width = addLine(grid, 2, tr("Width"), tr("with its unit"));
    m_diameter = addLine(grid, 3, tr("Outer diameter"), tr("straight across"));
    m_core = addLine(grid, 4, tr("Core, inner diameter"), tr("with its unit"));
    m_wall = addLine(grid, 5, tr("Wall of the core"), tr("if measured"));
    m_length = addLine(grid, 6, tr("Length"), tr("if known"));
    m_mass = addLine(grid, 7, tr("Mass"), tr("if weighed"));
    m_splices = addLine(grid, 8, tr("Splices inside"), tr("a number, if known"));
    m_winding = new PickList(m_typed);
    m_winding->addItem(tr("face outside"), static_cast<int>(inputs::Winding::FaceOut));
    m_winding->addItem(tr("face inside"), static_cast<int>(inputs::Winding::FaceIn));
    m_winding->setCurrentIndex(-1);
    m_winding->setPlaceholderText(tr("Not known"));
    named(m_winding, tr("Winding"));
    auto* windingLabel = new QLabel(tr("Winding"), m_typed);
    grid->addWidget(windingLabel, 8, 1);
    grid->addWidget(m_winding, 9, 1);
    m_tagLine = addLine(grid, 10, tr("Its tag, if you type it"), tr("or scan it"));
    column->addWidget(m_typed);
    column->addStretch(1);
    auto* scroll = new ScrollRoom(body, this);
    scroll->setObjectName(QStringLiteral("rollScroll"));
    m_finding = new FindingStrip(this);
    m_foot = new QWidget(this);
    auto* row = new QHBoxLayout(m_foot);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(sizes().gap);
    auto* back = worded(tr("&Back"), "answer", m_foot);
    back->setObjectName(QStringLiteral("cancel"));
    m_accept = worded(tr("Use th&is roll"), "main", m_foot);
    m_accept->setObjectName(QStringLiteral("accept"));
    row->addWidget(back);
    // A tag that waits to be compared is answered first, and where one answers.
    row->addWidget(m_tag->acts(), 1);
    row->addWidget(m_accept, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_title);
    layout->addWidget(m_text);
    layout->addWidget(scroll, 1);
    layout->addWidget(m_finding);
    layout->addWidget(m_foot);
    connect(m_atHand, &QComboBox::currentIndexChanged, this, &RollForm::settle);
    connect(m_accept, &QPushButton::clicked, this, &RollForm::give);
    connect(back, &QPushButton::clicked, this, &RollForm::cancelled);
    connect(m_winding, &QComboBox::currentIndexChanged, this, &RollForm::follow);
    connect(m_tagLine, &QLineEdit::editingFinished, this, [this] {
        // Whoever merely comes by takes no tag away.
        if (m_tagLine->isModified()) m_tag->type(QString::fromStdString(tagFromText(m_tagLine->text())));
        m_tagLine->setModified(false);
    });
    connect(m_tag, &TagPanel::read, this, [this, scroll](const QString& tag) {
        m_tagLine->setText(tagToText(tag));
        m_finding->clear();
        follow();
        QTimer::singleShot(0, scroll, [scroll] { scroll->ensureVisible(0, 0); });
    });
    connect(m_tag, &TagPanel::stood, this, [this] {
        if (m_tag->waits() && m_accept->hasFocus()) m_tag->setFocus();
        m_accept->setVisible(!m_tag->waits());
    });
    connect(m_tag, &TagPanel::takeWanted, this, &RollForm::takeOver);
    connect(m_tag, &TagPanel::dropped, this, &RollForm::takeBack);
    connect(m_tag, &TagPanel::named, this, &RollForm::choose);
    connect(m_finding, &FindingStrip::understood, m_atHand, qOverload<>(&QWidget::setFocus));
}

QLineEdit* RollForm::addLine(QGridLayout* grid, int cell, const QString& label, const QString& hint)
{
    auto* line = new QLineEdit(m_typed);
    line->setPlaceholderText(hint);
    named(line, label);
    connect(line, &QLineEdit::textEdited, this, [this] {
        if (m_finding->isVisibleTo(this) && toml()) m_finding->clear();
        follow();
    });
    auto* text = new QLabel(label, m_typed);
    text->setBuddy(line);
    grid->addWidget(text, cell / 2 * 2, cell % 2);
    grid->addWidget(line, cell / 2 * 2 + 1, cell % 2);
    return line;
}

void RollForm::ask(const QString& title, const QString& text, std::vector<RollAtHand> rolls, UnitSystem system)
{
    m_system = system;
    m_title->setText(title);
    m_text->setText(text);
    m_text->setVisible(!text.isEmpty());
    m_finding->clear();
    m_rolls = std::move(rolls);
    m_atHand->clear();
    m_atHand->addItem(tr("None of these: I type what its label says"), kTyped);
    addRolls(false);
    const int heading = m_atHand->count();
    addRolls(true);
    if (m_atHand->count() > heading) {
        m_atHand->insertItem(heading, tr("Of another material, which this job does not take:"), kHeading);
        auto* model = qobject_cast<QStandardItemModel*>(m_atHand->model());
        if (model != nullptr) model->item(heading)->setEnabled(false);
    }
    m_atHand->setCurrentIndex(m_rolls.empty() ? 0 : -1);
    m_atHand->setPlaceholderText(tr("Choose"));
    for (QLineEdit* line :
         {m_id, m_substrate, m_width, m_diameter, m_core, m_wall, m_length, m_mass, m_splices, m_tagLine})
        line->clear();
    m_winding->setCurrentIndex(-1);
    m_filled.clear();
    m_around = {};
    m_tag->begin(system, {});
    QStringList numbers;
    for (const RollAtHand& roll : m_rolls) numbers << QString::fromStdString(rollOf(roll).id);
    numbers.removeAll(QString());
    m_tag->setNumbers(numbers);
    settle();
}

void RollForm::compareWith(inputs::Inputs around, const inputs::TagDate& today)
{
    m_around = std::move(around);
    m_tag->begin(m_system, today);
    follow();
}

void RollForm::scan(const QString& tag) { m_tag->scan(tag); }

/// The tag is compared with the roll as it is entered now.
void RollForm::follow()
{
    std::optional<Finding> refusal;
    m_around.roll = std::make_shared<const inputs::Roll>(picked() ? rollOf(*picked()) : entered(refusal));
    m_tag->compareWith(m_around);
}

/// The roll that a number names, when it lies there; it is chosen and not used yet.
void RollForm::choose(const QString& number)
{
    for (std::size_t i = 0; i < m_rolls.size(); ++i)
        if (number.compare(QString::fromStdString(rollOf(m_rolls[i]).id), Qt::CaseInsensitive) == 0) {
            m_atHand->setCurrentIndex(m_atHand->findData(static_cast<int>(i)));
            m_atHand->setFocus();
        }
}

void RollForm::takeOver()
{
    const inputs::RollTag* tag = m_tag->tag();
    if (tag == nullptr) return;
    if (!picked()) {
        choose(QString::fromStdString(tag->serial));
        if (!picked()) m_atHand->setCurrentIndex(m_atHand->findData(kTyped));
    }
    for (const Finding& finding : m_tag->findings())
        if (finding.code == "input.tag_of_another_roll") return refuse(finding);
    if (!picked()) {
        std::optional<Finding> refusal;
        const inputs::Roll roll = inputs::takenOver(entered(refusal), *tag, m_tag->text());
        const auto fill = [this](QLineEdit* line, const QString& text) {
            if (!line->text().trimmed().isEmpty() || text.isEmpty()) return;
            line->setText(text);
            m_filled.emplace_back(line, text);
        };
        fill(m_id, QString::fromStdString(roll.id));
        fill(m_width, asTyped(roll.width));
        fill(m_core, asTyped(roll.core));
        fill(m_length, asTyped(roll.length));
        if (roll.splices) fill(m_splices, QString::number(*roll.splices));
        if (m_winding->currentIndex() < 0 && roll.winding != inputs::Winding::Unknown) {
            m_winding->setCurrentIndex(m_winding->findData(static_cast<int>(roll.winding)));
            m_filledWinding = m_winding->currentIndex();
        }
    }
    m_tag->setTaken();
    follow();
    m_accept->setFocus();
}

/// What a tag has filled that counts no more; what somebody has changed since is theirs.
void RollForm::takeBack()
{
    for (const auto& [line, text] : std::exchange(m_filled, {}))
        if (line->text() == text) line->clear();
    if (m_filledWinding >= 0 && m_winding->currentIndex() == m_filledWinding) m_winding->setCurrentIndex(-1);
    m_filledWinding = -1;
    follow();
}

/// What can be used comes first.
void RollForm::addRolls(bool otherMaterial)
{
    for (std::size_t i = 0; i < m_rolls.size(); ++i)
        if (m_rolls[i].otherMaterial == otherMaterial) m_atHand->addItem(m_rolls[i].name, static_cast<int>(i));
}

void RollForm::sayEffect(const QString& sentence)
{
    m_effect->setText(sentence);
    m_effect->setVisible(!sentence.isEmpty());
}

const RollAtHand* RollForm::picked() const
{
    const int index = m_atHand->currentIndex() < 0 ? kHeading : m_atHand->currentData().toInt();
    return index < 0 ? nullptr : &m_rolls[static_cast<std::size_t>(index)];
}

void RollForm::refuse(const Finding& finding) { m_finding->say(finding, m_system); }

void RollForm::setBusy(bool busy)
{
    m_foot->setEnabled(!busy);
    m_typed->setEnabled(!busy);
    m_atHand->setEnabled(!busy);
    m_tag->setEnabled(!busy);
}

QWidget* RollForm::first() const { return m_atHand; }

void RollForm::settle()
{
    m_typed->setVisible(m_atHand->currentIndex() >= 0 && m_atHand->currentData().toInt() == kTyped);
    // What was wrong with another roll is not wrong with this one.
    m_finding->clear();
    sayEffect({});
    // A tag was taken over for another roll than this.
    m_tag->setTaken(false);
    follow();
    if (const RollAtHand* roll = picked()) emit chosen(roll->toml);
}

/// As far as it can be read; the first that cannot be read is the refusal.
inputs::Roll RollForm::entered(std::optional<Finding>& refusal) const
{
    inputs::Roll roll;
    roll.id = m_id->text().trimmed().toStdString();
    roll.substrate = m_substrate->text().trimmed().toStdString();
    readInto<Kind::Length>(m_width, roll.width, refusal);
    readInto<Kind::Length>(m_diameter, roll.outerDiameter, refusal);
    readInto<Kind::Length>(m_core, roll.core, refusal);
    readInto<Kind::Length>(m_wall, roll.coreWall, refusal);
    readInto<Kind::Length>(m_length, roll.length, refusal);
    readInto<Kind::Mass>(m_mass, roll.mass, refusal);
    if (const QString splices = m_splices->text().trimmed(); !splices.isEmpty()) {
        bool whole = false;
        const int count = splices.toInt(&whole);
        if (whole && count >= 0)
            roll.splices = count;
        else if (!refusal)
            refusal = taut::refuse("roll.splices", "splices", "The number of splices is not a whole number.",
                                   "Type a number like 2, or leave it empty when it is not known.");
    }
    if (m_winding->currentIndex() >= 0) roll.winding = static_cast<inputs::Winding>(m_winding->currentData().toInt());
    return roll;
}

Result<std::string> RollForm::toml() const
{
    if (m_tag->waits())
        return taut::refuse("roll.tag_waits", "roll", "A tag was read, and nobody has said yet that it is right.",
                            "Compare it with the label and take it over, or put it away.");
    if (const RollAtHand* at = picked()) {
        if (!m_tag->isTaken()) return at->toml;
        const inputs::Roll roll = rollOf(*at), filled = inputs::takenOver(roll, *m_tag->tag(), m_tag->text());
        return filled == roll ? at->toml : inputs::writeRoll(filled);
    }
    if (m_atHand->currentIndex() < 0)
        return taut::refuse("roll.not_chosen", "roll", "No roll is chosen yet.",
                            "Choose one at hand, or choose to type what its label says.");
    std::optional<Finding> refusal;
    inputs::Roll roll = entered(refusal);
    if (roll.id.empty() || roll.substrate.empty())
        return taut::refuse("roll.unnamed", "roll", "A roll needs its number and its material.",
                            "Type both as they stand on the label.");
    if (refusal) return *refusal;
    // One that cannot be read is kept as well: what was entered counts.
    roll.tag = m_tag->text();
    return inputs::writeRoll(roll);
}

void RollForm::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        emit cancelled();
    else if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && window()->focusWidget() == m_atHand &&
             picked())
        // What the roll changes is read before it is used; a scanner's Enter reads nothing.
        m_accept->setFocus();
    else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        // In the line of the tag it ends the tag.
        if (window()->focusWidget() != m_tagLine) give();
    } else
        return QWidget::keyPressEvent(event);
    event->accept();
}

void RollForm::give()
{
    if (!m_foot->isEnabled()) return;
    const auto text = toml();
    if (text)
        emit given(*text);
    else
        refuse(text.error());
}

}  // namespace taut::app
