#pragma once

#include <QTranslator>

namespace lidlark::mobile {

/// A translation that runs from right to left (mobile/bridge/whole_places.h).
class RightToLeftWords : public QTranslator
{
public:
    [[nodiscard]] QString translate(const char *context, const char *sourceText,
                                    const char *disambiguation, int n) const override;
};

} // namespace lidlark::mobile
