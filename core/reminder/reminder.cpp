#include "core/reminder/reminder.h"

#include <algorithm>

namespace lidlark::reminder {

namespace {

char small(char letter)
{
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

/// A byte of a longer character belongs to a word, too: no alphabet is cut in the middle.
bool isInWord(char byte)
{
    const auto value = static_cast<unsigned char>(byte);
    return value >= 0x80 || (value >= '0' && value <= '9') ||
           (small(byte) >= 'a' && small(byte) <= 'z');
}

bool standsAlone(std::string_view line, std::size_t at, std::size_t length)
{
    const bool before = at > 0 && isInWord(line[at - 1]);
    const bool after = at + length < line.size() && isInWord(line[at + length]);
    return !before && !after;
}

bool holds(std::string_view line, std::string_view name)
{
    const bool exactly = name.size() == 1;
    const auto same = [exactly](char left, char right) {
        return exactly ? left == right : small(left) == small(right);
    };
    for (auto from = line.begin(); !name.empty();) {
        const auto found = std::search(from, line.end(), name.begin(), name.end(), same);
        if (found == line.end())
            return false;
        if (standsAlone(line, static_cast<std::size_t>(found - line.begin()), name.size()))
            return true;
        from = found + 1;
    }
    return false;
}

} // namespace

int usualMinute(Hook hook)
{
    switch (hook) {
    case Hook::AfterTea:
        return 17 * 60 + 30;
    case Hook::BeforeBed:
        return 19 * 60;
    case Hook::AfterSchool:
        return 15 * 60 + 30;
    case Hook::AfterBath:
    case Hook::Own:
        break;
    }
    return 18 * 60 + 30;
}

bool namesSomebody(std::string_view line, std::span<const std::string> names)
{
    return std::ranges::any_of(names,
                               [line](const std::string &name) { return holds(line, name); });
}

} // namespace lidlark::reminder
