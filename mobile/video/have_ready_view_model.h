#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/video_desk.h"

#include <optional>

namespace lidlark::mobile {

/// What a family has ready for the next video session: each thing with its picture, and whether it
/// is at hand (job.md T14).
class HaveReadyViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// "Monday, 25 January, 10:00"; empty: none is planned.
    Q_PROPERTY(QString when READ when NOTIFY loaded FINAL)
    /// What is played, a line each, as things stand.
    Q_PROPERTY(QList<QString> parts READ parts NOTIFY loaded FINAL)
    /// The same, as a screen reader says it.
    Q_PROPERTY(QString partsSaid READ partsSaid NOTIFY loaded FINAL)
    /// The lid list has changed since; empty: it has not.
    Q_PROPERTY(QString note READ note NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        ItemIdRole = Qt::UserRole,
        HeadingRole,
        NameRole,
        DrawingRole,
        NoteRole,
        HereRole,
        MissingRole
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString when() const;
    [[nodiscard]] QStringList parts() const;
    [[nodiscard]] QString partsSaid() const { return parts().join(QStringLiteral(". ")); }
    [[nodiscard]] QString note() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void say(int row, bool here);

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();
    void readSession();
    [[nodiscard]] QString headingOf(std::size_t at) const;
    [[nodiscard]] QString noteOf(const workbench::ThingNeeded &thing) const;

    Household *m_household = nullptr;
    std::optional<usecase::VideoSession> m_session;
    QString m_problem;
};

} // namespace lidlark::mobile
