#include "core/box/box_events.h"

#include "core/journal/fields.h"

namespace lidlark::box {

namespace {

using journal::Fields;
using journal::Kind;
using Json = nlohmann::json;

std::optional<Exceptions> readExceptions(const Json &object)
{
    if (!object.is_object())
        return std::nullopt;
    Exceptions exceptions;
    for (const auto &[name, value] : object.items()) {
        const auto kind = exceptionKindNames.parse(name);
        const auto count = Fields::wholeOf(value, 0, mostPieces);
        if (!kind || !count)
            return std::nullopt;
        exceptions.set(*kind, *count);
    }
    return exceptions;
}

Json toJson(const Exceptions &exceptions)
{
    Json object = Json::object();
    for (std::size_t i = 0; i < exceptionKindCount; ++i) {
        const auto kind = static_cast<ExceptionKind>(i);
        if (exceptions.of(kind) != 0)
            object[std::string(exceptionKindNames.of(kind))] = exceptions.of(kind);
    }
    return object;
}

} // namespace

std::string fieldsOf(const Outcome &outcome)
{
    Json object{{"item", outcome.item.value},
                {"play", outcome.play.value},
                {"exceptions", toJson(outcome.exceptions)}};
    if (outcome.weak)
        object["weak"] = true;
    return object.dump();
}

std::string fieldsOf(const LooseException &exception)
{
    Json object{{"item", exception.item.value},
                {"kind", exceptionKindNames.of(exception.kind)},
                {"count", exception.count}};
    if (exception.day)
        object["day"] = toText(*exception.day);
    return object.dump();
}

std::string fieldsOf(const Found &found)
{
    return Json{{"item", found.item.value}, {"count", found.count}}.dump();
}

std::string fieldsOf(const Counted &counted)
{
    return Json{{"item", counted.item.value}, {"in_box", counted.inBox}, {"out", counted.out}}
        .dump();
}

std::string fieldsOf(const Revision &revision)
{
    Json packed = Json::object();
    for (const auto &[item, count] : revision.packed)
        packed[item.value] = count;
    Json json{{"number", revision.number}, {"packed", packed}};
    for (const ItemId &item : revision.removed)
        json["removed"].push_back(item.value);
    return json.dump();
}

std::string fieldsOf(const FloorChecked &checked)
{
    return Json{{"item", checked.item.value}, {"loss", checked.loss}}.dump();
}

std::string fieldsOf(const TakenOut &taken)
{
    return Json{{"item", taken.item.value}, {"why", taken.why}}.dump();
}

std::string fieldsOf(const Answered &answered)
{
    return Json{
        {"item", answered.item.value}, {"question", answered.question}, {"answer", answered.answer}}
        .dump();
}

std::optional<Outcome> readOutcome(const journal::Event &event)
{
    if (event.kind != Kind::Outcome)
        return std::nullopt;
    const Fields fields(event.fields);
    const auto play = fields.text("play");
    const auto item = fields.text("item");
    const auto found = fields.json().find("exceptions");
    if (!play || !item || found == fields.json().end())
        return std::nullopt;
    const auto exceptions = readExceptions(*found);
    if (!exceptions)
        return std::nullopt;
    return Outcome{{*play}, {*item}, *exceptions, fields.isTrue("weak")};
}

std::optional<LooseException> readLooseException(const journal::Event &event)
{
    if (event.kind != Kind::Exception)
        return std::nullopt;
    const Fields fields(event.fields);
    const auto item = fields.text("item");
    const auto name = fields.text("kind");
    const auto kind = name ? exceptionKindNames.parse(*name) : std::nullopt;
    const auto count = fields.whole("count", -mostPieces, mostPieces);
    if (!item || !kind || !count || *count == 0)
        return std::nullopt;
    LooseException loose{
        {*item}, kind.value(), *count, dayFromText(fields.text("day").value_or(""))};
    if (loose.count < 0 && loose.kind != ExceptionKind::StillInUse)
        return std::nullopt;
    return loose;
}

std::optional<Found> readFound(const journal::Event &event)
{
    if (event.kind != Kind::Found)
        return std::nullopt;
    const Fields fields(event.fields);
    const auto item = fields.text("item");
    const auto count = fields.whole("count", 1, mostPieces);
    if (!item || !count)
        return std::nullopt;
    return Found{{*item}, *count};
}

std::optional<Counted> readCounted(const journal::Event &event)
{
    if (event.kind != Kind::Count)
        return std::nullopt;
    const Fields fields(event.fields);
    const auto item = fields.text("item");
    const auto inBox = fields.whole("in_box", 0, mostPieces);
    const auto out = fields.whole("out", 0, mostPieces);
    if (!item || !inBox || !out)
        return std::nullopt;
    return Counted{{*item}, *inBox, *out};
}

std::optional<Revision> readRevision(const journal::Event &event)
{
    if (event.kind != Kind::Revision)
        return std::nullopt;
    const Fields fields(event.fields);
    const auto number = fields.whole("number", 1, 1'000'000);
    const auto found = fields.json().find("packed");
    if (!number || found == fields.json().end() || !found->is_object())
        return std::nullopt;
    Revision revision{*number, {}, {}};
    for (const auto &[item, value] : found->items()) {
        const auto count = Fields::wholeOf(value, 0, mostPieces);
        if (!count)
            return std::nullopt;
        revision.packed[{item}] = *count;
    }
    const auto removed = fields.json().find("removed");
    if (removed == fields.json().end())
        return revision;
    for (const auto &item : *removed) {
        if (!item.is_string())
            return std::nullopt;
        revision.removed.insert({item.get<std::string>()});
    }
    return revision;
}

std::optional<FloorChecked> readFloorChecked(const journal::Event &event)
{
    if (event.kind != Kind::FloorChecked)
        return std::nullopt;
    const Fields fields(event.fields);
    const auto item = fields.text("item");
    const auto loss = fields.text("loss");
    if (!item || !loss)
        return std::nullopt;
    return FloorChecked{{*item}, *loss};
}

std::optional<TakenOut> readTakenOut(const journal::Event &event)
{
    if (event.kind != Kind::TakenOut)
        return std::nullopt;
    const Fields fields(event.fields);
    const auto item = fields.text("item");
    const auto why = fields.text("why");
    if (!item || !why)
        return std::nullopt;
    return TakenOut{{*item}, *why};
}

std::optional<Answered> readAnswered(const journal::Event &event)
{
    if (event.kind != Kind::Answer)
        return std::nullopt;
    const Fields fields(event.fields);
    const auto item = fields.text("item");
    const auto question = fields.text("question");
    const auto answer = fields.text("answer");
    if (!item || !question || !answer)
        return std::nullopt;
    return Answered{{*item}, *question, *answer};
}

} // namespace lidlark::box
