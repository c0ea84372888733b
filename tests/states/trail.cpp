#include "tests/states/trail.h"

namespace lidlark::test {

Address addressOf(const QQuickItem *item)
{
    Address address;
    for (const QQuickItem *parent = item->parentItem(); parent != nullptr;
         item = parent, parent = item->parentItem()) {
        if (!item->objectName().isEmpty())
            address.names.prepend(item->objectName());
        else if (address.names.isEmpty())
            address.places.prepend(
                static_cast<int>(parent->childItems().indexOf(const_cast<QQuickItem *>(item))));
    }
    return address;
}

QQuickItem *itemNamed(QQuickItem *under, const QString &name, bool whole)
{
    if (!under->isVisible())
        return nullptr;
    if (whole ? under->objectName() == name : under->objectName().startsWith(name))
        return under;
    const QList<QQuickItem *> children = under->childItems();
    for (QQuickItem *child : children) {
        if (QQuickItem *found = itemNamed(child, name, whole))
            return found;
    }
    return nullptr;
}

QQuickItem *itemAt(QQuickItem *root, const Address &address)
{
    QQuickItem *item = root;
    for (const QString &name : address.names) {
        item = itemNamed(item, name, true);
        if (item == nullptr)
            return nullptr;
    }
    for (const int place : address.places) {
        const QList<QQuickItem *> children = item->childItems();
        if (place < 0 || place >= children.size())
            return nullptr;
        item = children[place];
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
