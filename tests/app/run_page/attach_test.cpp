// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures and files on the run page, and what helped when a reading came right.
#include <catch2/catch.hpp>

#include <QBuffer>
#include <QComboBox>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include "app/widgets/attachment_panel.h"
#include "app/widgets/finding_strip.h"
#include "core/base/crypto.h"
#include "core/run/remedy.h"
#include "tests/app/run_page/walk_support.h"
#include "tests/app/said.h"

using namespace taut;
using namespace taut::app;
using walk::Page;
using walk::Walk;

namespace {

std::string png(int width, int height)
{
    QImage image(width, height, QImage::Format_RGB32);
    image.fill(Qt::darkCyan);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    REQUIRE(image.save(&buffer, "PNG"));
    return bytes.toStdString();
}

/// A run page whose store is a list of byte strings.
struct Attaching {
    Walk walk = Walk::begin("north", "quince-jelly", "R0041");
    std::map<std::string, std::string> kept;
    Page page{walk};
    AttachmentPanel* panel = page.view.findChild<AttachmentPanel*>();
    QSignalSpy asked{&page.view, &RunView::attach};
    Attaching()
    {
        page.view.setAttachments([this](const std::string& sha256) -> Result<std::optional<std::string>> {
            const auto found = kept.find(sha256);
            return found == kept.end() ? std::optional<std::string>() : std::optional(found->second);
        });
        REQUIRE(panel);
    }
    void attached(const char* name, const std::string& bytes)
    {
        walk.perform(run::Attach{walk.next()->id, name, std::make_shared<const std::string>(bytes)});
        kept[hex(sha256(bytes))] = bytes;
        page.view.show(walk.run);
        Page::settle();
    }
    [[nodiscard]] QListWidget* list() { return panel->findChild<QListWidget*>(QStringLiteral("attached")); }
};

}  // namespace

TEST_CASE("a file that is chosen is asked to be attached to the step that is shown")
{
    Attaching a;
    a.panel->chooseFile = [] { return QStringLiteral("/stick/splice.png"); };
    a.page.view.begin(RunAct::Attach);
    REQUIRE(a.panel->isVisible());
    CHECK(a.panel->first()->hasFocus());
    QTest::mouseClick(a.page.visible<QPushButton>("attachOne"), Qt::LeftButton);
    REQUIRE(a.asked.size() == 1);
    CHECK(a.asked[0][0].toString().toStdString() == a.page.view.shownStep().value);
    CHECK(a.asked[0][1].toString() == QStringLiteral("/stick/splice.png"));
    // Nobody chose anything.
    a.panel->chooseFile = [] { return QString(); };
    QTest::mouseClick(a.page.visible<QPushButton>("attachOne"), Qt::LeftButton);
    CHECK(a.asked.size() == 1);
    // On disk it stands in the list and is looked at; the step is as it was.
    a.attached("splice.png", png(60, 40));
    CHECK(a.panel->isVisible());
    REQUIRE(a.list()->count() == 1);
    CHECK(a.page.visible<QPushButton>("saveOne")->isEnabled());
    QTest::keyClick(a.panel, Qt::Key_Escape);
    CHECK_FALSE(a.panel->isVisible());
    CHECK(a.page.view.shownStep() == a.walk.next()->id);
}

TEST_CASE("why a file was not attached is said beside it")
{
    Attaching a;
    a.page.view.begin(RunAct::Attach);
    a.page.view.refuse(refuse("attachment.too_large", "x", "huge.jpg has 11 MB.", "Make the picture smaller."));
    CHECK(a.panel->isVisible());
    CHECK(a.panel->findChild<FindingStrip*>()->text().contains(QStringLiteral("Make the picture smaller")));
}

TEST_CASE("a text is read, a picture is seen, and what is neither is only saved")
{
    Attaching a;
    a.attached("reading.txt", "brake 1.42 bar\n");
    a.attached("sheet.bin", std::string("\0\1\2", 3));
    a.page.view.begin(RunAct::Attach);
    CHECK(test::said(*a.panel).contains(QStringLiteral("cannot be shown here")));
    a.list()->setCurrentRow(0);
    auto* text = a.panel->findChild<QPlainTextEdit*>();
    CHECK(text->isVisible());
    CHECK(text->toPlainText() == QStringLiteral("brake 1.42 bar\n"));

    QTemporaryDir folder;
    const QString to = folder.filePath(QStringLiteral("copy.txt"));
    a.panel->chooseName = [&](const QString& name) {
        CHECK(name == QStringLiteral("reading.txt"));
        return to;
    };
    QTest::mouseClick(a.page.visible<QPushButton>("saveOne"), Qt::LeftButton);
    QFile copy(to);
    REQUIRE(copy.open(QIODevice::ReadOnly));
    CHECK(copy.readAll() == QByteArray("brake 1.42 bar\n"));
    a.panel->chooseName = [](const QString&) { return QStringLiteral("/no/such/folder/copy.txt"); };
    QTest::mouseClick(a.page.visible<QPushButton>("saveOne"), Qt::LeftButton);
    CHECK(test::said(*a.panel).contains(QStringLiteral("cannot be written")));
}

TEST_CASE("a picture is shown no larger than a screen needs, and one that claims to be enormous is not read")
{
    CHECK(pictureFrom(png(60, 40), "image/png").size() == QSize(60, 40));
    const QSize large = pictureFrom(png(4800, 2400), "image/png").size();
    CHECK(large == QSize(2400, 1200));
    // What it is called is not what it is.
    CHECK(pictureFrom(png(60, 40), "image/jpeg").isNull());
    CHECK(pictureFrom(png(60, 40), "application/pdf").isNull());
    CHECK(pictureFrom("\x89PNG\r\n\x1A\n and nothing more", "image/png").isNull());
    // PNG (Third Edition), 11.2.1, 2023: width and height stand in the first chunk, four bytes each, from byte 16 on.
    std::string huge = png(60, 40);
    for (const std::size_t at : {16U, 20U}) huge.replace(at, 4, std::string("\x7F\xFF\xFF\xFF", 4));
    CHECK(pictureFrom(huge, "image/png").isNull());
}

TEST_CASE("bytes that the logbook does not hold are said to be missing")
{
    Attaching a;
    a.attached("gone.png", png(10, 10));
    a.kept.clear();
    a.page.view.begin(RunAct::Attach);
    CHECK(test::said(*a.panel).contains(QStringLiteral("does not hold it")));
    CHECK_FALSE(a.page.visible<QPushButton>("saveOne")->isEnabled());
}

TEST_CASE("when a reading comes right the page asks what helped, and goes on either way")
{
    Walk w = Walk::begin("north", "quince-jelly", "R0041");
    const procedure::Step* step = w.untilStep([&](const procedure::Step& s) {
        return s.kind == procedure::StepKind::Reading && s.tries.size() > 1 && s.target == "align.centre";
    });
    REQUIRE(step);
    const procedure::Step centre = *step;
    w.perform(run::Answer{centre.id, "230 mm", {}});
    REQUIRE(w.run.stateOf(centre.id) == run::StepState::Outside);
    Page page(w);
    QSignalSpy commands(&page.view, &RunView::command);
    w.answerWell(centre);
    page.view.show(w.run);
    Page::settle();
    auto* which = page.visible<QComboBox>("value0");
    REQUIRE(which);
    CHECK(which->count() == static_cast<int>(centre.tries.size()) + 2);  // something else, and not known
    CHECK(which->currentIndex() == -1);
    SECTION("one of the step's remedies")
    {
        which->setCurrentIndex(1);
        QTest::mouseClick(page.visible<QPushButton>("accept"), Qt::LeftButton);
        REQUIRE(commands.size() == 1);
        const auto sent = std::get<run::SayHelped>(commands[0][0].value<run::Command>());
        CHECK(sent.step == centre.id);
        CHECK(sent.remedy == 2);
        w.perform(sent);
        page.view.show(w.run);
        CHECK(page.view.shownStep() == w.next()->id);
        CHECK_FALSE(which->isVisible());
    }
    SECTION("nobody knows")
    {
        which->setCurrentIndex(which->count() - 1);
        QTest::mouseClick(page.visible<QPushButton>("accept"), Qt::LeftButton);
        REQUIRE(commands.size() == 1);
        CHECK(std::get<run::SayHelped>(commands[0][0].value<run::Command>()).remedy == run::kNotKnown);
    }
    SECTION("not now: it can be said later, and the next step is there")
    {
        QTest::keyClick(which, Qt::Key_Escape);
        CHECK_FALSE(which->isVisible());
        CHECK(commands.isEmpty());
        CHECK(page.view.shownStep() == w.next()->id);
        CHECK(actOffered(RunAct::Helped, w.run, w.next(),
                         {QStringLiteral("p-1"), QStringLiteral("Ines Falk"), people::Role::Operator}));
    }
}
