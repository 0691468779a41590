// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/answer.h"

#include <algorithm>
#include <utility>

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include "app/text/words.h"
#include "app/widgets/answer_motion.h"
#include "app/widgets/answer_reading.h"
#include "app/widgets/answer_scan.h"
#include "app/widgets/controls.h"
#include "app/widgets/held_stops.h"
#include "app/widgets/hold_button.h"
#include "app/widgets/theme.h"
#include "core/run/parts.h"

namespace taut::app {

namespace {

/// A fact that somebody saw. A vital one is answered by holding the button.
class ConfirmArea final : public AnswerArea {
public:
    ConfirmArea(const StepContent& content, QWidget* parent) : AnswerArea(parent), m_content(content)
    {
        auto* layout = new QVBoxLayout(foot());
        layout->setContentsMargins(0, 0, 0, 0);
        const bool call = content.step.kind == procedure::StepKind::Call;
        if (content.closed) {
            // Only a held stop closes a step that is shown with its answer: it is said when nobody holds one.
            addHolders(layout, content);
            return;
        }
        if (content.step.waitSeconds > 0 && !call) addWait(layout, content.step.waitSeconds);
        if (content.step.vital && !call) {
            auto* button = new HoldButton(tr("Hold to confirm: I have seen it"), foot());
            connect(button, &HoldButton::held, this, [this] { answer(m_content, QStringLiteral("yes")); });
            m_button = button;
        } else {
            m_button = worded(call ? tr("&Yes, this stage is done") : tr("&Yes, I have seen it"), "main", foot());
            connect(m_button, &QPushButton::clicked, this, [this] { answer(m_content, QStringLiteral("yes")); });
        }
        m_button->setObjectName(QStringLiteral("answer"));
        layout->addWidget(m_button);
    }
    void enter() override
    {
        if (!m_button) return;
        // A vital fact is never answered by a key that was meant for something else.
        if (!qobject_cast<HoldButton*>(m_button))
            m_button->click();
        else
            m_button->setFocus();
    }
    [[nodiscard]] QWidget* first() const override { return m_button; }

private:
    StepContent m_content;
    QPushButton* m_button = nullptr;
};

/// One of a few words, each a large button; of a vital step held, so that no finger on its way past answers it.
class ChoiceArea final : public AnswerArea {
public:
    ChoiceArea(const StepContent& content, QWidget* parent) : AnswerArea(parent), m_content(content)
    {
        auto* grid = new QGridLayout(foot());
        grid->setContentsMargins(0, 0, 0, 0);
        grid->setSpacing(sizes().gap);
        const bool two = content.step.choices.size() > 2;
        if (content.step.vital) {
            auto* body = new QVBoxLayout(this);
            body->setContentsMargins(0, 0, 0, 0);
            body->addWidget(wrapped(AnswerArea::tr("Hold down the answer that is so."), "strong", this));
        }
        grid->setColumnStretch(0, 1);
        if (two) grid->setColumnStretch(1, 1);
        for (std::size_t i = 0; i < content.step.choices.size(); ++i) {
            const procedure::Choice& choice = content.step.choices[i];
            const QString said = words(Text(choice.say.empty() ? choice.word : choice.say), content.units);
            const QString word = QString::fromStdString(choice.word);
            QPushButton* button = nullptr;
            if (content.step.vital) {
                auto* held = new HoldButton(said, foot());
                connect(held, &HoldButton::held, this, [this, word] { answer(m_content, word); });
                button = held;
            } else {
                button = worded(said, "answer", foot());
                connect(button, &QPushButton::clicked, this, [this, word] { answer(m_content, word); });
            }
            button->setObjectName(QStringLiteral("choice"));
            const int n = static_cast<int>(i);
            if (two)
                grid->addWidget(button, n / 2, n % 2);
            else
                grid->addWidget(button, n, 0);
        }
    }
    // No choice has the focus beforehand: an Enter meant for the step before would take it.

private:
    StepContent m_content;
};

/// A maintained stop, put on by somebody with a name.
class HoldArea final : public AnswerArea {
public:
    HoldArea(const StepContent& content, QWidget* parent) : AnswerArea(parent), m_content(content)
    {
        auto* body = new QVBoxLayout(this);
        body->setContentsMargins(0, 0, 0, 0);
        const QString whose = tr("It belongs to the person named, and only that person gives it up.");
        const bool saysIt = words(content.step.say, content.units).contains(dataText(content.holdStop));
        body->addWidget(wrapped(content.holdStop.empty() || saysIt
                                    ? whose
                                    : tr("The stop within reach here: %1. %2").arg(dataText(content.holdStop), whose),
                                "strong", this));
        auto* layout = new QVBoxLayout(foot());
        layout->setContentsMargins(0, 0, 0, 0);
        layout->setSpacing(sizes().gap);
        constexpr int kNames = 6, kBeside = 3;
        auto* names = new QGridLayout;
        names->setSpacing(sizes().gap);
        const int offered = std::min(static_cast<int>(content.people.size()), kNames);
        for (int n = 0; n < offered; ++n) {
            const std::size_t i = static_cast<std::size_t>(n);
            auto* button = worded(dataText(content.people[i].name), "", this);
            button->setObjectName(QStringLiteral("name"));
            connect(button, &QPushButton::clicked, this,
                    [this, name = content.people[i].name] { m_field->setText(name); });
            names->addWidget(button, n / kBeside, n % kBeside);
        }
        // They scroll with what is asked, so that on a small screen the answer stays in sight.
        body->addLayout(names);
        auto* row = new QHBoxLayout;
        row->setSpacing(sizes().gap);
        m_field = withRole(new QLineEdit(foot()), "answer");
        m_field->setObjectName(QStringLiteral("field"));
        named(m_field, tr("Who holds the stop"));
        m_field->setPlaceholderText(tr("Who holds it?"));
        auto* button = worded(tr("This person &holds the stop"), "main", foot());
        button->setObjectName(QStringLiteral("answer"));
        connect(button, &QPushButton::clicked, this, &HoldArea::enter);
        connect(m_field, &QLineEdit::textChanged, this, [this](const QString& typed) {
            if (!run::whyNoName(typed.toStdString(), {})) emit mended();
        });
        row->addWidget(m_field, 1);
        row->addWidget(button);
        layout->addLayout(row);
    }
    void enter() override
    {
        answer(m_content, m_field->text().trimmed());  // whom that means is the record's to say
    }
    [[nodiscard]] QLineEdit* field() const override { return m_field; }
    [[nodiscard]] QWidget* first() const override { return m_field; }

private:
    StepContent m_content;
    QLineEdit* m_field = nullptr;
};

}  // namespace

AnswerArea::AnswerArea(QWidget* parent) : QWidget(parent), m_foot(new QWidget(parent)) {}

void AnswerArea::addBeside(QPushButton* button)
{
    if (m_foot->layout()) m_foot->layout()->addWidget(button);
}

void AnswerArea::addHolders(QVBoxLayout* layout, const StepContent& content)
{
    layout->addWidget(wrapped(tr("Everybody out. Then each gives up their own stop:"), "", foot()));
    auto* holders = new HeldStops(foot());
    holders->show(content.held);
    connect(holders, &HeldStops::command, this, &AnswerArea::command);
    layout->addWidget(holders);
}

void AnswerArea::addWait(QVBoxLayout* layout, double seconds)
{
    auto* label = wrapped({}, "strong", foot());
    label->setObjectName(QStringLiteral("wait"));
    layout->addWidget(label);
    auto* timer = new QTimer(label);
    const auto say = [label, whole = qRound(seconds)](int left) {
        label->setText(left > 0 ? tr("Watch it: %1 s to go (less is watched too short)").arg(left)
                                : tr("Watched for %1 s: answer now.").arg(whole));
    };
    connect(timer, &QTimer::timeout, label, [say, timer, left = qRound(seconds)]() mutable {
        say(--left);
        if (left <= 0) timer->stop();
    });
    say(qRound(seconds));
    timer->start(1000);
}

void AnswerArea::answer(const StepContent& content, const QString& entered, std::vector<std::string> stated)
{
    emit command(run::Answer{content.step.id, entered.toStdString(), std::move(stated)});
}

AnswerArea* makeAnswerArea(const StepContent& content, QWidget* parent)
{
    switch (content.step.kind) {
    case procedure::StepKind::Confirm:
    case procedure::StepKind::Call: return new ConfirmArea(content, parent);
    case procedure::StepKind::Reading: return new ReadingArea(content, parent);
    case procedure::StepKind::Choice: return new ChoiceArea(content, parent);
    case procedure::StepKind::Scan: return makeScanArea(content, parent);
    case procedure::StepKind::Hold: return new HoldArea(content, parent);
    case procedure::StepKind::Motion: return new MotionArea(content, parent);
    }
    return new ConfirmArea(content, parent);
}

}  // namespace taut::app
