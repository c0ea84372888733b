#include "palette.h"

#include <array>

namespace lidlark::design {
namespace {

struct Dye {
    QRgb cloth;
    QRgb lining;
};

struct Dyes {
    Dye light;
    Dye dark;
    QRgb darkAccent;
};

// In the order of ThemeChoices::Place: woad, heather, lichen, undyed.
constexpr std::array<Dyes, 4> dyes{{
    {{0xff1c5268, 0xffcddfe0}, {0xff164152, 0xff22343a}, 0xff9fcfdc},
    {{0xff67395c, 0xffe6d4e0}, {0xff4f2c47, 0xff38293a}, 0xffdfb4d3},
    {{0xff6b4b12, 0xffebdcb8}, {0xff523a10, 0xff3a2f1a}, 0xffe5c27e},
    {{0xff55504a, 0xffe0dace}, {0xff3f3b36, 0xff302c28}, 0xffcfc6b8},
}};

QColor mixed(const QColor &from, const QColor &to, float share)
{
    const auto part = [share](float a, float b) { return a + (b - a) * share; };
    return QColor::fromRgbF(part(from.redF(), to.redF()), part(from.greenF(), to.greenF()),
                            part(from.blueF(), to.blueF()));
}

QColor whiteThread(float opacity)
{
    return QColor::fromRgbF(1.0F, 1.0F, 1.0F, opacity);
}

Palette lightPalette(const Dyes &dye)
{
    const QColor ink(0x26, 0x21, 0x1b);
    const QColor soft(0x5f, 0x54, 0x44);
    const QColor paper(0xff, 0xfb, 0xf2);
    const QColor quiet(0xdd, 0xd0, 0xb7);
    Palette look;
    look.sheet = QColor(0xf5, 0xee, 0xdf);
    look.card = look.picture = look.slip = look.drawingPaper = paper;
    look.ink = look.pictureText = look.slipText = look.drawingInk = look.safety = ink;
    look.inkSoft = look.pictureSoft = look.slipSoft = soft;
    look.cardEdge = look.edge = quiet;
    look.edgeLow = QColor(0xc4, 0xb3, 0x91);
    look.line = QColor(0x8a, 0x7b, 0x62);
    look.tileEdge = QColor(0xcd, 0xbe, 0x9f);
    look.tint = QColor(0xef, 0xbf, 0x72);
    look.safetyText = look.clothText = look.chosenText = paper;
    look.cloth = look.accent = look.chosen = QColor(dye.light.cloth);
    look.lining = look.well = QColor(dye.light.lining);
    look.wellText = ink;
    look.wellEdge = mixed(look.lining, look.cloth, 0.27F);
    look.weave = whiteThread(0.08F);
    look.stitch = whiteThread(0.55F);
    return look;
}

Palette darkPalette(const Dyes &dye)
{
    const QColor lampPaper(0xef, 0xe5, 0xd3);
    const QColor night(0x1c, 0x19, 0x16);
    const QColor slipInk(0x26, 0x21, 0x1b);
    Palette look;
    look.sheet = look.safetyText = night;
    look.card = QColor(0x29, 0x25, 0x21);
    look.picture = look.well = look.wellEdge = look.tileEdge = QColor(0xb8, 0xab, 0x94);
    look.ink = QColor(0xf2, 0xe9, 0xd9);
    look.inkSoft = QColor(0xc2, 0xb4, 0x9d);
    look.line = QColor(0x8f, 0x83, 0x6f);
    look.cardEdge = look.edge = QColor(0x40, 0x39, 0x32);
    look.edgeLow = QColor(0x0f, 0x0d, 0x0b);
    look.tint = QColor(0xe0, 0xac, 0x5c);
    look.drawingInk = QColor(0x1b, 0x17, 0x14);
    look.drawingPaper = QColor(0xd9, 0xcd, 0xb7);
    look.slip = look.safety = look.clothText = lampPaper;
    look.slipText = look.pictureText = look.wellText = look.chosenText = slipInk;
    look.slipSoft = QColor(0x5f, 0x54, 0x44);
    look.pictureSoft = QColor(0x3b, 0x34, 0x2b);
    look.cloth = QColor(dye.dark.cloth);
    look.lining = QColor(dye.dark.lining);
    look.accent = look.chosen = QColor(dye.darkAccent);
    look.weave = whiteThread(0.08F);
    look.stitch = whiteThread(0.55F);
    return look;
}

Palette highContrastPalette()
{
    const QColor deep(0x00, 0x33, 0x47);
    Palette look;
    look.sheet = look.card = look.picture = look.slip = look.lining = look.well = Qt::white;
    look.drawingPaper = look.safetyText = look.clothText = look.chosenText = Qt::white;
    look.ink = look.inkSoft = look.line = look.pictureText = look.pictureSoft = Qt::black;
    look.slipText = look.slipSoft = look.safety = look.drawingInk = look.wellText = Qt::black;
    look.cardEdge = look.edge = look.tileEdge = look.wellEdge = Qt::black;
    look.edgeLow = look.weave = Qt::transparent;
    look.tint = QColor(0xe9, 0xe9, 0xe9);
    look.cloth = look.accent = look.chosen = deep;
    look.stitch = whiteThread(0.55F);
    return look;
}

} // namespace

Palette paletteFor(ThemeChoices::Scheme scheme, ThemeChoices::Place place)
{
    const auto row = static_cast<std::size_t>(place);
    const Dyes &dye = dyes.at(row < dyes.size() ? row : 0);
    switch (scheme) {
    case ThemeChoices::Dark:
        return darkPalette(dye);
    case ThemeChoices::HighContrast:
        return highContrastPalette();
    case ThemeChoices::Light:
        break;
    }
    return lightPalette(dye);
}

} // namespace lidlark::design
