#include "core/child/home_facts.h"

#include "core/catalogue/allergen.h"
#include "core/journal/fields.h"
#include "core/journal/latest.h"

#include <algorithm>
#include <array>
#include <tuple>

namespace lidlark::child {

namespace {

using journal::Event;
using journal::Kind;
using journal::Seen;

std::optional<Fact> mostCareful(const std::vector<Fact> &standing, std::string_view fact)
{
    if (fact == "born-by") { // the youngest that any statement allows
        const auto latest =
            std::max_element(standing.begin(), standing.end(),
                             [](const Fact &a, const Fact &b) { return a.value < b.value; });
        return latest == standing.end() ? std::nullopt : std::optional(*latest);
    }
    for (const std::string_view word : wordsOf(fact)) {
        for (const Fact &said : standing) {
            if (said.value == word)
                return said;
        }
    }
    return std::nullopt;
}

bool sameAuthorReplaced(const Event &event, std::span<const Event> events, const Seen &seen)
{
    return std::any_of(events.begin(), events.end(), [&](const Event &other) {
        return other.kind == Kind::Fact && other.author == event.author && seen.saw(other, event);
    });
}

} // namespace

std::vector<std::string_view> wordsOf(std::string_view fact)
{
    static constexpr std::array dangers{"latex",
                                        "wheat",
                                        "coeliac",
                                        "milk",
                                        "latex-risk",
                                        "mouths",
                                        "pica",
                                        "energy-limited",
                                        "pets",
                                        "seizure-shunt-or-neck",
                                        "heart-lung-or-shunt",
                                        "joint-or-heart",
                                        "mouth-or-swallowing",
                                        "broken-skin",
                                        "avoid-scent",
                                        "sound-sensitive",
                                        "reviewed-only"};
    if (std::find(dangers.begin(), dangers.end(), fact) != dangers.end() ||
        fact.starts_with("lacks-") || catalogue::isPlainAllergen(fact))
        return {"yes", "no"};
    if (fact == "likes-touch" || fact == "high-storage")
        return {"no", "yes"};
    if (fact == "lives")
        return {"yes", "visits", "no"};
    if (fact == "kind")
        return {"child", "adult"};
    return {};
}

std::string fieldsOf(const Fact &fact)
{
    return nlohmann::json{{"person", fact.person}, {"fact", fact.fact}, {"value", fact.value}}
        .dump();
}

std::optional<Fact> readFact(const Event &event)
{
    if (event.kind != Kind::Fact)
        return std::nullopt;
    const journal::Fields fields(event.fields);
    const auto person = fields.text("person");
    const auto fact = fields.text("fact");
    const auto value = fields.text("value");
    if (!person || !fact || !value)
        return std::nullopt;
    if (*fact == "born-by" && !dayFromText(*value))
        return std::nullopt;
    return Fact{*person, *fact, *value};
}

std::optional<Fact> foldFact(std::span<const Event> events, const Seen &seen)
{
    const Event *latest = journal::latestOf(events, Kind::Fact, seen);
    auto last = latest != nullptr ? readFact(*latest) : std::nullopt;
    if (!last)
        return std::nullopt;
    if (last->fact != "born-by" && wordsOf(last->fact).empty())
        return last;
    std::vector<Fact> standing;
    for (const Event &event : events) {
        const auto fact = readFact(event);
        if (fact && !sameAuthorReplaced(event, events, seen))
            standing.push_back(*fact);
    }
    return mostCareful(standing, last->fact);
}

const Event *firstStandingYes(std::span<const Event> events, const Seen &seen)
{
    const Event *first = nullptr;
    for (const Event &event : events) {
        const auto fact = readFact(event);
        if (!fact || fact->value != "yes" || sameAuthorReplaced(event, events, seen))
            continue;
        if (first == nullptr || std::tie(event.instant, event.device, event.counter) <
                                    std::tie(first->instant, first->device, first->counter))
            first = &event;
    }
    return first;
}

std::string fieldsOf(const Permission &permission, bool allowed)
{
    nlohmann::json fields{
        {"name", permission.name}, {"words", permission.words}, {"allowed", allowed}};
    if (permission.version != 0) {
        fields["months"] = permission.months;
        fields["version"] = permission.version;
    }
    return fields.dump();
}

std::optional<Permission> foldPermission(std::span<const Event> events, const Seen &seen)
{
    std::optional<Permission> standing;
    for (const Event &event : events) {
        if (event.kind != Kind::Permission)
            continue;
        const bool replaced = std::any_of(events.begin(), events.end(), [&](const Event &other) {
            return other.kind == Kind::Permission && seen.saw(other, event);
        });
        if (replaced)
            continue;
        const journal::Fields fields(event.fields);
        const auto name = fields.text("name");
        if (!name || !fields.isTrue("allowed"))
            return std::nullopt;
        standing = Permission{*name, fields.text("words").value_or(""),
                              fields.whole("months", 0, 240).value_or(0),
                              fields.whole("version", 0, 1'000'000).value_or(0)};
    }
    return standing;
}

} // namespace lidlark::child
