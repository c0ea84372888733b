#include "core/sync/welcome.h"

#include "core/base/hex.h"
#include "core/sync/squeeze.h"

#include <nlohmann/json.hpp>

namespace lidlark::sync {

namespace {

using Json = nlohmann::json;

constexpr std::size_t largestWelcome = 8'000'000; ///< Bytes before they are compressed.
constexpr std::size_t sizeDigits = 8;

/// The size first: nobody unpacks more than is said.
std::string packed(const std::string &text)
{
    std::string size = std::to_string(text.size());
    return std::string(sizeDigits - size.size(), '0') + size + squeezed(text);
}

std::optional<std::string> unpacked(const std::string &bytes)
{
    std::size_t size = 0;
    if (bytes.size() < sizeDigits)
        return std::nullopt;
    for (std::size_t i = 0; i < sizeDigits; ++i) {
        if (bytes[i] < '0' || bytes[i] > '9')
            return std::nullopt;
        size = size * 10 + static_cast<std::size_t>(bytes[i] - '0');
    }
    if (size > largestWelcome)
        return std::nullopt;
    return unsqueezed(std::string_view(bytes).substr(sizeDigits), size);
}

std::string textAt(const Json &object, const char *name)
{
    const auto found = object.find(name);
    return found != object.end() && found->is_string() ? found->get<std::string>() : std::string();
}

std::optional<Welcome::Key> keyFrom(const Json &entry)
{
    if (!entry.is_object())
        return std::nullopt;
    const auto epoch = arrayFromHex<32>(textAt(entry, "epoch"));
    const auto lane = journal::laneFromText(textAt(entry, "lane"));
    const auto key = arrayFromHex<32>(textAt(entry, "key"));
    if (!epoch || !lane || !key)
        return std::nullopt;
    return Welcome::Key{*epoch, *lane, {textAt(entry, "writer")}, crypto::EpochKey(*key)};
}

std::optional<Welcome> welcomeFrom(const Json &json)
{
    if (!json.is_object() || !json.contains("keys") || !json["keys"].is_array() ||
        !json.contains("events") || !json["events"].is_array())
        return std::nullopt;
    auto member = crew::memberFrom(textAt(json, "member"));
    Welcome welcome{textAt(json, "box"), {}, {}, {}};
    if (!member || welcome.box.empty())
        return std::nullopt;
    welcome.member = *std::move(member);
    for (const Json &line : json["events"]) {
        auto event = line.is_string() ? journal::eventFromText(line.get<std::string>())
                                      : Result<journal::Event>(Error{ErrorCode::Unreadable, ""});
        if (!event)
            return std::nullopt;
        welcome.events.push_back(*std::move(event));
    }
    for (const Json &entry : json["keys"]) {
        auto key = keyFrom(entry);
        if (!key)
            return std::nullopt;
        welcome.keys.push_back(*std::move(key));
    }
    return welcome;
}

} // namespace

std::string letterOf(const Welcome &welcome, Entropy &entropy)
{
    Json events = Json::array();
    for (const journal::Event &event : welcome.events)
        events.push_back(journal::canonicalText(event));
    Json keys = Json::array();
    for (const Welcome::Key &key : welcome.keys)
        keys.push_back({{"epoch", hexOf(key.epoch)},
                        {"lane", toText(key.lane)},
                        {"writer", key.writer.value},
                        {"key", hexOf(key.key.bytes())}});
    const Json json{{"box", welcome.box},
                    {"member", crew::fieldsOf(welcome.member)},
                    {"events", events},
                    {"keys", keys}};
    const std::string text = json.dump(-1, ' ', false, Json::error_handler_t::replace);
    return crypto::letterTo(welcome.member.letters, packed(text), freshSecret(entropy));
}

std::optional<Welcome> welcomeIn(std::string_view letter, const crypto::DeviceSecret &secret)
{
    const auto bytes = crypto::letterOpened(letter, crypto::letterSeedOf(secret));
    const auto text = bytes ? unpacked(*bytes) : std::nullopt;
    return text ? welcomeFrom(Json::parse(*text, nullptr, false)) : std::nullopt;
}

} // namespace lidlark::sync
