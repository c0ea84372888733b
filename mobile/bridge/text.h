#pragma once

#include <QString>

#include "core/base/id.h"

#include <string>

namespace lidlark::mobile {

inline QString fromCore(const std::string &text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

inline QString fromCore(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

inline std::string toCore(const QString &text)
{
    return text.toStdString();
}

} // namespace lidlark::mobile
