#include "take_out_words.h"

#include <QCoreApplication>
#include <QStringList>

#include "core/usecase/take_out.h"
#include "core/wording/emergency_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

QString withNames(const char *words, const QStringList &names)
{
    return QCoreApplication::translate("lidlark::mobile::Household", words)
        .arg(names.join(QStringLiteral(", ")));
}

} // namespace

TakeOutWords takeOutWords(const usecase::Family &family, const catalogue::Catalogue &catalogue)
{
    TakeOutWords words;
    QStringList leaving;
    QStringList standIns;
    for (const usecase::TakeOut &line : usecase::takeOutOf(family, catalogue)) {
        words.items.insert(line.item);
        leaving.append(fromCore(catalogue.item(line.item)->name));
        if (const auto *kind = line.instead ? catalogue.item(*line.instead) : nullptr)
            standIns.append(fromCore(kind->name));
    }
    if (leaving.isEmpty())
        return words;
    words.lead = withNames(
        QT_TRANSLATE_NOOP("lidlark::mobile::Household", "Out of the house, then wash hands: %1."),
        leaving);
    if (!standIns.isEmpty())
        words.text = withNames(QT_TRANSLATE_NOOP("lidlark::mobile::Household",
                                                 "Ask your therapist for these in their place: "
                                                 "%1."),
                               standIns) +
                     QLatin1Char(' ');
    words.text += translated(wording::emergencyLines(wording::Emergency::Reaction, {}).front());
    return words;
}

} // namespace lidlark::mobile
