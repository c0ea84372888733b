#include "core/usecase/export_source.h"

#include "core/store/home_repository.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

bool isOn(const child::HomeSheet &sheet, const ChildId &child)
{
    return std::ranges::any_of(sheet.people, [&child](const child::Person &person) {
        return person.id.value == child.value;
    });
}

Outcome findBoxes(ExportSource &source, const std::string &child)
{
    store::BoxRepository boxes(source.workplace.database);
    Result<std::vector<store::BoxRow>> all = boxes.boxes();
    if (!all)
        return all.error();
    for (store::BoxRow &box : *all) {
        if (child.empty() || box.alias == child)
            source.boxes.push_back(std::move(box));
    }
    std::ranges::sort(source.boxes, {}, &store::BoxRow::alias);
    if (source.boxes.empty())
        return Error{ErrorCode::NotFound, child.empty() ? "a box in this store" : child};
    return Done{};
}

Outcome findHomes(ExportSource &source, bool everyHome)
{
    store::HomeRepository homes(source.workplace.database);
    const Result<std::vector<HomeId>> all = homes.homes();
    if (!all)
        return all.error();
    for (const HomeId &home : *all) {
        Result<std::optional<child::HomeSheet>> sheet = homes.sheet(home);
        if (!sheet)
            return sheet.error();
        if (!*sheet)
            continue;
        const auto isOfThese = [&sheet](const store::BoxRow &box) {
            return isOn(**sheet, box.child);
        };
        if (everyHome || std::ranges::any_of(source.boxes, isOfThese))
            source.homes.push_back(**std::move(sheet));
    }
    return Done{};
}

Outcome findPlays(ExportSource &source)
{
    store::HomeRepository homes(source.workplace.database);
    for (const child::HomeSheet &home : source.homes) {
        for (const store::BoxRow &box : source.boxes) {
            Result<std::vector<play::Play>> plays = homes.plays(home.id, box.child, Day{});
            if (!plays)
                return plays.error();
            for (play::Play &play : *plays)
                source.plays.push_back({home.id, std::move(play)});
        }
    }
    std::ranges::sort(source.plays, {}, [](const PlayHere &here) {
        return std::pair(here.play.startedAt, here.play.id);
    });
    for (std::size_t i = 0; i < source.plays.size(); ++i)
        source.placeOfPlay[source.plays[i].play.id] = i;
    return Done{};
}

Outcome findEvents(ExportSource &source)
{
    Result<std::vector<journal::Event>> events =
        store::EventRepository(source.workplace.database).all();
    if (!events)
        return events.error();
    source.events = *std::move(events);
    return Done{};
}

/// "Home", or where another home of the record is called the same, "Home (Anya)".
std::string nameOf(const child::HomeSheet &home, const ExportSource &source)
{
    const auto isCalledSo = [&home](const child::HomeSheet &other) {
        return other.name == home.name;
    };
    if (std::ranges::count_if(source.homes, isCalledSo) < 2)
        return home.name;
    std::string children;
    for (const store::BoxRow &box : source.boxes) {
        if (isOn(home, box.child))
            children += (children.empty() ? "" : ", ") + box.alias;
    }
    return home.name + " (" + children + ")";
}

void giveNames(ExportSource &source)
{
    for (const child::HomeSheet &home : source.homes) {
        if (!home.name.empty())
            source.names[home.id.value] = nameOf(home, source);
        for (const child::Person &person : home.people)
            source.names[person.id.value] = person.alias;
    }
    for (const store::BoxRow &box : source.boxes) {
        source.names[box.id.value] = box.alias;
        source.names[box.child.value] = box.alias;
    }
    for (const catalogue::ItemKind &kind : source.workplace.catalogue.items())
        source.names[kind.id.value] = kind.name;
    for (const catalogue::Activity &activity : source.workplace.catalogue.activities())
        source.names[activity.id.value] = activity.name;
}

} // namespace

std::string ExportSource::item(const ItemId &id) const
{
    const catalogue::ItemKind *kind = workplace.catalogue.item(id);
    return kind != nullptr ? kind->name : id.value;
}

std::string ExportSource::activity(const ActivityId &id) const
{
    const catalogue::Activity *activity = workplace.catalogue.activity(id);
    return activity != nullptr ? activity->name : id.value;
}

std::string ExportSource::named(const std::string &id) const
{
    const auto found = names.find(id);
    return found != names.end() ? found->second : id;
}

const play::Play *ExportSource::play(const PlayId &id) const
{
    const auto found = placeOfPlay.find(id);
    return found != placeOfPlay.end() ? &plays[found->second].play : nullptr;
}

Result<ExportSource> exportSource(Workplace &workplace, const std::string &child)
{
    ExportSource source{workplace, {}, {}, {}, {}, {}, {}};
    if (Outcome done = findBoxes(source, child); !done)
        return done.error();
    if (Outcome done = findHomes(source, child.empty()); !done)
        return done.error();
    if (Outcome done = findPlays(source); !done)
        return done.error();
    if (Outcome done = findEvents(source); !done)
        return done.error();
    giveNames(source);
    return source;
}

} // namespace lidlark::usecase
