#include "core/usecase/box_to_hand_over.h"

#include "core/store/box_repository.h"
#include "core/store/recording.h"
#include "core/usecase/avoided_at_home.h"
#include "core/usecase/clinic_word.h"
#include "core/usecase/pack_box.h"
#include "core/workbench/box_departures.h"
#include "core/workbench/hygiene.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

using workbench::NotReady;
using workbench::PackBox;

Outcome isReady(const PackBox &box)
{
    switch (box.notReady) {
    case NotReady::Nothing:
        break;
    case NotReady::Conflict:
        return aboutBox(box.code, box.conflict);
    case NotReady::Disputed:
        return aboutBox(box.code, "written in two ways");
    case NotReady::TakeOut:
        return aboutBox(box.code, "something has to come out first");
    case NotReady::Lines:
        return aboutBox(box.code, "not all of it is packed");
    case NotReady::SecondLook:
        return aboutBox(box.code, "a second person looks it over first");
    }
    return box.whose.empty() ? Outcome(aboutBox(box.code, "nobody's yet")) : Outcome(Done{});
}

/// A home sheet may have changed since the box was written: it is read once more.
Outcome mayGoHome(Workplace &therapist, workbench::KeptBox box)
{
    const auto avoids = avoidedForBoxOf(therapist, box.box.whose);
    const auto supplies = store::ClinicRepository(therapist.database).supplies();
    if (!avoids || !supplies)
        return avoids ? supplies.error() : avoids.error();
    box.personal.avoids.insert(avoids->begin(), avoids->end());
    const auto conflict = workbench::conflictIn(box, therapist.catalogue, *supplies);
    return conflict ? Outcome(aboutBox(box.box.code, *conflict)) : Outcome(Done{});
}

/// Errors: Invalid, with the items that are to be tended named.
Outcome mayBeIssued(Workplace &therapist, const std::string &code)
{
    const auto status = store::ClinicRepository(therapist.database).status(code);
    if (!status)
        return status.error();
    switch (workbench::issueBarOf(*status, therapist.catalogue)) {
    case workbench::IssueBar::None:
        return Done{};
    case workbench::IssueBar::StillOut:
        return aboutBox(code, "still with a child");
    case workbench::IssueBar::Retired:
        return aboutBox(code, "used no more");
    case workbench::IssueBar::ToBeTended:
        break;
    }
    std::string items;
    for (const auto &left : workbench::stillToDo(**status, therapist.catalogue))
        items += (items.empty() ? "" : ", ") + left.item.value;
    return aboutBox(code, items + " to be cleaned or replaced first");
}

void readLots(workbench::StatusSaid &said, const PackBox &box)
{
    for (const workbench::PackLine &line : box.lines) {
        said.pieces[line.item] = line.pieces;
        for (const workbench::PackedBy &packed : line.packed) {
            if (!packed.lot.empty())
                said.lots[line.item].insert(packed.lot);
        }
    }
}

} // namespace

Result<BoxToHandOver> boxToHandOver(Workplace &therapist, const workbench::BuildId &build,
                                    const std::string &code)
{
    if (const Outcome may = mayKeepClinic(therapist); !may)
        return may.error();
    const auto table = packTable(therapist, build);
    const auto today = store::todayOf(therapist.clock);
    if (!table || !today)
        return table ? today.error() : table.error();
    const PackBox *box = table->box(code);
    if (box == nullptr)
        return Error{ErrorCode::NotFound, "this box"};
    if (table->isHandedOver(code))
        return aboutBox(code, "was handed over as this build");
    if (const Outcome ready = isReady(*box); !ready)
        return ready.error();
    if (const Outcome may = mayGoHome(therapist, *table->build.box(code)); !may)
        return may.error();
    if (const Outcome may = mayBeIssued(therapist, code); !may)
        return may.error();
    BoxToHandOver packed;
    packed.status.box = code;
    packed.status.day = today->day;
    packed.status.to = box->whose;
    packed.status.build = build.value;
    readLots(packed.status, *box);
    for (const workbench::PackLine &line : box->lines) {
        const ItemId item = workbench::kindOf(line.item);
        if (therapist.catalogue.item(item) != nullptr)
            packed.lidList[item] += line.pieces;
    }
    return packed;
}

Result<std::optional<LidListBefore>> lidListBefore(Workplace &therapist, const std::string &child)
{
    store::BoxRepository boxes(therapist.database);
    const auto box = boxes.boxOf(child);
    if (!box && box.error().code == ErrorCode::NotFound)
        return std::optional<LidListBefore>();
    if (!box)
        return box.error();
    const auto revision = boxes.revision(box->id);
    if (!revision)
        return revision.error();
    LidListBefore before{box->id, 0, {}};
    if (*revision) {
        before.number = (*revision)->revision.number;
        for (const auto &[item, pieces] : (*revision)->revision.packed)
            before.items.insert(item);
    }
    return std::optional(before);
}

} // namespace lidlark::usecase
