#include "core/store/box_repository.h"
#include "core/usecase/export_tables.h"

namespace lidlark::usecase {

namespace {

/// All tables of the boxes, filled box by box.
struct BoxTables {
    OpenTable boxes{boxGroup,
                    "boxes",
                    {"child", "lid list number", "handed over", "is", "says", "said on", "or is",
                     "says somebody else"},
                    {}};
    OpenTable lidList{boxGroup, "lid list", {"child", "item", "pieces"}, {}};
    OpenTable inBox{boxGroup,
                    "in the box",
                    {"child", "item", "belong here", "at least", "at most", "still in use",
                     "all dried out", "last full count", "please count", "last looked over",
                     "keeps days once opened", "was in a mouth and waits for washing"},
                    {}};
    OpenTable opened{
        boxGroup, "opened pieces", {"child", "item", "piece", "opened", "times left open"}, {}};
    OpenTable came{boxGroup, "came in", {"child", "item", "day", "pieces", "because"}, {}};
    OpenTable went{
        boxGroup, "went for good", {"child", "item", "day", "pieces", "what became of them"}, {}};
    OpenTable putBack{boxGroup,
                      "put back",
                      {"child", "activity", "day", "item", "pieces", "what became of them", "says"},
                      {}};
    OpenTable missing{boxGroup, "not found yet", {"child", "item", "pieces", "since", "says"}, {}};
};

void addBox(BoxTables &tables, const store::BoxRow &box,
            const std::optional<store::RevisionRow> &list, const std::optional<box::Place> &place)
{
    const bool orElse = place && place->orElse;
    tables.boxes.add({box.alias, list ? Cell(list->revision.number) : Cell(),
                      list ? Cell(list->issued) : Cell(), place ? Cell(place->words) : Cell(),
                      place ? Cell(place->author) : Cell(), place ? Cell(place->when.day) : Cell(),
                      orElse ? Cell(place->orElse->words) : Cell(),
                      orElse ? Cell(place->orElse->author) : Cell()});
}

void addItem(BoxTables &tables, const std::string &child, const std::string &name,
             const store::ItemRow &item)
{
    tables.inBox.add({child, name, item.expected, item.low, item.high, item.out,
                      yesOrNo(item.driedOut), item.counted, yesOrNo(item.pleaseCount),
                      item.care.checked, item.care.keepsDays, yesOrNo(item.care.mouthed)});
    for (std::size_t i = 0; i < item.care.pieces.size(); ++i) {
        const box::Piece &piece = item.care.pieces[i];
        tables.opened.add(
            {child, name, static_cast<int>(i) + 1, piece.opened, piece.timesLeftOpen});
    }
    for (const box::Arrival &arrival : item.arrivals)
        tables.came.add({child, name, arrival.day, arrival.pieces,
                         arrival.round ? "counted in" : "packed with the box"});
    for (const box::DatedUse &use : item.uses)
        tables.went.add(
            {child, name, use.day, use.pieces, plainWords(box::exceptionKindNames.of(use.kind))});
}

void addOutcome(BoxTables &tables, const ExportSource &source, const std::string &child,
                const store::OutcomeRow &outcome)
{
    const play::Play *play = source.play(outcome.play);
    const Cell activity = play != nullptr ? Cell(source.activity(play->activity)) : Cell();
    const Cell day = play != nullptr ? Cell(play->when.day) : Cell();
    for (std::size_t i = 0; i < box::exceptionKindCount; ++i) {
        const auto kind = static_cast<box::ExceptionKind>(i);
        if (const int pieces = outcome.exceptions.of(kind); pieces != 0)
            tables.putBack.add({child, activity, day, source.item(outcome.item), pieces,
                                plainWords(box::exceptionKindNames.of(kind)), outcome.author});
    }
    if (outcome.exceptions.allHome())
        tables.putBack.add(
            {child, activity, day, source.item(outcome.item), 0, "all came home", outcome.author});
}

Outcome addAll(BoxTables &tables, const ExportSource &source, const store::BoxRow &box)
{
    store::BoxRepository boxes(source.workplace.database);
    const auto list = boxes.revision(box.id);
    const auto place = boxes.place(box.id);
    const auto items = boxes.items(box.id);
    const auto outcomes = boxes.outcomes(box.id);
    const auto losses = boxes.openLosses(box.id);
    if (!list || !place)
        return !list ? list.error() : place.error();
    if (!items || !outcomes || !losses)
        return !items ? items.error() : !outcomes ? outcomes.error() : losses.error();
    addBox(tables, box, *list, *place);
    if (*list) {
        for (const auto &[item, pieces] : (*list)->revision.packed)
            tables.lidList.add({box.alias, source.item(item), pieces});
    }
    for (const store::ItemRow &item : *items)
        addItem(tables, box.alias, source.item(item.item), item);
    for (const store::OutcomeRow &outcome : *outcomes)
        addOutcome(tables, source, box.alias, outcome);
    for (const store::LossRow &loss : *losses)
        tables.missing.add(
            {box.alias, source.item(loss.item), loss.pieces, loss.when.day, loss.author});
    return Done{};
}

} // namespace

Tables boxTables(const ExportSource &source)
{
    BoxTables tables;
    for (const store::BoxRow &box : source.boxes) {
        if (Outcome done = addAll(tables, source, box); !done)
            return done.error();
    }
    return std::vector{std::move(tables.boxes),   std::move(tables.lidList),
                       std::move(tables.inBox),   std::move(tables.opened),
                       std::move(tables.came),    std::move(tables.went),
                       std::move(tables.putBack), std::move(tables.missing)};
}

} // namespace lidlark::usecase
