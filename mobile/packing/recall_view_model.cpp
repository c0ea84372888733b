#include "recall_view_model.h"

#include "core/wording/tend_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <set>

namespace lidlark::mobile {

int RecallViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant RecallViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const store::LotFound &row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case CodeRole:
        return fromCore(row.box);
    case ItemRole:
        return packingName(packingNames(*m_household), row.item);
    case DrawingRole:
        return clinicDrawing(*m_household, row.item);
    case PlaceRole:
        return translated(
            wording::recallPlace(row.standing, row.whose, row.day, m_household->today().day));
    default:
        return {};
    }
}

QHash<int, QByteArray> RecallViewModel::roleNames() const
{
    return {{CodeRole, "code"}, {ItemRole, "item"}, {DrawingRole, "drawing"}, {PlaceRole, "place"}};
}

void RecallViewModel::look(const QString &lot)
{
    const auto found = usecase::recallLot(m_household->workplace(), toCore(lot));
    beginResetModel();
    m_rows = found ? *found : std::vector<store::LotFound>();
    endResetModel();
    std::set<std::string> boxes;
    for (const store::LotFound &row : m_rows)
        boxes.insert(row.box);
    m_problem = found ? QString() : m_household->sentenceFor(found.error());
    m_words = found ? safetyText(wording::recallWords(static_cast<int>(boxes.size()),
                                                      toCore(lot.trimmed())))
                    : QString();
    emit this->found();
}

} // namespace lidlark::mobile
