#include "core/journal/fields.h"
#include "core/journal/take_backs.h"
#include "core/usecase/export_tables.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace lidlark::usecase {

namespace {

using journal::Event;
using journal::Kind;
using journal::LaneKind;
using Json = nlohmann::json;

/// Ids made by chance, and hashes: they name nothing outside of this store.
bool isOfChance(std::string_view text)
{
    return text.size() >= 32 &&
           text.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

/// What of the fields a person can read: names for ids, and nothing for what has none.
class FieldWords
{
public:
    explicit FieldWords(const ExportSource &source) : m_source(source) {}

    void add(const std::string &key, const Json &value)
    {
        if (value.is_object()) {
            for (const auto &[inner, part] : value.items())
                add(nameOf(inner), part);
        } else if (value.is_array()) {
            for (const Json &part : value)
                add(key, part);
        } else if (const std::string text = textOf(value); !text.empty()) {
            m_words += (m_words.empty() ? "" : "; ") + key + ": " + text;
        }
    }
    [[nodiscard]] const std::string &words() const { return m_words; }

private:
    [[nodiscard]] std::string nameOf(const std::string &id) const
    {
        const std::string name = m_source.named(id);
        return name == id ? plainWords(id) : name;
    }
    [[nodiscard]] std::string textOf(const Json &value) const
    {
        if (value.is_boolean())
            return std::string(yesOrNo(value.get<bool>()));
        if (value.is_number_integer())
            return std::to_string(value.get<std::int64_t>());
        if (!value.is_string() || isOfChance(value.get<std::string>()))
            return {};
        return m_source.named(value.get<std::string>());
    }

    const ExportSource &m_source;
    std::string m_words;
};

std::string wordsOf(const ExportSource &source, const Event &event)
{
    // A child has a column of its own, a place its words; the others hold events together and say
    // nothing to people.
    static const std::set<std::string, std::less<>> leftOut{"child",  "place", "id",
                                                            "device", "with",  "piece"};
    FieldWords words(source);
    const journal::Fields fields(event.fields);
    if (event.kind == Kind::OwnEntry) // its text is a file, and stands in a table of its own
        return plainWords(fields.text("sort").value_or(""));
    for (const auto &[key, value] : fields.json().items()) {
        if (!leftOut.contains(key))
            words.add(plainWords(key), value);
    }
    return words.words();
}

/// Whose record it belongs to: the child it names, or the child of the play or box it is about;
/// empty: a home's, or nobody's here.
std::string childOf(const ExportSource &source, const Event &event)
{
    const journal::Fields fields(event.fields);
    if (const auto child = fields.text("child"))
        return *child;
    if (const auto id = fields.text("play")) {
        if (const play::Play *play = source.play({*id}))
            return play->child.value;
    }
    const auto box = std::ranges::find_if(source.boxes, [&event](const store::BoxRow &row) {
        return row.id.value == event.lane.scope;
    });
    return box != source.boxes.end() ? box->child.value : std::string();
}

/// What is told here at all (export_tables.h).
bool isTold(const Event &event)
{
    return event.kind != Kind::Met && event.kind != Kind::Offered &&
           event.kind != Kind::TakenBack && event.lane.kind != LaneKind::CheckIns &&
           event.lane.kind != LaneKind::Notes;
}

bool isOfThese(const ExportSource &source, const Event &event)
{
    const auto isScope = [&event](const auto &one) { return one.id.value == event.lane.scope; };
    if (std::ranges::none_of(source.boxes, isScope) && std::ranges::none_of(source.homes, isScope))
        return false;
    if (event.lane.kind != LaneKind::Home)
        return true;
    // A home's lane holds the plays of brothers and sisters too.
    const std::string child = childOf(source, event);
    return journal::Fields(event.fields).text("person") || event.kind == Kind::Reads ||
           std::ranges::any_of(source.boxes, [&child](const store::BoxRow &box) {
               return box.child.value == child;
           });
}

/// Whether each event stands, subject by subject (core/journal/take_backs.h).
std::vector<bool> standing(const std::vector<Event> &events)
{
    std::map<std::pair<journal::Lane, std::string>, std::vector<std::size_t>> subjects;
    for (std::size_t i = 0; i < events.size(); ++i)
        subjects[{events[i].lane, journal::subjectOf(events[i])}].push_back(i);
    std::vector<bool> stands(events.size());
    for (const auto &[subject, places] : subjects) {
        std::vector<Event> said;
        for (const std::size_t place : places)
            said.push_back(events[place]);
        const std::vector<bool> these = journal::whichStand(said);
        for (std::size_t i = 0; i < places.size(); ++i)
            stands[places[i]] = these[i];
    }
    return stands;
}

} // namespace

Tables notedTables(const ExportSource &source)
{
    OpenTable table{
        "everything noted",
        "noted",
        {"day", "part of day", "time", "noted by", "child", "home", "what", "words", "taken back"},
        {}};
    const std::vector<bool> stands = standing(source.events);
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < source.events.size(); ++i) {
        if (isTold(source.events[i]) && isOfThese(source, source.events[i]))
            order.push_back(i);
    }
    std::ranges::sort(order, {}, [&source](std::size_t i) {
        const Event &event = source.events[i];
        return std::tuple(event.instant, event.device, event.lane, event.counter);
    });
    for (const std::size_t i : order) {
        const Event &event = source.events[i];
        const bool ofHome =
            event.lane.kind == LaneKind::Home || event.lane.kind == LaneKind::Safety;
        const std::string child = childOf(source, event);
        table.add({event.when.day, event.when.part,
                   timeOfDay(localMinuteOfDay(event.instant.ms, event.offsetMinutes)), event.author,
                   child.empty() ? Cell() : Cell(source.named(child)),
                   ofHome ? Cell(source.named(event.lane.scope)) : Cell(),
                   plainWords(journal::kindNames.of(event.kind)), wordsOf(source, event),
                   yesOrNo(!stands[i])});
    }
    return std::vector{std::move(table)};
}

} // namespace lidlark::usecase
