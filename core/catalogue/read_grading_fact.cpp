#include "core/catalogue/read_grading_fact.h"

#include "core/grading/balloon.h"
#include "core/grading/band.h"
#include "core/grading/tray_tilt.h"

#include <array>
#include <cmath>
#include <cstdio>

namespace lidlark::catalogue {

namespace {

using Ends = Result<grading::Span>;

/// Both ends of a fact that is no range.
Ends single(const Result<double> &value)
{
    if (!value)
        return value.error();
    return grading::Span{*value, *value};
}

/// A reader adds its own findings for sizes that are missing; then there is nothing to compute.
std::optional<Ends> balloonFall(RecordReader &sizes)
{
    const auto across = sizes.amount("across_mm");
    const auto drop = sizes.amount("drop_mm");
    if (!across || !drop)
        return std::nullopt;
    return single(grading::balloonFallSeconds({.acrossMm = *across}, *drop));
}

std::optional<Ends> balloonPush(RecordReader &sizes)
{
    const auto across = sizes.amount("across_mm");
    const auto smaller = sizes.amount("than_across_mm");
    if (!across || !smaller)
        return std::nullopt;
    return single(grading::balloonPushRatio(*across, *smaller));
}

std::optional<Ends> bandPull(RecordReader &sizes)
{
    grading::Band band;
    band.grade = sizes.word("grade", grading::bandGradeNames);
    band.strands = sizes.number("strands", {1, 2});
    const auto rest = sizes.amount("rest_mm");
    const auto drawn = sizes.amount("drawn_mm");
    if (!rest || !drawn)
        return std::nullopt;
    band.restMm = *rest;
    band.drawnMm = *drawn;
    return single(grading::bandPull(band));
}

std::optional<Ends> bandTimes(RecordReader &sizes)
{
    const auto rest = sizes.amount("rest_mm");
    const auto drawn = sizes.amount("drawn_mm");
    const auto other = sizes.amount("than_drawn_mm");
    if (!rest || !drawn || !other)
        return std::nullopt;
    return single(grading::bandTimes(*rest, *drawn, *other));
}

std::optional<Ends> trayTilt(RecordReader &sizes)
{
    const auto stuff = sizes.word("ball", grading::ballStuffNames);
    const auto across = sizes.amount("across_mm");
    const auto tray = sizes.amount("tray_mm");
    if (!across || !tray)
        return std::nullopt;
    const auto tilt = grading::trayTilt({stuff, *across});
    if (!tilt)
        return tilt.error();
    const auto lift = grading::trayLift(*tilt, *tray);
    if (!lift)
        return lift.error();
    return grading::Span{lift->lowMm, lift->highMm};
}

/// In the order of FactKind.
constexpr std::array computers{balloonFall, balloonPush, bandPull, bandTimes, trayTilt};

/// The one kind a fact names.
std::optional<FactKind> kindIn(const RecordReader &fact, RecordReader &line)
{
    std::optional<FactKind> found;
    std::string known;
    for (std::size_t i = 0; i < factKindNames.names.size(); ++i) {
        known += (i == 0 ? "" : ", ") + std::string(factKindNames.names[i]);
        if (!fact.has(factKindNames.names[i]))
            continue;
        if (found) {
            line.complain("fact", "says two things at once; one line, one fact");
            return std::nullopt;
        }
        found = static_cast<FactKind>(i);
    }
    if (!found)
        line.complain("fact", "names nothing that can be computed; it may name: " + known);
    return found;
}

std::optional<GradingFact> computed(FactKind kind, RecordReader &fact)
{
    const std::string_view name = factKindNames.of(kind);
    auto sizes = fact.record(name);
    if (!sizes)
        return std::nullopt;
    const auto ends = computers.at(static_cast<std::size_t>(kind))(*sizes);
    sizes->finish();
    if (!ends)
        return std::nullopt;
    if (!*ends) {
        // "across_mm: a party balloon ...": the field, then the reason.
        const std::string &detail = ends->error().detail;
        const std::size_t colon = detail.find(": ");
        sizes->complain(detail.substr(0, colon), detail.substr(colon + 2));
        return std::nullopt;
    }
    return GradingFact{kind, (**ends).low, (**ends).high};
}

std::string shortly(double number)
{
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.3g", number);
    return text.data();
}

void compare(RecordReader &fact, std::string_view key, double comesTo, FactKind kind)
{
    const auto says = fact.amount(key);
    if (says && std::abs(*says - comesTo) > factTolerance * comesTo)
        fact.complain(key, "says " + shortly(*says) + ", but it comes to " + shortly(comesTo) +
                               " " + std::string(factUnits.of(kind)));
}

} // namespace

std::optional<GradingFact> readGradingFact(RecordReader &line)
{
    if (!line.has("fact"))
        return std::nullopt;
    auto record = line.record("fact");
    if (!record)
        return std::nullopt;
    const auto kind = kindIn(*record, line);
    if (!kind)
        return std::nullopt;
    const auto fact = computed(*kind, *record);
    if (!fact)
        return std::nullopt;
    compare(*record, "says", fact->low, *kind);
    if (fact->low < fact->high)
        compare(*record, "up_to", fact->high, *kind);
    record->finish();
    return fact;
}

} // namespace lidlark::catalogue
