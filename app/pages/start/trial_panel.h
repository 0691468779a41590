// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>

#include "core/report/report.h"
#include "core/targets/what_if.h"

class QScrollArea;

namespace taut::app {

class RowList;
class ChartWidget;

/// What if: other values are tried, and the targets move at once. Nothing is stored, nothing begins from here, and the
/// band across the top says all the time that what is shown is not the real roll.
class TrialPanel : public QWidget {
    Q_OBJECT

public:
    using Substrates = std::vector<std::shared_ptr<const inputs::Substrate>>;
    explicit TrialPanel(QWidget* parent = nullptr);
    /// Begins at the real values.
    void begin(targets::Tried real, const Substrates& substrates);
    /// The targets as they are shown.
    [[nodiscard]] const targets::Targets& targets() const { return m_tried; }
    /// Writes the charts as a picture; what went wrong is said by `troubled`.
    void writePicture(const QString& file);

public slots:
    /// Puts the real values into every field.
    void reset();

signals:
    void left();  ///< back to the real roll
    /// What was typed cannot be tried.
    void troubled(const taut::Finding& finding);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    /// A value that can be tried, under its name and the real one.
    struct Field {
        QWidget* cell = nullptr;
        QLabel *name = nullptr, *wrong = nullptr;
        QLineEdit* edit = nullptr;
        QString title, real;
        std::optional<Quantity> value;  ///< the real one
    };
    QWidget* buildBand();
    Field addField(const QString& title);
    void fillField(Field& field, const std::optional<Quantity>& real);
    template <Kind K>
    inputs::Maybe<K> tried(Field& field, Result<Entry<K>> (*read)(std::string_view));
    void compute();
    void showTargets();
    void showCharts();
    void arrange();
    void choosePicture();
    UnitSystem m_system{};
    targets::Tried m_base;  ///< the real values
    Substrates m_substrates;
    targets::Targets m_real, m_tried;
    std::vector<report::Chart> m_drawn;
    bool m_filling = false;
    Field m_diameter, m_width, m_speed, m_substrate;
    QComboBox* m_material;
    QLabel* m_noCharts;
    QStringList m_troubles;
    RowList* m_list;
    QPushButton *m_again, *m_picture;
    QBoxLayout* m_bandRow;
    QGridLayout *m_fields, *m_charts;
    QScrollArea *m_fieldRoom, *m_chartRoom;
    std::vector<QWidget*> m_chartCells;
    int m_columns = 0, m_chartColumns = 0;
};

}  // namespace taut::app
