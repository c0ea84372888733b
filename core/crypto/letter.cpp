#include "core/crypto/letter.h"

#include <sodium.h>

#include <algorithm>

namespace lidlark::crypto {

namespace {

static_assert(LetterSeed::size == crypto_box_SEEDBYTES);
static_assert(std::tuple_size_v<LetterKey> == crypto_box_PUBLICKEYBYTES);
static_assert(letterGrowth == crypto_box_SEALBYTES);

/// Both halves, and the secret one wiped when it goes.
struct KeyPair {
    LetterKey open{};
    std::array<std::uint8_t, crypto_box_SECRETKEYBYTES> secret{};

    explicit KeyPair(const LetterSeed &seed)
    {
        crypto_box_seed_keypair(open.data(), secret.data(), seed.data());
    }
    ~KeyPair() { sodium_memzero(secret.data(), secret.size()); }
    KeyPair(const KeyPair &) = delete;
    KeyPair &operator=(const KeyPair &) = delete;
};

std::array<std::uint8_t, crypto_box_NONCEBYTES> nonceOf(const LetterKey &from, const LetterKey &to)
{
    std::array<std::uint8_t, crypto_box_NONCEBYTES> nonce{};
    const std::string both = textOf(from) + textOf(to);
    crypto_generichash(nonce.data(), nonce.size(), bytesOf(both), both.size(), nullptr, 0);
    return nonce;
}

} // namespace

LetterKey letterKeyOf(const LetterSeed &seed)
{
    return KeyPair(seed).open;
}

std::string letterTo(const LetterKey &to, std::string_view text, const LetterSeed &chance)
{
    const KeyPair own(chance);
    std::string letter(letterGrowth + text.size(), '\0');
    std::copy(own.open.begin(), own.open.end(), letter.begin());
    auto *body = reinterpret_cast<unsigned char *>(letter.data()) + own.open.size();
    // A key of small order gives no secret: such a letter stays empty, and nobody opens it.
    if (crypto_box_easy(body, bytesOf(text), text.size(), nonceOf(own.open, to).data(), to.data(),
                        own.secret.data()) != 0)
        return {};
    return letter;
}

std::optional<std::string> letterOpened(std::string_view letter, const LetterSeed &seed)
{
    if (letter.size() < letterGrowth)
        return std::nullopt;
    const KeyPair own(seed);
    std::string text(letter.size() - letterGrowth, '\0');
    if (crypto_box_seal_open(reinterpret_cast<unsigned char *>(text.data()), bytesOf(letter),
                             letter.size(), own.open.data(), own.secret.data()) != 0)
        return std::nullopt;
    return text;
}

} // namespace lidlark::crypto
