#include "core/store/home_repository.h"
#include "core/usecase/export_tables.h"

#include <set>

namespace lidlark::usecase {

namespace {

constexpr const char *familyGroup = "the family";

std::optional<Day> bornBy(const child::Person &person)
{
    return person.age ? std::optional(person.age->latestBirth) : std::nullopt;
}

Result<OpenTable> peopleOf(const ExportSource &source)
{
    OpenTable table{familyGroup,
                    "people",
                    {"home", "name", "child or adult", "lives here", "born on or before",
                     "puts things in the mouth", "eats what is no food", "tires fast"},
                    {}};
    store::HomeRepository homes(source.workplace.database);
    for (const child::HomeSheet &home : source.homes) {
        for (const child::Person &person : home.people) {
            const auto tires = homes.fact(home.id, person.id.value, "energy-limited");
            if (!tires)
                return tires.error();
            table.add({source.named(home.id.value), person.alias,
                       child::personKindNames.of(person.kind), person.visits ? "visits" : "yes",
                       bornBy(person), child::answerNames.of(person.mouths), yesOrNo(person.pica),
                       *tires});
        }
    }
    return table;
}

/// Adds what stands on one home sheet, a line for each thing.
class SheetLines
{
public:
    SheetLines(OpenTable &table, std::string home) : m_table(table), m_home(std::move(home)) {}

    void add(const std::string &what, const Cell &value) { m_table.add({m_home, what, value}); }
    void add(const std::string &what, child::Answer answer)
    {
        add(what, Cell(child::answerNames.of(answer)));
    }
    void addFlag(const std::string &what, bool yes) { add(what, Cell(yesOrNo(yes))); }
    void addWords(const std::string &what, const std::string &words)
    {
        if (!words.empty())
            add(what, Cell(words));
    }

private:
    OpenTable &m_table;
    std::string m_home;
};

void addAvoided(SheetLines &lines, const child::Avoidances &avoided)
{
    lines.add("latex must stay away", avoided.latex);
    lines.add("latex may be a risk", avoided.latexRisk);
    lines.add("wheat must stay away", avoided.wheat);
    lines.add("coeliac disease", avoided.coeliac);
    lines.add("milk must stay away", avoided.milk);
    for (const auto &[name, answer] : avoided.more)
        lines.add(name + " must stay away", answer);
    lines.addWords("must stay away too", avoided.others);
}

void addFlags(SheetLines &lines, const child::MedicalFlags &flags)
{
    lines.addFlag("seizures, a shunt or the neck", flags.seizureShuntOrNeck);
    lines.addFlag("heart, lungs or a shunt", flags.heartLungOrShunt);
    lines.addFlag("joints or heart", flags.jointOrHeart);
    lines.addFlag("mouth or swallowing", flags.mouthOrSwallowing);
    lines.addFlag("broken skin", flags.brokenSkin);
    lines.addFlag("no scents", flags.avoidScent);
    lines.addFlag("loud sounds are hard", flags.soundSensitive);
}

OpenTable sheetsOf(const ExportSource &source)
{
    OpenTable table{familyGroup, "home sheet", {"home", "what", "answer"}, {}};
    for (const child::HomeSheet &home : source.homes) {
        SheetLines lines(table, source.named(home.id.value));
        addAvoided(lines, home.avoidances);
        addFlags(lines, home.flags);
        lines.add("likes to be touched", home.likesTouch);
        lines.addFlag("pets", home.pets);
        lines.addFlag("a high place for the box", home.highStorage);
        lines.addFlag("only what was reviewed", home.reviewedOnly);
        for (const ItemId &item : home.missingExtras)
            lines.add("not in this home", Cell(source.item(item)));
        if (home.bedtimeMinute)
            lines.add("bedtime", Cell(timeOfDay(*home.bedtimeMinute)));
        lines.addWords("emergency number", home.emergencyNumber);
        lines.addWords("poison line", home.poisonLine);
    }
    return table;
}

OpenTable permissionsOf(const ExportSource &source)
{
    OpenTable table{familyGroup,
                    "allowed by the therapist",
                    {"home", "what", "in words", "from months", "for version"},
                    {}};
    for (const child::HomeSheet &home : source.homes) {
        const std::string name = source.named(home.id.value);
        const child::Permissions &allowed = home.permissions;
        for (const auto &[word, yes] : {std::pair("spinning", allowed.spin),
                                        {"blowing", allowed.breath},
                                        {"being lifted", allowed.lift},
                                        {"a straw", allowed.straw}}) {
            if (yes)
                table.add({name, word, {}, {}, {}});
        }
        if (!allowed.smallWhenAway.empty())
            table.add(
                {name, "small parts while a small child is away", allowed.smallWhenAway, {}, {}});
        for (const auto &[activity, floor] : allowed.floors)
            table.add({name, source.activity(activity), {}, floor.months, floor.version});
    }
    return table;
}

Result<OpenTable> languagesOf(const ExportSource &source)
{
    OpenTable table{familyGroup, "languages", {"home", "person", "reads"}, {}};
    store::HomeRepository homes(source.workplace.database);
    for (const child::HomeSheet &home : source.homes) {
        std::set<std::string> people{source.workplace.device.person};
        for (const child::Person &person : home.people)
            people.insert(person.alias);
        for (const std::string &person : people) {
            const auto language = homes.readingLanguage(home.id, person);
            if (!language)
                return language.error();
            if (*language)
                table.add({source.named(home.id.value), person, **language});
        }
    }
    return table;
}

} // namespace

Tables familyTables(const ExportSource &source)
{
    Result<OpenTable> people = peopleOf(source);
    Result<OpenTable> languages = languagesOf(source);
    if (!people || !languages)
        return !people ? people.error() : languages.error();
    return std::vector{*std::move(people), sheetsOf(source), permissionsOf(source),
                       *std::move(languages)};
}

} // namespace lidlark::usecase
