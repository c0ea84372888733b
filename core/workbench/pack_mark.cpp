#include "core/workbench/pack_mark.h"

#include "core/journal/fields.h"
#include "core/workbench/standing.h"

#include <algorithm>
#include <tuple>

namespace lidlark::workbench {

namespace {

using journal::Event;
using journal::Fields;
using Json = nlohmann::json;

std::set<std::string> identitiesAt(const Json &list)
{
    std::set<std::string> identities;
    if (!list.is_array())
        return identities;
    for (const Json &one : list) {
        if (one.is_string())
            identities.insert(one.get<std::string>());
    }
    return identities;
}

std::vector<PackedBy> packedBy(const std::vector<const Event *> &said, const journal::Seen &seen)
{
    std::vector<PackedBy> packed;
    for (const Event *event : standingOf(said, seen)) {
        const MarkSaid mark = *readMark(*event);
        if (mark.mark == Mark::NotPacked)
            return {};
        packed.push_back(
            {journal::identityOf(*event), event->author, mark.pieces, mark.hand, mark.lot});
    }
    std::ranges::sort(packed, {}, &PackedBy::identity);
    return packed;
}

std::string plainName(const std::string &name)
{
    std::string plain;
    for (const char letter : name) {
        if (letter != ' ' && letter != '\t')
            plain +=
                letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
    }
    return plain;
}

} // namespace

std::string fieldsOf(const MarkSaid &said)
{
    Json object{{"build", said.build.value},
                {"box", said.box},
                {"item", said.item.value},
                {"mark", markNames.of(said.mark)}};
    if (said.mark == Mark::Packed) {
        object["pieces"] = said.pieces;
        object["hand"] = handNames.of(said.hand);
        object["lot"] = said.lot;
    }
    if (said.mark == Mark::SecondLook)
        object["of"] = said.of;
    return object.dump();
}

std::optional<MarkSaid> readMark(const Event &event)
{
    if (event.kind != journal::Kind::PackMark)
        return std::nullopt;
    const Fields fields(event.fields);
    const auto box = fields.text("box");
    const auto item = fields.text("item");
    const auto mark = markNames.parse(fields.text("mark").value_or(""));
    if (!box || box->empty() || !item || item->empty() || !mark)
        return std::nullopt;
    MarkSaid said{{fields.text("build").value_or("")}, *box, {*item}, *mark};
    if (*mark == Mark::Packed) {
        const auto pieces = fields.whole("pieces", 1, mostPiecesInBox);
        const auto hand = handNames.parse(fields.text("hand").value_or("unsaid"));
        if (!pieces || !hand)
            return std::nullopt;
        said.pieces = *pieces;
        said.hand = *hand;
        said.lot = fields.text("lot").value_or("");
    }
    if (*mark == Mark::SecondLook)
        said.of = identitiesAt(fields.json().value("of", Json::array()));
    return said;
}

Marks foldMarks(std::span<const Event> events, const journal::Seen &seen)
{
    std::map<LineKey, std::vector<const Event *>> packing;
    Marks marks;
    for (const Event &event : events) {
        const auto said = readMark(event);
        if (!said)
            continue;
        const LineKey line{said->box, said->item};
        if (said->mark == Mark::SecondLook)
            marks[line].looks.push_back({event.author, said->of});
        else
            packing[line].push_back(&event);
    }
    for (const auto &[line, said] : packing)
        marks[line].packed = packedBy(said, seen);
    for (auto &[line, of] : marks) {
        std::ranges::sort(of.looks, [](const LookedBy &a, const LookedBy &b) {
            return std::tie(a.who, a.of) < std::tie(b.who, b.of);
        });
        // The same look twice, said on two phones, is one.
        const auto twice = std::ranges::unique(of.looks);
        of.looks.erase(twice.begin(), twice.end());
    }
    return marks;
}

bool isSamePerson(const std::string &a, const std::string &b)
{
    return plainName(a) == plainName(b);
}

} // namespace lidlark::workbench
