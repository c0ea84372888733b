#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/video_desk.h"

#include <optional>

namespace lidlark::mobile {

/// The next session as the therapist has it beside the camera: when each part begins, where the
/// camera looks, how to make it easier or harder, and what to take out of the own box.
class VideoSessionViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString when READ when NOTIFY loaded FINAL)
    /// "Dropper, crayons: not yet said.": how far the family is.
    Q_PROPERTY(QString family READ family NOTIFY loaded FINAL)
    /// What the therapist takes out of the matching box.
    Q_PROPERTY(QString ownBox READ ownBox NOTIFY loaded FINAL)
    Q_PROPERTY(QString note READ note NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role { TimeRole = Qt::UserRole, NameRole, DrawingRole, NoteRole, EasierRole, HarderRole };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString when() const;
    [[nodiscard]] QString family() const;
    [[nodiscard]] QString ownBox() const;
    [[nodiscard]] QString note() const;
    [[nodiscard]] QString problem() const { return m_problem; }

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();
    void read();
    [[nodiscard]] const catalogue::Activity *playedAt(std::size_t at) const;
    [[nodiscard]] QString noteOf(std::size_t at) const;

    Household *m_household = nullptr;
    std::optional<usecase::VideoSession> m_session;
    std::vector<int> m_beginnings;
    QString m_problem;
};

} // namespace lidlark::mobile
