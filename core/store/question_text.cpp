#include "core/store/question_text.h"

#include "core/journal/fields.h"

#include <algorithm>

namespace lidlark::store {

namespace {

using journal::Fields;
using Json = nlohmann::json;

Json toJson(DayPart when)
{
    return {{"day", lidlark::toText(when.day)}, {"part", toText(when.part)}};
}

DayPart whenFrom(const Json &object)
{
    const Fields fields(object.dump());
    return {dayFromText(fields.text("day").value_or("")).value_or(Day{}),
            partOfDayFromText(fields.text("part").value_or("")).value_or(PartOfDay::Morning)};
}

Json toJson(const box::Side &side)
{
    return {{"identity", side.identity},   {"author", side.author},
            {"device", side.device.value}, {"when", toJson(side.when)},
            {"pieces", side.pieces},       {"count", side.isCount},
            {"brings", side.brings},       {"exceptions", side.exceptions.counts}};
}

box::Side sideFrom(const Json &object)
{
    const Fields fields(object.dump());
    box::Side side{fields.text("identity").value_or(""),
                   fields.text("author").value_or(""),
                   {fields.text("device").value_or("")},
                   whenFrom(object.value("when", Json::object()))};
    side.pieces = fields.whole("pieces", INT32_MIN, INT32_MAX).value_or(0);
    side.isCount = fields.isTrue("count");
    side.brings = fields.isTrue("brings");
    const Json kept = object.value("exceptions", Json::array());
    const Json counts = kept.is_array() ? kept : Json::array();
    for (std::size_t i = 0; i < box::exceptionKindCount && i < counts.size(); ++i)
        side.exceptions.counts[i] = Fields::wholeOf(counts[i], INT32_MIN, INT32_MAX).value_or(0);
    return side;
}

} // namespace

std::string textOf(const box::Question &question)
{
    Json sides = Json::array();
    for (const box::Side &side : question.sides)
        sides.push_back(toJson(side));
    return Json{{"id", question.id},
                {"sort", box::questionSortNames.of(question.sort)},
                {"kind", box::exceptionKindNames.of(question.kind)},
                {"sides", sides},
                {"asked_of", question.askedOf},
                {"asked_on", question.askedOn.value},
                {"asked", toJson(question.asked)},
                {"answer", question.answer},
                {"answered_by", question.answeredBy},
                {"answered", toJson(question.answeredWhen)}}
        .dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::optional<box::Question> questionFrom(const std::string &text)
{
    const Fields fields(text);
    const auto id = fields.text("id");
    const auto sort = box::questionSortNames.parse(fields.text("sort").value_or(""));
    const auto kind = box::exceptionKindNames.parse(fields.text("kind").value_or(""));
    const Json sides = fields.json().value("sides", Json::array());
    const auto isObject = [](const Json &side) { return side.is_object(); };
    if (!id || !sort || !kind || sides.size() < 2 || !std::ranges::all_of(sides, isObject))
        return std::nullopt;
    box::Question question;
    question.id = *id;
    question.sort = *sort;
    question.kind = *kind;
    for (const Json &side : sides)
        question.sides.push_back(sideFrom(side));
    question.askedOf = fields.text("asked_of").value_or("");
    question.askedOn = {fields.text("asked_on").value_or("")};
    question.asked = whenFrom(fields.json().value("asked", Json::object()));
    question.answer = fields.text("answer").value_or("");
    question.answeredBy = fields.text("answered_by").value_or("");
    question.answeredWhen = whenFrom(fields.json().value("answered", Json::object()));
    return question;
}

} // namespace lidlark::store
