#include "core/wording/caution_words.h"

#include "core/wording/catalogue_terms.h"
#include "core/wording/tag_words.h"

#include <algorithm>
#include <array>

namespace lidlark::wording {

namespace {

using catalogue::Supervision;
using catalogue::Tag;
using catalogue::TagSet;

/// What can hurt most is said first.
constexpr std::array<Tag, catalogue::tagCount> bySeriousness{
    Tag::Balloon, Tag::Small, Tag::Coin,  Tag::Cord,  Tag::Straw,  Tag::Elastic,
    Tag::Band,    Tag::Sharp, Tag::Water, Tag::Foam,  Tag::Foil,   Tag::Fork,
    Tag::Sticker, Tag::Face,  Tag::Spin,  Tag::Lift,  Tag::Breath, Tag::Pinch,
    Tag::Dough,   Tag::Wheat, Tag::Latex, Tag::Touch, Tag::Trip,   Tag::Edge,
    Tag::Trace,   Tag::Paper, Tag::Scent, Tag::Pet,   Tag::Noise,  Tag::Hyg};

constexpr TagSet spokenOf()
{
    TagSet tags;
    for (const Tag tag : bySeriousness)
        tags.add(tag);
    return tags;
}
static_assert(spokenOf().size() == static_cast<int>(catalogue::tagCount), "a caution left unsaid");

} // namespace

Sentence supervisionLead(Supervision supervision, const std::string &childAlias)
{
    switch (supervision) {
    case Supervision::Beside:
        return {say("Right beside %1, hand within touch."), {childAlias}};
    case Supervision::Reach:
        return {say("Within arm's reach of %1."), {childAlias}};
    case Supervision::Near:
        break;
    }
    return {say("In the same room as %1, watching."), {childAlias}};
}

Sentence supervisionShort(Supervision supervision)
{
    switch (supervision) {
    case Supervision::Beside:
        return {say("Right beside"), {}};
    case Supervision::Reach:
        return {say("Arm's reach"), {}};
    case Supervision::Near:
        break;
    }
    return {say("Same room"), {}};
}

std::vector<Sentence> cautionsFor(TagSet cautions, const catalogue::Activity &activity)
{
    std::vector<Sentence> sentences;
    for (const Tag tag : bySeriousness) {
        if (cautions.has(tag))
            sentences.push_back({tagCaution(tag), {}});
    }
    // Before the second caution, so that even a strip of two says when to stop.
    std::size_t place = std::min<std::size_t>(sentences.size(), 1);
    const std::vector<std::string> &english = catalogue::inEnglish(activity).stopWhen;
    for (std::size_t i = 0; i < activity.stopWhen.size(); ++i) {
        const Argument line = termOf(activity, activity.stopWhen[i], english.at(i));
        sentences.insert(sentences.begin() + static_cast<std::ptrdiff_t>(place),
                         Sentence{say("Stop when %1"), {withSmall(line)}});
        place = sentences.size();
    }
    return sentences;
}

Sentence closingLine()
{
    return {say("Follow your local rules and your therapist."), {}};
}

} // namespace lidlark::wording
