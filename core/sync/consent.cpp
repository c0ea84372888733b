#include "core/sync/consent.h"

#include "core/journal/fields.h"
#include "core/store/device_repository.h"

#include <nlohmann/json.hpp>

namespace lidlark::sync {

namespace {

using Json = nlohmann::json;

constexpr auto consentKey = "crew.consent";

} // namespace

Result<std::optional<Consent>> consentIn(store::Database &database)
{
    const auto text = store::DeviceRepository(database).localState(consentKey);
    if (!text)
        return text.error();
    const journal::Fields kept(text->value_or(""));
    const auto day = dayFromText(kept.text("day").value_or(""));
    if (!day || kept.json().contains("withdrawn"))
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
    store::DeviceRepository local(database);
    const auto text = local.localState(consentKey);
    if (!text)
        return text.error();
    Json json = journal::Fields(text->value_or("")).json();
    if (json.empty())
        return Done{};
    json["withdrawn"] = toText(today);
    return local.setLocalState(consentKey, json.dump());
}

} // namespace lidlark::sync
