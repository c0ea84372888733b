#pragma once

#include "core/base/enum_names.h"

#include <bit>
#include <cstdint>
#include <initializer_list>
#include <vector>

namespace lidlark::catalogue {

/// Caution tags (activities.md 1.4). What each one does is decided in `core/safety`.
enum class Tag {
    Small,
    Balloon,
    Latex,
    Elastic,
    Band,
    Cord,
    Sharp,
    Coin,
    Foam,
    Foil,
    Straw,
    Dough,
    Wheat,
    Sticker,
    Paper,
    Fork,
    Pet,
    Hyg,
    Scent,
    Water,
    Breath,
    Edge,
    Trace,
    Pinch,
    Face,
    Touch,
    Spin,
    Trip,
    Lift,
    Noise
};

inline constexpr std::size_t tagCount = 30;
static_assert(static_cast<std::size_t>(Tag::Noise) + 1 == tagCount);
static_assert(tagCount <= 32, "TagSet holds a bit a tag");

/// As written in the catalogue and on the command line.
inline constexpr EnumNames<Tag, tagCount> tagNames{
    {"SMALL",  "BALLOON", "LATEX", "ELASTIC", "BAND",  "CORD",  "SHARP", "COIN", "FOAM",  "FOIL",
     "STRAW",  "DOUGH",   "WHEAT", "STICKER", "PAPER", "FORK",  "PET",   "HYG",  "SCENT", "WATER",
     "BREATH", "EDGE",    "TRACE", "PINCH",   "FACE",  "TOUCH", "SPIN",  "TRIP", "LIFT",  "NOISE"}};
static_assert(!tagNames.names.back().empty(), "every tag has a name");

/// A set of tags; small enough to pass by value.
class TagSet
{
public:
    constexpr TagSet() = default;
    constexpr TagSet(std::initializer_list<Tag> tags)
    {
        for (const Tag tag : tags)
            add(tag);
    }

    constexpr void add(Tag tag) { m_bits |= bit(tag); }
    constexpr void remove(Tag tag) { m_bits &= ~bit(tag); }
    [[nodiscard]] constexpr bool has(Tag tag) const { return (m_bits & bit(tag)) != 0; }
    [[nodiscard]] constexpr bool empty() const { return m_bits == 0; }
    [[nodiscard]] constexpr int size() const { return std::popcount(m_bits); }
    [[nodiscard]] constexpr TagSet operator|(TagSet other) const
    {
        return TagSet(m_bits | other.m_bits);
    }
    [[nodiscard]] constexpr TagSet operator&(TagSet other) const
    {
        return TagSet(m_bits & other.m_bits);
    }
    /// The tags of this set that @p other lacks.
    [[nodiscard]] constexpr TagSet without(TagSet other) const
    {
        return TagSet(m_bits & ~other.m_bits);
    }
    constexpr bool operator==(const TagSet &) const = default;

    /// In the order of the enumeration.
    [[nodiscard]] std::vector<Tag> list() const
    {
        std::vector<Tag> tags;
        for (std::size_t i = 0; i < tagCount; ++i) {
            if (has(static_cast<Tag>(i)))
                tags.push_back(static_cast<Tag>(i));
        }
        return tags;
    }

private:
    explicit constexpr TagSet(std::uint32_t bits) : m_bits(bits) {}
    static constexpr std::uint32_t bit(Tag tag) { return 1U << static_cast<unsigned>(tag); }
    std::uint32_t m_bits = 0;
};

} // namespace lidlark::catalogue
