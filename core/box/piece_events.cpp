#include "core/box/piece_events.h"

#include "core/journal/fields.h"

namespace lidlark::box {

namespace {

using journal::Event;
using journal::Fields;
using journal::Kind;
using Json = nlohmann::json;

constexpr int mostKeepingDays = 365;

std::optional<Day> dayOf(const Fields &fields)
{
    return dayFromText(fields.text("day").value_or(""));
}

} // namespace

PieceId pieceId(std::optional<int> round, int index)
{
    const std::string came = round ? std::to_string(*round) : "packed";
    return {came + "/" + std::to_string(index)};
}

std::string fieldsOf(const Opened &opened)
{
    Json object{{"item", opened.item.value}, {"piece", opened.piece.value}};
    if (opened.day)
        object["day"] = toText(*opened.day);
    return object.dump();
}

std::string fieldsOf(const LeftOpen &leftOpen)
{
    return Json{{"item", leftOpen.item.value},
                {"piece", leftOpen.piece.value},
                {"day", toText(leftOpen.day)}}
        .dump();
}

std::string fieldsOf(const Checked &checked)
{
    return Json{{"item", checked.item.value}, {"day", toText(checked.day)}}.dump();
}

std::string fieldsOf(const KeepingLimit &limit)
{
    Json object{{"item", limit.item.value}};
    if (limit.days)
        object["days"] = *limit.days;
    return object.dump();
}

std::string fieldsOf(const HygieneSaid &said)
{
    return Json{{"item", said.item.value}, {"mark", hygieneMarkNames.of(said.mark)}}.dump();
}

std::optional<Opened> readOpened(const Event &event)
{
    if (event.kind != Kind::Opened)
        return std::nullopt;
    const Fields fields(event.fields);
    const auto item = fields.text("item");
    const auto piece = fields.text("piece");
    const auto day = dayOf(fields);
    if (!item || !piece || (fields.text("day") && !day))
        return std::nullopt;
    return Opened{{*item}, {*piece}, day};
}

std::optional<LeftOpen> readLeftOpen(const Event &event)
{
    if (event.kind != Kind::LeftOpen)
        return std::nullopt;
    const Fields fields(event.fields);
    const auto item = fields.text("item");
    const auto piece = fields.text("piece");
    const auto day = dayOf(fields);
    if (!item || !piece || !day)
        return std::nullopt;
    return LeftOpen{{*item}, {*piece}, *day};
}

std::optional<Checked> readChecked(const Event &event)
{
    if (event.kind != Kind::Checked)
        return std::nullopt;
    const Fields fields(event.fields);
    const auto item = fields.text("item");
    const auto day = dayOf(fields);
    if (!item || !day)
        return std::nullopt;
    return Checked{{*item}, *day};
}

std::optional<KeepingLimit> readKeepingLimit(const Event &event)
{
    if (event.kind != Kind::Limit)
        return std::nullopt;
    const Fields fields(event.fields);
    const auto item = fields.text("item");
    const auto days = fields.whole("days", 1, mostKeepingDays);
    if (!item || (fields.json().contains("days") && !days))
        return std::nullopt;
    return KeepingLimit{{*item}, days};
}

std::optional<HygieneSaid> readHygiene(const Event &event)
{
    if (event.kind != Kind::Hygiene)
        return std::nullopt;
    const Fields fields(event.fields);
    const auto item = fields.text("item");
    const auto mark = hygieneMarkNames.parse(fields.text("mark").value_or(""));
    if (!item || !mark)
        return std::nullopt;
    return HygieneSaid{{*item}, *mark};
}

} // namespace lidlark::box
