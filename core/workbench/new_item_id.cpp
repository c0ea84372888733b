#include "core/workbench/new_item_id.h"

namespace lidlark::workbench {

namespace {

constexpr std::size_t longestStem = 34; ///< Room for "-" and a number in 40 characters.

std::string stemOf(const std::string &name)
{
    std::string stem;
    for (const char letter : name) {
        const bool large = letter >= 'A' && letter <= 'Z';
        const char small = large ? static_cast<char>(letter - 'A' + 'a') : letter;
        const bool kept = (small >= 'a' && small <= 'z') || (small >= '0' && small <= '9');
        if (kept && stem.size() < longestStem)
            stem += small;
        else if (!kept && !stem.empty() && stem.back() != '-' && stem.size() < longestStem)
            stem += '-';
    }
    while (stem.ends_with('-'))
        stem.pop_back();
    return stem.empty() ? "thing" : stem;
}

} // namespace

ItemId newItemId(const std::string &name, const std::function<bool(const ItemId &)> &taken)
{
    const std::string stem = stemOf(name);
    ItemId id{stem};
    for (int number = 2; taken(id); ++number)
        id = {stem + "-" + std::to_string(number)};
    return id;
}

} // namespace lidlark::workbench
