#include "pack_offers.h"

#include "core/wording/money_words.h"
#include "core/workbench/price_text.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"
#include "mobile/bridge/typed_number.h"

#include <algorithm>

namespace lidlark::mobile {

int PackOffers::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant PackOffers::data(const QModelIndex &index, int role) const
{
    if (!has(index.row()))
        return {};
    const Row &row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case ShopRole:
        return row.shop;
    case PiecesRole:
        return row.pieces;
    case PriceRole:
        return row.price;
    case CurrencyRole:
        return fromCore(row.currency);
    case PiecesProblemRole:
        return row.piecesProblem;
    case PriceProblemRole:
        return row.priceProblem;
    default:
        return {};
    }
}

QHash<int, QByteArray> PackOffers::roleNames() const
{
    return {{ShopRole, "shop"},
            {PiecesRole, "pieces"},
            {PriceRole, "price"},
            {CurrencyRole, "ownCurrency"},
            {PiecesProblemRole, "piecesProblem"},
            {PriceProblemRole, "priceProblem"}};
}

void PackOffers::show(const std::vector<workbench::PackOffer> &offers)
{
    beginResetModel();
    m_rows.clear();
    for (const workbench::PackOffer &offer : offers)
        m_rows.push_back({fromCore(offer.shop), QString::number(offer.pieces),
                          offer.pence ? fromCore(workbench::priceText(*offer.pence)) : QString(),
                          offer.currency, QString(), QString()});
    endResetModel();
}

workbench::PackOffer PackOffers::readRow(Row &row, const std::string &currency)
{
    const int pieces = wholeFrom(row.pieces, workbench::mostPiecesInPack);
    row.piecesProblem = pieces > 0 ? QString()
                                   : numerals(tr("Pieces in a pack: a whole number from 1 to %1.")
                                                  .arg(workbench::mostPiecesInPack));
    const std::string &of = row.currency.empty() ? currency : row.currency;
    const workbench::ReadPrice price = workbench::readPrice(toCore(plainDigits(row.price)), of);
    row.priceProblem =
        price.fault ? translated(wording::priceFaultWords(*price.fault, of)) : QString();
    return {toCore(row.shop), pieces, price.pence, row.currency};
}

std::optional<std::vector<workbench::PackOffer>> PackOffers::read(const std::string &currency)
{
    std::vector<workbench::PackOffer> offers;
    for (Row &row : m_rows)
        offers.push_back(readRow(row, currency));
    if (!m_rows.empty())
        emit dataChanged(index(0), index(rowCount() - 1), {PiecesProblemRole, PriceProblemRole});
    return firstWrong() < 0 ? std::optional(offers) : std::nullopt;
}

int PackOffers::firstWrong() const
{
    const auto wrong = std::ranges::find_if(m_rows, [](const Row &row) {
        return !row.piecesProblem.isEmpty() || !row.priceProblem.isEmpty();
    });
    return wrong == m_rows.end() ? -1 : static_cast<int>(wrong - m_rows.begin());
}

QStringList PackOffers::typed() const
{
    QStringList lines;
    for (const Row &row : m_rows)
        lines << row.shop.trimmed() << row.pieces.trimmed() << row.price.trimmed();
    return lines;
}

void PackOffers::changed(int row)
{
    emit dataChanged(index(row), index(row));
    emit edited();
}

void PackOffers::setShop(int row, const QString &text)
{
    if (!has(row))
        return;
    at(row).shop = text;
    changed(row);
}

void PackOffers::setPieces(int row, const QString &text)
{
    if (!has(row))
        return;
    at(row).pieces = text;
    at(row).piecesProblem.clear();
    changed(row);
}

void PackOffers::setPrice(int row, const QString &text)
{
    if (!has(row))
        return;
    at(row).price = text;
    at(row).priceProblem.clear();
    changed(row);
}

void PackOffers::add()
{
    if (rowCount() >= workbench::mostOffers)
        return;
    beginInsertRows({}, rowCount(), rowCount());
    m_rows.emplace_back();
    endInsertRows();
    emit edited();
}

void PackOffers::remove(int row)
{
    if (!has(row))
        return;
    beginRemoveRows({}, row, row);
    m_rows.erase(m_rows.begin() + row);
    endRemoveRows();
    emit edited();
}

void PackOffers::moveUp(int row)
{
    if (row < 1 || !has(row))
        return;
    beginMoveRows({}, row, row, {}, row - 1);
    std::swap(at(row), at(row - 1));
    endMoveRows();
    emit edited();
}

} // namespace lidlark::mobile
