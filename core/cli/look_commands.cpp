#include "core/cli/box_json.h"
#include "core/cli/commands.h"
#include "core/store/projector.h"
#include "core/store/recording.h"
#include "core/usecase/write_demo.h"

#include <filesystem>
#include <iostream>

namespace lidlark::cli {

namespace {

using Json = nlohmann::ordered_json;

Json playJson(const play::Play &play, const usecase::Family &family,
              const catalogue::Catalogue &catalogue)
{
    const catalogue::Activity *activity = catalogue.activity(play.activity);
    Json noticed = Json::array();
    for (const play::Phrase phrase : play.phrases)
        noticed.push_back(play::phraseNames.of(phrase));
    Json exceptions = Json::array();
    for (const store::OutcomeRow &outcome : family.outcomes) {
        if (outcome.play != play.id)
            continue;
        for (std::size_t i = 0; i < box::exceptionKindCount; ++i) {
            const auto kind = static_cast<box::ExceptionKind>(i);
            if (outcome.exceptions.of(kind) > 0)
                exceptions.push_back({{"item", outcome.item.value},
                                      {"kind", box::exceptionKindNames.of(kind)},
                                      {"count", outcome.exceptions.of(kind)}});
        }
    }
    return {{"play", play.id.value},
            {"activity", play.activity.value},
            {"name", activity != nullptr ? activity->name : play.activity.value},
            {"day", toText(play.when.day)},
            {"part", toText(play.when.part)},
            {"author", play.author},
            {"ending", play.ending ? Json(play::endingNames.of(*play.ending)) : Json()},
            {"noticed", noticed},
            {"exceptions", exceptions}};
}

std::string countWords(const Json &item)
{
    const int low = item["low"].get<int>();
    const int high = item["high"].get<int>();
    return low == high ? std::to_string(low) : std::to_string(low) + " or " + std::to_string(high);
}

int showBox(const Options &options, const usecase::Family &family, Desk &desk)
{
    const auto now = store::todayOf(desk.workplace().clock);
    if (!now)
        return fail(now.error());
    const Json json = boxJson(family, desk.catalogue(), *now);
    if (options.json) {
        std::cout << json.dump() << '\n';
        return allWell;
    }
    std::cout << family.box.alias << "'s box, lid list R" << json["revision"] << ", "
              << json["place_words"].get<std::string>() << '\n';
    for (const Json &item : json["items"])
        std::cout << "  " << countWords(item) << "  " << item["name"].get<std::string>() << '\n';
    for (const Json &question : json["questions"])
        std::cout << question["sentence"].get<std::string>() << '\n';
    for (const Json &note : json["open_notes"])
        std::cout << "May lie on the floor: " << note["pieces"] << " of "
                  << note["item"].get<std::string>() << ", says "
                  << note["author"].get<std::string>() << '\n';
    return allWell;
}

int showNotebook(const Options &options, const usecase::Family &family, Desk &desk)
{
    Json plays = Json::array();
    for (const play::Play &play : family.plays)
        plays.push_back(playJson(play, family, desk.catalogue()));
    if (options.json) {
        std::cout << Json{{"child", family.box.alias}, {"plays", plays}}.dump() << '\n';
        return allWell;
    }
    for (const Json &play : plays)
        std::cout << play["day"].get<std::string>() << "  " << play["name"].get<std::string>()
                  << "  (" << play["author"].get<std::string>() << ")\n";
    if (plays.empty())
        std::cout << "Nothing has been played yet.\n";
    return allWell;
}

using Show = int (*)(const Options &, const usecase::Family &, Desk &);

/// Opens the store, finds the child, and lets @p show do the rest.
int withFamily(const Options &options, const std::string &child, Show show)
{
    const auto desk = Desk::open(options, child);
    if (!desk)
        return fail(desk.error());
    const auto alias = childOrOnly((*desk)->database(), child);
    if (!alias)
        return fail(alias.error());
    const auto family = usecase::loadFamily((*desk)->workplace(), *alias);
    if (!family)
        return fail(family.error());
    return show(options, *family, **desk);
}

} // namespace

int runBox(const Options &options, const std::string &child)
{
    return withFamily(options, child, showBox);
}

int runNotebook(const Options &options, const std::string &child)
{
    return withFamily(options, child, showNotebook);
}

int runVerify(const Options &options)
{
    const auto desk = Desk::open(options);
    if (!desk)
        return fail(desk.error());
    store::Database &database = (*desk)->database();
    const auto events = store::EventRepository(database).count();
    const auto integrity = database.integrity();
    if (!events || !integrity)
        return fail(events ? integrity.error() : events.error());
    const auto matches = store::Projector(database).matchesRefold();
    if (!matches)
        return fail(matches.error());
    if (options.json) {
        std::cout << Json{{"events", *events},
                          {"projections_match", *matches},
                          {"integrity", *integrity}}
                         .dump()
                  << '\n';
    } else {
        std::cout << *events << " events; rows "
                  << (*matches ? "are what the events say" : "differ from the events") << "; file "
                  << *integrity << '\n';
    }
    return *matches && *integrity == "ok" ? allWell : problemInData;
}

int runDemo(const Options &options, const std::string &folder, int day)
{
    std::error_code failed;
    std::filesystem::create_directories(folder, failed);
    if (failed)
        return fail({ErrorCode::Unwritable, folder});
    const catalogue::Catalogue catalogue = readCatalogue(options);
    const auto stores = usecase::writeDemo(folder, day, catalogue);
    if (!stores)
        return fail(stores.error());
    Json list = Json::array();
    for (const usecase::DemoStore &store : *stores)
        list.push_back({{"file", store.file},
                        {"person", store.person},
                        {"role", store::roleNames.of(store.role)},
                        {"child", store.child},
                        {"device", store.device}});
    if (options.json) {
        std::cout << Json{{"stores", list}}.dump() << '\n';
        return allWell;
    }
    for (const Json &store : list)
        std::cout << folder << '/' << store["file"].get<std::string>() << "  "
                  << store["person"].get<std::string>() << ", " << store["role"].get<std::string>()
                  << '\n';
    return allWell;
}

} // namespace lidlark::cli
