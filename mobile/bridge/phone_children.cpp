#include "mobile/bridge/phone_children.h"

#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

int PhoneChildren::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_children.size());
}

QVariant PhoneChildren::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const usecase::ChildOnPhone &child = m_children[static_cast<std::size_t>(index.row())];
    switch (role) {
    case AliasRole:
        return fromCore(child.alias);
    case LabelRole:
        return labelOf(child);
    case FamilyRole:
        return fromCore(child.file);
    case PickedRole:
        return isPicked(child);
    default:
        return {};
    }
}

QHash<int, QByteArray> PhoneChildren::roleNames() const
{
    return {{AliasRole, "childName"},
            {LabelRole, "label"},
            {FamilyRole, "family"},
            {PickedRole, "picked"}};
}

void PhoneChildren::show(std::vector<usecase::ChildOnPhone> children)
{
    if (children == m_children)
        return;
    beginResetModel();
    m_children = std::move(children);
    endResetModel();
}

void PhoneChildren::pick(const std::string &family, const QString &alias)
{
    m_family = family;
    m_alias = toCore(alias);
    if (!m_children.empty())
        emit dataChanged(index(0), index(rowCount() - 1), {PickedRole});
}

QString PhoneChildren::pickedLabel() const
{
    const auto found = std::ranges::find_if(
        m_children, [this](const usecase::ChildOnPhone &child) { return isPicked(child); });
    return found == m_children.end() ? fromCore(m_alias) : labelOf(*found);
}

bool PhoneChildren::isPicked(const usecase::ChildOnPhone &child) const
{
    return child.file == m_family && child.alias == m_alias;
}

QString PhoneChildren::labelOf(const usecase::ChildOnPhone &child)
{
    const QString alias = fromCore(child.alias);
    QString label = alias;
    if (!child.homeName.empty())
        label = tr("%1, %2").arg(alias, fromCore(child.homeName));
    else if (!child.person.empty())
        label = tr("%1, with %2").arg(alias, fromCore(child.person));
    return child.number > 0 ? tr("%1 (%2)").arg(label).arg(child.number) : label;
}

} // namespace lidlark::mobile
