#include "core/journal/fields.h"
#include "core/play/our_way.h"
#include "core/store/note_repository.h"
#include "core/store/plan_repository.h"
#include "core/usecase/export_tables.h"

#include <set>

namespace lidlark::usecase {

namespace {

constexpr const char *playGroup = "play";

OpenTable playsOf(const ExportSource &source)
{
    OpenTable table{playGroup,
                    "plays",
                    {"child", "home", "activity", "day", "part of day", "noted by", "ended",
                     "ended by", "noticed"},
                    {}};
    for (const auto &[home, play] : source.plays) {
        std::string noticed;
        for (const play::Phrase phrase : play.phrases)
            noticed += (noticed.empty() ? "" : "; ") + plainWords(play::phraseNames.of(phrase));
        table.add({source.named(play.child.value), source.named(home.value),
                   source.activity(play.activity), play.when.day, play.when.part, play.author,
                   play.ending ? Cell(plainWords(play::endingNames.of(*play.ending))) : Cell(),
                   play.ending ? Cell(play.endedBy) : Cell(),
                   noticed.empty() ? Cell() : Cell(noticed)});
    }
    return table;
}

void addGradings(OpenTable &table, const ExportSource &source, const std::string &child,
                 const char *whose, const std::map<ActivityId, play::GradingUsed> &gradings)
{
    for (const auto &[activity, used] : gradings) {
        const bool asWritten = used.way == play::Way::AsWritten;
        table.add({child, source.activity(activity), whose, plainWords(play::wayNames.of(used.way)),
                   asWritten ? Cell() : Cell(catalogue::leverNames.of(used.lever))});
    }
}

Result<OpenTable> gradingsOf(const ExportSource &source)
{
    OpenTable table{
        playGroup, "how it is played", {"child", "activity", "said as", "way", "by"}, {}};
    store::PlanRepository plans(source.workplace.database);
    for (const store::BoxRow &box : source.boxes) {
        for (const child::HomeSheet &home : source.homes) {
            const auto last = plans.gradings(home.id, box.child);
            if (!last)
                return last.error();
            addGradings(table, source, box.alias, "played last", *last);
        }
        const auto pinned = plans.gradingPins(box.id);
        if (!pinned)
            return pinned.error();
        addGradings(table, source, box.alias, "the therapist asks for it", *pinned);
    }
    return table;
}

Result<OpenTable> wishesOf(const ExportSource &source)
{
    OpenTable table{playGroup, "plans for days", {"child", "home", "day", "said", "activity"}, {}};
    store::PlanRepository plans(source.workplace.database);
    for (const child::HomeSheet &home : source.homes) {
        for (const store::BoxRow &box : source.boxes) {
            const auto wishes = plans.dayWishes(home.id, box.child, Day{});
            if (!wishes)
                return wishes.error();
            for (const auto &[day, wish] : *wishes) {
                const bool keep = wish.wish == play::Wish::Keep;
                table.add({box.alias, source.named(home.id.value), day,
                           play::wishNames.of(wish.wish),
                           keep ? Cell(source.activity(wish.activity)) : Cell()});
            }
        }
    }
    return table;
}

/// Activities for which anybody ever wrote a way of their own: the events name them all.
std::set<ActivityId> activitiesWithAWay(const ExportSource &source)
{
    std::set<ActivityId> activities;
    for (const journal::Event &event : source.events) {
        if (event.kind != journal::Kind::OurWay)
            continue;
        if (const auto activity = journal::Fields(event.fields).text("activity"))
            activities.insert({*activity});
    }
    return activities;
}

Result<OpenTable> waysOf(const ExportSource &source)
{
    OpenTable table{playGroup,
                    "our own ways",
                    {"child", "home", "activity", "in our words", "written by", "day"},
                    {}};
    store::NoteRepository notes(source.workplace.database);
    for (const ActivityId &activity : activitiesWithAWay(source)) {
        for (const child::HomeSheet &home : source.homes) {
            for (const store::BoxRow &box : source.boxes) {
                const auto way = notes.ourWay(home.id, box.child, activity);
                if (!way)
                    return way.error();
                if (*way)
                    table.add({box.alias, source.named(home.id.value), source.activity(activity),
                               (*way)->words, (*way)->author, (*way)->when.day});
            }
        }
    }
    return table;
}

} // namespace

Tables playTables(const ExportSource &source)
{
    Result<OpenTable> gradings = gradingsOf(source);
    Result<OpenTable> wishes = wishesOf(source);
    Result<OpenTable> ways = waysOf(source);
    if (!gradings || !wishes || !ways)
        return !gradings ? gradings.error() : !wishes ? wishes.error() : ways.error();
    return std::vector{playsOf(source), *std::move(gradings), *std::move(wishes), *std::move(ways)};
}

} // namespace lidlark::usecase
