// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <QImage>
#include <QWidget>

#include "core/base/result.h"
#include "core/run/attachment.h"

class QLabel;
class QPlainTextEdit;
class QPushButton;
class QStackedWidget;

namespace taut::app {

class FindingStrip;
class PictureArea;
class RowList;

/// The pictures and files of a run, with the chosen one as it can be shown here: a picture or a text. Anything else is
/// saved and opened elsewhere; nothing is ever started from here.
class AttachmentPanel : public QWidget {
    Q_OBJECT

public:
    /// The bytes by their hash, out of the store; nullopt = it has none of that hash.
    using Load = std::function<Result<std::optional<std::string>>(const std::string& sha256)>;
    explicit AttachmentPanel(QWidget* parent = nullptr);
    /// Fills the panel; where more may be attached it says to whom that is shown.
    void show(const run::Run& run, Load load, bool mayAttach);
    /// Says why it was not attached.
    void refuse(const Finding& finding);
    /// While it is being written nothing can be touched.
    void setBusy(bool busy);
    /// Where whoever comes to it begins.
    [[nodiscard]] QWidget* first() const;
    /// Asked for the file that is attached next, and for the name under which one is saved; else the usual dialogs.
    std::function<QString()> chooseFile;
    std::function<QString(const QString& name)> chooseName;

signals:
    void chosen(const QString& file);  ///< to be attached
    void closed();                     ///< Back, or Esc

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void choose();
    void save();
    void look();
    void say(const QString& sentence);
    [[nodiscard]] const run::Attachment* current() const;
    std::vector<run::Attachment> m_all;
    Load m_load;
    UnitSystem m_system{};
    std::string m_run;
    std::string m_bytes;  // of the one that is looked at
    bool m_mayAttach = false, m_busy = false;
    QLabel *m_title, *m_text, *m_said;
    RowList* m_list;
    QStackedWidget* m_shown;
    PictureArea* m_picture;
    QPlainTextEdit* m_words;
    QLabel* m_none;
    FindingStrip* m_finding;
    QPushButton *m_add, *m_save, *m_back;
};

/// A picture as it was taken, no larger than is needed on a screen; null when it cannot be read as its type, or claims
/// to be of a size that nobody's camera has.
[[nodiscard]] QImage pictureFrom(const std::string& bytes, const std::string& type);

}  // namespace taut::app
