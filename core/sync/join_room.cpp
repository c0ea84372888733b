#include "core/sync/join_room.h"

#include "core/crypto/keyed_hash.h"
#include "core/crypto/seal.h"
#include "core/sync/publish.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

constexpr std::string_view everything[] = {"answer", "welcome"};

std::string beside(std::string_view what)
{
    return "lidlark join 1\n" + std::string(what);
}

} // namespace

Place JoinRoom::place(std::string_view what) const
{
    const Digest name = crypto::keyedHash(joinSealKey(m_secret), beside(what));
    return {joinFolder(m_secret), hexOf(name)};
}

std::string JoinRoom::seal(const JoinSecret &secret, std::string_view what, std::string_view text,
                           Entropy &entropy)
{
    const crypto::Nonce nonce = freshNonce(entropy);
    return crypto::textOf(nonce) + crypto::sealed(text, beside(what), joinSealKey(secret), nonce);
}

Answer<std::optional<std::string>> JoinRoom::read(std::string_view what)
{
    auto answer = m_storage.get(place(what));
    if (const auto trouble = troubleIn(answer))
        return *trouble;
    const auto &bytes = std::get<std::optional<std::string>>(answer);
    crypto::Nonce nonce{};
    if (!bytes || bytes->size() < nonce.size())
        return std::optional<std::string>();
    std::copy_n(bytes->begin(), nonce.size(), nonce.begin());
    return crypto::opened(std::string_view(*bytes).substr(nonce.size()), beside(what),
                          joinSealKey(m_secret), nonce);
}

Answer<bool> JoinRoom::leave(std::string_view what, std::string_view sealedBytes, Entropy &entropy)
{
    const Place where = place(what);
    auto made = m_storage.makeFolder(where.folder);
    if (const auto trouble = troubleIn(made))
        return *trouble;
    const auto published = publish(m_storage, where, sealedBytes, entropy);
    if (const auto trouble = troubleIn(published))
        return *trouble;
    return std::get<Published>(published) == Published::Done;
}

Answer<bool> JoinRoom::clear()
{
    for (const std::string_view what : everything) {
        const auto gone = m_storage.remove(place(what));
        if (const auto trouble = troubleIn(gone))
            return *trouble;
    }
    return true;
}

} // namespace lidlark::sync
