#pragma once

#include "tests/states/leg.h"

#include <QTemporaryDir>

namespace lidlark::test {

/// Walks legs in one language. Controls are found by their English names: for another language each
/// leg is first walked in English, unseen, and then again along the same trail.
class Wander
{
public:
    explicit Wander(const QString &language);

    /// @returns what could not be found; empty: walked to the end, and @p seen was called at every
    /// stop, with the window at its first size, 100 % and light.
    [[nodiscard]] QString walk(const Leg &leg, const Walk::Seen &seen);

    /// How the window and the look are at every stop.
    static void layOut(const Stop &stop, const QSize &size, double textScale, int scheme);
    static constexpr QSize firstSize{360, 740};

private:
    /// One folder for the stores of a language.
    [[nodiscard]] QDir folderFor(const QString &language) const;
    [[nodiscard]] QString lay(const Leg &leg, const QDir &folder) const;
    [[nodiscard]] QString walk(const Leg &leg, const QString &language, Trail &trail,
                               const Walk::Seen &seen) const;

    QString m_language;
    QTemporaryDir m_folder;
};

} // namespace lidlark::test
