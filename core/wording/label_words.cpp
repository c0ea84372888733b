#include "core/wording/label_words.h"

#include <algorithm>
#include <array>

namespace lidlark::wording {

namespace {

using catalogue::ItemKind;
using catalogue::Tag;
using catalogue::TagSet;

/// In the order in which they are shown.
enum class Label { Balloon, IsBall, IsMarble, ContainsBall, ContainsMarble, SmallParts };
constexpr std::size_t labelCount = 6;

struct Texts {
    English unitedStates;
    English europe;
};

constexpr std::array<Texts, labelCount> texts{{
    {say("WARNING: CHOKING HAZARD\u2014Children under 8 yrs. can choke or suffocate on uninflated "
         "or "
         "broken balloons. Adult supervision required. Keep uninflated balloons from children. "
         "Discard "
         "broken balloons at once."),
     say("Warning! Children under eight years can choke or suffocate on uninflated or broken "
         "balloons. "
         "Adult supervision required. Keep uninflated balloons from children. Discard broken "
         "balloons "
         "at once.")},
    {say("WARNING: CHOKING HAZARD\u2014This toy is a small ball. Not for children under 3 yrs."),
     say("Warning! Not suitable for children under three years. Small ball.")},
    {say("WARNING: CHOKING HAZARD\u2014This toy is a marble. Not for children under 3 yrs."),
     say("Warning! Not suitable for children under three years. Marble.")},
    {say("WARNING: CHOKING HAZARD\u2014Toy contains a small ball. Not for children under 3 yrs."),
     say("Warning! Not suitable for children under three years. Small ball.")},
    {say("WARNING: CHOKING HAZARD\u2014Toy contains a marble. Not for children under 3 yrs."),
     say("Warning! Not suitable for children under three years. Marble.")},
    {say("WARNING: CHOKING HAZARD\u2014Small parts. Not for children under 3 yrs."),
     say("Warning! Not suitable for children under three years. Small parts.")},
}};

using Labels = std::array<bool, labelCount>;

void mark(Labels &labels, Label label)
{
    labels[static_cast<std::size_t>(label)] = true;
}

void markItem(Labels &labels, const ItemKind &kind)
{
    const catalogue::MeasuredHazards &hazards = kind.hazards;
    if (kind.tags.has(Tag::Balloon))
        mark(labels, Label::Balloon);
    if (hazards.isSmallBall || hazards.isMarble) {
        mark(labels, hazards.isMarble ? Label::IsMarble : Label::IsBall);
        return;
    }
    if (hazards.holdsSmallBall)
        mark(labels, Label::ContainsBall);
    if (kind.tags.has(Tag::Small) || kind.tags.has(Tag::Coin))
        mark(labels, Label::SmallParts);
}

/// Tags that come from no item: from pieces made while playing, or written by hand.
void markRest(Labels &labels, TagSet rest)
{
    if (rest.has(Tag::Balloon))
        mark(labels, Label::Balloon);
    if (rest.has(Tag::Small) || rest.has(Tag::Coin))
        mark(labels, Label::SmallParts);
}

LabelWords wordsOf(std::size_t label, Region region)
{
    if (region == Region::UnitedStates)
        return {{texts[label].unitedStates, {}}, {say("16 CFR 1500.19(b)"), {}}};
    const bool balloon = label == static_cast<std::size_t>(Label::Balloon);
    return {{texts[label].europe, {}},
            {balloon ? say("EN 71-1") : say("Toy safety rules of the EU and the UK"), {}}};
}

std::vector<LabelWords> linesOf(const Labels &labels, Region region)
{
    std::vector<LabelWords> lines;
    for (std::size_t i = 0; i < labelCount; ++i) {
        if (!labels[i])
            continue;
        LabelWords line = wordsOf(i, region);
        if (std::find(lines.begin(), lines.end(), line) == lines.end())
            lines.push_back(std::move(line));
    }
    return lines;
}

bool carries(const ItemId &item, std::size_t label, const catalogue::Catalogue &catalogue)
{
    Labels labels{};
    if (const ItemKind *kind = catalogue.item(item))
        markItem(labels, *kind);
    return labels[label];
}

} // namespace

Region regionOf(std::string_view territory)
{
    constexpr std::array<std::string_view, 6> american{"US", "PR", "GU", "VI", "AS", "MP"};
    const std::size_t underscore = territory.find_last_of("_-");
    if (underscore != std::string_view::npos)
        territory.remove_prefix(underscore + 1);
    const bool isAmerican =
        std::find(american.begin(), american.end(), territory) != american.end();
    return isAmerican ? Region::UnitedStates : Region::Europe;
}

std::vector<LabelWords> labelWords(const catalogue::Activity &activity,
                                   const std::vector<catalogue::ItemUse> &items, TagSet cautions,
                                   const catalogue::Catalogue &catalogue, Region region)
{
    Labels labels{};
    TagSet ofItems;
    for (const catalogue::ItemUse &use : items) {
        if (const ItemKind *kind = catalogue.item(use.item)) {
            ofItems = ofItems | kind->tags;
            markItem(labels, *kind);
        }
    }
    markRest(labels, cautions.without(ofItems) | activity.madeTags);
    return linesOf(labels, region);
}

std::vector<BoxLabelWords> labelWordsOfBox(std::span<const ItemId> items,
                                           const catalogue::Catalogue &catalogue, Region region)
{
    std::vector<BoxLabelWords> all;
    for (std::size_t label = 0; label < labelCount; ++label) {
        const LabelWords words = wordsOf(label, region);
        for (const ItemId &item : items) {
            if (!carries(item, label, catalogue))
                continue;
            auto same = std::ranges::find(all, words, &BoxLabelWords::label);
            if (same == all.end())
                same = all.insert(all.end(), {words, {}});
            if (std::ranges::find(same->items, item) == same->items.end())
                same->items.push_back(item);
        }
    }
    return all;
}

} // namespace lidlark::wording
