#pragma once

#include "core/catalogue/tag.h"
#include "core/child/home_sheet.h"

#include <cstdint>
#include <optional>
#include <span>
#include <stdexcept>
#include <string_view>
#include <vector>

/// The table of activities.md 1.4 and its two facts about people, written down a second time for
/// tests. Shares no code with core/safety.
namespace oracle {

using namespace lidlark;
using child::Answer;

/// One line of the table of activities.md 1.4, as far as a program reads it.
struct TableLine {
    std::string_view tag;
    bool hard;
    int floor; ///< 0: none.
    bool hiddenForUnderThree;
    bool hiddenForMouther;
    bool fromMovement; ///< Brought by what the body does, so that no swap takes it away.
};

inline constexpr TableLine tableLines[] = {
    {"SMALL", true, 36, true, true, false},   {"BALLOON", true, 60, true, true, false},
    {"LATEX", true, 0, false, false, false},  {"ELASTIC", true, 60, true, true, false},
    {"BAND", true, 48, false, false, false},  {"CORD", true, 36, true, true, false},
    {"SHARP", true, 36, false, false, false}, {"COIN", true, 48, true, true, false},
    {"FOAM", true, 36, true, true, false},    {"FOIL", true, 36, true, true, false},
    {"STRAW", true, 48, true, true, false},   {"DOUGH", true, 24, false, true, false},
    {"WHEAT", true, 0, false, false, false},  {"STICKER", true, 30, false, true, false},
    {"PAPER", false, 0, false, false, false}, {"FORK", true, 30, false, false, false},
    {"PET", false, 0, false, false, false},   {"HYG", false, 0, false, false, false},
    {"SCENT", false, 0, false, false, false}, {"WATER", false, 0, false, false, false},
    {"BREATH", false, 0, false, false, true}, {"EDGE", false, 0, false, false, false},
    {"TRACE", false, 0, false, false, false}, {"PINCH", false, 0, false, false, false},
    {"FACE", false, 0, false, false, true},   {"TOUCH", false, 0, false, false, true},
    {"SPIN", false, 0, false, false, true},   {"TRIP", false, 0, false, false, true},
    {"LIFT", false, 0, false, false, true},   {"NOISE", false, 0, false, false, true}};

inline std::span<const TableLine> table()
{
    return tableLines;
}

/// Some of the tags of the table, by name; a bit a line, because millions of cases are judged.
class Tags
{
public:
    /// Over the names.
    class Iterator
    {
    public:
        Iterator(std::uint32_t bits, std::size_t line) : m_bits(bits), m_line(line) { settle(); }
        std::string_view operator*() const { return table()[m_line].tag; }
        Iterator &operator++()
        {
            ++m_line;
            settle();
            return *this;
        }
        bool operator==(const Iterator &) const = default;

    private:
        void settle()
        {
            while (m_line < table().size() && (m_bits >> m_line & 1U) == 0)
                ++m_line;
        }

        std::uint32_t m_bits;
        std::size_t m_line;
    };

    [[nodiscard]] Iterator begin() const { return {m_bits, 0}; }
    [[nodiscard]] Iterator end() const { return {m_bits, table().size()}; }
    [[nodiscard]] bool contains(std::string_view tag) const { return (m_bits & bit(tag)) != 0; }
    void insert(std::string_view tag) { m_bits |= bit(tag); }
    void insert(Iterator first, Iterator last)
    {
        for (; first != last; ++first)
            insert(*first);
    }
    void erase(std::string_view tag) { m_bits &= ~bit(tag); }
    bool operator==(const Tags &) const = default;

private:
    static std::uint32_t bit(std::string_view tag)
    {
        // The compiler keeps one copy of a literal, so most names are found by where they lie.
        for (std::size_t line = 0; line < table().size(); ++line) {
            if (table()[line].tag.data() == tag.data())
                return 1U << line;
        }
        for (std::size_t line = 0; line < table().size(); ++line) {
            if (table()[line].tag == tag)
                return 1U << line;
        }
        throw std::invalid_argument("no such tag in the table");
    }

    std::uint32_t m_bits = 0;
};

inline Tags tagsOf(catalogue::TagSet set)
{
    static const std::vector<catalogue::Tag> inTheTablesOrder = [] {
        std::vector<catalogue::Tag> tags;
        for (const TableLine &line : table())
            tags.push_back(*catalogue::tagNames.parse(line.tag));
        return tags;
    }();
    Tags tags;
    for (std::size_t i = 0; i < table().size(); ++i) {
        if (set.has(inTheTablesOrder[i]))
            tags.insert(table()[i].tag);
    }
    return tags;
}

/// "Under-three" and "Mouther" of one person.
struct Smallness {
    bool underThree = false;
    bool mouther = false;

    void join(Smallness other)
    {
        underThree = underThree || other.underThree;
        mouther = mouther || other.mouther;
    }
};

inline Smallness smallnessOf(std::optional<int> months, Answer mouths, bool pica, bool isChild)
{
    Smallness result;
    if (mouths == Answer::Yes || pica)
        result.mouther = true;
    if (!isChild)
        return result;
    if (!months) {
        result.underThree = true;
        result.mouther = result.mouther || mouths != Answer::No;
        return result;
    }
    result.underThree = *months <= 35;
    if (*months <= 23 || (*months <= 35 && mouths == Answer::Unanswered))
        result.mouther = true;
    return result;
}

} // namespace oracle
