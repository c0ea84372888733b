#pragma once

#include "tests/pictures/likeness.h"

#include <QDir>
#include <QStringList>

namespace lidlark::pictures {

/// The reference pictures in a folder, and what is compared with them.
class Album
{
public:
    /// @param differences where side-by-side pictures are written.
    Album(const QDir &references, const QDir &differences)
        : m_references(references), m_differences(differences)
    {
    }

    /// @returns in a sentence what differs, with the path of a side-by-side picture, or that there
    /// is no reference; empty: it is alike.
    [[nodiscard]] QString compare(const QString &name, const QImage &now);
    /// Keeps it as the reference. @returns false when it could not be written.
    [[nodiscard]] bool renew(const QString &name, const QImage &now);
    /// References that nothing was compared with: their states are gone.
    [[nodiscard]] QStringList leftOver() const;
    /// Takes those away.
    void clear();

private:
    [[nodiscard]] QString fileOf(const QString &name) const;

    QDir m_references;
    QDir m_differences;
    QStringList m_met;
};

} // namespace lidlark::pictures
