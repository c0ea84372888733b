#pragma once

#include <QString>
#include <QStringList>

namespace lidlark::words {

/// The literals that stand in qsTr, tr and QT_TRANSLATE_NOOP in the sources of mobile/ under
/// @p root, found by reading and not by lupdate: what lupdate loses shows against these.
QStringList writtenCallsIn(const QString &root);

} // namespace lidlark::words
