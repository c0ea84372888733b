#include "core/sync/recovery_sheet.h"

#include "core/base/hex.h"
#include "core/crypto/keyed_hash.h"
#include "core/sync/crew_book.h"
#include "core/sync/exchange.h"
#include "core/sync/knock.h"
#include "core/sync/own_secret.h"
#include "core/sync/publish.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

constexpr std::size_t idDigits = 32;
constexpr auto sheetAlias = "recovery sheet";

/// Both halves as a key for the keyed hash: zeros after them.
crypto::Secret<32> rootOf(const SheetSecret &secret)
{
    std::array<std::uint8_t, 32> bytes{};
    auto *next = std::ranges::copy(secret[0].bytes(), bytes.begin()).out;
    std::ranges::copy(secret[1].bytes(), next);
    return crypto::Secret<32>(bytes);
}

crypto::DeviceSecret deviceSecretOf(const SheetSecret &secret)
{
    return crypto::derivedKey(rootOf(secret), "lidlark sheet 1");
}

std::string folderOf(const SheetSecret &secret)
{
    return hexOf(crypto::keyedHash(rootOf(secret), "lidlark sheet folder 1"));
}

DeviceId idOf(const SheetSecret &secret)
{
    const Digest id = crypto::keyedHash(rootOf(secret), "lidlark sheet id 1");
    return {"sheet-" + hexOf(id).substr(0, idDigits)};
}

/// The sheet as if it were a phone.
store::Device deviceOf(const SheetSecret &secret, const HomeId &home)
{
    return {idOf(secret), sheetAlias, store::Role::Parent, home, std::nullopt};
}

/// Another name for other keys: what lies there is never written over.
std::string letterName(const crew::Member &sheet, const Welcome &welcome)
{
    std::string names = sheet.folder;
    for (const Welcome::Key &key : welcome.keys)
        names += hexOf(key.epoch);
    return hexOf(blake2b(names));
}

Answer<bool> leaveLetter(Post &post, const crew::Member &sheet, const Welcome &welcome,
                         Storage &storage)
{
    const Place place{sheet.folder, letterName(sheet, welcome)};
    const auto size = storage.sizeOf(place);
    if (const auto trouble = troubleIn(size))
        return *trouble;
    if (std::get<std::optional<std::uint64_t>>(size))
        return false;
    if (const auto trouble = troubleIn(storage.makeFolder(place.folder)))
        return *trouble;
    const auto published = publish(storage, place, letterOf(welcome, post.entropy), post.entropy);
    if (const auto trouble = troubleIn(published))
        return *trouble;
    const auto names = storage.list(place.folder);
    if (const auto trouble = troubleIn(names))
        return *trouble;
    for (const std::string &name : std::get<std::vector<std::string>>(names)) {
        if (name != place.name)
            (void)storage.remove({place.folder, name}); // it holds fewer keys: it may stay, too
    }
    return true;
}

/// All that letters on the storage tell the sheet.
Answer<std::optional<Welcome>> readLetters(const SheetSecret &secret, Storage &storage)
{
    const std::string folder = folderOf(secret);
    const auto names = storage.list(folder);
    if (const auto trouble = troubleIn(names))
        return *trouble;
    std::optional<Welcome> all;
    for (const std::string &name : std::get<std::vector<std::string>>(names)) {
        const auto letter = storage.get({folder, name});
        if (const auto trouble = troubleIn(letter))
            return *trouble;
        const auto &bytes = std::get<std::optional<std::string>>(letter);
        auto welcome = bytes ? welcomeIn(*bytes, deviceSecretOf(secret)) : std::nullopt;
        if (!welcome || (all && welcome->box != all->box))
            continue;
        if (!all) {
            all = *std::move(welcome);
            continue;
        }
        std::ranges::move(welcome->events, std::back_inserter(all->events));
        std::ranges::move(welcome->keys, std::back_inserter(all->keys));
    }
    return all;
}

/// The sheet acts as the member it is: takes everything in, and lets the new phone in.
Result<Answer<bool>> actAsSheet(Post &sheet, const Welcome &welcome, Post &phone, Storage &storage)
{
    if (const Outcome settled = settleIn(sheet, welcome); !settled)
        return settled.error();
    // It may have been used before.
    const auto own = takeOwnIn(sheet, welcome.box, storage);
    const auto others = own ? takeIn(sheet, welcome.box, storage) : own;
    if (!others)
        return others.error();
    if (own->trouble || others->trouble)
        return Answer<bool>(own->trouble ? *own->trouble : *others->trouble);
    const auto given = letIn(sheet, welcome.box, memberOf(phone.device, phone.secret));
    const auto told =
        given ? exchange(sheet, welcome.box, storage) : Result<Exchanged>(given.error());
    if (!told)
        return told.error();
    if (told->trouble)
        return Answer<bool>(*told->trouble);
    if (const Outcome settled = settleIn(phone, *given); !settled)
        return settled.error();
    return Answer<bool>(true);
}

} // namespace

Result<RecoverySheet> makeSheet(Post &post, const std::string &box)
{
    const auto book = CrewBook::open(post, box);
    if (!book)
        return book.error();
    const crew::Member *me = book->me();
    if (me == nullptr || me->role != crew::Role::Parent || me->home.empty())
        return Error{ErrorCode::NotAllowed, "member"};
    const SheetSecret secret{freshJoinSecret(post.entropy), freshJoinSecret(post.entropy)};
    crew::Member member = memberOf(deviceOf(secret, me->home), deviceSecretOf(secret));
    member.paper = true;
    member.folder = folderOf(secret);
    for (const crew::Member &other : book->crew().present()) {
        if (!other.paper || other.home != me->home)
            continue;
        if (const Outcome gone = removeMember(post, box, other.device); !gone)
            return gone.error();
    }
    if (const auto given = letIn(post, box, member); !given)
        return given.error();
    return RecoverySheet{secret, member};
}

Result<std::optional<Trouble>> leaveForSheets(Post &post, const std::string &box, Storage &storage)
{
    const auto book = CrewBook::open(post, box);
    if (!book)
        return book.error();
    const crew::Member *me = book->me();
    if (me == nullptr || me->role != crew::Role::Parent)
        return std::optional<Trouble>();
    for (const crew::Member &member : book->crew().present()) {
        if (!member.paper || member.home != me->home)
            continue;
        const auto welcome = welcomeFor(post, box, member);
        if (!welcome)
            return welcome.error();
        if (const auto trouble = troubleIn(leaveLetter(post, member, *welcome, storage)))
            return std::optional(*trouble);
    }
    return std::optional<Trouble>();
}

Result<Answer<bool>> recover(store::Database &database, const Clock &clock, Entropy &entropy,
                             SecretKeeper &keeper, Storage &storage, const SheetSecret &secret,
                             const std::string &person)
{
    const auto known = store::DeviceRepository(database).device();
    if (!known)
        return known.error();
    if (*known && (*known)->id != idOf(secret))
        return Error{ErrorCode::Invalid, "store: somebody's already"};
    if (person.empty() || person.size() > longestAlias)
        return Error{ErrorCode::Invalid, "your name: empty or too long"};
    const auto letters = readLetters(secret, storage);
    if (const auto trouble = troubleIn(letters))
        return Answer<bool>(*trouble);
    const auto &welcome = std::get<std::optional<Welcome>>(letters);
    if (!welcome)
        return Answer<bool>(false);
    const store::Device own{
        {entropy.freshId()}, person, store::Role::Parent, welcome->member.home, std::nullopt};
    const auto fresh = ownSecret(database, own.id, keeper, entropy);
    if (!fresh)
        return fresh.error();
    Post sheet{database, clock, entropy, deviceOf(secret, welcome->member.home),
               deviceSecretOf(secret)};
    Post phone{database, clock, entropy, own, fresh->secret};
    return actAsSheet(sheet, *welcome, phone, storage);
}

} // namespace lidlark::sync
