#include "core/sync/join_code.h"

#include "core/base/digest.h"
#include "core/crypto/keyed_hash.h"
#include "core/sync/join_check.h"
#include "core/sync/join_words.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

constexpr unsigned wordBits = 10;
constexpr unsigned wordMask = (1U << wordBits) - 1;
static_assert(joinWordCount == wordMask + 1);
static_assert(JoinSecret::size * 8 == (joinCodeWords - 1) * wordBits);

/// The secret as a key for the keyed hash: zeros after it.
crypto::Secret<32> rootOf(const JoinSecret &secret)
{
    std::array<std::uint8_t, 32> bytes{};
    std::ranges::copy(secret.bytes(), bytes.begin());
    return crypto::Secret<32>(bytes);
}

} // namespace

JoinSecret freshJoinSecret(Entropy &entropy)
{
    const auto chance = entropy.sixteenBytes();
    std::array<std::uint8_t, JoinSecret::size> bytes{};
    std::copy_n(chance.begin(), bytes.size(), bytes.begin());
    return JoinSecret(bytes);
}

JoinNumbers numbersOf(const JoinSecret &secret)
{
    JoinNumbers numbers{};
    unsigned waiting = 0;
    unsigned bits = 0;
    auto next = numbers.begin();
    for (const std::uint8_t byte : secret.bytes()) {
        waiting = waiting << 8U | byte;
        bits += 8;
        if (bits >= wordBits) {
            bits -= wordBits;
            *next++ = static_cast<std::uint16_t>(waiting >> bits & wordMask);
        }
    }
    return numbers;
}

JoinSecret secretOf(const JoinNumbers &numbers)
{
    std::array<std::uint8_t, JoinSecret::size> bytes{};
    unsigned waiting = 0;
    unsigned bits = 0;
    auto next = bytes.begin();
    for (const std::uint16_t number : numbers) {
        waiting = waiting << wordBits | number;
        for (bits += wordBits; bits >= 8;) {
            bits -= 8;
            *next++ = static_cast<std::uint8_t>(waiting >> bits & 0xFFU);
        }
    }
    return JoinSecret(bytes);
}

std::array<std::string_view, joinCodeWords> wordsOf(const JoinSecret &secret)
{
    const JoinNumbers numbers = numbersOf(secret);
    std::array<std::string_view, joinCodeWords> words;
    std::ranges::transform(numbers, words.begin(),
                           [](std::uint16_t number) { return joinWords()[number]; });
    words.back() = joinWords()[joinCheck(numbers)];
    return words;
}

std::string joinFolder(const JoinSecret &secret)
{
    return hexOf(crypto::derivedKey(rootOf(secret), "lidlark join folder 1").bytes());
}

crypto::SealKey joinSealKey(const JoinSecret &secret)
{
    return crypto::derivedKey(rootOf(secret), "lidlark join seal 1");
}

} // namespace lidlark::sync
