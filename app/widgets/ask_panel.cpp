// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/ask_panel.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPointer>
#include <QPushButton>
#include <QScrollArea>
#include <QTimer>
#include <QVBoxLayout>

#include "app/text/names.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/finding_strip.h"
#include "app/widgets/prose_field.h"
#include "app/widgets/secret_line.h"
#include "app/widgets/theme.h"
#include "core/run/parts.h"

namespace taut::app {

namespace {

constexpr const char* kSecret = "secret";

QString valueOf(const QWidget* field)
{
    if (const auto* combo = qobject_cast<const QComboBox*>(field)) return combo->currentData().toString();
    if (const auto* prose = qobject_cast<const ProseField*>(field)) return prose->text().trimmed();
    const auto* line = qobject_cast<const QLineEdit*>(field);
    if (line == nullptr) return {};
    // A blank may belong to a passphrase.
    return line->property(kSecret).toBool() ? line->text() : line->text().trimmed();
}

}  // namespace

AskPanel::AskPanel(QWidget* parent) : QWidget(parent)
{
    m_finding = new FindingStrip(this);
    m_writing = withRole(new QLabel(tr("Writing\u2026"), this), "strong");
    m_writing->hide();
    m_foot = new QWidget(this);
    auto* row = new QHBoxLayout(m_foot);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(sizes().gap);
    m_back = worded(tr("&Back"), "answer", m_foot);
    m_back->setObjectName(QStringLiteral("cancel"));
    m_accept = worded({}, "main", m_foot);
    m_accept->setObjectName(QStringLiteral("accept"));
    row->addWidget(m_back);
    row->addWidget(m_accept, 1);
    m_layout = new QVBoxLayout(this);
    m_layout->setContentsMargins(0, 0, 0, 0);
    m_scroll = new QScrollArea(this);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_layout->addWidget(m_scroll, 1);
    m_layout->addWidget(m_finding);
    m_layout->addWidget(m_writing);
    m_layout->addWidget(m_foot);
    connect(m_accept, &QPushButton::clicked, this, &AskPanel::give);
    connect(m_back, &QPushButton::clicked, this, &AskPanel::back);
    connect(m_finding, &FindingStrip::understood, this, [this] { takeFocus(); });
}

AskPanel::Field AskPanel::prose(const QString& label, bool required, const QString& hint)
{
    return {label, {}, required, hint, false, true};
}

QWidget* AskPanel::makeField(const Field& field)
{
    QWidget* made = nullptr;
    if (field.prose) {
        auto* prose = new ProseField(m_fieldsBox);
        prose->setPlaceholderText(field.hint);
        connect(prose, &ProseField::textChanged, this, &AskPanel::forgive);
        made = prose;
    } else if (field.options.empty()) {
        auto* line = new QLineEdit(m_fieldsBox);
        line->setPlaceholderText(field.hint);
        line->setProperty(kSecret, field.secret);
        if (field.secret) line->setEchoMode(QLineEdit::Password);
        connect(line, &QLineEdit::textChanged, this, &AskPanel::forgive);
        made = line;
    } else {
        auto* combo = new PickList(m_fieldsBox);
        for (const auto& [word, shown] : field.options) combo->addItem(shown, word);
        combo->setCurrentIndex(-1);
        combo->setPlaceholderText(tr("Choose"));
        connect(combo, &QComboBox::currentIndexChanged, this, &AskPanel::forgive);
        made = combo;
    }
    made->setObjectName(QStringLiteral("value%1").arg(m_fields.size()));
    named(made, field.label);
    return made;
}

void AskPanel::addLabelled(const QString& label, QWidget* field, QBoxLayout* into)
{
    auto* text = new QLabel(label, m_fieldsBox);
    text->setBuddy(field);
    into->addWidget(text);
    into->addWidget(field);
}

/// Whoever is alone may read what they choose.
void AskPanel::addShow(QVBoxLayout* column)
{
    auto* show = new StatementBox(tr("Show what I type"), m_fieldsBox);
    show->setObjectName(QStringLiteral("show"));
    connect(show, &QCheckBox::toggled, this, [this](bool on) {
        for (QWidget* field : m_fields)
            if (auto* line = qobject_cast<QLineEdit*>(field); line && line->property(kSecret).toBool())
                line->setEchoMode(on ? QLineEdit::Normal : QLineEdit::Password);
    });
    column->addWidget(show);
}

void AskPanel::addSecret(QBoxLayout* who)
{
    const bool signs = m_question.secret == Question::Secret::Passphrase;
    if (m_question.secret == Question::Secret::None) return;
    if (signs) {
        m_pin = m_passphrase = new SecretLine(m_fieldsBox);
    } else {
        m_pin = new QLineEdit(m_fieldsBox);
        m_pin->setEchoMode(QLineEdit::Password);
        m_pin->setObjectName(QStringLiteral("pin"));
        named(m_pin, tr("PIN"));
    }
    auto* one = new QVBoxLayout;
    connect(m_pin, &QLineEdit::textChanged, this, &AskPanel::forgive);
    const QString usual = signs ? tr("Passp&hrase, or scan the badge") : tr("P&IN");
    addLabelled(m_question.secretLabel.isEmpty() ? usual : m_question.secretLabel, m_pin, one);
    who->addLayout(one, 2);
}

void AskPanel::ask(const Question& question)
{
    m_question = question;
    m_accept->setText(question.accept);
    named(m_accept, question.accept);
    m_finding->clear();
    m_blamed = nullptr;
    m_fields.clear();
    m_person = nullptr;
    m_pin = m_passphrase = nullptr;
    m_fieldsBox = new QWidget;
    auto* column = m_column = new QVBoxLayout(m_fieldsBox);
    // Close, so that a refusal has its room beside all of it on a small screen.
    column->setContentsMargins(0, 2, 0, 2);
    column->setSpacing(3);
    column->addWidget(wrapped(question.title, "head", m_fieldsBox));
    if (!question.text.isEmpty()) column->addWidget(wrapped(question.text, "", m_fieldsBox));
    bool secrets = false;
    for (const Field& field : question.fields) {
        QWidget* made = makeField(field);
        m_fields.push_back(made);
        addLabelled(field.label, made, column);
        secrets = secrets || field.secret;
    }
    if (secrets) addShow(column);
    auto* who = m_who = new QBoxLayout(QBoxLayout::LeftToRight);
    who->setSpacing(sizes().gap);
    if (question.person) {
        m_person = new PickList(m_fieldsBox);
        m_person->setObjectName(QStringLiteral("person"));
        named(m_person, tr("Person"));
        for (const PersonChoice& p : question.people)
            m_person->addItem(tr("%1, %2").arg(p.name, roleText(p.role)), p.id);
        m_person->setCurrentIndex(-1);
        m_person->setPlaceholderText(tr("Who?"));
        connect(m_person, &QComboBox::currentIndexChanged, this, &AskPanel::forgive);
        auto* one = new QVBoxLayout;
        addLabelled(tr("P&erson"), m_person, one);
        who->addLayout(one, 3);
    }
    addSecret(who);
    column->addLayout(who);
    column->addStretch(1);
    m_scroll->setWidget(m_fieldsBox);
    m_fieldsBox->show();
    tabsBefore(m_back, m_fieldsBox);
    placeWho();
    keepRoom();
}

/// Person and secret side by side where both can be read, else one below the other.
void AskPanel::placeWho()
{
    constexpr int kLetters = 56;
    const bool narrow = width() < kLetters * fontMetrics().averageCharWidth();
    if (m_who) m_who->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

void AskPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    placeWho();
    keepRoom();
}

QStringList AskPanel::typed() const
{
    QStringList values;
    for (std::size_t i = 0; i < m_fields.size(); ++i)
        values << (m_question.fields[i].secret ? QString() : valueOf(m_fields[i]));
    return values;
}

void AskPanel::setTyped(const QStringList& values)
{
    for (std::size_t i = 0; i < m_fields.size(); ++i) {
        const QString value = values.value(static_cast<int>(i));
        if (auto* line = qobject_cast<QLineEdit*>(m_fields[i]))
            line->setText(value);
        else if (auto* prose = qobject_cast<ProseField*>(m_fields[i]))
            prose->setText(value);
        else if (auto* box = qobject_cast<QComboBox*>(m_fields[i]))
            box->setCurrentIndex(box->findData(value));
    }
}

QWidget* AskPanel::first() const
{
    if (!m_fields.empty()) return m_fields.front();
    if (m_person) return m_person;
    return m_pin ? static_cast<QWidget*>(m_pin) : m_accept;
}

/// What is still to be typed, else what the refusal is about.
QWidget* AskPanel::blamedBy(const Finding& finding) const
{
    QWidget* empty = wanted();
    if (empty != nullptr && empty != m_pin) return empty;
    if (finding.code == "gate.no_reason")
        for (std::size_t i = m_fields.size(); i-- > 0;)
            if (m_question.fields[i].options.empty() && !m_question.fields[i].secret) return m_fields[i];
    if (m_pin != nullptr) return m_pin;
    return m_person != nullptr ? static_cast<QWidget*>(m_person) : first();
}

void AskPanel::refuse(const Finding& finding, UnitSystem system)
{
    // While it was being written nothing here could hold the focus; a wrong PIN is typed anew at once.
    QWidget* field = blamedBy(finding);
    sayOf(field, finding, system);
    field->setFocus();
}

/// Above what gives it, in a room of its own: nothing moves under a finger, and no field is covered.
void AskPanel::sayOf(QWidget* field, const Finding& finding, UnitSystem system)
{
    m_blamed = field;
    m_finding->say(finding, system);
    keepRoom();
    // All of it, and not only where the cursor stands in it.
    const auto keepInSight = [this, kept = QPointer<QWidget>(field)] {
        if (!kept || !m_fieldsBox->isAncestorOf(kept)) return;
        const QRect place(kept->mapTo(m_fieldsBox, QPoint(0, 0)), kept->size());
        m_scroll->ensureVisible(place.left(), place.bottom() + 1, 0, 0);
        m_scroll->ensureVisible(place.left(), place.top(), 0, 0);
    };
    // Once more when a scroll bar that came up has made the lines shorter.
    QTimer::singleShot(0, this, [this, keepInSight] {
        keepInSight();
        QTimer::singleShot(0, this, keepInSight);
    });
}

/// The refusal's room is kept where all that is asked is in sight beside it, reasons on two lines if need be.
void AskPanel::keepRoom()
{
    if (!m_fieldsBox) return;
    m_finding->reserve(true);
    m_layout->activate();
    for (const bool low : {false, true, false}) {
        for (QWidget* field : m_fields)
            if (qobject_cast<ProseField*>(field))
                field->setMaximumHeight(low ? field->minimumSizeHint().height() : QWIDGETSIZE_MAX);
        m_column->activate();
        if (m_column->totalHeightForWidth(m_scroll->width()) <= m_scroll->height()) return;
    }
    m_finding->reserve(false);
}

/// What is typed now is not what was refused.
void AskPanel::forgive()
{
    const auto* field = qobject_cast<const QWidget*>(sender());
    if (field != m_blamed || !m_finding->isVisibleTo(this)) return;
    const QString value = m_pin == field ? m_pin->text() : valueOf(field);
    const bool prose = qobject_cast<const ProseField*>(field) != nullptr;
    if (prose ? run::saysSomething(value.toStdString()) : !value.isEmpty()) m_finding->clear();
}

void AskPanel::refuseField(std::size_t field, const Finding& finding, UnitSystem system)
{
    sayOf(m_fields.at(field), finding, system);
    if (auto* line = qobject_cast<QLineEdit*>(m_fields.at(field))) {
        line->setFocus();
        line->selectAll();
    }
}

/// The first thing that is still to be filled in; nullptr when nothing is.
QWidget* AskPanel::wanted() const
{
    for (std::size_t i = 0; i < m_fields.size(); ++i)
        if (m_question.fields[i].required && valueOf(m_fields[i]).isEmpty()) return m_fields[i];
    if (m_person && m_person->currentIndex() < 0) return m_person;
    return m_pin;
}

void AskPanel::takeFocus() { (wanted() != nullptr ? wanted() : first())->setFocus(); }

void AskPanel::forgetPin()
{
    if (m_passphrase)
        m_passphrase->forget();
    else if (m_pin)
        m_pin->clear();
}

void AskPanel::want(QWidget* field, const QString& label)
{
    QString plain = label;
    sayOf(field,
          taut::refuse("ask.empty", {}, Text("\"%1\" is still empty.", {plain.remove(QLatin1Char('&')).toStdString()}),
                       "Fill it in, or go back."),
          UnitSystem::Metric);
    field->setFocus();
}

void AskPanel::setBusy(bool busy)
{
    m_writing->setVisible(busy);
    m_foot->setEnabled(!busy);
    if (m_fieldsBox) m_fieldsBox->setEnabled(!busy);
}

void AskPanel::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape) {
        back();
    } else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        // One touch of the key, one thing given.
        if (!event->isAutoRepeat() && m_back->hasFocus())
            back();
        else if (!event->isAutoRepeat())
            give();
    } else {
        QWidget::keyPressEvent(event);
        return;
    }
    event->accept();
}

void AskPanel::back()
{
    // The panel may be shown again as it stands, and to somebody else.
    forgetPin();
    emit cancelled();
}

void AskPanel::give()
{
    if (!m_foot->isEnabled()) return;
    QStringList values;
    for (std::size_t i = 0; i < m_fields.size(); ++i) {
        values << valueOf(m_fields[i]);
        // Enter goes on to what is still wanted.
        if (m_question.fields[i].required && values.back().isEmpty()) {
            want(m_fields[i], m_question.fields[i].label);
            return;
        }
    }
    if (m_person && m_person->currentIndex() < 0) {
        want(m_person, tr("Person"));
        return;
    }
    const QString pin = m_passphrase ? m_passphrase->secret() : m_pin ? m_pin->text() : QString();
    if (m_pin && pin.isEmpty()) {
        want(m_pin, m_pin->accessibleName());
        return;
    }
    m_finding->clear();
    forgetPin();
    emit given(values, m_person ? m_person->currentData().toString() : QString(), pin);
}

}  // namespace taut::app
