#pragma once

#include <QString>

#include "mobile/prints/print_page.h"

class QIODevice;

namespace lidlark::mobile {

/// The pages as a PDF: vectors, with the faces embedded, and nothing in it that says whose it is.
/// @returns false when it could not be written.
bool writePdf(QIODevice &file, const PrintPages &pages);

/// The same as a file: the whole of it or none, in place of an earlier one of that name.
bool savePdf(const QString &folder, const QString &name, const PrintPages &pages);

/// @p folder, or where it is empty the documents of whoever uses the phone.
QString documentsOr(const QString &folder);

} // namespace lidlark::mobile
