#include "core/cli/crew_commands.h"

#include "core/crew/clinic_crew.h"
#include "core/store/box_repository.h"
#include "core/store/crew_repository.h"
#include "core/store/refold.h"
#include "core/sync/come_anew.h"
#include "core/sync/knock.h"
#include "core/sync/secret_file.h"
#include "core/sync/sync_words.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace lidlark::cli {

namespace {

using Json = nlohmann::ordered_json;

/// A store that was set back or copied goes on under a new name, before it is let in anew.
Outcome beginAnew(store::Database &database, const Clock &clock, Entropy &entropy,
                  sync::SecretKeeper &keeper, bool asked)
{
    const auto device = store::DeviceRepository(database).device();
    if (!device || !*device)
        return device ? Outcome(Done{}) : Outcome(device.error());
    auto opened = sync::openPost(database, clock, entropy, keeper);
    if (!opened)
        return opened.error();
    if (opened->match == sync::Match::Well && !asked)
        return Done{};
    return sync::comeAnew(opened->post, keeper);
}

/// It is in: what its crew has shared comes with the first exchange.
int settle(store::Database &database, const Clock &clock, Entropy &entropy,
           sync::SecretKeeper &keeper, sync::Storage &storage)
{
    auto opened = sync::openPost(database, clock, entropy, keeper);
    const auto shared = opened ? sync::shareAll(opened->post, opened->match, keeper, storage)
                               : Result<sync::Shared>(opened.error());
    if (!shared)
        return fail(shared.error());
    const auto boxes = store::BoxRepository(database).boxes();
    Json told{{"waiting", false}, {"device", opened->post.device.id.value}};
    if (boxes && !boxes->empty())
        told["child"] = boxes->front().alias;
    const auto table = store::CrewRepository(database).crewOf(std::string(crew::clinicCrew));
    if (table && table->has(opened->post.device.id))
        told["clinic"] = true;
    std::cout << told.dump(2) << '\n';
    return statusOf(*shared);
}

} // namespace

int comeIn(const Options &options, const JoinOptions &join, sync::Storage &storage)
{
    const auto secret = sync::secretFromWords(join.code);
    if (const auto *problem = std::get_if<sync::WordProblem>(&secret))
        return failWith(sync::sentenceFor(*problem));
    const auto clock = clockFrom(options);
    auto database = store::Database::open(options.store);
    if (!clock || !database)
        return fail(clock ? database.error() : clock.error());
    if (const Outcome folded = store::refoldIfOld(*database); !folded)
        return fail(folded.error());
    sync::SecretFile keeper(secretsBeside(options.store));
    SystemEntropy entropy;
    if (const Outcome done = beginAnew(*database, **clock, entropy, keeper, join.anew); !done)
        return fail(done.error());
    const auto joining = sync::beginJoining(*database, **clock, entropy, keeper,
                                            std::get<sync::JoinSecret>(secret), join.person);
    if (!joining)
        return fail(joining.error());
    const auto step = sync::goOnJoining(*database, **clock, entropy, keeper, storage);
    if (!step)
        return fail(step.error());
    if (const auto trouble = sync::troubleIn(*step))
        return failWith(sync::sentenceFor(*trouble));
    if (std::get<sync::Step>(*step) == sync::Step::Taken)
        return failWith(sync::codeTakenSentence());
    if (std::get<sync::Step>(*step) == sync::Step::In)
        return settle(*database, **clock, entropy, keeper, storage);
    std::cout << Json{{"waiting", true}, {"same", sameText(joining->same)}}.dump(2) << '\n';
    return allWell;
}

} // namespace lidlark::cli
