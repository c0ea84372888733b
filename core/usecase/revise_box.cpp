#include "core/usecase/revise_box.h"

#include "core/box/request.h"
#include "core/box/revision_why.h"
#include "core/usecase/avoided_items.h"
#include "core/usecase/box_in_hand.h"

namespace lidlark::usecase {

namespace {

using journal::Kind;

std::optional<Error> problemWith(const catalogue::Catalogue &catalogue, const BoxInHand &box,
                                 const std::map<ItemId, int> &packed)
{
    for (const auto &[item, pieces] : packed) {
        const catalogue::ItemKind *kind = catalogue.item(item);
        const bool ofABox = kind != nullptr && kind->source == catalogue::Source::Box;
        if (!ofABox && box.row(item) == nullptr)
            return Error{ErrorCode::NotFound, item.value};
        if (pieces < 1 || pieces > box::mostPieces)
            return Error{ErrorCode::Invalid, item.value + ": 1 to 999 pieces"};
    }
    return std::nullopt;
}

/// What was in the box before it came to be avoided stays where it is until it is taken out.
std::optional<Error> addedThoughAvoided(Workplace &therapist, const ChildId &child,
                                        const std::map<ItemId, int> &before,
                                        const std::map<ItemId, int> &packed)
{
    const auto avoided = avoidedForChild(therapist, child);
    if (!avoided)
        return avoided.error();
    for (const auto &[item, pieces] : packed) {
        if (!before.contains(item) && isAvoided(therapist.catalogue, item, *avoided))
            return Error{ErrorCode::NotAllowed, item.value + ": avoided at home"};
    }
    return std::nullopt;
}

Saying onItsWay(const BoxInHand &box, const ItemId &item)
{
    const store::ItemRow *row = box.row(item);
    const int round = row != nullptr ? box::roundInHand(row->requests) : 0;
    return {Kind::Request,
            box::fieldsOf(box::RequestSaid{item, round, box::RequestStep::OnItsWay, {}})};
}

} // namespace

Outcome reviseBox(Workplace &therapist, const std::string &childAlias, const std::string &author,
                  const std::map<ItemId, int> &packed, const std::string &why)
{
    if (therapist.device.role != store::Role::Therapist)
        return Error{ErrorCode::NotAllowed, "lid list"};
    const Result<BoxInHand> box = boxInHand(therapist, childAlias);
    if (!box)
        return box.error();
    if (const auto problem = problemWith(therapist.catalogue, *box, packed))
        return *problem;
    const auto before = store::BoxRepository(therapist.database).revision(box->box.id);
    if (!before)
        return before.error();
    if (!*before)
        return Error{ErrorCode::NotFound, "lid list"};
    const box::Revision &last = (*before)->revision;
    if (last.packed == packed && (*before)->heads == 1)
        return Error{ErrorCode::Invalid, "lid list: as it is"};
    if (why.size() > box::longestWhy)
        return Error{ErrorCode::Invalid, "why: too long"};
    if (const auto refused = addedThoughAvoided(therapist, box->box.child, last.packed, packed))
        return *refused;
    std::vector<Saying> sayings{
        {Kind::Revision,
         box::withWhy(box::fieldsOf(box::Revision{last.number + 1, packed, {}}), why)}};
    for (const auto &[item, pieces] : packed) {
        const auto known = last.packed.find(item);
        if (known == last.packed.end() || known->second < pieces)
            sayings.push_back(onItsWay(*box, item));
    }
    return sayOfBox(therapist, *box, author, sayings);
}

} // namespace lidlark::usecase
