#include "core/usecase/own_entries.h"

#include "core/catalogue/write_entry.h"
#include "core/store/box_repository.h"
#include "core/store/recording.h"
#include "core/usecase/clinic_word.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

using workbench::OwnEntry;
using workbench::OwnKept;
using workbench::OwnSaid;
using workbench::OwnSort;

catalogue::Activity activityIn(const std::string &id, const std::string &text)
{
    return catalogue::activityDraft({"activities/" + id + ".yaml", text});
}

int versionOf(const OwnKept &kept)
{
    return kept.sort == OwnSort::Activity
               ? activityIn(kept.id, kept.text).version
               : catalogue::itemDraft({"items/" + kept.id + ".yaml", kept.text}).version;
}

bool uses(const catalogue::Activity &activity, const std::string &item)
{
    return std::ranges::any_of(activity.items,
                               [&item](const auto &use) { return use.item.value == item; }) ||
           std::ranges::any_of(activity.swaps,
                               [&item](const auto &swap) { return swap.with.value == item; });
}

/// One box and what it holds of the therapist's own.
struct OwnBox {
    BoxId id;
    std::vector<OwnEntry> entries;

    [[nodiscard]] bool holds(OwnSort sort, const std::string &id_) const
    {
        return std::ranges::any_of(entries, [&](const OwnEntry &entry) {
            return entry.sort == sort && entry.id == id_ && !entry.withdrawn;
        });
    }
};

Result<OwnBox> boxOf(Workplace &therapist, const std::string &child)
{
    if (const Outcome may = mayKeepClinic(therapist); !may)
        return may.error();
    const auto box = store::BoxRepository(therapist.database).boxOf(child);
    if (!box)
        return box.error();
    auto entries = ownEntriesOf(therapist, box->id);
    if (!entries)
        return entries.error();
    return OwnBox{box->id, *std::move(entries)};
}

Outcome sayAll(Workplace &therapist, const OwnBox &box, const std::vector<OwnSaid> &words)
{
    auto recording = store::Recording::begin(therapist.database, therapist.device, therapist.clock);
    if (!recording)
        return recording.error();
    for (const OwnSaid &said : words) {
        Outcome done = recording->say({journal::LaneKind::Box, box.id.value},
                                      journal::Kind::OwnEntry, workbench::fieldsOf(said));
        if (!done)
            return done;
    }
    return recording->commit();
}

OwnSaid asSaid(const OwnKept &kept)
{
    return {kept.id, kept.sort, kept.text, versionOf(kept)};
}

/// The things an activity is played with that are the therapist's own, or measure otherwise.
Outcome addItems(const catalogue::Activity &activity, const std::vector<OwnKept> &all,
                 const OwnBox &box, std::vector<OwnSaid> &words)
{
    for (const OwnKept &kept : all) {
        if (kept.sort != OwnSort::Item || !uses(activity, kept.id))
            continue;
        if (kept.signedOff)
            words.push_back(asSaid(kept));
        else if (!box.holds(OwnSort::Item, kept.id))
            return Error{ErrorCode::Invalid, "item: " + kept.id + " is a draft"};
    }
    return Done{};
}

} // namespace

Outcome sendToBox(Workplace &therapist, const std::string &child, OwnSort sort,
                  const std::string &id)
{
    const auto box = boxOf(therapist, child);
    if (!box)
        return box.error();
    const auto all = ownKept(therapist);
    if (!all)
        return all.error();
    const auto kept = std::ranges::find_if(
        *all, [&](const OwnKept &one) { return one.sort == sort && one.id == id; });
    if (kept == all->end())
        return Error{ErrorCode::NotFound, id};
    if (!kept->signedOff)
        return Error{ErrorCode::Invalid, "text: a draft"};
    std::vector<OwnSaid> words;
    if (sort == OwnSort::Activity) {
        if (Outcome added = addItems(activityIn(id, kept->text), *all, *box, words); !added)
            return added;
    }
    words.push_back(asSaid(*kept));
    const auto fresh = std::ranges::count_if(words, [&box](const OwnSaid &said) {
        return std::ranges::none_of(box->entries,
                                    [&said](const OwnEntry &entry) { return entry.id == said.id; });
    });
    if (box->entries.size() + static_cast<std::size_t>(fresh) > mostOwnEntries)
        return Error{ErrorCode::Invalid, "box: 100 of your own already"};
    return sayAll(therapist, *box, words);
}

Outcome withdrawFromBox(Workplace &therapist, const std::string &child, OwnSort sort,
                        const std::string &id)
{
    const auto box = boxOf(therapist, child);
    if (!box)
        return box.error();
    if (!box->holds(sort, id))
        return Error{ErrorCode::NotFound, id};
    for (const OwnEntry &entry : box->entries) {
        const bool needed = sort == OwnSort::Item && catalogue::isOwnId(id) &&
                            entry.sort == OwnSort::Activity && !entry.withdrawn &&
                            uses(activityIn(entry.id, entry.known.text), id);
        if (needed)
            return Error{ErrorCode::Invalid, "item: " + entry.id + " is played with it"};
    }
    const auto entry = std::ranges::find_if(
        box->entries, [&](const OwnEntry &one) { return one.sort == sort && one.id == id; });
    return sayAll(therapist, *box, {{id, sort, {}, std::max(entry->known.version, 1)}});
}

} // namespace lidlark::usecase
