#include "core/play/sharing.h"

#include "core/crypto/keyed_hash.h"
#include "core/journal/fields.h"
#include "core/journal/latest.h"

#include <algorithm>

namespace lidlark::play {

using journal::Event;
using journal::Fields;
using journal::Kind;

namespace {

std::optional<CopyKey> keyIn(const Event &event)
{
    const Fields fields(event.fields);
    const auto bytes = arrayFromHex<CopyKey::size>(fields.text("key").value_or(""));
    return fields.isTrue("yes") && bytes ? std::optional(CopyKey(*bytes)) : std::nullopt;
}

/// Whether a word that nobody has replaced says no, or nothing that can be read.
bool anyNo(std::span<const Event> events, const journal::Seen &seen)
{
    return std::ranges::any_of(events, [&](const Event &event) {
        const bool replaced = std::ranges::any_of(events, [&](const Event &later) {
            return later.kind == Kind::Sharing && seen.saw(later, event);
        });
        return event.kind == Kind::Sharing && !replaced && !keyIn(event);
    });
}

} // namespace

std::string fieldsOfSharing(const ChildId &child, const CopyKey &key)
{
    return nlohmann::json{{"child", child.value}, {"key", hexOf(key.bytes())}, {"yes", true}}
        .dump();
}

std::string fieldsOfNotSharing(const ChildId &child)
{
    return nlohmann::json{{"child", child.value}, {"yes", false}}.dump();
}

std::optional<Sharing> foldSharing(std::span<const Event> events, const journal::Seen &seen)
{
    const Event *latest = journal::latestOf(events, Kind::Sharing, seen);
    if (latest == nullptr)
        return std::nullopt;
    Sharing sharing{false, latest->author, latest->when.day, latest->instant, {}};
    const auto key = keyIn(*latest);
    if (key && !anyNo(events, seen)) {
        sharing.yes = true;
        sharing.key = *key;
    }
    return sharing;
}

std::optional<Copy> copyOf(const Play &play, const std::optional<Sharing> &sharing)
{
    const bool ended = play.ending && *play.ending != Ending::Stopped;
    if (!sharing || !sharing->yes || !ended || play.startedAt.ms < sharing->since.ms)
        return std::nullopt;
    const Digest id = crypto::keyedHash(sharing->key, play.id.value);
    return Copy{{hexOf(std::span(id).first(16))}, // as long as every other play's
                play.child,
                play.activity,
                play.version,
                play.when,
                play.phrases};
}

} // namespace lidlark::play
