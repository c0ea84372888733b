#include "together_cards.h"

#include "core/wording/kite_words.h"
#include "mobile/bridge/sentence.h"

namespace lidlark::mobile {

QStringList TogetherCards::heads() const
{
    QStringList heads;
    for (const wording::TogetherCard &card : wording::togetherCards())
        heads.append(translated(card.head));
    return heads;
}

QStringList TogetherCards::lines() const
{
    QStringList lines;
    for (const wording::TogetherCard &card : wording::togetherCards())
        lines.append(translated(card.line));
    return lines;
}

} // namespace lidlark::mobile
