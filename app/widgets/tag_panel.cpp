// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/tag_panel.h"

#include <utility>

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/drawn.h"
#include "app/widgets/scan_catcher.h"
#include "app/widgets/tag_table.h"
#include "app/widgets/tag_text.h"
#include "app/widgets/theme.h"
#include "core/people/person.h"

namespace taut::app {

namespace {

/// Bars as on a label, beside the sentence that asks for it.
class BarsWidget final : public QWidget {
public:
    explicit BarsWidget(QWidget* parent) : QWidget(parent) { setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed); }
    [[nodiscard]] QSize sizeHint() const override
    {
        const int high = fontMetrics().height() * 3 / 2;
        return {high * 3 / 2, high};
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        // Bar and gap in turn.
        constexpr int kModules[] = {2, 1, 1, 2, 3, 1, 1, 1, 2, 2, 1, 1, 3, 1, 1};
        constexpr int kAll = 23;
        QPainter painter(this);
        const double module = width() / static_cast<double>(kAll);
        double x = 0;
        bool bar = true;
        for (const int modules : kModules) {
            if (bar) painter.fillRect(QRectF(x, 0, modules * module, height()), currentLook().palette.ink);
            x += modules * module;
            bar = !bar;
        }
    }
};

}  // namespace

TagPanel::TagPanel(Manner manner, QWidget* parent) : QWidget(parent)
{
    build(manner);
    connect(new ScanCatcher(this), &ScanCatcher::scanned, this, &TagPanel::scan);
    begin(UnitSystem::Metric, {});
}

void TagPanel::build(Manner manner)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    auto* ask = new QHBoxLayout;
    ask->setSpacing(sizes().gap);
    ask->addWidget(new BarsWidget(this), 0, Qt::AlignTop);
    ask->addWidget(wrapped(tr("Scan the roll's tag now, whatever has the keyboard."), "", this), 1);
    column->addLayout(ask);
    m_said = new QWidget(this);
    auto* said = new QHBoxLayout(m_said);
    said->setContentsMargins(0, 0, 0, 0);
    said->setSpacing(sizes().gap);
    m_mark = new MarkWidget(m_said);
    m_sentence = wrapped({}, "strong", m_said);
    m_sentence->setObjectName(QStringLiteral("tagSaid"));
    said->addWidget(m_mark, 0, Qt::AlignTop);
    said->addWidget(m_sentence, 1);
    column->addWidget(m_said);
    m_signs = new TagText(this);
    column->addWidget(m_signs);
    m_table = new TagTable(this);
    column->addWidget(m_table);
    m_acts = new QWidget(this);
    auto* acts = new QHBoxLayout(m_acts);
    acts->setContentsMargins(0, 0, 0, 0);
    acts->setSpacing(sizes().gap);
    QPushButton* away = worded(tr("P&ut the tag away"), "answer", m_acts);
    away->setObjectName(QStringLiteral("putAway"));
    m_take = worded(tr("&Take these over"), "answer", m_acts);
    m_take->setObjectName(QStringLiteral("takeOver"));
    acts->addWidget(away);
    acts->addWidget(m_take, 1);
    m_acts->hide();
    m_takes = manner == Manner::Takes;
    column->addWidget(m_acts);
    connect(away, &QPushButton::clicked, this, &TagPanel::putAway);
    connect(m_take, &QPushButton::clicked, this, &TagPanel::takeWanted);
}

void TagPanel::begin(UnitSystem system, const std::optional<inputs::TagDate>& today)
{
    m_system = system;
    m_today = today;
    m_tag.reset();
    m_text.clear();
    m_taken = false;
    m_said->hide();
    m_signs->hide();
    showRows();
}

void TagPanel::compareWith(inputs::Inputs around)
{
    m_around = std::move(around);
    showRows();
}

void TagPanel::scan(const QString& typed) { take(typed, true); }

void TagPanel::type(const QString& typed)
{
    if (typed.trimmed().toStdString() == m_text) return;
    if (typed.trimmed().isEmpty()) return putAway();
    if (m_tag && m_taken) emit dropped();
    m_tag.reset();
    m_taken = false;
    m_text.clear();
    take(typed.trimmed(), false);
}

void TagPanel::take(const QString& typed, bool scanned)
{
    inputs::TagOptions options;
    if (m_today) options.year = m_today->year;
    options.singleField = scanned;
    const std::string text = inputs::withSeparators(typed.toStdString(), options);
    auto read = inputs::readScanned(m_text, text, options);
    if (scanned && !read && m_numbers.contains(typed.trimmed(), Qt::CaseInsensitive))
        return emit named(typed.trimmed());
    if (!read) {
        // A badge is a secret: it is neither shown nor kept.
        if (people::badgeCodeFrom(typed.toStdString())) {
            if (m_take->hasFocus()) setFocus();
            return say(tr("That was somebody's badge, not the tag of a roll. It was not kept."), true);
        }
        showWrong(QString::fromStdString(text), read.error());
        // What was just scanned is not what would be taken over: no key that follows may do it.
        if (m_take->hasFocus()) setFocus();
        // One that says nothing alone waits for the other bar code of its label.
        if (!m_tag) m_text = text;
        emit this->read(QString::fromStdString(m_text));
        return;
    }
    const bool before = m_tag.has_value(), taken = isTaken();
    QString said = tr("Compare each line with the label: where a separator was lost, two lines become one.");
    if (read->second == inputs::SecondTag::Same)
        said = tr("This bar code was read before and says nothing new.");
    else if (read->second == inputs::SecondTag::Completes)
        said = tr("A second bar code of this label, lines added: %1.").arg(read->added) + QLatin1Char(' ') + said;
    else if (before)
        said = (taken ? tr("This is another tag. What the one before had filled is out again.")
                      : tr("This is another tag: it takes the place of the one before.")) +
               QLatin1Char(' ') + said;
    // Of two bar codes of one label the first was taken over, and the second was not.
    if (read->second != inputs::SecondTag::Same) m_taken = false;
    m_tag = std::move(read->tag);
    m_text = std::move(read->text);
    if (taken && read->second == inputs::SecondTag::Replaces) emit dropped();
    say(said, false);
    m_signs->show(QString::fromStdString(m_text), {});
    m_signs->setVisible(true);
    showRows();
    emit this->read(QString::fromStdString(m_text));
    if (scanned && m_take->isVisible()) m_take->setFocus();
}

void TagPanel::say(const QString& sentence, bool wrong)
{
    m_mark->setMark(MarkShape::Octagon);
    m_mark->setVisible(wrong);
    m_sentence->setText(sentence);
    m_said->setVisible(true);
    // Whoever scanned looks at the roll and not at the screen.
    QAccessibleEvent event(m_sentence, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

void TagPanel::showWrong(const QString& typed, const Finding& finding)
{
    QString said = words(finding, m_system);
    if (m_tag) said += QLatin1Char(' ') + tr("The tag read before stays.");
    say(said, true);
    m_signs->show(typed, inputs::tagPlace(finding));
    m_signs->setVisible(true);
    showRows();
}

void TagPanel::showRows()
{
    m_table->setVisible(m_tag.has_value());
    m_acts->setVisible(m_takes && (m_tag || !m_text.empty()));
    m_take->setVisible(waits());
    if (m_tag) m_table->show(inputs::tagRows(m_around, *m_tag, m_text, m_today), m_system);
    emit stood();
}

void TagPanel::setTaken(bool taken)
{
    if (!m_tag || m_taken == taken) return;
    m_taken = taken;
    say(taken ? tr("Taken over. What was entered by hand is as it was.") : tr("Another roll: take the tag over anew."),
        false);
    showRows();
}

Findings TagPanel::findings() const
{
    Findings all = m_table->rows().findings;
    for (const inputs::TagRow& row : m_table->rows().rows)
        all.insert(all.end(), row.findings.begin(), row.findings.end());
    return all;
}

void TagPanel::putAway()
{
    const bool taken = isTaken();
    begin(m_system, m_today);
    if (taken) emit dropped();
    emit read(QString());
}

}  // namespace taut::app
