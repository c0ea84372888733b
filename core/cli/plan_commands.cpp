#include "core/cli/box_json.h"
#include "core/cli/commands.h"
#include "core/cli/json_input.h"
#include "core/usecase/gradings.h"
#include "core/usecase/plan_week.h"
#include "core/wording/reason_words.h"

#include <iostream>

namespace lidlark::cli {

namespace {

using Json = nlohmann::ordered_json;
using journal::Fields;

Json plannedJson(const usecase::WeekDay &day)
{
    Json planned = Json::array();
    for (const safety::Admitted &one : day.planned)
        planned.push_back({{"id", one.activity().id.value}, {"name", one.activity().name}});
    return planned;
}

Json notNowJson(const usecase::WeekDay &day, const catalogue::Catalogue &catalogue)
{
    if (!day.notNow)
        return {};
    Json reasons = Json::array();
    for (const safety::Reason &reason : day.notNow->reasons)
        reasons.push_back(wording::fill(wording::sentenceFor(reason, catalogue)));
    return {{"id", day.notNow->activity->id.value}, {"reasons", reasons}};
}

Json weekJson(const usecase::Week &week, const catalogue::Catalogue &catalogue)
{
    Json days = Json::array();
    for (const usecase::WeekDay &day : week.days)
        days.push_back({{"day", toText(day.day)},
                        {"wish", play::wishNames.of(day.wish)},
                        {"planned", plannedJson(day)},
                        {"not_now", notNowJson(day, catalogue)},
                        {"played", day.played}});
    return {{"child", week.family.box.alias}, {"value", week.value},   {"bound", week.bound},
            {"gap", week.bound - week.value}, {"proven", week.proven}, {"days", days}};
}

void printWeek(const Json &week)
{
    for (const Json &day : week["days"]) {
        std::cout << day["day"].get<std::string>() << "  ";
        if (day["wish"] == "free")
            std::cout << "free";
        for (const Json &one : day["planned"])
            std::cout << one["name"].get<std::string>() << "  ";
        std::cout << (day["wish"] == "keep" ? "(kept)\n" : "\n");
    }
    if (!week["proven"].get<bool>())
        std::cout << "Not proven to be the best: at most " << week["gap"] << " tenths better.\n";
}

int showWeek(Desk &desk, const Options &options, const usecase::WeekRequest &request)
{
    const auto week = usecase::planWeek(desk.workplace(), request);
    if (!week)
        return fail(week.error());
    const Json json = weekJson(*week, desk.catalogue());
    if (options.json)
        std::cout << json.dump() << '\n';
    else
        printWeek(json);
    return allWell;
}

/// Nothing: the pin is taken off. Errors: Invalid, "way: ...".
Result<std::optional<play::GradingUsed>> readGrading(const Fields &fields)
{
    const std::string word = fields.text("way").value_or("");
    if (word == "none")
        return std::optional<play::GradingUsed>();
    const auto way = play::wayNames.parse(word);
    if (!way)
        return Error{ErrorCode::Invalid, "way: as-written, easier, harder or none"};
    if (*way == play::Way::AsWritten)
        return std::optional(play::GradingUsed{});
    const auto lever = catalogue::leverNames.parse(fields.text("lever").value_or(""));
    if (!lever)
        return Error{ErrorCode::Invalid, "lever: not one of the ten"};
    return std::optional(play::GradingUsed{*way, *lever});
}

} // namespace

int runWeek(const Options &options, const WeekOptions &asked)
{
    const auto desk = Desk::open(options, asked.child);
    if (!desk)
        return fail(desk.error());
    const auto child = childOrOnly((*desk)->database(), asked.child);
    if (!child)
        return fail(child.error());
    usecase::WeekRequest request{*child, dayFromText(asked.from), {}, asked.perDay};
    if (!asked.from.empty() && !request.from)
        return fail({ErrorCode::Invalid, "--date: not a day such as 2027-01-11"});
    return showWeek(**desk, options, request);
}

int runWish(const Options &options, const std::string &input)
{
    return withInput(options, input, [&options](Desk &desk, const Fields &fields) {
        const auto child = needText(fields, "child");
        const auto day = dayFromText(fields.text("day").value_or(""));
        const auto wish = play::wishNames.parse(fields.text("wish").value_or(""));
        if (!child)
            return fail(child.error());
        if (!day)
            return fail({ErrorCode::Invalid, "day: not a day such as 2027-01-11"});
        if (!wish)
            return fail({ErrorCode::Invalid, "wish: keep, free or open"});
        const Outcome done = usecase::wishForDay(desk.workplace(), *child, *day,
                                                 {*wish, {fields.text("activity").value_or("")}});
        return done ? showWeek(desk, options, {*child, {}, {}, 1}) : fail(done.error());
    });
}

int runPinGrading(const Options &options, const std::string &input)
{
    return withInput(options, input, [](Desk &desk, const Fields &fields) {
        const auto child = needText(fields, "child");
        const auto activity = needText(fields, "activity");
        const auto grading = readGrading(fields);
        if (!child || !activity)
            return fail(child ? activity.error() : child.error());
        if (!grading)
            return fail(grading.error());
        const Outcome done = usecase::pinGrading(desk.workplace(), *child, {*activity}, *grading);
        if (!done)
            return fail(done.error());
        std::cout << Json{{"pinned", grading->has_value()}}.dump() << '\n';
        return allWell;
    });
}

} // namespace lidlark::cli
