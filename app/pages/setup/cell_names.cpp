// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/pages/setup/cell_names.h"

#include <charconv>

#include "app/pages/setup/key_table.h"
#include "app/text/words.h"

namespace taut::app {

bool rowsGoDown(const inputs::FormGroup& group) { return group.list && !group.nested; }

QString keyName(const std::string& key)
{
    if (key == "at[0]") return KeyTable::tr("x");
    if (key == "at[1]") return KeyTable::tr("y");
    return dataText(key);
}

QString itemName(const inputs::FormGroup& group, std::size_t item)
{
    if (!group.list) return KeyTable::tr("says");
    const bool named =
        item < group.items.size() && !group.items[item].empty() && !group.items[item].front().said.empty();
    return named ? dataText(group.items[item].front().said) : QString::number(item + 1);
}

QString placeName(const inputs::Form& form, const std::string& path)
{
    const inputs::FormGroup* in = nullptr;
    std::string table;
    for (const inputs::FormGroup& one : form.groups) {
        const std::string own = inputs::pathText(one.path);
        const bool fits =
            path.rfind(own, 0) == 0 && path.size() > own.size() && path[own.size()] == (one.list ? '[' : '.');
        if (!fits || own.size() <= table.size()) continue;
        in = &one;
        table = own;
    }
    if (in == nullptr) return dataText(path);
    QStringList place{dataText(in->name)};
    std::string rest = path.substr(table.size());
    if (in->list) {
        std::size_t item = 0;
        std::from_chars(rest.data() + 1, rest.data() + rest.size(), item);
        place << (rowsGoDown(*in) ? KeyTable::tr("row %1").arg(item + 1) : itemName(*in, item));
        rest.erase(0, std::min(rest.find(']'), rest.size() - 1) + 1);
    }
    if (!rest.empty() && rest.front() == '.') rest.erase(0, 1);
    if (!rest.empty()) place << keyName(rest);
    return place.join(QStringLiteral(", "));
}

}  // namespace taut::app
