#include "tests/contact/contact_sheet.h"

#include "core/drawing/compose.h"
#include "tests/core/catalogue/shipped_catalogue.h"
#include "tests/support/shipped_drawings.h"

#include <QCryptographicHash>
#include <QPainter>
#include <QSvgRenderer>

namespace lidlark::contact {

namespace {

constexpr int cellHeight = 96;
constexpr int sceneWidth = 160;
constexpr int itemWidth = 96;
constexpr int gap = 6;
constexpr int nameHeight = 16;
constexpr std::size_t rowsOnAPage = 10;
constexpr std::size_t itemsInARow = 7;
constexpr auto digestKey = "drawings";

Cell cellOf(const drawing::Shelf &shelf, const std::string &name)
{
    const bool item = name.starts_with("item-");
    const auto svg = drawing::compose(shelf, item ? drawing::Kind::Item : drawing::Kind::Scene,
                                      name.substr(item ? 5 : 6));
    const auto *text = std::get_if<std::string>(&svg);
    return {QString::fromStdString(name), text ? QByteArray::fromStdString(*text) : QByteArray()};
}

std::vector<std::vector<Cell>> itemRows(const catalogue::Catalogue &catalogue,
                                        const drawing::Shelf &shelf)
{
    std::vector<std::vector<Cell>> rows;
    for (const catalogue::ItemKind &item : catalogue.items()) {
        if (rows.empty() || rows.back().size() == itemsInARow)
            rows.emplace_back();
        rows.back().push_back(cellOf(shelf, item.drawing));
    }
    return rows;
}

std::vector<Cell> rowOf(const catalogue::Activity &activity, const drawing::Shelf &shelf)
{
    std::vector<Cell> row;
    row.reserve(activity.steps.size());
    for (const catalogue::Step &step : activity.steps)
        row.push_back(cellOf(shelf, (step.picture ? *step.picture : activity.picture).drawing));
    return row;
}

int widthOf(const Cell &cell)
{
    return cell.name.startsWith(u"item-") ? itemWidth : sceneWidth;
}

} // namespace

std::vector<Sheet> sheetsOfShippedDrawings()
{
    const catalogue::Catalogue catalogue = shipped::catalogue();
    const drawing::Shelf shelf = shipped::drawings();
    std::vector<Sheet> sheets{{QStringLiteral("items"), itemRows(catalogue, shelf)}};
    std::vector<const catalogue::Activity *> byEntry;
    for (const catalogue::Activity &activity : catalogue.activities())
        byEntry.push_back(&activity);
    std::ranges::sort(byEntry, {}, &catalogue::Activity::entry);
    for (const catalogue::Activity *activity : byEntry) {
        if (sheets.size() == 1 || sheets.back().rows.size() == rowsOnAPage)
            sheets.push_back(
                {QStringLiteral("steps-%1").arg(sheets.size(), 2, 10, QChar(u'0')), {}});
        sheets.back().rows.push_back(rowOf(*activity, shelf));
    }
    return sheets;
}

QImage rendered(const Sheet &sheet)
{
    int width = 0;
    for (const std::vector<Cell> &row : sheet.rows) {
        int rowWidth = gap;
        for (const Cell &cell : row)
            rowWidth += widthOf(cell) + gap;
        width = std::max(width, rowWidth);
    }
    const int rowHeight = cellHeight + nameHeight + gap;
    QImage image(width, gap + static_cast<int>(sheet.rows.size()) * rowHeight,
                 QImage::Format_Grayscale8);
    image.fill(0xCC);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    QFont font(QStringLiteral("Andika"));
    font.setPixelSize(11);
    painter.setFont(font);
    int y = gap;
    for (const std::vector<Cell> &row : sheet.rows) {
        int x = gap;
        for (const Cell &cell : row) {
            const QRect place(x, y, widthOf(cell), cellHeight);
            painter.fillRect(place, Qt::white);
            painter.save();
            painter.setClipRect(place);
            QSvgRenderer(cell.svg).render(&painter, place);
            painter.restore();
            painter.drawText(QRect(x, y + cellHeight, place.width() + gap, nameHeight),
                             Qt::AlignLeft | Qt::AlignVCenter, cell.name.section('-', 1));
            x += place.width() + gap;
        }
        y += rowHeight;
    }
    painter.end();
    image.setText(digestKey, digestOf(sheet));
    return image;
}

QString digestOf(const Sheet &sheet)
{
    QCryptographicHash hash(QCryptographicHash::Sha256);
    for (const std::vector<Cell> &row : sheet.rows) {
        for (const Cell &cell : row) {
            hash.addData(cell.name.toUtf8() + '\n');
            hash.addData(cell.svg);
        }
        hash.addData(QByteArrayLiteral("\n"));
    }
    return QString::fromLatin1(hash.result().toHex());
}

QString digestIn(const QImage &image)
{
    return image.text(digestKey);
}

QString folder()
{
    return qEnvironmentVariable("LIDLARK_SOURCE_DIR") + QStringLiteral("/assets/drawings/contact");
}

} // namespace lidlark::contact
