#include "core/usecase/write_demo.h"

#include "core/store/event_repository.h"
#include "core/usecase/demo_phone.h"
#include "core/usecase/exchange_events.h"
#include "core/usecase/island_shelf.h"
#include "core/usecase/issue_box.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/restock.h"
#include "core/usecase/suggest_today.h"

#include <algorithm>
#include <charconv>
#include <set>

namespace lidlark::usecase {

namespace {

constexpr int guestDays = 7; // invited on day 1
constexpr int lastDay = 365;
constexpr int firstEvening = -6;             // Tuesday of the week in which boxes were issued
constexpr auto dayKey = "demo.next-evening"; // how far a phone has been moved on

const DemoPerson morven{"Morven", store::Role::Therapist, "", "", "d-morven", "morven.lidlark"};

std::vector<DemoPerson> peopleOf(const island::Family &family)
{
    std::vector<DemoPerson> people;
    for (const island::Home &home : family.homes) {
        for (const island::Phone &phone : home.phones) {
            const std::string name = demoId(family.child) + "-" + demoId(phone.person);
            DemoPerson person{phone.person, phone.role,        family.child, home.id,
                              "d-" + name,  name + ".lidlark", phone.reads};
            if (phone.role == store::Role::Guest)
                person.until = island::dayOne() + (guestDays - 1);
            people.push_back(std::move(person));
        }
    }
    return people;
}

/// What a family's phone holds of the therapist's events, and of another phone of the family.
bool holds(const DemoPerson &person, const journal::Lane &lane)
{
    const bool guest = person.role == store::Role::Guest;
    switch (lane.kind) {
    case journal::LaneKind::Box:
        return lane.scope == "b-" + demoId(person.child);
    case journal::LaneKind::Safety:
        return lane.scope == person.home;
    case journal::LaneKind::Home:
    case journal::LaneKind::CheckIns:
        return !guest && lane.scope == person.home;
    case journal::LaneKind::Goals:
        return !guest && person.role == store::Role::Parent &&
               lane.scope == "b-" + demoId(person.child);
    case journal::LaneKind::Notes:
    case journal::LaneKind::Shared:
    case journal::LaneKind::Clinic:
        break;
    }
    return false;
}

constexpr int daysToAUse = 5; // odd: who plays on every other day meets it too
constexpr int daysToARound = 28;

/// Now and then one piece of what is counted home is used up: a box that is played with empties.
std::vector<NamedException> usedUpOn(int day, const safety::Admitted &offered,
                                     const catalogue::Catalogue &catalogue)
{
    if (day % daysToAUse != 0)
        return {};
    for (const catalogue::ItemUse &use : offered.items()) {
        const catalogue::ItemKind *kind = catalogue.item(use.item);
        const bool goes = kind != nullptr && kind->source == catalogue::Source::Box &&
                          kind->comesBack != catalogue::ComesBack::Yes;
        if (goes)
            return {{use.item, box::ExceptionKind::UsedUp, 1}};
    }
    return {};
}

/// The monthly round: what has run low was asked for, and is counted in.
Outcome fillUp(DemoPhone &phone, const std::string &child)
{
    Workplace workplace = phone.workplace();
    const auto family = loadFamily(workplace, child);
    if (!family)
        return family.error();
    for (const store::ItemRow &row : family->items) {
        if (row.expected == 0 || row.low * 2 > row.expected)
            continue;
        if (Outcome asked = askFor(workplace, child, {}, row.item); !asked)
            return asked;
        if (Outcome in = countIn(workplace, child, {}, row.item, row.expected - row.low); !in)
            return in;
    }
    return Done{};
}

Outcome playOneEvening(DemoPhone &phone, const std::string &child, int day)
{
    phone.clock.moveTo(demoEveningMs(day));
    Workplace workplace = phone.workplace();
    MenuRequest request;
    request.child = child;
    request.room.present.emplace(); // the little ones are asleep
    const Result<TodayMenu> today = suggestToday(workplace, request);
    if (!today)
        return today.error();
    if (Outcome done = markOffered(workplace, *today); !done)
        return done;
    if (today->menu.offers.empty())
        return Done{};
    const safety::Admitted &offered = today->menu.offers.front().admitted;
    const ActivityId activity = offered.activity().id;
    CountedHome all;
    for (const catalogue::ItemUse &use : offered.activity().items)
        all[use.item] = box::mostPieces;
    const Result<PlayId> play = startPlay(workplace, {child, activity, {}, std::nullopt});
    if (!play)
        return play.error();
    if (day % 3 == 0) {
        if (Outcome done = noticePhrase(workplace, *play, play::Phrase::AskedAgain); !done)
            return done;
    }
    phone.clock.moveTo(demoEveningMs(day) + 7 * msPerMinute);
    return putBack(workplace, *play, {}, usedUpOn(day, offered, phone.catalogue), all);
}

Result<int> nextEvening(DemoPhone &phone)
{
    const auto kept = store::DeviceRepository(phone.database).localState(dayKey);
    if (!kept)
        return kept.error();
    int day = firstEvening;
    if (*kept)
        std::from_chars((*kept)->data(), (*kept)->data() + (*kept)->size(), day);
    return day;
}

/// Four evenings a week: the children differ in which, and nobody plays every day.
bool playsOn(const std::string &child, int day)
{
    const int shift = static_cast<unsigned char>(child.front());
    return (day + shift) % 7 != 0 && (day + shift) % 2 != 0;
}

/// The evenings before @p day, on the first phone of the home where the box is.
Outcome moveOn(const std::string &folder, const island::Family &family, int day,
               const catalogue::Catalogue &catalogue)
{
    auto phone = DemoPhone::open(folder, peopleOf(family).front(), catalogue);
    if (!phone)
        return phone.error();
    Result<int> next = nextEvening(**phone);
    if (!next)
        return next.error();
    for (; *next < day; ++*next) {
        if (*next % daysToARound == 0) {
            (*phone)->clock.moveTo(demoEveningMs(*next));
            if (Outcome done = fillUp(**phone, family.child); !done)
                return done;
        }
        if (!playsOn(family.child, *next))
            continue;
        if (Outcome done = playOneEvening(**phone, family.child, *next); !done)
            return done;
    }
    return store::DeviceRepository((*phone)->database).setLocalState(dayKey, std::to_string(*next));
}

/// Every phone of a family gets what the others hold, on the evening before @p day.
Outcome meet(const std::string &folder, const std::vector<DemoPerson> &people, int day,
             const catalogue::Catalogue &catalogue)
{
    for (const DemoPerson &to : people) {
        auto receiver = DemoPhone::open(folder, to, catalogue);
        if (!receiver)
            return receiver.error();
        (*receiver)->clock.moveTo(demoEveningMs(day - 1) + 90 * msPerMinute);
        for (const DemoPerson &from : people) {
            if (from.file == to.file)
                continue;
            auto giver = DemoPhone::open(folder, from, catalogue);
            if (!giver)
                return giver.error();
            Workplace workplace = (*receiver)->workplace();
            const auto taken =
                takeEventsFrom((*giver)->database, workplace,
                               [&to](const journal::Lane &lane) { return holds(to, lane); });
            if (!taken)
                return taken.error();
        }
        if (Outcome done = (*receiver)->startReading(to.reads); !done)
            return done;
    }
    return Done{};
}

DemoStore storeOf(const DemoPerson &person)
{
    return {person.file, person.person, person.role, person.child, person.device};
}

Outcome writeTherapist(const std::string &folder, const catalogue::Catalogue &catalogue)
{
    auto phone = DemoPhone::open(folder, morven, catalogue);
    if (!phone)
        return phone.error();
    const auto count = store::EventRepository((*phone)->database).count();
    if (!count)
        return count.error();
    if (*count > 0)
        return Done{};
    (*phone)->clock.moveTo(demoIssueMs());
    for (const island::Family &family : island::families()) {
        Workplace workplace = (*phone)->workplace();
        if (Outcome done = issueBox(workplace, family); !done)
            return done;
    }
    Workplace workplace = (*phone)->workplace();
    return layOutShelf(workplace);
}

} // namespace

Result<std::vector<DemoStore>> writeDemo(const std::string &folder, int day,
                                         const catalogue::Catalogue &catalogue)
{
    if (day < 1 || day > lastDay)
        return Error{ErrorCode::Invalid, "day: 1 to 365"};
    if (const Outcome done = writeTherapist(folder, catalogue); !done)
        return done.error();
    std::vector<DemoStore> stores{storeOf(morven)};
    for (const island::Family &family : island::families()) {
        std::vector<DemoPerson> people = peopleOf(family);
        for (const DemoPerson &person : people)
            stores.push_back(storeOf(person));
        std::vector<DemoPerson> everybody{morven};
        everybody.insert(everybody.end(), people.begin(), people.end());
        if (const Outcome done = meet(folder, everybody, firstEvening, catalogue); !done)
            return done.error();
        if (const Outcome done = moveOn(folder, family, day, catalogue); !done)
            return done.error();
        if (const Outcome done = meet(folder, people, day, catalogue); !done)
            return done.error();
    }
    return stores;
}

} // namespace lidlark::usecase
