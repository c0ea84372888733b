#include <QJsonDocument>

#include "mobile/bridge/sitting.h"
#include "mobile/bridge/sitting_record.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

QString textOf(DayPart when)
{
    return fromCore(toText(when.day)) + u' ' + fromCore(toText(when.part));
}

} // namespace

void Sitting::load()
{
    m_room = {};
    m_filters = {};
    m_shown.reset();
    m_guess.reset();
    m_aside.clear();
    m_lastAnything = {};
    m_lastNotNow.reset();
    m_minutes = 0;
    m_notNows = 0;
    m_kiteOff = false;
    m_childLeftHanded = false;
    m_noticeRead = false;
    m_tapsToEveryKite = 0;
    m_everyKiteDue = false;
    m_breathsBegun = false;
    m_boxNotHere = false;
    m_when = m_household->today();
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
    m_childLeftHanded = object[QStringLiteral("left-handed")].toBool();
    m_noticeRead = object[QStringLiteral("notice-read")].toBool();
    m_tapsToEveryKite = qMax(0, object[QStringLiteral("taps-to-every-kite")].toInt());
    m_lastAnything = {toCore(object[QStringLiteral("last-anything")].toString())};
    const QString when = object[QStringLiteral("when")].toString();
    if (object[QStringLiteral("last-not-now")].toString() == textOf(m_when))
        m_lastNotNow = m_when;
    if (!when.startsWith(fromCore(toText(m_when.day))))
        return;
    m_filters = filtersFrom(object[QStringLiteral("filters")].toObject());
    m_minutes = object[QStringLiteral("minutes")].toInt();
    m_boxNotHere = object[QStringLiteral("box-not-here")].toBool();
    if (when != textOf(m_when))
        return; // who is here and how the body feels change faster than a day
    m_room = roomFrom(object[QStringLiteral("room")].toObject());
    m_shown = kiteTapFrom(object[QStringLiteral("shown")].toObject());
    m_guess = kiteTapFrom(object[QStringLiteral("guess")].toObject());
    m_breathsBegun = object[QStringLiteral("breaths-begun")].toBool();
}

void Sitting::setChildLeftHanded(bool leftHanded)
{
    m_childLeftHanded = leftHanded;
    say();
}

void Sitting::say()
{
    m_aside.clear(); // another question has another answer
    keep();
    emit changed();
}

void Sitting::keep()
{
    m_when = m_household->today();
    QJsonObject object{{QStringLiteral("when"), textOf(m_when)},
                       {QStringLiteral("filters"), toJson(m_filters)},
                       {QStringLiteral("room"), toJson(m_room)},
                       {QStringLiteral("minutes"), m_minutes},
                       {QStringLiteral("notice-read"), m_noticeRead},
                       {QStringLiteral("box-not-here"), m_boxNotHere},
                       {QStringLiteral("not-nows"), m_notNows},
                       {QStringLiteral("kite-off"), m_kiteOff},
                       {QStringLiteral("left-handed"), m_childLeftHanded},
                       {QStringLiteral("taps-to-every-kite"), m_tapsToEveryKite},
                       {QStringLiteral("breaths-begun"), m_breathsBegun},
                       {QStringLiteral("last-anything"), fromCore(m_lastAnything.value)}};
    if (m_lastNotNow)
        object.insert(QStringLiteral("last-not-now"), textOf(*m_lastNotNow));
    if (m_shown)
        object.insert(QStringLiteral("shown"), toJson(*m_shown));
    if (m_guess)
        object.insert(QStringLiteral("guess"), toJson(*m_guess));
    store::DeviceRepository local(m_household->workplace().database);
    report(local.setLocalState(key(),
                               QJsonDocument(object).toJson(QJsonDocument::Compact).toStdString()));
}

bool Sitting::report(const Outcome &outcome)
{
    if (!outcome)
        emit failed(m_household->sentenceFor(outcome.error()));
    return outcome.ok();
}

} // namespace lidlark::mobile
