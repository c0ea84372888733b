#include "mobile/bridge/sitting.h"

#include <QJsonDocument>

#include "core/base/instant.h"
#include "core/usecase/check_in.h"
#include "mobile/bridge/sitting_record.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

constexpr int notNowsBeforeCorner = 3;   // checkin.md 6
constexpr int tapsBetweenEveryKites = 9; // checkin.md 3.1: every tenth time at most
constexpr std::int64_t justNowMs = 10 * msPerMinute;

QString nameOf(const std::optional<KiteTap> &tap)
{
    return tap ? fromCore(checkin::kiteNames.of(tap->kite())) : QString();
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

std::int64_t Sitting::nowMs() const
{
    return m_household->workplace().clock.nowMs();
}

QString Sitting::kite() const
{
    return m_kiteOff ? QString() : nameOf(m_shown);
}

bool Sitting::kiteJustNow() const
{
    return m_shown && m_shown->tappedMs > 0 && nowMs() - m_shown->tappedMs < justNowMs;
}

QString Sitting::kiteBefore() const
{
    return m_shown ? fromCore(checkin::kiteNames.of(m_shown->entry.before)) : QString();
}

QString Sitting::guess() const
{
    return m_kiteOff ? QString() : nameOf(m_guess);
}

bool Sitting::kiteInCorner() const
{
    return !m_kiteOff && m_notNows >= notNowsBeforeCorner;
}

bool Sitting::kiteToComplete() const
{
    return !m_kiteOff && m_shown && m_shown->pairOpen &&
           m_shown->entry.before != checkin::Kite::Bag;
}

void Sitting::setKiteOff(bool off)
{
    m_kiteOff = off;
    say();
}

void Sitting::setMinutes(int minutes)
{
    m_minutes = minutes;
    say();
}

void Sitting::setBoxNotHere(bool notHere)
{
    if (m_boxNotHere == notHere)
        return;
    m_boxNotHere = notHere;
    say();
}

void Sitting::setRoom(const safety::Room &room)
{
    m_room = room;
    say();
}

void Sitting::setFilters(const rotation::Filters &filters)
{
    m_filters = filters;
    say();
}

void Sitting::readNotice()
{
    m_noticeRead = true;
    keep();
    emit changed();
}

std::optional<KiteTap> Sitting::newTap(checkin::Kite kite, checkin::ShownBy by)
{
    usecase::Workplace &workplace = m_household->workplace();
    const std::string alias = toCore(m_household->child());
    const auto box = store::BoxRepository(workplace.database).boxOf(alias);
    const auto id = usecase::checkIn(workplace, alias, kite, by);
    if (!box || !id) {
        emit failed(m_household->sentenceFor(box ? id.error() : box.error()));
        return std::nullopt;
    }
    KiteTap tap;
    tap.entry = {*id, box->child, m_household->today(), kite, by, std::nullopt, {}};
    tap.tappedMs = nowMs();
    return tap;
}

void Sitting::showKite(const QString &name, bool fromAdult)
{
    const auto kite = checkin::kiteNames.parse(toCore(name));
    if (!kite)
        return;
    std::optional<KiteTap> &last = fromAdult ? m_guess : m_shown;
    if (last && last->changeableAt(nowMs())) {
        if (!report(usecase::changeCheckIn(m_household->workplace(), last->entry, *kite)))
            return;
        last->entry.before = *kite;
        last->tappedMs = nowMs();
    } else {
        const auto tap =
            newTap(*kite, fromAdult ? checkin::ShownBy::AdultGuess : checkin::ShownBy::Child);
        if (!tap)
            return;
        last = tap;
        if (!fromAdult)
            countTowardsEveryKite();
    }
    if (!fromAdult && *kite == checkin::Kite::Bag)
        countNotNow();
    else if (!fromAdult)
        m_notNows = 0;
    say();
}

void Sitting::countNotNow()
{
    const DayPart now = m_household->today();
    if (m_lastNotNow == now)
        return;
    m_lastNotNow = now;
    ++m_notNows;
}

void Sitting::countTowardsEveryKite()
{
    m_everyKiteDue = m_tapsToEveryKite == 0;
    m_tapsToEveryKite = m_everyKiteDue ? tapsBetweenEveryKites : m_tapsToEveryKite - 1;
}

void Sitting::beginBreaths()
{
    m_breathsBegun = true;
    keep();
    emit changed();
}

void Sitting::skipKite()
{
    if (m_shown)
        return;
    countNotNow();
    keep();
    emit changed();
}

void Sitting::removeKite()
{
    if (!m_shown)
        return;
    const checkin::CheckIn &entry = m_shown->entry;
    if (!report(usecase::removeCheckIn(m_household->workplace(), entry.id, entry.child)))
        return;
    m_shown.reset();
    say();
}

void Sitting::forgetKites()
{
    const std::string child = toCore(m_household->child());
    if (!report(usecase::forgetCheckIns(m_household->workplace(), child)))
        return;
    m_shown.reset();
    m_guess.reset();
    say();
    m_household->announce();
}

void Sitting::showKiteAfter(const QString &name, const QString &activityId)
{
    const auto after = checkin::kiteNames.parse(toCore(name));
    if (!after || !m_shown || activityId.isEmpty())
        return; // a pair is kept only when both were given (checkin.md 7)
    const ActivityId activity{toCore(activityId)};
    if (!report(usecase::checkInAfter(m_household->workplace(), m_shown->entry, *after, activity)))
        return;
    m_shown->entry.after = *after; // what the child shows now
    m_shown->entry.activity = activity;
    m_shown->pairOpen = false;
    say();
}

void Sitting::leaveKiteAfter()
{
    if (!m_shown || !m_shown->pairOpen)
        return;
    m_shown->pairOpen = false;
    keep();
    emit changed();
}

usecase::MenuRequest Sitting::request() const
{
    usecase::MenuRequest request;
    request.child = toCore(m_household->child());
    if (!m_kiteOff && m_shown)
        request.kite = m_shown->kite();
    else if (!m_kiteOff && m_guess)
        request.kite = m_guess->kite();
    request.room = m_room;
    request.filters = m_filters;
    request.boxNotHere = m_boxNotHere;
    if (m_minutes > 0)
        request.minutes = m_minutes;
    return request;
}

Result<usecase::TodayMenu> Sitting::menu() const
{
    usecase::MenuRequest asked = request();
    asked.without = m_aside;
    return usecase::suggestToday(m_household->workplace(), asked);
}

void Sitting::shown(const usecase::TodayMenu &menu) const
{
    // Forgetting that it was shown only makes an entry wait less: nothing to report.
    (void)usecase::markOffered(m_household->workplace(), menu);
}

void Sitting::setAside(const usecase::TodayMenu &menu)
{
    for (const rotation::Offer &offer : menu.menu.offers)
        m_aside.insert(offer.admitted.activity().id);
    const auto next = this->menu();
    if (next && next->menu.offers.empty())
        m_aside.clear(); // all have been seen: begin again with the best
    emit changed();
}

Result<safety::Admitted> Sitting::anything()
{
    usecase::MenuRequest asked = request();
    asked.without = {m_lastAnything};
    auto any = usecase::anythingAtAll(m_household->workplace(), asked);
    if (!any && any.error().code == ErrorCode::NotFound) {
        asked.without.clear(); // there is only this one
        any = usecase::anythingAtAll(m_household->workplace(), asked);
    }
    if (any) {
        m_lastAnything = any->activity().id;
        keep();
    }
    return any;
}

void Sitting::freshen()
{
    if (!m_household->isOpen() || m_household->today() == m_when)
        return;
    m_household->keepLimits();
    load();
}

} // namespace lidlark::mobile
