// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <filesystem>

#include <QSettings>
#include <QUrl>

namespace taut::app {

/// What this PC keeps for itself: how the screen looks, when it locks. Nothing of the record.
[[nodiscard]] inline QSettings keptSettings()
{
    return QSettings(QStringLiteral("tautweb"), QStringLiteral("tautweb"));
}

/// Under which key this PC keeps something for one person.
[[nodiscard]] inline QString personalKey(const std::string& person, const char* what)
{
    return QStringLiteral("people/%1/%2")
        .arg(QString::fromLatin1(QUrl::toPercentEncoding(QString::fromStdString(person))), QLatin1String(what));
}

/// After how many minutes without a touch this PC locks itself: what there is to choose from, and what was chosen.
inline constexpr std::array kIdleChoices{2, 5, 10, 20, 60};
[[nodiscard]] inline int idleMinutes()
{
    constexpr int kUsual = 10;
    const int kept = keptSettings().value(QStringLiteral("idle_minutes"), kUsual).toInt();
    return std::find(kIdleChoices.begin(), kIdleChoices.end(), kept) != kIdleChoices.end() ? kept : kUsual;
}
inline void keepIdleMinutes(int minutes) { keptSettings().setValue(QStringLiteral("idle_minutes"), minutes); }

/// What this PC keeps of a logbook in a folder of somebody's choice.
enum class Kept : std::uint8_t { Mirror, Copies };

/// Under which key the folder stands. Beside the logbook's name: the demo is not to be mirrored where the shop is, and
/// a logbook that is restored on another PC does not look for a folder there.
[[nodiscard]] inline QString keptFolderKey(Kept what, const std::filesystem::path& logbook)
{
    const QString name = QString::fromStdString(std::filesystem::absolute(logbook).lexically_normal().string());
    return (what == Kept::Mirror ? QStringLiteral("mirror_folder/") : QStringLiteral("weekly_copy_folder/")) +
           QString::fromLatin1(QUrl::toPercentEncoding(name));
}
/// "" = none is kept.
[[nodiscard]] inline std::filesystem::path keptFolder(Kept what, const std::filesystem::path& logbook)
{
    return keptSettings().value(keptFolderKey(what, logbook)).toString().toStdString();
}
inline void keepFolder(Kept what, const std::filesystem::path& logbook, const QString& folder)
{
    QSettings settings = keptSettings();
    const QString key = keptFolderKey(what, logbook);
    folder.isEmpty() ? settings.remove(key) : settings.setValue(key, folder);
}

}  // namespace taut::app
