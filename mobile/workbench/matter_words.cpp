#include "matter_words.h"

#include "mobile/bridge/new_list.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

using wording::BoxMatter;

QStringList safetyLines(const Household &household, const usecase::BoxHealth &health)
{
    QStringList lines;
    for (const usecase::TakeOut &takeOut : health.mustAvoid) {
        lines.append(translated(
            wording::mustStayAway(takeOut.note.what, takeOut.note.author, takeOut.note.when.day)));
        std::vector<ItemId> left;
        for (const usecase::TakeOutThing &thing : takeOut.things) {
            if (!thing.out)
                left.push_back(thing.item);
        }
        lines.append(translated(wording::stillToTakeOut(toCore(itemNames(household, left)))));
    }
    if (health.onTheFloor > 0)
        lines.append(translated(wording::piecesNotFound(health.onTheFloor)));
    return lines;
}

QStringList stockLines(const Household &household, const usecase::BoxHealth &health)
{
    QStringList lines;
    if (!health.asked.empty())
        lines.append(translated(wording::askedFor(toCore(itemNames(household, health.asked)))));
    if (!health.low.empty())
        lines.append(translated(wording::runningLow(toCore(itemNames(household, health.low)))));
    return lines;
}

} // namespace

std::vector<BoxMatter> mattersOf(const usecase::BoxHealth &health)
{
    std::vector<BoxMatter> matters;
    if (health.hasSafetyNote())
        matters.push_back(BoxMatter::SafetyNote);
    if (health.awaitsConfirmation())
        matters.push_back(BoxMatter::AwaitingConfirmation);
    if (health.needsStock())
        matters.push_back(BoxMatter::NeedsStock);
    if (health.reviewDue())
        matters.push_back(BoxMatter::ReviewDue);
    return matters;
}

QStringList revisionLines(const Household &household, const usecase::RevisionState &state)
{
    QStringList lines{translated(wording::revisionSent(state.number, state.sent))};
    for (const usecase::Received &received : state.received)
        lines.append(translated(wording::revisionReceived(received.person, received.day)));
    if (state.received.empty())
        lines.append(translated(wording::notReceived()));
    if (state.twoLists)
        lines.append(translated(wording::twoLists()));
    std::vector<ItemId> left;
    for (const usecase::RemovedThing &thing : state.takeOut) {
        if (!thing.out)
            left.push_back(thing.item);
    }
    if (!left.empty())
        lines.append(translated(wording::stillToTakeOut(toCore(itemNames(household, left)))));
    else if (!state.takeOut.empty())
        lines.append(translated(wording::allTakenOut()));
    if (!state.onTheWay.empty())
        lines.append(translated(wording::onTheWay(toCore(itemNames(household, state.onTheWay)))));
    return lines;
}

QStringList linesOf(const Household &household, const usecase::BoxHealth &health, BoxMatter matter)
{
    switch (matter) {
    case BoxMatter::SafetyNote:
        return safetyLines(household, health);
    case BoxMatter::AwaitingConfirmation:
        return health.unconfirmed ? revisionLines(household, *health.unconfirmed) : QStringList();
    case BoxMatter::NeedsStock:
        return stockLines(household, health);
    case BoxMatter::ReviewDue:
        return health.reviewOn ? QStringList{translated(wording::goalReview(*health.reviewOn))}
                               : QStringList();
    }
    return {};
}

} // namespace lidlark::mobile
