#include "core/usecase/say_statement.h"

#include "core/child/avoided.h"
#include "core/store/box_repository.h"
#include "core/store/home_repository.h"
#include "core/store/recording.h"
#include "core/usecase/swaps_to_ask.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

using child::Avoided;
using journal::Kind;
using journal::LaneKind;

/// What stands in for the things of one box, and was not asked for yet.
Result<std::vector<box::RequestSaid>> notYetAsked(Workplace &workplace, const store::BoxRow &whose,
                                                  Avoided what)
{
    const auto items = store::BoxRepository(workplace.database).items(whose.id);
    if (!items)
        return items.error();
    std::map<ItemId, int> pieces;
    for (const store::ItemRow &row : *items)
        pieces[row.item] = row.high + row.out;
    std::vector<box::RequestSaid> wanted;
    for (box::RequestSaid swap : swapsToAsk(pieces, workplace.catalogue, what)) {
        const auto row =
            std::find_if(items->begin(), items->end(),
                         [&swap](const store::ItemRow &known) { return known.item == swap.item; });
        const bool open = row != items->end() && box::anyOpen(row->requests);
        if (row != items->end())
            swap.round = box::roundInHand(row->requests);
        if (!open)
            wanted.push_back(swap);
    }
    return wanted;
}

Outcome askForSwaps(Workplace &workplace, store::Recording &recording, const HomeId &home,
                    Avoided what)
{
    const auto boxes = store::BoxRepository(workplace.database).boxes();
    if (!boxes)
        return boxes.error();
    for (const store::BoxRow &whose : *boxes) {
        const auto lives =
            store::HomeRepository(workplace.database).fact(home, whose.child.value, "lives");
        if (!lives)
            return lives.error();
        if (!*lives || **lives == "no")
            continue;
        const auto swaps = notYetAsked(workplace, whose, what);
        if (!swaps)
            return swaps.error();
        for (const box::RequestSaid &asked : *swaps) {
            Outcome said =
                recording.say({LaneKind::Box, whose.id.value}, Kind::Request, box::fieldsOf(asked));
            if (!said)
                return said;
        }
    }
    return Done{};
}

} // namespace

Outcome sayStatement(Workplace &workplace, const HomeId &home, const child::Fact &fact)
{
    Result<store::Recording> recording =
        store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    Outcome said =
        recording->say({LaneKind::Safety, home.value}, Kind::Fact, child::fieldsOf(fact));
    if (!said)
        return said;
    const auto what = child::avoidedBy(fact.fact);
    if (what && fact.value == "yes") {
        if (Outcome asked = askForSwaps(workplace, *recording, home, *what); !asked)
            return asked;
    }
    return recording->commit();
}

} // namespace lidlark::usecase
