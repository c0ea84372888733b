#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

#include "core/box/question_look.h"
#include "core/wording/question_words.h"

#include <vector>

namespace lidlark::mobile {

/// What two phones left open about the box: put to this phone, or only to be known.
class QuestionViewModel : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// Those with their answers; else those that somebody else is asked, or that were just
    /// answered.
    Q_PROPERTY(bool asking MEMBER m_asking WRITE setAsking NOTIFY loaded FINAL)
    /// Of this item only; empty: of all.
    Q_PROPERTY(QString itemId MEMBER m_itemId WRITE setItemId NOTIFY loaded FINAL)
    Q_PROPERTY(int count READ count NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        QuestionIdRole = Qt::UserRole,
        DrawingRole,
        WordsRole,
        NoteRole,   ///< Who is asked; else empty.
        AnswersRole ///< Of equal weight; none while somebody else is asked.
    };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    void setAsking(bool asking);
    void setItemId(const QString &itemId);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] int count() const { return rowCount(); }
    [[nodiscard]] QString problem() const { return m_problem; }

    /// @param answer index among the answers of that row.
    Q_INVOKABLE void answer(int row, int answer);

signals:
    void loaded();

private:
    struct Row {
        QString drawing;
        wording::PieceNames names;
        box::Question question;
        box::QuestionLook look = box::QuestionLook::Gone;
    };
    void load();
    void take(const usecase::BoxItem &item);
    [[nodiscard]] QString wordsOf(const Row &row) const;
    [[nodiscard]] static QString noteOf(const Row &row);

    Household *m_household = nullptr;
    bool m_asking = true;
    QString m_itemId;
    std::vector<Row> m_rows;
    QString m_problem;
};

} // namespace lidlark::mobile
