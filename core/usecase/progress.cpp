#include "core/usecase/progress.h"

#include "core/journal/fields.h"
#include "core/store/home_repository.h"
#include "core/store/recording.h"

namespace lidlark::usecase {

namespace {

using Json = nlohmann::json;

constexpr int daysAPlayStaysOpen = 2; // later nobody remembers, and the count will tell [P]
constexpr int mostPiecesOut = 999;

std::string keyOf(const BoxId &box)
{
    return "in-hand." + box.value;
}

Json toJson(const catalogue::ItemUse &use)
{
    return {{"item", use.item.value},
            {"quantity", use.quantity},
            {"source", catalogue::sourceNames.of(use.source)},
            {"role", catalogue::roleNames.of(use.role)},
            {"fate", catalogue::fateNames.of(use.fate)},
            {"count_back", use.countBack}};
}

std::optional<catalogue::ItemUse> useFrom(const Json &object)
{
    const journal::Fields fields(object.dump());
    const auto item = fields.text("item");
    const auto quantity = fields.whole("quantity", 0, mostPiecesOut);
    const auto countBack = fields.whole("count_back", 0, mostPiecesOut);
    const auto source = catalogue::sourceNames.parse(fields.text("source").value_or(""));
    const auto role = catalogue::roleNames.parse(fields.text("role").value_or(""));
    const auto fate = catalogue::fateNames.parse(fields.text("fate").value_or(""));
    if (!item || !quantity || !countBack || !source || !role || !fate)
        return std::nullopt;
    return catalogue::ItemUse{{*item}, *quantity, *source, *role, *fate, *countBack};
}

std::string textOf(const Progress &progress)
{
    Json items = Json::array();
    for (const catalogue::ItemUse &use : progress.items)
        items.push_back(toJson(use));
    Json swaps = Json::object();
    for (const auto &[item, with] : progress.swaps)
        swaps[item.value] = with.value;
    Json home = Json::object();
    for (const auto &[item, pieces] : progress.home)
        home[item.value] = pieces;
    Json cautions = Json::array();
    for (const catalogue::Tag tag : progress.cautions.list())
        cautions.push_back(catalogue::tagNames.of(tag));
    return Json{{"play", progress.play.value},
                {"activity", progress.activity.value},
                {"stage", stageNames.of(progress.stage)},
                {"step", progress.step},
                {"items", items},
                {"swaps", swaps},
                {"cautions", cautions},
                {"supervision", catalogue::supervisionNames.of(progress.supervision)},
                {"home", home},
                {"way", play::wayNames.of(progress.grading.way)},
                {"lever", catalogue::leverNames.of(progress.grading.lever)},
                {"grading-from", gradingFromNames.of(progress.gradingFrom)},
                {"day", toText(progress.began.day)},
                {"part", toText(progress.began.part)}}
        .dump();
}

void readGrading(const journal::Fields &fields, Progress &progress)
{
    const auto way = play::wayNames.parse(fields.text("way").value_or(""));
    const auto lever = catalogue::leverNames.parse(fields.text("lever").value_or(""));
    const auto from = gradingFromNames.parse(fields.text("grading-from").value_or(""));
    if (way && lever)
        progress.grading = {*way, *lever};
    progress.gradingFrom = from.value_or(GradingFrom::Nobody);
}

std::optional<Progress> progressFrom(const std::string &text)
{
    const journal::Fields fields(text);
    const auto play = fields.text("play");
    const auto activity = fields.text("activity");
    const auto stage = stageNames.parse(fields.text("stage").value_or(""));
    const auto day = dayFromText(fields.text("day").value_or(""));
    const auto part = partOfDayFromText(fields.text("part").value_or(""));
    if (!play || !activity || !stage || !day || !part)
        return std::nullopt;
    Progress progress;
    progress.play = {*play};
    progress.activity = {*activity};
    progress.stage = *stage;
    progress.step = fields.whole("step", 0, 9).value_or(0);
    progress.began = {*day, *part};
    progress.supervision =
        catalogue::supervisionNames.parse(fields.text("supervision").value_or(""))
            .value_or(catalogue::Supervision::Beside);
    readGrading(fields, progress);
    const Json cautions = fields.json().value("cautions", Json::array());
    for (const Json &name : cautions) {
        const auto tag = catalogue::tagNames.parse(name.is_string() ? name.get<std::string>() : "");
        if (tag)
            progress.cautions.add(*tag);
    }
    const Json items = fields.json().value("items", Json::array());
    for (const Json &object : items) {
        if (const auto use = useFrom(object))
            progress.items.push_back(*use);
    }
    const Json swaps = fields.json().value("swaps", Json::object());
    for (const auto &[item, with] : swaps.items()) {
        if (with.is_string())
            progress.swaps[{item}] = {with.get<std::string>()};
    }
    const Json home = fields.json().value("home", Json::object());
    for (const auto &[item, pieces] : home.items())
        progress.home[{item}] = journal::Fields::wholeOf(pieces, 0, mostPiecesOut).value_or(0);
    return progress;
}

/// The play as its event tells it, with the activity's own items.
Progress progressOf(const play::Play &play, const catalogue::Catalogue &catalogue)
{
    Progress progress;
    progress.play = play.id;
    progress.activity = play.activity;
    progress.began = play.when;
    if (const catalogue::Activity *activity = catalogue.activity(play.activity)) {
        progress.items = activity->items;
        progress.cautions = activity->cautions;
    }
    return progress;
}

} // namespace

Outcome keepProgress(Workplace &workplace, const BoxId &box, const Progress &progress)
{
    return store::DeviceRepository(workplace.database).setLocalState(keyOf(box), textOf(progress));
}

Result<std::optional<Progress>> loadProgress(Workplace &workplace, const BoxId &box,
                                             const ChildId &child)
{
    const auto today = store::todayOf(workplace.clock);
    if (!today)
        return today.error();
    const auto kept = store::DeviceRepository(workplace.database).localState(keyOf(box));
    const auto plays = store::HomeRepository(workplace.database)
                           .plays(workplace.device.home, child, today->day - daysAPlayStaysOpen);
    if (!kept || !plays)
        return kept ? plays.error() : kept.error();
    const auto progress = *kept ? progressFrom(**kept) : std::nullopt;
    for (const play::Play &play : *plays) {
        if (play.ending)
            continue;
        if (progress && progress->play == play.id)
            return progress;
        if (play.author == workplace.device.person && !progress)
            return std::optional(progressOf(play, workplace.catalogue));
    }
    return std::optional<Progress>();
}

Outcome clearProgress(Workplace &workplace, const BoxId &box)
{
    return store::DeviceRepository(workplace.database).clearLocalState(keyOf(box));
}

} // namespace lidlark::usecase
