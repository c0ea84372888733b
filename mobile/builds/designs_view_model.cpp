#include "designs_view_model.h"

#include "mobile/bridge/numerals.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

void DesignsViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &DesignsViewModel::load);
    load();
}

void DesignsViewModel::load()
{
    renewRows([this] {
        m_designs.clear();
        for (auto &[id, design] : designsOn(*m_household))
            m_designs.push_back(design);
    });
    emit loaded();
}

QStringList DesignsViewModel::rowKeys() const
{
    QStringList keys;
    for (const workbench::Design &design : m_designs)
        keys.append(fromCore(design.id.value));
    return keys;
}

int DesignsViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_designs.size());
}

QVariant DesignsViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const workbench::Design &design = m_designs[static_cast<std::size_t>(index.row())];
    switch (role) {
    case DesignIdRole:
        return fromCore(design.id.value);
    case NameRole:
        return fromCore(design.name);
    case NoteRole:
        return tr("Kinds of thing: %1. Plays that can be made: %2.")
            .arg(numerals(static_cast<int>(design.parts.size())),
                 numerals(workbench::playIn(design.parts, m_household->catalogue()).activities));
    default:
        return {};
    }
}

QHash<int, QByteArray> DesignsViewModel::roleNames() const
{
    return {{DesignIdRole, "designId"}, {NameRole, "name"}, {NoteRole, "note"}};
}

} // namespace lidlark::mobile
