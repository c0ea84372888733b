#include "mobile/bridge/play_sharing.h"

#include "core/usecase/share_plays.h"
#include "core/wording/print_words.h"
#include "core/wording/summary_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

void PlaySharing::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &PlaySharing::load);
    connect(household, &Household::childChanged, this, &PlaySharing::load);
    load();
}

void PlaySharing::load()
{
    m_with.clear();
    m_said.clear();
    m_shares = false;
    if (m_household->isOpen() && !m_household->child().isEmpty()) {
        const auto sharing =
            usecase::playSharing(m_household->workplace(), toCore(m_household->child()));
        if (sharing && *sharing) {
            const std::vector<std::string> &with = (*sharing)->with;
            m_with = translated(wording::inList({with.begin(), with.end()}));
            m_shares = (*sharing)->shares;
            if (m_shares)
                m_said = translated(wording::toldWith((*sharing)->by, *(*sharing)->day));
        }
    }
    emit changed();
}

void PlaySharing::say(bool yes)
{
    const Outcome done =
        usecase::sharePlays(m_household->workplace(), toCore(m_household->child()), yes);
    m_problem = done ? QString() : m_household->sentenceFor(done.error());
    if (done)
        m_household->announce();
    load();
}

} // namespace lidlark::mobile
