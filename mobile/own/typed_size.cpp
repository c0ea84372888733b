#include "typed_size.h"

#include <QCoreApplication>

#include "mobile/bridge/numerals.h"
#include "mobile/bridge/typed_number.h"

namespace lidlark::mobile {

namespace {

struct TypedSizes {
    Q_DECLARE_TR_FUNCTIONS(TypedSizes)
};

constexpr std::array shapeWords{"sphere", "disc", "cylinder", "box", "ellipsoid"};

bool isShape(int shape)
{
    return shape >= 0 && shape < static_cast<int>(shapeWords.size());
}

/// By its sizes as a file would give them.
std::vector<double> readSizes(const TypedSolid &solid)
{
    std::vector<double> mm;
    for (qsizetype i = 0; i < sizeLabels(solid.shape).size(); ++i) {
        if (const auto size = amountFrom(solid.mm.value(i), measure::leastMm, measure::mostMm))
            mm.push_back(*size);
    }
    return mm;
}

} // namespace

QStringList sizeLabels(int shape)
{
    switch (static_cast<TypedShape>(shape)) {
    case TypedShape::Ball:
        return {TypedSizes::tr("Across, mm")};
    case TypedShape::Disc:
        return {TypedSizes::tr("Across, mm"), TypedSizes::tr("Thick, mm")};
    case TypedShape::Rod:
        return {TypedSizes::tr("Across, mm"), TypedSizes::tr("Long, mm")};
    case TypedShape::Block:
    case TypedShape::Egg:
        return {TypedSizes::tr("Long, mm"), TypedSizes::tr("Wide, mm"), TypedSizes::tr("High, mm")};
    default:
        return {};
    }
}

TypedSolid typedFrom(const measure::Solid &solid)
{
    const auto &sizes = solid.sizes();
    TypedSolid typed;
    typed.mm = {typedAmount(sizes[0]), typedAmount(sizes[1]), typedAmount(sizes[2])};
    switch (solid.shape()) {
    case measure::Shape::Sphere:
        typed.shape = static_cast<int>(TypedShape::Ball);
        typed.mm = {typedAmount(sizes[0]), {}, {}};
        break;
    case measure::Shape::Cylinder:
        typed.shape = static_cast<int>(sizes[2] <= sizes[0] ? TypedShape::Disc : TypedShape::Rod);
        typed.mm = {typedAmount(sizes[0]), typedAmount(sizes[2]), {}};
        break;
    case measure::Shape::Box:
        typed.shape = static_cast<int>(TypedShape::Block);
        break;
    case measure::Shape::Ellipsoid:
        typed.shape = static_cast<int>(TypedShape::Egg);
        break;
    }
    return typed;
}

QString sizeProblem(const TypedSolid &solid, int place)
{
    const QString typed = solid.mm.value(place).trimmed();
    if (typed.isEmpty() || place >= sizeLabels(solid.shape).size())
        return {};
    if (!amountFrom(typed, measure::leastMm, measure::mostMm))
        return numerals(TypedSizes::tr("Millimetres: a number from 0.1 to 2000."));
    const std::vector<double> mm = readSizes(solid);
    const bool swapped = solid.shape == static_cast<int>(TypedShape::Disc) && place == 1 &&
                         mm.size() == 2 && mm[1] > mm[0];
    return swapped ? TypedSizes::tr("Thicker than it is wide: that is a rod.") : QString();
}

std::optional<measure::Solid> solidOf(const TypedSolid &solid)
{
    if (!isShape(solid.shape) || !sizeProblem(solid, 1).isEmpty())
        return std::nullopt;
    const auto made =
        measure::solidFrom(shapeWords.at(static_cast<std::size_t>(solid.shape)), readSizes(solid));
    return made ? std::optional(*made) : std::nullopt;
}

} // namespace lidlark::mobile
