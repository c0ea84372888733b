#include "own_desk_rows.h"

namespace lidlark::mobile {

void OwnDeskRows::setHousehold(Household *household)
{
    m_household = household;
    if (household == nullptr)
        return;
    connect(household, &Household::changed, this, &OwnDeskRows::load);
    load();
}

void OwnDeskRows::load()
{
    if (m_household == nullptr || !m_household->isOpen())
        return;
    renewRows([this] {
        auto rows = desk(*m_household);
        m_problem = rows ? QString() : m_household->sentenceFor(rows.error());
        m_rows = rows ? *std::move(rows) : std::vector<OwnOnDesk>();
    });
    emit loaded();
}

int OwnDeskRows::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant OwnDeskRows::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const OwnOnDesk &row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case EntryRole:
        return row.id;
    case NameRole:
        return nameOf(row);
    case DrawingRole:
        return row.drawing;
    case NoteRole:
        return noteOf(row);
    default:
        return {};
    }
}

QHash<int, QByteArray> OwnDeskRows::roleNames() const
{
    return {{EntryRole, "entry"}, {NameRole, "name"}, {DrawingRole, "drawing"}, {NoteRole, "note"}};
}

QStringList OwnDeskRows::rowKeys() const
{
    QStringList keys;
    for (const OwnOnDesk &row : m_rows)
        keys.append(row.id);
    return keys;
}

} // namespace lidlark::mobile
