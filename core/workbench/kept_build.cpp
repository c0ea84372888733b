#include "core/workbench/kept_build.h"

#include "core/journal/fields.h"
#include "core/workbench/standing.h"

#include <algorithm>

namespace lidlark::workbench {

namespace {

using journal::Event;
using journal::Fields;
using Json = nlohmann::json;

std::optional<KeptBuild> readHead(const Event &event)
{
    const Fields fields(event.fields);
    const auto id = fields.text("build");
    const auto day = dayFromText(fields.text("day").value_or(""));
    if (!id || id->empty() || !day || fields.text("box"))
        return std::nullopt;
    KeptBuild head;
    head.id = {*id};
    head.day = *day;
    head.name = fields.text("name").value_or("");
    head.currency = fields.text("currency").value_or(head.currency);
    head.sparesPercent = fields.whole("spares", 0, mostSparesPercent).value_or(head.sparesPercent);
    return head;
}

std::optional<Departure> departureFrom(const Json &json)
{
    const Fields fields(json.dump(-1, ' ', false, Json::error_handler_t::replace));
    const auto item = fields.text("item");
    const auto why = whyNames.parse(fields.text("why").value_or(""));
    if (!item || !why)
        return std::nullopt;
    return Departure{{*item}, *why, fields.text("words").value_or("")};
}

/// A box of which a part cannot be read is no box: half a lid list would be packed as a whole one.
bool readPersonal(const Json &json, Personal &personal)
{
    const auto hand = handNames.parse(json.value("hand", std::string("unsaid")));
    const Json avoids = json.value("avoids", Json::array());
    const Json departures = json.value("departures", Json::array());
    if (!hand || !avoids.is_array() || !departures.is_array())
        return false;
    personal.hand = *hand;
    for (const Json &one : avoids) {
        const auto what =
            one.is_string() ? child::avoidedNames.parse(one.get<std::string>()) : std::nullopt;
        if (!what)
            return false;
        personal.avoids.insert(*what);
    }
    for (const Json &one : departures) {
        const auto departure = departureFrom(one);
        if (!departure)
            return false;
        personal.departures.push_back(*departure);
    }
    return true;
}

std::optional<KeptBox> readBox(const Event &event)
{
    const Fields fields(event.fields);
    const auto code = fields.text("box");
    const auto parts = partsFrom(fields.json().value("parts", Json()));
    const auto hand = fields.json().find("hand");
    const bool handIsText = hand == fields.json().end() || hand->is_string();
    KeptBox kept;
    if (!code || code->empty() || !parts || !handIsText ||
        !readPersonal(fields.json(), kept.personal))
        return std::nullopt;
    kept.box = {
        *code, fields.text("whose").value_or(""), {fields.text("design").value_or("")}, *parts};
    return kept;
}

bool isRemoval(const Event &event)
{
    return Fields(event.fields).isTrue("removed");
}

const Event *latestAmong(const std::vector<const Event *> &standing)
{
    const Event *latest = nullptr;
    for (const Event *event : standing) {
        if (latest == nullptr || writtenLater(*event, *latest))
            latest = event;
    }
    return latest;
}

/// A removal beside a box that was written without knowing of it takes the box away in vain: what
/// may have been packed is shown, and asked about.
std::optional<KeptBox> boxFrom(const std::vector<const Event *> &said, const journal::Seen &seen)
{
    const auto standing = standingOf(said, seen);
    std::vector<const Event *> boxes;
    std::ranges::copy_if(standing, std::back_inserter(boxes),
                         [](const Event *event) { return !isRemoval(*event); });
    const Event *latest = latestAmong(boxes);
    if (latest == nullptr)
        return std::nullopt;
    std::optional<KeptBox> box = readBox(*latest);
    box->disputed = std::ranges::any_of(
        standing, [&](const Event *event) { return event->fields != latest->fields; });
    return box;
}

/// "K10" as "K" and 10, so that it comes after K2.
std::pair<std::string, std::string> codeOrder(const std::string &code)
{
    const auto digits = code.find_last_not_of("0123456789") + 1;
    std::string number = code.substr(digits);
    number.erase(0, number.find_first_not_of('0'));
    return {code.substr(0, digits),
            std::string(20 - std::min<std::size_t>(20, number.size()), '0') + number};
}

bool comesFirst(const KeptBox &a, const KeptBox &b)
{
    const auto orderA = codeOrder(a.box.code);
    const auto orderB = codeOrder(b.box.code);
    return orderA != orderB ? orderA < orderB : a.box.code < b.box.code;
}

} // namespace

const KeptBox *KeptBuild::box(const std::string &code) const
{
    const auto found =
        std::ranges::find_if(boxes, [&](const KeptBox &kept) { return kept.box.code == code; });
    return found != boxes.end() ? &*found : nullptr;
}

Build KeptBuild::build() const
{
    Build plain{id, currency, sparesPercent, {}};
    for (const KeptBox &kept : boxes)
        plain.boxes.push_back(kept.box);
    return plain;
}

std::string fieldsOfHead(const KeptBuild &build)
{
    return Json{{"build", build.id.value},
                {"name", build.name},
                {"day", toText(build.day)},
                {"currency", build.currency},
                {"spares", build.sparesPercent}}
        .dump();
}

std::string fieldsOfBox(const BuildId &build, const KeptBox &box)
{
    Json avoids = Json::array();
    for (const child::Avoided what : box.personal.avoids)
        avoids.push_back(child::avoidedNames.of(what));
    Json departures = Json::array();
    for (const Departure &departure : box.personal.departures)
        departures.push_back({{"item", departure.item.value},
                              {"why", whyNames.of(departure.why)},
                              {"words", departure.words}});
    return Json{{"build", build.value},
                {"box", box.box.code},
                {"whose", box.box.whose},
                {"design", box.box.design.value},
                {"parts", jsonOf(box.box.parts)},
                {"hand", handNames.of(box.personal.hand)},
                {"avoids", avoids},
                {"departures", departures}}
        .dump();
}

std::string fieldsOfBoxRemoval(const BuildId &build, const std::string &code)
{
    return Json{{"build", build.value}, {"box", code}, {"removed", true}}.dump();
}

std::optional<KeptBuild> foldBuild(std::span<const Event> events, const journal::Seen &seen)
{
    std::vector<const Event *> heads;
    std::map<std::string, std::vector<const Event *>> boxes;
    for (const Event &event : events) {
        if (event.kind != journal::Kind::Build)
            continue;
        if (readHead(event))
            heads.push_back(&event);
        else if (const auto code = Fields(event.fields).text("box");
                 code && (isRemoval(event) || readBox(event)))
            boxes[*code].push_back(&event);
    }
    const Event *latest = latestAmong(standingOf(heads, seen));
    if (latest == nullptr)
        return std::nullopt;
    std::optional<KeptBuild> build = readHead(*latest);
    for (const auto &[code, said] : boxes) {
        if (auto box = boxFrom(said, seen))
            build->boxes.push_back(*std::move(box));
    }
    std::ranges::sort(build->boxes, comesFirst);
    build->purchases = foldPurchases(events);
    return build;
}

} // namespace lidlark::workbench
