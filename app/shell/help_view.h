// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <vector>

#include <QTextBrowser>
#include <QWidget>

#include "app/seams/help_texts.h"

class QLineEdit;
class QPushButton;

namespace taut::app {

class RowList;

/// Shows a help text with our own drawings, made anew for the colours and the type that are chosen.
class HelpBrowser : public QTextBrowser {
    Q_OBJECT

public:
    explicit HelpBrowser(QWidget* parent = nullptr);
    /// How wide a line of it is set: no wider than one reads well.
    [[nodiscard]] int lineWidth() const;
    [[nodiscard]] QVariant loadResource(int type, const QUrl& name) override;

signals:
    /// A link to another page was followed.
    void pageWanted(const QString& id);
};

/// The help, as a page of the window: all pages on the left with a line to find in them, the chosen one on the right.
/// Nothing waits for it; Esc leads back.
class HelpView : public QWidget {
    Q_OBJECT

public:
    explicit HelpView(const std::filesystem::path& resources, QWidget* parent = nullptr);
    /// Shows this page; the first where there is none of that name.
    void open(const QString& id);
    /// The page that is shown.
    [[nodiscard]] QString page() const { return m_page; }
    /// To where words are looked for.
    void find();

signals:
    void left();
    void tourWanted();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void fill();
    void render();
    void markWords();
    std::vector<HelpText> m_texts;
    QString m_page;
    QLineEdit* m_find;
    RowList* m_list;
    HelpBrowser* m_browser;
    QPushButton *m_tour, *m_back;
};

}  // namespace taut::app
