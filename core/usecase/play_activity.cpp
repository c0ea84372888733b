#include "core/usecase/play_activity.h"

#include "core/box/box_events.h"
#include "core/store/box_repository.h"
#include "core/store/home_repository.h"
#include "core/store/recording.h"
#include "core/usecase/box_items.h"
#include "core/usecase/check_in.h"
#include "core/usecase/closing_count.h"
#include "core/usecase/share_plays.h"

#include <algorithm>
#include <set>

namespace lidlark::usecase {

namespace {

using journal::Kind;
using journal::Lane;
using journal::LaneKind;

/// A play with the box it was played from.
struct OpenPlay {
    play::Play play;
    store::BoxRow box;
    std::vector<store::ItemRow> items;
    std::vector<store::OutcomeRow> outcomes;
};

Result<OpenPlay> findPlay(Workplace &workplace, const PlayId &id)
{
    store::BoxRepository boxes(workplace.database);
    const auto play = store::HomeRepository(workplace.database).play(id);
    if (!play)
        return play.error();
    if (!*play)
        return Error{ErrorCode::NotFound, "this play"};
    const auto box = boxes.boxOfChild((*play)->child);
    if (!box)
        return Error{ErrorCode::NotFound, "the box of this play"};
    const auto items = boxes.items(box->id);
    const auto outcomes = boxes.outcomes(box->id);
    if (!items || !outcomes)
        return items ? outcomes.error() : items.error();
    return OpenPlay{**play, *box, *items, *outcomes};
}

/// What the register holds already, so that the same play can be put right.
int alreadyGone(const OpenPlay &open, const ItemId &item)
{
    for (const store::OutcomeRow &outcome : open.outcomes) {
        if (outcome.play == open.play.id && outcome.item == item)
            return outcome.exceptions.total();
    }
    return 0;
}

Result<std::map<ItemId, box::Exceptions>> valuesOf(const OpenPlay &open,
                                                   const std::vector<NamedException> &exceptions)
{
    std::map<ItemId, box::Exceptions> values;
    for (const NamedException &named : exceptions) {
        if (named.count < 0)
            return Error{ErrorCode::Invalid, "count: below zero"};
        box::Exceptions &value = values[named.item];
        const int together = value.of(named.kind) + std::min(named.count, box::mostPieces);
        value.set(named.kind, together);
    }
    for (const auto &[item, value] : values) {
        const auto row = std::find_if(open.items.begin(), open.items.end(),
                                      [&id = item](const auto &r) { return r.item == id; });
        if (row == open.items.end())
            return Error{ErrorCode::NotFound, item.value + " in this box"};
        if (value.total() > std::max(row->high, row->expected) + alreadyGone(open, item))
            return Error{ErrorCode::Invalid, item.value + ": more than the box held"};
    }
    return values;
}

Outcome writeNamed(store::Recording &recording, const OpenPlay &open, const std::string &author,
                   const std::map<ItemId, box::Exceptions> &values)
{
    for (const auto &[item, value] : values) {
        Outcome said =
            recording.sayAs(author, {LaneKind::Box, open.box.id.value}, Kind::Outcome,
                            box::fieldsOf(box::Outcome{open.play.id, item, value, false}));
        if (!said)
            return said;
    }
    return Done{};
}

/// Unnamed items came home: a weak word, which gives way to anybody who names them. Only items
/// somebody has spoken of before need it; for the others the empty place says the same, and the
/// box lane does not tell the other home how often was played (events.md 4).
bool anythingNamed(const OpenPlay &open, const std::map<ItemId, box::Exceptions> &values)
{
    const bool now = std::any_of(values.begin(), values.end(),
                                 [](const auto &entry) { return !entry.second.allHome(); });
    return now || std::any_of(open.outcomes.begin(), open.outcomes.end(), [&](const auto &outcome) {
               return outcome.play == open.play.id && !outcome.exceptions.allHome() &&
                      !values.contains(outcome.item);
           });
}

/// Nothing to say of a play that has ended already: what is put right later is no closing count.
Outcome closingCountOf(Workplace &workplace, const OpenPlay &open,
                       const std::map<ItemId, box::Exceptions> &values, const CountedHome &counted)
{
    const auto family = loadFamily(workplace, open.box.alias);
    const auto today = store::todayOf(workplace.clock);
    if (!family || !today)
        return family ? today.error() : family.error();
    auto progress = loadProgress(workplace, open.box.id, open.box.child);
    if (!progress)
        return progress.error();
    if (!*progress || (*progress)->play != open.play.id)
        return Done{};
    for (const auto &[item, pieces] : counted)
        (*progress)->home[item] = std::max((*progress)->home[item], pieces);
    auto named = namedOf(*family, open.play.id);
    for (const auto &[item, value] : values)
        named[item] = value;
    const auto due = stillToCount(*family, workplace.catalogue, **progress, named, today->day);
    if (due.empty())
        return Done{};
    const HomeCount &first = due.front();
    return Error{ErrorCode::Invalid, first.item.value + ": count them home first, " +
                                         std::to_string(first.home) + " of " +
                                         std::to_string(first.due)};
}

Outcome endWith(Workplace &workplace, const PlayId &id, const std::string &author,
                const std::vector<NamedException> &exceptions, const CountedHome &counted,
                std::optional<play::Ending> ending)
{
    const Result<OpenPlay> open = findPlay(workplace, id);
    if (!open)
        return open.error();
    const auto values = valuesOf(*open, exceptions);
    if (!values)
        return values.error();
    if (Outcome done = closingCountOf(workplace, *open, *values, counted); !done)
        return done;
    const std::string who = author.empty() ? workplace.device.person : author;
    Result<store::Recording> recording =
        store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    if (Outcome said = writeNamed(*recording, *open, who, *values); !said)
        return said;
    const play::Ending how = ending.value_or(
        anythingNamed(*open, *values) ? play::Ending::SomethingDifferent : play::Ending::AllBack);
    Outcome said = recording->sayAs(who, {LaneKind::Home, workplace.device.home.value},
                                    Kind::PlayEnded, play::fieldsOfEnding(id, how));
    if (!said)
        return said;
    return commitWithCopies(workplace, *recording);
}

/// Whether the activity is played with this item, or with what it stands in for.
bool mayUse(const catalogue::Activity &activity, const catalogue::ItemKind &kind,
            const catalogue::Catalogue &catalogue)
{
    return std::any_of(activity.items.begin(), activity.items.end(), [&](const auto &use) {
        const catalogue::ItemKind *listed = catalogue.item(use.item);
        return use.item == kind.id ||
               (listed != nullptr && listed->swap && listed->swap->with == kind.id);
    });
}

/// A pot or a straw that is used for the first time is opened today, unless one is open and good.
Outcome openFirstUsed(Workplace &workplace, store::Recording &recording, const std::string &who,
                      const store::BoxRow &box, const catalogue::Activity &activity)
{
    const auto items = store::BoxRepository(workplace.database).items(box.id);
    const auto today = store::todayOf(workplace.clock);
    if (!items || !today)
        return items ? today.error() : items.error();
    for (const store::ItemRow &row : *items) {
        const catalogue::ItemKind *kind = workplace.catalogue.item(row.item);
        if (kind == nullptr || !kind->isPerishable() ||
            !mayUse(activity, *kind, workplace.catalogue))
            continue;
        const auto piece = freshnessOf(row, kind, today->day).toOpen();
        if (!piece)
            continue;
        Outcome said = recording.sayAs(who, {LaneKind::Box, box.id.value}, Kind::Opened,
                                       box::fieldsOf(box::Opened{row.item, *piece, today->day}));
        if (!said)
            return said;
    }
    return Done{};
}

} // namespace

Result<PlayId> startPlay(Workplace &workplace, const PlayRequest &request)
{
    const catalogue::Activity *activity = workplace.catalogue.activity(request.activity);
    if (activity == nullptr)
        return Error{ErrorCode::NotFound, "the activity " + request.activity.value};
    const auto box = store::BoxRepository(workplace.database).boxOf(request.child);
    if (!box)
        return box.error();
    const PlayId id{workplace.entropy.freshId()};
    Result<store::Recording> recording =
        store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    if (request.kite) {
        const Outcome shown =
            writeCheckIn(*recording, workplace, box->child, *request.kite, checkin::ShownBy::Child);
        if (!shown)
            return shown.error();
    }
    const std::string who = request.author.empty() ? workplace.device.person : request.author;
    const Outcome said = recording->sayAs(
        who, {LaneKind::Home, workplace.device.home.value}, Kind::PlayStarted,
        play::fieldsOf(play::Started{id, box->child, activity->id, activity->version}));
    if (!said)
        return said.error();
    if (const Outcome opened = openFirstUsed(workplace, *recording, who, *box, *activity); !opened)
        return opened.error();
    if (const Outcome done = recording->commit(); !done)
        return done.error();
    return id;
}

Outcome nameExceptions(Workplace &workplace, const PlayId &play, const std::string &author,
                       const std::vector<NamedException> &exceptions)
{
    const Result<OpenPlay> open = findPlay(workplace, play);
    if (!open)
        return open.error();
    const auto values = valuesOf(*open, exceptions);
    if (!values)
        return values.error();
    Result<store::Recording> recording =
        store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    const std::string who = author.empty() ? workplace.device.person : author;
    if (Outcome said = writeNamed(*recording, *open, who, *values); !said)
        return said;
    return recording->commit();
}

Outcome putBack(Workplace &workplace, const PlayId &play, const std::string &author,
                const std::vector<NamedException> &exceptions, const CountedHome &counted)
{
    return endWith(workplace, play, author, exceptions, counted, std::nullopt);
}

Outcome stopPlay(Workplace &workplace, const PlayId &play, const std::string &author,
                 const std::vector<NamedException> &exceptions, const CountedHome &counted)
{
    return endWith(workplace, play, author, exceptions, counted, play::Ending::Stopped);
}

Outcome noticePhrase(Workplace &workplace, const PlayId &play, play::Phrase phrase)
{
    auto recording = store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    Outcome said = recording->say({LaneKind::Home, workplace.device.home.value}, Kind::Reaction,
                                  play::fieldsOfReaction(play, phrase));
    return said ? commitWithCopies(workplace, *recording) : said;
}

} // namespace lidlark::usecase
