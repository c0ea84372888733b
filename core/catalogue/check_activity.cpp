#include "core/catalogue/check_activity.h"

#include "core/catalogue/check_cautions.h"
#include "core/catalogue/check_gradings.h"
#include "core/catalogue/check_matters.h"
#include "core/catalogue/list_path.h"
#include "core/catalogue/read_reviews.h"
#include "core/catalogue/readability.h"

#include <algorithm>
#include <set>

namespace lidlark::catalogue {

namespace {

void checkWords(const Activity &activity, Findings &findings)
{
    const auto limit = [&findings](std::string_view field, std::string_view text, int most) {
        if (const int words = wordsIn(text); words > most)
            findings.addAt(field, "must have at most " + std::to_string(most) + " words, not " +
                                      std::to_string(words));
    };
    limit("invite", activity.invite, 12);
    limit("adult_line", activity.adultLine, 25);
}

void checkCountBack(const ItemUse &use, const std::string &field, Findings &findings)
{
    if (use.fate == Fate::UsedUp) {
        if (use.countBack != 0)
            findings.addAt(field, "must be left out for what is used up");
    } else if (use.source == Source::Box && use.countBack == 0) {
        findings.addAt(field, "is missing: every box item is counted back");
    } else if (use.countBack > use.quantity) {
        findings.addAt(field, "must be at most the quantity taken out");
    }
}

void checkItem(const ItemUse &use, std::size_t index, const std::map<ItemId, ItemKind> &items,
               Findings &findings)
{
    checkCountBack(use, lineOf("items", index, "count_back"), findings);
    const auto kind = items.find(use.item);
    if (kind == items.end()) {
        findings.addAt(lineOf("items", index, "item"),
                       "there is no sound item \"" + use.item.value + "\"");
        return;
    }
    if (kind->second.source != use.source)
        findings.addAt(lineOf("items", index, "source"),
                       "must be \"" + std::string(sourceNames.of(kind->second.source)) + "\" for " +
                           use.item.value);
    if (kind->second.lidCount > 0 && use.quantity > kind->second.lidCount)
        findings.addAt(lineOf("items", index, "qty"),
                       "a standard box holds " + std::to_string(kind->second.lidCount));
}

void checkItems(const Activity &activity, const std::map<ItemId, ItemKind> &items,
                Findings &findings)
{
    std::set<ItemId> seen;
    for (std::size_t i = 0; i < activity.items.size(); ++i) {
        checkItem(activity.items[i], i, items, findings);
        if (!seen.insert(activity.items[i].item).second)
            findings.addAt(lineOf("items", i, "item"), "is listed twice");
        if (activity.noBox && activity.items[i].source == Source::Box)
            findings.addAt(lineOf("items", i, "source"), "an entry with no_box uses no box item");
    }
}

void checkSwaps(const Activity &activity, const std::map<ItemId, ItemKind> &items,
                Findings &findings)
{
    std::set<std::pair<ItemId, ItemId>> seen;
    for (std::size_t i = 0; i < activity.swaps.size(); ++i) {
        const ActivitySwap &swap = activity.swaps[i];
        const bool used =
            std::any_of(activity.items.begin(), activity.items.end(),
                        [&swap](const ItemUse &use) { return use.item == swap.item; });
        if (!used)
            findings.addAt(lineOf("swaps", i, "item"),
                           "the entry does not use \"" + swap.item.value + "\"");
        if (!items.contains(swap.with))
            findings.addAt(lineOf("swaps", i, "with"),
                           "there is no sound item \"" + swap.with.value + "\"");
        if (swap.with == swap.item)
            findings.addAt(lineOf("swaps", i, "with"), "an item cannot stand in for itself");
        if (!seen.insert({swap.item, swap.with}).second)
            findings.addAt(lineOf("swaps", i, "with"), "is listed twice");
    }
}

bool canBe(const Activity &activity, Position position)
{
    return std::find(activity.positions.begin(), activity.positions.end(), position) !=
           activity.positions.end();
}

void checkAccess(const Activity &activity, Findings &findings)
{
    const bool seated = canBe(activity, Position::Lap) || canBe(activity, Position::Chair) ||
                        canBe(activity, Position::Wheelchair) || canBe(activity, Position::Floor);
    if (activity.energy != Energy::High && !seated)
        findings.addAt("position", "needs a seated way: lap, chair, wheelchair or floor");
    if (activity.hands < 2 && activity.waysIn.oneHand.empty())
        findings.addAt("ways_in.one_hand", "must be written for an entry of one hand or none");
}

bool trains(const std::vector<Skill> &skills, Skill skill)
{
    return std::find(skills.begin(), skills.end(), skill) != skills.end();
}

void checkPurpose(const Activity &activity, Findings &findings)
{
    for (const Skill skill : activity.skillsMain) {
        if (trains(activity.skillsAlso, skill))
            findings.addAt("skills_also",
                           std::string(skillCodes.of(skill)) + " is a main skill already");
    }
    const bool oral =
        trains(activity.skillsMain, Skill::Orl) || trains(activity.skillsAlso, Skill::Orl);
    if (oral && activity.claim != Claim::Play)
        findings.addAt("claim", "must be play for an entry with ORL");
}

void checkPutBack(const Activity &activity, Findings &findings)
{
    if (activity.usesBox() && activity.putBack.back() != "Lid on")
        findings.addAt("put_back", "the last line must be \"Lid on\"");
}

} // namespace

void checkActivity(const Activity &activity, const std::map<ItemId, ItemKind> &items,
                   Findings &findings)
{
    checkWords(activity, findings);
    checkItems(activity, items, findings);
    checkSwaps(activity, items, findings);
    checkCautions(activity, items, findings);
    checkMatters(activity, findings);
    checkAccess(activity, findings);
    checkPurpose(activity, findings);
    checkGradings(activity, findings);
    checkPutBack(activity, findings);
    checkReviews(activity, findings);
}

} // namespace lidlark::catalogue
