#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/packing_desk.h"

namespace lidlark::mobile {

/// One box of a build, line by line: packed, looked over by a second person, handed over.
class PackBoxViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString build READ build WRITE setBuild REQUIRED)
    Q_PROPERTY(QString code READ code WRITE setCode REQUIRED)
    /// Who looks over; empty: whose phone it is.
    Q_PROPERTY(QString looker READ looker WRITE setLooker NOTIFY loaded FINAL)
    Q_PROPERTY(QString whose READ whose NOTIFY loaded FINAL)
    Q_PROPERTY(bool nobodys READ isNobodys NOTIFY loaded FINAL) ///< No child's yet.
    /// What whoever packs it must know, a line each.
    Q_PROPERTY(QList<QString> callOuts READ callOuts NOTIFY loaded FINAL)
    /// Names of what lies in it and is not on its list any more.
    Q_PROPERTY(QList<QString> takeOut READ takeOut NOTIFY loaded FINAL)
    Q_PROPERTY(QString readyWords READ readyWords NOTIFY loaded FINAL)
    Q_PROPERTY(bool ready READ ready NOTIFY loaded FINAL)
    Q_PROPERTY(bool special READ special NOTIFY loaded FINAL)
    Q_PROPERTY(bool waitsForLook READ waitsForLook NOTIFY loaded FINAL)
    Q_PROPERTY(bool gone READ gone NOTIFY loaded FINAL) ///< Handed over as this build.
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        ItemIdRole = Qt::UserRole,
        NameRole,
        DrawingRole,
        PiecesRole,
        HandRole,  ///< "left", "right", or empty: it does not matter.
        CallRole,  ///< What is wrong with what was about to go in; else empty.
        StateRole, ///< In words; empty: still open.
        InRole,
        WrongRole,
        LookedRole,
        MayLookRole ///< The looker did not pack it.
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString build() const;
    void setBuild(const QString &build);
    [[nodiscard]] QString code() const;
    void setCode(const QString &code);
    [[nodiscard]] QString looker() const;
    void setLooker(const QString &looker);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString whose() const;
    [[nodiscard]] bool isNobodys() const { return m_box.whose.empty(); }
    [[nodiscard]] QStringList callOuts() const;
    [[nodiscard]] QStringList takeOut() const;
    [[nodiscard]] QString readyWords() const;
    [[nodiscard]] bool ready() const { return m_box.isReady(); }
    [[nodiscard]] bool special() const { return m_box.special; }
    [[nodiscard]] bool waitsForLook() const;
    [[nodiscard]] bool gone() const { return m_gone; }
    [[nodiscard]] QString problem() const { return m_problem; }

    /// @param hand as read off the thing: "left", "right"; else empty.
    Q_INVOKABLE void tick(int row, const QString &hand);
    Q_INVOKABLE void untick(int row);
    /// The looker has looked, and it is right.
    Q_INVOKABLE void lookOver(int row);
    /// What is not on the list any more is out. @param at of `takeOut`.
    Q_INVOKABLE void isOut(int at);
    /// It goes to its child. @returns whether it did.
    Q_INVOKABLE bool handOver();

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();
    void readRows();
    bool answer(const Outcome &outcome);
    [[nodiscard]] usecase::PackLineAt lineAt(int row) const;
    [[nodiscard]] QVariant stateOf(const workbench::PackLine &line, int role) const;

    Household *m_household = nullptr;
    workbench::BuildId m_build;
    std::string m_code;
    std::string m_looker;
    workbench::PackBox m_box;
    bool m_gone = false;
    ItemId m_refused; ///< For the other hand, and so put back.
    QString m_problem;
};

} // namespace lidlark::mobile
