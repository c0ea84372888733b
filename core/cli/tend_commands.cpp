#include "core/cli/commands.h"

#include "core/cli/json_input.h"
#include "core/cli/print_box.h"
#include "core/store/box_repository.h"
#include "core/store/recording.h"
#include "core/usecase/box_items.h"
#include "core/usecase/box_questions.h"
#include "core/usecase/restock.h"
#include "core/usecase/tend_item.h"

#include <algorithm>
#include <functional>
#include <map>

namespace lidlark::cli {

namespace {

using journal::Fields;

/// Whose box a question is about.
Result<std::string> childOfQuestion(Desk &desk, const std::string &id)
{
    store::BoxRepository repository(desk.database());
    const auto boxes = repository.boxes();
    if (!boxes)
        return boxes.error();
    for (const store::BoxRow &box : *boxes) {
        const auto items = repository.items(box.id);
        if (!items)
            return items.error();
        for (const store::ItemRow &row : *items) {
            const bool here =
                std::any_of(row.questions.begin(), row.questions.end(),
                            [&id](const box::Question &question) { return question.id == id; });
            if (here)
                return box.alias;
        }
    }
    return Error{ErrorCode::NotFound, "this question"};
}

/// A word, or a number of pieces.
Result<std::string> needAnswer(const Fields &fields)
{
    if (const auto number = fields.whole("answer", -mostSaid, mostSaid))
        return std::to_string(*number);
    return needText(fields, "answer");
}

/// What a request's input asks for, done.
Outcome doRequest(usecase::Workplace &workplace, const std::string &child, const ItemId &item,
                  const Fields &fields)
{
    const std::string author = fields.text("author").value_or("");
    const auto step = box::requestStepNames.parse(fields.text("step").value_or("asked"));
    if (!step)
        return Error{ErrorCode::Invalid, "step: asked, seen, packed, on-its-way or counted-in"};
    if (*step == box::RequestStep::Asked)
        return usecase::askFor(workplace, child, author, item,
                               {fields.text("instead_of").value_or("")});
    if (*step != box::RequestStep::CountedIn)
        return usecase::moveRequest(workplace, child, author, item, *step);
    const auto count = fields.whole("count", -mostSaid, mostSaid);
    if (!count)
        return Error{ErrorCode::Invalid, "count: not a whole number"};
    return fields.isTrue("correct")
               ? usecase::correctCountedIn(workplace, child, author, item, *count)
               : usecase::countIn(workplace, child, author, item, *count);
}

/// The piece that the input names, or else the one that is in use or comes next.
Result<box::PieceId> pieceMeant(Desk &desk, const usecase::Tending &tending, const Fields &fields)
{
    if (const auto named = fields.text("piece"))
        return box::PieceId{*named};
    const auto family = usecase::loadFamily(desk.workplace(), tending.child);
    const auto today = store::todayOf(desk.workplace().clock);
    if (!family || !today)
        return family ? today.error() : family.error();
    for (const auto &item : usecase::boxItemsOf(*family, desk.catalogue(), today->day)) {
        if (item.row.item == tending.item && !item.freshness.pieces.empty())
            return item.freshness.pieces.front().id;
    }
    return Error{ErrorCode::NotFound, "a piece of " + tending.item.value};
}

Outcome sayOpened(Desk &desk, const usecase::Tending &tending, const Fields &fields)
{
    const auto piece = pieceMeant(desk, tending, fields);
    const auto day = dayFromText(fields.text("day").value_or(""));
    if (!piece)
        return piece.error();
    if (fields.text("day") && !day)
        return Error{ErrorCode::Invalid, "day: not a day such as 2027-01-11"};
    return usecase::noteOpened(desk.workplace(), tending, *piece, day);
}

Outcome sayLeftOpen(Desk &desk, const usecase::Tending &tending, const Fields &fields)
{
    const auto piece = pieceMeant(desk, tending, fields);
    return piece ? usecase::noteLeftOpen(desk.workplace(), tending, *piece)
                 : Outcome(piece.error());
}

Outcome sayGone(Desk &desk, const usecase::Tending &tending, const Fields &fields)
{
    const auto kind = box::exceptionKindNames.parse(fields.text("kind").value_or(""));
    const auto day = dayFromText(fields.text("day").value_or(""));
    if (!kind)
        return Error{ErrorCode::Invalid, "kind: used-up, lost, broken, dried-out or still-in-use"};
    if (fields.text("day") && !day)
        return Error{ErrorCode::Invalid, "day: not a day such as 2027-01-11"};
    return usecase::noteGone(desk.workplace(), tending, *kind,
                             fields.whole("count", -mostSaid, mostSaid).value_or(1), day);
}

Outcome sayBack(Desk &desk, const usecase::Tending &tending, const Fields &fields)
{
    return usecase::noteBackAgain(desk.workplace(), tending,
                                  fields.whole("count", -mostSaid, mostSaid).value_or(1));
}

Outcome sayChecked(Desk &desk, const usecase::Tending &tending, const Fields & /*fields*/)
{
    return usecase::noteChecked(desk.workplace(), tending);
}

Outcome sayThrownAway(Desk &desk, const usecase::Tending &tending, const Fields & /*fields*/)
{
    return usecase::throwAway(desk.workplace(), tending);
}

Outcome sayKeeps(Desk &desk, const usecase::Tending &tending, const Fields &fields)
{
    return usecase::setKeepingLimit(desk.workplace(), tending,
                                    fields.whole("days", -mostSaid, mostSaid));
}

Outcome doTend(Desk &desk, const std::string &what, const usecase::Tending &tending,
               const Fields &fields)
{
    using Say = Outcome (*)(Desk &, const usecase::Tending &, const Fields &);
    static const std::map<std::string, Say> words{
        {"opened", sayOpened},         {"left-open", sayLeftOpen}, {"gone", sayGone},
        {"back-again", sayBack},       {"checked", sayChecked},    {"keeps", sayKeeps},
        {"thrown-away", sayThrownAway}};
    if (const auto say = words.find(what); say != words.end())
        return say->second(desk, tending, fields);
    if (const auto mark = box::hygieneMarkNames.parse(what))
        return usecase::noteHygiene(desk.workplace(), tending, *mark);
    return Error{ErrorCode::Invalid, "what: opened, left-open, checked, keeps, gone, back-again, "
                                     "thrown-away, mouthed, washed or replaced"};
}

} // namespace

int runAnswer(const Options &options, const std::string &input)
{
    return withInput(options, input, [](Desk &desk, const Fields &fields) {
        const auto question = needText(fields, "question");
        const auto answer = needAnswer(fields);
        if (!question || !answer)
            return fail(question ? answer.error() : question.error());
        const auto child = childOfQuestion(desk, *question);
        if (!child)
            return fail(child.error());
        const Outcome done = usecase::answerQuestion(
            desk.workplace(), *child, fields.text("author").value_or(""), *question, *answer);
        return done ? printBox(desk, *child) : fail(done.error());
    });
}

int runRequest(const Options &options, const std::string &input)
{
    return withInput(options, input, [](Desk &desk, const Fields &fields) {
        const auto child = needText(fields, "child");
        const auto item = needText(fields, "item");
        if (!child || !item)
            return fail(child ? item.error() : child.error());
        const Outcome done = doRequest(desk.workplace(), *child, {*item}, fields);
        return done ? printBox(desk, *child) : fail(done.error());
    });
}

int runTend(const Options &options, const std::string &input)
{
    return withInput(options, input, [](Desk &desk, const Fields &fields) {
        const auto child = needText(fields, "child");
        const auto item = needText(fields, "item");
        const auto what = needText(fields, "what");
        if (!child || !item)
            return fail(child ? item.error() : child.error());
        if (!what)
            return fail(what.error());
        const usecase::Tending tending{*child, fields.text("author").value_or(""), {*item}};
        const Outcome done = doTend(desk, *what, tending, fields);
        return done ? printBox(desk, *child) : fail(done.error());
    });
}

} // namespace lidlark::cli
