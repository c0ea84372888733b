#include "addition_view_model.h"

#include "mobile/bridge/letters.h"
#include "mobile/bridge/text.h"
#include "mobile/bridge/workbench_desk.h"

#include "core/child/avoided.h"

namespace lidlark::mobile {

void AdditionViewModel::setHousehold(Household *household)
{
    m_household = household;
    beginResetModel();
    m_avoided = avoidedThere(*household);
    for (const catalogue::ItemKind &kind : household->catalogue().items()) {
        if (kind.source == catalogue::Source::Box)
            m_kinds.push_back(&kind);
    }
    endResetModel();
}

QString AdditionViewModel::standsInFor(const catalogue::ItemKind &kind) const
{
    QStringList names;
    for (const catalogue::ItemKind *other : m_kinds) {
        if (other->swap && other->swap->with == kind.id)
            names.append(fromCore(other->name));
    }
    return names.isEmpty() ? QString()
                           : tr("In place of: %1").arg(names.join(QStringLiteral(", ")));
}

QString AdditionViewModel::refusal(const catalogue::ItemKind &kind) const
{
    using child::Avoided;
    for (const Avoided what : {Avoided::Latex, Avoided::Wheat}) {
        if (!m_avoided.has(child::tagOf(what)) || !kind.tags.has(child::tagOf(what)))
            continue;
        const QString reason = what == Avoided::Latex ? tr("Latex must stay away from this home.")
                                                      : tr("Wheat must stay away from this home.");
        const catalogue::ItemKind *swap =
            kind.swap ? m_household->catalogue().item(kind.swap->with) : nullptr;
        return swap == nullptr ? reason
                               : tr("%1 In its place: %2.").arg(reason, fromCore(swap->name));
    }
    return {};
}

int AdditionViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_kinds.size());
}

QVariant AdditionViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const catalogue::ItemKind &kind = *m_kinds[static_cast<std::size_t>(index.row())];
    switch (role) {
    case ItemIdRole:
        return fromCore(kind.id.value);
    case NameRole:
        return capitalised(fromCore(kind.name));
    case DrawingRole:
        return fromCore(kind.drawing);
    case NoteRole:
        return standsInFor(kind);
    case RefusedRole:
        return refusal(kind);
    default:
        return {};
    }
}

QHash<int, QByteArray> AdditionViewModel::roleNames() const
{
    return {{ItemIdRole, "itemId"},
            {NameRole, "name"},
            {DrawingRole, "drawing"},
            {NoteRole, "note"},
            {RefusedRole, "refused"}};
}

} // namespace lidlark::mobile
