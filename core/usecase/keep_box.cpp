#include "core/usecase/keep_box.h"

#include "core/box/box_events.h"
#include "core/box/place.h"
#include "core/store/box_repository.h"
#include "core/store/recording.h"

#include <algorithm>
#include <vector>

namespace lidlark::usecase {

namespace {

using journal::Kind;
using journal::Lane;
using journal::LaneKind;

struct Saying {
    Kind kind;
    std::string fields;
};

/// All or none of @p sayings, in the lane of that child's box.
Outcome sayAll(Workplace &workplace, const store::BoxRow &box, const std::string &author,
               const std::vector<Saying> &sayings)
{
    Result<store::Recording> recording =
        store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    const Lane lane{LaneKind::Box, box.id.value};
    const std::string who = author.empty() ? workplace.device.person : author;
    for (const Saying &saying : sayings) {
        if (Outcome said = recording->sayAs(who, lane, saying.kind, saying.fields); !said)
            return said;
    }
    return recording->commit();
}

/// A box with the rows of its items.
struct CountableBox {
    store::BoxRow box;
    std::vector<store::ItemRow> items;
};

Result<CountableBox> countableBox(Workplace &workplace, const std::string &childAlias)
{
    store::BoxRepository boxes(workplace.database);
    const auto box = boxes.boxOf(childAlias);
    if (!box)
        return box.error();
    const auto items = boxes.items(box->id);
    if (!items)
        return items.error();
    return CountableBox{*box, *items};
}

std::optional<Error> problemWith(const std::vector<store::ItemRow> &rows, const ItemId &item,
                                 int count)
{
    const bool known = std::any_of(rows.begin(), rows.end(),
                                   [&](const store::ItemRow &row) { return row.item == item; });
    if (!known)
        return Error{ErrorCode::NotFound, item.value + " in this box"};
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
    const Result<CountableBox> found = countableBox(workplace, childAlias);
    if (!found)
        return found.error();
    const auto &[box, rows] = *found;
    std::vector<Saying> sayings;
    for (const auto &[item, count] : counts) {
        if (const auto problem = problemWith(rows, item, count))
            return *problem;
        const auto row = std::find_if(rows.begin(), rows.end(),
                                      [&id = item](const auto &r) { return r.item == id; });
        sayings.push_back({Kind::Count, box::fieldsOf(box::Counted{item, count, row->out})});
    }
    return sayAll(workplace, box, author, sayings);
}

Outcome noteFound(Workplace &workplace, const std::string &childAlias, const std::string &author,
                  const ItemId &item, int count)
{
    const Result<CountableBox> found = countableBox(workplace, childAlias);
    if (!found)
        return found.error();
    const auto &[box, rows] = *found;
    if (const auto problem = problemWith(rows, item, count))
        return *problem;
    if (count == 0)
        return Error{ErrorCode::Invalid, item.value + ": at least one"};
    return sayAll(workplace, box, author, {{Kind::Found, box::fieldsOf(box::Found{item, count})}});
}

Outcome checkFloor(Workplace &workplace, const std::string &childAlias, const std::string &author)
{
    store::BoxRepository boxes(workplace.database);
    const auto box = boxes.boxOf(childAlias);
    if (!box)
        return box.error();
    const auto losses = boxes.openLosses(box->id);
    if (!losses)
        return losses.error();
    std::vector<Saying> sayings;
    for (const store::LossRow &loss : *losses)
        sayings.push_back(
            {Kind::FloorChecked, box::fieldsOf(box::FloorChecked{loss.item, loss.identity})});
    return sayAll(workplace, *box, author, sayings);
}

Outcome sayPlace(Workplace &workplace, const std::string &childAlias, const std::string &place,
                 const std::string &words)
{
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    if (!box)
        return box.error();
    return sayAll(workplace, *box, {}, {{Kind::Place, box::fieldsOfPlace(place, words)}});
}

} // namespace lidlark::usecase
