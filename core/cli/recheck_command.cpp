#include "core/cli/commands.h"

#include "core/cli/options.h"
#include "core/usecase/recheck_boxes.h"
#include "core/wording/reason_words.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace lidlark::cli {

namespace {

using Json = nlohmann::ordered_json;
using usecase::BoxRecheck;

Json idsJson(const std::vector<ActivityId> &ids)
{
    Json list = Json::array();
    for (const ActivityId &id : ids)
        list.push_back(id.value);
    return list;
}

Json boxJson(const BoxRecheck &recheck, const catalogue::Catalogue &edited)
{
    Json hidden = Json::array();
    for (const BoxRecheck::Hidden &entry : recheck.hidden) {
        Json reasons = Json::array();
        for (const safety::Reason &reason : entry.reasons)
            reasons.push_back(wording::fill(wording::sentenceFor(reason, edited)));
        if (entry.reasons.empty())
            reasons.push_back("Left out of the changed catalogue.");
        hidden.push_back({{"id", entry.activity.value}, {"reasons", reasons}});
    }
    return {{"child", recheck.child},
            {"hidden", hidden},
            {"opened", idsJson(recheck.opened)},
            {"changed", idsJson(recheck.changed)}};
}

void printRechecked(const Json &answer)
{
    for (const Json &problem : answer["problems"])
        std::cout << problem.get<std::string>() << '\n';
    if (answer["boxes"].empty())
        std::cout << "No box is affected.\n";
    for (const Json &box : answer["boxes"]) {
        std::cout << box["child"].get<std::string>() << '\n';
        for (const Json &entry : box["hidden"]) {
            std::cout << "  no longer: " << entry["id"].get<std::string>();
            for (const Json &reason : entry["reasons"])
                std::cout << "  " << reason.get<std::string>();
            std::cout << '\n';
        }
        for (const Json &id : box["opened"])
            std::cout << "  now too: " << id.get<std::string>() << '\n';
        for (const Json &id : box["changed"])
            std::cout << "  with other cautions: " << id.get<std::string>() << '\n';
    }
}

} // namespace

int runRecheck(const Options &options, const std::vector<std::string> &files)
{
    const auto desk = Desk::open(options);
    if (!desk)
        return fail(desk.error());
    const Result<catalogue::Catalogue> edited = editedCatalogue(options, files);
    if (!edited)
        return fail(edited.error());
    // What is ours is compared with what is ours: a box's own entries stay as they are.
    const usecase::Workplace &place = (*desk)->workplace();
    usecase::Workplace plain{place.database, (*desk)->builtIn(), place.clock, place.entropy,
                             place.device};
    const auto rechecks = usecase::recheckBoxes(plain, *edited);
    if (!rechecks)
        return fail(rechecks.error());
    Json answer{{"problems", Json::array()}, {"boxes", Json::array()}};
    for (const catalogue::Problem &problem : edited->problems())
        answer["problems"].push_back(problem.text());
    for (const BoxRecheck &recheck : *rechecks) {
        if (recheck.affected())
            answer["boxes"].push_back(boxJson(recheck, *edited));
    }
    if (options.json)
        std::cout << answer.dump() << '\n';
    else
        printRechecked(answer);
    return answer["problems"].empty() ? allWell : problemInData;
}

} // namespace lidlark::cli
