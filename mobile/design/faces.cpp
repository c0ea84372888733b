#include "faces.h"

#include <QtCore/QDirIterator>
#include <QtCore/QSet>
#include <QtGui/QFontDatabase>

namespace lidlark::design {

void provideFace(const QString &family)
{
    static QSet<QString> provided;
    if (provided.contains(family))
        return;
    provided.insert(family);
    if (QFontDatabase::hasFamily(family))
        return;
    QDirIterator files(QStringLiteral(":/lidlark/faces/") + family);
    while (files.hasNext())
        QFontDatabase::addApplicationFont(files.next());
}

} // namespace lidlark::design
