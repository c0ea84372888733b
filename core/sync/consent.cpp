#include "core/sync/consent.h"

#include "core/journal/fields.h"
#include "core/store/device_repository.h"

#include <nlohmann/json.hpp>

namespace lidlark::sync {

namespace {

using Json = nlohmann::json;

constexpr auto consentKey = "crew.consent";

Result<Json> keptIn(store::Database &database)
{
    const auto text = store::DeviceRepository(database).localState(consentKey);
    if (!text)
        return text.error();
    Json json = *text ? Json::parse(**text, nullptr, false) : Json();
    return json.is_object() ? json : Json();
}

} // namespace

Result<std::optional<Consent>> consentIn(store::Database &database)
{
    const auto json = keptIn(database);
    if (!json)
        return json.error();
    const journal::Fields kept(json->dump());
    const auto day = dayFromText(kept.text("day").value_or(""));
    if (!day || json->contains("withdrawn"))
        return std::optional<Consent>();
    const int wording = kept.whole("wording", 0, consentWording).value_or(0);
    return std::optional(Consent{kept.text("person").value_or(""), *day, wording});
}

Outcome consentToSharing(store::Database &database, const Consent &consent)
{
    if (consent.person.empty())
        return Error{ErrorCode::Invalid, "your name: empty"};
    const Json json{
        {"person", consent.person}, {"day", toText(consent.day)}, {"wording", consent.wording}};
    return store::DeviceRepository(database).setLocalState(consentKey, json.dump());
}

Outcome withdrawConsent(store::Database &database, Day today)
{
    auto json = keptIn(database);
    if (!json)
        return json.error();
    if (!json->is_object())
        return Done{};
    (*json)["withdrawn"] = toText(today);
    return store::DeviceRepository(database).setLocalState(consentKey, json->dump());
}

} // namespace lidlark::sync
