#include "core/box/request_events.h"

#include "core/journal/fields.h"

namespace lidlark::box {

namespace {

using journal::Fields;
using journal::Kind;
using Json = nlohmann::json;

} // namespace

std::string fieldsOf(const RequestSaid &said)
{
    Json object{
        {"item", said.item.value}, {"round", said.round}, {"step", requestStepNames.of(said.step)}};
    if (!said.insteadOf.empty())
        object["instead_of"] = said.insteadOf.value;
    return object.dump();
}

std::string fieldsOf(const CountedIn &counted)
{
    return Json{{"item", counted.item.value}, {"round", counted.round}, {"count", counted.pieces}}
        .dump();
}

std::optional<RequestSaid> readRequest(const journal::Event &event)
{
    if (event.kind != Kind::Request)
        return std::nullopt;
    const Fields fields(event.fields);
    const auto item = fields.text("item");
    const auto round = fields.whole("round", 0, mostRounds);
    const auto step = requestStepNames.parse(fields.text("step").value_or(""));
    if (!item || !round || !step || *step == RequestStep::CountedIn)
        return std::nullopt;
    return RequestSaid{{*item}, *round, *step, {fields.text("instead_of").value_or("")}};
}

std::optional<CountedIn> readCountedIn(const journal::Event &event)
{
    if (event.kind != Kind::CountedIn)
        return std::nullopt;
    const Fields fields(event.fields);
    const auto item = fields.text("item");
    const auto round = fields.whole("round", 0, mostRounds);
    const auto pieces = fields.whole("count", 0, mostPieces);
    if (!item || !round || !pieces)
        return std::nullopt;
    return CountedIn{{*item}, *round, *pieces};
}

} // namespace lidlark::box
