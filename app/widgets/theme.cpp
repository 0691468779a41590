// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/theme.h"

#include <algorithm>
#include <utility>

#include <QApplication>
#include <QFrame>
#include <QGuiApplication>
#include <QPalette>
#include <QScreen>
#include <QStyleFactory>

namespace taut::app {

namespace {

constexpr double kBodyPoints = 12.5;

ThemeChoice& chosen()
{
    static ThemeChoice choice;
    return choice;
}

bool& practising()
{
    static bool practises = false;
    return practises;
}

Palette chosenPalette()
{
    const Palette& palette = chosen().contrast ? contrastPalette(chosen().dark)
                             : chosen().dark   ? darkPalette()
                                               : lightPalette();
    return practising() ? practicePalette(palette) : palette;
}

QPalette qtPalette(const Palette& p)
{
    QPalette q;
    q.setColor(QPalette::Window, p.ground);
    q.setColor(QPalette::WindowText, p.ink);
    q.setColor(QPalette::Base, p.sheet);
    q.setColor(QPalette::AlternateBase, p.ground);
    q.setColor(QPalette::Text, p.ink);
    q.setColor(QPalette::PlaceholderText, p.soft);
    q.setColor(QPalette::Button, p.sheet);
    q.setColor(QPalette::ButtonText, p.ink);
    q.setColor(QPalette::ToolTipBase, p.ink);
    q.setColor(QPalette::ToolTipText, p.ground);
    q.setColor(QPalette::Highlight, p.accent);
    q.setColor(QPalette::HighlightedText, p.onAccent);
    q.setColor(QPalette::Link, p.accent);
    q.setColor(QPalette::BrightText, p.ink);
    // Something that cannot be used now still has to be read.
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        q.setColor(QPalette::Disabled, role, p.soft);
    return q;
}

QString points(double factor)
{
    return QString::number(kBodyPoints * chosen().textScale * factor, 'f', 1) + QStringLiteral("pt");
}

QString px(int value) { return QString::number(value) + QStringLiteral("px"); }

/// One sheet for everything; %words are filled below.
const char* const kSheet = R"(
* { font-family: "DejaVu Sans"; font-size: %body; outline: 0; }
QToolTip { background: %ink; color: %ground; border: 0; padding: 6px; }
QPushButton { background: %sheet; color: %ink; border: 2px solid %rule; border-radius: 4px; padding: 2px 16px;
  min-height: %control; }
QPushButton:focus, QCheckBox:focus { border-color: %accent; border-width: 4px; }
QPushButton:pressed, QPushButton:checked { background: %wash; border-color: %accent; }
QPushButton:disabled { color: %soft; border-style: dashed; }
QPushButton[role="main"] { background: %accent; color: %onAccent; border-color: %accent; font-size: %large;
  font-weight: bold; min-height: %answer; }
QPushButton[role="main"]:focus { border-color: %ink; }
QPushButton[role="main"]:disabled { background: %ground; color: %soft; border: 2px dashed %rule; }
QPushButton[role="answer"] { font-size: %large; min-height: %answer; }
QPushButton[role="vital"] { background: %accent; color: %onAccent; border-color: %accent; font-size: %large;
  font-weight: bold; min-height: %vital; }
QPushButton[role="vital"]:focus { border-color: %ink; }
QPushButton[role="vital"]:disabled { background: %ground; color: %soft; border: 2px dashed %rule; }
QPushButton[role="bare"] { background: transparent; border: 0; padding: 0; min-height: 0; }
QPushButton[role="quiet"] { background: transparent; border-color: transparent; color: %accent; padding: 2px 10px; }
QPushButton::menu-indicator { image: none; width: 0; }
QPushButton[role="quiet"]:focus { border-color: %accent; }
QPushButton[role="quiet"]:checked { background: %wash; border-color: %accent; }
QPushButton[role="row"] { text-align: left; min-height: %row; }
QPushButton[role="key"] { font-size: %large; padding: 0; min-width: %control; min-height: %control; }
QLineEdit, QPlainTextEdit, QComboBox { background: %sheet; border: 2px solid %rule; border-radius: 4px;
  padding: 2px 10px; selection-background-color: %accent; selection-color: %onAccent; }
QLineEdit:focus, QPlainTextEdit:focus, QComboBox:focus { border: 4px solid %accent; padding: 0 8px; }
QLineEdit, QComboBox { min-height: %control; }
QLineEdit:disabled, QPlainTextEdit:disabled, QComboBox:disabled { color: %soft; border-style: dashed; }
QLineEdit[role="number"] { font-size: %huge; min-height: %answer; }
QLineEdit[role="answer"] { font-size: %large; min-height: %answer; }
QComboBox { combobox-popup: 0; }
QComboBox::drop-down { width: 40px; border: 0; }
QComboBox QAbstractItemView { background: %sheet; color: %ink; border: 2px solid %rule; outline: 0; }
QComboBox QAbstractItemView::item { min-height: %row; padding: 4px 8px; }
QPushButton[low="true"] { font-size: %body; min-height: %control; }
QLineEdit[low="true"] { min-height: %control; }
QLabel[role="say"] { font-size: %say; }
QLabel[role="longSay"] { font-size: %longSay; }
QLabel[role="big"] { font-size: %huge; font-weight: bold; }
QLabel[role="head"] { font-size: %large; font-weight: bold; }
QLabel[role="strong"] { font-weight: bold; }
QLabel[role="soft"] { color: %soft; }
QLabel[role="small"] { color: %soft; font-size: %small; }
QFrame#uprightLine { background: %rule; max-width: 1px; min-width: 1px; border: 0; }
QFrame#ruledLine { background: %rule; max-height: 1px; min-height: 1px; border: 0; }
QHeaderView::section { background: %ground; color: %ink; border: 0; border-bottom: 2px solid %rule; padding: 4px 8px;
  font-weight: bold; }
QTableCornerButton::section { background: %ground; border: 0; border-bottom: 2px solid %rule; }
QTableView QLineEdit, QTableView QComboBox { min-height: 0; padding: 0 4px; border-width: 2px; }
QTableView QLineEdit:focus, QTableView QComboBox:focus { padding: 0 2px; border-width: 3px; }
QTableView { background: transparent; border: 0; selection-background-color: %wash; selection-color: %ink; }
QTableView::item { padding: 4px 8px; border-bottom: 1px solid %rule; }
QTreeView, QGraphicsView { background: transparent; border: 0; }
QListView { background: transparent; border: 0; outline: 0; }
QScrollArea { background: transparent; border: 0; }
QScrollArea#why { border: 3px solid transparent; }
QScrollArea#why:focus { border-color: %accent; }
QScrollArea > QWidget > QWidget { background: transparent; }
QScrollBar:vertical { background: %ground; width: 26px; margin: 0; }
QScrollBar::handle:vertical { background: %rule; min-height: 48px; border-radius: 4px; margin: 3px 6px; }
QScrollBar:horizontal { background: %ground; height: 26px; margin: 0; }
QScrollBar::handle:horizontal { background: %rule; min-width: 48px; border-radius: 4px; margin: 6px 3px; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QSlider::groove:horizontal { background: %wash; border: 2px solid %rule; border-radius: 4px; height: 8px; }
QSlider::handle:horizontal { background: %accent; border: 2px solid %accent; border-radius: 4px; width: 24px;
  margin: -14px 0; }
QSlider::handle:horizontal:focus { border: 4px solid %ink; }
QSlider::handle:horizontal:disabled { background: %ground; border: 2px dashed %rule; }
QMenu { background: %sheet; color: %ink; border: 2px solid %rule; }
QMenu::item { min-height: %row; padding: 4px 20px; }
QMenu::item:selected { background: %accent; color: %onAccent; }
QMenu::item:disabled { color: %soft; font-style: italic; }
QMenu::item:disabled:selected { background: %wash; color: %soft; }
)";

QString styleSheet(const Palette& p)
{
    const Sizes s = sizes();
    // A border and its padding stand outside min-height.
    const auto inner = [](int height) { return px(std::max(height - 8, 8)); };
    const std::pair<const char*, QString> words[] = {
        {"%ground", p.ground.name()}, {"%sheet", p.sheet.name()},       {"%wash", p.wash.name()},
        {"%ink", p.ink.name()},       {"%soft", p.soft.name()},         {"%rule", p.rule.name()},
        {"%accent", p.accent.name()}, {"%onAccent", p.onAccent.name()}, {"%control", inner(s.control)},
        {"%answer", inner(s.answer)}, {"%vital", inner(s.vital)},       {"%row", inner(s.row)},
        {"%body", points(1.0)},       {"%small", points(0.88)},         {"%large", points(1.22)},
        {"%say", points(1.75)},       {"%longSay", points(1.36)},       {"%huge", points(2.1)}};
    QString sheet = QString::fromLatin1(kSheet);
    for (const auto& [word, value] : words) sheet.replace(QString::fromLatin1(word), value);
    return sheet;
}

double dotsPerInch()
{
    constexpr double kUsual = 96, kLeast = 70, kMost = 220;
    const QScreen* screen = QGuiApplication::primaryScreen();
    const double reported = screen ? screen->physicalDotsPerInch() : kUsual;
    return reported < kLeast || reported > kMost ? kUsual : reported;
}

}  // namespace

void applyTheme(const ThemeChoice& choice)
{
    chosen() = choice;
    chosen().textScale = std::clamp(choice.textScale, 0.8, 2.0);
    chosen().rulerScale = std::clamp(choice.rulerScale, 0.5, 2.0);
    if (QStyle* fusion = QStyleFactory::create(QStringLiteral("Fusion"))) QApplication::setStyle(fusion);
    QApplication::setPalette(qtPalette(chosenPalette()));
    QApplication::setFont(appFont(kBodyPoints * chosen().textScale));
    if (auto* app = qobject_cast<QApplication*>(QCoreApplication::instance()))
        app->setStyleSheet(styleSheet(chosenPalette()));
}

const ThemeChoice& themeChoice() { return chosen(); }

void setPractisingLook(bool practises)
{
    if (std::exchange(practising(), practises) != practises) applyTheme(ThemeChoice(chosen()));
}

Look currentLook(double factor, bool bold)
{
    return {chosenPalette(), appFont(kBodyPoints * chosen().textScale * factor, bold), 1.0};
}

int millimetres(double mm) { return qRound(mm * dotsPerInch() * chosen().rulerScale / 25.4); }

Sizes sizes() { return {millimetres(15), millimetres(20), millimetres(25), millimetres(10), millimetres(3)}; }

QWidget* ruledLine(QWidget* parent)
{
    auto* line = new QFrame(parent);
    line->setObjectName(QStringLiteral("ruledLine"));
    return line;
}

}  // namespace taut::app
