#include "shelf_words.h"

#include <QCoreApplication>

#include "core/wording/money_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

struct ShelfWords {
    Q_DECLARE_TR_FUNCTIONS(ShelfWords)
};

} // namespace

QString offerText(const workbench::PackOffer &offer, const std::string &currency)
{
    const QString pieces = numerals(offer.pieces);
    if (!offer.pence)
        return ShelfWords::tr("%1 in a pack, no price yet").arg(pieces);
    const std::string &of = offer.currency.empty() ? currency : offer.currency;
    return ShelfWords::tr("%1 for %2")
        .arg(pieces, isolated(numerals(fromCore(wording::moneyText(*offer.pence, of)))));
}

QString piecesText(int pieces)
{
    return pieces == 0 ? ShelfWords::tr("None left")
                       : numerals(ShelfWords::tr("%n pieces", nullptr, pieces));
}

} // namespace lidlark::mobile
