#include "tests/tour/hand.h"

#include <QAccessible>
#include <QtGui/private/qguiapplication_p.h>
#include <QtTest>
#include <qpa/qplatformaccessibility.h>
#include <qpa/qplatformintegration.h>

#include <functional>

namespace lidlark::test {

namespace {

constexpr int mostWaits = 50;
int patienceMs = 260;

void walk(QAccessibleInterface *node, const std::function<void(QAccessibleInterface *)> &visit)
{
    if (node == nullptr || node->state().invisible)
        return;
    visit(node);
    for (int i = 0; i < node->childCount(); ++i)
        walk(node->child(i), visit);
}

bool isPressable(QAccessibleInterface *node)
{
    switch (node->role()) {
    case QAccessible::Button:
    case QAccessible::CheckBox:
    case QAccessible::RadioButton:
    case QAccessible::PageTab:
    case QAccessible::Link:
    case QAccessible::ListItem:
        return true;
    default:
        return false;
    }
}

} // namespace

void wakeAccessibleTree()
{
    QGuiApplicationPrivate::platformIntegration()->accessibility()->setActive(true);
}

QQuickItem *Hand::find(const QString &name) const
{
    QQuickItem *found = nullptr;
    walk(QAccessible::queryAccessibleInterface(m_window), [&](QAccessibleInterface *node) {
        if (found == nullptr && isPressable(node) && node->text(QAccessible::Name).startsWith(name))
            found = qobject_cast<QQuickItem *>(node->object());
    });
    return found;
}

bool Hand::tap(const QString &name) const
{
    // A screen may still be on its way: a hand waits for it.
    QQuickItem *item = find(name);
    for (int waits = 0; item == nullptr && waits < mostWaits; ++waits) {
        settle(100);
        item = find(name);
    }
    if (item == nullptr)
        return false;
    item->forceActiveFocus(); // a sheet brings what has the focus into view
    settle(50);
    const QPointF middle = item->mapToScene(QPointF(item->width() / 2, item->height() / 2));
    if (!QRectF(QPointF(), m_window->size()).contains(middle))
        return false; // it could not be brought into view
    QTest::mouseClick(m_window, Qt::LeftButton, {}, middle.toPoint());
    settle();
    return true;
}

bool Hand::hold(const QString &name) const
{
    QQuickItem *item = find(name);
    if (item == nullptr)
        return false;
    const QPointF middle = item->mapToScene(QPointF(item->width() / 2, item->height() / 2));
    QTest::mousePress(m_window, Qt::LeftButton, {}, middle.toPoint());
    settle(1300);
    QTest::mouseRelease(m_window, Qt::LeftButton, {}, middle.toPoint());
    settle();
    return true;
}

void Hand::settle()
{
    QTest::qWait(patienceMs);
}

void Hand::beQuick()
{
    patienceMs = 60;
}

void Hand::settle(int ms)
{
    QTest::qWait(ms);
}

QStringList Hand::names() const
{
    QStringList names;
    walk(QAccessible::queryAccessibleInterface(m_window), [&](QAccessibleInterface *node) {
        if (isPressable(node))
            names.append(node->text(QAccessible::Name));
    });
    return names;
}

QStringList Hand::words() const
{
    QStringList words;
    walk(QAccessible::queryAccessibleInterface(m_window), [&](QAccessibleInterface *node) {
        if (!node->text(QAccessible::Name).isEmpty())
            words.append(node->text(QAccessible::Name));
    });
    return words;
}

bool Hand::reads(const QString &words) const
{
    return !this->words().filter(words).isEmpty();
}

bool Hand::write(const QString &name, const QString &text) const
{
    QQuickItem *field = nullptr;
    walk(QAccessible::queryAccessibleInterface(m_window), [&](QAccessibleInterface *node) {
        if (field == nullptr && node->role() == QAccessible::EditableText &&
            node->text(QAccessible::Name).startsWith(name))
            field = qobject_cast<QQuickItem *>(node->object());
    });
    if (field == nullptr)
        return false;
    field->forceActiveFocus();
    for (const QChar letter : text)
        QTest::keyClick(m_window, letter.toLatin1());
    settle();
    return true;
}

bool Hand::picture(const QString &file) const
{
    QTest::mouseMove(m_window, {1, 1}); // a finger leaves nothing hovered
    settle(50);
    return m_window->grabWindow().save(file);
}

} // namespace lidlark::test
