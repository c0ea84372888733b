#include "core/cli/commands.h"

#include "core/usecase/suggest_today.h"
#include "core/wording/caution_words.h"
#include "core/wording/help_words.h"
#include "core/wording/label_words.h"
#include "core/wording/reason_words.h"
#include "core/wording/why_words.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <iostream>

namespace lidlark::cli {

namespace {

using Json = nlohmann::ordered_json;
using usecase::MenuRequest;
using usecase::TodayMenu;

/// With which catalogue, and in whose country, a menu is shown.
struct Showing {
    const catalogue::Catalogue &catalogue;
    wording::Region region;
};

std::optional<Error> readWords(const MenuOptions &menu, MenuRequest &request)
{
    request.day = dayFromText(menu.date);
    if (!menu.date.empty() && !request.day)
        return Error{ErrorCode::Invalid, "--date: not a day such as 2027-01-11"};
    request.part = partOfDayFromText(menu.part);
    if (!menu.part.empty() && !request.part)
        return Error{ErrorCode::Invalid, "--part: morning, afternoon or evening"};
    request.kite = checkin::kiteNames.parse(menu.kite);
    if (!menu.kite.empty() && !request.kite)
        return Error{ErrorCode::Invalid, "--kite: resting, steady, whirling, clouds or bag"};
    if (menu.minutes > 0)
        request.minutes = menu.minutes;
    return std::nullopt;
}

/// Room words, or aliases from the home sheet. Anything else is refused: a slip must not read as
/// "nobody".
std::optional<Error> readRoom(const MenuOptions &menu, const usecase::Family &family,
                              safety::Room &room)
{
    if (!menu.roomSaid)
        return std::nullopt;
    room.present.emplace();
    for (const std::string &word : menu.room) {
        if (word == "nobody-else" && menu.room.size() > 1)
            return Error{ErrorCode::Invalid, "--room: nobody-else, and somebody all the same"};
        if (word == "nobody-else")
            continue;
        if (word == "under-three") {
            room.visitorUnderThree = true;
        } else if (word == "mouther") {
            room.visitorMouther = true;
        } else {
            const auto people = family.sheet ? family.sheet->people : std::vector<child::Person>();
            const auto person = std::find_if(people.begin(), people.end(),
                                             [&](const auto &p) { return p.alias == word; });
            if (person == people.end())
                return Error{ErrorCode::Invalid, "--room: nobody called " + word};
            room.present->push_back(person->id);
        }
    }
    return std::nullopt;
}

Json tagsJson(catalogue::TagSet tags)
{
    Json list = Json::array();
    for (const catalogue::Tag tag : tags.list())
        list.push_back(catalogue::tagNames.of(tag));
    return list;
}

/// Words a regulation puts on a label, letter by letter, with where they stand.
Json labelJson(const safety::Admitted &admitted, const Showing &showing)
{
    Json label = Json::array();
    for (const wording::LabelWords &words :
         wording::labelWords(admitted.activity(), admitted.items(), admitted.cautions(),
                             showing.catalogue, showing.region))
        label.push_back(
            {{"words", wording::fill(words.words)}, {"source", wording::fill(words.source)}});
    return label;
}

Json offerJson(const rotation::Offer &offer, const wording::WhyLine &line, const Showing &showing)
{
    const catalogue::Activity &activity = offer.admitted.activity();
    Json swaps = Json::object();
    for (const auto &[item, with] : offer.admitted.swaps())
        swaps[item.value] = with.value;
    Json why = Json::array();
    for (const rotation::WhyCode code : offer.why)
        why.push_back(rotation::whyNames.of(code));
    return {{"id", activity.id.value},
            {"name", activity.name},
            {"minutes",
             {{"out", activity.minutes.out},
              {"play", activity.minutes.play},
              {"back", activity.minutes.back}}},
            {"supervision", catalogue::supervisionNames.of(offer.admitted.supervision())},
            {"label", labelJson(offer.admitted, showing)},
            {"cautions", tagsJson(offer.admitted.cautions())},
            {"swaps", swaps},
            {"why", why},
            {"sentence", wording::fill(wording::sentenceFor(line))}};
}

Json heldBackJson(const safety::HeldBack &held, const catalogue::Catalogue &catalogue)
{
    catalogue::TagSet tags;
    Json reasons = Json::array();
    for (const safety::Reason &reason : held.reasons) {
        if (reason.tag)
            tags.add(*reason.tag);
        const std::string sentence = wording::fill(wording::sentenceFor(reason, catalogue));
        if (std::find(reasons.begin(), reasons.end(), sentence) == reasons.end())
            reasons.push_back(sentence);
    }
    return {{"id", held.activity->id.value}, {"tags", tagsJson(tags)}, {"reasons", reasons}};
}

Json menuJson(const TodayMenu &today, const Showing &showing)
{
    Json offers = Json::array();
    const std::vector<wording::WhyLine> lines = wording::whyLines(today.menu.offers);
    for (std::size_t i = 0; i < lines.size(); ++i)
        offers.push_back(offerJson(today.menu.offers[i], lines[i], showing));
    Json held = Json::array();
    for (const safety::HeldBack &entry : today.gated.heldBack)
        held.push_back(heldBackJson(entry, showing.catalogue));
    Json gaveWay = Json::array();
    for (const rotation::SideCondition condition : today.menu.gaveWay)
        gaveWay.push_back(wording::fill(wording::sentenceFor(condition)));
    return {{"child", today.family.box.alias},
            {"date", toText(today.when.day)},
            {"part", toText(today.when.part)},
            {"value", today.menu.value},
            {"proven", today.menu.proven},
            {"offers", offers},
            {"gave_way", gaveWay},
            {"held_back", held}};
}

void printPlain(const Json &menu)
{
    std::cout << menu["child"].get<std::string>() << ", " << menu["date"].get<std::string>() << ", "
              << menu["part"].get<std::string>() << '\n';
    if (menu["offers"].empty())
        std::cout << "Nothing can be offered now. The reasons stand below.\n";
    for (const Json &offer : menu["offers"]) {
        for (const Json &label : offer["label"])
            std::cout << "  " << label["words"].get<std::string>() << '\n';
        const Json &minutes = offer["minutes"];
        std::cout << "  " << offer["name"].get<std::string>() << "  ("
                  << "out " << minutes["out"] << ", play " << minutes["play"] << ", back "
                  << minutes["back"] << ")  " << offer["sentence"].get<std::string>() << '\n';
    }
    for (const Json &sentence : menu["gave_way"])
        std::cout << sentence.get<std::string>() << '\n';
    if (menu.contains("help"))
        std::cout << menu["help"].get<std::string>() << '\n';
    std::cout << "Held back:\n";
    for (const Json &entry : menu["held_back"]) {
        std::cout << "  " << entry["id"].get<std::string>() << ":";
        for (const Json &reason : entry["reasons"])
            std::cout << ' ' << reason.get<std::string>();
        std::cout << '\n';
    }
}

} // namespace

int runMenu(const Options &options, const MenuOptions &menu)
{
    const auto desk = Desk::open(options, menu.child);
    if (!desk)
        return fail(desk.error());
    usecase::Workplace &workplace = (*desk)->workplace();
    MenuRequest request;
    request.child = menu.child;
    if (const auto problem = readWords(menu, request))
        return fail(*problem);
    const auto family = usecase::loadFamily(workplace, menu.child);
    if (!family)
        return fail(family.error());
    if (const auto problem = readRoom(menu, *family, request.room))
        return fail(*problem);
    const Result<TodayMenu> today = usecase::suggestToday(workplace, request);
    if (!today)
        return fail(today.error());
    if (menu.shown) {
        if (const Outcome kept = usecase::markOffered(workplace, *today); !kept)
            return fail(kept.error());
    }
    Json json = menuJson(*today, {(*desk)->catalogue(), wording::regionOf(menu.locale)});
    if (json["offers"].size() < static_cast<std::size_t>(request.offers))
        json["help"] = wording::fill(
            wording::whatWouldHelp(today->gated, request.filters, request.minutes.has_value()));
    if (options.json)
        std::cout << json.dump() << '\n';
    else
        printPlain(json);
    return allWell;
}

} // namespace lidlark::cli
