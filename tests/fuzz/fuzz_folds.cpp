#include "tests/fuzz/made_events.h"
#include "tests/fuzz/target.h"

#include "core/box/item_care.h"
#include "core/box/item_ledger.h"
#include "core/box/lid_list.h"
#include "core/box/place.h"
#include "core/box/request.h"
#include "core/checkin/checkin_events.h"
#include "core/child/home_facts.h"
#include "core/child/reading_language.h"
#include "core/crew/given_key.h"
#include "core/crew/opening.h"
#include "core/crew/rights.h"
#include "core/goals/goal_record.h"
#include "core/journal/latest.h"
#include "core/journal/meetings.h"
#include "core/journal/take_backs.h"
#include "core/play/grading_events.h"
#include "core/play/our_way.h"
#include "core/play/own_note.h"
#include "core/play/plan_events.h"
#include "core/play/play_events.h"
#include "core/play/sharing.h"
#include "core/workbench/own_entry.h"

#include <algorithm>
#include <map>
#include <set>

namespace lidlark::fuzz {

namespace {

using journal::Event;
using journal::Kind;
using Events = std::vector<Event>;

/// @param fold is given the events in two orders, and what anybody had seen in each.
template <class Fold>
void inAnyOrder(const Events &events, const journal::Meetings &meetings, Fold fold)
{
    const Events reversed(events.rbegin(), events.rend());
    must(fold(events, meetings) == fold(reversed, meetings), "a fold asks for no order");
}

void foldItem(const Events &events, const journal::Meetings &meetings)
{
    const box::Packed packed{10, *dayFromText("2027-01-15"), false};
    const box::ItemLedger ledger = box::foldItem(packed, events, meetings);
    must(ledger.careful.conserved() && ledger.hopeful.conserved(), "no piece is lost in a ledger");
    inAnyOrder(events, meetings, [&packed](const Events &some, const journal::Meetings &met) {
        return box::foldItem(packed, some, met);
    });
    inAnyOrder(events, meetings, [](const Events &some, const journal::Meetings &met) {
        return box::foldCare(some, met.seen);
    });
    inAnyOrder(events, meetings,
               [](const Events &some, const auto & /*met*/) { return box::foldRequests(some); });
}

template <class Value>
void foldBy(const Events &events, const journal::Meetings &meetings,
            Value (*fold)(std::span<const Event>, const journal::Seen &))
{
    inAnyOrder(events, meetings, [fold](const Events &some, const journal::Meetings &met) {
        return fold(some, met.seen);
    });
}

/// As core/store/subject_rows.cpp chooses.
void foldHome(std::string_view subject, const Events &events, const journal::Meetings &meetings)
{
    if (subject.starts_with("play:"))
        foldBy(events, meetings, play::foldPlay);
    if (subject.starts_with("planned:"))
        foldBy(events, meetings, play::foldDayWish);
    if (subject.starts_with("our-way:"))
        foldBy(events, meetings, play::foldOurWay);
    if (subject.starts_with("sharing:"))
        inAnyOrder(events, meetings, [](const Events &some, const auto &met) {
            const auto said = play::foldSharing(some, met.seen);
            return said && said->yes ? hexOf(said->key.bytes()) : std::string();
        });
    if (subject.starts_with("fact:"))
        foldBy(events, meetings, child::foldFact);
    if (subject.starts_with("permission:"))
        foldBy(events, meetings, child::foldPermission);
    if (subject.starts_with("goal:"))
        foldBy(events, meetings, goals::foldGoal);
    if (subject.starts_with("reads:"))
        foldBy(events, meetings, child::foldReadingLanguage);
    if (subject.starts_with("check-in:"))
        foldBy(events, meetings, checkin::foldCheckIn);
}

void foldActivity(std::string_view subject, const Events &events, const journal::Meetings &meetings)
{
    if (subject.starts_with("offered:"))
        inAnyOrder(events, meetings, [](const Events &some, const auto & /*met*/) {
            return play::foldOffered(some);
        });
    if (subject.starts_with("note:"))
        inAnyOrder(events, meetings, [](const Events &some, const auto & /*met*/) {
            return play::foldOwnNote(some);
        });
    for (const Kind kind : {Kind::Grading, Kind::GradingPin}) {
        if (subject.starts_with("grading"))
            inAnyOrder(events, meetings, [kind](const Events &some, const journal::Meetings &met) {
                return play::foldGrading(some, met.seen, kind);
            });
    }
}

std::string told(const std::optional<box::LidList> &list)
{
    if (!list)
        return {};
    std::string text = fieldsOf(list->inForce) + toText(list->issued) + toText(list->begun) +
                       std::to_string(list->heads);
    for (const auto &[item, pieces] : list->began)
        text += item.value + "=" + std::to_string(pieces);
    return text;
}

void foldBox(std::string_view subject, const Events &events, const journal::Meetings &meetings)
{
    if (subject == "revision")
        inAnyOrder(events, meetings, [](const Events &some, const journal::Meetings &met) {
            return told(box::foldLidList(some, met.seen));
        });
    if (subject == "place")
        inAnyOrder(events, meetings, [](const Events &some, const journal::Meetings &met) {
            return box::foldPlace(some, met);
        });
    if (subject.starts_with(workbench::ownEntryPrefix))
        foldBy(events, meetings, workbench::foldOwnEntries);
    if (subject == "child")
        inAnyOrder(events, meetings, [](const Events &some, const journal::Meetings &met) {
            const Event *latest = journal::latestOf(some, Kind::Child, met.seen);
            return latest != nullptr ? journal::canonicalText(*latest) : std::string();
        });
}

/// Everything that a crew tells of itself, as it tells it.
std::string crewOf(const Events &events, const journal::Meetings &meetings)
{
    const crew::Crew crew = crew::Crew::fold(events, meetings.seen);
    std::string text;
    for (const auto &[device, member] : crew.everMembers())
        text += fieldsOf(member) + "\n";
    for (const auto &[device, accepted] : crew.gone())
        text += fieldsOf(crew::Removal{device, accepted}) + "\n";
    auto openings = crew::openingsAmong(events, crew);
    std::ranges::sort(openings, {}, &crew::Opening::id);
    const Day today = *dayFromText("2027-01-16");
    std::set<std::pair<journal::Lane, DeviceId>> strands;
    for (const crew::Opening &opening : openings)
        strands.insert({opening.lane, opening.writer});
    for (const auto &[lane, writer] : strands) {
        const auto force = crew::inForce({lane, writer}, openings, entitledTo(crew, lane, today));
        text += toText(lane) + (force.opening ? hexOf(force.opening->id) : "none") +
                (force.renew ? " renew" : "") + "\n";
        for (const DeviceId &guest : guestsLeftOut(lane, openings, crew))
            text += "left out " + guest.value + "\n";
    }
    std::size_t given = crew::givenAmong(events, crew).size();
    for (const Event &event : events)
        given += counts(crew, event) ? 100 : 0;
    return text + std::to_string(given);
}

std::set<std::string> standing(const Events &events)
{
    std::set<std::string> identities;
    for (const Event &event : journal::withoutTakenBack(events))
        identities.insert(journal::identityOf(event));
    return identities;
}

void checkSeen(const Events &events, const journal::Meetings &meetings)
{
    for (const Event &one : events) {
        for (const Event &other : events)
            must(!meetings.seen.saw(one, other) || !meetings.seen.saw(other, one),
                 "no two events have seen each other");
    }
}

} // namespace

void folds(std::string_view bytes)
{
    const Events events = madeEvents(bytes);
    const auto hasKind = [&events](Kind kind) {
        return std::ranges::any_of(events, [kind](const Event &e) { return e.kind == kind; });
    };
    const journal::Meetings meetings(events);
    checkSeen(events, meetings);
    if (hasKind(Kind::TakenBack))
        inAnyOrder(events, meetings,
                   [](const Events &some, const auto & /*met*/) { return standing(some); });
    if (hasKind(Kind::Member))
        inAnyOrder(events, meetings, crewOf);
    std::map<std::string, Events> bySubject;
    for (const Event &event : hasKind(Kind::TakenBack) ? journal::withoutTakenBack(events) : events)
        bySubject[journal::subjectOf(event)].push_back(event);
    for (const auto &[subject, some] : bySubject) {
        if (subject.starts_with("item:"))
            foldItem(some, meetings);
        foldHome(subject, some, meetings);
        foldActivity(subject, some, meetings);
        foldBox(subject, some, meetings);
    }
}

} // namespace lidlark::fuzz
