#include "pdf_file.h"

#include <QDir>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QStandardPaths>

namespace lidlark::mobile {

namespace {

constexpr int tenthsOfMmPerInch = 254;

void setPage(QPdfWriter &writer, const PrintPage &page)
{
    writer.setPageSize(QPageSize(QSizeF(page.size) / 10.0, QPageSize::Millimeter, QString(),
                                 QPageSize::ExactMatch));
    writer.setPageMargins({});
}

} // namespace

bool writePdf(QIODevice &file, const PrintPages &pages)
{
    if (pages.empty())
        return false;
    QPdfWriter writer(&file);
    writer.setResolution(tenthsOfMmPerInch); // so that one unit of the page is one dot
    writer.setCreator(QStringLiteral("Lidlark"));
    setPage(writer, pages.front());
    QPainter painter;
    if (!painter.begin(&writer))
        return false;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 0) {
            setPage(writer, pages[i]);
            if (!writer.newPage())
                return false;
        }
        painter.save();
        pages[i].paint(painter);
        painter.restore();
    }
    return painter.end();
}

bool savePdf(const QString &folder, const QString &name, const PrintPages &pages)
{
    QDir().mkpath(folder); // when this fails, opening the file says so
    QSaveFile file(QDir(folder).filePath(name));
    return file.open(QIODevice::WriteOnly) && writePdf(file, pages) && file.commit();
}

QString documentsOr(const QString &folder)
{
    return folder.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)
                            : folder;
}

} // namespace lidlark::mobile
