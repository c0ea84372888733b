#include "core/base/entropy.h"
#include "core/cli/build_sheet_options.h"
#include "core/cli/commands.h"
#include "core/cli/crew_options.h"

#include <CLI/CLI.hpp>

#include <cstdio>
#include <exception>
#include <functional>
#include <iostream>

namespace {

using namespace lidlark::cli;

using Run = std::function<int()>;

void addMenu(CLI::App &app, const Options &options, MenuOptions &menu, Run &run)
{
    CLI::App *command = app.add_subcommand("menu", "Today's offers, and everything held back");
    command->add_option("--child", menu.child, "Alias of the child")->required();
    command->add_option("--date", menu.date, "Day, such as 2027-01-11 (default: today)");
    command->add_option("--part", menu.part, "morning, afternoon or evening (default: now)");
    command->add_option("--kite", menu.kite, "resting, steady, whirling, clouds or bag");
    command->add_option("--minutes", menu.minutes, "Minutes for out, play and back together")
        ->check(CLI::Range(1, 120));
    CLI::Option *room = command->add_option("--room", menu.room,
                                            "Who else is here: under-three, mouther, nobody-else, "
                                            "or aliases from the home sheet");
    room->delimiter(',');
    command->add_option("--locale", menu.locale,
                        "Whose label words: en_US for those of the United States, else Europe's");
    command->add_flag("--shown", menu.shown, "Keep that this menu was shown to the family");
    command->callback([&options, &menu, &run, room] {
        menu.roomSaid = room->count() > 0;
        run = [&options, &menu] { return runMenu(options, menu); };
    });
}

void addWeek(CLI::App &app, const Options &options, WeekOptions &week, Run &run)
{
    CLI::App *command = app.add_subcommand("week", "Seven days from today on, as they stand");
    command->add_option("--child", week.child, "Alias of the child (default: the only one)");
    command->add_option("--date", week.from, "First day, such as 2027-01-11 (default: today)");
    command->add_option("--per-day", week.perDay, "Activities a day")->check(CLI::Range(1, 3));
    command->callback(
        [&options, &week, &run] { run = [&options, &week] { return runWeek(options, week); }; });
}

void addFit(CLI::App &app, const Options &options, FitOptions &fit, Run &run)
{
    CLI::App *command = app.add_subcommand("fit", "Whether a thing is a small part");
    CLI::Option *shape =
        command->add_option("--shape", fit.shape, "sphere, disc, cylinder, box or ellipsoid");
    CLI::Option *mm = command->add_option("--mm", fit.mm, "Its sizes in millimetres: 20,30,40");
    mm->delimiter(',');
    shape->needs(mm);
    mm->needs(shape);
    command
        ->add_option("--csv", fit.csv,
                     "A table name,shape,dim1_mm,dim2_mm,dim3_mm; the answer is CSV too")
        ->excludes(shape)
        ->excludes(mm);
    command->require_option(1, 2);
    command->callback(
        [&options, &fit, &run] { run = [&options, &fit] { return runFit(options, fit); }; });
}

void addForecastBox(CLI::App &app, const Options &options, ForecastBoxOptions &asked, Run &run)
{
    CLI::App *command =
        app.add_subcommand("forecast-box", "How long each item of a box probably lasts");
    command->add_option("--child", asked.child, "Alias of the child (default: the only one)");
    command->add_option("--days-to-round", asked.daysToRound, "Days until the next restock round")
        ->check(CLI::Range(0, 3650));
    command->callback([&options, &asked, &run] {
        run = [&options, &asked] { return runForecastBox(options, asked); };
    });
}

void addDraw(CLI::App &app, DrawOptions &draw, Run &run)
{
    CLI::App *command = app.add_subcommand("draw", "Compose the drawings into SVG files");
    command->add_option("from", draw.from, "Folder with hands, parts, items and scenes")
        ->required();
    command->add_option("--to", draw.to, "Folder for the SVG files")->required();
    command->add_option("--only", draw.only, "Some of them, such as scene-snip-hedge")
        ->delimiter(',');
    command->callback([&draw, &run] { run = [&draw] { return runDraw(draw); }; });
}

void addPack(CLI::App &app, PackOptions &pack, Run &run)
{
    CLI::App *command = app.add_subcommand("pack", "Pack YAML files so that they open fast");
    command->add_option("from", pack.from, "Folder of YAML files")->required();
    command->add_option("--to", pack.to, "Folder for the packed ones")->required();
    command->callback([&pack, &run] { run = [&pack] { return runPack(pack); }; });
}

void addExport(CLI::App &app, const Options &options, ExportOptions &asked, Run &run)
{
    CLI::App *command =
        app.add_subcommand("export", "All that is held about a family, in open formats");
    command->add_option("--to", asked.to, "A new or empty folder")->required();
    command->add_option("--child", asked.child, "Alias of the child (default: all of the store)");
    command->callback([&options, &asked, &run] {
        run = [&options, &asked] { return runExport(options, asked); };
    });
}

/// A command that is about one child.
void addChildCommand(CLI::App &app, const char *name, const char *about, std::string &child,
                     Run &run, const std::function<int()> &command)
{
    CLI::App *sub = app.add_subcommand(name, about);
    sub->add_option("--child", child, "Alias of the child (default: the store's only child)");
    sub->callback([&run, command] { run = command; });
}

/// A command that reads JSON.
void addInputCommand(CLI::App &app, const char *name, const char *about, std::string &input,
                     Run &run, const std::function<int()> &command)
{
    CLI::App *sub = app.add_subcommand(name, about);
    sub->add_option("input", input, "JSON text or a file; standard input when absent");
    sub->callback([&run, command] { run = command; });
}

void addForecast(CLI::App &app, const Options &options, ForecastOptions &forecast, Run &run)
{
    CLI::App *command = app.add_subcommand("forecast", "How many pieces go in some days");
    command->add_option("--shape", forecast.shape, "Pieces the belief rests on")->required();
    command->add_option("--rate", forecast.rate, "Days the belief rests on")->required();
    command->add_option("--days", forecast.days, "Days ahead")->required();
    command->add_option("--p", forecast.p, "Chance that no more pieces go")->required();
    command->callback([&] { run = [&] { return runForecast(options, forecast); }; });
}

int answer(int argc, char **argv)
{
    if (!lidlark::startRandomness()) {
        std::cerr << "This computer gives no randomness. Nothing was changed.\n";
        return problemInData;
    }
    CLI::App app("lidlark-cli: play boxes, menus and put-back at the command line");
    app.require_subcommand(1);
    app.fallthrough();
    Options options;
    app.add_option("--store", options.store, "The store's file");
    app.add_option("--clock", options.clock, "The device's clock, such as 2027-01-11T18:25:00Z");
    app.add_option("--catalogue", options.catalogue, "Folder of the catalogue");
    app.add_flag("--json", options.json, "JSON on standard output");

    Run run;
    MenuOptions menu;
    WeekOptions week;
    FitOptions fit;
    ForecastOptions forecast;
    SolveOptions problem;
    std::string child;
    std::string input = "-";
    std::string folder;
    std::vector<std::string> changed;
    std::vector<std::string> written;
    int day = 1;
    addMenu(app, options, menu, run);
    addWeek(app, options, week, run);
    addFit(app, options, fit, run);
    BuildSheetOptions sheet;
    addBuildSheet(app, options, sheet, run);
    ForecastBoxOptions lasting;
    addForecastBox(app, options, lasting, run);
    addForecast(app, options, forecast, run);
    CrewOptions crew;
    addCrewCommands(app, options, crew, run);
    DrawOptions draw;
    addDraw(app, draw, run);
    PackOptions pack;
    addPack(app, pack, run);
    ExportOptions copy;
    addExport(app, options, copy, run);
    addChildCommand(app, "box", "What lies in the box", child, run,
                    [&] { return runBox(options, child); });
    addChildCommand(app, "notebook", "What was played", child, run,
                    [&] { return runNotebook(options, child); });
    addInputCommand(app, "play", "Begin a play", input, run,
                    [&] { return runPlay(options, input); });
    addInputCommand(app, "put-back", "Everything home, with what is different", input, run,
                    [&] { return runPutBack(options, input); });
    addInputCommand(app, "count", "A full count of some items", input, run,
                    [&] { return runCount(options, input); });
    addInputCommand(app, "found", "A lost piece turned up", input, run,
                    [&] { return runFound(options, input); });
    addInputCommand(app, "answer", "Answer a question about an item", input, run,
                    [&] { return runAnswer(options, input); });
    addInputCommand(app, "request", "Ask for an item, move a request on, or count in what came",
                    input, run, [&] { return runRequest(options, input); });
    addInputCommand(app, "tend", "Opened, left open, checked, mouthed, washed, gone, thrown away",
                    input, run, [&] { return runTend(options, input); });
    addInputCommand(app, "wish", "Keep an activity on a day, leave it free, or give it back", input,
                    run, [&] { return runWish(options, input); });
    addInputCommand(app, "pin-grading", "The therapist pins how an activity is played", input, run,
                    [&] { return runPinGrading(options, input); });
    addInputCommand(app, "take-back", "Take back what was noted today, or put it in again", input,
                    run, [&] { return runTakeBack(options, input); });
    addChildCommand(app, "noted", "What was noted today", child, run,
                    [&] { return runNoted(options, child); });
    app.add_subcommand("verify", "Refold everything and compare")->callback([&] {
        run = [&] { return runVerify(options); };
    });
    CLI::App *solve =
        app.add_subcommand("menu-solve", "Solve a menu problem in the text format lidrot 1");
    solve->add_option("file", problem.file, "The problem's file")->required();
    solve->add_option("--limit", problem.limit, "Seconds until the best so far is enough")
        ->check(CLI::Range(0.0, 86'400.0));
    solve->callback([&] { run = [&] { return runMenuSolve(options, problem); }; });
    CLI::App *recheck =
        app.add_subcommand("recheck", "Which boxes a changed item or activity touches, and how");
    recheck->add_option("files", changed, "Changed YAML files")->required();
    recheck->callback([&] { run = [&] { return runRecheck(options, changed); }; });
    CLI::App *lint = app.add_subcommand(
        "lint-activity",
        "The authoring checklist over activity files: findings, and open questions");
    lint->add_option("files", written, "Activity YAML files")->required();
    lint->callback([&] { run = [&] { return runLintActivity(options, written); }; });
    CLI::App *demo = app.add_subcommand("demo", "Write the demo island, or move it on");
    demo->add_option("folder", folder, "Folder for the stores")->required();
    demo->add_option("--day", day, "Move on to this day (1 = 11 January 2027)");
    demo->callback([&] { run = [&] { return runDemo(options, folder, day); }; });

    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError &error) {
        return app.exit(error) == 0 ? allWell : wrongUse;
    }
    return run();
}

} // namespace

int main(int argc, char **argv)
{
    try {
        return answer(argc, argv);
    } catch (const std::exception &error) { // out of memory, say: nothing half written stays
        std::fprintf(stderr, "This could not be done (%s). Nothing was changed.\n", error.what());
        return problemInData;
    }
}
