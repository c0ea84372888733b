#include "core/crew/letters.h"

#include "core/base/hex.h"

namespace lidlark::crew {

nlohmann::json jsonOf(const Letters &letters)
{
    nlohmann::json json = nlohmann::json::object();
    for (const auto &[device, letter] : letters)
        json[device.value] = hexOf(letter);
    return json;
}

std::optional<Letters> lettersIn(const nlohmann::json &json, const std::string &name)
{
    const auto found = json.find(name);
    if (found == json.end() || !found->is_object())
        return std::nullopt;
    Letters letters;
    for (const auto &[device, letter] : found->items()) {
        const auto bytes =
            letter.is_string() ? bytesFromHex(letter.get<std::string>()) : std::nullopt;
        if (!bytes)
            return std::nullopt;
        letters[{device}] = *bytes;
    }
    return letters;
}

} // namespace lidlark::crew
