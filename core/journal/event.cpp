#include "core/journal/event.h"

#include "core/journal/bounded_json.h"

#include <nlohmann/json.hpp>

namespace lidlark::journal {

namespace {

using Json = nlohmann::json; // keys of an object are kept sorted

constexpr std::int64_t largestMs = 32'503'680'000'000; // the year 3000

Error unreadable(const std::string &field)
{
    return {ErrorCode::Unreadable, "event: " + field};
}

Json toJson(const Event &event)
{
    return {{"author", event.author},           {"counter", event.counter},
            {"day", toText(event.when.day)},    {"device", event.device.value},
            {"fields", readJson(event.fields)}, {"instant", event.instant.ms},
            {"kind", kindNames.of(event.kind)}, {"lane", toText(event.lane)},
            {"logical", event.instant.logical}, {"offset", event.offsetMinutes},
            {"part", toText(event.when.part)}};
}

std::optional<std::string> textAt(const Json &object, const char *key)
{
    const auto found = object.find(key);
    if (found == object.end() || !found->is_string())
        return std::nullopt;
    return found->get<std::string>();
}

std::optional<std::int64_t> wholeAt(const Json &object, const char *key, std::int64_t least,
                                    std::int64_t most)
{
    const auto found = object.find(key);
    if (found == object.end() || !found->is_number_integer())
        return std::nullopt;
    if (found->is_number_unsigned() && found->get<std::uint64_t>() > INT64_MAX)
        return std::nullopt;
    const auto value = found->get<std::int64_t>();
    return value >= least && value <= most ? std::optional(value) : std::nullopt;
}

Result<Event> readWords(const Json &object, Event event)
{
    const auto lane = textAt(object, "lane");
    const auto parsedLane = lane ? laneFromText(*lane) : std::nullopt;
    const auto device = textAt(object, "device");
    const auto author = textAt(object, "author");
    const auto kind = textAt(object, "kind");
    const auto parsedKind = kind ? kindNames.parse(*kind) : std::nullopt;
    if (!parsedLane)
        return unreadable("lane");
    if (!device || device->empty())
        return unreadable("device");
    if (!author)
        return unreadable("author");
    if (!parsedKind)
        return unreadable("kind");
    event.lane = *parsedLane;
    event.device = {*device};
    event.author = *author;
    event.kind = *parsedKind;
    return event;
}

Result<Event> readNumbers(const Json &object, Event event)
{
    const auto counter = wholeAt(object, "counter", 1, INT64_MAX);
    const auto ms = wholeAt(object, "instant", 0, largestMs);
    const auto logical = wholeAt(object, "logical", 0, UINT32_MAX);
    const auto offset = wholeAt(object, "offset", -14L * 60, 14L * 60);
    const auto day = textAt(object, "day");
    const auto parsedDay = day ? dayFromText(*day) : std::nullopt;
    const auto part = textAt(object, "part");
    const auto parsedPart = part ? partOfDayFromText(*part) : std::nullopt;
    if (!counter)
        return unreadable("counter");
    if (!ms || !logical)
        return unreadable("instant");
    if (!offset)
        return unreadable("offset");
    if (!parsedDay || !parsedPart)
        return unreadable("day");
    event.counter = static_cast<std::uint64_t>(*counter);
    event.instant = {*ms, static_cast<std::uint32_t>(*logical)};
    event.offsetMinutes = static_cast<int>(*offset);
    event.when = {*parsedDay, *parsedPart};
    return event;
}

/// Whether objects and lists lie in one another deeper than any event needs; brackets within words
/// are none.
bool isTooDeep(std::string_view text)
{
    int depth = 0;
    bool inWord = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char letter = text[i];
        if (letter == '"')
            inWord = !inWord;
        else if (inWord)
            i += letter == '\\' ? 1 : 0;
        else if (letter == '[' || letter == '{')
            ++depth;
        else if (letter == ']' || letter == '}')
            --depth;
        if (depth > jsonLevels)
            return true;
    }
    return false;
}

/// "item:" and the value of fields.item, for the kinds whose subject is one of their fields.
std::string subjectFrom(const Event &event, std::string_view sort,
                        std::initializer_list<const char *> keys)
{
    const Json fields = readJson(event.fields);
    std::string subject(sort);
    char separator = ':';
    for (const char *key : keys) {
        subject += separator;
        if (fields.is_object())
            subject += textAt(fields, key).value_or("");
        separator = '/';
    }
    return subject;
}

/// A TakenBack belongs to the subject of the event that it names.
std::string aboutOf(const Event &event)
{
    const Json fields = readJson(event.fields);
    const auto about = fields.is_object() ? textAt(fields, "about") : std::nullopt;
    return about ? *about : std::string(kindNames.of(event.kind));
}

} // namespace

std::string canonicalText(const Event &event)
{
    // Text that is not UTF-8 is replaced, never thrown over: identities must exist for all input.
    return toJson(event).dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::string identityOf(const Event &event)
{
    return hexOf(blake2b(canonicalText(event)));
}

Result<Event> eventFromText(const std::string &text)
{
    if (isTooDeep(text))
        return unreadable("too deep");
    const Json object = Json::parse(text, nullptr, false); // its depth is known by now
    if (!object.is_object())
        return unreadable("not JSON");
    Result<Event> event = readWords(object, Event{});
    if (event)
        event = readNumbers(object, *event);
    if (!event)
        return event;
    const auto fields = object.find("fields");
    if (fields == object.end() || !fields->is_object())
        return unreadable("fields");
    event->fields = fields->dump(-1, ' ', false, Json::error_handler_t::replace);
    if (canonicalText(*event) != text)
        return unreadable("not in canonical form");
    return event;
}

std::string subjectOf(const Event &event)
{
    switch (event.kind) {
    case Kind::Outcome:
    case Kind::Exception:
    case Kind::Found:
    case Kind::Count:
    case Kind::FloorChecked:
    case Kind::Opened:
    case Kind::LeftOpen:
    case Kind::Checked:
    case Kind::Limit:
    case Kind::Hygiene:
    case Kind::TakenOut:
    case Kind::Request:
    case Kind::CountedIn:
    case Kind::Answer:
        return subjectFrom(event, "item", {"item"});
    case Kind::PlayStarted:
    case Kind::PlayEnded:
    case Kind::Reaction:
        return subjectFrom(event, "play", {"play"});
    case Kind::Fact:
        return subjectFrom(event, "fact", {"person", "fact"});
    case Kind::Permission:
        return subjectFrom(event, "permission", {"name"});
    case Kind::Offered:
        return subjectFrom(event, "offered", {"child", "activity"});
    case Kind::CheckIn:
        return subjectFrom(event, "check-in", {"child", "id"});
    case Kind::Goal:
    case Kind::GoalRated:
        return subjectFrom(event, "goal", {"id"});
    case Kind::VideoPlan:
    case Kind::HaveReady:
        return subjectFrom(event, "video-plan", {"plan"});
    case Kind::Supply:
        return subjectFrom(event, "supply", {"item"});
    case Kind::Design:
        return subjectFrom(event, "design", {"id"});
    case Kind::Build:
    case Kind::PackMark:
        return subjectFrom(event, "build", {"build"});
    case Kind::BoxStatus:
        return subjectFrom(event, "box-status", {"box"});
    case Kind::OwnActivity:
        return subjectFrom(event, "own-activity", {"id"});
    case Kind::OwnItem:
        return subjectFrom(event, "own-item", {"id"});
    case Kind::OwnEntry:
        return subjectFrom(event, "own-entry", {"id"});
    case Kind::Sharing:
        return subjectFrom(event, "sharing", {"child"});
    case Kind::Grading:
        return subjectFrom(event, "grading", {"child", "activity"});
    case Kind::GradingPin:
        return subjectFrom(event, "grading-pin", {"activity"});
    case Kind::Planned:
        return subjectFrom(event, "planned", {"child", "day"});
    case Kind::Reads:
        return subjectFrom(event, "reads", {"person"});
    case Kind::OurWay:
        return subjectFrom(event, "our-way", {"child", "activity"});
    case Kind::Note:
    case Kind::NoteSent:
        return subjectFrom(event, "note", {"id"});
    case Kind::TakenBack:
        return aboutOf(event);
    case Kind::Member:
    case Kind::MemberRemoved:
        return "members";
    case Kind::Epoch:
        return "epochs";
    case Kind::Met:
    case Kind::Child:
    case Kind::Revision:
    case Kind::Place:
    case Kind::Erased:
        break;
    }
    return std::string(kindNames.of(event.kind));
}

} // namespace lidlark::journal
