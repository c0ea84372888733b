#include "core/usecase/tend_item.h"

#include "core/box/box_events.h"
#include "core/box/request.h"
#include "core/store/recording.h"
#include "core/usecase/box_in_hand.h"
#include "core/usecase/box_items.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

using box::ExceptionKind;
using journal::Kind;

constexpr int daysBack = 31; // what happened longer ago a count tells better [P]
constexpr int mostKeepingDays = 365;

/// One item of the box that something is said of, and today.
struct ItemInHand {
    BoxInHand box;
    const store::ItemRow *row = nullptr;
    const catalogue::ItemKind *kind = nullptr;
    Day today;
};

Result<ItemInHand> itemInHand(Workplace &workplace, const Tending &tending)
{
    auto box = boxInHand(workplace, tending.child);
    const auto today = store::todayOf(workplace.clock);
    if (!box || !today)
        return box ? today.error() : box.error();
    ItemInHand item{*std::move(box), nullptr, workplace.catalogue.item(tending.item), today->day};
    item.row = item.box.row(tending.item);
    if (item.row == nullptr)
        return notInThisBox(tending.item);
    return item;
}

Outcome say(Workplace &workplace, const Tending &tending, const ItemInHand &item,
            const std::vector<Saying> &sayings)
{
    return sayOfBox(workplace, item.box, tending.author, sayings);
}

std::optional<Error> problemWithDay(const ItemInHand &item, std::optional<Day> day)
{
    if (!day)
        return std::nullopt;
    if (*day > item.today)
        return Error{ErrorCode::Invalid, "day: still to come"};
    if (item.today - *day > daysBack)
        return Error{ErrorCode::Invalid, "day: more than 31 days ago"};
    return std::nullopt;
}

/// The day a piece came, by its name; none: no such piece ever came.
std::optional<Day> cameOn(const store::ItemRow &row, const box::PieceId &piece)
{
    for (const box::Arrival &arrival : row.arrivals) {
        for (int i = 0; i < arrival.pieces; ++i) {
            if (box::pieceId(arrival.round, i) == piece)
                return arrival.day;
        }
    }
    return std::nullopt;
}

Error noSuchPiece(const ItemId &item)
{
    return {ErrorCode::NotFound, "this piece of " + item.value};
}

/// A pot dries out; what has only grown old is used up.
ExceptionKind wordForThrowing(const ItemInHand &item)
{
    const bool dries = item.kind != nullptr && item.kind->life.openAirDays;
    return dries ? ExceptionKind::DriedOut : ExceptionKind::UsedUp;
}

} // namespace

Outcome noteGone(Workplace &workplace, const Tending &tending, ExceptionKind kind, int pieces,
                 std::optional<Day> day)
{
    const auto item = itemInHand(workplace, tending);
    if (!item)
        return item.error();
    if (pieces < 1)
        return Error{ErrorCode::Invalid, tending.item.value + ": at least one"};
    if (pieces > item->row->high)
        return Error{ErrorCode::Invalid, tending.item.value + ": more than the box held"};
    if (const auto problem = problemWithDay(*item, day))
        return *problem;
    return say(
        workplace, tending, *item,
        {{Kind::Exception, box::fieldsOf(box::LooseException{tending.item, kind, pieces, day})}});
}

Outcome noteBackAgain(Workplace &workplace, const Tending &tending, int pieces)
{
    const auto item = itemInHand(workplace, tending);
    if (!item)
        return item.error();
    if (pieces < 1 || pieces > item->row->out)
        return Error{ErrorCode::Invalid, tending.item.value + ": more than are out, or none"};
    const box::LooseException back{tending.item, ExceptionKind::StillInUse, -pieces, {}};
    return say(workplace, tending, *item, {{Kind::Exception, box::fieldsOf(back)}});
}

Outcome noteOpened(Workplace &workplace, const Tending &tending, const box::PieceId &piece,
                   std::optional<Day> day)
{
    const auto item = itemInHand(workplace, tending);
    if (!item)
        return item.error();
    const auto came = cameOn(*item->row, piece);
    if (!came)
        return noSuchPiece(tending.item);
    if (day && *day > item->today)
        return Error{ErrorCode::Invalid, "day: still to come"};
    if (day && *day < *came)
        return Error{ErrorCode::Invalid, "day: before it came into the box"};
    return say(workplace, tending, *item,
               {{Kind::Opened, box::fieldsOf(box::Opened{tending.item, piece, day})}});
}

Outcome noteLeftOpen(Workplace &workplace, const Tending &tending, const box::PieceId &piece)
{
    const auto item = itemInHand(workplace, tending);
    if (!item)
        return item.error();
    if (!cameOn(*item->row, piece))
        return noSuchPiece(tending.item);
    return say(workplace, tending, *item,
               {{Kind::LeftOpen, box::fieldsOf(box::LeftOpen{tending.item, piece, item->today})}});
}

Outcome noteChecked(Workplace &workplace, const Tending &tending)
{
    const auto item = itemInHand(workplace, tending);
    if (!item)
        return item.error();
    return say(workplace, tending, *item,
               {{Kind::Checked, box::fieldsOf(box::Checked{tending.item, item->today})}});
}

Outcome setKeepingLimit(Workplace &workplace, const Tending &tending, std::optional<int> days)
{
    const auto item = itemInHand(workplace, tending);
    if (!item)
        return item.error();
    if (days && (*days < 1 || *days > mostKeepingDays))
        return Error{ErrorCode::Invalid, "days: 1 to 365"};
    return say(workplace, tending, *item,
               {{Kind::Limit, box::fieldsOf(box::KeepingLimit{tending.item, days})}});
}

Outcome noteHygiene(Workplace &workplace, const Tending &tending, box::HygieneMark mark)
{
    const auto item = itemInHand(workplace, tending);
    if (!item)
        return item.error();
    if (mark == box::HygieneMark::Washed && item->kind != nullptr && !item->kind->cleanable)
        return Error{ErrorCode::Invalid, tending.item.value + ": cannot be washed"};
    return say(workplace, tending, *item,
               {{Kind::Hygiene, box::fieldsOf(box::HygieneSaid{tending.item, mark})}});
}

Outcome throwAway(Workplace &workplace, const Tending &tending)
{
    const auto item = itemInHand(workplace, tending);
    if (!item)
        return item.error();
    const store::ItemRow &row = *item->row;
    if (row.high == 0)
        return Error{ErrorCode::NotFound, "any " + tending.item.value + " in this box"};
    std::vector<Saying> sayings{
        {Kind::Exception,
         box::fieldsOf(box::LooseException{tending.item, wordForThrowing(*item), 1, {}})}};
    if (row.care.mouthed) // or the next one would be set aside for what happened to this one
        sayings.push_back({Kind::Hygiene, box::fieldsOf(box::HygieneSaid{
                                              tending.item, box::HygieneMark::Replaced})});
    const bool mayAsk = workplace.device.role != store::Role::Guest; // the family asks
    if (mayAsk && !box::anyOpen(row.requests))
        sayings.push_back(
            {Kind::Request,
             box::fieldsOf(box::RequestSaid{
                 tending.item, box::roundInHand(row.requests), box::RequestStep::Asked, {}})});
    return say(workplace, tending, *item, sayings);
}

} // namespace lidlark::usecase
