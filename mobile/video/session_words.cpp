#include "session_words.h"

#include <QCoreApplication>

#include "core/wording/day_words.h"
#include "mobile/bridge/household.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"
#include "mobile/bridge/time_words.h"

namespace lidlark::mobile {

QString whenWords(Day day, int minuteOfDay)
{
    return QCoreApplication::translate("SessionWords", "%1, %2, %3")
        .arg(translated(wording::weekdayWord(day)), translated(wording::dateWords(day)),
             timeWords(minuteOfDay));
}

QString placeWords(rotation::ArcPlace place)
{
    switch (place) {
    case rotation::ArcPlace::SettleIn:
        return QCoreApplication::translate("SessionWords", "To arrive");
    case rotation::ArcPlace::Work:
        return QCoreApplication::translate("SessionWords", "The work");
    case rotation::ArcPlace::SettleOut:
        break;
    }
    return QCoreApplication::translate("SessionWords", "To part");
}

QString cameraWords(catalogue::View view)
{
    return view == catalogue::View::Hands
               ? QCoreApplication::translate("SessionWords", "Camera on the hands")
               : QCoreApplication::translate("SessionWords", "Camera on the whole body");
}

QString activityName(const Household &household, const ActivityId &activity)
{
    const catalogue::Activity *entry = household.catalogue().activity(activity);
    return fromCore(entry != nullptr ? entry->name : activity.value);
}

QString itemName(const Household &household, const ItemId &item)
{
    const catalogue::ItemKind *kind = household.catalogue().item(item);
    return capitalised(fromCore(kind != nullptr ? kind->name : item.value));
}

QString problemWords(const Household &household, const usecase::PlanProblem &problem)
{
    using enum usecase::NotInPlan;
    const QString item = uncapitalised(itemName(household, problem.item));
    QString why;
    switch (problem.why) {
    case NotOnVideo:
        why = QCoreApplication::translate("SessionWords", "it is nothing for a camera");
        break;
    case NotOnList:
        why = QCoreApplication::translate("SessionWords", "%1: not on their lid list").arg(item);
        break;
    case OnItsWay:
        why = QCoreApplication::translate("SessionWords", "%1: still on its way").arg(item);
        break;
    case ToTakeOut:
        why = QCoreApplication::translate("SessionWords", "%1: to be taken out").arg(item);
        break;
    case Unknown:
    case HeldBack:
        why = QCoreApplication::translate("SessionWords", "not offered in this home now");
        break;
    }
    return QCoreApplication::translate("SessionWords", "%1: %2")
        .arg(isolated(activityName(household, problem.activity)), why);
}

} // namespace lidlark::mobile
