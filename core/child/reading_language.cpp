#include "core/child/reading_language.h"

#include "core/journal/fields.h"
#include "core/journal/latest.h"

#include <algorithm>

namespace lidlark::child {

bool isLanguageCode(std::string_view code)
{
    const bool letters = std::all_of(code.begin(), code.end(),
                                     [](char letter) { return letter >= 'a' && letter <= 'z'; });
    return letters && (code.size() == 2 || code.size() == 3);
}

std::string fieldsOf(const ReadingLanguage &reading)
{
    return nlohmann::json{{"language", reading.language}, {"person", reading.person}}.dump();
}

std::optional<ReadingLanguage> foldReadingLanguage(std::span<const journal::Event> events,
                                                   const journal::Seen &seen)
{
    const journal::Event *latest = journal::latestOf(events, journal::Kind::Reads, seen);
    if (latest == nullptr)
        return std::nullopt;
    const journal::Fields fields(latest->fields);
    ReadingLanguage reading{fields.text("person").value_or(""),
                            fields.text("language").value_or("")};
    if (reading.person.empty() || !isLanguageCode(reading.language))
        return std::nullopt;
    return reading;
}

} // namespace lidlark::child
