#include "core/box/revision_why.h"

#include "core/journal/fields.h"

#include <nlohmann/json.hpp>

namespace lidlark::box {

std::string withWhy(const std::string &fields, const std::string &why)
{
    if (why.empty())
        return fields;
    auto json = nlohmann::json::parse(fields);
    json["why"] = why;
    return json.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

std::string whyOf(const journal::Event &event)
{
    if (event.kind != journal::Kind::Revision)
        return {};
    const auto why = journal::Fields(event.fields).text("why");
    return why && why->size() <= longestWhy ? *why : std::string();
}

} // namespace lidlark::box
