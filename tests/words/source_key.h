#pragma once

#include <QString>

#include <tuple>

namespace lidlark::words {

/// Something a screen can say, as translations are found by it.
struct SourceKey {
    QString context;
    QString source;
    bool counted = false; ///< Has a form for one, for few, for many.

    auto place() const { return std::tie(context, source); }
    bool operator==(const SourceKey &) const = default;
};

/// In the order of a translation file.
inline bool operator<(const SourceKey &a, const SourceKey &b)
{
    return a.place() < b.place();
}

} // namespace lidlark::words
