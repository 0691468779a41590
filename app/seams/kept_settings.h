// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>

#include <QSettings>
#include <QUrl>

namespace taut::app {

/// What this PC keeps for itself: how the screen looks, when it locks. Nothing of the record.
[[nodiscard]] inline QSettings keptSettings()
{
    return QSettings(QStringLiteral("tautweb"), QStringLiteral("tautweb"));
}

/// In which folder the mirror of this logbook is kept, "" = none is. Beside the logbook's name: the demo is not to be
/// mirrored where the shop is, and a logbook that is restored on another PC does not look for a folder there.
[[nodiscard]] inline QString mirrorFolderKey(const std::filesystem::path& logbook)
{
    const QString name = QString::fromStdString(std::filesystem::absolute(logbook).lexically_normal().string());
    return QStringLiteral("mirror_folder/") + QString::fromLatin1(QUrl::toPercentEncoding(name));
}
[[nodiscard]] inline std::filesystem::path keptMirrorFolder(const std::filesystem::path& logbook)
{
    return keptSettings().value(mirrorFolderKey(logbook)).toString().toStdString();
}
inline void keepMirrorFolder(const std::filesystem::path& logbook, const QString& folder)
{
    QSettings settings = keptSettings();
    folder.isEmpty() ? settings.remove(mirrorFolderKey(logbook)) : settings.setValue(mirrorFolderKey(logbook), folder);
}

}  // namespace taut::app
