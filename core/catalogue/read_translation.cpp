#include "core/catalogue/read_translation.h"

#include "core/catalogue/family_lines.h"
#include "core/catalogue/same_numbers.h"

namespace lidlark::catalogue {

namespace {

Bounds asManyAs(std::size_t lines)
{
    const auto count = static_cast<int>(lines);
    return {count, count};
}

void readVersion(RecordReader &record, int version)
{
    const int from = record.number("of_version", {1, 1'000'000});
    if (from != version)
        record.complain("of_version", "was made from version " + std::to_string(from) +
                                          "; the English is version " + std::to_string(version));
}

/// A list of texts in place of another; where there is none, none may be written.
void readLines(RecordReader &record, std::string_view key, std::vector<std::string> &lines)
{
    if (!lines.empty())
        lines = record.texts(key, asManyAs(lines.size()));
    else if (record.has(key))
        record.texts(key, {0, 0});
}

/// The same for the texts of lines that hold more than words.
template <class Line>
void readTexts(RecordReader &record, std::string_view key, std::vector<Line> &lines)
{
    std::vector<std::string> texts(lines.size());
    readLines(record, key, texts);
    if (texts.size() != lines.size())
        return; // a finding by now
    for (std::size_t i = 0; i < lines.size(); ++i)
        lines[i].text = texts[i];
}

/// A text that is there exactly where the English has one.
void readSame(RecordReader &record, std::string_view key, std::string &text)
{
    if (!text.empty())
        text = record.text(key);
    else if (record.has(key))
        record.complain(key, "is not in the English: " + record.optionalText(key));
}

void readSteps(RecordReader &record, std::vector<Step> &steps)
{
    std::vector<RecordReader> lines = record.records("steps", asManyAs(steps.size()));
    if (lines.size() != steps.size())
        return; // a finding by now
    for (std::size_t i = 0; i < steps.size(); ++i) {
        steps[i].text = lines[i].text("text");
        std::string none;
        readSame(lines[i], "alt", steps[i].picture ? steps[i].picture->alt : none);
        lines[i].finish();
    }
}

void readMakesInOtherWords(RecordReader &record, Activity &activity)
{
    std::vector<std::string> names;
    if (activity.makes) {
        for (const MadePiece &piece : *activity.makes)
            names.push_back(piece.name);
    }
    readLines(record, "makes", names);
    if (!activity.makes || names.size() != activity.makes->size())
        return; // a finding by now
    for (std::size_t i = 0; i < names.size(); ++i)
        (*activity.makes)[i].name = names[i];
}

void readWaysIn(RecordReader &record, WaysIn &ways)
{
    const bool written =
        !(ways.oneHand + ways.seated + ways.lowVision + ways.noSpeech + ways.tiresFast).empty();
    if (!written && !record.has("ways_in"))
        return;
    auto line = record.record("ways_in");
    if (!line)
        return;
    readSame(*line, "one_hand", ways.oneHand);
    readSame(*line, "seated", ways.seated);
    readSame(*line, "low_vision", ways.lowVision);
    readSame(*line, "no_speech", ways.noSpeech);
    readSame(*line, "tires_fast", ways.tiresFast);
    line->finish();
}

/// Both have the same lines by now.
void checkNumbers(const Activity &english, const Activity &translated, Findings &findings)
{
    const std::vector<FamilyLine> wanted = everyLine(english);
    const std::vector<FamilyLine> found = everyLine(translated);
    for (std::size_t i = 0; i < wanted.size() && i < found.size(); ++i)
        checkSameNumbers(wanted[i].text, found[i].text, wanted[i].field, findings);
}

void checkNumbers(const std::vector<std::string> &english,
                  const std::vector<std::string> &translated, const std::string &field,
                  Findings &findings)
{
    for (std::size_t i = 0; i < english.size() && i < translated.size(); ++i)
        checkSameNumbers(english[i], translated[i], field, findings);
}

} // namespace

WordsOrigin readWordsOrigin(RecordReader &record, std::string_view key)
{
    const WordsOrigin origin = record.word(key, wordsOriginNames);
    if (origin == WordsOrigin::Ours && record.has(key))
        record.complain(key, "must be machine-made or reviewed");
    return origin;
}

Activity readActivityTranslation(const YamlNode &node, const Activity &english, Findings &findings)
{
    RecordReader record(node, {}, findings);
    Activity activity = english;
    if (record.text("id") != english.id.value)
        record.complain("id", "must be the file's name, \"" + english.id.value + "\"");
    readVersion(record, english.version);
    activity.wordsOrigin = readWordsOrigin(record, "status");
    activity.name = record.text("name");
    activity.invite = record.text("invite");
    activity.adultLine = record.text("adult_line");
    activity.picture.alt = record.text("alt");
    readSteps(record, activity.steps);
    readMakesInOtherWords(record, activity);
    activity.floorReason = record.text("floor_reason");
    readTexts(record, "easier", activity.easier);
    readTexts(record, "harder", activity.harder);
    readWaysIn(record, activity.waysIn);
    readLines(record, "watch_for", activity.watchFor);
    readLines(record, "stop_when", activity.stopWhen);
    readLines(record, "say", activity.say);
    readLines(record, "put_back", activity.putBack);
    readTexts(record, "swaps", activity.swaps);
    record.finish();
    if (findings.empty())
        checkNumbers(english, activity, findings);
    activity.inEnglish = std::make_shared<const Activity>(english);
    return activity;
}

ItemKind readItemTranslation(const YamlNode &node, const std::string &path, WordsOrigin origin,
                             const ItemKind &english, Findings &findings)
{
    RecordReader record(node, path, findings);
    ItemKind item = english;
    item.wordsOrigin = origin;
    readVersion(record, english.version);
    item.name = record.text("name");
    item.one = record.text("one");
    item.alt = record.text("alt");
    readLines(record, "care", item.care);
    readSame(record, "check", item.life.check);
    readLines(record, "rescue", item.life.rescue);
    std::string none;
    readSame(record, "swap_note", item.swap ? item.swap->note : none);
    record.finish();
    checkNumbers(english.care, item.care, path + ".care", findings);
    checkNumbers(english.life.rescue, item.life.rescue, path + ".rescue", findings);
    checkNumbers({english.name, english.one, english.alt, english.life.check},
                 {item.name, item.one, item.alt, item.life.check}, path, findings);
    if (english.swap)
        checkSameNumbers(english.swap->note, item.swap->note, path + ".swap_note", findings);
    item.inEnglish = std::make_shared<const ItemKind>(english);
    return item;
}

} // namespace lidlark::catalogue
