#include "kite_card_file.h"

#include "kite_card.h"

#include <QDir>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QStandardPaths>

namespace lidlark::mobile {

namespace {

constexpr int tenthsOfMmPerInch = 254;

bool paintOn(QIODevice &file)
{
    QPdfWriter writer(&file);
    writer.setResolution(tenthsOfMmPerInch); // so that one unit of the card is one dot
    writer.setPageSize(QPageSize(QPageSize::A6));
    writer.setPageMargins({});
    writer.setCreator(QStringLiteral("Lidlark"));
    QPainter painter;
    if (!painter.begin(&writer))
        return false;
    kitecard::paintFront(painter);
    if (!writer.newPage())
        return false;
    kitecard::paintBack(painter);
    return painter.end();
}

} // namespace

bool KiteCardFile::save()
{
    const QString folder = m_folder.isEmpty()
                               ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)
                               : m_folder;
    const QString name = tr("Kite card") + QStringLiteral(".pdf");
    QDir().mkpath(folder); // when this fails, opening the file says so
    QSaveFile file(QDir(folder).filePath(name));
    const bool written = file.open(QIODevice::WriteOnly) && paintOn(file) && file.commit();
    m_said = written ? tr("Saved as \"%1\" in %2.").arg(name, QDir(folder).dirName())
                     : tr("The card could not be saved in %1. Is the phone full, or may nothing be "
                          "written there?")
                           .arg(QDir(folder).dirName());
    emit saved();
    return written;
}

} // namespace lidlark::mobile
