#pragma once

#include <QQuickItem>

#include <vector>

namespace lidlark::audit {

/// Items that are not painted as long as this lives; the page is laid out as before.
class Hidden
{
public:
    explicit Hidden(const std::vector<QQuickItem *> &items)
    {
        m_before.reserve(items.size());
        for (QQuickItem *item : items) {
            m_before.push_back({item, item->opacity()});
            item->setOpacity(0);
        }
    }
    ~Hidden()
    {
        for (const auto &[item, opacity] : m_before)
            item->setOpacity(opacity);
    }
    Hidden(const Hidden &) = delete;
    Hidden &operator=(const Hidden &) = delete;

private:
    struct Before {
        QQuickItem *item;
        qreal opacity;
    };
    std::vector<Before> m_before;
};

} // namespace lidlark::audit
