#include "core/usecase/take_back.h"

#include "core/journal/take_backs.h"
#include "core/store/recording.h"
#include "core/usecase/noted_today.h"
#include "core/usecase/share_plays.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

using journal::Event;
using journal::Kind;

Result<Noted> findNoted(Workplace &workplace, const TakingBack &what)
{
    auto noted = notedToday(workplace, what.child, what.author);
    if (!noted)
        return noted.error();
    for (Noted &one : *noted) {
        const bool named =
            std::any_of(one.events.begin(), one.events.end(), [&what](const Event &event) {
                return journal::identityOf(event) == what.event;
            });
        if (named && !one.mine)
            return Error{ErrorCode::Invalid, "only who noted it can take it back, and a person on "
                                             "the home sheet is changed there"};
        if (named)
            return std::move(one);
    }
    return Error{ErrorCode::NotFound, "that among what was noted today"};
}

/// One word against each of @p events, all or none.
Outcome sayAgainst(Workplace &workplace, const TakingBack &what, const std::vector<Event> &events)
{
    auto recording = store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    const std::string who = what.author.empty() ? workplace.device.person : what.author;
    for (const Event &event : events) {
        Outcome said =
            recording->sayAs(who, event.lane, Kind::TakenBack, journal::fieldsOfTakingBack(event));
        if (!said)
            return said;
    }
    return commitWithCopies(workplace, *recording);
}

Result<std::vector<Event>> saidOf(Workplace &workplace, const Event &event)
{
    return store::EventRepository(workplace.database)
        .ofSubject({event.lane, journal::subjectOf(event)});
}

/// The words of its subject that stand against @p event.
Result<std::vector<Event>> standingAgainst(Workplace &workplace, const Event &event)
{
    const auto said = saidOf(workplace, event);
    if (!said)
        return said.error();
    const std::vector<bool> stands = journal::whichStand(*said);
    const std::string identity = journal::identityOf(event);
    std::vector<Event> against;
    for (std::size_t i = 0; i < said->size(); ++i) {
        const Event &word = (*said)[i];
        if (stands[i] && journal::takenBackBy(word) == identity && journal::givesWayTo(event, word))
            against.push_back(word);
    }
    return against;
}

} // namespace

Outcome takeBack(Workplace &workplace, const TakingBack &what)
{
    const auto noted = findNoted(workplace, what);
    if (!noted)
        return noted.error();
    if (noted->takenBack)
        return Error{ErrorCode::Invalid, "it is taken back already"};
    std::vector<Event> standing;
    for (const Event &event : noted->events) {
        const auto against = standingAgainst(workplace, event);
        if (!against)
            return against.error();
        if (against->empty())
            standing.push_back(event);
    }
    return sayAgainst(workplace, what, standing);
}

Outcome putInAgain(Workplace &workplace, const TakingBack &what)
{
    const auto noted = findNoted(workplace, what);
    if (!noted)
        return noted.error();
    if (!noted->takenBack)
        return Error{ErrorCode::Invalid, "it was not taken back"};
    std::vector<Event> words;
    for (const Event &event : noted->events) {
        const auto against = standingAgainst(workplace, event);
        if (!against)
            return against.error();
        words.insert(words.end(), against->begin(), against->end());
    }
    return sayAgainst(workplace, what, words);
}

Result<std::string> lastNotedBy(Workplace &workplace, const std::string &childAlias,
                                const std::string &author)
{
    const auto noted = notedToday(workplace, childAlias, author);
    if (!noted)
        return noted.error();
    for (const Noted &one : *noted) {
        if (one.mine && !one.takenBack)
            return journal::identityOf(one.last());
    }
    return Error{ErrorCode::NotFound, "anything noted today that still stands"};
}

} // namespace lidlark::usecase
