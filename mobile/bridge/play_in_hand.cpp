#include "mobile/bridge/play_in_hand.h"

#include "core/store/recording.h"
#include "core/wording/closing_words.h"
#include "core/wording/day_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

PlayInHand::PlayInHand(Household *household, QObject *parent)
    : QObject(parent), m_household(household)
{
    connect(household, &Household::childChanged, this, [this] {
        m_lastPlay = {}; // what is noticed now is another child's
        reload();
    });
    reload();
}

void PlayInHand::reload()
{
    m_progress.reset();
    m_box = {};
    if (m_household->isOpen() && !m_household->child().isEmpty()) {
        usecase::Workplace &workplace = m_household->workplace();
        const auto box =
            store::BoxRepository(workplace.database).boxOf(toCore(m_household->child()));
        if (box) {
            m_box = box->id;
            const auto progress = usecase::loadProgress(workplace, box->id, box->child);
            if (progress)
                m_progress = *progress;
        }
    }
    mindTheFamily();
    emit changed();
}

const catalogue::Activity *PlayInHand::activity() const
{
    return m_progress ? m_household->catalogue().activity(m_progress->activity) : nullptr;
}

QString PlayInHand::activityId() const
{
    return m_progress ? fromCore(m_progress->activity.value) : QString();
}

QString PlayInHand::activityName() const
{
    const catalogue::Activity *entry = activity();
    return entry != nullptr ? fromCore(entry->name) : activityId();
}

bool PlayInHand::puttingBack() const
{
    return m_progress && m_progress->stage == usecase::Stage::PuttingBack;
}

int PlayInHand::step() const
{
    return m_progress ? m_progress->step : 0;
}

bool PlayInHand::fromBefore() const
{
    return m_progress && m_progress->began != m_household->today();
}

QString PlayInHand::beganWhen() const
{
    if (!m_progress)
        return {};
    return translated(wording::dayWords(m_progress->began.day, m_household->today().day));
}

bool PlayInHand::nothingFromBox() const
{
    return std::none_of(items().begin(), items().end(), [](const catalogue::ItemUse &use) {
        return use.source == catalogue::Source::Box;
    });
}

bool PlayInHand::begin(const safety::Admitted &admitted)
{
    usecase::Workplace &workplace = m_household->workplace();
    const auto play = usecase::startPlay(
        workplace, {toCore(m_household->child()), admitted.activity().id, {}, std::nullopt});
    if (!play)
        return report(play.error());
    usecase::Progress progress;
    progress.play = *play;
    progress.activity = admitted.activity().id;
    progress.items = admitted.items();
    progress.swaps = admitted.swaps();
    progress.cautions = admitted.cautions();
    progress.supervision = admitted.supervision();
    progress.began = m_household->today();
    if (const auto family = m_household->family()) {
        const auto first = usecase::firstGradingOf(*family, admitted.activity());
        progress.grading = first.used;
        progress.gradingFrom = first.from;
    }
    m_lastPlay = {};
    return keep(progress);
}

bool PlayInHand::goToStep(int step)
{
    if (!m_progress || step < 0)
        return false;
    usecase::Progress progress = *m_progress;
    progress.step = step;
    return keep(progress);
}

bool PlayInHand::startPuttingBack()
{
    if (!m_progress)
        return false;
    usecase::Progress progress = *m_progress;
    progress.stage = usecase::Stage::PuttingBack;
    return keep(progress);
}

bool PlayInHand::goOnPlaying()
{
    if (!m_progress)
        return false;
    usecase::Progress progress = *m_progress;
    progress.stage = usecase::Stage::Playing;
    return keep(progress);
}

bool PlayInHand::tapHome(const ItemId &item, int pieces)
{
    if (!m_progress)
        return false;
    usecase::Progress progress = *m_progress;
    progress.home[item] = std::max(0, pieces);
    return keep(progress);
}

bool PlayInHand::allBack()
{
    return end(false);
}

bool PlayInHand::stop()
{
    return end(true);
}

bool PlayInHand::end(bool stopped)
{
    if (!m_progress)
        return false;
    usecase::Workplace &workplace = m_household->workplace();
    const Outcome done = stopped ? usecase::stopPlay(workplace, m_progress->play, {}, {})
                                 : usecase::putBack(workplace, m_progress->play, {}, {});
    if (!done)
        return report(done);
    keepGrading();
    forget();
    return true;
}

void PlayInHand::forget()
{
    const QString endedActivity = activityId();
    m_lastPlay = m_progress->play;
    // The play has ended by its event; what was kept is only clutter now.
    (void)usecase::clearProgress(m_household->workplace(), m_box);
    m_progress.reset();
    emit changed();
    emit ended(endedActivity);
    m_household->announce();
}

bool PlayInHand::notice(const QString &name)
{
    const auto phrase = play::phraseNames.parse(toCore(name));
    if (!phrase || m_lastPlay.empty())
        return false;
    const bool kept = report(usecase::noticePhrase(m_household->workplace(), m_lastPlay, *phrase));
    m_household->announce();
    return kept;
}

const std::vector<catalogue::ItemUse> &PlayInHand::items() const
{
    static const std::vector<catalogue::ItemUse> none;
    return m_progress ? m_progress->items : none;
}

const std::map<ItemId, ItemId> &PlayInHand::swaps() const
{
    static const std::map<ItemId, ItemId> none;
    return m_progress ? m_progress->swaps : none;
}

catalogue::TagSet PlayInHand::cautions() const
{
    return m_progress ? m_progress->cautions : catalogue::TagSet{};
}

catalogue::Supervision PlayInHand::supervision() const
{
    return m_progress ? m_progress->supervision : catalogue::Supervision::Beside;
}

bool PlayInHand::keep(const usecase::Progress &progress)
{
    if (!report(usecase::keepProgress(m_household->workplace(), m_box, progress)))
        return false;
    // A step on changes nothing about the closing count; the family is read only where it can.
    const bool otherCount =
        !m_progress || m_progress->play != progress.play || m_progress->home != progress.home;
    m_progress = progress;
    if (otherCount)
        mindTheFamily();
    emit changed();
    return true;
}

bool PlayInHand::report(const Outcome &outcome)
{
    if (outcome)
        return true;
    emit failed(m_household->sentenceFor(outcome.error()));
    return false;
}

} // namespace lidlark::mobile
