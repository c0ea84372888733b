#include "kite_card_file.h"

#include "kite_card.h"
#include "pdf_file.h"

#include <QDir>

namespace lidlark::mobile {

bool KiteCardFile::save()
{
    const QString folder = documentsOr(m_folder);
    const QString name = tr("Kite card") + QStringLiteral(".pdf");
    const bool written = savePdf(folder, name, kitecard::pages());
    m_said = written ? tr("Saved as \"%1\" in %2.").arg(name, QDir(folder).dirName())
                     : tr("The card could not be saved in %1. Is the phone full, or may nothing be "
                          "written there?")
                           .arg(QDir(folder).dirName());
    emit saved();
    return written;
}

} // namespace lidlark::mobile
