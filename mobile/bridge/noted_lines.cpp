#include "mobile/bridge/noted_lines.h"

#include "core/wording/noted_words.h"
#include "mobile/bridge/sentence.h"

namespace lidlark::mobile {

QStringList notedLines(const usecase::Noted &noted, const Household &household)
{
    QStringList lines;
    for (const wording::Sentence &line :
         wording::notedWords(noted.events, {household.catalogue(), noted.activity, noted.person,
                                            household.today().day}))
        lines.append(translated(line));
    return lines;
}

QString notedBy(const usecase::Noted &noted)
{
    return translated(wording::notedBy(noted.last().author, noted.minuteOfDay()));
}

} // namespace lidlark::mobile
