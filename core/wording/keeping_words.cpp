#include "core/wording/keeping_words.h"

#include <array>
#include <string>

namespace lidlark::wording {

namespace {

/// Those with a tag or a question of their own, and those of catalogue/allergen.h.
constexpr std::array allergens{say("latex"), say("wheat"), say("milk"),     say("egg"),
                               say("nut"),   say("soy"),   say("adhesive"), say("dye")};

Sentence inDays(int days, English one, English many)
{
    return days == 1 ? Sentence{one, {}} : Sentence{many, {inDigits(days)}};
}

} // namespace

std::vector<Sentence> keepingWords(const catalogue::Life &life)
{
    std::vector<Sentence> words;
    if (life.singleUse)
        words.push_back({say("Used once, then thrown away."), {}});
    if (life.openedDays)
        words.push_back(inDays(*life.openedDays, say("Thrown away one day after it was opened."),
                               sayCounted("Thrown away %1 days after it was opened.")));
    if (life.openAirDays)
        words.push_back(inDays(*life.openAirDays,
                               say("Each evening left open takes one day of its time."),
                               sayCounted("Each evening left open takes %1 days of its time.")));
    if (life.replaceDays)
        words.push_back(inDays(*life.replaceDays, say("Replaced one day after it came."),
                               sayCounted("Replaced %1 days after it came.")));
    if (life.checkEachUse)
        words.push_back({say("Looked at before every use."), {}});
    if (life.checkDays)
        words.push_back(inDays(*life.checkDays, say("Looked at every day."),
                               sayCounted("Looked at every %1 days.")));
    if (words.empty())
        words.push_back({say("It keeps: no limit is known."), {}});
    return words;
}

Sentence washingWords(bool cleanable)
{
    if (cleanable)
        return {say("It can be washed with soap, rinsed and dried."), {}};
    return {say("It cannot be washed: once it was in a mouth it is thrown away, or stays with one "
                "child."),
            {}};
}

Sentence allergenWord(std::string_view allergen)
{
    for (const English &words : allergens) {
        if (words.text() == allergen)
            return {words, {}};
    }
    return {say("%1"), {std::string(allergen)}};
}

} // namespace lidlark::wording
