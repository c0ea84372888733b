#include "core/drawing/ink.h"

#include <array>
#include <cstdio>

namespace lidlark::drawing {

namespace {

std::string_view code(Colour colour)
{
    switch (colour) {
    case Colour::Tint:
        return "#EFBF72";
    case Colour::Paper:
        return "#FFFBF2";
    case Colour::Ink:
        break;
    }
    return "#26211B";
}

std::string written(double width)
{
    std::array<char, 32> text{};
    const int length = std::snprintf(text.data(), text.size(), "%.3g", width);
    return {text.data(), static_cast<std::size_t>(length)};
}

} // namespace

void Print::fill(const Path &path, Colour colour)
{
    m_shapes += "<path d=\"" + svgText(path) + "\" fill=\"" + std::string(code(colour)) + "\"/>\n";
}

void Print::stroke(const Path &path, const Stroke &stroke)
{
    m_shapes += "<path d=\"" + svgText(path) + "\" fill=\"none\" stroke=\"" +
                std::string(code(stroke.colour)) + "\" stroke-width=\"" + written(stroke.width) +
                "\"";
    if (stroke.dotGap > 0)
        m_shapes += " stroke-dasharray=\"0.1 " + written(stroke.dotGap) + "\"";
    m_shapes += " stroke-linecap=\"round\" stroke-linejoin=\"round\"/>\n";
}

void Print::bone(const Path &path, double width, double edge, Colour core)
{
    stroke(path, {width, Colour::Ink});
    stroke(path, {width - edge, core});
}

} // namespace lidlark::drawing
