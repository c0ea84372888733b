#include "type_roles.h"

#include "faces.h"

#include <QtGui/QFontMetricsF>

#include <array>
#include <cmath>

namespace lidlark::design {
namespace {

enum class Grows { Running, Title };

struct Measure {
    double size;
    double line;
    bool bold;
    Grows grows;
};

// In the order of ThemeChoices::Role.
constexpr std::array<Measure, 14> measures{{
    {30, 38, true, Grows::Title},    // BigYes
    {26, 32, true, Grows::Title},    // Title
    {22, 32, true, Grows::Title},    // Question
    {20, 26, true, Grows::Title},    // Heading
    {21, 28, false, Grows::Running}, // Step
    {18, 21, true, Grows::Title},    // Row
    {17, 23, true, Grows::Title},    // Label
    {16, 22, true, Grows::Running},  // Strong
    {16, 22, false, Grows::Running}, // Body
    {15, 20, false, Grows::Running}, // Reason
    {17, 23, true, Grows::Running},  // CautionLead
    {14, 18, false, Grows::Running}, // Caption
    {14, 17, false, Grows::Title},   // TabWord
    {16, 20, true, Grows::Title},    // Number
}};

// Noto Naskh stacks marks above and below; measured in reference/look/look.md, section 2.
constexpr double naskhLine = 1.26;
constexpr double naskhBoldFrom = 16.0;
constexpr double titleShare = 0.62;

const Measure &measureOf(ThemeChoices::Role role)
{
    return measures.at(static_cast<std::size_t>(role));
}

/// The face of the script, then that of the other: a name may be written in either.
QStringList familiesFor(bool arabicScript)
{
    QStringList families{QString::fromLatin1(latinFace), QString::fromLatin1(naskhFace)};
    if (arabicScript)
        families.swapItemsAt(0, 1);
    provideFace(families.constFirst());
    return families;
}

} // namespace

double scaledRunning(double pixels, double textScale)
{
    return pixels * textScale;
}

double scaledTitle(double pixels, double textScale)
{
    return pixels * (1.0 + titleShare * (textScale - 1.0));
}

bool boldByRole(ThemeChoices::Role role)
{
    return measureOf(role).bold;
}

TypeStyle typeStyle(ThemeChoices::Role role, bool bold, const Reading &reading)
{
    const Measure &measure = measureOf(role);
    const auto scaled = measure.grows == Grows::Title ? scaledTitle : scaledRunning;
    TypeStyle style;
    style.font.setFamilies(familiesFor(reading.arabicScript));
    style.font.setPixelSize(static_cast<int>(std::lround(scaled(measure.size, reading.textScale))));
    style.font.setBold(bold && (!reading.arabicScript || style.font.pixelSize() >= naskhBoldFrom));
    const double line = scaled(measure.line, reading.textScale);
    style.lineHeight = std::round(reading.arabicScript ? line * naskhLine : line);
    const QFontMetricsF metrics(style.font);
    // Andika has room for marks above its capitals, so left alone it sits low in a fixed line.
    const double middle = reading.arabicScript ? metrics.height() / 2.0
                                               : metrics.ascent() - metrics.capHeight() / 2.0;
    style.lift = std::round(middle - style.lineHeight / 2.0);
    style.trim = std::ceil(metrics.height()) - style.lineHeight - style.lift;
    return style;
}

} // namespace lidlark::design
