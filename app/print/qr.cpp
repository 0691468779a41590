// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/print/qr.h"

#include <qrencode.h>

#include <memory>

namespace taut::app::print {

QrModules qrModules(const std::string& text)
{
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> code(QRcode_encodeString8bit(text.c_str(), 0, QR_ECLEVEL_M),
                                                               &QRcode_free);
    QrModules modules;
    if (code == nullptr) return modules;
    modules.side = static_cast<std::size_t>(code->width);
    modules.dark.reserve(modules.side * modules.side);
    for (std::size_t i = 0; i < modules.side * modules.side; ++i) modules.dark.push_back((code->data[i] & 1U) != 0);
    return modules;
}

}  // namespace taut::app::print
