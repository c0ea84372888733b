#include "kite_view_model.h"

#include "core/wording/play_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

constexpr int childTapsFromMonths = 36; // checkin.md 10, screen time

}

bool KiteViewModel::adultShows() const
{
    const auto family = m_household->family();
    return family && family->child.age &&
           family->child.age->youngestMonths(m_household->today().day) < childTapsFromMonths;
}

QString KiteViewModel::name(const QString &kite) const
{
    const auto parsed = checkin::kiteNames.parse(toCore(kite));
    return parsed ? translated(wording::kiteName(*parsed)) : QString();
}

QString KiteViewModel::note(const QString &kite) const
{
    const auto parsed = checkin::kiteNames.parse(toCore(kite));
    return parsed ? translated(wording::kiteNote(*parsed)) : QString();
}

QString KiteViewModel::thanks() const
{
    return translated(wording::kiteThanks());
}

void KiteViewModel::show(const QString &kite, bool fromAdult)
{
    if (m_afterActivity.isEmpty())
        m_sitting->showKite(kite, fromAdult);
    else
        m_sitting->showKiteAfter(kite, m_afterActivity);
}

} // namespace lidlark::mobile
