#include "today_view_model.h"

#include "core/wording/caution_words.h"
#include "core/wording/why_words.h"
#include "mobile/bridge/life_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

QStringList whyTexts(std::span<const rotation::Offer> offers)
{
    QStringList texts;
    for (const wording::WhyLine &line : wording::whyLines(offers))
        texts.append(translated(wording::sentenceFor(line)));
    return texts;
}

} // namespace

void TodayViewModel::componentComplete()
{
    connect(m_sitting, &Sitting::changed, this, &TodayViewModel::refreshSoon);
    connect(m_household, &Household::changed, this, &TodayViewModel::refreshSoon);
    refresh();
}

void TodayViewModel::refreshSoon()
{
    if (m_refreshComing)
        return;
    // One tap may say two things (another child: another sitting, another box); ask once.
    m_refreshComing = true;
    QMetaObject::invokeMethod(
        this,
        [this] {
            if (m_refreshComing)
                refresh();
        },
        Qt::QueuedConnection);
}

int TodayViewModel::rowCount(const QModelIndex &parent) const
{
    if (parent.isValid() || !m_today)
        return 0;
    return static_cast<int>(m_today->menu.offers.size());
}

const rotation::Offer *TodayViewModel::offerAt(const QModelIndex &index) const
{
    if (!m_today || index.row() < 0 || index.row() >= rowCount())
        return nullptr;
    return &m_today->menu.offers[static_cast<std::size_t>(index.row())];
}

QVariant TodayViewModel::data(const QModelIndex &index, int role) const
{
    const rotation::Offer *offer = offerAt(index);
    if (offer == nullptr)
        return {};
    const catalogue::Activity &activity = offer->admitted.activity();
    switch (role) {
    case ActivityIdRole:
        return fromCore(activity.id.value);
    case NameRole:
        return fromCore(activity.name);
    case WhyRole:
        return plannedToday() != nullptr && plannedToday()->activity().id == activity.id
                   ? tr("Kept for today")
                   : m_whyLines[index.row()];
    case SupervisionRole:
        return safetyText(wording::supervisionShort(offer->admitted.supervision()));
    case DrawingRole:
        return fromCore(activity.picture.drawing);
    case DrawingAltRole:
        return fromCore(activity.picture.alt);
    case InviteRole:
        return fromCore(activity.invite);
    case MinutesOutRole:
        return activity.minutes.out;
    case MinutesPlayRole:
        return activity.minutes.play;
    case MinutesBackRole:
        return activity.minutes.back;
    default:
        return {};
    }
}

QHash<int, QByteArray> TodayViewModel::roleNames() const
{
    return {{ActivityIdRole, "activityId"},
            {NameRole, "name"},
            {WhyRole, "why"},
            {SupervisionRole, "supervision"},
            {DrawingRole, "drawing"},
            {DrawingAltRole, "drawingAlt"},
            {InviteRole, "invite"},
            {MinutesOutRole, "minutesOut"},
            {MinutesPlayRole, "minutesPlay"},
            {MinutesBackRole, "minutesBack"}};
}

void TodayViewModel::refresh()
{
    m_refreshComing = false;
    auto menu = m_sitting->menu();
    beginResetModel();
    m_today = menu ? std::optional(*menu) : std::nullopt;
    m_whyLines = m_today ? whyTexts(m_today->menu.offers) : QStringList();
    endResetModel();
    m_problem = menu ? QString() : m_household->sentenceFor(menu.error());
    if (m_today)
        m_sitting->shown(*m_today);
    emit refreshed();
}

void TodayViewModel::threeOthers()
{
    if (m_today)
        m_sitting->setAside(*m_today);
}

bool TodayViewModel::begin(const QString &activityId)
{
    if (!m_today)
        return false;
    const auto &offers = m_today->menu.offers;
    const auto found =
        std::find_if(offers.begin(), offers.end(), [&](const rotation::Offer &offer) {
            return fromCore(offer.admitted.activity().id.value) == activityId;
        });
    return found != offers.end() && m_playInHand->begin(found->admitted);
}

const safety::Admitted *TodayViewModel::plannedToday() const
{
    if (!m_today)
        return nullptr;
    const usecase::Family &family = m_today->family;
    const auto wish = family.dayWishes.find(m_today->when.day);
    if (wish == family.dayWishes.end() || wish->second.wish != play::Wish::Keep)
        return nullptr;
    const ActivityId &kept = wish->second.activity;
    const bool played = std::ranges::any_of(family.plays, [&](const play::Play &play) {
        return play.activity == kept && play.when.day == m_today->when.day;
    });
    const auto &admitted = m_today->gated.admitted;
    const auto found = std::ranges::find_if(
        admitted, [&](const safety::Admitted &one) { return one.activity().id == kept; });
    return played || found == admitted.end() ? nullptr : &*found;
}

bool TodayViewModel::isOffered(const ActivityId &id) const
{
    return std::ranges::any_of(m_today->menu.offers, [&](const rotation::Offer &offer) {
        return offer.admitted.activity().id == id;
    });
}

QString TodayViewModel::planned() const
{
    const safety::Admitted *planned = plannedToday();
    return planned != nullptr && !isOffered(planned->activity().id)
               ? fromCore(planned->activity().name)
               : QString();
}

bool TodayViewModel::beginPlanned()
{
    const safety::Admitted *planned = plannedToday();
    return planned != nullptr && m_playInHand->begin(*planned);
}

bool TodayViewModel::beginAnything()
{
    const auto any = m_sitting->anything();
    if (!any) {
        m_problem = m_household->sentenceFor(any.error());
        emit refreshed();
        return false;
    }
    return m_playInHand->begin(*any);
}

void TodayViewModel::toggleFilter(const QString &name)
{
    rotation::Filters filters = m_sitting->filters();
    for (const LifeWord &word : lifeWords) {
        if (QLatin1String(word.name) == name)
            filters.*word.filter = !(filters.*word.filter);
    }
    m_sitting->setFilters(filters);
}

} // namespace lidlark::mobile
