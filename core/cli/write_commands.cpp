#include "core/cli/commands.h"

#include "core/cli/json_input.h"
#include "core/cli/print_box.h"
#include "core/store/box_repository.h"
#include "core/store/home_repository.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/play_activity.h"

#include <iostream>

namespace lidlark::cli {

namespace {

using Json = nlohmann::ordered_json;
using journal::Fields;

Result<std::vector<usecase::NamedException>> readExceptions(const Fields &fields)
{
    std::vector<usecase::NamedException> named;
    const auto found = fields.json().find("exceptions");
    if (found == fields.json().end())
        return named;
    if (!found->is_array())
        return Error{ErrorCode::Invalid, "exceptions: not a list"};
    for (const auto &entry : *found) {
        const Fields one(entry.dump());
        const auto item = one.text("item");
        const auto kind = box::exceptionKindNames.parse(one.text("kind").value_or(""));
        const auto count = one.whole("count", -mostSaid, mostSaid);
        if (!item)
            return Error{ErrorCode::Invalid, "exceptions.item: missing"};
        if (!kind)
            return Error{ErrorCode::Invalid, "exceptions.kind: used-up, lost, broken, dried-out or "
                                             "still-in-use"};
        if (!count)
            return Error{ErrorCode::Invalid, "exceptions.count: not a whole number"};
        named.push_back({{*item}, *kind, *count});
    }
    return named;
}

/// {"counted": {"eyes": 4}}: what was counted home.
Result<usecase::CountedHome> readCounted(const Fields &fields)
{
    usecase::CountedHome counted;
    const auto found = fields.json().find("counted");
    if (found == fields.json().end())
        return counted;
    if (!found->is_object())
        return Error{ErrorCode::Invalid, "counted: not an object"};
    for (const auto &[item, pieces] : found->items()) {
        const auto count = Fields::wholeOf(pieces, 0, mostSaid);
        if (!count)
            return Error{ErrorCode::Invalid, "counted." + item + ": not a whole number"};
        counted[{item}] = *count;
    }
    return counted;
}

Result<std::string> aliasOfPlay(Desk &desk, const PlayId &id)
{
    const auto play = store::HomeRepository(desk.database()).play(id);
    if (!play)
        return play.error();
    if (!*play)
        return Error{ErrorCode::NotFound, "this play"};
    const auto box = store::BoxRepository(desk.database()).boxOfChild((*play)->child);
    if (!box)
        return box.error();
    return box->alias;
}

} // namespace

int runPlay(const Options &options, const std::string &input)
{
    return withInput(options, input, [](Desk &desk, const Fields &fields) {
        const auto child = needText(fields, "child");
        const auto activity = needText(fields, "activity");
        if (!child || !activity)
            return fail(child ? activity.error() : child.error());
        usecase::PlayRequest request{*child, {*activity}, fields.text("author").value_or(""), {}};
        const std::string kite = fields.text("kite").value_or("");
        request.kite = checkin::kiteNames.parse(kite);
        if (!kite.empty() && !request.kite)
            return fail({ErrorCode::Invalid, "kite: resting, steady, whirling, clouds or bag"});
        const auto play = usecase::startPlay(desk.workplace(), request);
        if (!play)
            return fail(play.error());
        std::cout << Json{{"play", play->value}}.dump() << '\n';
        return allWell;
    });
}

int runPutBack(const Options &options, const std::string &input)
{
    return withInput(options, input, [](Desk &desk, const Fields &fields) {
        const auto play = needText(fields, "play");
        const auto named = readExceptions(fields);
        const auto counted = readCounted(fields);
        if (!play || !named)
            return fail(play ? named.error() : play.error());
        if (!counted)
            return fail(counted.error());
        const Outcome done = usecase::putBack(desk.workplace(), {*play},
                                              fields.text("author").value_or(""), *named, *counted);
        if (!done)
            return fail(done.error());
        const auto alias = aliasOfPlay(desk, {*play});
        return alias ? printBox(desk, *alias) : fail(alias.error());
    });
}

int runCount(const Options &options, const std::string &input)
{
    return withInput(options, input, [](Desk &desk, const Fields &fields) {
        const auto child = needText(fields, "child");
        if (!child)
            return fail(child.error());
        const auto found = fields.json().find("counts");
        if (found == fields.json().end() || !found->is_object())
            return fail({ErrorCode::Invalid, "counts: missing"});
        std::map<ItemId, int> counts;
        for (const auto &[item, value] : found->items()) {
            const auto count = Fields::wholeOf(value, -mostSaid, mostSaid);
            if (!count)
                return fail({ErrorCode::Invalid, "counts." + item + ": not a whole number"});
            counts[{item}] = *count;
        }
        const Outcome done =
            usecase::countBox(desk.workplace(), *child, fields.text("author").value_or(""), counts);
        return done ? printBox(desk, *child) : fail(done.error());
    });
}

int runFound(const Options &options, const std::string &input)
{
    return withInput(options, input, [](Desk &desk, const Fields &fields) {
        const auto child = needText(fields, "child");
        const auto item = needText(fields, "item");
        const auto count = fields.whole("count", -mostSaid, mostSaid);
        if (!child || !item)
            return fail(child ? item.error() : child.error());
        if (!count)
            return fail({ErrorCode::Invalid, "count: not a whole number"});
        const Outcome done = usecase::noteFound(
            desk.workplace(), *child, fields.text("author").value_or(""), {*item}, *count);
        return done ? printBox(desk, *child) : fail(done.error());
    });
}

} // namespace lidlark::cli
