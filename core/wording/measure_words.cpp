#include "core/wording/measure_words.h"

#include "core/catalogue/measured_hazards.h"

#include <array>
#include <cmath>

namespace lidlark::wording {

namespace {

using catalogue::Measures;

/// As catalogue::measuredTags writes its reasons.
constexpr std::array reasons{say("it fits the small parts cylinder"),
                             say("worn down, it fits the small parts cylinder"),
                             say("as a ball it passes the hole for small balls"),
                             say("it is a marble"),
                             say("its %1 fits the small parts cylinder"),
                             say("its %1 passes the hole for small balls"),
                             say("its %1 is a suction cup or dart tip"),
                             say("its cord is longer than 220 mm"),
                             say("its loop is wider than 360 mm round"),
                             say("its cord is thinner than 1.5 mm")};

/// Tenths of a millimetre are all that anybody measures; a whole number stands without them.
Argument mm(double size)
{
    const auto tenths = static_cast<int>(std::lround(size * 10));
    if (tenths % 10 == 0)
        return inDigits(tenths / 10);
    return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10);
}

Argument reasonWords(const std::string &because)
{
    constexpr std::string_view place = "%1";
    for (const English &words : reasons) {
        const std::string_view text = words.text();
        const std::size_t at = text.find(place);
        if (at == std::string_view::npos) {
            if (text == because)
                return Sentence{words, {}};
            continue;
        }
        const std::string_view before = text.substr(0, at);
        const std::string_view after = text.substr(at + place.size());
        if (because.size() > before.size() + after.size() && because.starts_with(before) &&
            because.ends_with(after))
            return Sentence{words,
                            {because.substr(at, because.size() - before.size() - after.size())}};
    }
    return because;
}

void addCord(const Measures &measures, std::vector<Sentence> &words)
{
    if (!measures.cord)
        return;
    words.push_back({say("Cord: %1 mm long, %2 mm thick."),
                     {mm(measures.cord->lengthMm), mm(measures.cord->thicknessMm)}});
    if (measures.cord->loopMm > 0)
        words.push_back({say("Its loop: %1 mm round."), {mm(measures.cord->loopMm)}});
}

} // namespace

Sentence solidWords(const measure::Solid &solid)
{
    const auto &sizes = solid.sizes();
    switch (solid.shape()) {
    case measure::Shape::Sphere:
        return {say("Ball: %1 mm across."), {mm(sizes[0])}};
    case measure::Shape::Cylinder:
        if (sizes[2] < sizes[0])
            return {say("Disc: %1 mm across, %2 mm thick."), {mm(sizes[0]), mm(sizes[2])}};
        return {say("Rod: %1 mm across, %2 mm long."), {mm(sizes[0]), mm(sizes[2])}};
    case measure::Shape::Box:
        return {say("Block: %1 by %2 by %3 mm."), {mm(sizes[0]), mm(sizes[1]), mm(sizes[2])}};
    case measure::Shape::Ellipsoid:
        break;
    }
    return {say("Egg shape: %1 by %2 by %3 mm."), {mm(sizes[0]), mm(sizes[1]), mm(sizes[2])}};
}

std::vector<Sentence> measureWords(const Measures &measures)
{
    std::vector<Sentence> words;
    if (measures.whole)
        words.push_back(solidWords(*measures.whole));
    else
        words.push_back({say("Soft: it has no size that means anything."), {}});
    if (measures.least) {
        words.push_back({say("Worn down, at least:"), {}});
        words.push_back(solidWords(*measures.least));
    }
    for (const catalogue::LoosePart &part : measures.comesOff) {
        words.push_back({say("Comes off: %1."), {part.name}});
        words.push_back(solidWords(part.solid));
    }
    addCord(measures, words);
    if (measures.hollow)
        words.push_back({say("Hollow: %1 mm across inside, %2 mm deep."),
                         {mm(measures.hollow->acrossMm), mm(measures.hollow->deepMm)}});
    return words;
}

std::vector<Sentence> measuredWords(const Measures &measures)
{
    std::vector<Sentence> words;
    const std::vector<catalogue::MeasuredTag> tags = catalogue::measuredTags(measures);
    for (const catalogue::MeasuredTag &tag : tags)
        words.push_back({say("By its measures: %1."), {reasonWords(tag.because)}});
    if (catalogue::hazardsOf(measures, tags).sealsAFace)
        words.push_back({say("It may stick over a small child's nose and mouth."), {}});
    return words;
}

} // namespace lidlark::wording
