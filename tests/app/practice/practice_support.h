// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QLabel>
#include <QLineEdit>

#include "app/pages/practice/choose_lesson.h"
#include "app/pages/practice/handle_row.h"
#include "app/pages/practice/practice_page.h"
#include "app/sessions/practice_session.h"
#include "app/shell/main_window.h"
#include "app/widgets/controls.h"
#include "tests/app/said.h"
#include "tests/app/shop.h"

namespace taut::app::shop {

/// The window of the demo shop with somebody signed in, whose practice logbook lies in a folder of the test.
struct PracticeWindow {
    QTemporaryDir folder;
    MainWindow window;

    explicit PracticeWindow(const QSize& size = {1366, 740}) : window(prepared(folder))
    {
        window.setWindowState(Qt::WindowNoState);
        window.resize(size);
        window.show();
        window.activateWindow();
        until([&] { return session().isOpen() && !session().busy(); }, "the logbook is open");
        signIn(session(), "p-2");
    }
    ~PracticeWindow() { setPractisingLook(false); }
    static Session::Options prepared(const QTemporaryDir& folder)
    {
        qputenv("XDG_CONFIG_HOME", folder.path().toUtf8());
        qputenv("XDG_DATA_HOME", folder.path().toUtf8());
        applyTheme({});
        return optionsIn(folder);
    }
    [[nodiscard]] Session& session() { return *window.session(); }
    [[nodiscard]] PracticeSession& practice()
    {
        auto* one = window.findChild<PracticeSession*>();
        REQUIRE(one);
        return *one;
    }
    [[nodiscard]] const practice::World& world()
    {
        REQUIRE(practice().world());
        return *practice().world();
    }
    void door(Qt::Key key) { QTest::keyClick(&window, key, Qt::AltModifier); }
    void click(const char* name)
    {
        auto* button = visible<QAbstractButton>(window, name);
        INFO(name);
        REQUIRE(button);
        REQUIRE(button->isEnabled());
        QTest::mouseClick(button, Qt::LeftButton);
    }
    /// Begins the lesson that is chosen, as its file has it or in another mode, and stops its time.
    void begin(const char* scenario = "quiet_morning", std::optional<practice::Mode> mode = std::nullopt)
    {
        door(Qt::Key_4);
        auto* chooser = visible<ChooseLesson>(window);
        REQUIRE(chooser);
        chooser->open(session().options().resources / "demo/scenarios" / (std::string(scenario) + ".toml"));
        if (mode) {
            auto* list = visible<PickList>(window, "mode");
            REQUIRE(list);
            list->setCurrentIndex(list->findData(static_cast<int>(*mode)));
        }
        click("beginLesson");
        until([&] { return practice().runs()->run() != nullptr && !practice().runs()->busy(); }, "the run has begun");
        practice().setPace(Pace::Stopped);
    }
    /// The row of a control, brought into sight.
    [[nodiscard]] HandleRow& row(const std::string& what, const std::string& item = {})
    {
        HandleRow* found = nullptr;
        for (auto* one : window.findChildren<HandleRow*>()) {
            const practice::Deed& deed = one->handle().deed;
            if (deed.what == what && (item.empty() || deed.item == item)) found = one;
        }
        INFO(what << ' ' << item);
        REQUIRE(found);
        click(("place" + std::to_string(static_cast<int>(found->handle().at))).c_str());
        REQUIRE(found->isVisible());
        return *found;
    }
    /// Touches it as somebody does: a value is typed, a movement asked twice.
    void touch(const std::string& what, const std::string& item = {}, const char* to = nullptr,
               const char* which = "do")
    {
        HandleRow& one = row(what, item);
        if (to != nullptr) {
            auto* value = one.findChild<QLineEdit*>(QStringLiteral("value"));
            REQUIRE(value);
            value->clear();
            QTest::keyClicks(value, QString::fromUtf8(to));
        }
        auto* button = one.findChild<QAbstractButton*>(QString::fromLatin1(which));
        REQUIRE(button);
        button->click();
        if (one.handle().sort == practice::Handle::Sort::Motion && std::string(which) == "do") button->click();
    }
    /// As fast as it goes, until so much time went on, or something happened.
    void wait(double seconds)
    {
        const double until_ = world().time() + seconds;
        practice().setPace(Pace::Fastest);
        until([&] { return world().time() >= until_ || practice().happened() != nullptr; }, "time went on");
        practice().setPace(Pace::Stopped);
    }
    [[nodiscard]] QString said() const { return test::said(window); }
};

/// The north press from cold to idle, as resources/demo/actions/by_the_book.toml tells it, by the rows of the page.
inline void byTheBook(PracticeWindow& w)
{
    w.touch("main_disconnect");
    w.touch("air_supply");
    w.touch("emergency_stop", "stop_unwind", nullptr, "undo");
    for (const char* guard : {"infeed_guard", "station_1_guard", "station_2_guard", "outfeed_guard"})
        w.touch("guard", guard);
    w.touch("lamp_park", "1");
    w.touch("lamp_park", "2");
    w.touch("emergency_reset");
    w.touch("hold_stop");
    w.touch("roll_to_lift");
    w.touch("lift_pressure", {}, "1.22");
    w.touch("lift_up");
    w.wait(30);
    w.touch("hang_roll", {}, "0 mm");
    w.touch("mandrel_air", "unwind");
    w.touch("lift_down");
    w.touch("strip_wraps");
    w.wait(1);
    w.touch("lead_web");
    w.touch("guide_middle");
    w.touch("clamp_web");
    w.touch("cut_ends");
    w.touch("tape_joint");
    w.touch("trim_tails");
    w.touch("clamp_web", {}, nullptr, "undo");
    w.touch("mandrel_air", "rewind");
    w.touch("tape_core");
    w.touch("infeed_nip");
    w.touch("outfeed_nip");
    w.touch("guide_sensor", {}, "0");
    w.touch("unwind_setting", {}, "1.39 bar");
    w.touch("print_setting", {}, "0 %");
    w.touch("rewind_setting", {}, "0.45");
    w.touch("hold_stop", {}, nullptr, "undo");
    w.touch("hold_to_run");
    w.wait(20);
    w.touch("hold_to_run", {}, nullptr, "undo");
    w.touch("guide_automatic");
    w.touch("run");
}

}  // namespace taut::app::shop
