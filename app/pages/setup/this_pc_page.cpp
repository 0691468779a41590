// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/setup/this_pc_page.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "app/print/print.h"
#include "app/seams/kept_settings.h"
#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/room.h"
#include "app/widgets/ruler_check.h"
#include "app/widgets/theme.h"

namespace taut::app {

namespace {

QString askedKey() { return QStringLiteral("this_pc_asked"); }

UnitSystem rulerUnits(UnitsWish wish) { return wish == UnitsWish::Us ? UnitSystem::Us : UnitSystem::Metric; }

}  // namespace

bool wasThisPcAsked() { return keptSettings().value(askedKey(), false).toBool(); }

ThisPcPage::ThisPcPage(QWidget* parent) : QWidget(parent)
{
    auto* body = new QWidget;
    auto* scroll = new ScrollRoom(body, this);
    m_title = wrapped({}, "longSay", body);
    m_text = wrapped({}, "", body);
    m_language = new PickList(body);
    m_units = new PickList(body);
    m_paper = new PickList(body);
    for (const Language& each : languages())
        m_language->addItem(dataText(std::string_view(each.name)), QString::fromLatin1(each.id));
    m_units->addItem(tr("As each press says"), static_cast<int>(UnitsWish::AsPress));
    m_units->addItem(tr("Metric (mm, N, bar)"), static_cast<int>(UnitsWish::Metric));
    m_units->addItem(tr("US (in, lbf, psi)"), static_cast<int>(UnitsWish::Us));
    m_paper->addItem(tr("As the press's units say"), static_cast<int>(print::PaperWish::AsPress));
    m_paper->addItem(tr("A4"), static_cast<int>(print::PaperWish::A4));
    m_paper->addItem(tr("Letter"), static_cast<int>(print::PaperWish::Letter));
    m_ruler = new RulerCheck(body);
    m_demo = worded(tr("&Look round in the demo shop"), "", this);
    m_demo->setObjectName(QStringLiteral("demo"));
    m_done = worded({}, "main", this);
    m_done->setObjectName(QStringLiteral("pcDone"));

    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(sizes().gap);
    int row = 0;
    for (const auto& [words, list] : {std::pair(tr("Language"), m_language), std::pair(tr("Units"), m_units),
                                      std::pair(tr("Paper of the sheets"), m_paper)}) {
        QLabel* label = wrapped(words, "", body);
        label->setBuddy(list);
        named(list, words);
        list->setMinimumHeight(sizes().control);
        grid->addWidget(label, row, 0);
        grid->addWidget(list, row++, 1);
    }
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 2);
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(20, 10, 20, 10);
    column->setSpacing(sizes().gap);
    column->addWidget(m_title);
    column->addWidget(m_text);
    column->addLayout(grid);
    column->addWidget(wrapped(tr("Is the screen as large as it says?"), "head", body));
    column->addWidget(m_ruler);
    column->addStretch(1);
    auto* foot = new QHBoxLayout;
    foot->setContentsMargins(20, 0, 20, 8);
    foot->setSpacing(sizes().gap);
    foot->addWidget(m_demo, 1);
    foot->addWidget(m_done, 1);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll, 1);
    whole->addLayout(foot);

    connect(m_language, &QComboBox::activated, this,
            [this] { emit languageChosen(m_language->currentData().toString()); });
    connect(m_units, &QComboBox::activated, this, [this] {
        const auto wish = static_cast<UnitsWish>(m_units->currentData().toInt());
        m_ruler->setUnits(rulerUnits(wish));
        emit unitsChosen(wish);
    });
    connect(m_paper, &QComboBox::activated, this,
            [this] { print::keepPaperWish(static_cast<print::PaperWish>(m_paper->currentData().toInt())); });
    connect(m_ruler, &RulerCheck::scaled, this, &ThisPcPage::scaled);
    connect(m_demo, &QPushButton::clicked, this, &ThisPcPage::demoWanted);
    connect(m_done, &QPushButton::clicked, this, [this] {
        keptSettings().setValue(askedKey(), true);
        emit left();
    });
}

void ThisPcPage::show(bool firstTime)
{
    m_firstTime = firstTime;
    m_title->setText(firstTime ? tr("This PC, before you begin") : tr("This PC"));
    m_text->setText(firstTime ? tr("Everybody can choose their own language and units later. In the demo shop nothing "
                                   "counts: it has a logbook of its own.")
                              : tr("Kept on this PC alone; nothing of it is in the record."));
    m_demo->setVisible(firstTime);
    m_done->setText(firstTime ? tr("&Go on") : tr("&Back"));
    m_done->setAccessibleName(m_done->text().remove(QLatin1Char('&')));
    m_language->setCurrentIndex(m_language->findData(language()));
    m_units->setCurrentIndex(m_units->findData(static_cast<int>(unitsWish())));
    m_paper->setCurrentIndex(m_paper->findData(static_cast<int>(print::keptPaperWish())));
    m_ruler->setUnits(rulerUnits(unitsWish()));
}

QWidget* ThisPcPage::first() const { return m_language; }

void ThisPcPage::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape && !m_firstTime) {
        emit left();
        event->accept();
        return;
    }
    QWidget::keyPressEvent(event);
}

}  // namespace taut::app
