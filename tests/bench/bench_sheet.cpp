#include "core/workbench/cheapest_packs.h"
#include "core/workbench/sheet.h"
#include "tests/core/workbench/glpk_packs.h"

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <exception>
#include <limits>
#include <string>

/// The build sheet of 10,000 boxes with 25 items in four packs each, beside GLPK on the same packs
/// in one run: processor time, the least of some passes. GLPK is given the needs ready and does no
/// more than choose the packs; the sheet looks the boxes over, chooses, and reckons every box.
namespace {

using namespace lidlark;
using namespace lidlark::workbench;

constexpr int items = 25;
constexpr int passes = 5;

/// What one pack costs.
using Price = std::int64_t (*)(int item, int pieces);

/// Larger packs are cheaper a piece: what shops do.
std::int64_t asShopsDo(int item, int pieces)
{
    return 40 + pieces * (14 + item % 7) - pieces * pieces / 60;
}

/// All packs cost nearly the same a piece, so that none can be left out of sight.
std::int64_t nearlyTheSame(int item, int pieces)
{
    return pieces * 20 + (item + pieces) % 4;
}

std::vector<Supply> suppliesOfFourPacks(Price price)
{
    std::vector<Supply> supplies;
    for (int i = 0; i < items; ++i) {
        Supply supply{{"item-" + std::to_string(i)}, "thing", {}, 17 * i, i % 2 == 0};
        for (const int size : {6, 25, 60, 250}) {
            const int pieces = size + i % 5;
            supply.offers.push_back({"shop", pieces, price(i, pieces), ""});
        }
        supplies.push_back(supply);
    }
    return supplies;
}

Build tenThousandBoxes(const std::vector<Supply> &supplies)
{
    Build build;
    for (std::size_t i = 0; i < mostBoxes; ++i) {
        BuildBox box{"B" + std::to_string(i), "", {}, {}};
        for (std::size_t item = 0; item < supplies.size(); ++item)
            box.parts.push_back({supplies[item].item, 1 + static_cast<int>((i + item) % 12), {}});
        build.boxes.push_back(box);
    }
    return build;
}

/// Milliseconds of the processor, the least of the passes.
template <class Work> double leastTime(const Work &work)
{
    double least = std::numeric_limits<double>::max();
    for (int pass = 0; pass < passes; ++pass) {
        const std::clock_t begun = std::clock();
        work();
        const auto took = static_cast<double>(std::clock() - begun);
        least = std::min(least, took * 1'000.0 / CLOCKS_PER_SEC);
    }
    return least;
}

struct Wanted {
    std::vector<PackPrice> offers;
    std::int64_t pieces = 0;
};

std::vector<Wanted> wantedBy(const Sheet &sheet, const std::vector<Supply> &supplies)
{
    std::vector<Wanted> all;
    for (std::size_t i = 0; i < supplies.size(); ++i) {
        const SheetLine &line = sheet.lines[i];
        Wanted wanted{{}, line.need.pieces + line.need.spares - line.inStock};
        for (const PackOffer &offer : supplies[i].offers)
            wanted.offers.push_back({offer.pieces, offer.pence.value_or(0)});
        all.push_back(wanted);
    }
    return all;
}

/// Item by item, as it is quickest. @returns pence, and how many answers GLPK proved.
std::pair<std::int64_t, int> glpkSpend(const std::vector<Wanted> &all)
{
    std::pair<std::int64_t, int> spend;
    for (const Wanted &wanted : all) {
        judge::GlpkPacks glpk;
        glpk.addItem(wanted.offers, wanted.pieces);
        const auto least = glpk.least(2'000);
        spend.first += least.value_or(0);
        spend.second += least ? 1 : 0;
    }
    return spend;
}

/// @returns whether both pay the same, as far as GLPK proved its answers.
bool measure(const char *prices, Price price)
{
    const std::vector<Supply> supplies = suppliesOfFourPacks(price);
    const Build build = tenThousandBoxes(supplies);
    const Sheet sheet = std::get<Sheet>(sheetOf(build, supplies));
    const std::vector<Wanted> wanted = wantedBy(sheet, supplies);
    const double whole = leastTime([&] { (void)sheetOf(build, supplies); });
    const double choosing = leastTime([&] {
        for (const Wanted &one : wanted)
            (void)cheapestPacks(one.offers, one.pieces);
    });
    std::pair<std::int64_t, int> glpk;
    const double judge = leastTime([&] { glpk = glpkSpend(wanted); });
    std::printf("%s: the whole sheet %.1f ms; choosing packs %.3f ms, GLPK %.3f ms: %.3f of it\n",
                prices, whole, choosing, judge, choosing / judge);
    std::printf("    ours %lld pence, GLPK %lld pence with %d of %d items proven\n",
                static_cast<long long>(sheet.spend.pence), static_cast<long long>(glpk.first),
                glpk.second, items);
    return glpk.second < items || glpk.first == sheet.spend.pence;
}

} // namespace

int main()
{
    try {
        const bool same = measure("prices as shops have them", asShopsDo);
        return measure("nearly the same a piece", nearlyTheSame) && same ? 0 : 1;
    } catch (const std::exception &error) {
        std::fprintf(stderr, "%s\n", error.what());
        return 1;
    }
}
