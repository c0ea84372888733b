#include "core/cli/box_json.h"

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

} // namespace

Json boxJson(const usecase::Family &family, const catalogue::Catalogue &catalogue)
{
    Json items = Json::array();
    for (const store::ItemRow &row : family.items) {
        const catalogue::ItemKind *kind = catalogue.item(row.item);
        items.push_back({{"id", row.item.value},
                         {"name", kind != nullptr ? kind->name : row.item.value},
                         {"expected", row.expected},
                         {"low", row.low},
                         {"high", row.high},
                         {"out", row.out},
                         {"opened", row.opened ? Json(toText(*row.opened)) : Json()},
                         {"please_count", row.pleaseCount}});
    }
    Json notes = Json::array();
    for (const store::LossRow &loss : family.losses)
        notes.push_back({{"id", loss.identity},
                         {"item", loss.item.value},
                         {"pieces", loss.pieces},
                         {"author", loss.author},
                         {"day", toText(loss.when.day)}});
    return {{"child", family.box.alias},
            {"revision", family.revision ? family.revision->revision.number : 0},
            {"place", family.place ? family.place->place : std::string("home")},
            {"place_words", family.place ? family.place->words : std::string("at home")},
            {"label", labelOf(family)},
            {"items", items},
            {"questions", Json::array()},
            {"open_notes", notes},
            {"requests", Json::array()}};
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
