#include "core/journal/erasure.h"

#include "core/journal/fields.h"

namespace lidlark::journal {

std::string fieldsOf(const Erasure &erasure)
{
    nlohmann::json fields = nlohmann::json::object();
    if (erasure.upTo)
        fields["up-to"] = toText(*erasure.upTo);
    if (!erasure.events.empty())
        fields["events"] = erasure.events;
    return fields.dump();
}

std::optional<Erasure> readErasure(const Event &event)
{
    if (event.kind != Kind::Erased)
        return std::nullopt;
    const Fields fields(event.fields);
    Erasure erasure;
    if (const auto day = fields.text("up-to"))
        erasure.upTo = dayFromText(*day);
    const auto events = fields.json().find("events");
    if (events != fields.json().end() && events->is_array()) {
        for (const auto &identity : *events) {
            if (identity.is_string())
                erasure.events.insert(identity.get<std::string>());
        }
    }
    if (!erasure.upTo && erasure.events.empty())
        return std::nullopt;
    return erasure;
}

bool canBeErased(Kind kind)
{
    switch (kind) {
    case Kind::Met:
    case Kind::Member:
    case Kind::MemberRemoved:
    case Kind::Epoch:
    case Kind::Erased:
    case Kind::Sharing: // who erases what was played has neither agreed nor withdrawn by it
        return false;
    default:
        return true;
    }
}

bool covers(const Erasure &erasure, const Event &event)
{
    if (!canBeErased(event.kind))
        return false;
    if (erasure.upTo && event.when.day <= *erasure.upTo)
        return true;
    // An identity is a hash of the whole event: not worked out for each one of a lane for nothing.
    return !erasure.events.empty() && erasure.events.contains(identityOf(event));
}

} // namespace lidlark::journal
