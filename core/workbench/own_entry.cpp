#include "core/workbench/own_entry.h"

#include "core/catalogue/own_files.h"
#include "core/journal/fields.h"
#include "core/journal/latest.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace lidlark::workbench {

namespace {

using journal::Event;
using journal::Fields;
using journal::Kind;
using journal::Seen;
using Json = nlohmann::json;

constexpr std::size_t longestId = 40;
constexpr int highestVersion = 1'000'000; // as the loader has it
constexpr std::string_view signedOffState = "signed-off";

/// It goes into subjects and file names.
std::optional<std::string> idIn(const Fields &fields)
{
    auto id = fields.text("id");
    const bool plain =
        id && !id->empty() && id->size() <= longestId &&
        id->find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == std::string::npos;
    return plain ? id : std::nullopt;
}

std::optional<std::string> textIn(const Fields &fields)
{
    auto text = fields.text("text");
    return text && text->size() <= catalogue::longestOwnText ? text : std::nullopt;
}

Kind eventKindOf(OwnSort sort)
{
    return sort == OwnSort::Item ? Kind::OwnItem : Kind::OwnActivity;
}

bool isEarlier(const Event &a, const Event &b)
{
    return std::tie(a.instant, a.device, a.counter, a.fields) <
           std::tie(b.instant, b.device, b.counter, b.fields);
}

OwnText textOf(const Event &event, const OwnSaid &said)
{
    return {said.text, said.version, event.author};
}

/// The last text that was ever sent, whatever became of it.
OwnText lastText(std::span<const Event> events, OwnSort sort)
{
    const Event *last = nullptr;
    for (const Event &event : events) {
        const auto said = ownSaidFrom(event);
        if (said && said->sort == sort && !said->text.empty() &&
            (last == nullptr || isEarlier(*last, event)))
            last = &event;
    }
    return last != nullptr ? textOf(*last, *ownSaidFrom(*last)) : OwnText{};
}

std::optional<OwnEntry> foldOne(std::span<const Event> events, OwnSort sort, const Seen &seen)
{
    const std::vector<Event> heads = standingOwnEvents(events, sort, seen);
    if (heads.empty())
        return std::nullopt;
    OwnEntry entry{ownSaidFrom(heads.front())->id, sort, {}, lastText(events, sort), false, false};
    bool someWithdrawn = false;
    for (const Event &head : heads) {
        const OwnSaid said = *ownSaidFrom(head);
        someWithdrawn = someWithdrawn || said.text.empty();
        const bool repeated = std::ranges::any_of(
            entry.standing, [&said](const OwnText &other) { return other.text == said.text; });
        if (!said.text.empty() && !repeated)
            entry.standing.push_back(textOf(head, said));
    }
    entry.withdrawn = entry.standing.empty();
    entry.unsettled = entry.standing.size() > 1 || (someWithdrawn && !entry.withdrawn);
    if (!entry.standing.empty())
        entry.known = entry.standing.front();
    return entry;
}

} // namespace

std::string fieldsOf(const OwnKept &kept)
{
    return Json{
        {"id", kept.id}, {"state", kept.signedOff ? signedOffState : "draft"}, {"text", kept.text}}
        .dump();
}

std::optional<OwnKept> ownKeptFrom(const Event &event)
{
    if (event.kind != Kind::OwnItem && event.kind != Kind::OwnActivity)
        return std::nullopt;
    const Fields fields(event.fields);
    auto id = idIn(fields);
    auto text = textIn(fields);
    if (!id || !text)
        return std::nullopt;
    return OwnKept{*std::move(id), event.kind == Kind::OwnItem ? OwnSort::Item : OwnSort::Activity,
                   *std::move(text), fields.text("state") == signedOffState};
}

std::optional<OwnKept> foldOwnKept(std::span<const Event> events, const Seen &seen)
{
    std::vector<Event> readable;
    std::ranges::copy_if(events, std::back_inserter(readable),
                         [](const Event &event) { return ownKeptFrom(event).has_value(); });
    for (const OwnSort sort : {OwnSort::Item, OwnSort::Activity}) {
        if (const Event *latest = journal::latestOf(readable, eventKindOf(sort), seen)) {
            auto kept = ownKeptFrom(*latest);
            return kept->text.empty() ? std::nullopt : std::move(kept);
        }
    }
    return std::nullopt;
}

std::string fieldsOf(const OwnSaid &said)
{
    return Json{{"id", said.id},
                {"sort", ownSortNames.of(said.sort)},
                {"text", said.text},
                {"version", said.version}}
        .dump();
}

std::optional<OwnSaid> ownSaidFrom(const Event &event)
{
    if (event.kind != Kind::OwnEntry)
        return std::nullopt;
    const Fields fields(event.fields);
    auto id = idIn(fields);
    auto text = textIn(fields);
    const auto sort = ownSortNames.parse(fields.text("sort").value_or(""));
    const auto version = fields.whole("version", 1, highestVersion);
    if (!id || !text || !sort || !version)
        return std::nullopt;
    // Built-in items can be corrected, built-in activities cannot be written over.
    if (*sort == OwnSort::Activity && !catalogue::isOwnId(*id))
        return std::nullopt;
    return OwnSaid{*std::move(id), *sort, *std::move(text), *version};
}

std::vector<Event> standingOwnEvents(std::span<const Event> events, OwnSort sort, const Seen &seen)
{
    // A device has seen what it said before, so its last word alone can stand. A copied phone has
    // two of one counter.
    std::map<DeviceId, std::vector<const Event *>> last;
    for (const Event &event : events) {
        const auto said = ownSaidFrom(event);
        if (!said || said->sort != sort)
            continue;
        std::vector<const Event *> &own = last[event.device];
        if (!own.empty() && own.front()->counter < event.counter)
            own.clear();
        if (own.empty() || own.front()->counter == event.counter)
            own.push_back(&event);
    }
    std::vector<Event> heads;
    for (const auto &[device, own] : last) {
        for (const Event *event : own) {
            const bool replaced = std::ranges::any_of(last, [&](const auto &other) {
                return std::ranges::any_of(
                    other.second, [&](const Event *later) { return seen.saw(*later, *event); });
            });
            if (!replaced)
                heads.push_back(*event);
        }
    }
    std::ranges::sort(heads, [](const Event &a, const Event &b) { return isEarlier(b, a); });
    return heads;
}

std::vector<OwnEntry> foldOwnEntries(std::span<const Event> events, const Seen &seen)
{
    std::vector<OwnEntry> entries;
    for (const OwnSort sort : {OwnSort::Item, OwnSort::Activity}) {
        if (auto entry = foldOne(events, sort, seen))
            entries.push_back(*std::move(entry));
    }
    return entries;
}

} // namespace lidlark::workbench
