#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/buying_desk.h"
#include "mobile/bridge/kept_rows.h"

namespace lidlark::mobile {

/// A kind of box while it is written: nothing is kept before somebody says so. Each thing says how
/// much play it brings to this box.
class DesignViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// Its id; empty: a new one.
    Q_PROPERTY(QString design READ design WRITE setDesign REQUIRED)
    Q_PROPERTY(QString name READ name NOTIFY loaded FINAL)
    Q_PROPERTY(int count READ rowCount NOTIFY loaded FINAL)
    /// "61 plays of 80 can be made with this box."
    Q_PROPERTY(QString playWords READ playWords NOTIFY loaded FINAL)
    /// Ids of what is in it, or belongs there.
    Q_PROPERTY(QList<QString> items READ items NOTIFY loaded FINAL)
    Q_PROPERTY(bool changed READ isChanged NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        ItemIdRole = Qt::UserRole,
        NameRole,
        DrawingRole,
        PiecesRole,
        PlayRole, ///< How much play it brings, in words.
        IdleRole  ///< Hardly any.
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString design() const;
    void setDesign(const QString &design);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString name() const;
    [[nodiscard]] QString playWords() const;
    [[nodiscard]] QStringList items() const { return rowKeys(); }
    [[nodiscard]] bool isChanged() const { return m_design != m_kept; }
    [[nodiscard]] QString problem() const { return m_problem; }

    [[nodiscard]] Q_INVOKABLE bool has(const QString &itemId) const;
    Q_INVOKABLE void setPieces(int row, int pieces);
    Q_INVOKABLE void takeOut(int row);
    /// With the pieces of a standard box, at least one.
    Q_INVOKABLE void putIn(const QString &itemId);
    /// All that the catalogue's own lid list has, each as often as there.
    Q_INVOKABLE void putInOurs();
    /// @returns whether it was kept; else `problem` says why not.
    Q_INVOKABLE bool keep(const QString &name);
    Q_INVOKABLE bool remove();

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void read();
    void tellChanged();

    Household *m_household = nullptr;
    workbench::Design m_kept;
    workbench::Design m_design;
    workbench::PlayInBox m_play;
    BoughtNames m_names;
    QString m_problem;
};

} // namespace lidlark::mobile
