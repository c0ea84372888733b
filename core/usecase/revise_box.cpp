#include "core/usecase/revise_box.h"

#include "core/box/request.h"
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

Saying onItsWay(const BoxInHand &box, const ItemId &item)
{
    const store::ItemRow *row = box.row(item);
    const int round = row != nullptr ? box::roundInHand(row->requests) : 0;
    return {Kind::Request,
            box::fieldsOf(box::RequestSaid{item, round, box::RequestStep::OnItsWay, {}})};
}

} // namespace

Outcome reviseBox(Workplace &therapist, const std::string &childAlias, const std::string &author,
                  const std::map<ItemId, int> &packed)
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
    std::vector<Saying> sayings{
        {Kind::Revision, box::fieldsOf(box::Revision{last.number + 1, packed, {}})}};
    for (const auto &[item, pieces] : packed) {
        const auto known = last.packed.find(item);
        if (known == last.packed.end() || known->second < pieces)
            sayings.push_back(onItsWay(*box, item));
    }
    return sayOfBox(therapist, *box, author, sayings);
}

} // namespace lidlark::usecase
