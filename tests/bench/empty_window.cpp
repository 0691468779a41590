// SPDX-License-Identifier: GPL-3.0-or-later
// The least that a Qt program with a window can be: the floor of window_bench.
#include <QApplication>
#include <QWidget>

int main(int argc, char** argv)
{
    QApplication application(argc, argv);
    QWidget window;
    window.resize(1280, 700);
    window.setWindowState(Qt::WindowMaximized);
    window.show();
    return QApplication::exec();
}
