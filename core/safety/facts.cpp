#include "core/safety/facts.h"

#include "core/safety/playing_child.h"

#include <algorithm>

namespace lidlark::safety {

namespace {

std::optional<int> monthsOf(const Situation &now)
{
    const child::Person player = playingChild(now.home, now.child);
    if (!player.age)
        return std::nullopt;
    return player.age->youngestMonths(now.today);
}

bool answered(const child::HomeSheet *home)
{
    constexpr child::Answer open = child::Answer::Unanswered;
    return home && home->avoidances.latex != open && home->avoidances.wheat != open &&
           home->avoidances.coeliac != open;
}

} // namespace

Facts::Facts(const Situation &now)
    : situation(now), room(companyIn(now.room, now.home, now.child, now.today)),
      home(companyOfHome(now.home, now.child, now.today)), months(monthsOf(now)),
      allergiesAnswered(answered(now.home)),
      milk(now.home ? now.home->avoidances.milk : child::Answer::Unanswered),
      flags(now.home ? now.home->flags : child::MedicalFlags{}),
      permissions(now.home ? now.home->permissions : child::Permissions{})
{
}

bool isOnHand(const catalogue::ItemKind &kind, const Situation &situation)
{
    if (kind.source == catalogue::Source::Box) {
        const auto stock = situation.box.items.find(kind.id);
        return stock != situation.box.items.end() && stock->second.low > 0;
    }
    if (!situation.home)
        return true;
    const auto &missing = situation.home->missingExtras;
    return std::find(missing.begin(), missing.end(), kind.id) == missing.end();
}

std::string joined(const std::vector<std::string> &names)
{
    std::string text;
    for (const std::string &name : names) {
        text += text.empty() ? "" : ", ";
        text += name;
    }
    return text;
}

} // namespace lidlark::safety
