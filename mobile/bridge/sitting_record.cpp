#include "mobile/bridge/sitting_record.h"

#include <QJsonArray>

#include "mobile/bridge/life_words.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

QJsonObject toJson(const safety::Room &room)
{
    QJsonObject object{{QStringLiteral("under-three"), room.visitorUnderThree},
                       {QStringLiteral("mouther"), room.visitorMouther},
                       {QStringLiteral("quiet"), room.quietNow},
                       {QStringLiteral("beside-said"), room.besideSaid},
                       {QStringLiteral("adult"), static_cast<int>(room.adultCanBe)}};
    if (room.present) {
        QJsonArray present;
        for (const PersonId &person : *room.present)
            present.append(fromCore(person.value));
        object.insert(QStringLiteral("present"), present);
    }
    return object;
}

safety::Room roomFrom(const QJsonObject &object)
{
    constexpr int beside = static_cast<int>(catalogue::Supervision::Beside);
    safety::Room room;
    room.visitorUnderThree = object[QStringLiteral("under-three")].toBool();
    room.visitorMouther = object[QStringLiteral("mouther")].toBool();
    room.quietNow = object[QStringLiteral("quiet")].toBool();
    room.besideSaid = object[QStringLiteral("beside-said")].toBool();
    const int adult = object[QStringLiteral("adult")].toInt(beside);
    if (adult >= 0 && adult <= beside)
        room.adultCanBe = static_cast<catalogue::Supervision>(adult);
    if (object.contains(QStringLiteral("present"))) {
        room.present.emplace();
        const QJsonArray present = object[QStringLiteral("present")].toArray();
        for (const auto &person : present)
            room.present->push_back({toCore(person.toString())});
    }
    return room;
}

QJsonObject toJson(const rotation::Filters &filters)
{
    QJsonObject object;
    for (const LifeWord &word : lifeWords)
        object.insert(QLatin1String(word.name), filters.*word.filter);
    return object;
}

rotation::Filters filtersFrom(const QJsonObject &object)
{
    rotation::Filters filters;
    for (const LifeWord &word : lifeWords)
        filters.*word.filter = object[QLatin1String(word.name)].toBool();
    return filters;
}

} // namespace lidlark::mobile
