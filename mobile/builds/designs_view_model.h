#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/buying_desk.h"
#include "mobile/bridge/kept_rows.h"

namespace lidlark::mobile {

/// The kinds of box there are.
class DesignsViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(int count READ rowCount NOTIFY loaded FINAL)

public:
    enum Role {
        DesignIdRole = Qt::UserRole,
        NameRole,
        NoteRole ///< "Kinds of thing: 16. Plays: 61."
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();

    Household *m_household = nullptr;
    std::vector<workbench::Design> m_designs;
};

} // namespace lidlark::mobile
