#include "mobile/bridge/sitting.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "core/usecase/check_in.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

constexpr int notNowsBeforeCorner = 3; // checkin.md 6

/// The filters by the name they are kept under.
struct NamedFilter {
    const char *name;
    bool rotation::Filters::*on;
};
constexpr NamedFilter namedFilters[] = {
    {"no-table", &rotation::Filters::noTable},
    {"no-mess", &rotation::Filters::noMess},
    {"quiet", &rotation::Filters::quiet},
    {"one-hand", &rotation::Filters::oneHand},
    {"tired-adult", &rotation::Filters::tiredAdult},
    {"away", &rotation::Filters::awayFromHome},
    {"ill", &rotation::Filters::someoneIsIll},
};

QJsonObject roomToJson(const safety::Room &room)
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

safety::Room roomFromJson(const QJsonObject &object)
{
    safety::Room room;
    room.visitorUnderThree = object[QStringLiteral("under-three")].toBool();
    room.visitorMouther = object[QStringLiteral("mouther")].toBool();
    room.quietNow = object[QStringLiteral("quiet")].toBool();
    room.besideSaid = object[QStringLiteral("beside-said")].toBool();
    const int adult =
        object[QStringLiteral("adult")].toInt(static_cast<int>(catalogue::Supervision::Beside));
    if (adult >= 0 && adult <= static_cast<int>(catalogue::Supervision::Beside))
        room.adultCanBe = static_cast<catalogue::Supervision>(adult);
    if (object.contains(QStringLiteral("present"))) {
        room.present.emplace();
        for (const QJsonValue &person : object[QStringLiteral("present")].toArray())
            room.present->push_back({toCore(person.toString())});
    }
    return room;
}

} // namespace

Sitting::Sitting(Household *household, QObject *parent) : QObject(parent), m_household(household)
{
    connect(household, &Household::childChanged, this, &Sitting::load);
    load();
}

std::string Sitting::key() const
{
    return "sitting." + toCore(m_household->child());
}

QString Sitting::kite() const
{
    return m_kite ? fromCore(checkin::kiteNames.of(*m_kite)) : QString();
}

bool Sitting::kiteInCorner() const
{
    return m_notNows >= notNowsBeforeCorner;
}

void Sitting::setKiteOff(bool off)
{
    m_kiteOff = off;
    keep();
}

void Sitting::setMinutes(int minutes)
{
    m_minutes = minutes;
    keep();
}

void Sitting::setRoom(const safety::Room &room)
{
    m_room = room;
    keep();
}

void Sitting::setFilters(const rotation::Filters &filters)
{
    m_filters = filters;
    keep();
}

void Sitting::showKite(const QString &name, bool fromAdult)
{
    const auto kite = checkin::kiteNames.parse(toCore(name));
    if (!kite)
        return;
    usecase::Workplace &workplace = m_household->workplace();
    const auto by = fromAdult ? checkin::ShownBy::AdultGuess : checkin::ShownBy::Child;
    if (!m_checkInId.empty() && m_fromAdult == fromAdult) {
        const auto family = m_household->family();
        if (!family) {
            emit failed(m_household->sentenceFor(family.error()));
            return;
        }
        checkin::CheckIn entry{m_checkInId, family->child.id, {}, *kite, by, std::nullopt, {}};
        if (const Outcome done = usecase::changeCheckIn(workplace, entry, *kite); !done) {
            emit failed(m_household->sentenceFor(done.error()));
            return;
        }
    } else {
        const auto id = usecase::checkIn(workplace, toCore(m_household->child()), *kite, by);
        if (!id) {
            emit failed(m_household->sentenceFor(id.error()));
            return;
        }
        m_checkInId = *id;
    }
    m_notNows = *kite == checkin::Kite::Bag ? m_notNows + (m_kite == kite ? 0 : 1) : 0;
    m_kite = kite;
    m_fromAdult = fromAdult;
    keep();
}

void Sitting::skipKite()
{
    if (m_kite)
        return;
    ++m_notNows;
    keep();
}

void Sitting::removeKite()
{
    const auto family = m_household->family();
    if (!family || m_checkInId.empty())
        return;
    const Outcome done =
        usecase::removeCheckIn(m_household->workplace(), m_checkInId, family->child.id);
    if (!done) {
        emit failed(m_household->sentenceFor(done.error()));
        return;
    }
    m_kite.reset();
    m_checkInId.clear();
    keep();
}

void Sitting::showKiteAfter(const QString &name, const QString &activityId)
{
    const auto after = checkin::kiteNames.parse(toCore(name));
    const auto family = m_household->family();
    if (!after || !family || !m_kite || m_checkInId.empty())
        return; // a pair is kept only when both were given (checkin.md 7)
    const checkin::CheckIn entry{m_checkInId,
                                 family->child.id,
                                 {},
                                 *m_kite,
                                 m_fromAdult ? checkin::ShownBy::AdultGuess
                                             : checkin::ShownBy::Child,
                                 std::nullopt,
                                 {}};
    const Outcome done =
        usecase::checkInAfter(m_household->workplace(), entry, *after, {toCore(activityId)});
    if (!done)
        emit failed(m_household->sentenceFor(done.error()));
    m_kite = after; // what the child shows now; the next play begins with it
    m_checkInId.clear();
    keep();
}

usecase::MenuRequest Sitting::request() const
{
    usecase::MenuRequest request;
    request.child = toCore(m_household->child());
    request.kite = m_kite;
    request.room = m_room;
    request.filters = m_filters;
    if (m_minutes > 0)
        request.minutes = m_minutes;
    return request;
}

void Sitting::load()
{
    m_room = {};
    m_filters = {};
    m_kite.reset();
    m_checkInId.clear();
    m_fromAdult = false;
    m_minutes = 0;
    m_notNows = 0;
    m_kiteOff = false;
    if (m_household->isOpen() && !m_household->child().isEmpty()) {
        const auto kept =
            store::DeviceRepository(m_household->workplace().database).localState(key());
        if (kept && *kept)
            restore(QJsonDocument::fromJson(QByteArray::fromStdString(**kept)).object());
    }
    emit changed();
}

void Sitting::restore(const QJsonObject &object)
{
    m_notNows = object[QStringLiteral("not-nows")].toInt();
    m_kiteOff = object[QStringLiteral("kite-off")].toBool();
    const DayPart now = m_household->today();
    if (toCore(object[QStringLiteral("day")].toString()) != toText(now.day))
        return;
    const QJsonObject on = object[QStringLiteral("filters")].toObject();
    for (const NamedFilter &filter : namedFilters)
        m_filters.*filter.on = on[QLatin1String(filter.name)].toBool();
    m_minutes = object[QStringLiteral("minutes")].toInt();
    if (toCore(object[QStringLiteral("part")].toString()) != toText(now.part))
        return; // who is here and how the body feels change faster than a day
    m_room = roomFromJson(object[QStringLiteral("room")].toObject());
    m_kite = checkin::kiteNames.parse(toCore(object[QStringLiteral("kite")].toString()));
    m_checkInId = toCore(object[QStringLiteral("check-in")].toString());
    m_fromAdult = object[QStringLiteral("from-adult")].toBool();
}

void Sitting::keep()
{
    const DayPart now = m_household->today();
    QJsonObject on;
    for (const NamedFilter &filter : namedFilters)
        on.insert(QLatin1String(filter.name), m_filters.*filter.on);
    const QJsonObject object{{QStringLiteral("day"), fromCore(toText(now.day))},
                             {QStringLiteral("part"), fromCore(toText(now.part))},
                             {QStringLiteral("filters"), on},
                             {QStringLiteral("room"), roomToJson(m_room)},
                             {QStringLiteral("kite"), kite()},
                             {QStringLiteral("check-in"), fromCore(m_checkInId)},
                             {QStringLiteral("from-adult"), m_fromAdult},
                             {QStringLiteral("minutes"), m_minutes},
                             {QStringLiteral("not-nows"), m_notNows},
                             {QStringLiteral("kite-off"), m_kiteOff}};
    store::DeviceRepository local(m_household->workplace().database);
    const Outcome kept = local.setLocalState(
        key(), QJsonDocument(object).toJson(QJsonDocument::Compact).toStdString());
    if (!kept)
        emit failed(m_household->sentenceFor(kept.error()));
    emit changed();
}

} // namespace lidlark::mobile
