// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/print/strip.h"

#include <algorithm>

namespace taut::app::print {

namespace {

/// Where a stack has got to.
struct Reader {
    const Stack* stack = nullptr;
    std::size_t next = 0;
    [[nodiscard]] bool done() const { return next == stack->strips.size(); }
};

/// How many strips from `first` must stay together: those that want the next one, and that one.
std::size_t together(const std::vector<Strip>& strips, std::size_t first)
{
    std::size_t last = first;
    while (last + 1 < strips.size() && strips[last].withNext) ++last;
    return last + 1 - first;
}

double heightOf(const std::vector<Strip>& strips, std::size_t first, std::size_t count)
{
    double height = 0;
    for (std::size_t i = first; i < first + count; ++i) height += strips[i].height;
    return height;
}

class Filler {
public:
    Filler(double height, const std::function<void(const QString&)>& tooTall) : m_height(height), m_tooTall(tooTall)
    {
        m_pages.emplace_back();
    }

    /// Places what fits of one stack from y on; gives the y below it.
    double fill(Reader& reader, double y, bool freshPage)
    {
        const std::vector<Strip>& strips = reader.stack->strips;
        bool first = true;
        while (!reader.done()) {
            const Strip& strip = strips[reader.next];
            const double head = first && reader.next > 0 && strip.head ? strip.head->height : 0;
            const std::size_t count = together(strips, reader.next);
            double needed = head + heightOf(strips, reader.next, count);
            std::size_t taken = count;
            if (y + needed > m_height) {
                if (!first || !freshPage) break;
                taken = 1;  // a group that fits on no page is divided after all
                needed = head + strip.height;
                if (needed > m_height) m_tooTall(strip.name);
            }
            if (head > 0) {
                m_pages.back().push_back({QPointF(reader.stack->x, y), strip.head.get()});
                y += head;
            }
            for (std::size_t i = 0; i < taken; ++i) {
                m_pages.back().push_back({QPointF(reader.stack->x, y), &strips[reader.next]});
                y += strips[reader.next].height;
                ++reader.next;
            }
            first = false;
        }
        return y;
    }

    void newPage() { m_pages.emplace_back(); }
    [[nodiscard]] std::vector<Page> take() { return std::move(m_pages); }
    [[nodiscard]] bool pageEmpty() const { return m_pages.back().empty(); }

private:
    double m_height;
    const std::function<void(const QString&)>& m_tooTall;
    std::vector<Page> m_pages;
};

}  // namespace

std::vector<Page> fillPages(const std::vector<Band>& bands, double height, double gap,
                            const std::function<void(const QString&)>& tooTall)
{
    Filler filler(height, tooTall);
    double y = 0;
    for (const Band& band : bands) {
        if (band.newPage && !filler.pageEmpty()) {
            filler.newPage();
            y = 0;
        }
        std::vector<Reader> readers;
        for (const Stack& stack : band.stacks) readers.push_back({&stack, 0});
        for (;;) {
            double lowest = y;
            const bool fresh = filler.pageEmpty();
            for (Reader& reader : readers) lowest = std::max(lowest, filler.fill(reader, y, fresh));
            const bool done = std::all_of(readers.begin(), readers.end(), [](const Reader& r) { return r.done(); });
            y = lowest;
            if (done) break;
            filler.newPage();
            y = 0;
        }
        if (!filler.pageEmpty()) y += gap;
    }
    return filler.take();
}

}  // namespace taut::app::print
