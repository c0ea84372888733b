#include "design_view_model.h"

#include "core/wording/build_words.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

void DesignViewModel::setHousehold(Household *household)
{
    m_household = household;
    m_names = boughtNames(*household);
    read();
}

QString DesignViewModel::design() const
{
    return fromCore(m_design.id.value);
}

void DesignViewModel::setDesign(const QString &design)
{
    m_design.id = {toCore(design)};
    if (m_household != nullptr)
        read();
}

void DesignViewModel::read()
{
    const workbench::Designs designs = designsOn(*m_household);
    const auto found = designs.find(m_design.id);
    beginResetModel();
    if (found != designs.end())
        m_design = found->second;
    m_kept = m_design;
    m_play = workbench::playIn(m_design.parts, m_household->catalogue());
    endResetModel();
    emit loaded();
}

/// What one thing brings depends on all others.
void DesignViewModel::tellChanged()
{
    m_play = workbench::playIn(m_design.parts, m_household->catalogue());
    if (rowCount() > 0)
        emit dataChanged(index(0), index(rowCount() - 1));
    emit loaded();
}

QStringList DesignViewModel::rowKeys() const
{
    QStringList keys;
    for (const workbench::BoxPart &part : m_design.parts)
        keys.append(fromCore(part.item.value));
    return keys;
}

int DesignViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_design.parts.size());
}

QVariant DesignViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const auto at = static_cast<std::size_t>(index.row());
    const workbench::BoxPart &part = m_design.parts[at];
    switch (role) {
    case ItemIdRole:
        return fromCore(part.item.value);
    case NameRole:
        return boughtName(m_names, part.item);
    case DrawingRole:
        return clinicDrawing(*m_household, part.item);
    case PiecesRole:
        return part.pieces;
    case PlayRole:
        return at < m_play.items.size() && m_play.items[at].known
                   ? translated(wording::itemPlaySentence(m_play.items[at]))
                   : QString();
    case IdleRole:
        return at < m_play.items.size() && m_play.items[at].isIdle();
    default:
        return {};
    }
}

QHash<int, QByteArray> DesignViewModel::roleNames() const
{
    return {{ItemIdRole, "itemId"}, {NameRole, "name"},      {DrawingRole, "drawing"},
            {PiecesRole, "pieces"}, {PlayRole, "playWords"}, {IdleRole, "idle"}};
}

QString DesignViewModel::name() const
{
    return fromCore(m_design.name);
}

QString DesignViewModel::playWords() const
{
    if (m_household == nullptr || m_design.parts.empty())
        return {};
    const auto all = static_cast<int>(m_household->catalogue().activities().size());
    return tr("Of %1 plays, %2 can be made with this box and what a home lends.")
        .arg(numerals(all), numerals(m_play.activities));
}

bool DesignViewModel::has(const QString &itemId) const
{
    return std::ranges::find(m_design.parts, ItemId{toCore(itemId)}, &workbench::BoxPart::item) !=
           m_design.parts.end();
}

void DesignViewModel::setPieces(int row, int pieces)
{
    if (row < 0 || row >= rowCount())
        return;
    m_design.parts[static_cast<std::size_t>(row)].pieces = pieces;
    tellChanged();
}

void DesignViewModel::takeOut(int row)
{
    if (row < 0 || row >= rowCount())
        return;
    beginRemoveRows({}, row, row);
    m_design.parts.erase(m_design.parts.begin() + row);
    endRemoveRows();
    tellChanged();
}

void DesignViewModel::putIn(const QString &itemId)
{
    const ItemId item{toCore(itemId)};
    if (item.empty() || has(itemId))
        return;
    const auto *kind = m_household->catalogue().item(item);
    const int pieces = kind != nullptr ? std::max(1, kind->lidCount) : 1;
    beginInsertRows({}, rowCount(), rowCount());
    m_design.parts.push_back({item, pieces, {}});
    endInsertRows();
    tellChanged();
}

void DesignViewModel::putInOurs()
{
    beginResetModel();
    for (const catalogue::ItemKind &kind : m_household->catalogue().items()) {
        if (kind.source == catalogue::Source::Box && kind.lidCount > 0 &&
            !has(fromCore(kind.id.value)))
            m_design.parts.push_back({kind.id, kind.lidCount, {}});
    }
    endResetModel();
    tellChanged();
}

bool DesignViewModel::keep(const QString &name)
{
    workbench::Design wanted = m_design;
    wanted.name = toCore(name);
    const auto id = usecase::keepDesign(m_household->workplace(), wanted);
    m_problem = clinicAnswer(*m_household, id ? Outcome(Done{}) : Outcome(id.error()));
    if (id)
        m_design.id = *id;
    emit loaded();
    return id.ok();
}

bool DesignViewModel::remove()
{
    m_problem =
        clinicAnswer(*m_household, usecase::removeDesign(m_household->workplace(), m_design.id));
    emit loaded();
    return m_problem.isEmpty();
}

} // namespace lidlark::mobile
