#include "tests/states/walk.h"

#include <QAccessible>
#include <QtTest>

namespace lidlark::test {

namespace {

constexpr int mostWaits = 40;
constexpr int waitMs = 50;
constexpr int heldMs = 1300;

/// What is written on, by the words above it.
QQuickItem *field(QQuickItem *under, const QString &label)
{
    if (!under->isVisible())
        return nullptr;
    const bool written = under->inherits("QQuickTextInput") || under->inherits("QQuickTextEdit");
    QAccessibleInterface *spoken = written ? QAccessible::queryAccessibleInterface(under) : nullptr;
    if (spoken != nullptr && spoken->text(QAccessible::Name).startsWith(label))
        return under;
    for (QQuickItem *child : under->childItems()) {
        if (QQuickItem *found = field(child, label))
            return found;
    }
    return nullptr;
}

} // namespace

QQuickItem *Walk::findByName(const QString &name) const
{
    if (name.startsWith(u'#'))
        return itemNamed(m_window->contentItem(), name.mid(1));
    QQuickItem *control = Hand(m_window).find(name);
    return control != nullptr ? control : field(m_window->contentItem(), name);
}

QQuickItem *Walk::find(const char *name)
{
    const Address written = m_trail.follows() ? m_trail.read() : Address();
    QQuickItem *item = nullptr;
    // A screen may still be on its way.
    for (int waits = 0; item == nullptr && waits < mostWaits; ++waits) {
        if (waits > 0)
            Hand::settle(waitMs);
        item = m_trail.follows() ? itemAt(m_window->contentItem(), written)
                                 : findByName(QString::fromUtf8(name));
    }
    if (item == nullptr) {
        m_failed = QStringLiteral("After \"%1\": nothing called \"%2\". On screen: %3")
                       .arg(m_last, QString::fromUtf8(name), Hand(m_window).names().join(u'|'));
    } else if (!m_trail.follows()) {
        m_trail.write(addressOf(item));
    }
    m_last = QString::fromUtf8(name);
    return item;
}

bool Walk::press(QQuickItem *item, int ms)
{
    item->forceActiveFocus(); // a sheet brings what has the focus into view
    Hand::settle(30);
    const QPoint middle = item->mapToScene({item->width() / 2, item->height() / 2}).toPoint();
    if (!QRect(QPoint(), m_window->size()).contains(middle)) {
        m_failed = QStringLiteral("\"%1\" could not be brought into view.").arg(m_last);
        return false;
    }
    QTest::mousePress(m_window, Qt::LeftButton, {}, middle);
    if (ms > 0)
        Hand::settle(ms);
    QTest::mouseRelease(m_window, Qt::LeftButton, {}, middle);
    Hand::settle();
    return true;
}

void Walk::tap(const char *name)
{
    if (!m_failed.isEmpty())
        return;
    if (QQuickItem *item = find(name))
        (void)press(item, 0);
}

void Walk::waitFor(const char *name)
{
    if (m_failed.isEmpty())
        (void)find(name);
}

void Walk::hold(const char *name)
{
    if (!m_failed.isEmpty())
        return;
    if (QQuickItem *item = find(name))
        (void)press(item, heldMs);
}

void Walk::write(const char *field, const char *text)
{
    if (!m_failed.isEmpty())
        return;
    if (QQuickItem *item = find(field)) {
        if (!press(item, 0))
            return;
        for (const QChar letter : QString::fromUtf8(text))
            QTest::keyClick(m_window, letter.toLatin1());
        Hand::settle();
    }
}

void Walk::set(const char *property, const QVariant &value)
{
    if (!m_failed.isEmpty())
        return;
    QQuickItem *screens = itemNamed(m_window->contentItem(), QStringLiteral("screens"));
    auto *page = screens->property("current").value<QQuickItem *>();
    if (page == nullptr || !page->setProperty(property, value))
        m_failed = QStringLiteral("After \"%1\": the screen has no property \"%2\".")
                       .arg(m_last, QString::fromUtf8(property));
    Hand::settle();
}

void Walk::see(const char *state)
{
    if (!m_failed.isEmpty())
        return;
    const QQuickItem *screens = itemNamed(m_window->contentItem(), QStringLiteral("screens"));
    if (screens->property("current").value<QQuickItem *>() == nullptr) {
        m_failed =
            QStringLiteral("%1: the page could not be opened.").arg(QString::fromUtf8(state));
        return;
    }
    m_last = QString::fromUtf8(state);
    QTest::mouseMove(m_window, {1, 1}); // a finger leaves nothing hovered
    Hand::settle(20);
    m_seen({m_last, m_window, &m_graph});
}

} // namespace lidlark::test
