#include "floor_view_model.h"

#include "core/wording/catalogue_terms.h"
#include "core/wording/floor_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

using usecase::FloorDanger;
using usecase::MissingItem;

void FloorViewModel::load()
{
    beginResetModel();
    m_search = m_household->floorSearch();
    m_found.clear();
    endResetModel();
    emit loaded();
    emit namedChanged();
}

int FloorViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_search.missing.size());
}

const MissingItem *FloorViewModel::rowAt(int row) const
{
    return row >= 0 && row < rowCount() ? &m_search.missing[static_cast<std::size_t>(row)]
                                        : nullptr;
}

QVariant FloorViewModel::data(const QModelIndex &index, int role) const
{
    const MissingItem *row = rowAt(index.row());
    if (row == nullptr)
        return {};
    const catalogue::ItemKind *kind = m_household->catalogue().item(row->item);
    const bool balloon = row->danger == FloorDanger::BalloonPiece;
    switch (role) {
    case ItemIdRole:
        return fromCore(row->item.value);
    case NameRole:
        return kind != nullptr ? capitalised(fromCore(kind->name)) : fromCore(row->item.value);
    case DrawingRole:
        return fromCore(kind != nullptr ? kind->drawing : std::string());
    case NoteRole:
        return balloon ? tr("Look for every bit.") : translated(wording::missingWords(row->pieces));
    case MissingRole:
        return row->pieces;
    case FoundRole: {
        const auto found = m_found.find(row->item);
        return found == m_found.end() ? 0 : found->second;
    }
    case WholeRole:
        return balloon || row->pieces == 1;
    case WholeTextRole:
        return balloon ? tr("Every piece found") : tr("Found it");
    default:
        return {};
    }
}

QHash<int, QByteArray> FloorViewModel::roleNames() const
{
    return {{ItemIdRole, "itemId"}, {NameRole, "name"},          {DrawingRole, "drawing"},
            {NoteRole, "note"},     {MissingRole, "missing"},    {FoundRole, "found"},
            {WholeRole, "whole"},   {WholeTextRole, "wholeText"}};
}

QString FloorViewModel::lead() const
{
    if (m_search.missing.empty())
        return {};
    const MissingItem &first = m_search.missing.front();
    if (m_search.missing.size() == 1 && first.danger == FloorDanger::BalloonPiece)
        return safetyText(wording::balloonPiecesMissing(first.pieces));
    const catalogue::ItemKind *kind = m_household->catalogue().item(first.item);
    if (m_search.missing.size() == 1 && kind != nullptr)
        return safetyText(
            wording::piecesMissing(first.pieces, wording::oneOf(*kind), wording::nameOf(*kind)));
    int pieces = 0;
    for (const MissingItem &missing : m_search.missing)
        pieces += missing.pieces;
    return safetyText(wording::smallPiecesMissing(pieces));
}

QString FloorViewModel::text() const
{
    return safetyText({wording::lookAtHandsFirst(), wording::lookNow(m_search.balloon()),
                       wording::keepAway(m_search.smallOnes)});
}

int FloorViewModel::named() const
{
    int pieces = 0;
    for (const auto &[item, found] : m_found)
        pieces += found;
    return pieces;
}

void FloorViewModel::nameFound(int index, int pieces)
{
    const MissingItem *row = rowAt(index);
    if (row == nullptr || pieces < 0 || pieces > row->pieces)
        return;
    const auto before = m_found.find(row->item);
    if (pieces == 0 || (before != m_found.end() && before->second == pieces))
        m_found.erase(row->item);
    else
        m_found[row->item] = pieces;
    emit dataChanged(this->index(index), this->index(index), {FoundRole});
    emit namedChanged();
}

bool FloorViewModel::keepFound()
{
    if (!report(m_household->notePiecesFound(m_found)))
        return false;
    load();
    return m_search.missing.empty();
}

bool FloorViewModel::floorChecked()
{
    return report(m_household->checkFloor());
}

bool FloorViewModel::report(const Outcome &outcome)
{
    m_problem = outcome ? QString() : m_household->sentenceFor(outcome.error());
    if (outcome)
        m_household->announce();
    else
        emit loaded();
    return outcome.ok();
}

} // namespace lidlark::mobile
