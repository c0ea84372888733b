#pragma once

#include <QQuickItem>
#include <QQuickWindow>

namespace lidlark::test {

/// The item of that objectName that lies below @p under, also where a list made it: what a list
/// makes is no child of the window by name. Null: none.
inline QQuickItem *itemBelow(QQuickItem *under, const QString &name)
{
    if (under->objectName() == name)
        return under;
    for (QQuickItem *child : under->childItems()) {
        if (QQuickItem *found = itemBelow(child, name))
            return found;
    }
    return nullptr;
}

inline QQuickItem *itemOn(QQuickWindow *window, const char *name)
{
    return itemBelow(window->contentItem(), QString::fromUtf8(name));
}

} // namespace lidlark::test
