#pragma once

#include "core/journal/event.h"
#include "core/journal/seen.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace lidlark::child {

/// The language in which somebody of the home reads the app: theirs on every phone of the home.
struct ReadingLanguage {
    std::string person;   ///< The alias under which they write.
    std::string language; ///< ISO 639-1 or 639-3, "ur".
    bool operator==(const ReadingLanguage &) const = default;
};

/// Two or three small letters of ASCII.
bool isLanguageCode(std::string_view code);

std::string fieldsOf(const ReadingLanguage &reading);

/// A register (events.md 3): seen first, then instant, device, counter. What is no language code
/// has no effect.
std::optional<ReadingLanguage> foldReadingLanguage(std::span<const journal::Event> events,
                                                   const journal::Seen &seen);

} // namespace lidlark::child
