#include "core/sync/knock.h"

#include "core/base/hex.h"
#include "core/journal/fields.h"
#include "core/store/recording.h"
#include "core/sync/let_in.h"
#include "core/sync/own_secret.h"

#include <nlohmann/json.hpp>

namespace lidlark::sync {

namespace {

using Json = nlohmann::json;

constexpr auto joiningKey = "sync.joining";

/// What is kept while a phone waits: also the sealed answer, which is brought as it is.
struct Kept {
    JoinSecret secret;
    store::Device device;
    std::string answer;
};

Result<std::optional<Kept>> keptIn(store::Database &database)
{
    const auto text = store::DeviceRepository(database).localState(joiningKey);
    if (!text)
        return text.error();
    if (!*text)
        return std::optional<Kept>();
    const journal::Fields fields(**text);
    const auto secret = arrayFromHex<JoinSecret::size>(fields.text("secret").value_or(""));
    const auto answer = bytesFromHex(fields.text("answer").value_or(""));
    if (!secret || !answer)
        return Error{ErrorCode::Unreadable, "joining"};
    store::Device device{{fields.text("device").value_or("")},
                         fields.text("person").value_or(""),
                         store::Role::Guest,
                         {},
                         std::nullopt};
    return std::optional(Kept{JoinSecret(*secret), std::move(device), *answer});
}

Outcome keep(store::Database &database, const Kept &kept)
{
    const Json json{{"secret", hexOf(kept.secret.bytes())},
                    {"device", kept.device.id.value},
                    {"person", kept.device.person},
                    {"answer", hexOf(kept.answer)}};
    return store::DeviceRepository(database).setLocalState(joiningKey, json.dump());
}

/// The least there is, until whoever invites says more.
crew::Member newcomerOf(const store::Device &device, const crypto::DeviceSecret &secret,
                        const DeviceId &was, Day today)
{
    crew::Member newcomer = memberOf(device, secret);
    newcomer.role = crew::Role::Guest;
    newcomer.home = {};
    newcomer.until = today;
    newcomer.was = was;
    return newcomer;
}

/// Who it will be: a new id in an empty store, and its own where it must be let in anew.
Result<store::Device> deviceFor(store::Database &database, Entropy &entropy,
                                const std::string &person)
{
    const auto known = store::DeviceRepository(database).device();
    const auto former = formerId(database);
    if (!known || !former)
        return known ? former.error() : known.error();
    if (*known && former->empty())
        return Error{ErrorCode::Invalid, "store: somebody's already"};
    store::Device device = *known ? **known : store::Device{{entropy.freshId()}, {}, {}, {}, {}};
    device.person = person;
    return device;
}

Joining joiningOf(const Kept &kept, const crew::Member &member)
{
    return {kept.secret, kept.device, sameWords(member, kept.secret)};
}

} // namespace

Result<Joining> beginJoining(store::Database &database, const Clock &clock, Entropy &entropy,
                             SecretKeeper &keeper, const JoinSecret &secret,
                             const std::string &person)
{
    if (person.empty() || person.size() > longestAlias)
        return Error{ErrorCode::Invalid, "your name: empty or too long"};
    const auto before = keptIn(database);
    const auto today = store::todayOf(clock);
    const auto former = formerId(database);
    if (!before || !today || !former)
        return !before ? before.error() : today ? former.error() : today.error();
    const bool same = *before && (*before)->secret.equals(secret);
    const auto device =
        same ? Result<store::Device>((*before)->device) : deviceFor(database, entropy, person);
    if (!device)
        return device.error();
    const auto own = ownSecret(database, device->id, keeper, entropy);
    if (!own)
        return own.error();
    const crew::Member member = newcomerOf(*device, own->secret, *former, today->day);
    if (same)
        return joiningOf(**before, member);
    const Kept kept{secret, *device,
                    JoinRoom::seal(secret, "answer", crew::fieldsOf(member), entropy)};
    if (const Outcome done = keep(database, kept); !done)
        return done.error();
    return joiningOf(kept, member);
}

Result<std::optional<Joining>> joiningIn(store::Database &database)
{
    const auto kept = keptIn(database);
    if (!kept)
        return kept.error();
    if (!*kept)
        return std::optional<Joining>();
    return std::optional(Joining{(*kept)->secret, (*kept)->device, {}});
}

Result<Answer<Step>> goOnJoining(store::Database &database, const Clock &clock, Entropy &entropy,
                                 SecretKeeper &keeper, Storage &storage)
{
    const auto kept = keptIn(database);
    if (!kept)
        return kept.error();
    if (!*kept)
        return Error{ErrorCode::NotFound, "joining"};
    JoinRoom room((*kept)->secret, storage);
    const auto letter = room.read("welcome");
    if (const auto trouble = troubleIn(letter))
        return Answer<Step>(*trouble);
    if (!std::get<std::optional<std::string>>(letter)) {
        const auto left = room.leave("answer", (*kept)->answer, entropy);
        if (const auto trouble = troubleIn(left))
            return Answer<Step>(*trouble);
        return Answer<Step>(std::get<bool>(left) ? Step::Waiting : Step::Taken);
    }
    const auto own = ownSecret(database, (*kept)->device.id, keeper, entropy);
    if (!own)
        return own.error();
    const auto welcome = welcomeIn(*std::get<std::optional<std::string>>(letter), own->secret);
    if (!welcome)
        return Answer<Step>(Step::Taken); // a letter to somebody else
    Post post{database, clock, entropy, (*kept)->device, own->secret};
    if (const Outcome done = settleIn(post, *welcome); !done)
        return done.error();
    if (const Outcome done = giveUpJoining(database); !done)
        return done.error();
    (void)room.clear(); // whoever finds it cannot read it
    return Answer<Step>(Step::In);
}

Outcome giveUpJoining(store::Database &database)
{
    return store::DeviceRepository(database).clearLocalState(joiningKey);
}

} // namespace lidlark::sync
