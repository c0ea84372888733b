#include "core/usecase/take_out.h"

#include "core/box/box_events.h"
#include "core/catalogue/translation.h"
#include "core/child/home_facts.h"
#include "core/store/event_repository.h"
#include "core/store/recording.h"

#include <algorithm>
#include <tuple>

namespace lidlark::usecase {

namespace {

using child::Avoided;
using journal::Event;
using journal::Kind;
using journal::Lane;
using journal::LaneKind;

Result<std::vector<Event>> eventsOf(Workplace &workplace, const Lane &lane,
                                    const std::string &subject)
{
    return store::EventRepository(workplace.database).standingOfSubject({lane, subject});
}

/// The first standing yes about anybody of the home, for any fact that means @p what.
Result<std::optional<Event>> firstYes(Workplace &workplace, const Lane &lane, Avoided what)
{
    const auto mets = eventsOf(workplace, lane, "met");
    const auto subjects = store::EventRepository(workplace.database).subjectsOf(lane);
    if (!mets || !subjects)
        return mets ? subjects.error() : mets.error();
    const journal::Seen seen(*mets);
    std::optional<Event> first;
    for (const store::LaneSubject &subject : *subjects) {
        const auto slash = subject.subject.rfind('/');
        if (!subject.subject.starts_with("fact:") || slash == std::string::npos ||
            child::avoidedBy(std::string_view(subject.subject).substr(slash + 1)) != what)
            continue;
        const auto events = eventsOf(workplace, lane, subject.subject);
        if (!events)
            return events.error();
        const Event *yes = child::firstStandingYes(*events, seen);
        if (yes != nullptr &&
            (!first || std::tie(yes->instant, yes->device, yes->counter) <
                           std::tie(first->instant, first->device, first->counter)))
            first = *yes;
    }
    return first;
}

std::string aliasOf(const Family &family, const std::string &person)
{
    if (family.sheet) {
        for (const child::Person &known : family.sheet->people) {
            if (known.id.value == person)
                return known.alias;
        }
    }
    return {};
}

SafetyNote noteFrom(const Event &yes, Avoided what, const Family &family)
{
    const auto fact = child::readFact(yes);
    return {what, fact ? aliasOf(family, fact->person) : std::string(), yes.author, yes.when,
            localMinuteOfDay(yes.instant.ms, yes.offsetMinutes)};
}

/// Out when the careful and the hopeful reading agree that nothing is left of it in the box.
Outcome lookWhetherOut(Workplace &workplace, const Lane &lane, TakeOutThing &thing)
{
    const auto events = eventsOf(workplace, lane, "item:" + thing.item.value);
    if (!events)
        return events.error();
    const Event *last = nullptr;
    for (const Event &event : *events) {
        if (box::readTakenOut(event) &&
            (last == nullptr || std::tie(last->instant, last->device, last->counter) <
                                    std::tie(event.instant, event.device, event.counter)))
            last = &event;
    }
    thing.out = last != nullptr && thing.pieces == 0;
    if (thing.out) {
        thing.outBy = last->author;
        thing.outWhen = last->when;
    }
    return Done{};
}

/// The swap was asked for, and has not come yet.
bool isAskedFor(const Family &family, const ItemId &swap)
{
    return std::any_of(family.items.begin(), family.items.end(), [&swap](const auto &row) {
        return row.item == swap && box::anyOpen(row.requests);
    });
}

bool speaksOf(const catalogue::ItemKind &kind, Avoided what)
{
    const std::string word(child::avoidedNames.of(what));
    const std::vector<std::string> &care = catalogue::inEnglish(kind).care;
    return std::any_of(care.begin(), care.end(), [&word](const std::string &line) {
        return line.find(word) != std::string::npos;
    });
}

Outcome fillFromBox(Workplace &workplace, const Family &family, TakeOut &takeOut)
{
    const Lane lane{LaneKind::Box, family.box.id.value};
    for (const store::ItemRow &row : family.items) {
        const catalogue::ItemKind *kind = workplace.catalogue.item(row.item);
        if (kind == nullptr || (row.expected == 0 && row.high == 0))
            continue;
        if (!kind->tags.has(child::tagOf(takeOut.note.what))) {
            if (speaksOf(*kind, takeOut.note.what) && row.high > 0)
                takeOut.stays.push_back(row.item);
            continue;
        }
        TakeOutThing thing;
        thing.item = row.item;
        thing.pieces = row.high + row.out;
        if (kind->swap) {
            thing.swap = kind->swap->with;
            thing.asked = isAskedFor(family, *thing.swap);
        }
        if (Outcome done = lookWhetherOut(workplace, lane, thing); !done)
            return done;
        if (thing.pieces > 0 || thing.out)
            takeOut.things.push_back(thing);
    }
    return Done{};
}

Outcome sayTakenOut(Workplace &workplace, const Family &family, const std::string &author,
                    const box::TakenOut &taken)
{
    Result<store::Recording> recording =
        store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    Outcome said = recording->sayAs(author.empty() ? workplace.device.person : author,
                                    {LaneKind::Box, family.box.id.value}, Kind::TakenOut,
                                    box::fieldsOf(taken));
    return said ? recording->commit() : said;
}

} // namespace

bool TakeOut::isDone() const
{
    return std::all_of(things.begin(), things.end(),
                       [](const TakeOutThing &thing) { return thing.out; });
}

Result<std::vector<TakeOut>> takeOutsOf(Workplace &workplace, const Family &family)
{
    std::vector<TakeOut> takeOuts;
    if (family.home.empty())
        return takeOuts;
    for (const Avoided what : {Avoided::Latex, Avoided::Wheat}) {
        const auto yes = firstYes(workplace, {LaneKind::Safety, family.home.value}, what);
        if (!yes)
            return yes.error();
        if (!*yes)
            continue;
        TakeOut takeOut{noteFrom(**yes, what, family), {}, {}};
        if (const Outcome done = fillFromBox(workplace, family, takeOut); !done)
            return done.error();
        takeOuts.push_back(std::move(takeOut));
    }
    return takeOuts;
}

Outcome confirmTakenOut(Workplace &workplace, const std::string &childAlias,
                        const std::string &author, const ItemId &item)
{
    const auto family = loadFamily(workplace, childAlias);
    if (!family)
        return family.error();
    const auto takeOuts = takeOutsOf(workplace, *family);
    if (!takeOuts)
        return takeOuts.error();
    for (const TakeOut &takeOut : *takeOuts) {
        for (const TakeOutThing &thing : takeOut.things) {
            if (thing.item != item)
                continue;
            return sayTakenOut(workplace, *family, author,
                               {item, std::string(child::avoidedNames.of(takeOut.note.what))});
        }
    }
    if (isToTakeOut(*family, item))
        return sayTakenOut(workplace, *family, author, {item, "revision"});
    return Error{ErrorCode::Invalid, item.value + ": need not leave the house"};
}

} // namespace lidlark::usecase
