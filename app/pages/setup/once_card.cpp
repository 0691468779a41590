// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/setup/once_card.h"

#include <functional>

#include <QFileDialog>
#include <QHBoxLayout>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QPrinterInfo>
#include <QVBoxLayout>

#include "app/print/badge.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

/// The code as a scanner reads it off the screen too.
class Picture final : public QWidget {
public:
    Picture(QWidget* parent, const QString* code) : QWidget(parent), m_code(code)
    {
        setFixedSize(millimetres(45), millimetres(45));
        setAccessibleName(OnceCard::tr("The badge as a scanner reads it"));
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        if (m_code->isEmpty()) return;
        QPainter painter(this);
        print::drawBadgeCode(painter, rect(), m_code->toStdString());
    }

private:
    const QString* m_code;
};

print::Paper paperHere()
{
    return QPrinter().pageLayout().pageSize().id() == QPageSize::Letter ? print::Paper::Letter : print::Paper::A4;
}

}  // namespace

OnceCard::OnceCard(QWidget* parent) : QWidget(parent)
{
    m_title = wrapped({}, "longSay", this);
    m_text = wrapped({}, "", this);
    m_code = wrapped({}, "big", this);
    m_code->setObjectName(QStringLiteral("code"));
    m_picture = new Picture(this, &m_badge);
    m_said = wrapped({}, "strong", this);
    m_print = worded(tr("Print the badge"), "answer", this);
    m_save = worded(tr("Save it as PDF"), "answer", this);
    m_done = worded(tr("Done: take it off the screen"), "main", this);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(sizes().gap);
    buttons->addWidget(m_print);
    buttons->addWidget(m_save);
    buttons->addWidget(m_done, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(20, 0, 20, 0);
    layout->setSpacing(sizes().gap);
    for (QWidget* w : std::initializer_list<QWidget*>{m_title, m_text, m_code, m_picture, m_said}) layout->addWidget(w);
    layout->addStretch(1);
    layout->addLayout(buttons);
    connect(m_print, &QPushButton::clicked, this, &OnceCard::printBadge);
    connect(m_save, &QPushButton::clicked, this, &OnceCard::saveBadge);
    connect(m_done, &QPushButton::clicked, this, [this] {
        forget();
        emit done();
    });
}

void OnceCard::showCode(const QString& name, const QString& code)
{
    forget();
    m_title->setText(tr("The first-use code of %1").arg(name));
    m_text->setText(
        tr("Give it to them, and to nobody else: it is shown only now. They choose their name at the top of "
           "this window, type the code, and choose a PIN and a passphrase. It is good once."));
    m_code->setText(code);
    m_code->show();
}

void OnceCard::showBadge(const QString& name, const QString& code)
{
    forget();
    m_name = name;
    m_badge = code;
    m_title->setText(tr("The badge of %1").arg(name));
    m_text->setText(
        tr("Print it now: its code is kept nowhere and cannot be shown again. With its PIN it signs in your "
           "name. Where a passphrase is asked for, scan it, then type its PIN. A badge made before this one "
           "no longer works."));
    m_picture->show();
    m_print->show();
    m_save->show();
}

void OnceCard::forget()
{
    m_name.clear();
    m_badge.clear();
    m_code->clear();
    m_said->clear();
    for (QWidget* w : std::initializer_list<QWidget*>{m_code, m_picture, m_print, m_save}) w->hide();
}

void OnceCard::printBadge()
{
    if (QPrinterInfo::availablePrinterNames().isEmpty()) {
        m_said->setText(tr("No printer is set up on this PC. Save the badge as PDF and print it elsewhere."));
        return;
    }
    QPrinter printer(QPrinter::HighResolution);
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() != QDialog::Accepted) return;
    const auto printed = print::paintBadge(printer, m_name.toStdString(), m_badge.toStdString());
    m_said->setText(printed ? tr("Sent to the printer.") : words(printed.error(), UnitSystem::Metric));
}

void OnceCard::saveBadge()
{
    const QString file =
        QFileDialog::getSaveFileName(this, tr("Save the badge"), QStringLiteral("badge.pdf"), tr("PDF files (*.pdf)"));
    if (file.isEmpty()) return;
    const auto written =
        print::writeBadge(m_name.toStdString(), m_badge.toStdString(), file.toStdString(), paperHere());
    m_said->setText(written ? tr("Saved: %1. Whoever can read this file has the badge: delete it when it is printed.")
                                  .arg(dataText(file))
                            : words(written.error(), UnitSystem::Metric));
}

}  // namespace taut::app
