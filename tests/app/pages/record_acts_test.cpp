// SPDX-License-Identifier: GPL-3.0-or-later
// What is said of a signed run in the window: accepted, sent back, corrected, made void; by mouse and by keyboard.
#include <catch2/catch.hpp>

#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>

#include "app/pages/history/history_page.h"
#include "app/widgets/prose_field.h"
#include "app/widgets/row_list.h"
#include "core/base/file.h"
#include "tests/app/pages/signed_run.h"
#include "tests/app/said.h"
#include "tests/app/shop.h"

using namespace taut;
using namespace taut::app;
using namespace taut::app::shop;

namespace {

enum class Hand { Mouse, Keys };

constexpr const char* kDiameter = "threading.lift.diameter";
constexpr const char* kPassphrase = "Passphrase, or badge";
constexpr const char* kSaid = "What you say of it";
constexpr const char* kWhyVoid = "Why it is void";

/// A short run that was given up and signed, and the history that shows it.
struct Acts {
    QTemporaryDir folder;
    Session session;
    HistoryPage page;
    Hand hand;
    QString run;

    explicit Acts(Hand how = Hand::Mouse, const char* by = "p-3")
        : session(signedRun(folder, answersBy(folder, by))),
          page(&session),
          hand(how)
    {
        open(session);
        page.resize(1342, 640);
        page.show();
        page.activateWindow();
        settled(page);
        run = list()->chosen();
        REQUIRE_FALSE(run.isEmpty());
    }
    static std::string answersBy(const QTemporaryDir& folder, const std::string& who)
    {
        const auto resources = resourcesFolder();
        REQUIRE(resources);
        std::string text = readFile(*resources / "demo" / "answers" / "abandoned.toml").value();
        const std::string usual = "by = \"p-3\"";
        REQUIRE(text.find(usual) != std::string::npos);
        text.replace(text.find(usual), usual.size(), "by = \"" + who + "\"");
        const std::string file = folder.path().toStdString() + "/told.toml";
        REQUIRE(writeFile(file, text));
        return file;
    }
    [[nodiscard]] RowList* list() const { return visible<RowList>(page); }
    [[nodiscard]] QString row() const { return list()->count() == 0 ? QString() : list()->item(0)->text(); }
    [[nodiscard]] QString said() const { return app::test::said(page); }
    [[nodiscard]] bool says(const char* words) const { return said().contains(QString::fromUtf8(words)); }
    template <class W>
    [[nodiscard]] W* at(const char* name) const
    {
        W* w = called<W>(page, name);
        INFO("nothing in sight is called " << name);
        REQUIRE(w);
        return w;
    }
    void comes(const std::string& id)
    {
        signIn(session, id);
        settled(page);
    }
    /// By Tab alone, as somebody without a mouse gets there.
    void tabTo(QWidget* wanted)
    {
        for (int i = 0; i < 60 && page.focusWidget() != wanted; ++i)
            QTest::keyClick(page.focusWidget() ? page.focusWidget() : &page, Qt::Key_Tab);
        INFO("the Tab key never comes to " << wanted->accessibleName().toStdString());
        REQUIRE(page.focusWidget() == wanted);
    }
    void press(const char* name)
    {
        auto* button = at<QAbstractButton>(name);
        REQUIRE(button->isEnabled());
        if (hand == Hand::Mouse) return QTest::mouseClick(button, Qt::LeftButton);
        tabTo(button);
        QTest::keyClick(button, Qt::Key_Space);
    }
    void choose(const char* name, const char* word)
    {
        auto* box = at<QComboBox>(name);
        const int wanted = box->findData(QString::fromLatin1(word));
        REQUIRE(wanted >= 0);
        if (hand == Hand::Mouse) {
            QTest::mouseClick(box, Qt::LeftButton);
            until([&] { return box->view()->isVisible(); }, "the list is open");
            QTest::qWait(QApplication::doubleClickInterval() + 50);  // a click too soon is the end of the first one
            const QModelIndex index = box->model()->index(wanted, 0);
            box->view()->scrollTo(index);
            QTest::mouseClick(box->view()->viewport(), Qt::LeftButton, {}, box->view()->visualRect(index).center());
        } else {
            tabTo(box);
            const auto key = box->currentIndex() > wanted ? Qt::Key_Up : Qt::Key_Down;
            for (int i = 0; i < box->count() && box->currentIndex() != wanted; ++i) QTest::keyClick(box, key);
        }
        until([&] { return box->currentIndex() == wanted; }, "it is chosen");
    }
    void type(const char* name, const QString& words)
    {
        auto* field = at<QWidget>(name);
        if (hand == Hand::Mouse)
            QTest::mouseClick(field, Qt::LeftButton);
        else
            tabTo(field);
        REQUIRE(QMetaObject::invokeMethod(field, "selectAll"));
        QTest::keyClicks(field, words);
    }
    /// Types the passphrase and signs, by the button or by Enter; waits until it was written or refused.
    void sign(const QString& passphrase, const char* button)
    {
        type(kPassphrase, passphrase);
        if (hand == Hand::Mouse)
            QTest::mouseClick(at<QAbstractButton>(button), Qt::LeftButton);
        else
            QTest::keyClick(page.focusWidget(), Qt::Key_Return);
        until([&] { return !session.busy(); }, "it is written or refused");
        settled(page);
    }
    /// Which runs the list shows.
    int listed(const char* which)
    {
        auto* box = at<QComboBox>("Which runs");
        box->setCurrentIndex(box->findData(QString::fromLatin1(which)));
        settled(page);
        const int count = list()->count();
        box->setCurrentIndex(0);
        settled(page);
        return count;
    }
    /// Everything that can be done now, by its words.
    [[nodiscard]] std::string offered() const
    {
        QStringList names;
        for (const char* name : {"Review", "Correct", "Make void"})
            if (at<QAbstractButton>(name)->isEnabled()) names << QString::fromLatin1(name);
        return names.join(QStringLiteral(", ")).toStdString();
    }
    void correctDiameter()
    {
        press("Correct");
        choose("What is wrong", kDiameter);
        type("What it should be", QStringLiteral("20.15 in"));
        type("Why it is corrected", QStringLiteral("read from the side"));
        sign(passphraseOf(session, "p-3"), "Sign the correction");
    }
};

}  // namespace

TEST_CASE("a supervisor sends a run back, and nothing typed is lost when it is refused")
{
    Acts a(GENERATE(Hand::Mouse, Hand::Keys));
    CHECK(a.listed("wants_review") == 1);
    a.comes("p-1");
    CHECK(a.offered() == "Review, Correct, Make void");
    a.press("Review");
    CHECK(a.page.focusWidget() == a.at<QComboBox>(kSaid));
    a.choose(kSaid, "sent_back");
    a.sign(passphraseOf(a.session, "p-1"), "Sign the review");
    CHECK(a.says("Sending a run back needs a reason."));
    CHECK(a.at<QComboBox>(kSaid)->currentData().toString() == QStringLiteral("sent_back"));
    CHECK(a.at<QLineEdit>(kPassphrase)->text().isEmpty());
    a.type("Remark", QStringLiteral("the core was crushed before"));
    a.sign(QStringLiteral("nine slow barges at dawn"), "Sign the review");
    CHECK(a.says("does not open this person's key"));
    CHECK(a.at<ProseField>("Remark")->text() == QStringLiteral("the core was crushed before"));
    CHECK(a.page.focusWidget() == a.at<QLineEdit>(kPassphrase));
    CHECK_FALSE(a.row().contains(QStringLiteral("sent back")));

    a.sign(passphraseOf(a.session, "p-1"), "Sign the review");
    CHECK(a.row().contains(QStringLiteral("sent back")));
    CHECK(a.said().contains(QStringLiteral("Run %1: sent back.").arg(a.run)));
    CHECK(a.listed("sent_back") == 1);
    CHECK(a.listed("wants_review") == 0);
    // Accepted it is only after a correction; that is said before anybody types.
    CHECK(a.offered() == "Correct, Make void");
    CHECK(a.says("was sent back and has not been corrected since"));
}

TEST_CASE("a supervisor accepts a run once, and may still send it back")
{
    Acts a(GENERATE(Hand::Mouse, Hand::Keys));
    a.comes("p-1");
    a.press("Review");
    a.sign(passphraseOf(a.session, "p-1"), "Sign the review");
    CHECK(a.says("\"What you say of it\" is still empty."));
    a.choose(kSaid, "accepted");
    a.sign(passphraseOf(a.session, "p-1"), "Sign the review");
    CHECK(a.row().contains(QStringLiteral("accepted by Matteo Quill")));
    CHECK(a.said().contains(QStringLiteral("Run %1: accepted by Matteo Quill.").arg(a.run)));
    CHECK(a.page.isAncestorOf(QApplication::focusWidget()));
    CHECK(a.listed("wants_review") == 0);

    a.press("Review");
    a.choose(kSaid, "accepted");
    a.type("Remark", QStringLiteral("once more"));
    a.sign(passphraseOf(a.session, "p-1"), "Sign the review");
    CHECK(a.says("was reviewed by Matteo Quill, and nothing was added since"));
    CHECK(a.at<ProseField>("Remark")->text() == QStringLiteral("once more"));
    a.choose(kSaid, "sent_back");
    a.sign(passphraseOf(a.session, "p-1"), "Sign the review");
    CHECK(a.row().contains(QStringLiteral("sent back")));
}

TEST_CASE("a step is corrected with what stood beside it, and the run is reviewed anew")
{
    Acts a(GENERATE(Hand::Mouse, Hand::Keys));
    a.comes("p-1");
    a.press("Review");
    a.choose(kSaid, "accepted");
    a.sign(passphraseOf(a.session, "p-1"), "Sign the review");
    a.comes("p-3");
    CHECK(a.offered() == "Correct");
    CHECK(a.says("A supervisor reviews a run and makes it void."));
    a.press("Correct");
    auto* steps = a.at<QComboBox>("What is wrong");
    const int at = steps->findData(QString::fromLatin1(kDiameter));
    REQUIRE(at >= 0);
    CHECK(steps->itemText(at).contains(QStringLiteral("stands: 20.05 in")));
    a.choose("What is wrong", kDiameter);
    a.type("What it should be", QStringLiteral("20 psi"));
    a.sign(passphraseOf(a.session, "p-3"), "Sign the correction");
    CHECK(a.says("\"Why it is corrected\" is still empty."));
    a.type("Why it is corrected", QStringLiteral("read from the side"));
    a.sign(passphraseOf(a.session, "p-3"), "Sign the correction");
    // A pressure is no diameter.
    CHECK(a.says("psi"));
    CHECK(a.row().contains(QStringLiteral("accepted by")));
    CHECK(a.at<ProseField>("Why it is corrected")->text() == QStringLiteral("read from the side"));
    CHECK(steps->currentIndex() == at);
    a.type("What it should be", QStringLiteral("20.05 in"));
    a.sign(passphraseOf(a.session, "p-3"), "Sign the correction");
    CHECK(a.says("This step says so already: 20.05 in."));
    a.type("What it should be", QStringLiteral("20.15 in"));
    a.sign(QStringLiteral("four gulls over the mill"), "Sign the correction");
    CHECK(a.says("does not open this person's key"));
    CHECK(a.at<QLineEdit>("What it should be")->text() == QStringLiteral("20.15 in"));
    a.sign(passphraseOf(a.session, "p-3"), "Sign the correction");
    CHECK(a.row().contains(QStringLiteral("corrected, to be reviewed")));
    CHECK(a.listed("wants_review") == 1);
    // What stands now is what it was corrected to.
    a.press("Correct");
    steps = a.at<QComboBox>("What is wrong");
    CHECK(
        steps->itemText(steps->findData(QString::fromLatin1(kDiameter))).contains(QStringLiteral("stands: 20.15 in")));
}

TEST_CASE("a run is made void with a reason, and then nothing more is said of it")
{
    Acts a(GENERATE(Hand::Mouse, Hand::Keys));
    a.comes("p-5");
    a.press("Make void");
    a.sign(passphraseOf(a.session, "p-5"), "Make it void");
    CHECK(a.says("\"Why it is void\" is still empty."));
    a.type(kWhyVoid, QStringLiteral("."));
    a.sign(passphraseOf(a.session, "p-5"), "Make it void");
    CHECK(a.says("Voiding a run needs a reason."));
    a.type(kWhyVoid, QStringLiteral("the wrong press"));
    a.sign(QStringLiteral("frost on the new bridge"), "Make it void");
    CHECK(a.says("does not open this person's key"));
    CHECK(a.at<ProseField>(kWhyVoid)->text() == QStringLiteral("the wrong press"));
    a.sign(passphraseOf(a.session, "p-5"), "Make it void");
    CHECK(a.row().contains(QStringLiteral("VOID")));
    CHECK(a.listed("void") == 1);
    CHECK(a.listed("wants_review") == 0);
    CHECK(a.offered().empty());
    CHECK(a.says("is void: nothing can be added to it"));
}

TEST_CASE("nobody judges their own run, and that is said before anything is typed")
{
    Acts a(Hand::Mouse, "p-1");
    CHECK(a.offered().empty());
    CHECK(a.says("Sign in to review or correct this run."));
    a.comes("p-1");
    CHECK(a.offered() == "Correct");
    CHECK(a.said().contains(QStringLiteral("Matteo Quill had run %1 in hand or sealed it.").arg(a.run)));
    // Asked all the same, the record refuses it.
    QSignalSpy refused(&a.session, &Session::refused);
    a.session.review(a.run, {true, {}}, passphraseOf(a.session, "p-1"));
    until([&] { return !a.session.busy(); }, "refused");
    REQUIRE(refused.size() == 1);
    CHECK(refused.at(0).at(0).value<Finding>().code == "gate.own_run");
    a.comes("p-5");
    CHECK(a.offered() == "Review, Correct, Make void");
}

TEST_CASE("whoever corrected a run does not accept it")
{
    Acts a;
    a.comes("p-5");
    a.press("Correct");
    a.choose("What is wrong", "");
    a.sign(passphraseOf(a.session, "p-5"), "Sign the correction");
    CHECK(a.says("\"Why it is corrected\" is still empty."));
    a.type("Why it is corrected", QStringLiteral("to be complete"));
    a.sign(passphraseOf(a.session, "p-5"), "Sign the correction");
    CHECK(a.says("names no step and remarks nothing"));
    a.type("Remark", QStringLiteral("the roll went back to the store"));
    a.sign(passphraseOf(a.session, "p-5"), "Sign the correction");
    CHECK(a.row().contains(QStringLiteral("corrected, to be reviewed")));
    CHECK(a.offered() == "Correct, Make void");
    CHECK(a.says("has corrected run"));
}

TEST_CASE("whoever is out of service says nothing of a run any more, though still signed in")
{
    Acts a;
    a.comes("p-5");
    a.press("Review");
    a.choose(kSaid, "accepted");
    a.type("Remark", QStringLiteral("looked through"));
    people::PersonRecord self;
    for (const people::PersonRecord& one : a.session.people())
        if (one.id.value == "p-5") self = one;
    self.active = false;
    a.session.changePerson(self, passphraseOf(a.session, "p-5"));
    until([&] { return !a.session.busy(); }, "out of service");
    a.sign(passphraseOf(a.session, "p-5"), "Sign the review");
    CHECK(a.says("does not open this person's key"));
    CHECK(a.at<ProseField>("Remark")->text() == QStringLiteral("looked through"));
    CHECK_FALSE(a.row().contains(QStringLiteral("accepted")));
    QTest::keyClick(a.page.focusWidget(), Qt::Key_Escape);
    CHECK(a.offered().empty());
    CHECK(a.says("Odalys Fenwright is out of service and signs nothing."));
}

TEST_CASE("half a correction waits for the person who locked the screen, and is gone for anybody else")
{
    Acts a(Hand::Keys);
    a.comes("p-3");
    a.press("Correct");
    a.choose("What is wrong", kDiameter);
    a.type("What it should be", QStringLiteral("20.15 in"));
    a.type(kPassphrase, QStringLiteral("three gulls"));
    a.session.signOut();
    until([&] { return !a.session.actor() && !a.session.busy(); }, "locked");
    CHECK(called<QLineEdit>(a.page, "What it should be") == nullptr);
    a.comes("p-3");
    CHECK(a.at<QLineEdit>("What it should be")->text() == QStringLiteral("20.15 in"));
    CHECK(a.at<QLineEdit>(kPassphrase)->text().isEmpty());
    a.type("Why it is corrected", QStringLiteral("read from the side"));
    a.sign(passphraseOf(a.session, "p-3"), "Sign the correction");
    CHECK(a.row().contains(QStringLiteral("corrected, to be reviewed")));
    a.press("Correct");
    a.type("Remark", QStringLiteral("half a"));
    a.session.signOut();
    until([&] { return !a.session.actor() && !a.session.busy(); }, "locked");
    a.comes("p-1");
    CHECK(called<ProseField>(a.page, "Remark") == nullptr);
    a.comes("p-3");
    CHECK(called<ProseField>(a.page, "Remark") == nullptr);
}

TEST_CASE("a list that shows runs to be reviewed gives up the one that was, and says what became of it")
{
    Acts a;
    a.comes("p-3");
    a.correctDiameter();
    auto* which = a.at<QComboBox>("Which runs");
    which->setCurrentIndex(which->findData(QStringLiteral("wants_review")));
    settled(a.page);
    CHECK(which->currentText() == QStringLiteral("To be reviewed: 1"));
    a.comes("p-1");
    a.press("Review");
    a.choose(kSaid, "accepted");
    a.sign(passphraseOf(a.session, "p-1"), "Sign the review");
    CHECK(a.list()->count() == 0);
    CHECK(which->currentText() == QStringLiteral("To be reviewed: 0"));
    CHECK(a.said().contains(QStringLiteral("Run %1: accepted by Matteo Quill.").arg(a.run)));
    which->setCurrentIndex(which->findData(QStringLiteral("void")));
    settled(a.page);
    CHECK(a.says("No run of this logbook stands so just now."));
}
