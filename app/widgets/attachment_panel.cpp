// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/attachment_panel.h"

#include <utility>

#include <QBuffer>
#include <QFile>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QImageReader>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSaveFile>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/text/words.h"
#include "app/widgets/controls.h"
#include "app/widgets/finding_strip.h"
#include "app/widgets/row_list.h"
#include "app/widgets/theme.h"
#include "core/report/parts.h"

namespace taut::app {

namespace {

constexpr int kLongestSide = 2400;         // pixels kept for showing
constexpr qint64 kMostPixels = 120000000;  // of a picture that is read at all
constexpr qsizetype kMostText = 20000;     // letters shown of a text

QString nameOfStep(const run::Run& run, const procedure::StepId& id, UnitSystem system)
{
    const procedure::Step* step = run.plan().find(id);
    if (step == nullptr) return AttachmentPanel::tr("the run as a whole");
    return words(report::nameOf(*step, run.targets().find(step->target)), system);
}

}  // namespace

/// The picture, as large as there is room for it and never larger than it is.
class PictureArea : public QWidget {
public:
    explicit PictureArea(QWidget* parent) : QWidget(parent)
    {
        setMinimumSize(120, 90);
        setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    }
    void show(QImage image, const QString& name)
    {
        m_image = std::move(image);
        setAccessibleName(name);
        update();
    }

protected:
    void paintEvent(QPaintEvent* /*event*/) override
    {
        if (m_image.isNull()) return;
        const QSize room = m_image.size().boundedTo(m_image.size().scaled(size(), Qt::KeepAspectRatio));
        QPainter painter(this);
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.drawImage(QRect(QPoint((width() - room.width()) / 2, (height() - room.height()) / 2), room), m_image);
    }

private:
    QImage m_image;
};

QImage pictureFrom(const std::string& bytes, const std::string& type)
{
    if (!run::isPicture(type)) return {};
    QByteArray data = QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size()));
    QBuffer buffer(&data);
    buffer.open(QIODevice::ReadOnly);
    // By its bytes, never by what else the system might make of them.
    QImageReader reader(&buffer, QByteArray::fromStdString(type.substr(std::string("image/").size())));
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (!size.isValid() || qint64{size.width()} * size.height() > kMostPixels) return {};
    if (size.width() > kLongestSide || size.height() > kLongestSide)
        reader.setScaledSize(size.scaled(kLongestSide, kLongestSide, Qt::KeepAspectRatio));
    return reader.read();
}

AttachmentPanel::AttachmentPanel(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("attachments"));
    m_title = wrapped(tr("Pictures and files"), "longSay", this);
    m_text = wrapped({}, "soft", this);
    m_list = new RowList(this);
    m_list->setObjectName(QStringLiteral("attached"));
    m_list->setAccessibleName(tr("Pictures and files of this run"));
    m_shown = new QStackedWidget(this);
    m_none = wrapped({}, "soft", m_shown);
    m_none->setAlignment(Qt::AlignCenter);
    m_picture = new PictureArea(m_shown);
    m_words = new QPlainTextEdit(m_shown);
    m_words->setReadOnly(true);
    m_words->setTabChangesFocus(true);
    m_words->setAccessibleName(tr("The text of the chosen file"));
    m_shown->addWidget(m_none);
    m_shown->addWidget(m_picture);
    m_shown->addWidget(m_words);
    m_said = wrapped({}, "soft", this);
    m_finding = new FindingStrip(this, tr("Understood: the file"));
    m_add = worded(tr("&Attach a picture or file\u2026"), "answer", this);
    m_add->setObjectName(QStringLiteral("attachOne"));
    m_save = worded(tr("&Save a copy\u2026"), "", this);
    m_save->setObjectName(QStringLiteral("saveOne"));
    m_back = worded(tr("&Back"), "", this);

    auto* halves = new QHBoxLayout;
    halves->addWidget(m_list, 2);
    halves->addSpacing(sizes().gap);
    halves->addWidget(m_shown, 3);
    auto* foot = new QHBoxLayout;
    foot->setSpacing(sizes().gap);
    foot->addWidget(m_add, 2);
    foot->addWidget(m_save, 1);
    foot->addWidget(m_back, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_title);
    layout->addWidget(m_text);
    layout->addLayout(halves, 1);
    layout->addWidget(m_said);
    layout->addWidget(m_finding);
    layout->addLayout(foot);

    connect(m_list, &QListWidget::currentItemChanged, this, &AttachmentPanel::look);
    connect(m_add, &QPushButton::clicked, this, &AttachmentPanel::choose);
    connect(m_save, &QPushButton::clicked, this, &AttachmentPanel::save);
    connect(m_back, &QPushButton::clicked, this, &AttachmentPanel::closed);
    chooseFile = [this] { return QFileDialog::getOpenFileName(this, tr("Attach a picture or file")); };
    chooseName = [this](const QString& name) { return QFileDialog::getSaveFileName(this, tr("Save a copy"), name); };
}

void AttachmentPanel::show(const run::Run& run, Load load, bool mayAttach)
{
    const std::vector<run::Attachment> before = std::exchange(m_all, run::attachmentsOf(run));
    const bool another = std::exchange(m_run, run.id()) != run.id();
    m_load = std::move(load);
    m_system = run.began().units;
    m_mayAttach = mayAttach;
    m_text->setText(tr("What you attach stands in the record beside the step that is open, with your name and the "
                       "time, and cannot be taken out again. Show no faces."));
    m_text->setVisible(m_mayAttach);
    m_add->setVisible(m_mayAttach);
    m_finding->clear();
    m_said->hide();
    {
        const QSignalBlocker quiet(m_list);
        m_list->clear();
        for (std::size_t i = 0; i < m_all.size(); ++i) {
            const run::Attachment& one = m_all[i];
            m_list->add({QString::number(i), dataText(one.what.name), words(run::typeSaid(one.what.type), m_system),
                         tr("%1 \u00B7 %2 \u00B7 %3")
                             .arg(nameOfStep(run, one.what.step, m_system),
                                  clockText(one.stamp.utcMs, one.stamp.offsetMinutes), dataText(one.stamp.byName))});
        }
        // The newest is what somebody just attached.
        if (!m_all.empty()) m_list->choose(QString::number(m_all.size() - 1));
    }
    m_list->setVisible(!m_all.empty());
    if (another || before.size() != m_all.size() || m_all.empty()) look();
    setBusy(m_busy);
}

const run::Attachment* AttachmentPanel::current() const
{
    const int row = m_list->chosen().isEmpty() ? -1 : m_list->chosen().toInt();
    return row < 0 || static_cast<std::size_t>(row) >= m_all.size() ? nullptr : &m_all[static_cast<std::size_t>(row)];
}

void AttachmentPanel::look()
{
    m_bytes.clear();
    m_save->setEnabled(false);
    m_shown->setCurrentWidget(m_none);
    const run::Attachment* one = current();
    if (one == nullptr) return m_none->setText(tr("Nothing is attached to this run."));
    auto bytes = m_load ? m_load(one->what.sha256) : Result<std::optional<std::string>>(std::optional<std::string>());
    if (!bytes) return m_none->setText(words(bytes.error(), m_system));
    if (!*bytes)
        return m_none->setText(tr("The record names it, and this logbook does not hold it. Verify the logbook."));
    m_bytes = **std::move(bytes);
    m_save->setEnabled(!m_busy);
    if (const QImage image = pictureFrom(m_bytes, one->what.type); !image.isNull()) {
        m_picture->show(image, dataText(one->what.name));
        m_shown->setCurrentWidget(m_picture);
    } else if (one->what.type == "text/plain") {
        m_words->setPlainText(dataText(QString::fromStdString(m_bytes).left(kMostText)));
        m_shown->setCurrentWidget(m_words);
    } else {
        m_none->setText(tr("This cannot be shown here. Save a copy and open it with a program that you trust."));
    }
}

void AttachmentPanel::choose()
{
    m_said->hide();
    m_finding->clear();
    if (const QString file = chooseFile(); !file.isEmpty()) emit chosen(file);
}

void AttachmentPanel::save()
{
    const run::Attachment* one = current();
    if (one == nullptr || m_bytes.empty()) return;
    const QString name = chooseName(QString::fromStdString(one->what.name));
    if (name.isEmpty()) return;
    QSaveFile file(name);
    const bool saved =
        file.open(QIODevice::WriteOnly) &&
        file.write(m_bytes.data(), static_cast<qint64>(m_bytes.size())) == static_cast<qint64>(m_bytes.size()) &&
        file.commit();
    say(saved ? tr("Saved: %1").arg(dataText(name))
              : tr("%1 cannot be written. Choose another folder.").arg(dataText(name)));
}

void AttachmentPanel::say(const QString& sentence)
{
    m_said->setText(sentence);
    m_said->show();
}

void AttachmentPanel::refuse(const Finding& finding) { m_finding->say(finding, m_system); }

void AttachmentPanel::setBusy(bool busy)
{
    m_busy = busy;
    m_add->setEnabled(!busy);
    m_save->setEnabled(!busy && !m_bytes.empty());
    m_back->setEnabled(!busy);
}

QWidget* AttachmentPanel::first() const
{
    return m_mayAttach ? m_add : m_all.empty() ? m_back : static_cast<QWidget*>(m_list);
}

void AttachmentPanel::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape) {
        emit closed();
        event->accept();
        return;
    }
    QWidget::keyPressEvent(event);
}

}  // namespace taut::app
