#include "our_way_view_model.h"

#include "core/play/our_way.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

void OurWayViewModel::setPlayInHand(PlayInHand *playInHand)
{
    m_playInHand = playInHand;
    connect(playInHand, &PlayInHand::changed, this, &OurWayViewModel::load);
    load();
}

void OurWayViewModel::load()
{
    const catalogue::Activity *activity = m_playInHand->activity();
    m_words = activity != nullptr ? m_playInHand->household()->ourWay(activity->id) : QString();
    emit changed();
}

bool OurWayViewModel::mayKeep() const
{
    return m_playInHand != nullptr && m_playInHand->household()->keepsOurWays();
}

int OurWayViewModel::longest()
{
    return static_cast<int>(play::longestWay);
}

bool OurWayViewModel::keep(const QString &words)
{
    const catalogue::Activity *activity = m_playInHand->activity();
    if (activity == nullptr)
        return false;
    Household *household = m_playInHand->household();
    const Outcome done = household->keepOurWay(activity->id, toCore(words));
    m_problem = done ? QString() : household->sentenceFor(done.error());
    if (done)
        household->announce();
    load();
    return done.ok();
}

} // namespace lidlark::mobile
