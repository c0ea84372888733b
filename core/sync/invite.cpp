#include "core/sync/invite.h"

#include "core/base/hex.h"
#include "core/crew/clinic_crew.h"
#include "core/crew/member.h"
#include "core/crypto/keyed_hash.h"
#include "core/journal/fields.h"
#include "core/store/recording.h"
#include "core/sync/crew_book.h"
#include "core/sync/join_words.h"
#include "core/sync/let_in.h"

#include <nlohmann/json.hpp>

namespace lidlark::sync {

namespace {

using Json = nlohmann::json;

std::string inviteKey(const std::string &box)
{
    return "sync.invitation." + box;
}

std::string welcomeKey(const std::string &box)
{
    return "sync.welcome." + box;
}

std::string textOf(const Invited &invited)
{
    Json json{{"secret", hexOf(invited.secret.bytes())},
              {"role", crew::roleNames.of(invited.asked.role)},
              {"home", invited.asked.home.value},
              {"ends", invited.untilMs}};
    if (invited.asked.until)
        json["until"] = toText(*invited.asked.until);
    return json.dump();
}

std::optional<Invited> invitedFrom(const std::string &text)
{
    const journal::Fields kept(text);
    const auto secret = arrayFromHex<JoinSecret::size>(kept.text("secret").value_or(""));
    const auto role = crew::roleNames.parse(kept.text("role").value_or(""));
    const auto ends = kept.json().find("ends");
    if (!secret || !role || ends == kept.json().end() || !ends->is_number_integer())
        return std::nullopt;
    Invited invited{JoinSecret(*secret),
                    {*role, {kept.text("home").value_or("")}, {}},
                    ends->get<std::int64_t>()};
    if (invited.untilMs < 0) // so far back that no time left can be reckoned
        return std::nullopt;
    if (const auto until = kept.text("until"))
        invited.asked.until = dayFromText(*until);
    return invited;
}

std::optional<crew::Member> newcomerIn(const std::string &fields, const Asked &asked)
{
    auto member = crew::memberFrom(fields);
    if (!member)
        return std::nullopt;
    // Who it is, the newcomer says; what it may, only the one who invites.
    member->role = asked.role;
    member->home = asked.home;
    member->until = asked.until;
    member->paper = false;
    member->folder.clear();
    return member;
}

} // namespace

std::array<std::string, 3> sameWords(const crew::Member &newcomer, const JoinSecret &secret)
{
    const std::string keys =
        newcomer.device.value + "\n" + hexOf(newcomer.signer) + "\n" + hexOf(newcomer.letters);
    const Digest digest = crypto::keyedHash(joinSealKey(secret), "lidlark join same 1\n" + keys);
    std::array<std::string, 3> words;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const std::size_t number = (digest[2 * i] << 8U | digest[2 * i + 1]) % joinWordCount;
        words[i] = std::string(joinWords()[number]);
    }
    return words;
}

Result<Invited> invite(Post &post, const std::string &box, const Asked &asked)
{
    const auto today = store::todayOf(post.clock);
    const auto book = CrewBook::open(post, box);
    if (!today || !book)
        return today ? book.error() : today.error();
    const crew::Member *me = book->me();
    if (me == nullptr || !crew::letsIn(me->role))
        return Error{ErrorCode::NotAllowed, "member"};
    if (!crew::fitsInto(box, asked.role))
        return Error{ErrorCode::Invalid, "role: only who packs comes into the clinic"};
    const bool guest = asked.role == crew::Role::Guest;
    if (guest &&
        (!asked.until || *asked.until < today->day || *asked.until > today->day + (guestDays - 1)))
        return Error{ErrorCode::Invalid, "until: a guest stays for seven days at most"};
    const Invited invited{freshJoinSecret(post.entropy), asked, post.clock.nowMs() + inviteMs};
    Outcome kept =
        store::DeviceRepository(post.database).setLocalState(inviteKey(box), textOf(invited));
    if (!kept)
        return kept.error();
    return invited;
}

Result<std::optional<Invited>> invited(Post &post, const std::string &box)
{
    const auto text = store::DeviceRepository(post.database).localState(inviteKey(box));
    if (!text)
        return text.error();
    const auto invited = *text ? invitedFrom(**text) : std::nullopt;
    const std::int64_t left = invited ? invited->untilMs - post.clock.nowMs() : 0;
    // A clock that was set back makes no code live longer.
    return left > 0 && left <= inviteMs ? invited : std::optional<Invited>();
}

Outcome endInvitation(Post &post, const std::string &box)
{
    return store::DeviceRepository(post.database).clearLocalState(inviteKey(box));
}

Answer<std::optional<Knock>> lookForKnock(const Invited &invited, Storage &storage)
{
    const auto answer = JoinRoom(invited.secret, storage).read("answer");
    if (const auto trouble = troubleIn(answer))
        return *trouble;
    const auto &fields = std::get<std::optional<std::string>>(answer);
    auto newcomer = fields ? newcomerIn(*fields, invited.asked) : std::nullopt;
    if (!newcomer)
        return std::optional<Knock>();
    auto words = sameWords(*newcomer, invited.secret);
    return std::optional(Knock{*std::move(newcomer), std::move(words)});
}

Outcome accept(Post &post, const std::string &box, const Invited &invited, const Knock &knock)
{
    const auto welcome = letIn(post, box, knock.newcomer);
    if (!welcome)
        return welcome.error();
    const std::string bytes =
        JoinRoom::seal(invited.secret, "welcome", letterOf(*welcome, post.entropy), post.entropy);
    const Json waiting{{"secret", hexOf(invited.secret.bytes())}, {"bytes", hexOf(bytes)}};
    Outcome kept =
        store::DeviceRepository(post.database).setLocalState(welcomeKey(box), waiting.dump());
    return kept ? endInvitation(post, box) : kept;
}

Result<Answer<bool>> bringWelcome(Post &post, const std::string &box, Storage &storage)
{
    store::DeviceRepository local(post.database);
    const auto text = local.localState(welcomeKey(box));
    if (!text)
        return text.error();
    if (!*text)
        return Answer<bool>(false);
    const journal::Fields kept(**text);
    const auto secret = arrayFromHex<JoinSecret::size>(kept.text("secret").value_or(""));
    const auto bytes = bytesFromHex(kept.text("bytes").value_or(""));
    if (!secret || !bytes)
        return Error{ErrorCode::Unreadable, "welcome"};
    const auto left = JoinRoom(JoinSecret(*secret), storage).leave("welcome", *bytes, post.entropy);
    if (troubleIn(left))
        return left;
    if (const Outcome done = local.clearLocalState(welcomeKey(box)); !done)
        return done.error();
    return Answer<bool>(true);
}

} // namespace lidlark::sync
