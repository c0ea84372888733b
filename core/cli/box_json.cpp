#include "core/cli/box_json.h"

#include "core/usecase/box_items.h"
#include "core/wording/question_words.h"
#include "core/wording/take_out_words.h"

namespace lidlark::cli {

using Json = nlohmann::ordered_json;

namespace {

/// What stands on the box's label in words because of what the home must avoid.
Json labelOf(const usecase::Family &family)
{
    Json label = Json::array();
    if (!family.sheet)
        return label;
    for (const wording::Sentence &line : wording::homeLabel(family.sheet->avoidances))
        label.push_back(wording::fill(line));
    return label;
}

Json dayOrNull(const std::optional<Day> &day)
{
    return day ? Json(toText(*day)) : Json();
}

std::string nameOf(const usecase::BoxItem &item)
{
    return item.kind != nullptr ? item.kind->name : item.row.item.value;
}

Json itemJson(const usecase::BoxItem &item)
{
    const box::PieceFreshness *open = item.freshness.inUse();
    Json pieces = Json::array();
    for (const box::PieceFreshness &piece : item.freshness.pieces)
        pieces.push_back({{"piece", piece.id.value},
                          {"state", box::pieceStateNames.of(piece.state)},
                          {"opened", dayOrNull(piece.opened)},
                          {"left_open", piece.timesLeftOpen},
                          {"last_day", dayOrNull(piece.lastDay)}});
    return {{"id", item.row.item.value},
            {"name", nameOf(item)},
            {"expected", item.row.expected},
            {"low", item.row.low},
            {"high", item.row.high},
            {"out", item.row.out},
            {"usable", item.freshness.usable},
            {"opened", open != nullptr ? dayOrNull(open->opened) : Json()},
            {"pieces", pieces},
            {"use_soon", item.freshness.useSoon},
            {"look_due", item.freshness.lookDue},
            {"to_wash", item.row.care.mouthed},
            {"counted", dayOrNull(item.row.counted)},
            {"please_count", item.row.pleaseCount}};
}

Json questionJson(const box::Question &question, const usecase::BoxItem &item, DayPart now)
{
    const wording::PieceNames names{item.kind != nullptr ? item.kind->one : item.row.item.value,
                                    nameOf(item)};
    std::string sentence;
    for (const wording::Sentence &part : wording::questionWords(question, names, now))
        sentence += (sentence.empty() ? "" : " ") + wording::fill(part);
    Json sides = Json::array();
    for (const box::Side &side : question.sides)
        sides.push_back({{"author", side.author}, {"pieces", side.pieces}});
    return {{"id", question.id},
            {"item", item.row.item.value},
            {"sort", box::questionSortNames.of(question.sort)},
            {"sentence", sentence},
            {"asked_of", question.askedOf},
            {"sides", sides},
            {"answer", question.isOpen() ? Json() : Json(question.answer)},
            {"answered_by", question.isOpen() ? Json() : Json(question.answeredBy)}};
}

Json requestJson(const box::Request &request, const usecase::BoxItem &item)
{
    return {{"item", item.row.item.value},
            {"round", request.round},
            {"step", box::requestStepNames.of(request.step)},
            {"instead_of", request.insteadOf.empty() ? Json() : Json(request.insteadOf.value)},
            {"asked_by", request.askedBy},
            {"by", request.stepBy},
            {"day", toText(request.stepWhen.day)}};
}

Json notesOf(const usecase::Family &family)
{
    Json notes = Json::array();
    for (const store::LossRow &loss : family.losses)
        notes.push_back({{"id", loss.identity},
                         {"item", loss.item.value},
                         {"pieces", loss.pieces},
                         {"author", loss.author},
                         {"day", toText(loss.when.day)}});
    return notes;
}

} // namespace

Json boxJson(const usecase::Family &family, const catalogue::Catalogue &catalogue, DayPart now)
{
    Json items = Json::array();
    Json questions = Json::array();
    Json answered = Json::array();
    Json requests = Json::array();
    for (const usecase::BoxItem &item : usecase::boxItemsOf(family, catalogue, now.day)) {
        items.push_back(itemJson(item));
        for (const box::Question &question : item.row.questions)
            (question.isOpen() ? questions : answered).push_back(questionJson(question, item, now));
        for (const box::Request &request : item.row.requests)
            requests.push_back(requestJson(request, item));
    }
    Json json{{"child", family.box.alias},
              {"revision", family.revision ? family.revision->revision.number : 0},
              {"place", family.place ? family.place->place : std::string("home")},
              {"place_words", family.place ? family.place->words : std::string("at home")}};
    if (family.place && family.place->orElse)
        json["or_place"] = family.place->orElse->place;
    json["count_due"] = usecase::countIsDue(family, now.day);
    json["label"] = labelOf(family);
    json["items"] = items;
    json["questions"] = questions;
    json["answered"] = answered;
    json["open_notes"] = notesOf(family);
    json["requests"] = requests;
    return json;
}

Result<std::string> childOrOnly(store::Database &database, const std::string &child)
{
    if (!child.empty())
        return child;
    const auto boxes = store::BoxRepository(database).boxes();
    if (!boxes)
        return boxes.error();
    if (boxes->empty())
        return Error{ErrorCode::NotFound, "a box in this store"};
    if (boxes->size() > 1)
        return Error{ErrorCode::Invalid, "--child: this store has several boxes; name one"};
    return boxes->front().alias;
}

} // namespace lidlark::cli
