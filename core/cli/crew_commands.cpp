#include "core/cli/crew_commands.h"

#include "core/cli/json_input.h"
#include "core/crew/clinic_crew.h"
#include "core/store/box_repository.h"
#include "core/store/recording.h"
#include "core/sync/found_crew.h"
#include "core/sync/invite.h"
#include "core/sync/let_in.h"
#include "core/sync/secret_file.h"
#include "core/sync/share.h"
#include "core/sync/sync_words.h"

#include <iostream>

namespace lidlark::cli {

namespace {

using Json = nlohmann::ordered_json;

/// Prints why a store must not write. @returns whether it must not.
bool mustNotWrite(sync::Match match)
{
    const auto sentence = sync::sentenceFor(match);
    if (sentence)
        (void)failWith(*sentence);
    return sentence.has_value();
}

/// Whom the options ask in. A guest for seven days where no other end is said.
Result<sync::Asked> askedIn(const JoinOptions &join, const store::Device &device, Day today)
{
    const auto role = crew::roleNames.parse(join.role);
    if (!role)
        return Error{ErrorCode::Invalid, "--role: parent, caregiver, guest or therapist"};
    sync::Asked asked{*role, {}, {}};
    if (*role != crew::Role::Therapist)
        asked.home = join.home.empty() ? device.home : HomeId{join.home};
    if (asked.home.empty() && *role != crew::Role::Therapist)
        return Error{ErrorCode::Invalid, "--home: of which home?"};
    if (*role == crew::Role::Guest) {
        const auto until = join.until.empty() ? std::optional(today + (sync::guestDays - 1))
                                              : dayFromText(join.until);
        if (!until)
            return Error{ErrorCode::Invalid, "--until: not a day such as 2027-01-17"};
        asked.until = until;
    }
    return asked;
}

int makeCode(Desk &desk, const JoinOptions &join, sync::Post &post)
{
    const auto box = crewAsked(desk, join.child, join.clinic);
    const auto today = store::todayOf(post.clock);
    if (!box || !today)
        return fail(box ? today.error() : box.error());
    const auto asked = askedIn(join, post.device, today->day);
    if (!asked)
        return fail(asked.error());
    if (const Outcome founded = sync::foundCrew(post, *box); !founded)
        return fail(founded.error());
    const auto invited = sync::invite(post, *box, *asked);
    if (!invited)
        return fail(invited.error());
    Json answer{{"code", joinedWords(invited->secret)},
                {"role", join.role},
                {"ends", textFromMs(invited->untilMs)}};
    if (asked->until)
        answer["until"] = toText(*asked->until);
    std::cout << answer.dump(2) << '\n';
    return allWell;
}

int acceptKnock(Desk &desk, const JoinOptions &join, sync::Post &post, sync::SecretKeeper &keeper,
                sync::Storage &storage)
{
    const auto box = crewAsked(desk, join.child, join.clinic);
    const auto invited =
        box ? sync::invited(post, *box) : Result<std::optional<sync::Invited>>(box.error());
    if (!invited)
        return fail(invited.error());
    if (!*invited)
        return failWith(sync::noCodeSentence());
    const auto answer = sync::lookForKnock(**invited, storage);
    if (const auto trouble = sync::troubleIn(answer))
        return failWith(sync::sentenceFor(*trouble));
    const auto &knock = std::get<std::optional<sync::Knock>>(answer);
    if (!knock)
        return failWith(sync::nobodyYetSentence());
    if (const Outcome done = sync::accept(post, *box, **invited, *knock); !done)
        return fail(done.error());
    const auto shared = sync::shareAll(post, sync::Match::Well, keeper, storage);
    if (!shared)
        return fail(shared.error());
    const Json told{{"joined", knock->newcomer.device.value},
                    {"person", knock->newcomer.person},
                    {"role", crew::roleNames.of(knock->newcomer.role)},
                    {"same", sameText(knock->same)}};
    std::cout << told.dump(2) << '\n';
    return statusOf(*shared);
}

int removeDevice(Desk &desk, const JoinOptions &join, sync::Post &post)
{
    const auto box = crewAsked(desk, join.child, join.clinic);
    if (!box)
        return fail(box.error());
    if (const Outcome done = sync::removeMember(post, *box, {join.remove}); !done)
        return fail(done.error());
    std::cout << Json{{"removed", join.remove}}.dump(2) << '\n';
    return allWell;
}

} // namespace

std::string sameText(const std::array<std::string, 3> &words)
{
    return words[0] + " " + words[1] + " " + words[2];
}

int statusOf(const sync::Shared &shared)
{
    int status = allWell;
    for (const auto &[box, exchanged] : shared.boxes) {
        if (exchanged.trouble)
            status = failWith(sync::sentenceFor(*exchanged.trouble));
    }
    return status;
}

std::string joinedWords(const sync::JoinSecret &secret)
{
    std::string text;
    for (const std::string_view word : sync::wordsOf(secret))
        text.append(text.empty() ? "" : " ").append(word);
    return text;
}

int failWith(const wording::Sentence &sentence)
{
    std::cerr << wording::fill(sentence) << '\n';
    return problemInData;
}

Result<std::string> boxOf(Desk &desk, const std::string &child)
{
    store::BoxRepository boxes(desk.database());
    if (!child.empty()) {
        const auto box = boxes.boxOf(child);
        return box ? Result<std::string>(box->id.value) : Result<std::string>(box.error());
    }
    const auto all = boxes.boxes();
    if (!all)
        return all.error();
    if (all->size() != 1)
        return Error{ErrorCode::Invalid,
                     "--child: whose box? There are " + std::to_string(all->size())};
    return all->front().id.value;
}

Result<std::string> crewAsked(Desk &desk, const std::string &child, bool clinic)
{
    if (!clinic)
        return boxOf(desk, child);
    if (!child.empty())
        return Error{ErrorCode::Invalid, "--clinic: not together with --child"};
    return std::string(crew::clinicCrew);
}

int runJoin(const Options &options, const JoinOptions &join)
{
    const int ways = (join.makeCode ? 1 : 0) + (join.code.empty() ? 0 : 1) + (join.accept ? 1 : 0) +
                     (join.remove.empty() ? 0 : 1) + (join.makeSheet ? 1 : 0) +
                     (join.sheet.empty() ? 0 : 1);
    if (ways != 1) {
        std::cerr << "join: one of --make-code, --code, --accept, --remove, --make-sheet and "
                     "--sheet\n";
        return wrongUse;
    }
    const bool needsPlace = !join.code.empty() || !join.sheet.empty() || join.accept;
    auto storage =
        needsPlace ? storageAt(join.place) : Result<std::unique_ptr<sync::Storage>>(nullptr);
    if (!storage)
        return fail(storage.error());
    if (options.store.empty())
        return fail({ErrorCode::Invalid, "--store: which store? Give a file"});
    if (!join.code.empty())
        return comeIn(options, join, **storage);
    if (!join.sheet.empty())
        return useSheet(options, join, **storage);
    auto desk = Desk::open(options);
    if (!desk)
        return fail(desk.error());
    sync::SecretFile keeper(secretsBeside(options.store));
    usecase::Workplace &place = (*desk)->workplace();
    auto opened = sync::openPost(place.database, place.clock, place.entropy, keeper);
    if (!opened)
        return fail(opened.error());
    if (mustNotWrite(opened->match))
        return problemInData;
    if (join.makeCode)
        return makeCode(**desk, join, opened->post);
    if (join.accept)
        return acceptKnock(**desk, join, opened->post, keeper, **storage);
    if (join.makeSheet)
        return makeSheet(**desk, join, opened->post);
    return removeDevice(**desk, join, opened->post);
}

} // namespace lidlark::cli
