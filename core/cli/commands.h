#pragma once

#include "core/cli/options.h"

#include <string>
#include <vector>

namespace lidlark::cli {

struct MenuOptions {
    std::string child;
    std::string date;
    std::string part;
    std::string kite;
    int minutes = 0;
    std::vector<std::string> room; ///< Room words, or aliases of the home sheet.
    bool roomSaid = false;
    bool shown = false; ///< Keep that this menu was shown.
    std::string locale; ///< Whose label words; empty: Europe's.
};

/// What `week` is asked.
struct WeekOptions {
    std::string child;
    std::string from; ///< Day; empty: today.
    int perDay = 1;
};

/// What `forecast-box` is asked.
struct ForecastBoxOptions {
    std::string child;
    int daysToRound = 28; ///< Until the next restock round; monthly where nobody says.
};

/// What `menu-solve` is asked.
struct SolveOptions {
    std::string file;
    double limit = 60; ///< Seconds.
};

/// What `sheet` is asked.
struct BuildSheetOptions {
    std::string file;
    std::string oneMore; ///< A box's code: what would one more like it cost? Empty: not asked.
};

/// What `fit` is asked about: one solid, or a table of them.
struct FitOptions {
    std::string shape;
    std::vector<double> mm;
    std::string csv; ///< File with the columns name,shape,dim1_mm,dim2_mm,dim3_mm.
};

/// What `forecast` is asked: a belief of so many pieces in so many days, days ahead, a chance.
struct ForecastOptions {
    double shape = 0;
    double rate = 0;
    double days = 0;
    double p = 0;
};

/// What `draw` is asked.
struct DrawOptions {
    std::string from;              ///< Folder with hands, parts, items and scenes.
    std::string to;                ///< Folder for the SVG files.
    std::vector<std::string> only; ///< "scene-snip-hedge"; empty: all.
};

/// What `pack` is asked.
struct PackOptions {
    std::string from; ///< A folder of YAML files, and those within it.
    std::string to;   ///< The same files again, packed.
};

/// What `export` is asked.
struct ExportOptions {
    std::string to;    ///< A new or empty folder.
    std::string child; ///< Alias; empty: every child of the store.
};

/// Each runs one command and returns its exit status.
int runDemo(const Options &options, const std::string &folder, int day);
int runMenu(const Options &options, const MenuOptions &menu);
int runWeek(const Options &options, const WeekOptions &week);
int runBox(const Options &options, const std::string &child);
int runForecastBox(const Options &options, const ForecastBoxOptions &asked);
int runNotebook(const Options &options, const std::string &child);
int runVerify(const Options &options);
/// All that the store holds about a family, in open formats (core/usecase/export_record.h).
int runExport(const Options &options, const ExportOptions &asked);
/// Size check. A table is answered as CSV; a bad row goes to standard error with its line and
/// field, and the others are answered all the same.
int runFit(const Options &options, const FitOptions &fit);
/// The smallest number of pieces with at least the chance that no more go.
int runForecast(const Options &options, const ForecastOptions &forecast);
/// Solves one problem in the text format `lidrot 1` (core/rotation/instance.h).
int runMenuSolve(const Options &options, const SolveOptions &solve);
/// What to buy for a build, and what is in each of its boxes (README, build sheet).
int runBuildSheet(const Options &options, const BuildSheetOptions &asked);
/// Composes drawings (core/drawing) into SVG files. The build runs it for the app's resources.
int runDraw(const DrawOptions &asked);
/// Writes a folder of YAML files once more, packed (core/base/packed_tree.h), for the app's
/// resources. A file that is no YAML of ours is named with its line, and the others are written.
int runPack(const PackOptions &asked);
/// The gate over every box of the store, before and after a change: who is affected, and how.
/// @param files changed or new item files (or activity files, by the folder they lie in).
int runRecheck(const Options &options, const std::vector<std::string> &files);
/// The authoring checklist over activity files, each in its place in the catalogue: what a machine
/// can see is found, what only a person can judge is asked. A file that cannot be read is wrong
/// use.
int runLintActivity(const Options &options, const std::vector<std::string> &files);
/// @param input JSON text, a file's name, or "-" for standard input.
int runPlay(const Options &options, const std::string &input);
int runPutBack(const Options &options, const std::string &input);
int runCount(const Options &options, const std::string &input);
int runFound(const Options &options, const std::string &input);
int runAnswer(const Options &options, const std::string &input);
int runRequest(const Options &options, const std::string &input);
int runTend(const Options &options, const std::string &input);
int runWish(const Options &options, const std::string &input);
int runPinGrading(const Options &options, const std::string &input);
int runTakeBack(const Options &options, const std::string &input);
/// What was noted today, newest first, also what was taken back.
int runNoted(const Options &options, const std::string &child);

} // namespace lidlark::cli
