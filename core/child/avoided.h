#pragma once

#include "core/catalogue/tag.h"

#include <optional>
#include <string_view>

namespace lidlark::child {

/// What a home must avoid, by the things that leave the house for it.
enum class Avoided { Latex, Wheat };
inline constexpr EnumNames<Avoided, 2> avoidedNames{{"latex", "wheat"}};

/// The tag of the things that hold it (activities.md 1.4).
constexpr catalogue::Tag tagOf(Avoided avoided)
{
    return avoided == Avoided::Latex ? catalogue::Tag::Latex : catalogue::Tag::Wheat;
}

/// Which avoidance a yes to this fact of the home sheet is. A latex risk is read as an allergy
/// (safety.md LA-01); a wheat allergy and coeliac disease clear out the same things (MD-01).
constexpr std::optional<Avoided> avoidedBy(std::string_view fact)
{
    if (fact == "latex" || fact == "latex-risk")
        return Avoided::Latex;
    if (fact == "wheat" || fact == "coeliac")
        return Avoided::Wheat;
    return std::nullopt;
}

} // namespace lidlark::child
