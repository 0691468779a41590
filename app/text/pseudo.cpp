// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/text/pseudo.h"

#include <memory>

#include <QCoreApplication>
#include <QTranslator>

namespace taut::app {

namespace {

constexpr QChar kOpen(0x27E6), kClose(0x27E7);

class Bracketer final : public QTranslator {
public:
    [[nodiscard]] QString translate(const char*, const char* source, const char*, int) const override
    {
        return kOpen + QString::fromUtf8(source) + kClose;
    }
    [[nodiscard]] bool isEmpty() const override { return false; }
};

std::unique_ptr<Bracketer>& bracketer()
{
    static std::unique_ptr<Bracketer> one;
    return one;
}

}  // namespace

void setPseudo(bool on)
{
    if (on == isPseudo()) return;
    if (on) {
        bracketer() = std::make_unique<Bracketer>();
        QCoreApplication::installTranslator(bracketer().get());
    } else {
        QCoreApplication::removeTranslator(bracketer().get());
        bracketer().reset();
    }
}

bool isPseudo() { return bracketer() != nullptr; }

QString pseudoWrapped(const QString& text) { return isPseudo() ? kOpen + text + kClose : text; }

QString outsideBrackets(const QString& text)
{
    QString outside;
    int depth = 0;
    for (const QChar c : text) {
        if (c == kOpen) ++depth;
        if (depth == 0 && c.isLetter()) outside += c;
        if (c == kClose && depth > 0) --depth;
    }
    return outside;
}

}  // namespace taut::app
