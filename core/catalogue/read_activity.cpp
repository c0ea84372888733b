#include "core/catalogue/read_activity.h"

#include "core/catalogue/measured_hazards.h"
#include "core/catalogue/read_grading_fact.h"
#include "core/catalogue/read_measures.h"
#include "core/catalogue/read_reviews.h"

namespace lidlark::catalogue {

namespace {

constexpr Bounds allTags{0, static_cast<int>(tagCount)};

TagSet tagSet(const std::vector<Tag> &tags)
{
    TagSet set;
    for (const Tag tag : tags)
        set.add(tag);
    return set;
}

Picture readPicture(RecordReader &record)
{
    return {record.text("drawing"), record.text("alt")};
}

void readPictures(RecordReader &record, Activity &activity)
{
    if (auto picture = record.record("picture")) {
        activity.picture = readPicture(*picture);
        picture->finish();
    }
    for (RecordReader &line : record.records("steps", {2, 4})) {
        Step step{line.text("text"), std::nullopt};
        if (line.has("drawing") || line.has("alt"))
            step.picture = readPicture(line);
        line.finish();
        activity.steps.push_back(std::move(step));
    }
}

void readMinutes(RecordReader &record, Activity &activity)
{
    auto minutes = record.record("minutes");
    if (!minutes)
        return;
    activity.minutes.out = minutes->number("out", {0, 2});
    activity.minutes.play = minutes->number("play", {3, 8});
    activity.minutes.back = minutes->number("back", {0, 2});
    minutes->finish();
}

void readItems(RecordReader &record, Activity &activity)
{
    for (RecordReader &line : record.records("items", {0, itemLimit})) {
        ItemUse use;
        use.item = {line.text("item")};
        use.quantity = line.number("qty", {1, 99});
        use.source = line.word("source", sourceNames);
        use.role = line.word("role", roleNames);
        use.fate = line.word("fate", fateNames);
        use.countBack = line.optionalNumber("count_back", {0, 99}).value_or(0);
        line.finish();
        activity.items.push_back(std::move(use));
    }
    if (!record.has("swaps"))
        return;
    for (RecordReader &line : record.records("swaps", {0, swapLimit})) {
        ActivitySwap swap{{line.text("item")}, {line.text("with")}, {}, 0, line.text("text")};
        swap.cautions = tagSet(line.words("cautions", tagNames, allTags));
        swap.ageFloorMonths = line.optionalNumber("age_floor_months", {12, 132}).value_or(0);
        activity.swaps.push_back(std::move(swap));
        line.finish();
    }
}

void readMakes(RecordReader &record, Activity &activity)
{
    if (!record.has("makes"))
        return;
    activity.makes.emplace();
    for (RecordReader &line : record.records("makes", {0, 6})) {
        MadePiece piece{line.text("piece"), {line.text("of")}, readSolid(line)};
        line.finish();
        if (piece.solid && isSmall(*piece.solid))
            activity.madeTags.add(Tag::Small);
        activity.makes->push_back(std::move(piece));
    }
}

std::vector<Grading> readGradings(RecordReader &record, std::string_view key)
{
    std::vector<Grading> gradings;
    for (RecordReader &line : record.records(key, {1, 3})) {
        gradings.push_back(
            {line.word("lever", leverNames), line.text("text"), readGradingFact(line)});
        line.finish();
    }
    return gradings;
}

void readWaysIn(RecordReader &record, Activity &activity)
{
    auto ways = record.record("ways_in");
    if (!ways)
        return;
    activity.waysIn.oneHand = ways->optionalText("one_hand");
    activity.waysIn.seated = ways->optionalText("seated");
    activity.waysIn.lowVision = ways->optionalText("low_vision");
    activity.waysIn.noSpeech = ways->optionalText("no_speech");
    activity.waysIn.tiresFast = ways->optionalText("tires_fast");
    ways->finish();
}

void readPurpose(RecordReader &record, Activity &activity)
{
    activity.skillsMain = record.words("skills_main", skillCodes, {1, 2});
    activity.skillsAlso = record.words("skills_also", skillCodes, {0, 2});
    activity.lifeAreas = record.words("life_areas", lifeAreaNames, {0, 3});
    // A child of this app is about 1 to 10 years old (safety.md, scope).
    activity.ageFloorMonths = record.number("age_floor_months", {12, 132});
    activity.floorReason = record.text("floor_reason");
    activity.effect = record.word("effect", effectNames);
    activity.senses = record.words("senses", senseNames, {0, 7});
}

void readSetting(RecordReader &record, Activity &activity)
{
    activity.mess = record.number("mess", {0, 2});
    activity.space = record.word("space", spaceNames);
    activity.sound = record.word("sound", soundNames);
    activity.supervision = record.word("supervision", supervisionNames);
    activity.hands = record.number("hands", {0, 2});
    activity.energy = record.word("energy", energyNames);
    activity.positions = record.words("position", positionNames, {1, 6});
    activity.wordsNeeded = record.word("words_needed", wordsNames);
    activity.noBox = record.flag("no_box");
    activity.videoOk = record.flag("video_ok");
    activity.view = record.word("view", viewNames);
    activity.claim = record.word("claim", claimNames);
}

void readCare(RecordReader &record, Activity &activity)
{
    activity.cautions = tagSet(record.words("cautions", tagNames, allTags));
    activity.watchFor = record.texts("watch_for", {1, 2});
    activity.stopWhen = record.texts("stop_when", {1, 2});
    activity.say = record.texts("say", {1, 2});
    activity.putBack = record.texts("put_back", {1, 8});
}

} // namespace

Activity readActivity(const YamlNode &node, Findings &findings)
{
    RecordReader record(node, {}, findings);
    Activity activity;
    activity.id = {record.text("id")};
    activity.entry = record.text("entry");
    activity.version = record.number("version", {1, 1'000'000});
    activity.status = record.word("status", statusNames);
    activity.reviews = readReviews(record);
    activity.name = record.text("name");
    activity.invite = record.text("invite");
    activity.adultLine = record.text("adult_line");
    readPictures(record, activity);
    readMinutes(record, activity);
    readItems(record, activity);
    readMakes(record, activity);
    readPurpose(record, activity);
    readSetting(record, activity);
    activity.easier = readGradings(record, "easier");
    activity.harder = readGradings(record, "harder");
    readWaysIn(record, activity);
    readCare(record, activity);
    record.finish();
    return activity;
}

} // namespace lidlark::catalogue
