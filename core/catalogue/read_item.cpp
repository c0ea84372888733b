#include "core/catalogue/read_item.h"

#include "core/catalogue/allergen.h"
#include "core/catalogue/read_life.h"
#include "core/catalogue/read_measures.h"
#include "core/catalogue/record_reader.h"

#include <algorithm>

namespace lidlark::catalogue {

namespace {

/// Source: safety.md AL-01.
bool isAllergen(std::string_view name)
{
    return name == "wheat" || name == "milk" || name == "latex" || isPlainAllergen(name);
}

void readSwap(RecordReader &record, ItemKind &item)
{
    if (!record.has("swap"))
        return;
    auto swap = record.record("swap");
    if (!swap)
        return;
    item.swap = ItemSwap{{swap->text("with")}, swap->text("note")};
    if (item.swap->with == item.id)
        swap->complain("with", "an item cannot stand in for itself");
    swap->finish();
}

/// Tags may be added by hand, never left out: the measures have the last word.
void readSizes(RecordReader &record, ItemKind &item)
{
    auto measures = record.record("measures");
    if (!measures)
        return;
    item.measures = readMeasures(*measures);
    const std::vector<MeasuredTag> tags = measuredTags(item.measures);
    item.hazards = hazardsOf(item.measures, tags);
    for (const MeasuredTag &measured : tags) {
        if (!item.tags.has(measured.tag))
            record.complain("tags", std::string(tagNames.of(measured.tag)) +
                                        " is missing: " + measured.because);
    }
}

/// Every item answers for each of the things that never go into a box.
void readHolds(RecordReader &record)
{
    for (const Banned thing :
         record.words("holds", bannedNames, {0, static_cast<int>(bannedNames.names.size())}))
        record.complain("holds", "nothing with \"" + std::string(bannedNames.of(thing)) +
                                     "\" goes into a box");
}

bool lists(const std::vector<std::string> &allergens, std::string_view name)
{
    return std::find(allergens.begin(), allergens.end(), name) != allergens.end();
}

/// The gate reads tags, so an allergen with a tag of its own must carry it.
void checkAllergens(RecordReader &record, const ItemKind &item)
{
    for (const std::string &allergen : item.allergens) {
        if (!isAllergen(allergen))
            record.complain("allergens", "\"" + allergen + "\" is not an allergen known here");
    }
    if (lists(item.allergens, "latex") != item.tags.has(Tag::Latex))
        record.complain("tags", "the tag LATEX and the allergen latex go together");
    if (lists(item.allergens, "wheat") != item.tags.has(Tag::Wheat))
        record.complain("tags", "the tag WHEAT and the allergen wheat go together");
}

/// What every box answers for, whoever designs it.
void checkBoxItem(RecordReader &record, const ItemKind &item)
{
    if (!record.has("use"))
        record.complain("use", "is missing: how many pieces go in how many days");
    if (record.has("cleanable") && !item.cleanable && !item.singleChild)
        record.complain("single_child", "must be true for a box item that cannot be cleaned");
}

} // namespace

ItemKind readItem(const YamlNode &node, Findings &findings)
{
    RecordReader record(node, {}, findings);
    ItemKind item;
    item.id = {record.text("id")};
    item.version = record.number("version", {1, 1'000'000});
    item.name = record.text("name");
    item.one = record.text("one");
    item.source = record.word("source", sourceNames);
    item.lidCount = record.number("lid_count", {0, 99});
    item.comesBack = record.word("comes_back", comesBackNames);
    for (const Tag tag : record.words("tags", tagNames, {0, static_cast<int>(tagCount)}))
        item.tags.add(tag);
    item.allergens = record.texts("allergens", {0, 8});
    item.divides = record.optionalFlag("divides");
    item.seatedOnly = record.optionalFlag("seated_only");
    item.care = record.texts("care", {0, 8});
    item.drawing = record.text("drawing");
    item.alt = record.text("alt");
    readSwap(record, item);
    readSizes(record, item);
    readHolds(record);
    item.cleanable = record.flag("cleanable");
    item.singleChild = record.optionalFlag("single_child");
    item.life = readLife(record);
    item.use = readUse(record);
    record.finish();

    checkAllergens(record, item);
    if (item.source == Source::Box)
        checkBoxItem(record, item);
    if (item.source == Source::Home && item.lidCount != 0)
        record.complain("lid_count", "must be 0 for an item of the home");
    return item;
}

} // namespace lidlark::catalogue
