#include "core/store/box_repository.h"
#include "core/usecase/export_tables.h"

namespace lidlark::usecase {

namespace {

/// "Ruth, 2027-01-11 evening: 1".
std::string sideText(const box::Side &side)
{
    return side.author + ", " + toText(side.when.day) + " " + std::string(toText(side.when.part)) +
           ": " + std::to_string(side.pieces);
}

/// One of the answers, or the side that was chosen.
std::string answerText(const box::Question &question)
{
    for (const box::Side &side : question.sides) {
        if (side.identity == question.answer)
            return sideText(side);
    }
    return question.answer;
}

void addRequest(OpenTable &table, const std::string &child, const ExportSource &source,
                const store::ItemRow &item, const box::Request &request)
{
    table.add({child, source.item(item.item),
               request.insteadOf.empty() ? Cell() : Cell(source.item(request.insteadOf)),
               plainWords(box::requestStepNames.of(request.step)),
               request.askedBy.empty() ? Cell() : Cell(request.askedBy),
               request.askedBy.empty() ? Cell() : Cell(request.asked.day), request.stepBy,
               request.stepWhen.day});
}

void addQuestion(OpenTable &table, const std::string &child, const std::string &item,
                 const box::Question &question)
{
    std::string sides;
    for (const box::Side &side : question.sides)
        sides += (sides.empty() ? "" : "; ") + sideText(side);
    const bool open = question.isOpen();
    table.add({child, item, plainWords(box::questionSortNames.of(question.sort)), sides,
               question.askedOf, open ? Cell() : Cell(answerText(question)),
               open ? Cell() : Cell(question.answeredBy),
               open ? Cell() : Cell(question.answeredWhen.day)});
}

} // namespace

Tables openMatterTables(const ExportSource &source)
{
    OpenTable requests{boxGroup,
                       "asked for",
                       {"child", "item", "instead of", "how far", "asked by", "asked on",
                        "last word by", "last word on"},
                       {}};
    OpenTable questions{boxGroup,
                        "questions",
                        {"child", "item", "about", "what was noted", "asked of", "answer",
                         "answered by", "answered on"},
                        {}};
    store::BoxRepository boxes(source.workplace.database);
    for (const store::BoxRow &box : source.boxes) {
        const auto items = boxes.items(box.id);
        if (!items)
            return items.error();
        for (const store::ItemRow &item : *items) {
            for (const box::Request &request : item.requests)
                addRequest(requests, box.alias, source, item, request);
            for (const box::Question &question : item.questions)
                addQuestion(questions, box.alias, source.item(item.item), question);
        }
    }
    return std::vector{std::move(requests), std::move(questions)};
}

} // namespace lidlark::usecase
