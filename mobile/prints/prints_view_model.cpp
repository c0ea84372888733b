#include "prints_view_model.h"

#include "core/wording/print_words.h"
#include "mobile/bridge/print_pages.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

void PrintsViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &PrintsViewModel::load);
    load();
}

void PrintsViewModel::load()
{
    beginResetModel();
    m_prints.clear();
    for (std::size_t i = 0; i < printNames.names.size(); ++i) {
        const auto what = static_cast<Print>(i);
        if (isForTherapist(what) && !m_household->therapist())
            continue;
        if (!isForGuest(what) && m_household->guest())
            continue;
        m_prints.push_back(what);
    }
    const auto list = lidListPage(*m_household);
    m_outOfDate = list && list->revision > 1
                      ? translated(wording::olderLids(list->revision, list->issued))
                      : QString();
    endResetModel();
    emit loaded();
}

int PrintsViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_prints.size());
}

QVariant PrintsViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const Print what = m_prints[static_cast<std::size_t>(index.row())];
    switch (role) {
    case PrintRole:
        return fromCore(printNames.of(what));
    case NameRole:
        return nameOf(what);
    case NoteRole:
        return noteOf(what);
    default:
        return {};
    }
}

QHash<int, QByteArray> PrintsViewModel::roleNames() const
{
    return {{PrintRole, "print"}, {NameRole, "name"}, {NoteRole, "note"}};
}

QString PrintsViewModel::nameOf(Print what)
{
    switch (what) {
    case Print::LidList:
        return tr("Lid list");
    case Print::Tally:
        return tr("One week on paper");
    case Print::Travel:
        return tr("Away from home");
    case Print::KiteCard:
        return tr("The kite on paper");
    case Print::Summary:
        return tr("How things stand");
    case Print::Label:
        return tr("Label for this box");
    case Print::Labels:
        return tr("Labels for all boxes");
    case Print::PackList:
        return tr("Pack list");
    case Print::BuildSheet:
        return tr("Build sheet");
    case Print::Restock:
        break;
    }
    return tr("Restock round");
}

QString PrintsViewModel::noteOf(Print what)
{
    switch (what) {
    case Print::LidList:
        return tr("Pictures, counts and the words that go with the box");
    case Print::Tally:
        return tr("For a home without a phone: what was used up or lost");
    case Print::Travel:
        return tr("Games that need nothing from the box");
    case Print::KiteCard:
        return tr("A card for a clothes peg");
    case Print::Summary:
        return tr("One page to hand on. You see it first.");
    case Print::Label:
    case Print::Labels:
        return tr("Name, box, what to keep away, and how to reach you");
    case Print::PackList:
        return tr("Squares to tick, box by box or item by item");
    case Print::BuildSheet:
        return tr("What to buy, and what is in each box");
    case Print::Restock:
        break;
    }
    return tr("All that was asked for, by item and by box");
}

} // namespace lidlark::mobile
