#include "tests/states/trail.h"

#include <algorithm>

namespace lidlark::test {

Address addressOf(const QQuickItem *item)
{
    Address address;
    for (const QQuickItem *parent = item->parentItem(); parent != nullptr;
         item = parent, parent = item->parentItem())
        address.append(
            static_cast<int>(parent->childItems().indexOf(const_cast<QQuickItem *>(item))));
    std::reverse(address.begin(), address.end());
    return address;
}

QQuickItem *itemAt(QQuickItem *root, const Address &address)
{
    QQuickItem *item = root;
    for (const int index : address) {
        const QList<QQuickItem *> children = item->childItems();
        if (index < 0 || index >= children.size())
            return nullptr;
        item = children[index];
    }
    return item->isVisible() ? item : nullptr;
}

void Trail::follow()
{
    m_follows = true;
    m_next = 0;
}

Address Trail::read()
{
    return m_next < m_addresses.size() ? m_addresses[m_next++] : Address();
}

} // namespace lidlark::test
