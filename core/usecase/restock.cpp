#include "core/usecase/restock.h"

#include "core/box/request.h"
#include "core/usecase/box_in_hand.h"

namespace lidlark::usecase {

namespace {

using journal::Kind;

std::vector<box::Request> requestsOf(const BoxInHand &box, const ItemId &item)
{
    const store::ItemRow *row = box.row(item);
    return row == nullptr ? std::vector<box::Request>() : row->requests;
}

std::optional<Error> problemWith(const BoxInHand &box, const catalogue::Catalogue &catalogue,
                                 const ItemId &item)
{
    const catalogue::ItemKind *kind = catalogue.item(item);
    const bool ofABox = kind != nullptr && kind->source == catalogue::Source::Box;
    if (box.row(item) == nullptr && !ofABox)
        return notInThisBox(item);
    return std::nullopt;
}

Outcome sayCountedIn(Workplace &workplace, const BoxInHand &box, const std::string &author,
                     const box::CountedIn &counted)
{
    if (counted.pieces < 1)
        return Error{ErrorCode::Invalid, counted.item.value + ": at least one"};
    if (counted.pieces > box::mostPieces)
        return Error{ErrorCode::Invalid, counted.item.value + ": more than 999"};
    return sayOfBox(workplace, box, author, {{Kind::CountedIn, box::fieldsOf(counted)}});
}

} // namespace

Outcome askFor(Workplace &workplace, const std::string &childAlias, const std::string &author,
               const ItemId &item, const ItemId &insteadOf)
{
    const Result<BoxInHand> box = boxInHand(workplace, childAlias);
    if (!box)
        return box.error();
    if (const auto problem = problemWith(*box, workplace.catalogue, item))
        return *problem;
    const auto requests = requestsOf(*box, item);
    if (box::anyOpen(requests))
        return Done{};
    const box::RequestSaid asked{item, box::roundInHand(requests), box::RequestStep::Asked,
                                 insteadOf};
    return sayOfBox(workplace, *box, author, {{Kind::Request, box::fieldsOf(asked)}});
}

Outcome moveRequest(Workplace &workplace, const std::string &childAlias, const std::string &author,
                    const ItemId &item, box::RequestStep step)
{
    if (step == box::RequestStep::Asked || step == box::RequestStep::CountedIn)
        return Error{ErrorCode::Invalid, "step: seen, packed or on-its-way"};
    const Result<BoxInHand> box = boxInHand(workplace, childAlias);
    if (!box)
        return box.error();
    const auto requests = requestsOf(*box, item);
    if (!box::anyOpen(requests))
        return Error{ErrorCode::NotFound, "a request for " + item.value};
    if (step <= requests.back().step)
        return Done{};
    const box::RequestSaid moved{item, requests.back().round, step, {}};
    return sayOfBox(workplace, *box, author, {{Kind::Request, box::fieldsOf(moved)}});
}

Outcome countIn(Workplace &workplace, const std::string &childAlias, const std::string &author,
                const ItemId &item, int pieces)
{
    const Result<BoxInHand> box = boxInHand(workplace, childAlias);
    if (!box)
        return box.error();
    if (const auto problem = problemWith(*box, workplace.catalogue, item))
        return *problem;
    return sayCountedIn(workplace, *box, author,
                        {item, box::roundInHand(requestsOf(*box, item)), pieces});
}

Outcome correctCountedIn(Workplace &workplace, const std::string &childAlias,
                         const std::string &author, const ItemId &item, int pieces)
{
    const Result<BoxInHand> box = boxInHand(workplace, childAlias);
    if (!box)
        return box.error();
    const int round = box::roundInHand(requestsOf(*box, item));
    if (round == 0)
        return Error{ErrorCode::NotFound, "a counting in of " + item.value};
    return sayCountedIn(workplace, *box, author, {item, round - 1, pieces});
}

} // namespace lidlark::usecase
