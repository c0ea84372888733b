#include "paper.h"

namespace lidlark::mobile {

QString nameOf(Paper paper)
{
    switch (paper) {
    case Paper::A4:
        return QStringLiteral("A4");
    case Paper::Letter:
        return QStringLiteral("Letter");
    case Paper::A5:
        return QStringLiteral("A5");
    case Paper::A6:
        break;
    }
    return QStringLiteral("A6");
}

} // namespace lidlark::mobile
