#include "core/catalogue/write_entry.h"

#include "core/catalogue/file_record.h"
#include "core/catalogue/measured_hazards.h"
#include "core/catalogue/read_item.h"
#include "core/catalogue/record_reader.h"
#include "core/catalogue/yaml_lines.h"

namespace lidlark::catalogue {

namespace {

/// Parts of a record on one line: "{a: 1, b: 2}".
class Record
{
public:
    void add(std::string_view name, const std::string &value)
    {
        m_out += (m_out.empty() ? "" : ", ") + std::string(name) + ": " + value;
    }
    void addDays(std::string_view name, const std::optional<int> &days)
    {
        if (days)
            add(name, std::to_string(*days));
    }
    void addMm(std::string_view name, double mm)
    {
        if (mm > 0)
            add(name, yamlNumber(mm));
    }
    [[nodiscard]] bool empty() const { return m_out.empty(); }
    [[nodiscard]] std::string text() const { return "{" + m_out + "}"; }

private:
    std::string m_out;
};

std::string yamlLoose(const LoosePart &part)
{
    std::string out = "{part: " + quoted(part.name) + ", " + yamlSolid(part.solid);
    return out + (part.suctionCup ? ", suction_cup: true}" : "}");
}

std::string yamlCord(const measure::Cord &cord)
{
    Record record;
    record.add("length_mm", yamlNumber(cord.lengthMm));
    record.add("thickness_mm", yamlNumber(cord.thicknessMm));
    record.addMm("loop_mm", cord.loopMm);
    return record.text();
}

std::string yamlFilm(const measure::Film &film)
{
    Record record;
    record.add("thickness_mm", yamlNumber(film.meanThicknessMm));
    record.addMm("opening_mm", film.openingPerimeterMm);
    record.addMm("long_mm", film.longMm);
    record.addMm("short_mm", film.shortMm);
    if (film.holesPercent > 0)
        record.add("holes_percent", std::to_string(static_cast<int>(film.holesPercent)));
    if (film.drawstring)
        record.add("drawstring", "true");
    return record.text();
}

std::string yamlHollow(const measure::Hollow &hollow)
{
    Record record;
    record.add("across_mm", yamlNumber(hollow.acrossMm));
    record.add("narrow_mm", yamlNumber(hollow.narrowMm));
    record.add("deep_mm", yamlNumber(hollow.deepMm));
    record.add("stiff", yamlFlag(hollow.stiff));
    return record.text();
}

std::string yamlMeasures(const Measures &measures)
{
    Record record;
    if (measures.whole)
        record.add("whole", "{" + yamlSolid(*measures.whole) + "}");
    if (measures.least)
        record.add("least", "{" + yamlSolid(*measures.least) + "}");
    if (!measures.soft.empty())
        record.add("soft", quoted(measures.soft));
    if (measures.rollsAs != RollsAs::Nothing)
        record.add("rolls_as", std::string(rollsAsNames.of(measures.rollsAs)));
    if (!measures.comesOff.empty())
        record.add("comes_off", yamlList(measures.comesOff, yamlLoose));
    if (measures.cord)
        record.add("cord", yamlCord(*measures.cord));
    if (measures.film)
        record.add("film", yamlFilm(*measures.film));
    if (measures.hollow)
        record.add("hollow", yamlHollow(*measures.hollow));
    return record.text();
}

std::string yamlLife(const Life &life)
{
    Record record;
    record.addDays("opened_days", life.openedDays);
    record.addDays("open_air_days", life.openAirDays);
    record.addDays("replace_days", life.replaceDays);
    record.addDays("check_days", life.checkDays);
    if (life.checkEachUse)
        record.add("check_each_use", "true");
    if (!life.check.empty())
        record.add("check", quoted(life.check));
    if (!life.rescue.empty())
        record.add("rescue", yamlTexts(life.rescue));
    if (life.singleUse)
        record.add("single_use", "true");
    return record.empty() ? std::string() : yamlField("life", record.text());
}

std::string body(const ItemKind &item, const Holds &holds)
{
    std::string out;
    if (item.swap)
        out += yamlField("swap", "{with: " + quoted(item.swap->with.value) +
                                     ", note: " + quoted(item.swap->note) + "}");
    out += yamlField("allergens", yamlTexts(item.allergens)) +
           yamlField("measures", yamlMeasures(item.measures));
    if (holds)
        out += yamlField(
            "holds", yamlList(*holds, [](Banned thing) { return quoted(bannedNames.of(thing)); }));
    for (const auto &[name, yes] :
         {std::pair{"divides", item.divides}, std::pair{"seated_only", item.seatedOnly},
          std::pair{"single_child", item.singleChild}}) {
        if (yes)
            out += yamlField(name, "true");
    }
    out += yamlField("cleanable", yamlFlag(item.cleanable)) +
           yamlField("care", yamlTexts(item.care)) + yamlLife(item.life);
    if (item.use)
        out += yamlField("use", "{pieces: " + std::to_string(item.use->pieces) +
                                    ", days: " + std::to_string(item.use->days) + "}");
    return out;
}

} // namespace

std::string yamlOf(const ItemKind &item)
{
    return yamlOf(item, std::vector<Banned>());
}

std::string yamlOf(const ItemKind &item, const Holds &holds)
{
    const TagSet tags = item.tags | hazardsOf(item.measures).tags;
    return yamlField("id", item.id.value) + yamlField("version", std::to_string(item.version)) +
           yamlField("name", quoted(item.name)) + yamlField("one", quoted(item.one)) +
           yamlField("source", std::string(sourceNames.of(item.source))) +
           yamlField("lid_count", std::to_string(item.lidCount)) +
           yamlField("comes_back", quoted(comesBackNames.of(item.comesBack))) +
           yamlField("tags", yamlTags(tags)) + body(item, holds) +
           yamlField("drawing", quoted(item.drawing)) + yamlField("alt", quoted(item.alt));
}

Holds holdsIn(const SourceFile &file)
{
    Holds holds;
    Findings findings(file.name);
    readRecord(file, findings, [&](const YamlNode &node) {
        RecordReader record(node, {}, findings);
        if (record.has("holds"))
            holds =
                record.words("holds", bannedNames, {0, static_cast<int>(bannedNames.names.size())});
    });
    return holds;
}

ItemKind itemDraft(const SourceFile &file)
{
    ItemKind draft;
    Findings findings(file.name);
    readRecord(file, findings, [&](const YamlNode &record) { draft = readItem(record, findings); });
    return draft;
}

} // namespace lidlark::catalogue
