#include "core/cli/commands.h"
#include "core/cli/csv_table.h"
#include "core/cli/file_contents.h"

#include "core/measure/test_cylinder.h"

#include <nlohmann/json.hpp>

#include <charconv>
#include <cmath>
#include <iomanip>
#include <iostream>
#include <sstream>

namespace lidlark::cli {

namespace {

using Json = nlohmann::ordered_json;

struct Fit {
    bool fits = false;
    double scale = 0;
    std::optional<bool> smallBall;
};

Fit fitOf(const measure::Solid &solid)
{
    const double scale = measure::largestScaleInTestCylinder(solid);
    return {measure::fitsTestCylinder(solid, scale), scale, measure::isSmallBall(solid)};
}

std::string scaleText(double scale)
{
    std::ostringstream text;
    text << std::fixed << std::setprecision(5) << scale;
    return text.str();
}

void printPlain(const Fit &fit)
{
    std::cout << (fit.fits ? "It is a small part: it fits the test cylinder"
                           : "It does not fit the test cylinder")
              << " (largest scale " << scaleText(fit.scale) << ")";
    if (fit.smallBall)
        std::cout << (*fit.smallBall ? ", and it is a small ball" : ", and it is not a small ball");
    std::cout << ".\n";
}

int fitOne(const Options &options, const FitOptions &asked)
{
    const Result<measure::Solid> solid = measure::solidFrom(asked.shape, asked.mm);
    if (!solid)
        return noAnswer(solid.error().detail);
    const Fit fit = fitOf(*solid);
    if (!options.json) {
        printPlain(fit);
        return allWell;
    }
    const Json json{{"fits", fit.fits},
                    {"scale", std::round(fit.scale * 1e5) / 1e5},
                    {"small_ball", fit.smallBall ? Json(*fit.smallBall) : Json()}};
    std::cout << json.dump() << '\n';
    return allWell;
}

/// Where the columns stand in this table.
struct FitColumns {
    std::size_t name = 0;
    std::size_t shape = 0;
    std::array<std::size_t, 3> sizes{};
};

constexpr std::array<const char *, 3> sizeNames{"dim1_mm", "dim2_mm", "dim3_mm"};

Result<FitColumns> columnsOf(const CsvTable &table)
{
    FitColumns columns;
    const std::array<std::pair<const char *, std::size_t *>, 5> wanted{
        {{"name", &columns.name},
         {"shape", &columns.shape},
         {sizeNames[0], columns.sizes.data()},
         {sizeNames[1], &columns.sizes[1]},
         {sizeNames[2], &columns.sizes[2]}}};
    for (const auto &[name, place] : wanted) {
        const auto found = table.column(name);
        if (!found)
            return Error{ErrorCode::Invalid,
                         std::string("line 1: no column ") + name +
                             ". The columns are name,shape,dim1_mm,dim2_mm,dim3_mm"};
        *place = *found;
    }
    return columns;
}

/// The reason of an error whose detail is "field: reason".
std::string reasonOf(const Error &error)
{
    const std::size_t colon = error.detail.find(": ");
    return colon == std::string::npos ? error.detail : error.detail.substr(colon + 2);
}

Result<double> sizeFrom(std::string_view cell)
{
    double mm = 0;
    const char *end = cell.data() + cell.size();
    const auto [stopped, failed] = std::from_chars(cell.data(), end, mm);
    if (failed != std::errc() || stopped != end)
        return Error{ErrorCode::Invalid, "not a number: " + std::string(cell)};
    // A sphere has one size: so each is judged by itself, and the message can name its column.
    if (const auto alone = measure::solidFrom("sphere", {mm}); !alone)
        return Error{ErrorCode::Invalid, reasonOf(alone.error())};
    return mm;
}

Result<measure::Solid> solidOf(const CsvRow &row, const FitColumns &columns, std::size_t width)
{
    if (row.torn)
        return Error{ErrorCode::Invalid, "a quote is in the wrong place or not closed"};
    // A comma too many moves every later cell, and a wrong size could pass for a right one.
    if (row.cells.size() > width)
        return Error{ErrorCode::Invalid, "more cells than the header has"};
    std::vector<double> sizes;
    for (std::size_t i = 0; i < sizeNames.size(); ++i) {
        const std::string_view cell = row.cell(columns.sizes[i]);
        if (cell.empty())
            continue;
        const Result<double> size = sizeFrom(cell);
        if (!size)
            return Error{ErrorCode::Invalid,
                         std::string(sizeNames[i]) + ": " + size.error().detail};
        sizes.push_back(*size);
    }
    return measure::solidFrom(row.cell(columns.shape), sizes);
}

std::string smallBallText(const std::optional<bool> &smallBall)
{
    if (!smallBall)
        return "n/a";
    return *smallBall ? "yes" : "no";
}

int fitTable(const CsvTable &table)
{
    const Result<FitColumns> columns = columnsOf(table);
    if (!columns)
        return noAnswer(columns.error().detail);
    int status = allWell;
    std::cout << "name,fits,scale,small_ball\n";
    for (const CsvRow &row : table.rows) {
        const Result<measure::Solid> solid = solidOf(row, *columns, table.header.cells.size());
        if (!solid) {
            status = noAnswer("line " + std::to_string(row.line) + ", " + solid.error().detail);
            continue;
        }
        const Fit fit = fitOf(*solid);
        std::cout << csvCell(row.cell(columns->name)) << ',' << (fit.fits ? "yes" : "no") << ','
                  << scaleText(fit.scale) << ',' << smallBallText(fit.smallBall) << '\n';
    }
    return status;
}

} // namespace

int runFit(const Options &options, const FitOptions &fit)
{
    if (fit.csv.empty())
        return fitOne(options, fit);
    const std::optional<std::string> text = contentsOf(fit.csv);
    if (!text || text->empty())
        return noAnswer("nothing could be read from " + fit.csv);
    return fitTable(csvFrom(*text));
}

} // namespace lidlark::cli
