#include "today_view_model.h"

#include "core/wording/day_words.h"
#include "core/wording/help_words.h"
#include "core/wording/play_words.h"
#include "core/wording/why_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/life_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"
#include "mobile/bridge/time_words.h"
#include "mobile/bridge/video_desk.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr int usualOffers = 3;

QString kiteNamed(const QString &name)
{
    const auto kite = checkin::kiteNames.parse(toCore(name));
    return kite ? translated(wording::kiteName(*kite)) : QString();
}

/// For whom something stays away today.
bool needsCare(const child::Person &person, Day today)
{
    return person.kind == child::PersonKind::Child &&
           (safety::isUnderThree(person, today) || safety::isMouther(person, today));
}

} // namespace

// A screen's bindings may read these before the required properties are there.

QString TodayViewModel::dayWords() const
{
    if (m_household == nullptr)
        return {};
    return translated(wording::dayPartWords(m_household->today()));
}

QStringList TodayViewModel::roomNames() const
{
    if (m_household == nullptr || m_sitting == nullptr)
        return {};
    QStringList names{m_household->child()};
    if (!m_today || !m_today->family.sheet)
        return names;
    const auto &present = m_sitting->room().present;
    std::vector<child::Person> here;
    for (const child::Person &person : m_today->family.sheet->people) {
        const bool isHere =
            !present || std::find(present->begin(), present->end(), person.id) != present->end();
        if (isHere && person.id.value != m_today->family.child.id.value)
            here.push_back(person);
    }
    const Day today = m_today->when.day;
    const std::string self = toCore(m_household->person());
    std::stable_sort(here.begin(), here.end(), [&](const auto &left, const auto &right) {
        const auto order = [&](const child::Person &person) {
            return needsCare(person, today) ? 0 : person.alias == self ? 1 : 2;
        };
        return order(left) < order(right);
    });
    for (const child::Person &person : here)
        names.append(fromCore(person.alias));
    return names;
}

std::optional<checkin::Kite> TodayViewModel::kite() const
{
    if (m_sitting == nullptr)
        return std::nullopt;
    const QString name = m_sitting->kite().isEmpty() ? m_sitting->guess() : m_sitting->kite();
    return checkin::kiteNames.parse(toCore(name));
}

QString TodayViewModel::kiteName() const
{
    return m_sitting != nullptr ? kiteNamed(m_sitting->kite()) : QString();
}

QString TodayViewModel::kiteNote() const
{
    if (m_household == nullptr || m_sitting == nullptr)
        return {};
    const QString child = isolated(m_household->child());
    return m_sitting->kiteJustNow() ? tr("%1 showed us just now").arg(child)
                                    : tr("%1 showed us earlier").arg(child);
}

QString TodayViewModel::guessName() const
{
    return m_sitting != nullptr ? kiteNamed(m_sitting->guess()) : QString();
}

QString TodayViewModel::kiteCaution() const
{
    const auto shown = kite();
    return shown == checkin::Kite::Resting ? safetyText(wording::kiteAdvice(*shown)) : QString();
}

QString TodayViewModel::kiteAdvice() const
{
    const auto shown = kite();
    return shown && shown != checkin::Kite::Resting ? translated(wording::kiteAdvice(*shown))
                                                    : QString();
}

QStringList TodayViewModel::filtersOn() const
{
    QStringList names;
    if (m_sitting == nullptr)
        return names;
    for (const LifeWord &word : lifeWords) {
        if (m_sitting->filters().*word.filter)
            names.append(QLatin1String(word.name));
    }
    return names;
}

QStringList TodayViewModel::gaveWay() const
{
    QStringList sentences;
    if (!m_today)
        return sentences;
    for (const rotation::SideCondition condition : m_today->menu.gaveWay)
        sentences.append(translated(wording::sentenceFor(condition)));
    return sentences;
}

QString TodayViewModel::help() const
{
    if (!m_today || count() >= usualOffers || m_sitting->hasSetAside())
        return {};
    return translated(
        wording::whatWouldHelp(m_today->gated, m_sitting->filters(), m_sitting->minutes() > 0));
}

bool TodayViewModel::floorNote() const
{
    return m_today && !m_household->floorSearch().missing.empty();
}

bool TodayViewModel::mustLeave() const
{
    return m_today && m_household->somethingMustLeave();
}

bool TodayViewModel::boxIsElsewhere() const
{
    return m_today && m_today->family.place &&
           m_today->family.place->place != m_today->family.home.value;
}

QString TodayViewModel::boxPlace() const
{
    return boxIsElsewhere() ? fromCore(m_today->family.place->words) : QString();
}

QString TodayViewModel::boxPlaceSaidBy() const
{
    if (!boxIsElsewhere())
        return {};
    const box::Place &place = *m_today->family.place;
    const QString day = translated(wording::dayWords(place.when.day, m_today->when.day));
    return tr("%1, %2").arg(isolated(fromCore(place.author)), day);
}

bool TodayViewModel::unchecked() const
{
    if (!m_today || m_sitting->noticeRead())
        return false;
    const auto &offers = m_today->menu.offers;
    return std::any_of(offers.begin(), offers.end(), [](const rotation::Offer &offer) {
        return offer.admitted.activity().status == catalogue::Status::AwaitingReview;
    });
}

QString TodayViewModel::videoSession() const
{
    constexpr int daysAhead = 7;
    if (!m_today || m_household->guest() || m_household->therapist())
        return {};
    const Day today = m_household->today().day;
    const auto sessions = videoSessionsOf(*m_household, m_today->family);
    if (!sessions || sessions->empty() || sessions->front().plan.day > today + daysAhead)
        return {};
    const workbench::VideoPlan &plan = sessions->front().plan;
    return tr("%1 %2, %3")
        .arg(translated(wording::weekdayWord(plan.day)), translated(wording::dateWords(plan.day)),
             timeWords(plan.minuteOfDay));
}

} // namespace lidlark::mobile
