#include "tests/contact/contact_sheet.h"

#include <QDir>
#include <QGuiApplication>

#include <cstdio>

using namespace lidlark;

/// Writes the contact sheets anew. Look at them before they are committed.
int main(int argc, char **argv)
{
    const QGuiApplication app(argc, argv);
    const QDir folder(contact::folder());
    folder.mkpath(QStringLiteral("."));
    for (const QString &old : folder.entryList({QStringLiteral("*.png")}))
        QFile::remove(folder.filePath(old));
    for (const contact::Sheet &sheet : contact::sheetsOfShippedDrawings()) {
        const QString file = folder.filePath(sheet.name + QStringLiteral(".png"));
        if (!contact::rendered(sheet).save(file)) {
            std::fprintf(stderr, "%s could not be written.\n", qPrintable(file));
            return 1;
        }
        std::printf("%s\n", qPrintable(file));
    }
    return 0;
}
