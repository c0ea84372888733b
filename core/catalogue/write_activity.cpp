#include "core/catalogue/write_entry.h"

#include "core/catalogue/file_record.h"
#include "core/catalogue/read_activity.h"
#include "core/catalogue/yaml_lines.h"

namespace lidlark::catalogue {

namespace {

template <class Enum, std::size_t Count>
std::string word(std::string_view name, Enum value, const EnumNames<Enum, Count> &names)
{
    return yamlField(name, std::string(names.of(value)));
}

/// A list with a line each, or "[]".
template <class List, class Write>
std::string lines(std::string_view name, const List &list, Write &&write)
{
    if (list.empty())
        return yamlField(name, "[]");
    std::string out = std::string(name) + ":\n";
    for (const auto &entry : list)
        out += "  - {" + write(entry) + "}\n";
    return out;
}

std::string yamlPicture(const Picture &picture)
{
    return "drawing: " + quoted(picture.drawing) + ", alt: " + quoted(picture.alt);
}

std::string yamlStep(const Step &step)
{
    const std::string text = "text: " + quoted(step.text);
    return step.picture ? text + ", " + yamlPicture(*step.picture) : text;
}

std::string yamlUse(const ItemUse &use)
{
    std::string out = "item: " + quoted(use.item.value) + ", qty: " + std::to_string(use.quantity) +
                      ", source: " + std::string(sourceNames.of(use.source)) +
                      ", role: " + std::string(roleNames.of(use.role)) +
                      ", fate: " + std::string(fateNames.of(use.fate));
    if (use.countBack > 0)
        out += ", count_back: " + std::to_string(use.countBack);
    return out;
}

std::string yamlSwap(const ActivitySwap &swap)
{
    std::string out = "item: " + quoted(swap.item.value) + ", with: " + quoted(swap.with.value) +
                      ", cautions: " + yamlTags(swap.cautions) + ", text: " + quoted(swap.text);
    if (swap.ageFloorMonths > 0)
        out += ", age_floor_months: " + std::to_string(swap.ageFloorMonths);
    return out;
}

std::string yamlMade(const MadePiece &piece)
{
    std::string out = "piece: " + quoted(piece.name) + ", of: " + quoted(piece.of.value);
    return piece.solid ? out + ", " + yamlSolid(*piece.solid) : out;
}

std::string yamlGrading(const Grading &grading)
{
    return "lever: " + std::string(leverNames.of(grading.lever)) +
           ", text: " + quoted(grading.text);
}

std::string head(const Activity &activity)
{
    const Minutes &minutes = activity.minutes;
    return yamlField("id", activity.id.value) + yamlField("entry", quoted(activity.entry)) +
           yamlField("version", std::to_string(activity.version)) +
           word("status", activity.status, statusNames) + yamlField("name", quoted(activity.name)) +
           yamlField("invite", quoted(activity.invite)) +
           yamlField("adult_line", quoted(activity.adultLine)) +
           yamlField("picture", "{" + yamlPicture(activity.picture) + "}") +
           lines("steps", activity.steps, yamlStep) +
           yamlField("minutes", "{out: " + std::to_string(minutes.out) +
                                    ", play: " + std::to_string(minutes.play) +
                                    ", back: " + std::to_string(minutes.back) + "}");
}

std::string purpose(const Activity &activity)
{
    // Nobody has said from which age on: left out, so that the loader asks.
    const std::string floor =
        activity.ageFloorMonths > 0
            ? yamlField("age_floor_months", std::to_string(activity.ageFloorMonths))
            : std::string();
    return lines("items", activity.items, yamlUse) +
           (activity.makes ? lines("makes", *activity.makes, yamlMade) : std::string()) +
           yamlField("skills_main", yamlWords(activity.skillsMain, skillCodes)) +
           yamlField("skills_also", yamlWords(activity.skillsAlso, skillCodes)) +
           yamlField("life_areas", yamlWords(activity.lifeAreas, lifeAreaNames)) + floor +
           yamlField("floor_reason", quoted(activity.floorReason)) +
           word("effect", activity.effect, effectNames) +
           yamlField("senses", yamlWords(activity.senses, senseNames));
}

std::string setting(const Activity &activity)
{
    return yamlField("mess", std::to_string(activity.mess)) +
           word("space", activity.space, spaceNames) + word("sound", activity.sound, soundNames) +
           word("supervision", activity.supervision, supervisionNames) +
           yamlField("hands", std::to_string(activity.hands)) +
           word("energy", activity.energy, energyNames) +
           yamlField("position", yamlWords(activity.positions, positionNames)) +
           word("words_needed", activity.wordsNeeded, wordsNames);
}

std::string ways(const WaysIn &waysIn)
{
    std::string out;
    const auto add = [&out](std::string_view name, const std::string &text) {
        if (!text.empty())
            out += (out.empty() ? "" : ", ") + std::string(name) + ": " + quoted(text);
    };
    add("one_hand", waysIn.oneHand);
    add("seated", waysIn.seated);
    add("low_vision", waysIn.lowVision);
    add("no_speech", waysIn.noSpeech);
    add("tires_fast", waysIn.tiresFast);
    return yamlField("ways_in", "{" + out + "}");
}

std::string care(const Activity &activity)
{
    return lines("easier", activity.easier, yamlGrading) +
           lines("harder", activity.harder, yamlGrading) + ways(activity.waysIn) +
           yamlField("cautions", yamlTags(activity.cautions)) +
           yamlField("watch_for", yamlTexts(activity.watchFor)) +
           yamlField("stop_when", yamlTexts(activity.stopWhen)) +
           yamlField("say", yamlTexts(activity.say)) +
           yamlField("put_back", yamlTexts(activity.putBack)) +
           yamlField("no_box", yamlFlag(activity.noBox)) +
           yamlField("video_ok", yamlFlag(activity.videoOk)) +
           word("view", activity.view, viewNames) + word("claim", activity.claim, claimNames) +
           (activity.swaps.empty() ? std::string() : lines("swaps", activity.swaps, yamlSwap));
}

} // namespace

std::string yamlOf(const Activity &activity)
{
    return head(activity) + purpose(activity) + setting(activity) + care(activity);
}

Activity activityDraft(const SourceFile &file)
{
    Activity draft;
    Findings findings(file.name);
    readRecord(file, findings,
               [&](const YamlNode &record) { draft = readActivity(record, findings); });
    return draft;
}

} // namespace lidlark::catalogue
