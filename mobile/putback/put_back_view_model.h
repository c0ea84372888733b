#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/play_in_hand.h"
#include "mobile/bridge/voice.h"

#include <map>
#include <set>

namespace lidlark::mobile {

/// What of the box went out for the play in hand, piece by piece: the tray, and the exceptions.
class PutBackViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household MEMBER m_household REQUIRED)
    Q_PROPERTY(lidlark::mobile::PlayInHand *playInHand READ playInHand WRITE setPlayInHand REQUIRED)
    /// Counts pieces aloud as they come home; null: silent.
    Q_PROPERTY(lidlark::mobile::Voice *voice MEMBER m_voice FINAL)
    Q_PROPERTY(int count READ count NOTIFY changed FINAL)
    Q_PROPERTY(bool allTapped READ allTapped NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> putBackLines READ putBackLines NOTIFY changed FINAL)
    Q_PROPERTY(QString problem MEMBER m_problem NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> words READ words CONSTANT FINAL) ///< The five words of an exception.

public:
    enum Role {
        ItemIdRole = Qt::UserRole,
        NameRole,
        DrawingRole,
        ExpectedRole, ///< Went out.
        DueRole,      ///< Went out and is not used up, lost, broken ...
        HomeRole,
        CountTextRole,
        NoteRole,
        WordRole,         ///< Index of the word that stands, -1 for none.
        NamedRole,        ///< Pieces it names.
        CanStandOpenRole, ///< A pot that may have been left open.
        LeftOpenRole,     ///< So it was, as was just said.
        MouthedRole       ///< It was in a mouth, and waits for a washing.
    };

    using KeptRows::KeptRows;
    [[nodiscard]] PlayInHand *playInHand() const { return m_playInHand; }
    void setPlayInHand(PlayInHand *playInHand);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] int count() const { return rowCount(); }
    [[nodiscard]] bool allTapped() const;
    [[nodiscard]] QStringList putBackLines() const;
    [[nodiscard]] QStringList words() const;

    /// The child's tap: one piece more is home; after the last, none are (it can be done again).
    Q_INVOKABLE void tap(int row);
    /// The word for this item; one piece until a number is said. The same word again takes it back.
    Q_INVOKABLE bool nameWord(int row, int word);
    Q_INVOKABLE bool nameCount(int row, int pieces);
    /// Dried out has a page of its own where it may be rescued (job.md scenario 4).
    [[nodiscard]] Q_INVOKABLE bool canBeRescued(int row, int word) const;
    /// The pot in use was found left open.
    Q_INVOKABLE bool noteLeftOpen(int row);
    Q_INVOKABLE bool noteMouthed(int row);
    /// Something lies on a floor that must be looked for before anything else (G2).
    Q_INVOKABLE bool needsFloorCheck() const;

signals:
    void changed();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    struct Row {
        const catalogue::ItemKind *kind = nullptr;
        usecase::HomeCount count;
        bool mouthed = false;
        box::PieceId openPiece; ///< The piece in use; empty: none, or no perishable.
    };
    void load();
    void readRows();
    void readCare();
    bool report(const Outcome &outcome);
    [[nodiscard]] const Row *rowAt(int row) const;
    [[nodiscard]] box::Exceptions named(const ItemId &item) const;

    Household *m_household = nullptr;
    PlayInHand *m_playInHand = nullptr;
    Voice *m_voice = nullptr;
    QString m_problem;
    std::vector<Row> m_rows;
    std::map<ItemId, box::Exceptions> m_named;
    std::set<ItemId> m_leftOpen; ///< Said on this page.
};

} // namespace lidlark::mobile
