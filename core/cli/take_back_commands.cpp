#include "core/cli/box_json.h"
#include "core/cli/commands.h"

#include "core/cli/box_json.h"
#include "core/cli/json_input.h"
#include "core/store/box_repository.h"
#include "core/store/recording.h"
#include "core/usecase/noted_today.h"
#include "core/usecase/take_back.h"
#include "core/wording/noted_words.h"

#include <algorithm>
#include <iostream>

namespace lidlark::cli {

namespace {

using Json = nlohmann::ordered_json;
using journal::Fields;

std::vector<std::string> linesOf(const usecase::Noted &noted, const Desk &desk, Day today)
{
    std::vector<std::string> lines;
    for (const wording::Sentence &line :
         wording::notedWords(noted.events, {desk.catalogue(), noted.activity, noted.person, today}))
        lines.push_back(wording::fill(line));
    return lines;
}

Json notedJson(const usecase::Noted &noted, const Desk &desk, Day today)
{
    Json events = Json::array();
    for (const journal::Event &event : noted.events)
        events.push_back(journal::identityOf(event));
    return {{"events", events},
            {"lines", linesOf(noted, desk, today)},
            {"kind", journal::kindNames.of(noted.events.front().kind)},
            {"lane", journal::laneKindNames.of(noted.last().lane.kind)},
            {"author", noted.last().author},
            {"minute_of_day", noted.minuteOfDay()},
            {"taken_back", noted.takenBack},
            {"may_change", noted.mine}};
}

/// Whose day the event named belongs to: an identity is enough to find it.
Result<std::string> childOfEvent(Desk &desk, const std::string &author, const std::string &event)
{
    const auto boxes = store::BoxRepository(desk.database()).boxes();
    if (!boxes)
        return boxes.error();
    for (const store::BoxRow &box : *boxes) {
        const auto noted = usecase::notedToday(desk.workplace(), box.alias, author);
        if (!noted)
            return noted.error();
        for (const usecase::Noted &one : *noted) {
            const bool here = std::any_of(one.events.begin(), one.events.end(), [&](const auto &e) {
                return journal::identityOf(e) == event;
            });
            if (here)
                return box.alias;
        }
    }
    return Error{ErrorCode::NotFound, "that among what was noted today"};
}

/// {"event": id}, or {"child": alias, "last": true}: with "author", whose.
Result<usecase::TakingBack> readTakingBack(Desk &desk, const Fields &fields)
{
    usecase::TakingBack what;
    what.author = fields.text("author").value_or("");
    if (const auto event = fields.text("event")) {
        const auto child = childOfEvent(desk, what.author, *event);
        if (!child)
            return child.error();
        what.child = *child;
        what.event = *event;
        return what;
    }
    if (!fields.isTrue("last"))
        return Error{ErrorCode::Invalid, "event: missing, or say which child's last"};
    const auto child = needText(fields, "child");
    if (!child)
        return child.error();
    const auto last = usecase::lastNotedBy(desk.workplace(), *child, what.author);
    if (!last)
        return last.error();
    what.child = *child;
    what.event = *last;
    return what;
}

int printNoted(Desk &desk, const std::string &child, bool json)
{
    const auto noted = usecase::notedToday(desk.workplace(), child);
    const auto today = store::todayOf(desk.workplace().clock);
    if (!noted || !today)
        return fail(noted ? today.error() : noted.error());
    Json list = Json::array();
    for (const usecase::Noted &one : *noted)
        list.push_back(notedJson(one, desk, today->day));
    if (json) {
        std::cout << Json{{"child", child}, {"noted", list}}.dump() << '\n';
        return allWell;
    }
    for (const usecase::Noted &one : *noted) {
        const std::string who =
            wording::fill(wording::notedBy(one.last().author, one.minuteOfDay()));
        for (const std::string &line : linesOf(one, desk, today->day))
            std::cout << (one.takenBack ? "taken back: " : "") << line << ", " << who << '\n';
    }
    if (noted->empty())
        std::cout << "Nothing has been noted today.\n";
    return allWell;
}

} // namespace

int runTakeBack(const Options &options, const std::string &input)
{
    return withInput(options, input, [](Desk &desk, const Fields &fields) {
        const auto what = readTakingBack(desk, fields);
        if (!what)
            return fail(what.error());
        const Outcome done = fields.isTrue("again") ? usecase::putInAgain(desk.workplace(), *what)
                                                    : usecase::takeBack(desk.workplace(), *what);
        return done ? printNoted(desk, what->child, true) : fail(done.error());
    });
}

int runNoted(const Options &options, const std::string &child)
{
    const auto desk = Desk::open(options);
    if (!desk)
        return fail(desk.error());
    const auto alias = childOrOnly((*desk)->database(), child);
    if (!alias)
        return fail(alias.error());
    return printNoted(**desk, *alias, options.json);
}

} // namespace lidlark::cli
