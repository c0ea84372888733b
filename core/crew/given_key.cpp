#include "core/crew/given_key.h"

#include "core/base/hex.h"
#include "core/crew/letters.h"
#include "core/crew/rights.h"
#include "core/journal/fields.h"

namespace lidlark::crew {

using journal::Event;

std::string fieldsOf(const GivenKey &given)
{
    return nlohmann::json{{"epoch", hexOf(given.epoch)}, {"given", jsonOf(given.letters)}}.dump();
}

std::optional<GivenKey> readGivenKey(const Event &event)
{
    if (event.kind != journal::Kind::Epoch)
        return std::nullopt;
    const journal::Fields fields(event.fields);
    const auto epoch = arrayFromHex<32>(fields.text("epoch").value_or(""));
    const auto letters = lettersIn(fields.json(), "given");
    if (!epoch || !letters)
        return std::nullopt;
    return GivenKey{*epoch, event.device, *letters};
}

std::vector<GivenKey> givenAmong(std::span<const Event> events, const Crew &crew)
{
    std::vector<GivenKey> all;
    for (const Event &event : events) {
        auto given = readGivenKey(event);
        const Member *by = crew.member(event.device);
        if (given && by != nullptr && by->role != Role::Guest && counts(crew, event))
            all.push_back(std::move(*given));
    }
    return all;
}

} // namespace lidlark::crew
