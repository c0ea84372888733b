#include "core/wording/own_item_words.h"

#include <array>

namespace lidlark::wording {

namespace {

struct AskedOfThing {
    std::string_view field; ///< As the loader names it.
    English words;
};

/// What is asked for where it is missing, or does not go with the rest.
constexpr std::array askedOfThings{
    AskedOfThing{"name", say("It needs a name, of at most 80 letters.")},
    AskedOfThing{"one", say("Say what one of them is called, in at most 80 letters.")},
    AskedOfThing{"measures.whole", say("Say how large one piece is, or that it is soft.")},
    AskedOfThing{"measures.least", say("Worn down it cannot be larger than it was.")},
    AskedOfThing{"measures.rolls_as", say("A ball has a size: it cannot be soft.")},
    AskedOfThing{"measures.cord.thickness_mm",
                 say("The cord is thicker than it is long: are the two swapped?")},
    AskedOfThing{"measures.hollow.narrow_mm",
                 say("The narrow way is wider than the wide one: are the two swapped?")},
    AskedOfThing{"measures.film.opening_mm",
                 say("A bag has an opening, a sheet two edges: measure one of these.")},
    AskedOfThing{"measures.film.thickness_mm",
                 say("Film this large goes into no box, unless it is 0.038 mm thick or full of "
                     "holes, and without a string to pull it shut.")},
    AskedOfThing{"measures.comes_off.part", say("Every part that comes off needs a name.")},
    AskedOfThing{"holds", say("Say whether it holds anything that never goes into a box. What "
                              "does stays out.")},
    AskedOfThing{"cleanable", say("Say whether it can be washed.")},
    AskedOfThing{"single_child",
                 say("What cannot be washed stays with one child: it is never issued again.")},
    AskedOfThing{"life.check", say("Say what to look for, and when it is looked at.")},
    AskedOfThing{"use", say("Say about how many go in how many days.")},
    AskedOfThing{"lid_count", say("What the home lends is not counted in the lid.")}};

/// "measures.comes_off[2].part" -> "measures.comes_off.part".
std::string withoutPlaces(std::string_view field)
{
    std::string bare;
    bool inside = false;
    for (const char letter : field) {
        inside = (inside || letter == '[') && letter != ']';
        if (!inside && letter != ']')
            bare += letter;
    }
    return bare;
}

} // namespace

Sentence ownItemFindingWords(const catalogue::Problem &problem)
{
    const std::string bare = withoutPlaces(problem.field);
    for (const AskedOfThing &asked : askedOfThings) {
        if (asked.field == bare)
            return {asked.words, {}};
    }
    return {say("This cannot go to a box: %1."), {problem.reason}};
}

English bannedWord(catalogue::Banned thing)
{
    using catalogue::Banned;
    switch (thing) {
    case Banned::Magnet:
        return say("A magnet");
    case Banned::Battery:
        return say("A battery");
    case Banned::SwellsInWater:
        return say("What swells in water");
    case Banned::EssentialOil:
        return say("Essential oil");
    case Banned::Glitter:
        return say("Glitter");
    case Banned::HotGlue:
        return say("Hot glue");
    case Banned::ClingFilm:
        return say("Cling film");
    case Banned::Food:
        return say("Food");
    }
    return {};
}

} // namespace lidlark::wording
