#include "own_item_list_view_model.h"

#include "mobile/bridge/letters.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

void OwnItemListViewModel::setHousehold(Household *household)
{
    m_household = household;
    if (household == nullptr)
        return;
    connect(household, &Household::changed, this, &OwnItemListViewModel::load);
    load();
}

void OwnItemListViewModel::load()
{
    if (m_household == nullptr || !m_household->isOpen())
        return;
    renewRows([this] {
        auto desk = ownItems(*m_household);
        m_problem = desk ? QString() : m_household->sentenceFor(desk.error());
        m_rows = desk ? *std::move(desk) : std::vector<OwnItemOnDesk>();
    });
    emit loaded();
}

int OwnItemListViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QString OwnItemListViewModel::noteOf(const OwnItemOnDesk &row)
{
    const QString names = row.children.join(QStringLiteral(", "));
    QStringList words;
    if (!catalogue::isOwnId(toCore(row.id)))
        words.append(tr("One of ours, as you measured it"));
    if (row.children.isEmpty())
        words.append(row.signedOff ? tr("Ready, and sent to no box yet") : tr("A draft"));
    else
        words.append((row.newer ? tr("Sent to the box of %1, and changed since")
                                : tr("It counts in the box of %1"))
                         .arg(names));
    return words.join(u'\n');
}

QVariant OwnItemListViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const OwnItemOnDesk &row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case EntryRole:
        return row.id;
    case NameRole:
        return row.name.isEmpty() ? tr("Without a name yet") : capitalised(row.name);
    case DrawingRole:
        return row.drawing;
    case NoteRole:
        return noteOf(row);
    default:
        return {};
    }
}

QHash<int, QByteArray> OwnItemListViewModel::roleNames() const
{
    return {{EntryRole, "entry"}, {NameRole, "name"}, {DrawingRole, "drawing"}, {NoteRole, "note"}};
}

QStringList OwnItemListViewModel::rowKeys() const
{
    QStringList keys;
    for (const OwnItemOnDesk &row : m_rows)
        keys.append(row.id);
    return keys;
}

QString OwnItemListViewModel::fresh() const
{
    return m_household != nullptr ? newOwnItem(*m_household) : QString();
}

} // namespace lidlark::mobile
