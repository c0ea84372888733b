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

constexpr char16_t arabicDecimalMark = u'\u066B';

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

QString plainDigits(const QString &typed)
{
    QString plain = typed.trimmed();
    for (QChar &letter : plain) {
        if (letter == arabicDecimalMark)
            letter = u'.';
        else if (const int digit = letter.digitValue(); digit >= 0)
            letter = QChar(static_cast<char16_t>(u'0' + digit));
    }
    return plain;
}

int wholeFrom(const QString &typed, int most)
{
    const QString plain = plainDigits(typed);
    const bool digits = !plain.isEmpty() && std::all_of(plain.begin(), plain.end(), [](QChar one) {
        return one >= u'0' && one <= u'9';
    });
    bool fits = false;
    const int number = plain.toInt(&fits);
    return digits && fits && number <= most ? number : -1;
}

} // namespace lidlark::mobile
