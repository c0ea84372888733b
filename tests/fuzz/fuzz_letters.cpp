#include "tests/core/sync/segment_samples.h"
#include "tests/fuzz/target.h"

#include "core/crypto/device_keys.h"
#include "core/crypto/keyed_hash.h"
#include "core/sync/bundle_storage.h"
#include "core/sync/join_room.h"
#include "core/sync/squeeze.h"
#include "core/sync/welcome.h"

#include <algorithm>

namespace lidlark::fuzz {

namespace {

using sync::Welcome;

constexpr std::size_t sizeDigits = 8;

crypto::DeviceSecret secret()
{
    return crypto::DeviceSecret(samples::filled(0x44));
}

const crypto::LetterKey &letterKey()
{
    static const crypto::LetterKey key = crypto::letterKeyOf(crypto::letterSeedOf(secret()));
    return key;
}

std::string letterWith(std::string_view inside)
{
    return crypto::letterTo(letterKey(), inside, crypto::LetterSeed(samples::filled(0x55)));
}

bool isSame(const Welcome::Key &one, const Welcome::Key &other)
{
    return one.epoch == other.epoch && one.lane == other.lane && one.writer == other.writer &&
           one.key.equals(other.key);
}

void readWelcome(std::string_view letter)
{
    auto welcome = sync::welcomeIn(letter, secret());
    if (!welcome)
        return;
    welcome->member.letters = letterKey(); // whoever is let in may have another one
    SeededEntropy entropy("welcome");
    const auto again = sync::welcomeIn(letterOf(*welcome, entropy), secret());
    must(again && again->box == welcome->box && again->member == welcome->member &&
             again->events == welcome->events &&
             std::ranges::equal(again->keys, welcome->keys, isSame),
         "a welcome is read as it was written");
}

/// The answer of a phone that knocks, as whoever has the code can leave it.
void readAnswer(std::string_view bytes)
{
    const sync::JoinSecret code(std::array<std::uint8_t, sync::JoinSecret::size>{7});
    sync::Bundle lying;
    const Digest name = crypto::keyedHash(sync::joinSealKey(code), "lidlark join 1\nanswer");
    lying[{sync::joinFolder(code), hexOf(name)}] = bytes;
    sync::BundleStorage storage(lying);
    const auto answer = sync::JoinRoom(code, storage).read("answer");
    const auto &text = std::get<std::optional<std::string>>(answer);
    const auto member = text ? crew::memberFrom(*text) : std::nullopt;
    if (!member)
        return;
    must(crew::memberFrom(crew::fieldsOf(*member)) == member, "a member is read as written");
}

std::string sealedAnswer(std::string_view text)
{
    SeededEntropy entropy("answer");
    return sync::JoinRoom::seal(
        sync::JoinSecret(std::array<std::uint8_t, sync::JoinSecret::size>{7}), "answer", text,
        entropy);
}

} // namespace

void letters(std::string_view bytes)
{
    readWelcome(bytes);
    readAnswer(bytes);
    readWelcome(letterWith(bytes));
    std::string size = std::to_string(bytes.size());
    size.insert(0, sizeDigits - size.size(), '0');
    readWelcome(letterWith(size + sync::squeezed(bytes)));
    readAnswer(sealedAnswer(bytes));
}

} // namespace lidlark::fuzz
