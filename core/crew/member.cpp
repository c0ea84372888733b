#include "core/crew/member.h"

#include "core/base/hex.h"
#include "core/journal/fields.h"

namespace lidlark::crew {

using journal::Event;
using journal::Fields;
using journal::Kind;

std::string fieldsOf(const Member &member)
{
    nlohmann::json fields{{"device", member.device.value},     {"person", member.person},
                          {"role", roleNames.of(member.role)}, {"home", member.home.value},
                          {"signer", hexOf(member.signer)},    {"letters", hexOf(member.letters)}};
    if (member.until)
        fields["until"] = toText(*member.until);
    if (member.paper) {
        fields["paper"] = true;
        fields["folder"] = member.folder;
    }
    if (!member.was.empty())
        fields["was"] = member.was.value;
    return fields.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

std::string fieldsOf(const Removal &removal)
{
    nlohmann::json accepted = nlohmann::json::object();
    for (const auto &[lane, counter] : removal.accepted)
        accepted[toText(lane)] = counter;
    return nlohmann::json{{"device", removal.device.value}, {"accepted", accepted}}.dump();
}

std::optional<Member> memberFrom(const std::string &text)
{
    const Fields fields(text);
    const auto device = fields.text("device");
    const auto role = roleNames.parse(fields.text("role").value_or(""));
    const auto signer = arrayFromHex<32>(fields.text("signer").value_or(""));
    const auto letters = arrayFromHex<32>(fields.text("letters").value_or(""));
    if (!device || device->empty() || !role || !signer || !letters)
        return std::nullopt;
    Member member{{*device},    fields.text("person").value_or(""),
                  *role,        {fields.text("home").value_or("")},
                  *signer,      *letters,
                  std::nullopt, fields.isTrue("paper"),
                  {},           {fields.text("was").value_or("")}};
    if (member.paper)
        member.folder = fields.text("folder").value_or("");
    if (const auto until = fields.text("until"))
        member.until = dayFromText(*until);
    // A guest without a last day would stay for ever.
    if (member.role == Role::Guest && !member.until)
        return std::nullopt;
    return member;
}

std::optional<Removal> removalFrom(const std::string &text)
{
    const Fields fields(text);
    const auto device = fields.text("device");
    if (!device || device->empty())
        return std::nullopt;
    Removal removal{{*device}, {}};
    const auto accepted = fields.json().find("accepted");
    if (accepted == fields.json().end() || !accepted->is_object())
        return removal;
    for (const auto &[name, counter] : accepted->items()) {
        const auto lane = journal::laneFromText(name);
        if (lane && counter.is_number_unsigned())
            removal.accepted[*lane] = counter.get<std::uint64_t>();
    }
    return removal;
}

std::optional<Member> readMember(const Event &event)
{
    return event.kind == Kind::Member ? memberFrom(event.fields) : std::nullopt;
}

std::optional<Removal> readRemoval(const Event &event)
{
    return event.kind == Kind::MemberRemoved ? removalFrom(event.fields) : std::nullopt;
}

} // namespace lidlark::crew
