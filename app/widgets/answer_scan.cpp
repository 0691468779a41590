// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/answer_scan.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/text/tag_words.h"
#include "app/widgets/controls.h"
#include "app/widgets/tag_panel.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

class ScanArea final : public AnswerArea {
public:
    ScanArea(const StepContent& content, QWidget* parent) : AnswerArea(parent), m_content(content)
    {
        auto* body = new QVBoxLayout(this);
        body->setContentsMargins(0, 0, 0, 0);
        m_panel = new TagPanel(TagPanel::Manner::Shows, this);
        m_panel->begin(content.units, content.today);
        if (content.around) m_panel->compareWith(*content.around);
        m_panel->setNumbers({content.roll});
        body->addWidget(m_panel);
        auto* layout = new QHBoxLayout(foot());
        layout->setContentsMargins(0, 0, 0, 0);
        layout->setSpacing(sizes().gap);
        m_field = withRole(new QLineEdit(foot()), "answer");
        m_field->setObjectName(QStringLiteral("field"));
        named(m_field, tr("Tag of the roll, scanned or typed"));
        m_field->setPlaceholderText(tr("Scan, or type what it says"));
        m_button = worded(tr("&Enter the tag"), "main", foot());
        m_button->setObjectName(QStringLiteral("answer"));
        connect(m_button, &QPushButton::clicked, this, &ScanArea::enter);
        connect(m_field, &QLineEdit::textChanged, this, &ScanArea::follow);
        connect(m_panel, &TagPanel::read, this, &ScanArea::takeScan);
        connect(m_panel, &TagPanel::named, this, [this](const QString& number) {
            m_panel->putAway();
            takeScan(number);
        });
        layout->addWidget(m_field, 1);
        layout->addWidget(m_button);
    }
    void enter() override { answer(m_content, QString::fromStdString(tagFromText(m_field->text()))); }
    [[nodiscard]] QLineEdit* field() const override { return m_field; }
    [[nodiscard]] QWidget* first() const override { return m_field; }

private:
    /// What was scanned stands in the field, to be entered by somebody who has read what it says.
    void takeScan(const QString& tag)
    {
        if (m_following) return;
        m_following = true;
        m_field->setText(tagToText(tag));
        m_following = false;
        if (!tag.isEmpty()) emit mended();
        m_button->setFocus();
        emit resized();
    }
    /// Somebody types; a number is entered as it stands, a tag is shown as soon as it can be read.
    void follow(const QString& typed)
    {
        if (m_following) return;
        m_following = true;
        const std::string text = tagFromText(typed);
        const bool was = m_panel->tag() != nullptr || !m_panel->text().empty();
        const bool reads = inputs::readRollTag(text).operator bool();
        if (reads || was) m_panel->type(reads ? QString::fromStdString(text) : QString());
        m_following = false;
        if (!typed.trimmed().isEmpty()) emit mended();
        if (reads || was) emit resized();
    }
    StepContent m_content;
    TagPanel* m_panel;
    QLineEdit* m_field;
    QPushButton* m_button;
    bool m_following = false;
};

}  // namespace

AnswerArea* makeScanArea(const StepContent& content, QWidget* parent) { return new ScanArea(content, parent); }

}  // namespace taut::app
