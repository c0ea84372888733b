#include "core/catalogue/family_lines.h"

#include "core/catalogue/list_path.h"

namespace lidlark::catalogue {

namespace {

/// "say[2]" for the second line of a list of texts.
std::string placeIn(std::string_view list, std::size_t index)
{
    return std::string(list) + "[" + std::to_string(index + 1) + "]";
}

class Gathering
{
public:
    void add(std::string field, std::string_view text)
    {
        if (!text.empty())
            m_lines.push_back({std::move(field), text});
    }
    void addAll(std::string_view list, const std::vector<std::string> &texts)
    {
        for (std::size_t i = 0; i < texts.size(); ++i)
            add(placeIn(list, i), texts[i]);
    }
    template <class Line> void addTexts(std::string_view list, const std::vector<Line> &lines)
    {
        for (std::size_t i = 0; i < lines.size(); ++i)
            add(lineOf(list, i, "text"), lines[i].text);
    }
    void addWays(const WaysIn &ways)
    {
        add("ways_in.one_hand", ways.oneHand);
        add("ways_in.seated", ways.seated);
        add("ways_in.low_vision", ways.lowVision);
        add("ways_in.no_speech", ways.noSpeech);
        add("ways_in.tires_fast", ways.tiresFast);
    }
    [[nodiscard]] std::vector<FamilyLine> take() { return std::move(m_lines); }

private:
    std::vector<FamilyLine> m_lines;
};

void addPlaying(const Activity &activity, Gathering &lines)
{
    lines.add("adult_line", activity.adultLine);
    lines.addTexts("steps", activity.steps);
    lines.addTexts("easier", activity.easier);
    lines.addTexts("harder", activity.harder);
    lines.addWays(activity.waysIn);
    lines.addAll("put_back", activity.putBack);
}

} // namespace

std::vector<FamilyLine> playingLines(const Activity &activity)
{
    Gathering lines;
    addPlaying(activity, lines);
    return lines.take();
}

std::vector<FamilyLine> everyLine(const Activity &activity)
{
    Gathering lines;
    lines.add("name", activity.name);
    lines.add("invite", activity.invite);
    lines.add("picture.alt", activity.picture.alt);
    addPlaying(activity, lines);
    for (std::size_t i = 0; i < activity.steps.size(); ++i) {
        if (activity.steps[i].picture)
            lines.add(lineOf("steps", i, "alt"), activity.steps[i].picture->alt);
    }
    lines.add("floor_reason", activity.floorReason);
    lines.addAll("watch_for", activity.watchFor);
    lines.addAll("stop_when", activity.stopWhen);
    lines.addAll("say", activity.say);
    lines.addTexts("swaps", activity.swaps);
    return lines.take();
}

} // namespace lidlark::catalogue
