// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/answer_reading.h"

#include <algorithm>
#include <cmath>

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStyle>
#include <QVBoxLayout>

#include "app/drawing/limit_bar.h"
#include "app/text/language.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/drawn.h"
#include "app/widgets/number_pad.h"
#include "app/widgets/room.h"
#include "app/widgets/theme.h"
#include "core/targets/aim.h"
#include "core/units/format.h"
#include "core/units/parse.h"
#include "core/units/unit.h"
#include "core/verdict/near.h"
#include "core/verdict/plausible.h"

namespace taut::app {

namespace {

/// A count is typed without a unit; everything else must have one.
Result<Quantity> parsedAs(const Quantity& like, const QString& entered)
{
    const Bare bare = like.kind() == Kind::Count ? Bare::Accept : Bare::Refuse;
    return parseQuantity(entered.toStdString(), like.kind(), bare);
}

/// The bar says that it is near; here is why.
QString nearHint(const Text& why, UnitSystem system)
{
    const QString said = words(why, system);
    return said.isEmpty() ? said : said.front().toUpper() + said.mid(1) + QLatin1Char('.');
}

/// Why a reading in the window's middle, or else at its end, would only be near.
QString longestHint(const targets::Ready* ready, UnitSystem system)
{
    const targets::Window* w = ready == nullptr ? nullptr : &ready->window;
    if (w == nullptr || !ready->instrument || (!w->low && !w->high)) return {};
    const Quantity& edge = w->low ? *w->low : *w->high;
    const Quantity middle(w->low && w->high ? (w->low->si() + w->high->si()) / 2 : edge.si(), edge.kind(), edge.unit());
    for (const Quantity& reading : {middle, edge})
        if (const auto why = verdict::whyNear(reading, ready->instrument->si(), *w)) return nearHint(*why, system);
    return {};
}

}  // namespace

/// What is said of a reading while it is typed: its room is there beforehand, so that nothing moves when it comes.
class HintLine final : public QLabel {
public:
    /// longest: of what comes and goes while a reading is typed that can be.
    HintLine(const QString& longest, QWidget* parent) : QLabel(parent), m_longest(longest)
    {
        setObjectName(QStringLiteral("hint"));
        setWordWrap(true);
        setTextFormat(Qt::PlainText);
        setAlignment(Qt::AlignLeft | Qt::AlignTop);
        withRole(this, "soft");
    }
    void reserve(bool reserved)
    {
        m_reserved = reserved;
        updateGeometry();
        place();
    }
    /// Something else says what it would: where its room is kept, that stays empty.
    void giveWay(bool gives)
    {
        m_givesWay = gives;
        place();
        update();
    }
    /// After its words changed.
    void place() { setVisible(m_reserved || (!m_givesWay && !text().isEmpty())); }
    [[nodiscard]] int heightForWidth(int width) const override
    {
        ensurePolished();
        const int said = QLabel::heightForWidth(width);
        if (!m_reserved) return said;
        const QRect line(0, 0, std::max(width, 20), 10000);
        const int longest = fontMetrics().boundingRect(line, Qt::TextWordWrap, m_longest).height();
        return std::max({said, fontMetrics().lineSpacing(), longest});
    }

protected:
    void paintEvent(QPaintEvent* event) override
    {
        if (!m_givesWay) QLabel::paintEvent(event);
    }

private:
    QString m_longest;
    bool m_reserved = true, m_givesWay = false;
};

QString withUnit(const QString& typed, const QString& unit)
{
    const QString text = typed.trimmed();
    const bool hasUnit = std::any_of(text.begin(), text.end(), [](QChar c) {
        return (c.isLetter() && c != QLatin1Char('e') && c != QLatin1Char('E')) || c == QLatin1Char('%') ||
               c == QLatin1Char('"') || c == QLatin1Char('\'');
    });
    return text.isEmpty() || hasUnit || unit.isEmpty() ? text : text + QLatin1Char(' ') + unit;
}

std::vector<std::string> offeredUnits(const Quantity& like, UnitSystem ofPress)
{
    const UnitSystem system = unitsFor(ofPress);
    constexpr std::size_t kMost = 3;
    std::vector<std::string> units;
    const auto add = [&](std::string_view symbol) {
        if (symbol.empty() || symbol == "1" || units.size() >= kMost) return;
        if (std::find(units.begin(), units.end(), symbol) == units.end()) units.emplace_back(symbol);
    };
    // Whoever reads in other units than the press's people sees the value in them, and types it so.
    if (system != ofPress) add(shownUnit(like, system).symbol);
    // The word of the panel comes first: it is the unit in which this press speaks of this value.
    const std::string_view own = mannerOf(like.unit()).symbol;
    if (findUnit(like.kind(), own) != nullptr) add(own);
    add(usualUnit(like.kind(), system, like.si()).symbol);
    // Others only where the number stays one that people say: nobody sets a brake in pascals.
    constexpr double kLeast = 0.01, kMostValue = 9999;
    for (const Unit& unit : unitsOf(like.kind())) {
        const double value = std::abs(like.si() / unit.toSi);
        const bool sayable = like.si() == 0 || (value >= kLeast && value <= kMostValue);
        if (sayable && (system == UnitSystem::Metric ? unit.metric : unit.us)) add(unit.symbol);
    }
    return units;
}

ReadingArea::ReadingArea(const StepContent& content, QWidget* parent) : AnswerArea(parent), m_content(content)
{
    if (m_content.target) m_ready = m_content.target->ready();
    m_left = new QVBoxLayout;
    m_left->setSpacing(sizes().gap);
    m_bar = new LimitBarWidget(foot());
    m_row = new QBoxLayout(QBoxLayout::LeftToRight);
    m_row->setSpacing(sizes().gap);
    m_field = withRole(new QLineEdit(foot()), "number");
    m_field->setObjectName(QStringLiteral("field"));
    named(m_field, tr("Reading"));
    m_field->setMinimumWidth(150);
    m_row->addWidget(m_field, 1);
    auto* units = new QHBoxLayout;
    units->setSpacing(sizes().gap);
    addUnits(units);
    m_row->addLayout(units);
    m_left->addLayout(m_row);
    m_hint = new HintLine(longestHint(m_ready, m_content.units), foot());
    m_left->addWidget(m_hint);
    m_left->addStretch(1);
    m_pad = new NumberPad(m_field, foot());
    m_pad->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);  // its words keep their width
    m_pad->hide();
    auto* beside = new QHBoxLayout;
    beside->setSpacing(sizes().gap);
    beside->addLayout(m_left, 1);
    beside->addWidget(m_pad);
    // In large type or long words the buttons go on in the next line.
    m_actions = new FlowRow;
    m_padToggle = worded(tr("&Number pad"), "answer", foot());
    m_padToggle->setCheckable(true);
    m_padToggle->setObjectName(QStringLiteral("padToggle"));
    const bool again = m_content.standing.state == run::StepState::Outside;
    m_enter = worded(again ? tr("&Enter it again") : tr("&Enter the reading"), "main", foot());
    m_enter->setObjectName(QStringLiteral("answer"));
    m_enter->setSizePolicy(QSizePolicy::Expanding, m_enter->sizePolicy().verticalPolicy());
    m_actions->addWidget(m_padToggle);
    m_actions->addWidget(m_enter);

    m_whole = new QVBoxLayout(foot());
    m_whole->setContentsMargins(0, 0, 0, 0);
    m_whole->setSpacing(6);
    m_whole->addWidget(m_bar);
    if (m_content.step.waitSeconds > 0) addWait(m_whole, m_content.step.waitSeconds);
    m_whole->addLayout(beside);
    m_whole->addLayout(m_actions);

    connect(m_padToggle, &QPushButton::toggled, this, &ReadingArea::place);
    connect(m_padToggle, &QPushButton::clicked, this, [this](bool open) {
        m_field->setFocus();
        emit padOpened(open);
        emit resized();
    });
    connect(m_enter, &QPushButton::clicked, this, &ReadingArea::enter);
    connect(m_field, &QLineEdit::textChanged, this, &ReadingArea::follow);
    follow();
}

/// With the pad open bar and units stand over and under the field, beside the pad, and all of it is lower; where every
/// line is needed, what enters the reading stands there too.
void ReadingArea::place()
{
    const bool open = m_padToggle->isChecked(), beside = open && m_tight;
    m_pad->setVisible(open);
    m_row->setDirection(open ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    (open ? m_left : m_whole)->insertWidget(0, m_bar);
    if (beside != m_actionsBeside) {
        m_actionsBeside = beside;
        (beside ? m_whole : m_left)->removeItem(m_actions);
        m_actions->setParent(nullptr);
        (beside ? m_left : m_whole)->addLayout(m_actions);
    }
    for (QWidget* w : std::initializer_list<QWidget*>{m_field, m_padToggle, m_enter, m_beside}) {
        if (w == nullptr || w->property("low").toBool() == open) continue;
        w->setProperty("low", open);
        w->style()->unpolish(w);
        w->style()->polish(w);
        w->updateGeometry();
    }
    // Beside what enters the reading two lines of words do.
    for (QPushButton* button : {m_padToggle, m_beside})
        if (button != nullptr) {
            button->setMaximumWidth(QWIDGETSIZE_MAX);
            const int wide = button->sizeHint().width() * 5 / 8;
            if (open) button->setMaximumWidth(std::max(wide, button->minimumSizeHint().width()));
        }
}

void ReadingArea::openPad(bool open) { m_padToggle->setChecked(open); }

void ReadingArea::setTight(bool tight)
{
    if (tight == m_tight) return;
    m_tight = tight;
    place();
    m_bar->setVisible(!tight && m_ready && m_content.target->quantity());
}

QWidget* ReadingArea::first() const { return m_field; }

void ReadingArea::setRefused(bool refused) { m_hint->giveWay(refused); }

void ReadingArea::reserveHint(bool reserved) { m_hint->reserve(reserved); }

void ReadingArea::addBeside(QPushButton* button)
{
    QLayoutItem* enters = m_actions->takeAt(m_actions->count() - 1);
    m_actions->addWidget(button);
    m_actions->addItem(enters);
    m_beside = button;
    place();
}

void ReadingArea::addUnits(QHBoxLayout* row)
{
    const Quantity* wanted = m_content.target ? m_content.target->quantity() : nullptr;
    if (!wanted) return;
    auto* group = new QButtonGroup(this);
    for (const std::string& symbol : offeredUnits(*wanted, m_content.units)) {
        auto* button = worded(dataText(unitText(symbol)), "", foot());
        button->setObjectName(QStringLiteral("unit"));
        button->setAccessibleName(tr("Unit %1").arg(unitText(symbol)));
        button->setCheckable(true);
        group->addButton(button);
        const QString unit = QString::fromStdString(symbol);
        if (m_unit.isEmpty()) {
            m_unit = unit;
            button->setChecked(true);
        }
        connect(button, &QPushButton::clicked, this, [this, unit] {
            m_unit = unit;
            follow();
            m_field->setFocus();
        });
        row->addWidget(button);
    }
}

QString ReadingArea::entered() const { return withUnit(m_field->text(), m_unit); }

std::optional<Quantity> ReadingArea::reading() const
{
    const Quantity* wanted = m_content.target ? m_content.target->quantity() : nullptr;
    if (!wanted || m_field->text().trimmed().isEmpty()) return std::nullopt;
    auto parsed = parsedAs(*wanted, entered());
    if (!parsed) return std::nullopt;
    return Quantity(parsed->si(), parsed->kind(), parsed->unit(), entered().toStdString());
}

void ReadingArea::follow()
{
    const Quantity* wanted = m_content.target ? m_content.target->quantity() : nullptr;
    m_bar->setVisible(m_ready && wanted && !m_tight);
    m_hint->clear();
    if (m_ready && wanted) {
        std::optional<Quantity> now = reading();
        const bool read = now.has_value();
        // What will be refused is not shown as if it had been taken.
        const auto never =
            now ? verdict::implausible(*now, m_content.target ? &*m_content.target : nullptr) : std::nullopt;
        if (never) {
            m_hint->setText(words(never->text, m_content.units));
            now.reset();
        }
        if (now) {
            const double reads = verdict::uncertaintyOf(*now, m_ready->instrument);
            if (const auto why = verdict::whyNear(*now, reads, m_ready->window))
                m_hint->setText(nearHint(*why, m_content.units));
        }
        if (read && !never) emit mended();
        // Until something is typed the bar shows what was read last, where that still stands.
        const std::optional<run::Answered>& last = m_content.standing.answer;
        const run::StepState state = m_content.standing.state;
        const bool stands = last && state != run::StepState::Open && state != run::StepState::Stale;
        const std::optional<Quantity> shown = now || !m_field->text().isEmpty() || !stands ? now : last->value;
        const double u = shown ? verdict::uncertaintyOf(*shown, m_ready->instrument)
                               : (m_ready->instrument ? m_ready->instrument->si() : 0);
        m_bar->setBar(limitBarOf(m_ready->window, u, std::get<Quantity>(targets::aimOf(*m_ready, m_content.units)),
                                 shown, m_content.units));
        if (!now && !never && !m_field->text().trimmed().isEmpty()) {
            const auto parsed = parsedAs(*wanted, entered());
            if (!parsed) m_hint->setText(words(parsed.error().text, m_content.units));
        }
    } else if (m_field->text().isEmpty()) {
        m_hint->setText(tr("Type the value with its unit."));
    } else {
        emit mended();
    }
    m_hint->place();
    emit followed();
}

void ReadingArea::enter()
{
    const Quantity* wanted = m_content.target ? m_content.target->quantity() : nullptr;
    if (wanted) {
        auto parsed = parsedAs(*wanted, entered());
        if (!parsed) {
            Finding finding = parsed.error();
            finding.subject = m_content.step.id.value;
            emit refused(finding);
            m_field->setFocus();
            return;
        }
    }
    answer(m_content, entered());
}

}  // namespace taut::app
