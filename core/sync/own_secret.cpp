#include "core/sync/own_secret.h"

#include "core/base/hex.h"
#include "core/store/crew_repository.h"
#include "core/store/segment_repository.h"
#include "core/sync/hand_on.h"

#include <charconv>

namespace lidlark::sync {

namespace {

constexpr auto markKey = "sync.mark";
constexpr auto formerKey = "sync.was";

std::string secretName(const DeviceId &device)
{
    return "device." + device.value;
}

std::string markName(const DeviceId &device)
{
    return "mark." + device.value;
}

std::uint64_t numberIn(const std::optional<std::string> &text)
{
    std::uint64_t number = 0;
    if (text)
        std::from_chars(text->data(), text->data() + text->size(), number);
    return number;
}

Result<std::uint64_t> markOfStore(store::Database &database)
{
    const auto mark = store::DeviceRepository(database).localState(markKey);
    if (!mark)
        return mark.error();
    return numberIn(*mark);
}

Result<OwnSecret> freshOne(const DeviceId &device, SecretKeeper &keeper, Entropy &entropy)
{
    const crypto::DeviceSecret secret = freshSecret(entropy);
    if (const Outcome kept = keeper.keep(secretName(device), hexOf(secret.bytes())); !kept)
        return kept.error();
    return OwnSecret{secret, Match::Well};
}

} // namespace

Result<OwnSecret> ownSecret(store::Database &database, const DeviceId &device, SecretKeeper &keeper,
                            Entropy &entropy)
{
    const auto kept = keeper.read(secretName(device));
    const auto mark = keeper.read(markName(device));
    const auto own = markOfStore(database);
    if (!kept || !mark || !own)
        return !kept ? kept.error() : mark ? own.error() : mark.error();
    if (!*kept && *own == 0)
        return freshOne(device, keeper, entropy);
    const auto bytes = arrayFromHex<crypto::DeviceSecret::size>(kept->value_or(""));
    if (!bytes)
        return OwnSecret{{}, Match::Strange};
    return OwnSecret{crypto::DeviceSecret(*bytes),
                     *own < numberIn(*mark) ? Match::Restored : Match::Well};
}

Outcome moveMarkOn(store::Database &database, const DeviceId &device, SecretKeeper &keeper)
{
    const auto own = markOfStore(database);
    if (!own)
        return own.error();
    const std::string next = std::to_string(*own + 1);
    // The store first: cut off between the two, it is ahead, which a backup never is.
    if (Outcome kept = store::DeviceRepository(database).setLocalState(markKey, next); !kept)
        return kept;
    return keeper.keep(markName(device), next);
}

Outcome takeNewId(Post &post, SecretKeeper &keeper)
{
    const DeviceId former = post.device.id;
    store::Device device = post.device;
    device.id = {post.entropy.freshId()};
    const auto fresh = freshOne(device.id, keeper, post.entropy);
    if (!fresh)
        return fresh.error();
    const auto crews = store::CrewRepository(post.database).all();
    Result<store::Transaction> transaction = store::Transaction::begin(post.database);
    if (!crews || !transaction)
        return crews ? transaction.error() : crews.error();
    store::DeviceRepository local(post.database);
    if (Outcome done = local.setDevice(device); !done)
        return done;
    if (Outcome done = local.setLocalState(formerKey, former.value); !done)
        return done;
    if (Outcome done = local.setLocalState(markKey, "0"); !done)
        return done;
    if (Outcome done = store::SegmentRepository(post.database).forgetWaiting(former); !done)
        return done;
    for (const auto &[box, crew] : *crews) {
        if (Outcome done = askToHandOn(post, box); !done)
            return done;
    }
    if (Outcome done = transaction->commit(); !done)
        return done;
    post.device = device;
    post.secret = fresh->secret;
    return Done{};
}

Result<DeviceId> formerId(store::Database &database)
{
    const auto former = store::DeviceRepository(database).localState(formerKey);
    if (!former)
        return former.error();
    return DeviceId{former->value_or("")};
}

} // namespace lidlark::sync
