#include "core/workbench/status_event.h"

#include "core/box/exceptions.h"
#include "core/journal/fields.h"

namespace lidlark::workbench {

namespace {

using journal::Fields;
using Json = nlohmann::json;

bool readsPieces(const Fields &fields, StatusSaid &said)
{
    const Json &pieces = fields.json().value("pieces", Json::object());
    if (!pieces.is_object())
        return false;
    for (const auto &[item, count] : pieces.items()) {
        const auto number = Fields::wholeOf(count, 1, box::mostPieces);
        if (!number)
            return false;
        said.pieces[{item}] = *number;
    }
    return true;
}

bool readsLots(const Fields &fields, StatusSaid &said)
{
    const Json lots = fields.json().value("lots", Json::object());
    if (!lots.is_object())
        return false;
    for (const auto &[item, list] : lots.items()) {
        if (!list.is_array())
            return false;
        for (const Json &lot : list) {
            if (!lot.is_string())
                return false;
            said.lots[{item}].insert(lot.get<std::string>());
        }
    }
    return true;
}

bool readsItem(const Fields &fields, StatusSaid &said)
{
    said.item = {fields.text("item").value_or("")};
    said.round = fields.text("round").value_or("");
    said.lot = fields.text("lot").value_or("");
    if (said.step == BoxStep::Cleaned) {
        const auto how = cleanedHowNames.parse(fields.text("how").value_or(""));
        if (!how)
            return false;
        said.how = *how;
    }
    return !said.item.empty() && !said.round.empty();
}

bool readsRest(const Fields &fields, StatusSaid &said)
{
    switch (said.step) {
    case BoxStep::Issued:
        said.to = fields.text("to").value_or("");
        said.build = fields.text("build").value_or("");
        return !said.to.empty() && readsPieces(fields, said) && readsLots(fields, said);
    case BoxStep::Returned:
        said.round = fields.text("round").value_or("");
        return !said.round.empty();
    case BoxStep::Cleaned:
    case BoxStep::Replaced:
    case BoxStep::NotYet:
        return readsItem(fields, said);
    case BoxStep::Retired:
        said.why = fields.text("why").value_or("");
        return true;
    }
    return false;
}

void put(Json &object, const char *key, const std::string &text)
{
    if (!text.empty())
        object[key] = text;
}

} // namespace

std::string fieldsOf(const StatusSaid &said)
{
    Json object{{"box", said.box}, {"step", boxStepNames.of(said.step)}, {"day", toText(said.day)}};
    put(object, "round", said.round);
    put(object, "to", said.to);
    put(object, "build", said.build);
    put(object, "item", said.item.value);
    put(object, "lot", said.lot);
    put(object, "why", said.why);
    if (said.step == BoxStep::Cleaned)
        object["how"] = cleanedHowNames.of(said.how);
    for (const auto &[item, count] : said.pieces)
        object["pieces"][item.value] = count;
    for (const auto &[item, lots] : said.lots)
        object["lots"][item.value] = lots;
    return object.dump();
}

std::optional<StatusSaid> readStatus(const journal::Event &event)
{
    if (event.kind != journal::Kind::BoxStatus)
        return std::nullopt;
    const Fields fields(event.fields);
    const auto box = fields.text("box");
    const auto step = boxStepNames.parse(fields.text("step").value_or(""));
    const auto day = dayFromText(fields.text("day").value_or(""));
    if (!box || box->empty() || !step || !day)
        return std::nullopt;
    StatusSaid said;
    said.box = *box;
    said.step = *step;
    said.day = *day;
    return readsRest(fields, said) ? std::optional(said) : std::nullopt;
}

} // namespace lidlark::workbench
