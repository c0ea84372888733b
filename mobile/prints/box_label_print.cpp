#include "box_label_print.h"

#include "core/wording/print_words.h"
#include "mobile/bridge/text.h"
#include "mobile/prints/print_sheet.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

using wording::BoxLabelWords;
using wording::Region;

/// Words under each other, in measures of A6.
struct Piece {
    QString text;
    int pixels = 0;
    int style = PrintSheet::Plain;
    bool fromTheRight = false;
    int before = 0;    ///< Room above it.
    bool sign = false; ///< The safety-alert triangle stands before it.
};

bool isEnglish(const PrintLanguage &in)
{
    return in.tongue().language().code == QLatin1String("en");
}

class BoxLabelCard
{
public:
    BoxLabelCard(QSize size, const usecase::LidListPage &list, const PrintLanguages &languages,
                 Region region, const std::vector<BoxLabelWords> &labels)
        : m_size(size), m_unit(std::min(size.width() / 1050.0, size.height() / 1480.0))
    {
        addHead(list, languages);
        for (const BoxLabelWords &label : labels)
            addLabel(label, languages, region);
        addFoot(languages);
        constexpr double least = 0.5;
        while (m_scale > least && height() > m_size.height() - 2 * margin())
            m_scale -= 0.02;
    }

    void paint(QPainter &painter) const
    {
        PrintSheet sheet(painter, m_size, false);
        int y = margin();
        for (const Piece &piece : m_pieces) {
            y += scaled(piece.before);
            const int sign = signWide(piece);
            if (sign > 0)
                sheet.picture(QStringLiteral("sign-warning"),
                              {margin(), y, sign - tenths(16), sign - tenths(16)});
            y += sheet.words(piece.text, scaled(piece.pixels), piece.style,
                             {margin() + sign, y, width() - sign, 0}, piece.fromTheRight);
        }
    }

private:
    [[nodiscard]] int tenths(int ofA6) const { return qRound(ofA6 * m_unit); }
    [[nodiscard]] int scaled(int ofA6) const { return qRound(ofA6 * m_unit * m_scale); }
    [[nodiscard]] int margin() const { return tenths(60); }
    [[nodiscard]] int width() const { return m_size.width() - 2 * margin(); }
    [[nodiscard]] int signWide(const Piece &piece) const
    {
        return piece.sign ? scaled(90) + tenths(16) : 0;
    }
    [[nodiscard]] int height() const
    {
        int height = 0;
        for (const Piece &piece : m_pieces)
            height +=
                scaled(piece.before) + heightOfWords(piece.text, scaled(piece.pixels), piece.style,
                                                     width() - signWide(piece), piece.fromTheRight);
        return height;
    }

    void addHead(const usecase::LidListPage &list, const PrintLanguages &languages)
    {
        for (const PrintLanguage &in : languages) {
            const int before = m_pieces.empty() ? 0 : 24;
            m_pieces.push_back({in.tell(wording::boxLabelTitle()), 56, PrintSheet::Bold,
                                in.fromTheRight(), before});
            m_pieces.push_back({in.tell(wording::boxOf(list.child)) + QStringLiteral(". ") +
                                    in.tell(wording::lidListLine(list.revision, list.issued)),
                                32, PrintSheet::Plain, in.fromTheRight(), 2});
            m_pieces.push_back(
                {in.tell(wording::boxLabelNote()), 36, PrintSheet::Plain, in.fromTheRight(), 8});
        }
    }

    /// What it is about and the translation, in each language; then the words as prescribed.
    void addLabel(const BoxLabelWords &label, const PrintLanguages &languages, Region region)
    {
        int before = 46;
        for (const PrintLanguage &in : languages) {
            std::vector<wording::Argument> names;
            for (const ItemId &item : label.items)
                names.push_back(names.empty() ? wording::withCapital(in.nameOf(item, 2))
                                              : in.nameOf(item, 2));
            m_pieces.push_back({in.tell(wording::inList(std::move(names))), 36, PrintSheet::Plain,
                                in.fromTheRight(), before});
            before = 14;
            if (!isEnglish(in))
                m_pieces.push_back(
                    {in.tell(label.label.words), 38, PrintSheet::Plain, in.fromTheRight(), 4});
        }
        m_pieces.push_back({fromCore(wording::fill(label.label.words)), 42, PrintSheet::Bold, false,
                            8, region == Region::UnitedStates});
        // "16 CFR 1500.19(b)" runs as the words above it do, whatever the page's own way.
        const QString source = languages.front().tell(label.label.source);
        m_pieces.push_back({source, 26, PrintSheet::Plain, source.isRightToLeft(), 4});
    }

    void addFoot(const PrintLanguages &languages)
    {
        for (const PrintLanguage &in : languages) {
            if (!in.unchecked().isEmpty())
                m_pieces.push_back({in.unchecked(), 26, PrintSheet::Plain, in.fromTheRight(), 40});
        }
    }

    QSize m_size;
    double m_unit;
    double m_scale = 1.0;
    std::vector<Piece> m_pieces;
};

} // namespace

PrintPages boxLabelPrint(const usecase::LidListPage &list, const PrintLanguages &languages,
                         QSize size, Region region)
{
    std::vector<ItemId> items;
    for (const usecase::LidLine &line : list.lines) {
        for (const usecase::LidPart &part : line.parts)
            items.push_back(part.item);
    }
    const auto labels = wording::labelWordsOfBox(items, languages.front().catalogue(), region);
    if (labels.empty())
        return {};
    return {{size, [card = BoxLabelCard(size, list, languages, region, labels)](QPainter &painter) {
                 card.paint(painter);
             }}};
}

} // namespace lidlark::mobile
