#include "today_view_model.h"

#include "core/wording/caution_words.h"
#include "core/wording/day_words.h"
#include "core/wording/play_words.h"
#include "core/wording/why_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr auto noticeKey = "notice.unchecked";

struct NamedFilter {
    const char *name;
    bool rotation::Filters::*on;
};
constexpr NamedFilter namedFilters[] = {
    {"no-table", &rotation::Filters::noTable},   {"no-mess", &rotation::Filters::noMess},
    {"quiet", &rotation::Filters::quiet},        {"one-hand", &rotation::Filters::oneHand},
    {"tired", &rotation::Filters::tiredAdult},   {"away", &rotation::Filters::awayFromHome},
    {"ill", &rotation::Filters::someoneIsIll},
};

} // namespace

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
        return translated(wording::sentenceFor(*offer));
    case SupervisionRole:
        return translated(wording::supervisionShort(offer->admitted.supervision()));
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
    return {{ActivityIdRole, "activityId"},   {NameRole, "name"},
            {WhyRole, "why"},                 {SupervisionRole, "supervision"},
            {DrawingRole, "drawing"},         {DrawingAltRole, "drawingAlt"},
            {InviteRole, "invite"},           {MinutesOutRole, "minutesOut"},
            {MinutesPlayRole, "minutesPlay"}, {MinutesBackRole, "minutesBack"}};
}

QString TodayViewModel::dayWords() const
{
    return translated(wording::dayPartWords(m_household->today()));
}

QStringList TodayViewModel::roomNames() const
{
    QStringList names{m_household->child()};
    if (!m_today || !m_today->family.sheet)
        return names;
    const auto &present = m_sitting->room().present;
    for (const child::Person &person : m_today->family.sheet->people) {
        const bool here =
            !present || std::find(present->begin(), present->end(), person.id) != present->end();
        if (here && person.id.value != m_today->family.child.id.value)
            names.append(fromCore(person.alias));
    }
    return names;
}

QString TodayViewModel::kiteName() const
{
    const auto kite = checkin::kiteNames.parse(toCore(m_sitting->kite()));
    return kite ? translated(wording::kiteName(*kite)) : QString();
}

QString TodayViewModel::kiteAdvice() const
{
    const auto kite = checkin::kiteNames.parse(toCore(m_sitting->kite()));
    return kite ? translated(wording::kiteAdvice(*kite)) : QString();
}

QStringList TodayViewModel::filtersOn() const
{
    QStringList names;
    for (const NamedFilter &filter : namedFilters) {
        if (m_sitting->filters().*filter.on)
            names.append(QString::fromLatin1(filter.name));
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

bool TodayViewModel::floorNote() const
{
    if (!m_today)
        return false;
    const auto box = usecase::boxStateOf(m_today->family, m_household->catalogue(),
                                         m_today->when.day);
    return box.floorNoteOpen || box.balloonNoteOpen;
}

QString TodayViewModel::boxPlace() const
{
    if (!m_today || !m_today->family.place ||
        m_today->family.place->place == m_today->family.home.value)
        return {};
    return fromCore(m_today->family.place->words);
}

bool TodayViewModel::unchecked() const
{
    if (!m_today)
        return false;
    const auto read =
        store::DeviceRepository(m_household->workplace().database).localState(noticeKey);
    if (read && *read && **read == toText(m_household->today().day))
        return false;
    const auto &offers = m_today->menu.offers;
    return std::any_of(offers.begin(), offers.end(), [](const rotation::Offer &offer) {
        return offer.admitted.activity().status == catalogue::Status::AwaitingReview;
    });
}

void TodayViewModel::hideUnchecked()
{
    // A notice that comes back once too often does no harm: nothing to report when this fails.
    (void)store::DeviceRepository(m_household->workplace().database)
        .setLocalState(noticeKey, toText(m_household->today().day));
    emit refreshed();
}

void TodayViewModel::refresh()
{
    m_without.clear();
    ask();
}

void TodayViewModel::threeOthers()
{
    if (!m_today)
        return;
    for (const rotation::Offer &offer : m_today->menu.offers)
        m_without.insert(offer.admitted.activity().id);
    ask();
    if (m_today && m_today->menu.offers.empty())
        refresh(); // all have been seen: begin again with the best
}

void TodayViewModel::ask()
{
    usecase::MenuRequest request = m_sitting->request();
    request.without = m_without;
    auto menu = usecase::suggestToday(m_household->workplace(), request);
    beginResetModel();
    if (menu)
        m_today = *std::move(menu);
    else
        m_today.reset();
    endResetModel();
    m_problem = menu ? QString() : m_household->sentenceFor(menu.error());
    if (m_today) {
        // Forgetting that it was shown only makes an entry wait less: nothing to report.
        (void)usecase::markOffered(m_household->workplace(), *m_today);
    }
    emit refreshed();
}

bool TodayViewModel::begin(const QString &activityId)
{
    if (!m_today)
        return false;
    for (const rotation::Offer &offer : m_today->menu.offers) {
        if (fromCore(offer.admitted.activity().id.value) == activityId)
            return m_playInHand->begin(offer.admitted);
    }
    for (const safety::Admitted &admitted : m_today->gated.admitted) {
        if (fromCore(admitted.activity().id.value) == activityId)
            return m_playInHand->begin(admitted);
    }
    return false;
}

bool TodayViewModel::beginAnything()
{
    usecase::MenuRequest request = m_sitting->request();
    request.without = {m_lastAnything};
    const auto any = usecase::anythingAtAll(m_household->workplace(), request);
    if (!any) {
        m_problem = m_household->sentenceFor(any.error());
        emit refreshed();
        return false;
    }
    m_lastAnything = any->activity().id;
    return m_playInHand->begin(*any);
}

void TodayViewModel::toggleFilter(const QString &name)
{
    rotation::Filters filters = m_sitting->filters();
    for (const NamedFilter &filter : namedFilters) {
        if (QString::fromLatin1(filter.name) == name)
            filters.*filter.on = !(filters.*filter.on);
    }
    m_sitting->setFilters(filters);
    refresh();
}

} // namespace lidlark::mobile
