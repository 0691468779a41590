// SPDX-License-Identifier: GPL-3.0-or-later
// What a scanner types, whatever has the keyboard, and what a person types. Keys carry the times at which they came.
#include <catch2/catch.hpp>

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QVBoxLayout>

#include "app/widgets/roll_form.h"
#include "app/widgets/secret_line.h"
#include "app/widgets/tag_table.h"
#include "app/widgets/tag_text.h"
#include "app/widgets/theme.h"
#include "core/inputs/roll_tag.h"
#include "core/people/person.h"
#include "tests/app/widgets/card_support.h"
#include "tests/core/inputs/demo.h"
#include "tests/core/inputs/tag_text.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::cards;

namespace {

constexpr inputs::TagDate kToday{2026, 11, 27, false};
const char* const kTag = "]C10199521000001018800103300250007603<GS>10LOT7A<GS>21R0042";

/// A roll form as the run page shows it, in a window with other fields.
struct Page {
    QWidget window;
    RollForm* form;
    QLineEdit* search;
    SecretLine* pin;
    ulong clock = 1000, lastAt = 0;
    QString last;

    explicit Page(std::vector<RollAtHand> rolls = {})
    {
        applyTheme({});
        auto* column = new QVBoxLayout(&window);
        form = new RollForm;
        search = new QLineEdit;
        pin = new SecretLine;
        for (QWidget* w : {static_cast<QWidget*>(form), static_cast<QWidget*>(search), static_cast<QWidget*>(pin)})
            column->addWidget(w);
        window.resize(900, 700);
        form->ask(QStringLiteral("Change the roll"), {}, std::move(rolls), UnitSystem::Metric);
        form->compareWith({std::make_shared<const inputs::Press>(demoPress("north")),
                           std::make_shared<const inputs::Job>(demoJob("quince-jelly")),
                           std::make_shared<const inputs::Substrate>(demoSubstrate("paper-label-80")),
                           {}},
                          kToday);
        window.show();
        QApplication::setActiveWindow(&window);
    }
    QLineEdit& line(const char* name)
    {
        for (QLineEdit* one : form->findChildren<QLineEdit*>())
            if (one->accessibleName() == QLatin1String(name)) return *one;
        throw std::runtime_error(name);
    }
    void key(int code, const QString& text, ulong after, Qt::KeyboardModifiers with = {})
    {
        clock += after;
        QWidget* popup = QApplication::activePopupWidget();
        QWidget* to = popup ? popup : &window;
        if (to->focusWidget()) to = to->focusWidget();
        // X11 takes a key for one that is held when it comes again so soon.
        constexpr ulong kRepeats = 10;
        const bool again = text == last && clock - lastAt <= kRepeats;
        last = text;
        lastAt = clock;
        for (const QEvent::Type type : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent event(type, code, with, text, again);
            event.setTimestamp(clock);
            QCoreApplication::sendEvent(to, &event);
        }
    }
    /// Every key so many milliseconds behind the one before.
    void type(const QString& text, ulong gap)
    {
        for (const QChar sign : text) {
            if (sign == QLatin1Char('\x1d'))
                key(Qt::Key_BracketRight, sign, gap, Qt::ControlModifier);
            else
                key(sign.toUpper().unicode(), sign, gap);
        }
    }
    void scan(const std::string& text, int end = Qt::Key_Return, ulong gap = 3)
    {
        clock += 2000;
        type(QString::fromStdString(scanned(text)), gap);
        if (end != 0) key(end, end == Qt::Key_Tab ? QStringLiteral("\t") : QStringLiteral("\r"), gap);
    }
    template <class W>
    W* seen(const char* name)
    {
        return child<W>(*form, name);
    }
    QString said()
    {
        auto* label = seen<QLabel>("tagSaid");
        return label ? label->text() : QString();
    }
    /// "Character 14 of 40"
    QString mark()
    {
        auto* signs = seen<TagText>("tagText");
        return signs ? signs->accessibleDescription().section(QLatin1Char('.'), 0, 0) : QString();
    }
    QStringList values()
    {
        QStringList out;
        for (QLabel* label : form->findChildren<QLabel*>(QStringLiteral("tagValue")))
            if (label->isVisibleTo(form)) out << label->text().replace(QChar::Nbsp, QLatin1Char(' '));
        return out;
    }
    QString findings()
    {
        QString out;
        for (QLabel* label : form->findChildren<QLabel*>(QStringLiteral("tagFinding")))
            if (label->isVisibleTo(form))
                out += label->text().replace(QChar::Nbsp, QLatin1Char(' ')) + QLatin1Char('\n');
        return out;
    }
};

const QStringList kValues{
    QStringLiteral("9952 1000 0010 18"), QStringLiteral("330 mm"), QStringLiteral("2500 m"), QStringLiteral("76 mm"),
    QStringLiteral("face out"),          QStringLiteral("3"),      QStringLiteral("LOT7A"),  QStringLiteral("R0042")};

}  // namespace

TEST_CASE("a scanned tag goes to the tag, whatever has the keyboard, and leaves no sign in a field")
{
    Page page;
    QLineEdit& diameter = page.line("Outer diameter");
    diameter.setText(QStringLiteral("48"));
    auto* hand = page.seen<QComboBox>("atHand");
    for (QWidget* focus : {static_cast<QWidget*>(&diameter), static_cast<QWidget*>(hand),
                           static_cast<QWidget*>(page.seen<QPushButton>("cancel")), static_cast<QWidget*>(page.search),
                           static_cast<QWidget*>(nullptr)}) {
        page.form->compareWith({}, kToday);
        CHECK(page.values().isEmpty());
        if (focus)
            focus->setFocus();
        else if (QWidget* now = page.window.focusWidget())
            now->clearFocus();
        QSignalSpy given(page.form, &RollForm::given), back(page.form, &RollForm::cancelled);
        page.scan(kTag);
        CHECK(page.values() == kValues);
        CHECK(diameter.text() == QStringLiteral("48"));
        CHECK(page.search->text().isEmpty());
        CHECK(hand->currentIndex() == 0);
        CHECK(given.isEmpty());
        CHECK(back.isEmpty());
        CHECK(page.line("Width").text().isEmpty());
    }
    // A list that stands open is closed: what the tag says would lie under it.
    page.form->compareWith({}, kToday);
    hand->showPopup();
    page.scan(kTag);
    CHECK_FALSE(QApplication::activePopupWidget());
    CHECK(page.values() == kValues);
}

TEST_CASE("what a person types stays where it is typed")
{
    Page page;
    QLineEdit& diameter = page.line("Outer diameter");
    for (const ulong gap : {45UL, 120UL, 700UL}) {
        diameter.clear();
        diameter.setFocus();
        page.clock += 2000;
        page.type(QStringLiteral("480 mm"), gap);
        CHECK(QTest::qWaitFor([&] { return diameter.text() == QLatin1String("480 mm"); }, 1000));
    }
    // Two quick fingers, and a bracket that begins no tag.
    diameter.clear();
    page.clock += 2000;
    page.type(QStringLiteral("33"), 12);
    CHECK(QTest::qWaitFor([&] { return diameter.text() == QLatin1String("33"); }, 1000));
    page.type(QStringLiteral("] "), 150);
    page.type(QStringLiteral("x"), 150);
    CHECK(QTest::qWaitFor([&] { return diameter.text() == QLatin1String("33] x"); }, 1000));
    // A key that types nothing comes behind what was typed before it.
    diameter.clear();
    page.type(QStringLiteral("12"), 10);
    page.key(Qt::Key_Backspace, QStringLiteral("\b"), 10);
    CHECK(diameter.text() == QLatin1String("1"));
    page.type(QStringLiteral("7"), 300);
    page.key(Qt::Key_Tab, QStringLiteral("\t"), 10);
    CHECK(diameter.text() == QLatin1String("17"));
    CHECK_FALSE(diameter.hasFocus());
    CHECK(page.values().isEmpty());
    CHECK(page.said().isEmpty());
}

TEST_CASE("where nobody reads what is typed a scanner types as ever, and a badge is never shown")
{
    Page page;
    page.pin->setFocus();
    page.scan("]C10109521000001015", 0);
    CHECK(page.pin->text() == QStringLiteral("]C10109521000001015"));
    CHECK(page.values().isEmpty());
    page.line("Length").setFocus();
    const std::string badge = "3F09A1C27D4481B60E95A3C2D0F47B18";
    REQUIRE(people::badgeCodeFrom(badge));
    page.scan(badge);
    CHECK(page.said().contains(QStringLiteral("badge")));
    for (const QLabel* label : page.form->findChildren<QLabel*>())
        CHECK_FALSE(label->text().contains(QStringLiteral("3F09")));
    CHECK_FALSE(page.seen<TagText>("tagText"));
    for (const QLineEdit* line : page.form->findChildren<QLineEdit*>()) CHECK(line->text().isEmpty());
}

// GS1 General Specifications and ISO/IEC 15434; strings composed by hand, check digits computed.
TEST_CASE("a tag is read however the scanner sends it")
{
    Page page;
    page.line("Mass").setFocus();
    for (const char* tag : {kTag, "0199521000001018800103300250007603<GS>10LOT7A<GS>21R0042",
                            "]d20199521000001018800103300250007603|10LOT7A|21R0042",
                            "]Q30199521000001018800103300250007603~10LOT7A~21R0042",
                            "]e00199521000001018800103300250007603{GS}10LOT7A{GS}21R0042"}) {
        for (const int end : {int{Qt::Key_Return}, int{Qt::Key_Tab}, 0}) {
            CAPTURE(tag, end);
            page.form->compareWith({}, kToday);
            page.scan(tag, end);
            CHECK(QTest::qWaitFor([&] { return page.values() == kValues; }, 1000));
        }
    }
    // A PC that is busy hands on what it got in pieces.
    page.form->compareWith({}, kToday);
    page.clock += 2000;
    page.type(QStringLiteral("019"), 2);
    page.clock += 180;
    page.type(QStringLiteral("9521000001018"), 2);
    page.clock += 450;
    page.key(Qt::Key_Return, QStringLiteral("\r"), 2);
    CHECK(page.values() == QStringList{QStringLiteral("9952 1000 0010 18")});
    // A slow one is known by how a tag begins; some end with two keys, and the second presses nothing.
    page.form->compareWith({}, kToday);
    page.scan(kTag, Qt::Key_Return, 60);
    CHECK(page.values() == kValues);
    page.key(Qt::Key_Return, QStringLiteral("\r"), 2);
    CHECK(page.seen<QPushButton>("takeOver"));
    CHECK(page.line("Mass").text().isEmpty());
}

// GS1 General Specifications (identifiers, check digit, AI 8001), ISO/IEC 15424 (carriers), ASC MH10.8.2, GS1 Digital
// Link; strings composed by hand, check digits computed.
TEST_CASE("every sort of tag shows its lines in words, units and days")
{
    struct Vector {
        const char *tag, *values;
    };
    Page page;
    page.line("Mass").setFocus();
    for (const Vector& v : std::initializer_list<Vector>{
             {"]d2019952100000101810LOT7A<GS>11250304800103300250007603<GS>21R0042",
              "9952 1000 0010 18, LOT7A, 2025-03-04, 330 mm, 2500 m, 76 mm, face out, 3, R0042"},
             {"]Q30199521000001018800103300250007610", "9952 1000 0010 18, 330 mm, 2500 m, 76 mm, face in, 0"},
             {"]C10199521000001018311000250031230003303101001825", "9952 1000 0010 18, 2500 m, 330 mm, 182.5 kg"},
             {"]C10039521000000000001902095210000010153712", "3952 1000 0000 0000 19, 0952 1000 0010 15, 12"},
             {"01095210000010153000000250", "0952 1000 0010 15, 250"},
             {"<GS>010952100000101510L1<GS>", "0952 1000 0010 15, L1"},
             {"]C1010952100000101511250200", "0952 1000 0010 15, 2025-02, the day is not said"},
             {"]C1010952100000101510LOT7A21R0042", "0952 1000 0010 15, LOT7A21R0042"},
             {"https://id.gs1.org/01/99521000001018/10/LOT7A/21/R0042?8001=03300250007603&11=250304",
              "9952 1000 0010 18, LOT7A, R0042, 330 mm, 2500 m, 76 mm, face out, 3, 2025-03-04"},
             {"Q2500", "2500"},
             {"1TLOT7A", "LOT7A"},
             {"HACME", "ACME"}}) {
        CAPTURE(v.tag);
        page.form->compareWith({}, kToday);
        page.scan(v.tag);
        CHECK(page.values().join(QStringLiteral(", ")).toStdString() == v.values);
        // Each line says its identifier, and all of it to whoever cannot see it.
        for (QLabel* label : page.form->findChildren<QLabel*>(QStringLiteral("tagValue")))
            if (label->isVisibleTo(page.form)) CHECK(label->accessibleName().contains(label->text()));
    }
}

TEST_CASE("a wrong tag shows which of its characters is wrong, and fills nothing")
{
    struct Vector {
        const char *tag, *mark;
    };
    Page page;
    page.line("Mass").setFocus();
    for (const Vector& v : std::initializer_list<Vector>{
             {"]C10199521000001019800103300250007603", "Character 19 of 37"},
             {"]C10199521000001018800103300250007623", "Character 36 of 37"},
             {"]C10199521000001018800100000250007603", "Character 24 of 37"},
             {"]C1019952100000101880010330025000760", "It ends too early, after character 36"},
             {"]C1019952100000101880010330025000760321R0042", "Character 38 of 44"},
             {"]C1800103300250007603", "Character 4 of 21"},
             {"]C1010952100000101510ABCDEFGHIJKLMNOPQRSTU", "Character 42 of 42"},
             {"]C1010952100000101511250230", "Character 26 of 27"},
             {"]C1010952100000101511251301", "Character 24 of 27"},
             {"]C1010952100000101510LOT^7", "Character 25 of 26"},
             {"]C10039521000000000001901095210000010153712", "Character 24 of 43"},
             {"]C00109521000001015", "Character 1 of 19"},
             {"]C10512345", "Character 4 of 10"},
             {"]C10109521000", "It ends too early, after character 13"},
             {"https://id.gs1.org/01/99521000001018/21/R0042/10/LOT7A", "Character 47 of 54"},
             {"Q25AB", "Character 4 of 5"}}) {
        CAPTURE(v.tag);
        page.form->compareWith({}, kToday);
        page.scan(v.tag);
        CHECK(page.mark().toStdString() == v.mark);
        CHECK_FALSE(page.said().isEmpty());
        CHECK(page.values().isEmpty());
        CHECK_FALSE(page.seen<QPushButton>("takeOver"));
    }
}

TEST_CASE("nothing of a tag is entered before somebody takes it over, and then it is kept whole")
{
    Page page;
    page.line("Outer diameter").setText(QStringLiteral("480 mm"));
    page.line("Material").setText(QStringLiteral("paper-label-80"));
    page.line("Splices inside").setText(QStringLiteral("2"));
    page.line("Material").setFocus();
    page.scan(kTag);
    CHECK(page.line("Width").text().isEmpty());
    REQUIRE_FALSE(page.form->toml());
    CHECK(page.form->toml().error().code == "roll.tag_waits");
    // Two splices were typed, and stay; the line says so.
    CHECK(page.findings().contains(QStringLiteral("Entered is 2; the tag says 3.")));
    QTest::mouseClick(page.seen<QPushButton>("takeOver"), Qt::LeftButton);
    CHECK(page.line("Number on its label").text() == QStringLiteral("R0042"));
    CHECK(page.line("Width").text() == QStringLiteral("330 mm"));
    CHECK(page.line("Core, inner diameter").text() == QStringLiteral("76 mm"));
    CHECK(page.line("Length").text() == QStringLiteral("2500 m"));
    CHECK(page.line("Splices inside").text() == QStringLiteral("2"));
    CHECK_FALSE(page.seen<QPushButton>("takeOver"));
    const auto toml = page.form->toml();
    REQUIRE(toml);
    Findings notes;
    const auto roll = inputs::readRoll(*toml, "roll", notes);
    REQUIRE(roll);
    CHECK(roll->tag == scanned(kTag));
    CHECK(roll->winding == inputs::Winding::FaceOut);
    CHECK(roll->splices == 2);
}

TEST_CASE("while a tag waits to be compared, what answers it stands at the foot and the roll cannot be used")
{
    Page page;
    CHECK(page.seen<QPushButton>("accept"));
    page.scan(kTag);
    QTest::qWait(50);
    auto* take = page.seen<QPushButton>("takeOver");
    auto* away = page.seen<QPushButton>("putAway");
    REQUIRE(take);
    REQUIRE(away);
    CHECK(page.seen<QPushButton>("accept") == nullptr);
    for (const QWidget* one : {take, away}) {
        CHECK(one->visibleRegion().boundingRect() == one->rect());
        CHECK(std::abs(one->mapTo(page.form, QPoint(0, 0)).y() -
                       page.seen<QPushButton>("cancel")->mapTo(page.form, QPoint(0, 0)).y()) < 4);
    }
    REQUIRE(take->hasFocus());
    // Another scan that cannot be read: what was read before stays, and no key that follows takes it over.
    page.scan("]C10199521000001");
    QTest::qWait(50);
    CHECK(page.seen<QPushButton>("takeOver"));
    CHECK_FALSE(take->hasFocus());
    take->setFocus();
    QTest::mouseClick(take, Qt::LeftButton);
    CHECK(page.seen<QPushButton>("takeOver") == nullptr);
    REQUIRE(page.seen<QPushButton>("accept"));
    CHECK(page.seen<QPushButton>("accept")->hasFocus());
}

TEST_CASE("what does not fit job, press or core is told beside its line, with what to do")
{
    Page page;
    page.line("Mass").setFocus();
    page.scan("]C10199521000001018800103000250004013<GS>15250101");
    const QString found = page.findings();
    CAPTURE(found.toStdString());
    CHECK(found.contains(
        QStringLiteral("The roll is 300 mm wide; the job is made for 330 mm. Take a roll of the job's width")));
    CHECK(found.contains(QStringLiteral("The core measures 40 mm inside; the mandrel holds 75 mm to 78 mm.")));
    CHECK(found.contains(QStringLiteral("feed it under")));
    CHECK(found.contains(QStringLiteral("This day is past: 2025-01-01.")));
}

TEST_CASE("a second bar code completes the label, the tag of another roll takes its place and what it had filled")
{
    Page page;
    page.line("Mass").setFocus();
    page.scan("]C1800103300250007603");
    CHECK(page.mark() == QStringLiteral("Character 4 of 21"));
    page.scan("]C1019952100000101810LOT7A<GS>21R0042");
    CHECK(page.values().size() == 8);
    CHECK(page.said().contains(QStringLiteral("lines added: 3")));
    QTest::mouseClick(page.seen<QPushButton>("takeOver"), Qt::LeftButton);
    page.line("Length").setText(QStringLiteral("2400 m"));
    page.scan("]C1019952100000101810LOT7A<GS>21R0042");
    CHECK(page.said().contains(QStringLiteral("nothing new")));
    CHECK_FALSE(page.seen<QPushButton>("takeOver"));
    page.scan("]C1019952100000101810LOT7A<GS>21R0043");
    CHECK(page.said().contains(QStringLiteral("another tag")));
    CHECK(page.line("Number on its label").text().isEmpty());
    CHECK(page.line("Width").text().isEmpty());
    CHECK(page.line("Length").text() == QStringLiteral("2400 m"));  // somebody changed it: it is theirs
    QTest::mouseClick(page.seen<QPushButton>("takeOver"), Qt::LeftButton);
    CHECK(page.line("Number on its label").text() == QStringLiteral("R0043"));
    // A bad scan leaves what was read; put away, nothing is left of it.
    page.scan("]C10109521000");
    CHECK(page.said().contains(QStringLiteral("The tag read before stays.")));
    CHECK(page.values().size() == 3);
    QTest::mouseClick(page.seen<QPushButton>("putAway"), Qt::LeftButton);
    CHECK(page.values().isEmpty());
    CHECK(page.line("Number on its label").text().isEmpty());
}

TEST_CASE("a tag that is typed is read when its line is left")
{
    Page page;
    QLineEdit& typed = page.line("Its tag, if you type it");
    typed.setFocus();
    QSignalSpy given(page.form, &RollForm::given);
    QTest::keyClicks(&typed, QStringLiteral("0199521000001018800103300250007603<GS>10LOT7A"));
    CHECK(page.values().isEmpty());
    QTest::keyClick(&typed, Qt::Key_Return);
    CHECK(page.values().size() == 7);
    CHECK(given.isEmpty());
    // Coming by without a change takes nothing away; emptied, the tag is gone.
    page.line("Mass").setFocus();
    typed.setFocus();
    page.line("Mass").setFocus();
    CHECK(page.values().size() == 7);
    typed.setFocus();
    typed.selectAll();
    QTest::keyClick(&typed, Qt::Key_Delete);
    page.line("Mass").setFocus();
    CHECK(page.values().isEmpty());
}

TEST_CASE("the tag of a roll at hand chooses that roll and is compared with what its file says")
{
    Page page({{QStringLiteral("R0041"), demoText("resources/demo/rolls/R0041.toml")},
               {QStringLiteral("R0042"), demoText("resources/demo/rolls/R0042.toml")}});
    auto* hand = page.seen<QComboBox>("atHand");
    page.scan("R0041");  // a label that bears the number alone
    CHECK(hand->currentText() == QStringLiteral("R0041"));
    page.scan("]C10199521000001018800103300540007603<GS>10Q29A<GS>21R0042");
    CHECK(page.findings().contains(QStringLiteral("The tag is that of roll R0042; entered is roll R0041.")));
    QTest::mouseClick(page.seen<QPushButton>("takeOver"), Qt::LeftButton);
    CHECK(page.seen<QPushButton>("takeOver"));
    CHECK_FALSE(page.form->toml());
    hand->setCurrentIndex(-1);
    QTest::mouseClick(page.seen<QPushButton>("takeOver"), Qt::LeftButton);
    CHECK(hand->currentText() == QStringLiteral("R0042"));
    const auto toml = page.form->toml();
    REQUIRE(toml);
    CHECK(*toml == demoText("resources/demo/rolls/R0042.toml"));
}

TEST_CASE("a step that wants the tag takes a scan from anywhere, and only a person enters it")
{
    applyTheme({});
    QWidget window;
    auto* column = new QVBoxLayout(&window);
    auto* card = new StepCard;
    auto* note = new QLineEdit;
    column->addWidget(card);
    column->addWidget(note);
    StepContent content = stepOf(procedure::StepKind::Scan, true);
    content.today = kToday;
    content.roll = QStringLiteral("R0042");
    card->show(content);
    window.resize(900, 700);
    window.show();
    QSignalSpy sent(card, &StepCard::command);
    ulong clock = 5000;
    const auto scan = [&](const std::string& text) {
        clock += 2000;
        for (const QChar sign : QString::fromStdString(text + '\r')) {
            QKeyEvent event(QEvent::KeyPress, sign == QLatin1Char('\r') ? int{Qt::Key_Return} : int{sign.unicode()},
                            Qt::NoModifier, QString(sign));
            event.setTimestamp(clock += 2);
            QCoreApplication::sendEvent(window.focusWidget() ? window.focusWidget() : &window, &event);
        }
    };
    note->setFocus();
    scan(scanned(kTag));
    CHECK(sent.isEmpty());
    CHECK(note->text().isEmpty());
    REQUIRE(child<TagTable>(*card, "tagTable"));
    CHECK(child<TagTable>(*card, "tagTable")->rows().rows.size() == 8);
    CHECK_FALSE(child<QPushButton>(*card, "takeOver"));
    QTest::mouseClick(child<QPushButton>(*card, "answer"), Qt::LeftButton);
    REQUIRE(answered(sent));
    CHECK(answered(sent)->entered == scanned(kTag));
    // The number alone is no wrong tag.
    sent.clear();
    note->setFocus();
    scan("R0042");
    CHECK_FALSE(child<QLabel>(*card, "tagSaid"));
    QTest::mouseClick(child<QPushButton>(*card, "answer"), Qt::LeftButton);
    REQUIRE(answered(sent));
    CHECK(answered(sent)->entered == "R0042");
}
