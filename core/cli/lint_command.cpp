#include "core/catalogue/lint.h"
#include "core/cli/commands.h"

#include <nlohmann/json.hpp>

#include <cmath>
#include <filesystem>
#include <iostream>
#include <set>

namespace lidlark::cli {

namespace {

using Json = nlohmann::ordered_json;
using catalogue::Activity;
using catalogue::Catalogue;

/// As the loader names it: "activities/slow-oars.yaml".
std::string nameIn(const std::string &file)
{
    return "activities/" + std::filesystem::path(file).filename().string();
}

const Activity *entryOf(const std::string &file, const Catalogue &catalogue)
{
    return catalogue.activity({std::filesystem::path(file).stem().string()});
}

/// What the loader refused; it names the line.
Json problemsOf(const std::string &file, const Catalogue &catalogue)
{
    Json findings = Json::array();
    for (const catalogue::Problem &problem : catalogue.problems()) {
        if (problem.file == nameIn(file))
            findings.push_back({{"rule", "loader"},
                                {"line", problem.line},
                                {"field", problem.field},
                                {"problem", problem.reason},
                                {"remedy", "Mend this first: the entry is left out until then."}});
    }
    return findings;
}

void addLint(const Activity &activity, const Catalogue &catalogue, Json &entry)
{
    for (const catalogue::LintFinding &finding : catalogue::lint(activity, catalogue))
        entry["findings"].push_back({{"rule", catalogue::lintRuleNames.of(finding.rule)},
                                     {"field", finding.field},
                                     {"problem", finding.problem},
                                     {"remedy", finding.remedy}});
    const double grade = catalogue::readingGradeOf(activity);
    entry["reading_grade"] = std::round(grade * 100) / 100;
    entry["for_people"] = Json::array();
    for (const catalogue::HumanQuestion &question : catalogue::questionsForPeople(activity))
        entry["for_people"].push_back({{"number", question.number}, {"question", question.text}});
}

Json entryJson(const std::string &file, const Catalogue &catalogue)
{
    const Activity *activity = entryOf(file, catalogue);
    Json entry{{"file", file},
               {"id", activity != nullptr ? Json(activity->id.value) : Json()},
               {"findings", problemsOf(file, catalogue)}};
    if (activity != nullptr)
        addLint(*activity, catalogue, entry);
    entry["sound"] = entry["findings"].empty();
    return entry;
}

void printFinding(const Json &finding)
{
    std::cout << "  ";
    if (finding.value("line", 0) > 0)
        std::cout << "line " << finding["line"] << ", ";
    const auto field = finding["field"].get<std::string>();
    std::cout << (field.empty() ? "" : field + ": ") << finding["problem"].get<std::string>()
              << "\n    " << finding["remedy"].get<std::string>() << '\n';
}

void printEntry(const Json &entry)
{
    std::cout << entry["file"].get<std::string>() << '\n';
    for (const Json &finding : entry["findings"])
        printFinding(finding);
    if (entry["id"].is_null())
        return;
    if (entry["findings"].empty())
        std::cout << "  Nothing found by machine. School grade " << entry["reading_grade"] << ".\n";
    std::cout << "  Not checked, for a person to answer:\n";
    for (const Json &question : entry["for_people"])
        std::cout << "    " << question["number"] << ". " << question["question"].get<std::string>()
                  << '\n';
}

/// Two files of one name would stand for one entry.
std::optional<std::string> givenTwice(const std::vector<std::string> &files)
{
    std::set<std::string> seen;
    for (const std::string &file : files) {
        if (!seen.insert(nameIn(file)).second)
            return file;
    }
    return std::nullopt;
}

} // namespace

int runLintActivity(const Options &options, const std::vector<std::string> &files)
{
    if (const auto twice = givenTwice(files)) {
        std::cerr << *twice << " is given twice.\n";
        return wrongUse;
    }
    const Result<Catalogue> edited = catalogueWithActivities(options, files);
    if (!edited) {
        std::cerr << "Nothing could be read from " << edited.error().detail << ".\n";
        return wrongUse;
    }
    Json entries = Json::array();
    bool sound = true;
    for (const std::string &file : files) {
        entries.push_back(entryJson(file, *edited));
        sound = sound && entries.back()["sound"].get<bool>();
    }
    if (options.json) {
        std::cout << Json{{"sound", sound}, {"entries", entries}}.dump() << '\n';
    } else {
        for (const Json &entry : entries)
            printEntry(entry);
    }
    return sound ? allWell : problemInData;
}

} // namespace lidlark::cli
