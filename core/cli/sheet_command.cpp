#include "core/cli/crew_commands.h"

#include "core/cli/json_input.h"
#include "core/store/box_repository.h"
#include "core/sync/recovery_sheet.h"
#include "core/sync/secret_file.h"
#include "core/sync/share.h"
#include "core/sync/sync_words.h"

#include <iostream>

namespace lidlark::cli {

namespace {

using Json = nlohmann::ordered_json;

/// Both rows of words; nothing, and the reason on standard error, where one is no code.
std::optional<sync::SheetSecret> secretIn(const std::string &words)
{
    const std::size_t slash = words.find('/');
    const std::string second = slash == std::string::npos ? "" : words.substr(slash + 1);
    const auto upper = sync::secretFromWords(words.substr(0, slash));
    const auto lower = sync::secretFromWords(second);
    for (const auto *half : {&upper, &lower}) {
        if (const auto *problem = std::get_if<sync::WordProblem>(half)) {
            failWith(sync::sentenceFor(*problem));
            return std::nullopt;
        }
    }
    return sync::SheetSecret{std::get<sync::JoinSecret>(upper), std::get<sync::JoinSecret>(lower)};
}

} // namespace

int makeSheet(Desk &desk, const JoinOptions &join, sync::Post &post)
{
    const auto box = boxOf(desk, join.child);
    const auto sheet = box ? sync::makeSheet(post, *box) : Result<sync::RecoverySheet>(box.error());
    if (!sheet)
        return fail(sheet.error());
    const Json rows{joinedWords(sheet->secret[0]), joinedWords(sheet->secret[1])};
    std::cout << Json{{"sheet", rows}}.dump(2) << '\n';
    return allWell;
}

int useSheet(const Options &options, const JoinOptions &join, sync::Storage &storage)
{
    const auto secret = secretIn(join.sheet);
    if (!secret)
        return problemInData;
    const auto clock = clockFrom(options);
    auto database = store::Database::open(options.store);
    if (!clock || !database)
        return fail(clock ? database.error() : clock.error());
    sync::SecretFile keeper(secretsBeside(options.store));
    SystemEntropy entropy;
    const auto back =
        sync::recover(*database, **clock, entropy, keeper, storage, *secret, join.person);
    if (!back)
        return fail(back.error());
    if (const auto trouble = sync::troubleIn(*back))
        return failWith(sync::sentenceFor(*trouble));
    if (!std::get<bool>(*back))
        return failWith(sync::nothingForSheetSentence());
    auto opened = sync::openPost(*database, **clock, entropy, keeper);
    const auto shared = opened ? sync::shareAll(opened->post, opened->match, keeper, storage)
                               : Result<sync::Shared>(opened.error());
    if (!shared)
        return fail(shared.error());
    const auto boxes = store::BoxRepository(*database).boxes();
    Json told{{"device", opened->post.device.id.value}};
    if (boxes && !boxes->empty())
        told["child"] = boxes->front().alias;
    std::cout << told.dump(2) << '\n';
    return statusOf(*shared);
}

} // namespace lidlark::cli
