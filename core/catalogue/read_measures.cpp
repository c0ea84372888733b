#include "core/catalogue/read_measures.h"

#include <algorithm>

namespace lidlark::catalogue {

namespace {

/// Whether any size of @p small is larger than that of @p large, both sorted.
bool isLarger(const measure::Solid &small, const measure::Solid &large)
{
    auto a = small.sizes();
    auto b = large.sizes();
    std::sort(a.begin(), a.end());
    std::sort(b.begin(), b.end());
    return a[0] > b[0] || a[1] > b[1] || a[2] > b[2];
}

std::optional<measure::Solid> readSolidUnder(RecordReader &measures, std::string_view key)
{
    if (!measures.has(key))
        return std::nullopt;
    auto record = measures.record(key);
    if (!record)
        return std::nullopt;
    const auto solid = readSolid(*record);
    record->finish();
    return solid;
}

void readComesOff(RecordReader &record, Measures &measures)
{
    if (!record.has("comes_off"))
        return;
    for (RecordReader &line : record.records("comes_off", {1, 6})) {
        const std::string name = line.text("part");
        const auto solid = readSolid(line);
        const bool suctionCup = line.optionalFlag("suction_cup");
        line.finish();
        if (solid)
            measures.comesOff.push_back({name, *solid, suctionCup});
    }
}

void readCord(RecordReader &record, Measures &measures)
{
    if (!record.has("cord"))
        return;
    auto line = record.record("cord");
    if (!line)
        return;
    const measure::Cord cord{line->millimetres("length_mm"), line->millimetres("thickness_mm"),
                             line->optionalMillimetres("loop_mm")};
    line->finish();
    if (cord.thicknessMm > cord.lengthMm)
        line->complain("thickness_mm", "is more than the length; are the two swapped?");
    measures.cord = cord;
}

void readFilm(RecordReader &record, Measures &measures)
{
    if (!record.has("film"))
        return;
    auto line = record.record("film");
    if (!line)
        return;
    measure::Film film;
    film.meanThicknessMm = line->thickness("thickness_mm");
    film.openingPerimeterMm = line->optionalMillimetres("opening_mm");
    film.longMm = line->optionalMillimetres("long_mm");
    film.shortMm = line->optionalMillimetres("short_mm");
    film.holesPercent = line->optionalNumber("holes_percent", {0, 100}).value_or(0);
    film.drawstring = line->optionalFlag("drawstring");
    line->finish();
    if (film.openingPerimeterMm <= 0 && (film.longMm <= 0 || film.shortMm <= 0))
        line->complain("opening_mm", "is missing: a bag has an opening, a sheet two edges");
    if (measure::maySmother(film))
        line->complain("thickness_mm", "a bag or sheet this large must be 0.038 mm or thicker, or "
                                       "full of holes, and have no drawstring");
    measures.film = film;
}

void readHollow(RecordReader &record, Measures &measures)
{
    if (!record.has("hollow"))
        return;
    auto line = record.record("hollow");
    if (!line)
        return;
    measure::Hollow hollow;
    hollow.acrossMm = line->millimetres("across_mm");
    hollow.narrowMm = line->has("narrow_mm") ? line->millimetres("narrow_mm") : hollow.acrossMm;
    hollow.deepMm = line->millimetres("deep_mm");
    hollow.stiff = line->flag("stiff");
    line->finish();
    if (hollow.narrowMm > hollow.acrossMm)
        line->complain("narrow_mm", "is more than the width across; are the two swapped?");
    measures.hollow = hollow;
}

} // namespace

std::optional<measure::Solid> readSolid(RecordReader &record)
{
    const std::string shape = record.text("shape");
    const std::vector<double> mm = record.measures("mm", {1, 3});
    if (shape.empty() || mm.empty())
        return std::nullopt;
    const Result<measure::Solid> solid = measure::solidFrom(shape, mm);
    if (!solid) {
        // "mm: each size ...": the field, then the reason.
        const std::string &detail = solid.error().detail;
        const std::size_t colon = detail.find(": ");
        record.complain(detail.substr(0, colon), detail.substr(colon + 2));
        return std::nullopt;
    }
    if (shape == "disc" && mm[1] > mm[0]) {
        record.complain("mm", "a disc is wider than it is thick; are the two swapped?");
        return std::nullopt;
    }
    return *solid;
}

Measures readMeasures(RecordReader &record)
{
    Measures measures;
    measures.whole = readSolidUnder(record, "whole");
    measures.least = readSolidUnder(record, "least");
    measures.soft = record.optionalText("soft");
    if (record.has("rolls_as"))
        measures.rollsAs = record.word("rolls_as", rollsAsNames);
    readComesOff(record, measures);
    readCord(record, measures);
    readFilm(record, measures);
    readHollow(record, measures);
    record.finish();
    if (record.has("whole") == record.has("soft"))
        record.complain("whole", "give either the sizes of one piece (whole), or why it has none "
                                 "that means anything (soft)");
    if (measures.least && measures.whole && isLarger(*measures.least, *measures.whole))
        record.complain("least", "is larger than the whole");
    if (measures.rollsAs == RollsAs::Ball && !measures.whole)
        record.complain("rolls_as", "a ball has a whole");
    return measures;
}

} // namespace lidlark::catalogue
