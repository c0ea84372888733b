#include "own_item_view_model.h"

#include "mobile/bridge/text.h"
#include "mobile/bridge/typed_number.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr double mostDays = 3650; ///< As the loader has it, here and below.
constexpr double mostLookDays = 365;
constexpr double mostUsed = 1000;
constexpr double leastFilm = 0.001;
constexpr double mostFilm = 10;

/// In the file for good; the page says it in the reader's language.
constexpr auto hasNoSize = "It has no size that means anything.";

OwnNumbers::Ask millimetres(const QString &label, bool optional = false)
{
    return {label, measure::leastMm, measure::mostMm, false, optional};
}

/// 0 stands for what was not measured.
QString typedOrEmpty(double amount)
{
    return amount > 0 ? typedAmount(amount) : QString();
}

QString typedDays(const std::optional<int> &days)
{
    return days ? QString::number(*days) : QString();
}

std::vector<TypedSolid> typedParts(const std::vector<catalogue::LoosePart> &parts)
{
    std::vector<TypedSolid> typed;
    for (const catalogue::LoosePart &part : parts) {
        typed.push_back(typedFrom(part.solid));
        typed.back().part = fromCore(part.name);
        typed.back().cup = part.suctionCup;
    }
    return typed;
}

std::vector<catalogue::LoosePart> readParts(const OwnSolids &typed)
{
    std::vector<catalogue::LoosePart> parts;
    for (const TypedSolid &one : typed.solids()) {
        if (const auto solid = solidOf(one))
            parts.push_back({oneLine(one.part), *solid, one.cup});
    }
    return parts;
}

} // namespace

void OwnItemViewModel::askNumbers()
{
    m_cord.ask({millimetres(tr("Long, mm")), millimetres(tr("Thick, mm")),
                millimetres(tr("Loop, all round, mm"), true)});
    m_hollow.ask({millimetres(tr("Across inside, mm")), millimetres(tr("The narrow way, mm"), true),
                  millimetres(tr("Deep, mm"))});
    m_film.ask({{tr("Thick, mm"), leastFilm, mostFilm, false, false},
                millimetres(tr("Opening of a bag, all round, mm"), true),
                millimetres(tr("A sheet: long, mm"), true),
                millimetres(tr("A sheet: wide, mm"), true),
                {tr("Holes, percent of it"), 0, 100, true, true}});
    m_keeping.ask({{tr("Days it keeps once opened"), 1, mostDays, true, true},
                   {tr("Days until a new one takes its place"), 1, mostDays, true, true},
                   {tr("Days from one look to the next"), 1, mostLookDays, true, true}});
    m_use.ask({{tr("Pieces"), 1, mostUsed, true, false}, {tr("Days"), 1, mostDays, true, false}});
}

void OwnItemViewModel::showMeasures()
{
    const catalogue::Measures &measures = kind().measures;
    TypedSolid whole;
    if (measures.whole)
        whole = typedFrom(*measures.whole);
    else if (!measures.soft.empty())
        whole.shape = static_cast<int>(TypedShape::Soft);
    m_whole.show({whole});
    m_worn.show(measures.least ? std::vector{typedFrom(*measures.least)}
                               : std::vector<TypedSolid>());
    m_comesOff.show(typedParts(measures.comesOff));
    const measure::Cord cord = measures.cord.value_or(measure::Cord());
    m_cord.show(
        measures.cord.has_value(),
        {typedOrEmpty(cord.lengthMm), typedOrEmpty(cord.thicknessMm), typedOrEmpty(cord.loopMm)});
    const measure::Hollow hollow = measures.hollow.value_or(measure::Hollow());
    m_hollow.show(measures.hollow.has_value(),
                  {typedOrEmpty(hollow.acrossMm),
                   hollow.narrowMm == hollow.acrossMm ? QString() : typedOrEmpty(hollow.narrowMm),
                   typedOrEmpty(hollow.deepMm)});
    m_stiff = hollow.stiff;
    const measure::Film film = measures.film.value_or(measure::Film());
    m_film.show(measures.film.has_value(),
                {typedOrEmpty(film.meanThicknessMm), typedOrEmpty(film.openingPerimeterMm),
                 typedOrEmpty(film.longMm), typedOrEmpty(film.shortMm),
                 typedOrEmpty(film.holesPercent)});
    m_drawstring = film.drawstring;
}

void OwnItemViewModel::showDraft()
{
    showMeasures();
    const catalogue::Life &life = kind().life;
    m_keeping.show(
        true, {typedDays(life.openedDays), typedDays(life.replaceDays), typedDays(life.checkDays)});
    const auto use = kind().use;
    m_use.show(true, {typedDays(use ? std::optional(use->pieces) : std::nullopt),
                      typedDays(use ? std::optional(use->days) : std::nullopt)});
    std::vector<OwnLines::Line> care;
    for (const std::string &line : kind().care)
        care.push_back({fromCore(line), 0});
    m_care.show(std::move(care));
    showTyped(m_draft.typed);
    askMeasures();
    askMaterials();
    askKeeping();
}

/// A size that is none is left out of the file: the page says so, and nothing goes to a box.
void OwnItemViewModel::takeInMeasures()
{
    const catalogue::Measures before = kind().measures;
    catalogue::Measures measures;
    measures.rollsAs = before.rollsAs;
    const TypedSolid &whole = m_whole.solids().front();
    if (whole.shape == static_cast<int>(TypedShape::Soft))
        measures.soft = before.soft.empty() ? hasNoSize : before.soft;
    else
        measures.whole = solidOf(whole);
    if (m_worn.rows() > 0)
        measures.least = solidOf(m_worn.solids().front());
    measures.comesOff = readParts(m_comesOff);
    if (m_cord.isThere() && !m_cord.isUnread())
        measures.cord =
            measure::Cord{m_cord.numberOrNone(0), m_cord.numberOrNone(1), m_cord.numberOrNone(2)};
    if (m_hollow.isThere() && !m_hollow.isUnread())
        measures.hollow = measure::Hollow{m_hollow.numberOrNone(0),
                                          m_hollow.number(1).value_or(m_hollow.numberOrNone(0)),
                                          m_hollow.numberOrNone(2), m_stiff};
    if (m_film.isThere() && !m_film.isUnread())
        measures.film =
            measure::Film{m_film.numberOrNone(0), m_film.numberOrNone(1), m_film.numberOrNone(2),
                          m_film.numberOrNone(3), m_film.numberOrNone(4), m_drawstring};
    kind().measures = std::move(measures);
    kind().hazards = catalogue::hazardsOf(kind().measures);
}

void OwnItemViewModel::takeInKeeping()
{
    catalogue::Life &life = kind().life;
    life.openedDays = m_keeping.wholeNumber(0);
    life.replaceDays = m_keeping.wholeNumber(1);
    life.checkDays = m_keeping.wholeNumber(2);
    kind().care.clear();
    for (const OwnLines::Line &line : m_care.lines()) {
        if (const std::string text = oneLine(line.text); !text.empty())
            kind().care.push_back(text);
    }
    if (!kind().cleanable && !isLent())
        kind().singleChild = true;
    if (isLent())
        kind().lidCount = 0;
    const auto pieces = m_use.wholeNumber(0);
    const auto days = m_use.wholeNumber(1);
    kind().use.reset();
    if (pieces && days)
        kind().use = catalogue::UsePrior{*pieces, *days};
}

void OwnItemViewModel::takeIn()
{
    takeInMeasures();
    takeInKeeping();
    kind().tags = m_added | givenTags();
    m_draft.typed = typed();
    for (OwnChoice *choice : {&m_cautions, &m_washing, &m_holds})
        emit choice->changed(); // what was typed may have changed these
}

} // namespace lidlark::mobile
