#include "tests/tour/page_hearing.h"

#include <QAccessible>
#include <QQuickItem>

#include <functional>

namespace lidlark::test {

namespace {

using Visit = std::function<void(QAccessibleInterface *)>;

void walk(QAccessibleInterface *node, const Visit &visit)
{
    if (node == nullptr || node->state().invisible)
        return;
    visit(node);
    for (int i = 0; i < node->childCount(); ++i)
        walk(node->child(i), visit);
}

QString roleWord(QAccessible::Role role)
{
    switch (role) {
    case QAccessible::Button:
        return QStringLiteral("button");
    case QAccessible::CheckBox:
        return QStringLiteral("check box");
    case QAccessible::EditableText:
        return QStringLiteral("field");
    case QAccessible::Graphic:
        return QStringLiteral("picture");
    case QAccessible::Heading:
        return QStringLiteral("heading");
    case QAccessible::AlertMessage:
        return QStringLiteral("alert");
    case QAccessible::StaticText:
        return QStringLiteral("words");
    case QAccessible::SpinBox:
        return QStringLiteral("number");
    case QAccessible::PageTabList:
        return QStringLiteral("tabs");
    case QAccessible::PageTab:
        return QStringLiteral("tab");
    default:
        return QStringLiteral("role %1").arg(int(role));
    }
}

bool isControl(QAccessible::Role role)
{
    return role == QAccessible::Button || role == QAccessible::CheckBox ||
           role == QAccessible::RadioButton || role == QAccessible::EditableText ||
           role == QAccessible::PageTab;
}

QString stateWords(const QAccessible::State &state)
{
    QString words;
    if (state.checkable)
        words += state.checked ? QStringLiteral(" [on]") : QStringLiteral(" [off]");
    if (state.selectable)
        words += state.selected ? QStringLiteral(" [chosen]") : QStringLiteral(" [not chosen]");
    if (state.disabled)
        words += QStringLiteral(" [not now]");
    return words;
}

/// What an eye sees as chosen.
bool looksChosen(const QObject *object)
{
    if (object->property("acts").toBool())
        return false; // it says so in its words
    for (const char *property : {"picked", "pegged", "chosen", "current"}) {
        if (object->property(property).typeId() == QMetaType::Bool &&
            object->property(property).toBool())
            return true;
    }
    return false;
}

class Hearing
{
public:
    explicit Hearing(QQuickWindow *window)
    {
        walk(QAccessible::queryAccessibleInterface(window),
             [this](QAccessibleInterface *node) { hear(node); });
        if (!m_headed)
            m_findings.append(QStringLiteral("no heading"));
        stops(window->contentItem());
    }

    [[nodiscard]] QStringList findings() const { return m_findings; }
    [[nodiscard]] QStringList said() const { return m_said; }

private:
    void hear(QAccessibleInterface *node)
    {
        const QAccessible::Role role = node->role();
        const QString name = node->text(QAccessible::Name);
        m_headed = m_headed || role == QAccessible::Heading || role == QAccessible::AlertMessage;
        if (role == QAccessible::Window || role == QAccessible::Client)
            return;
        const QString line =
            roleWord(role) + QStringLiteral(": ") + name + stateWords(node->state()) +
            (node->text(QAccessible::Description).isEmpty()
                 ? QString()
                 : QStringLiteral(" (%1)").arg(node->text(QAccessible::Description)));
        m_said.append(line);
        if (name.trimmed().isEmpty())
            m_findings.append(QStringLiteral("says nothing: %1, %2")
                                  .arg(roleWord(role), node->object()->objectName()));
        // An alert is gone before anybody goes through the page; a heading may be called as its
        // part.
        if (role == QAccessible::AlertMessage)
            return;
        if (!name.isEmpty() && name == m_last && !m_lastHeads)
            m_findings.append(QStringLiteral("said twice: %1").arg(name));
        m_last = name;
        m_lastHeads = role == QAccessible::Heading;
        if (isControl(role))
            hearControl(node, name);
    }

    void hearControl(QAccessibleInterface *node, const QString &name)
    {
        if (m_controls.contains(name))
            m_findings.append(QStringLiteral("two controls sound alike: %1").arg(name));
        m_controls.append(name);
        const QAccessible::State state = node->state();
        const bool told =
            (state.checkable && state.checked) || (state.selectable && state.selected);
        if (looksChosen(node->object()) && !told)
            m_findings.append(QStringLiteral("chosen, and it is not said: %1").arg(name));
        if (node->role() != QAccessible::EditableText &&
            (node->actionInterface() == nullptr ||
             node->actionInterface()->actionNames().isEmpty()))
            m_findings.append(QStringLiteral("cannot be pressed: %1").arg(name));
    }

    /// Whatever the keyboard meets, the ear meets as a control.
    void stops(QQuickItem *item)
    {
        if (!item->isVisible() || !item->isEnabled())
            return;
        if (item->activeFocusOnTab()) {
            QAccessibleInterface *node = QAccessible::queryAccessibleInterface(item);
            if (node == nullptr || !isControl(node->role()))
                m_findings.append(QStringLiteral("no control to the ear: %1")
                                      .arg(QString::fromUtf8(item->metaObject()->className())));
        }
        const QList<QQuickItem *> children = item->childItems();
        for (QQuickItem *child : children)
            stops(child);
    }

    QStringList m_said;
    QStringList m_findings;
    QStringList m_controls;
    QString m_last;
    bool m_lastHeads = false;
    bool m_headed = false;
};

} // namespace

QStringList saidAloud(QQuickWindow *window)
{
    return Hearing(window).said();
}

QStringList hardToHear(QQuickWindow *window)
{
    return Hearing(window).findings();
}

} // namespace lidlark::test
