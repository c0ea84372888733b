#include "mobile/bridge/own_desk.h"

#include "core/catalogue/write_entry.h"
#include "core/store/box_repository.h"
#include "core/wording/own_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

using catalogue::Activity;
using workbench::OwnSort;

/// What is being typed, until it is kept.
std::string heldKey(const std::string &id)
{
    return "own.writing." + id;
}

Activity activityIn(const std::string &id, const std::string &text)
{
    return catalogue::activityDraft({"activities/" + id + ".yaml", text});
}

/// Nothing: nothing was typed since it was kept.
Result<std::optional<std::string>> heldText(Household &household, const std::string &id)
{
    auto held = store::DeviceRepository(household.workplace().database).localState(heldKey(id));
    if (held && *held && (*held)->empty())
        return std::optional<std::string>();
    return held;
}

QString drawingOf(const Activity &activity)
{
    return activity.picture.drawing.empty() ? QStringLiteral("item-box")
                                            : fromCore(activity.picture.drawing);
}

Activity copied(Activity from)
{
    from.status = catalogue::Status::AwaitingReview;
    from.reviews.clear();
    from.name.clear(); // a name is nobody else's
    from.version = 1;
    for (catalogue::Step &step : from.steps)
        step.picture.reset(); // drawn for other words
    for (auto *gradings : {&from.easier, &from.harder}) {
        for (catalogue::Grading &grading : *gradings)
            grading.fact.reset();
    }
    return from;
}

Activity blank()
{
    Activity activity;
    activity.status = catalogue::Status::AwaitingReview;
    activity.steps = {{}, {}};
    activity.picture = {"item-box", "A box."};
    return activity;
}

} // namespace

Outcome addBoxes(Household &household, const workbench::OwnKept &kept, OwnOnDesk &row)
{
    usecase::Workplace &place = household.workplace();
    const auto boxes = store::BoxRepository(place.database).boxes();
    if (!boxes)
        return boxes.error();
    for (const store::BoxRow &box : *boxes) {
        const auto entries = usecase::ownEntriesOf(place, box.id);
        if (!entries)
            return entries.error();
        for (const workbench::OwnEntry &entry : *entries) {
            if (entry.id != kept.id || entry.sort != kept.sort || entry.withdrawn)
                continue;
            row.children.append(fromCore(box.alias));
            row.newer = row.newer || entry.unsettled || entry.known.text != kept.text;
        }
    }
    return Done{};
}

Result<std::vector<OwnOnDesk>> ownActivities(Household &household)
{
    usecase::Workplace &place = household.workplace();
    const auto kept = usecase::ownKept(place);
    if (!kept)
        return kept.error();
    std::vector<OwnOnDesk> desk;
    for (const workbench::OwnKept &one : *kept) {
        if (one.sort != OwnSort::Activity)
            continue;
        const auto held = heldText(household, one.id);
        const bool typed = held && *held;
        const Activity activity = activityIn(one.id, typed ? **held : one.text);
        OwnOnDesk row{fromCore(one.id),
                      fromCore(activity.name),
                      drawingOf(activity),
                      one.signedOff && !typed,
                      {},
                      false};
        if (const Outcome added = addBoxes(household, one, row); !added)
            return added.error();
        desk.push_back(std::move(row));
    }
    return desk;
}

Result<QString> startOwn(Household &household, const QString &from)
{
    usecase::Workplace &place = household.workplace();
    const Activity *model =
        from.isEmpty() ? nullptr : household.catalogue().activity({toCore(from)});
    Activity activity = model != nullptr ? copied(*model) : blank();
    const std::string id = usecase::freshOwnId(place.entropy);
    activity.id = {id};
    activity.entry = id;
    if (const Outcome kept = usecase::keepOwnActivity(place, id, yamlOf(activity)); !kept)
        return kept.error();
    return fromCore(id);
}

Result<Activity> ownWriting(Household &household, const QString &id)
{
    const std::string name = toCore(id);
    const auto held = heldText(household, name);
    const auto kept = usecase::ownKept(household.workplace(), OwnSort::Activity, name);
    if (!held || !kept)
        return held ? kept.error() : held.error();
    if (!*held && !*kept)
        return Error{ErrorCode::NotFound, name};
    Activity activity = activityIn(name, *held ? **held : (*kept)->text);
    activity.id = {name};
    activity.entry = name;
    return activity;
}

bool isSignedOff(Household &household, const QString &id)
{
    const auto held = heldText(household, toCore(id));
    const auto kept = usecase::ownKept(household.workplace(), OwnSort::Activity, toCore(id));
    return held && !*held && kept && *kept && (*kept)->signedOff;
}

Outcome holdWriting(Household &household, const Activity &activity)
{
    return store::DeviceRepository(household.workplace().database)
        .setLocalState(heldKey(activity.id.value), yamlOf(activity));
}

Outcome keepWriting(Household &household, const QString &id)
{
    const std::string name = toCore(id);
    const auto held = heldText(household, name);
    if (!held || !*held)
        return held ? Outcome(Done{}) : held.error();
    const auto kept = usecase::ownKept(household.workplace(), OwnSort::Activity, name);
    if (!kept)
        return kept.error();
    if (!*kept || (*kept)->text != **held) {
        if (Outcome said = usecase::keepOwnActivity(household.workplace(), name, **held); !said)
            return said;
    }
    return store::DeviceRepository(household.workplace().database).setLocalState(heldKey(name), {});
}

Result<usecase::OwnFindings> findingsOf(Household &household, const Activity &activity)
{
    return usecase::findingsIn(household.workplace(), household.catalogueIn({}), OwnSort::Activity,
                               activity.id.value, yamlOf(activity));
}

Result<usecase::OwnFindings> signOff(Household &household, const QString &id)
{
    if (const Outcome kept = keepWriting(household, id); !kept)
        return kept.error();
    return usecase::publishOwnActivity(household.workplace(), household.catalogueIn({}),
                                       toCore(id));
}

Outcome throwAwayOwn(Household &household, const QString &id)
{
    if (Outcome done = usecase::throwAwayOwn(household.workplace(), OwnSort::Activity, toCore(id));
        !done)
        return done;
    return store::DeviceRepository(household.workplace().database)
        .setLocalState(heldKey(toCore(id)), {});
}

Result<std::vector<usecase::OwnFit>> fitsOf(Household &household, const Activity &activity)
{
    return usecase::fitOfOwn(household.workplace(), household.catalogueIn({}), activity.id.value,
                             yamlOf(activity));
}

Outcome sendOwn(Household &household, const QString &child, const QString &id)
{
    return usecase::sendToBox(household.workplace(), toCore(child), OwnSort::Activity, toCore(id));
}

Outcome withdrawOwn(Household &household, const QString &child, const QString &id)
{
    return usecase::withdrawFromBox(household.workplace(), toCore(child), OwnSort::Activity,
                                    toCore(id));
}

QString ownNotice(Household &household, const Activity &activity)
{
    if (!catalogue::isOwnId(activity.id.value) || activity.status == catalogue::Status::Reviewed ||
        !household.isOpen())
        return {};
    const auto box =
        store::BoxRepository(household.workplace().database).boxOf(toCore(household.child()));
    const auto entries = box ? usecase::ownEntriesOf(household.workplace(), box->id)
                             : Result<std::vector<workbench::OwnEntry>>(box.error());
    if (!entries)
        return {};
    const auto entry = std::ranges::find_if(*entries, [&](const workbench::OwnEntry &one) {
        return one.sort == OwnSort::Activity && one.id == activity.id.value;
    });
    return entry == entries->end() ? QString()
                                   : translated(wording::writtenByWords(entry->known.by));
}

} // namespace lidlark::mobile
