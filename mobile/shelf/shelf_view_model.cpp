#include "shelf_view_model.h"

#include "shelf_words.h"

#include "core/workbench/cheapest_offer.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

bool hasPrice(const ShelfThing &thing)
{
    return std::ranges::any_of(thing.kept.supply.offers,
                               [](const auto &offer) { return offer.pence.has_value(); });
}

bool speaksOf(const ShelfThing &thing, const QString &searched)
{
    const auto holds = [&searched](const QString &words) {
        return words.contains(searched, Qt::CaseInsensitive);
    };
    return searched.isEmpty() || holds(shelfName(thing)) || holds(fromCore(thing.kept.lot)) ||
           holds(fromCore(thing.kept.supply.name)) ||
           std::ranges::any_of(thing.kept.supply.offers,
                               [&holds](const auto &offer) { return holds(fromCore(offer.shop)); });
}

} // namespace

void ShelfViewModel::setHousehold(Household *household)
{
    m_household = household;
    if (household != nullptr)
        connect(household, &Household::changed, this, &ShelfViewModel::load);
    load();
}

void ShelfViewModel::load()
{
    if (m_household == nullptr || !m_household->isOpen())
        return;
    auto things = thingsOnShelf(*m_household);
    m_problem = things ? QString() : m_household->sentenceFor(things.error());
    m_currency = shelfCurrency(*m_household);
    renewRows([&] {
        m_things = things ? *std::move(things) : std::vector<ShelfThing>();
        choose();
    });
    emit loaded();
}

void ShelfViewModel::choose()
{
    m_rows.clear();
    for (std::size_t i = 0; i < m_things.size(); ++i) {
        if (isWanted(m_things[i]))
            m_rows.push_back(i);
    }
}

bool ShelfViewModel::isWanted(const ShelfThing &thing) const
{
    if (!speaksOf(thing, m_searched.trimmed()))
        return false;
    switch (m_only) {
    case NoPrice:
        return !hasPrice(thing);
    case NoneLeft:
        return thing.kept.supply.inStock == 0;
    case UsedUp:
        return thing.kept.supply.usedUp;
    default:
        return true;
    }
}

void ShelfViewModel::setSearched(const QString &searched)
{
    m_searched = searched;
    renewRows([this] { choose(); });
    emit asked();
    emit loaded();
}

void ShelfViewModel::setOnly(int only)
{
    m_only = only;
    renewRows([this] { choose(); });
    emit asked();
    emit loaded();
}

QStringList ShelfViewModel::rowKeys() const
{
    QStringList keys;
    for (const std::size_t row : m_rows)
        keys.append(fromCore(m_things[row].item().value));
    return keys;
}

int ShelfViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant ShelfViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const ShelfThing &thing = m_things[m_rows[static_cast<std::size_t>(index.row())]];
    switch (role) {
    case ItemIdRole:
        return fromCore(thing.item().value);
    case NameRole:
        return shelfName(thing);
    case DrawingRole:
        return shelfDrawing(thing);
    case NoteRole:
        return noteOf(thing);
    case StockRole:
        return piecesText(thing.kept.supply.inStock);
    default:
        return {};
    }
}

QHash<int, QByteArray> ShelfViewModel::roleNames() const
{
    return {{ItemIdRole, "itemId"},
            {NameRole, "name"},
            {DrawingRole, "drawing"},
            {NoteRole, "note"},
            {StockRole, "stock"}};
}

QString ShelfViewModel::noteOf(const ShelfThing &thing) const
{
    const auto &offers = thing.kept.supply.offers;
    const auto cheapest = workbench::cheapestOffer(offers, m_currency);
    const QString price = cheapest ? offerText(offers[*cheapest], m_currency) : tr("No price yet");
    if (thing.kept.lot.empty())
        return price;
    return tr("%1. Lot %2").arg(price, isolated(fromCore(thing.kept.lot)));
}

QString ShelfViewModel::words() const
{
    const auto priceless =
        std::ranges::count_if(m_things, [](const ShelfThing &thing) { return !hasPrice(thing); });
    return numerals(tr("%1 things. Without a price: %2.").arg(m_things.size()).arg(priceless));
}

} // namespace lidlark::mobile
