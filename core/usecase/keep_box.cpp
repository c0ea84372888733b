#include "core/usecase/keep_box.h"

#include "core/box/box_events.h"
#include "core/box/place.h"
#include "core/store/box_repository.h"
#include "core/usecase/box_in_hand.h"

#include <vector>

namespace lidlark::usecase {

namespace {

using journal::Kind;

std::optional<Error> problemWith(const BoxInHand &box, const ItemId &item, int count)
{
    if (box.row(item) == nullptr)
        return notInThisBox(item);
    if (count < 0)
        return Error{ErrorCode::Invalid, item.value + ": below zero"};
    if (count > box::mostPieces)
        return Error{ErrorCode::Invalid, item.value + ": more than 999"};
    return std::nullopt;
}

} // namespace

Outcome countBox(Workplace &workplace, const std::string &childAlias, const std::string &author,
                 const std::map<ItemId, int> &counts)
{
    const Result<BoxInHand> box = boxInHand(workplace, childAlias);
    if (!box)
        return box.error();
    std::vector<Saying> sayings;
    for (const auto &[item, count] : counts) {
        if (const auto problem = problemWith(*box, item, count))
            return *problem;
        sayings.push_back(
            {Kind::Count, box::fieldsOf(box::Counted{item, count, box->row(item)->out})});
    }
    return sayOfBox(workplace, *box, author, sayings);
}

Outcome noteFound(Workplace &workplace, const std::string &childAlias, const std::string &author,
                  const ItemId &item, int count)
{
    const Result<BoxInHand> box = boxInHand(workplace, childAlias);
    if (!box)
        return box.error();
    if (const auto problem = problemWith(*box, item, count))
        return *problem;
    if (count == 0)
        return Error{ErrorCode::Invalid, item.value + ": at least one"};
    return sayOfBox(workplace, *box, author,
                    {{Kind::Found, box::fieldsOf(box::Found{item, count})}});
}

Outcome checkFloor(Workplace &workplace, const std::string &childAlias, const std::string &author)
{
    const Result<BoxInHand> box = boxInHand(workplace, childAlias);
    if (!box)
        return box.error();
    const auto losses = store::BoxRepository(workplace.database).openLosses(box->box.id);
    if (!losses)
        return losses.error();
    std::vector<Saying> sayings;
    for (const store::LossRow &loss : *losses)
        sayings.push_back(
            {Kind::FloorChecked, box::fieldsOf(box::FloorChecked{loss.item, loss.identity})});
    return sayOfBox(workplace, *box, author, sayings);
}

Outcome sayPlace(Workplace &workplace, const std::string &childAlias, const std::string &place,
                 const std::string &words)
{
    const Result<BoxInHand> box = boxInHand(workplace, childAlias);
    if (!box)
        return box.error();
    return sayOfBox(workplace, *box, {}, {{Kind::Place, box::fieldsOfPlace(place, words)}});
}

} // namespace lidlark::usecase
